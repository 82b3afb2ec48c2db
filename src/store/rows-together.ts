import { fault, ok, type Result, refuse } from '../knit/fault.ts';
import type { PlaceRecord } from './records.ts';
import type { Box } from './store.ts';
import type { Taps } from './taps.ts';
import { tapStores, writeWish } from './write-log.ts';
import { type AskedOf, writeOnce } from './write-once.ts';

/** A row of a make (from 1), as a screen shows it. */
export interface RowMeant {
  readonly key: string;
  readonly row: number;
  /** id of the plan that it is of, as it was shown */
  readonly plan?: string;
}

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
  const written = await writeOnce(box, 'rows', rows.map(entryFor), (wishes, doubted) =>
    box.door.write(tapStores, async (tx, again) => {
      const places: PlaceRecord[] = [];
      for (const wish of wishes) places.push(await writeWish(tx, wish, again || doubted));
      return places;
    }),
  );
  if (!written.ok) return written;
  box.sentinel.change((was) => ({ entries: was.entries + rows.length }));
  for (const place of written.value) {
    taps.saw(place);
    box.tell({ kind: 'place', key: place.id });
  }
  return ok(written.value);
}

const entryFor = ({ key, row, plan }: RowMeant): AskedOf => ({
  kind: 'row',
  from: row - 1,
  ...(plan === undefined ? {} : { by: plan }),
  make: key,
});
