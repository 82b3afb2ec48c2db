import type { PhotoRecord } from '../records.ts';
import { type StoreName, storeNames, type Tx } from '../schema.ts';
import { together } from '../together.ts';
import { BACKUP_FORMAT, BACKUP_VERSION, type Backup } from './document.ts';
import { byId } from './stable.ts';

/** The stores that a backup speaks of: all of them. */
export const backupStores: readonly StoreName[] = storeNames;

/** Kept by the device for itself: its letters, and the file that it keeps up to date. */
const ownSettings: ReadonlySet<string> = new Set(['device', 'backup file']);

export const isOwnSetting = (name: string): boolean => ownSettings.has(name);

/** Everything in the box, with the photos still as pictures: they become text outside the transaction. */
export async function readContents(
  tx: Tx<'readonly'>,
  now: number,
): Promise<{ readonly backup: Backup; readonly photos: readonly PhotoRecord[] }> {
  const settings = tx.objectStore('settings');
  const [garments, plans, entries, names, values, photos] = await together(
    () => tx.objectStore('garments').getAll(),
    () => tx.objectStore('plans').getAll(),
    () => tx.objectStore('log').getAll(),
    () => settings.getAllKeys(),
    () => settings.getAll(),
    () => tx.objectStore('photos').getAll(),
  );
  const pairs = names.map((name, i): [string, unknown] => [name, values[i]]);
  const device = pairs.find(([name]) => name === 'device')?.[1];
  const document = {
    format: BACKUP_FORMAT,
    version: BACKUP_VERSION,
    madeAt: now,
    device: typeof device === 'string' ? device : '',
    garments: byId(garments),
    plans: byId(plans),
    entries: byId(entries),
    settings: Object.fromEntries(pairs.filter(([name, value]) => !isOwnSetting(name) && value !== undefined)),
    photos: [],
  };
  // as JSON would have it: what is undefined is not there
  return { backup: JSON.parse(JSON.stringify(document)) as Backup, photos: byId(photos) };
}
