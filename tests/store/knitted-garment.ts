import fc from 'fast-check';
import type { Garment } from '../../src/knit/piece/garment.ts';
import { plan } from '../../src/knit/piece/plan.ts';
import type { Recipe } from '../../src/knit/piece/recipe.ts';
import { type GarmentRecord, type PlanRecord, planId } from '../../src/store/records.ts';
import { knittableRecipe } from '../arbitraries/knittable-recipe.ts';
import { given } from './scenario.ts';

/** A garment as the store keeps it, with the plans that the planner makes of its pieces. */
export function spelledOut(id: string, garment: Garment): { garment: GarmentRecord; plans: PlanRecord[] } {
  const { pieces, ...rest } = garment;
  const record = {
    ...rest,
    id,
    createdAt: 1000,
    changedAt: 2000,
    pieces: pieces.map((recipe, i) => ({ id: `p${i}`, recipe })),
  };
  return { garment: record, plans: record.pieces.flatMap((piece) => plansOf(id, piece.id, piece.recipe)) };
}

function plansOf(garment: string, piece: string, recipe: Recipe): PlanRecord[] {
  const { parts, mirrorParts = [] } = given(plan(recipe));
  return [parts, mirrorParts].flatMap((list, mirrored) =>
    list.map((part, index) => {
      const mirror = mirrored === 1;
      return {
        id: planId(garment, piece, index, mirror, 1),
        garment,
        piece,
        part: index,
        mirror,
        version: 1,
        plan: part,
      };
    }),
  );
}

/** Any garment of one or two pieces that can be knitted. */
export const knittableGarment = (): fc.Arbitrary<Garment> =>
  fc
    .record({
      name: fc.string({ minLength: 1, maxLength: 40 }),
      notes: fc.string({ maxLength: 80 }),
      pieces: fc.array(
        knittableRecipe().map(({ recipe }) => recipe),
        { minLength: 1, maxLength: 2 },
      ),
    })
    .map((garment) => garment);
