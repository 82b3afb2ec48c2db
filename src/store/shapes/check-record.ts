import * as v from 'valibot';
import { type Fault, fault } from '../../knit/fault.ts';
import type { Recipe } from '../../knit/piece/recipe.ts';
import { nextTask } from '../../pace/next-task.ts';
import type { GarmentRecord, PlanRecord } from '../records.ts';
import { recipe } from './craft-shapes.ts';
import { garmentRecord, plannedPart, planRecord } from './record-shapes.ts';

/** The first thing in a garment or its plans that no backup could bring back; undefined when all can. */
export function troubleIn(garment: GarmentRecord, plans: readonly PlanRecord[]): Fault | undefined {
  return (
    first(garmentRecord, garment) ??
    plans.map((plan) => first(planRecord, plan)).find((found) => found !== undefined)
  );
}

/** The same, each plan in a task of its own: a whole garment looked through in one would make a slow phone deaf. */
export async function troubleInTurn(
  garment: GarmentRecord,
  plans: readonly PlanRecord[],
): Promise<Fault | undefined> {
  let trouble = troubleIn(garment, []);
  for (const plan of plans) {
    if (trouble !== undefined) break;
    await nextTask();
    trouble = first(planRecord, plan);
  }
  return trouble;
}

/** The same for a new plan of a make, to which the store gives its id and version, with the recipe that its piece shall have. */
export const troubleInPlan = (
  { plan }: Pick<PlanRecord, 'plan'>,
  made: Recipe | undefined,
): Fault | undefined => first(plannedPart, plan) ?? (made && first(recipe, made));

function first(shape: v.GenericSchema, value: unknown): Fault | undefined {
  // as JSON would have it: what is undefined is not there
  const read = v.safeParse(shape, JSON.parse(JSON.stringify(value)), { abortEarly: true });
  return read.success ? undefined : faultOf(read.issues[0]);
}

/** A text that is too long is one that she typed, and can shorten; all else is named by its place. */
function faultOf(issue: v.BaseIssue<unknown>): Fault {
  const at = (v.getDotPath(issue) ?? '').slice(0, 200);
  const { type, input, requirement } = issue;
  if (type !== 'max_length' || typeof input !== 'string' || typeof requirement !== 'number')
    return fault('not-storable', { detailText: at });
  return fault('text-too-long', { whereText: at, characters: input.length, mostCharacters: requirement });
}
