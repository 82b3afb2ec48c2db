import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { PartRecipe, Shaping } from '../../../src/knit/piece/recipe.ts';
import { told } from '../../told.ts';

/** One stitch beside the edge on each of the rows, or more of them at once. */
export const edge = (at: 'right' | 'left' | 'both', by: number, ...rows: readonly number[]): Shaping => ({
  kind: 'edge',
  edge: at,
  by,
  rows,
  inset: 1,
  lean: 'mirrored',
});

export const part = (name: string, from: PartRecipe['from'], over: Partial<PartRecipe> = {}): PartRecipe => ({
  name,
  from,
  end: 'hold',
  sections: [],
  ...over,
});

export const planned = (...parts: readonly PartRecipe[]) => plan({ name: 'P', makes: 1, parts });

export const partsOf = (...of: readonly PartRecipe[]): readonly PlannedPart[] => {
  const made = planned(...of);
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.parts;
};
