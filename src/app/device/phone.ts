import type * as DevicesModule from './all.ts';

export type Devices = typeof DevicesModule;

let fetched: Promise<Devices> | undefined;

/** What the phone does for the knitting screen; a file that could not be fetched is asked for again the next time. */
export function phone(): Promise<Devices> {
  fetched ??= import('./all.ts').catch((error: unknown) => {
    fetched = undefined;
    throw error;
  });
  return fetched;
}
