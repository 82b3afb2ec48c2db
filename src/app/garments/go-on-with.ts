import type { GarmentId, MakeKey } from '../../progress/log.ts';
import type { GarmentRecord, PlaceRecord } from '../../store/records.ts';
import type { Store } from '../../store/store.ts';
import { readOr } from '../store.ts';

/** The ends are woven in last: with them nothing of a garment is left to do (common practice, no published source). */
export const isMadeUp = ({ ticked }: Pick<GarmentRecord, 'ticked'>): boolean =>
  ticked?.includes('ends') ?? false;

/**
 * The make to go on with: the one knitted last, unless all of its garment is done, pieces and making up; then that of the
 * garment knitted before it. Undefined where no other garment has been begun: what is finished then stands as finished.
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
    if (own.some(({ rows, total }) => rows < total) || !(await isDone(open, last.garment))) return last.id;
  }
  return undefined;
}

async function isDone(open: Pick<Store, 'garment'>, id: GarmentId): Promise<boolean> {
  const garment = readOr(await open.garment(id));
  return garment !== undefined && isMadeUp(garment);
}
