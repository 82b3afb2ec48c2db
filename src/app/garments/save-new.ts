import { ok, type Result } from '../../knit/fault.ts';
import type { Recipe } from '../../knit/piece/recipe.ts';
import type { GarmentId } from '../../progress/log.ts';
import type { GarmentRecord, PieceRecord, PlanRecord } from '../../store/records.ts';
import { store } from '../store.ts';
import { newGarmentId, pieceIdAt } from './ids.ts';

/** Spells it out, on the page's thread or beside it. */
type PlansOf = (garment: GarmentRecord) => Result<PlanRecord[]> | Promise<Result<PlanRecord[]>>;

type NewGarment = Omit<GarmentRecord, 'id' | 'createdAt' | 'changedAt'>;

interface As {
  readonly id: GarmentId;
  /** ms since 1970 */
  readonly now: number;
  readonly plansOf: PlansOf;
}

/**
 * The one way by which a garment comes to be, whoever made it: drafted, copied, typed, opened from a link, a sample.
 * Stored with every row of it; 'there' where one of its id is there already, which stays as it is.
 */
export async function putNew(
  garment: NewGarment,
  { id, now, plansOf }: As,
): Promise<Result<'new' | 'there'>> {
  const record: GarmentRecord = { ...garment, id, createdAt: now, changedAt: now };
  const plans = await plansOf(record);
  if (!plans.ok) return plans;
  const saved = await (await store()).saveGarment(record, plans.value);
  if (saved.ok) return ok('new');
  return saved.faults[0]?.code === 'garment-there' ? ok('there') : saved;
}

/** The last one of which nobody can say whether it was written: made once more, it is the same garment. */
let unsure: { readonly made: string; readonly id: GarmentId } | undefined;

/** Puts a garment into the workbasket under an id of its own, once. Gives the id. */
export async function saveNew(
  garment: NewGarment,
  now: number,
  plansOf: PlansOf,
): Promise<Result<GarmentId>> {
  const made = JSON.stringify(garment);
  const id = unsure?.made === made ? unsure.id : newGarmentId();
  const put = await putNew(garment, {
    id,
    now,
    plansOf: async (record) => {
      const plans = await plansOf(record);
      if (plans.ok) unsure = { made, id };
      return plans;
    },
  });
  if (!put.ok) return put;
  unsure = undefined;
  return ok(id);
}

/** Recipes as pieces of a garment that nobody has begun. */
export const numbered = (recipes: readonly Recipe[]): readonly PieceRecord[] =>
  recipes.map((recipe, i) => ({ id: pieceIdAt(i), recipe }));
