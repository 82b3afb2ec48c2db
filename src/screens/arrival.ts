import { useEffect, useRef } from 'preact/hooks';
import { firstScreenStands } from '../pace/first-screen.ts';

/** The first screen of a visit leaves the focus where the browser has it: at the top of the page. */
let first = true;

/** Sets the page's title; on arriving, once there is something to read, moves the focus to the heading. */
export function useArrival(title: string, ready = true): void {
  const arrived = useRef(false);
  useEffect(() => {
    document.title = title === '' ? 'Ridgeline' : `${title} – Ridgeline`;
  }, [title]);
  useEffect(() => {
    if (!ready || arrived.current) return;
    arrived.current = true;
    scrollTo(0, 0);
    if (!first) document.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
    first = false;
    // an effect runs when the frame is painted
    firstScreenStands();
  }, [ready]);
}
