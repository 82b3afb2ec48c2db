import type { Recipe } from './recipe.ts';

/** Of two fronts that are each other's mirror image, the first is the left one as worn; undefined for any other piece. */
export const wornSide = (
  { role, makes, mirrored }: Pick<Recipe, 'role' | 'makes' | 'mirrored'>,
  make: number,
): 'left' | 'right' | undefined =>
  role === 'front' && mirrored && makes === 2 ? (make % 2 ? 'left' : 'right') : undefined;
