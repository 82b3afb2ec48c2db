import type { Garment } from '../../knit/piece/garment.ts';
import type { PartRecipe, Recipe } from '../../knit/piece/recipe.ts';
import { asReallyKnitted } from '../../knit/piece/rework/make-recipe.ts';
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

function recipeAsMade(recipe: Recipe, view: PieceView | undefined): Recipe {
  const first = view?.makes[0];
  const parts = recipe.parts.map((part, i): PartRecipe => {
    const knitted = first?.parts[i];
    return (knitted && asReallyKnitted(knitted)) ?? part;
  });
  return { ...recipe, parts };
}
