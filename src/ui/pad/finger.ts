import { useRef } from 'preact/hooks';

/** A finger as it lies on the glass. */
export interface Finger {
  /** CSS px in the window */
  readonly x: number;
  readonly y: number;
  /** when it came there, ms of the page's clock */
  readonly at: number;
}

/** A finger that rests longer asks for something else, or for nothing: the browser decides. */
const LONGEST_MS = 500;
/** A thumb rolls a little while it presses; CSS px. */
const FARTHEST_PX = 10;

/** Whether a finger that came down and was lifted so has tapped. */
export const isTap = (down: Finger, up: Finger): boolean =>
  up.at - down.at <= LONGEST_MS && Math.hypot(up.x - down.x, up.y - down.y) <= FARTHEST_PX;

/**
 * Listeners for an element that acts as soon as the finger is lifted. A click comes later, when the browser has looked
 * for a gesture and drawn the press. A tap taken here has no click after it; whatever is not surely a tap (a second
 * finger, a touch that stops a scroll, one that moves or rests) is left to the browser, and so is every mouse, key and
 * screen reader: they click.
 */
export function useFinger(onTap: () => void) {
  const down = useRef<Finger | undefined>(undefined);
  return {
    onTouchStart(event: TouchEvent) {
      // a second finger means something else; while the page scrolls by itself a touch only stops it
      down.current = event.cancelable && event.touches.length === 1 ? fingerOf(event) : undefined;
    },
    onTouchEnd(event: TouchEvent) {
      const from = down.current;
      down.current = undefined;
      if (from === undefined || !event.cancelable || event.touches.length > 0) return;
      if (!isTap(from, fingerOf(event))) return;
      event.preventDefault();
      onTap();
    },
  };
}

function fingerOf({ changedTouches, timeStamp: at }: TouchEvent): Finger {
  const { clientX: x, clientY: y } = changedTouches[0] as Touch;
  return { x, y, at };
}
