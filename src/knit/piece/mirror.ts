import { mirrorWords } from './mirror-words.ts';
import type { Edge, Group, PartRecipe, Recipe, Section, Shaping } from './recipe.ts';

const otherEdge = (edge: Edge): Edge => (edge === 'right' ? 'left' : 'right');

/**
 * The mirror image of a recipe, worked with the same rows and sides: edges change places, and groups, which are
 * worked only where a row begins, move by one row. Rows spelled out in words are read from their other end.
 */
export function mirrorRecipe(recipe: Recipe): Recipe {
  return { ...recipe, parts: recipe.parts.map(mirrorPart) };
}

function mirrorPart(part: PartRecipe): PartRecipe {
  const { from } = part;
  const sections = mirrorWords(part).map(
    (section): Section => ({
      ...section,
      shaping: section.shaping.map((s) => mirrorShaping(s, section.rows)),
    }),
  );
  if ('part' in from && from.edge !== 'middle') {
    return { ...part, from: { ...from, edge: otherEdge(from.edge) }, sections };
  }
  return { ...part, sections };
}

function mirrorShaping(shaping: Shaping, rows: number): Shaping {
  switch (shaping.kind) {
    case 'edge':
      return shaping.edge === 'both' ? shaping : { ...shaping, edge: otherEdge(shaping.edge) };
    case 'bind off':
    case 'cast on':
    case 'turn':
      return { ...shaping, edge: otherEdge(shaping.edge), groups: shift(shaping.groups, rows) };
    default:
      return shaping;
  }
}

/** Groups on odd rows go one row later where the section has that row; others go one earlier. */
function shift(groups: readonly Group[], rows: number): Group[] {
  const odd = groups.every((g) => g.row % 2 === 1);
  const last = Math.max(...groups.map((g) => g.row));
  const by = odd ? (last + 1 <= rows ? 1 : -1) : -1;
  return groups.map((g) => ({ ...g, row: g.row + by }));
}
