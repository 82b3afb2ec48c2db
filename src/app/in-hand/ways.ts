import { type Way, waysIn } from '../../progress/ways.ts';
import { chooseWay } from '../../store/place/choose-way.ts';
import type { PlaceRecord } from '../../store/records.ts';
import type { Store } from '../../store/store.ts';
import { type InHand, storedRows } from '../state.ts';
import { readOr, store } from '../store.ts';
import { openLog } from './count.ts';
import { openMake } from './open-make.ts';
import { tap } from './taps.ts';

/** A way that a device went, as she can tell it from another. */
export interface WayToTell {
  readonly way: Way;
  readonly rows: number;
  /** of the whole plan */
  readonly total: number;
  /** on the needle */
  readonly stitches: number;
  readonly isHere: boolean;
}

/** The ways of a make: those that she is to choose from, the one shown first, and those that she has left. */
export async function waysOf({
  id,
}: PlaceRecord): Promise<
  { readonly open: readonly WayToTell[]; readonly left: readonly WayToTell[] } | undefined
> {
  const box = await store();
  const entries = readOr(await box.entriesOf(id));
  if (entries === undefined) return undefined;
  const { shown, open, left } = waysIn(entries);
  const choice = shown && open.length > 0 ? [shown, ...open] : [];
  return { open: await toTell(box, choice), left: await toTell(box, left) };
}

async function toTell(open: Store, ways: readonly Way[]): Promise<readonly WayToTell[]> {
  const found = await Promise.all(ways.map((way) => open.plan(way.plan)));
  return ways.flatMap((way, i) => {
    const record = found[i];
    if (!record?.ok) return [];
    const { rows, start } = record.value.plan;
    const stitches = rows[way.rows - 1]?.after ?? start;
    const isHere = way.device === open.box.device;
    return [{ way, rows: way.rows, total: rows.length, stitches, isHere }];
  });
}

/** Goes on by a way; the others stay in the log. */
export async function goBy(now: InHand, way: Way): Promise<void> {
  await tap(now, {
    write: async ({ box }, make) => {
      const written = await chooseWay(box, make, way, now.place);
      return written.ok ? { ...written, value: { place: written.value } } : written;
    },
    stored: () => {
      storedRows.value += 1;
    },
  });
  await Promise.all([openMake(now.make), openLog(now.make)]);
}
