import type { Fault } from '../fault.ts';
import type { Side } from '../row/step.ts';
import type { PartRecipe, PartStart, Recipe, Section, Shaping } from './recipe.ts';
import { firstSides, sideOfRow } from './sides.ts';

/** Stitches by sums alone, no row spelled out: for a recipe in the making, where `plan` may have to refuse. */
export interface PartCount {
  /** undefined where the start cannot be read */
  readonly start: number | undefined;
  readonly sections: readonly SectionCount[];
  /** at the end of the part */
  readonly left: number | undefined;
  readonly rows: number;
}

export interface SectionCount {
  /** row numbers within the part, from 1; last < first when it has no rows */
  readonly first: number;
  readonly last: number;
  readonly side: Side;
  readonly before: number | undefined;
  /** undefined from the first section on that cannot be worked or read */
  readonly after: number | undefined;
  /** the row of the section (from 1) after which no stitch would be left */
  readonly emptyAt?: number;
}

/** @param unread faults found while the recipe was read: no count is given from their section on */
export function counts(recipe: Recipe, unread: readonly Fault[] = []): readonly PartCount[] {
  const sides = firstSides(recipe.parts);
  return recipe.parts.map((part, i) => countPart(part, sides[i] ?? 'RS', unread));
}

function countPart(part: PartRecipe, side: Side, unread: readonly Fault[]): PartCount {
  const here = unread.filter((found) => found.at.part === part.name);
  const startUnread = here.some((found) => found.at.sectionIndex === undefined && found.at.field !== 'name');
  const start = startUnread ? undefined : startOf(part.from);
  let count = start;
  let rows = 0;
  const sections = part.sections.map((section, i): SectionCount => {
    const before = count;
    const emptyAt = before === undefined ? undefined : firstEmpty(section, before);
    const isUnread = here.some((found) => found.at.sectionIndex === i);
    count =
      before === undefined || isUnread || emptyAt !== undefined ? undefined : before + changeOf(section);
    const first = rows + 1;
    rows += section.rows;
    return {
      first,
      last: rows,
      side: sideOfRow(first, side),
      before,
      after: count,
      ...(emptyAt === undefined ? {} : { emptyAt }),
    };
  });
  return { start, sections, left: count, rows };
}

export function startOf(from: PartStart): number {
  if ('castOn' in from) return from.castOn;
  if ('part' in from) return from.stitches;
  return from.pickUp.reduce((sum, edge) => sum + edge.stitches, 0);
}

/** What a section adds to the count. */
export const changeOf = (section: Pick<Section, 'shaping'>): number =>
  section.shaping.flatMap(changes).reduce((sum, [, by]) => sum + by, 0);

/** The row after which no stitch is left, where there is one. */
function firstEmpty(section: Section, before: number): number | undefined {
  const byRow = new Map<number, number>();
  for (const [row, by] of section.shaping.flatMap(changes)) byRow.set(row, (byRow.get(row) ?? 0) + by);
  let count = before;
  for (const row of [...byRow.keys()].sort((a, b) => a - b)) {
    count += byRow.get(row) ?? 0;
    // the very last row may use up the rest: the point of a shoulder
    if (count < 0 || (count === 0 && row < section.rows)) return row;
  }
  return undefined;
}

function changes(shaping: Shaping): readonly (readonly [row: number, by: number])[] {
  switch (shaping.kind) {
    case 'edge': {
      const by = shaping.edge === 'both' ? 2 * shaping.by : shaping.by;
      return shaping.rows.map((row) => [row, by] as const);
    }
    case 'across':
      return [[shaping.row, shaping.by]];
    case 'middle':
      return shaping.rows.map((row) => [row, -2] as const);
    case 'bind off':
      return shaping.groups.map((group) => [group.row, -group.stitches] as const);
    case 'cast on':
      return shaping.groups.map((group) => [group.row, group.stitches] as const);
    case 'turn':
      return [];
  }
}
