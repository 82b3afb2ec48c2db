import { ok, type Result } from '../../knit/fault.ts';
import { nextTask } from '../../pace/next-task.ts';
import type { GarmentId } from '../../progress/log.ts';
import type { Box } from '../box/box.ts';
import type { Tx } from '../box/schema.ts';
import { each, together } from '../box/together.ts';
import { makesRange } from '../place/write-log.ts';
import type { PhotoRecord } from '../records.ts';
import type { Backup } from './document.ts';
import { ASIDE } from './own-settings.ts';

/**
 * What a garment that comes in is made of is written before it, in slices between which taps are written. Nobody sees
 * it: whatever is shown is found by the garment. The setting names the garments meant, so that whatever was cut off is
 * cleared away, and an import notices where that was done to its own.
 */
export interface Aside {
  /** of the import */
  readonly id: string;
  /** that have no record yet, or no more */
  readonly garments: readonly GarmentId[];
}

type Write = Tx<'readwrite'>;
type Kept = 'plans' | 'log' | 'photos';

interface Item {
  readonly store: Kept;
  readonly value: object;
  /** about as much work as so many log entries */
  readonly weight: number;
}

/** A tap waits for no more than this, in log entries. */
const SLICE = 300;

/** Whether what is aside is still that import's own. */
export const isAside = async (tx: Write, id: string): Promise<boolean> =>
  ((await tx.objectStore('settings').get(ASIDE)) as Aside | undefined)?.id === id;

export const writeAside = (tx: Write, aside: Aside) => tx.objectStore('settings').put(aside, ASIDE);

/** Lays garments aside; false where another window has cleared that away meanwhile. */
export async function layAside(
  { door }: Box,
  id: string,
  coming: readonly Backup[],
  photos: readonly PhotoRecord[],
): Promise<Result<boolean>> {
  const garments = coming.flatMap((backup) => backup.garments.map((garment) => garment.id));
  const begun = await door.write(['settings'], (tx) => writeAside(tx, { id, garments }));
  if (!begun.ok) return begun;
  for (const slice of slicesOf(coming, photos)) {
    await nextTask();
    const written = await door.write(['settings', 'plans', 'log', 'photos'], async (tx) => {
      if (!(await isAside(tx, id))) return false;
      await each(slice, ({ store, value }) => tx.objectStore(store).put(value as never));
      return true;
    });
    if (!written.ok || !written.value) return written;
  }
  return ok(true);
}

function* slicesOf(coming: readonly Backup[], photos: readonly PhotoRecord[]): Generator<readonly Item[]> {
  let slice: Item[] = [];
  let weight = 0;
  for (const item of itemsOf(coming, photos)) {
    if (weight > 0 && weight + item.weight > SLICE) {
      yield slice;
      slice = [];
      weight = 0;
    }
    slice.push(item);
    weight += item.weight;
  }
  if (slice.length > 0) yield slice;
}

function* itemsOf(coming: readonly Backup[], photos: readonly PhotoRecord[]): Generator<Item> {
  for (const { plans, entries } of coming) {
    for (const value of plans) yield { store: 'plans', value, weight: value.plan.rows.length };
    for (const value of entries) yield { store: 'log', value, weight: 1 };
  }
  for (const value of photos) yield { store: 'photos', value, weight: Math.ceil(value.image.size / 1000) };
}

/** Clears away what an import left behind: one that was cut off, or what it has put in another's stead. */
export async function clearAside({ door }: Box): Promise<Result<void>> {
  const found = await door.read(
    ['settings'],
    async (tx) => (await tx.objectStore('settings').get(ASIDE)) as Aside | undefined,
  );
  if (!found.ok) return found;
  const aside = found.value;
  if (aside === undefined) return ok(undefined);
  for (const garment of aside.garments) {
    await nextTask();
    const cleared = await door.write(['settings', 'garments', 'plans', 'log', 'photos'], async (tx) => {
      const [ours, shown] = await together(
        () => isAside(tx, aside.id),
        () => tx.objectStore('garments').count(garment),
      );
      if (ours && shown === 0) await removeParts(tx, garment);
    });
    if (!cleared.ok) return cleared;
  }
  return door.write(['settings'], async (tx) => {
    if (await isAside(tx, aside.id)) await tx.objectStore('settings').delete(ASIDE);
  });
}

async function removeParts(tx: Write, garment: GarmentId): Promise<void> {
  const [plans, entries, photos] = await together(
    () => tx.objectStore('plans').index('garment').getAllKeys(garment),
    () => tx.objectStore('log').index('make').getAllKeys(makesRange(garment)),
    () => tx.objectStore('photos').index('garment').getAllKeys(garment),
  );
  await together(
    () => each(plans, (key) => tx.objectStore('plans').delete(key)),
    () => each(entries, (key) => tx.objectStore('log').delete(key)),
    () => each(photos, (key) => tx.objectStore('photos').delete(key)),
  );
}
