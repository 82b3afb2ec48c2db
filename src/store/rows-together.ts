import { fault, ok, type Result, refuse } from '../knit/fault.ts';
import { entryId } from './ids.ts';
import type { PlaceRecord } from './records.ts';
import type { Box } from './store.ts';
import type { Taps } from './taps.ts';
import { tapStores, type Wish, writeWish } from './write-log.ts';

/** A row of a make (from 1), as a screen shows it. */
export interface RowMeant {
  readonly key: string;
  readonly row: number;
}

/** Wishes of which nobody can say whether they were written: the same rows again are the same wishes. */
const unsure = new WeakMap<Box, readonly Wish[]>();

/**
 * Finishes rows of several makes on one needle in one transaction: all of them or none. It is not kept outside the box
 * while that does not answer, since what is kept there goes in tap by tap.
 */
export async function finishRows(
  box: Box,
  taps: Pick<Taps, 'drain' | 'saw'>,
  rows: readonly RowMeant[],
): Promise<Result<readonly PlaceRecord[]>> {
  if (!(await taps.drain())) return refuse(fault('store-not-answering'));
  const before = unsure.get(box);
  const doubted = before !== undefined && rowsOf(before) === JSON.stringify(rows);
  const wishes = doubted ? before : rows.map((row) => wishFor(box, row));
  const written = await box.door.write(tapStores, async (tx, again) => {
    const places: PlaceRecord[] = [];
    for (const wish of wishes) places.push(await writeWish(tx, wish, again || doubted));
    return places;
  });
  const code = written.ok ? undefined : written.faults[0]?.code;
  if (code === 'store-not-answering' || code === 'storage-full') unsure.set(box, wishes);
  else unsure.delete(box);
  if (!written.ok) return written;
  box.sentinel.change((was) => ({ entries: was.entries + rows.length }));
  for (const place of written.value) {
    taps.saw(place);
    box.tell({ kind: 'place', key: place.id });
  }
  return ok(written.value);
}

const wishFor = (box: Box, { key, row }: RowMeant): Wish => ({
  kind: 'row',
  from: row - 1,
  id: entryId(box.device),
  make: key,
  at: box.now(),
});

const rowsOf = (wishes: readonly Wish[]): string =>
  JSON.stringify(wishes.map(({ make, from = 0 }): RowMeant => ({ key: make, row: from + 1 })));
