import { counts } from '../piece/counts.ts';
import type { PartRecipe, Recipe } from '../piece/recipe.ts';

/** What a recipe brings to its seams, counted from the recipe itself. */

/** Rows of the side seam: hem and body, whichever parts they lie in (a deep neck parts a front below its underarm). */
export function sideRowsOf({ parts }: Pick<Recipe, 'parts'>): number {
  const whole = parts.filter((part) => !('part' in part.from) || part.from.edge === 'right');
  return whole.reduce((sum, part) => sum + rowsIn(part, ['hem', 'body']), 0);
}

const rowsIn = ({ sections }: PartRecipe, names: readonly string[]): number =>
  sections.reduce((sum, section) => sum + (names.includes(section.name) ? section.rows : 0), 0);

/**
 * Stitches of the shoulder at the right edge: its groups and what is left at the end.
 * @param neck stitches that are bound off together with both shoulders where the panel is not parted
 */
export function shoulderOf(recipe: Recipe, isOpen: boolean, neck: number): number {
  const at = recipe.parts.findIndex((part) => 'part' in part.from && part.from.edge === 'right');
  const index = Math.max(at, 0);
  const part = recipe.parts[index];
  const left = counts(recipe)[index]?.left ?? 0;
  const groups = part ? groupsAtRight(part) : 0;
  return groups + (at === -1 && !isOpen ? (left - neck) / 2 : left);
}

const groupsAtRight = ({ sections }: PartRecipe): number =>
  sections
    .filter((section) => section.name === 'shoulder')
    .flatMap((section) => section.shaping)
    .reduce(
      (sum, s) => sum + (s.kind === 'bind off' && s.edge === 'right' ? s.groups.reduce((n, g) => n + g.stitches, 0) : 0),
      0,
    );
