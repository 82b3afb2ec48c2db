import { counts } from '../piece/counts.ts';
import type { PartRecipe, Recipe } from '../piece/recipe.ts';

/** What a recipe brings to its seams, counted from the recipe itself. */

/** Rows of the side seam: hem and body, whichever parts they lie in (a deep neck parts a front below its underarm). */
export function sideRowsOf({ parts }: Pick<Recipe, 'parts'>): number {
  return alongRight({ parts }).reduce((sum, part) => sum + rowsIn(part, ['hem', 'body']), 0);
}

/** The parts that have the piece's right edge. */
const alongRight = ({ parts }: Pick<Recipe, 'parts'>): readonly PartRecipe[] =>
  parts.filter((part) => !('part' in part.from) || part.from.edge === 'right');

const rowsIn = ({ sections }: PartRecipe, names: readonly string[]): number =>
  sections.reduce((sum, section) => sum + (names.includes(section.name) ? section.rows : 0), 0);

/**
 * Stitches of the shoulder at the right edge: its groups and what is left at the end.
 * @param neck stitches that are bound off together with it, where the neck is not shaped
 * @param isWhole the part that ends there has both shoulders
 */
export function shoulderOf(recipe: Recipe, neck: number, isWhole: boolean): number {
  const at = Math.max(
    0,
    recipe.parts.findIndex((part) => 'part' in part.from && part.from.edge === 'right'),
  );
  const left = (counts(recipe)[at]?.left ?? 0) - neck;
  const groups = alongRight(recipe).reduce((sum, part) => sum + groupsAtRight(part), 0);
  return groups + (isWhole ? left / 2 : left);
}

const groupsAtRight = ({ sections }: PartRecipe): number =>
  sections
    .filter((section) => section.name === 'shoulder')
    .flatMap((section) => section.shaping)
    .reduce(
      (sum, s) =>
        sum +
        (s.kind === 'bind off' && s.edge === 'right' ? s.groups.reduce((n, g) => n + g.stitches, 0) : 0),
      0,
    );
