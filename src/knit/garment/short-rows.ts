import type { Edge, Group, PartRecipe, Recipe, Section, Shaping } from '../piece/recipe.ts';

/** Name of the sections in which drafts slope their shoulders. */
const SHOULDER = 'shoulder';

/**
 * The same shoulders in short rows: where steps were bound off at the beginning of a row, the row that ends there
 * turns before those stitches instead; all of them are bound off together at the end, or joined stitch to stitch.
 */
export function withShortRows(recipe: Recipe): Recipe {
  const parts = recipe.parts.map((part) => turned(part, outerEdges(part, recipe)));
  return {
    ...recipe,
    parts: parts.map((part, i) => withHandedOn(part, recipe.parts[i] as PartRecipe, recipe)),
  };
}

/** The edges that lie at the arm: of a shoulder the one that it was parted at, of an open front the right one. */
function outerEdges({ from }: PartRecipe, recipe: Recipe): readonly Edge[] {
  if ('part' in from) return from.edge === 'middle' ? [] : [from.edge];
  return recipe.mirrored ? ['right'] : ['right', 'left'];
}

function turned(part: PartRecipe, edges: readonly Edge[]): PartRecipe {
  const sections = part.sections.map((section): Section => {
    if (section.name !== SHOULDER) return section;
    return { ...section, shaping: section.shaping.map((s) => asTurns(s, edges)) };
  });
  return { ...part, sections };
}

/** Groups begin RS rows at the right edge; the row after ends there. At the left edge it is the row before. */
function asTurns(shaping: Shaping, edges: readonly Edge[]): Shaping {
  if (shaping.kind !== 'bind off' || !edges.includes(shaping.edge)) return shaping;
  const by = shaping.edge === 'right' ? 1 : -1;
  return {
    kind: 'turn',
    edge: shaping.edge,
    groups: shaping.groups.map((g): Group => ({ ...g, row: g.row + by })),
  };
}

/** A shoulder parted from the body takes along the stitches that the body now leaves unworked. */
function withHandedOn(part: PartRecipe, old: PartRecipe, recipe: Recipe): PartRecipe {
  const { from } = part;
  if (!('part' in from) || from.edge === 'middle') return part;
  const parent = recipe.parts.find((p) => p.name === from.part);
  const more = parent ? boundOffAt(parent, from.edge) : 0;
  return more === 0 || !('part' in old.from)
    ? part
    : { ...part, from: { ...from, stitches: from.stitches + more } };
}

const boundOffAt = (part: PartRecipe, edge: Edge): number =>
  part.sections
    .filter((section) => section.name === SHOULDER)
    .flatMap((section) => section.shaping)
    .reduce((sum, s) => (s.kind === 'bind off' && s.edge === edge ? sum + groupsSum(s.groups) : sum), 0);

const groupsSum = (groups: readonly Group[]): number => groups.reduce((sum, g) => sum + g.stitches, 0);
