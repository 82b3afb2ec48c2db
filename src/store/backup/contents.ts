import { ok, type Result } from '../../knit/fault.ts';
import type { GarmentId } from '../../progress/log.ts';
import type { Box } from '../box/box.ts';
import { type StoreName, storeNames, type Tx } from '../box/schema.ts';
import { together } from '../box/together.ts';
import { makesRange } from '../place/write-log.ts';
import type { GarmentRecord, PhotoRecord, PlaceRecord } from '../records.ts';
import { BACKUP_FORMAT, BACKUP_VERSION, type Backup } from './document.ts';
import { isOwnSetting } from './own-settings.ts';
import { byId } from './stable.ts';

/** The stores that a backup speaks of: all of them. */
export const backupStores: readonly StoreName[] = storeNames;

/** All that a box holds of one garment; nothing of one garment speaks of another. */
export interface OfGarment {
  /** a backup of this garment alone, without settings and photos */
  readonly backup: Backup;
  /** as pictures: they become text outside the transaction */
  readonly photos: readonly PhotoRecord[];
  /** another one when anything but its photos has changed */
  readonly mark: string;
}

export interface WholeBox {
  readonly garments: ReadonlyMap<GarmentId, OfGarment>;
  readonly settings: Backup['settings'];
  readonly device: string;
  /** ms since 1970 */
  readonly readAt: number;
}

type Read = Tx<'readonly'>;

export const garmentStores: readonly StoreName[] = ['garments', 'plans', 'log', 'places', 'photos'];

/** Everything in the box, garment by garment, each in a transaction of its own: a tap waits for one at most. */
export async function readBox(box: Box): Promise<Result<WholeBox>> {
  const first = await box.door.read(['garments', 'settings'], (tx) =>
    together(
      () => tx.objectStore('garments').getAllKeys(),
      () => readOthersSettings(tx),
    ),
  );
  if (!first.ok) return first;
  const [ids, settings] = first.value;
  const garments = new Map<GarmentId, OfGarment>();
  for (const id of ids) {
    const read = await box.door.read(garmentStores, (tx) => readGarment(tx, id, box), 'whole box');
    if (!read.ok) return read;
    if (read.value !== undefined) garments.set(id, read.value);
  }
  return ok({ garments, settings, device: box.device, readAt: box.now() });
}

async function readOthersSettings(tx: Read) {
  const store = tx.objectStore('settings');
  const [names, values] = await together(
    () => store.getAllKeys(),
    () => store.getAll(),
  );
  const pairs = names.map((name, i): [string, unknown] => [name, values[i]]);
  const others = pairs.filter(([name, value]) => !isOwnSetting(name) && value !== undefined);
  return asJson(Object.fromEntries(others));
}

/** What the box holds of a garment; undefined where the garment is not there. */
export async function readGarment(
  tx: Read,
  id: GarmentId,
  { device, now }: Pick<Box, 'device' | 'now'>,
): Promise<OfGarment | undefined> {
  const [garment, plans, entries, places, photos] = await together(
    () => tx.objectStore('garments').get(id),
    () => tx.objectStore('plans').index('garment').getAll(id),
    () => tx.objectStore('log').index('make').getAll(makesRange(id)),
    () => tx.objectStore('places').index('garment').getAll(id),
    () => tx.objectStore('photos').index('garment').getAll(id),
  );
  if (garment === undefined) return undefined;
  const held = asJson({ garments: [garment], plans: byId(plans), entries: byId(entries) });
  const backup = { ...headOf(device, now()), ...held, settings: {}, photos: [] } as Backup;
  return { backup, photos: byId(photos), mark: markOf(garment, places) };
}

/** Whatever is changed of a garment changes its record or one of its places too. */
export const markOf = (garment: GarmentRecord, places: readonly PlaceRecord[]): string =>
  JSON.stringify([garment, byId(places)]);

export const headOf = (device: string, madeAt: number) =>
  ({ format: BACKUP_FORMAT, version: BACKUP_VERSION, madeAt, device }) as const;

/** As JSON would have it: what is undefined is not there. */
const asJson = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
