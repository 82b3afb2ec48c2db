import { useEffect } from 'preact/hooks';
import { keepFresh } from '../app/fresh.ts';
import type { GarmentId, MakeKey } from '../progress/log.ts';

interface Shown {
  /** without one: of all garments */
  readonly garment?: GarmentId | undefined;
  /** the make that is read */
  readonly make?: MakeKey;
  /** a make whose taps the screen hears of by itself */
  readonly own?: MakeKey;
}

/** Reads what the screen shows, and again whenever a tap or a change of it comes, from this window or another. */
export function useFresh(read: () => Promise<unknown>, { garment, make, own }: Shown): void {
  useEffect(() => keepFresh(read, garment, own), [garment, make, own]);
}
