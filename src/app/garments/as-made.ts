import { asPlanned } from '../../knit/piece/as-planned.ts';
import type { Garment } from '../../knit/piece/garment.ts';
import type { PartRecipe, Recipe } from '../../knit/piece/recipe.ts';
import { asReallyKnitted } from '../../knit/piece/rework/make-recipe.ts';
import type { GarmentRecord } from '../../store/records.ts';
import type { GarmentView, PieceView } from '../state.ts';
import { garmentOf } from './garment-of.ts';

/** The garment's recipe with what was changed on the way: each part as its first make was really knitted. */
export function asMade({ garment, pieces }: GarmentView, name: string): Garment {
  const recipes = garment.pieces.map(({ id, recipe }) =>
    recipeAsMade(
      recipe,
      pieces.find((p) => p.id === id),
    ),
  );
  return { ...garmentOf(garment), name, pieces: recipes };
}

/**
 * What is passed on of a garment: the pieces that she planned anew while knitting as they are knitted now, so that they go
 * together with those that she changed to match. As it was planned where others could not knit it so.
 */
export function asPassedOn({ garment, pieces }: GarmentView): GarmentRecord {
  const made = garment.pieces.map((one) => {
    const view = pieces.find(({ id }) => id === one.id);
    return isReworked(view) ? { ...one, recipe: recipeAsMade(one.recipe, view) } : one;
  });
  if (made.every((one, i) => one === garment.pieces[i])) return garment;
  const passed: GarmentRecord = { ...garment, pieces: made };
  return asPlanned(garmentOf(passed)).ok ? passed : garment;
}

const isReworked = (view: PieceView | undefined): boolean =>
  view?.makes[0]?.parts.some(({ recipe }) => recipe !== undefined) ?? false;

function recipeAsMade(recipe: Recipe, view: PieceView | undefined): Recipe {
  const first = view?.makes[0];
  const parts = recipe.parts.map((part, i): PartRecipe => {
    const knitted = first?.parts[i];
    return (knitted && asReallyKnitted(knitted)) ?? part;
  });
  return { ...recipe, parts };
}
