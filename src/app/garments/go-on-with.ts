import type { GarmentId, MakeKey } from '../../progress/log.ts';
import type { PlaceRecord } from '../../store/records.ts';
import type { Store } from '../../store/store.ts';
import { readOr } from '../store.ts';

/**
 * The make to go on with: the one knitted last, unless all of its garment is done, pieces and making up; then that of the
 * garment knitted before it. Undefined where all that were begun are finished: they lie on their shelf and nothing is in hand.
 * @param places those of all garments, garment by garment
 */
export async function goOnWith(
  open: Pick<Store, 'garment'>,
  places: readonly (readonly PlaceRecord[])[],
): Promise<MakeKey | undefined> {
  const begun = places
    .map((own) => ({ own, last: [...own].sort((a, b) => b.touched - a.touched)[0] }))
    .sort((a, b) => (b.last?.touched ?? 0) - (a.last?.touched ?? 0));
  for (const { own, last } of begun) {
    if (!last?.touched) return undefined;
    if (own.some(({ rows, total }) => rows < total) || !(await isMadeUp(open, last.garment))) return last.id;
  }
  return undefined;
}

/** The ends are woven in last: with them nothing is left to do (common practice, no published source). */
async function isMadeUp(open: Pick<Store, 'garment'>, id: GarmentId): Promise<boolean> {
  return readOr(await open.garment(id))?.ticked?.includes('ends') ?? false;
}
