import { afterFirstScreen, STANDS_AT_LATEST_MS } from './order.ts';

let stands: () => void = () => undefined;

/** When the first screen of this visit can be read. */
const firstScreen = new Promise<void>((resolve) => {
  stands = resolve;
});

/** Told once the screen is painted; later calls change nothing. */
export const firstScreenStands = (): void => stands();

/** Begins the visit: the screen counts as standing in the end, whatever became of it. */
export const expectFirstScreen = (): unknown => setTimeout(firstScreenStands, STANDS_AT_LATEST_MS);

/** Does what is of use only later, when the list says so (./order.ts). Gives the way to leave it undone. */
export function later(what: keyof typeof afterFirstScreen, work: () => Promise<unknown>): () => void {
  let stopped = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const start = () => void work().catch(missed);
  void firstScreen.then(() => {
    if (!stopped) timer = setTimeout(start, afterFirstScreen[what]);
  });
  return () => {
    stopped = true;
    clearTimeout(timer);
  };
}

/** A file that could not be fetched: what comes by it is missed until it is asked for anew. */
const missed = (): undefined => undefined;
