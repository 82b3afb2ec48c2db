import { ok, type Result } from '../../knit/fault.ts';
import type { Garment } from '../../knit/piece/garment.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { newGarmentId } from '../editor/ids.ts';
import { plansOf } from '../plans-of.ts';
import { store } from '../store.ts';

/** Puts a garment that came from elsewhere into the workbasket as a new one. Gives its id. */
export async function keepGarment(garment: Garment, now = Date.now()): Promise<Result<string>> {
  const { pieces, ...rest } = garment;
  const id = newGarmentId();
  const record: GarmentRecord = {
    ...rest,
    id,
    createdAt: now,
    changedAt: now,
    pieces: pieces.map((recipe, i) => ({ id: `piece${i + 1}`, recipe })),
  };
  const plans = await plansOf(record);
  if (!plans.ok) return plans;
  const saved = await (await store()).saveGarment(record, plans.value);
  return saved.ok ? ok(id) : saved;
}
