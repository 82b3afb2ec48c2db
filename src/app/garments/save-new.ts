import { ok, type Result } from '../../knit/fault.ts';
import type { GarmentRecord, PlanRecord } from '../../store/records.ts';
import { newGarmentId } from '../drafts/editor/ids.ts';
import { store } from '../store.ts';

/** Spells it out, on the page's thread or beside it. */
type PlansOf = (garment: GarmentRecord) => Result<PlanRecord[]> | Promise<Result<PlanRecord[]>>;

type NewGarment = Omit<GarmentRecord, 'id' | 'createdAt' | 'changedAt'>;

/** The last one of which nobody can say whether it was written: made once more, it is the same garment. */
let unsure: { readonly made: string; readonly id: string } | undefined;

/** Puts a new garment with every row of it into the workbasket, once. Gives its id. */
export async function saveNew(garment: NewGarment, now: number, plansOf: PlansOf): Promise<Result<string>> {
  const made = JSON.stringify(garment);
  const id = unsure?.made === made ? unsure.id : newGarmentId();
  const record: GarmentRecord = { ...garment, id, createdAt: now, changedAt: now };
  const plans = await plansOf(record);
  if (!plans.ok) return plans;
  unsure = { made, id };
  const saved = await (await store()).saveGarment(record, plans.value);
  if (!saved.ok && saved.faults[0]?.code !== 'garment-there') return saved;
  unsure = undefined;
  return ok(id);
}
