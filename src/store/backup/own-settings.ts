/** What an import has laid aside and not shown yet, or taken out of sight and not cleared away yet. */
export const ASIDE = 'aside';

/** Kept by the device for itself: its letters, the file that it keeps up to date, and what is on its way. */
const ownSettings: ReadonlySet<string> = new Set(['device', 'backup file', ASIDE]);

export const isOwnSetting = (name: string): boolean => ownSettings.has(name);
