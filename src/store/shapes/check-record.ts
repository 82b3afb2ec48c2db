import * as v from 'valibot';
import type { Recipe } from '../../knit/piece/recipe.ts';
import type { GarmentRecord, PlanRecord } from '../records.ts';
import { recipe } from './craft-shapes.ts';
import { garmentRecord, plannedPart, planRecord } from './record-shapes.ts';

/** The place of the first thing in a garment or its plans that no backup could bring back; undefined when all can. */
export function troubleIn(garment: GarmentRecord, plans: readonly PlanRecord[]): string | undefined {
  return (
    first(garmentRecord, garment) ??
    plans.map((plan) => first(planRecord, plan)).find((at) => at !== undefined)
  );
}

/** The same for a new plan of a make, to which the store gives its id and version, with the recipe that its piece shall have. */
export const troubleInPlan = (
  { plan }: Pick<PlanRecord, 'plan'>,
  made: Recipe | undefined,
): string | undefined => first(plannedPart, plan) ?? (made && first(recipe, made));

function first(shape: v.GenericSchema, value: unknown): string | undefined {
  // as JSON would have it: what is undefined is not there
  const read = v.safeParse(shape, JSON.parse(JSON.stringify(value)), { abortEarly: true });
  return read.success ? undefined : (v.getDotPath(read.issues[0]) ?? '').slice(0, 200);
}
