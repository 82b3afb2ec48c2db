import type { WayBack } from './way-back.ts';

/** What an import has laid aside and not shown yet, or taken out of sight and not cleared away yet. */
export const ASIDE = 'aside';

/** What takes the last backup that was read in back again. */
export const WAY_BACK = 'way back';

/** Kept by the device for itself: its letters, the file that it keeps up to date, what is on its way, and the way back. */
const ownSettings: ReadonlySet<string> = new Set(['device', 'backup file', ASIDE, WAY_BACK]);

export const isOwnSetting = (name: string): boolean => ownSettings.has(name);

export const wayBackIn = (settings: Readonly<Record<string, unknown>>): WayBack | undefined =>
  settings[WAY_BACK] as WayBack | undefined;
