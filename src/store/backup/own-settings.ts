import type { PhotoRecord } from '../records.ts';
import type { ImportMode } from './document.ts';

/** What an import has laid aside and not shown yet, or taken out of sight and not cleared away yet. */
export const ASIDE = 'aside';

/** What takes the last backup that was read in back again. */
export const WAY_BACK = 'way back';

/** Kept by the device for itself: its letters, the file that it keeps up to date, what is on its way, the way back, and the lock. */
const ownSettings: ReadonlySet<string> = new Set(['device', 'backup file', ASIDE, WAY_BACK, 'locked']);

export const isOwnSetting = (name: string): boolean => ownSettings.has(name);

/** What takes a backup that was read in back again; kept in the box until the next one. */
export interface WayBack {
  /** when it was read in, ms since 1970; never the same as that of the one before */
  readonly at: number;
  readonly mode: ImportMode;
  /** she has said that it may stay so: no longer offered of itself */
  readonly hidden: boolean;
  /** JSON of `Changed`: as a picture is, it is not read at every start */
  readonly changed: Blob;
  readonly photos: { readonly came: readonly string[]; readonly went: readonly PhotoRecord[] };
}

export const wayBackIn = (settings: Readonly<Record<string, unknown>>): WayBack | undefined =>
  settings[WAY_BACK] as WayBack | undefined;
