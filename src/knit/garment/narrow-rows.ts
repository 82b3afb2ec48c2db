import type { Edge, Group, PartRecipe, Section, Shaping } from '../piece/recipe.ts';

/** Stitches that a decrease or increase with its inset is worked over. */
const widthOf = ({ by, inset }: EdgeShaping): number => inset + (by < 0 ? 1 - by : by);

type EdgeShaping = Extract<Shaping, { kind: 'edge' }>;

/**
 * A part in short rows whose decreases have room: in a row that turns so near to them that no stitch is left for the
 * inset, they lie at the edge itself.
 * @param asleep stitches that short rows of the part before it have left unworked
 */
export function withRoomForShaping(part: PartRecipe, asleep: number): PartRecipe {
  const { from } = part;
  if ('pickUp' in from) return part;
  const needle = { count: 'castOn' in from ? from.castOn : from.stitches, unworked: asleep };
  return { ...part, sections: part.sections.map((section) => roomy(section, needle)) };
}

interface Needle {
  count: number;
  unworked: number;
}

function roomy(section: Section, needle: Needle): Section {
  const narrow = new Set<number>();
  const turns = section.shaping.some(({ kind }) => kind === 'turn');
  for (let row = 1; row <= section.rows; row += 1) {
    for (const shaping of section.shaping) takeGroups(shaping, row, needle);
    if (!turns) needle.unworked = 0;
    const edges = section.shaping.filter((one): one is EdgeShaping => isEdgeAt(one, row));
    const need = edges.reduce((sum, one) => sum + sidesOf(one) * widthOf(one), 0);
    if (edges.length > 0 && need > needle.count - needle.unworked) narrow.add(row);
    for (const one of edges) needle.count += sidesOf(one) * one.by;
  }
  if (narrow.size === 0) return section;
  return { ...section, shaping: section.shaping.flatMap((one) => parted(one, narrow)) };
}

function takeGroups(shaping: Shaping, row: number, needle: Needle): void {
  if (shaping.kind !== 'turn' && shaping.kind !== 'bind off') return;
  const stitches = sumAt(shaping.groups, row);
  if (shaping.kind === 'turn') needle.unworked += stitches;
  else needle.count -= stitches;
}

const sumAt = (groups: readonly Group[], row: number): number =>
  groups.reduce((sum, group) => sum + (group.row === row ? group.stitches : 0), 0);

const isEdgeAt = (shaping: Shaping, row: number): boolean =>
  shaping.kind === 'edge' && shaping.rows.includes(row);

const sidesOf = ({ edge }: { readonly edge: Edge | 'both' }): number => (edge === 'both' ? 2 : 1);

/** The same shaping, at the edge itself on the rows that are too narrow. */
function parted(shaping: Shaping, narrow: ReadonlySet<number>): Shaping[] {
  if (shaping.kind !== 'edge' || !shaping.rows.some((row) => narrow.has(row))) return [shaping];
  const on = (isNarrow: boolean): EdgeShaping => ({
    ...shaping,
    rows: shaping.rows.filter((row) => narrow.has(row) === isNarrow),
    inset: isNarrow ? 0 : shaping.inset,
  });
  return [on(false), on(true)].filter(({ rows }) => rows.length > 0);
}
