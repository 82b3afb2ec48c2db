import { ok, type Result, refuse } from '../../knit/fault.ts';
import type { MakeKey, PlanId } from '../../progress/log.ts';
import type { Box } from '../box/box.ts';
import { mayStill } from '../faults.ts';
import type { PlaceRecord } from '../records.ts';
import type { Taps } from './taps.ts';
import { withWaysTold } from './told-ways.ts';
import { tapStores, type Wish, writeWish } from './write-log.ts';
import { type AskedOf, writeOnce } from './write-once.ts';

/** A row of a make (from 1), as a screen shows it. */
export interface RowMeant {
  readonly key: MakeKey;
  readonly row: number;
  /** id of the plan that it is of, as it was shown */
  readonly plan?: PlanId;
}

/** Finishes rows of several makes on one needle in one transaction: all of them or none. */
export async function finishRows(
  box: Box,
  taps: Pick<Taps, 'drain' | 'hold' | 'saw'>,
  rows: readonly RowMeant[],
): Promise<Result<readonly PlaceRecord[]>> {
  const away = await taps.drain();
  return writeOnce(box, 'rows', rows.map(entryFor), async (wishes, doubted) => {
    const written = away ? refuse(away) : await write(box, taps, wishes, doubted);
    if (!mayStill(written)) return written;
    const held = await taps.hold(wishes);
    return held ? ok(held) : written;
  });
}

async function write(
  box: Box,
  taps: Pick<Taps, 'saw'>,
  wishes: readonly Wish[],
  doubted: boolean,
): Promise<Result<readonly PlaceRecord[]>> {
  const written = await box.door.write(tapStores, async (tx, again) => {
    const places: PlaceRecord[] = [];
    for (const wish of wishes)
      places.push(await withWaysTold(tx, await writeWish(tx, wish, again || doubted)));
    return places;
  });
  if (!written.ok) return written;
  box.sentinel.change((was) => ({ entries: was.entries + wishes.length }));
  for (const place of written.value) {
    taps.saw(place);
    box.tell({ kind: 'place', key: place.id });
  }
  return written;
}

const entryFor = ({ key, row, plan }: RowMeant): AskedOf => ({
  kind: 'row',
  from: row - 1,
  ...(plan === undefined ? {} : { by: plan }),
  make: key,
});
