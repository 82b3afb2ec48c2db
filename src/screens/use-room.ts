import type { RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';

/** px that a drawing has on the page, and of the letters around it: figures on it grow with them. */
export interface RoomOnPage {
  readonly width: number;
  /** of the window */
  readonly height: number;
  /** of the root's letters, and what a reader has set between them */
  readonly em: number;
  readonly apart: number;
}

/** A phone's. */
export const USUAL: RoomOnPage = { width: 358, height: 844, em: 16, apart: 0 };

/** Known once the element stands, and measured anew where it or the letters change. */
export function useRoom(of: RefObject<HTMLElement | null>): RoomOnPage | undefined {
  const [room, setRoom] = useState<RoomOnPage>();
  useLayoutEffect(() => {
    const own = of.current;
    if (!own) return;
    const px = (value: string) => Number.parseFloat(value) || 0;
    const measure = () => {
      const next: RoomOnPage = {
        width: own.clientWidth,
        height: window.innerHeight,
        em: px(getComputedStyle(document.documentElement).fontSize),
        apart: px(getComputedStyle(own).letterSpacing),
      };
      const names = Object.keys(next) as (keyof RoomOnPage)[];
      setRoom((old) => (old && names.every((name) => old[name] === next[name]) ? old : next));
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(own);
    // letters that grow change what lies below the drawing too
    watch.observe(document.body);
    return () => watch.disconnect();
  }, []);
  return room;
}
