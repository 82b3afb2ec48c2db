import type { PlannedPart } from '../planned.ts';
import type { PartRecipe, Section, Shaping } from '../recipe.ts';

/** A part's sections, parted at the needle: the one in hand is split in two. */
export interface SplitAtNeedle {
  readonly done: readonly Section[];
  /** what is still to be knitted; its rows count from the needle */
  readonly rest: readonly Section[];
}

/** Splits a recipe after `worked` rows. `part` is its plan. */
export function splitAt(recipe: PartRecipe, part: PlannedPart, worked: number): SplitAtNeedle {
  const done: Section[] = [];
  const rest: Section[] = [];
  let left = worked;
  for (const [index, section] of recipe.sections.entries()) {
    const rows = Math.min(left, section.rows);
    left -= rows;
    if (rows === section.rows && (rest.length === 0 || section.rows === 0)) done.push(section);
    else if (rows === 0) rest.push(section);
    else {
      done.push({ ...section, rows, shaping: section.shaping.flatMap((s) => upTo(s, rows)) });
      rest.push(goesOn(section, rows, centreShift(part, index, rows)));
    }
  }
  return { done, rest };
}

/** The section from its row `from` + 1 on. What was counted and measured where it began stays with the part done. */
function goesOn(section: Section, from: number, shift: number): Section {
  const { onNeedle: _counted, measured, words, ...kept } = section;
  const rows = section.rows - from;
  return {
    ...kept,
    rows,
    shaping: section.shaping.flatMap((s) => after(s, from, shift)),
    ...(words === undefined ? {} : { words: words.map((_, i) => words[(i + from) % words.length] ?? []) }),
    ...(measured === undefined ? {} : { measured: { rowMm: measured.rowMm } }),
  };
}

const upTo = (shaping: Shaping, last: number): Shaping[] => keep(shaping, (row) => row <= last, 0, 0);
const after = (shaping: Shaping, last: number, shift: number): Shaping[] =>
  keep(shaping, (row) => row > last, -last, shift);

/** The shaping in the rows wanted, moved by `by` rows; nothing where none is left. */
function keep(shaping: Shaping, wanted: (row: number) => boolean, by: number, shift: number): Shaping[] {
  switch (shaping.kind) {
    case 'across':
      return wanted(shaping.row) ? [{ ...shaping, row: shaping.row + by }] : [];
    case 'edge':
    case 'middle': {
      const rows = shaping.rows.filter(wanted).map((row) => row + by);
      if (rows.length === 0) return [];
      return [
        shaping.kind === 'middle' ? { ...shaping, rows, from: shaping.from + shift } : { ...shaping, rows },
      ];
    }
    case 'bind off':
    case 'cast on':
    case 'turn': {
      const groups = shaping.groups
        .filter(({ row }) => wanted(row))
        .map((group) => ({ ...group, row: group.row + by }));
      return groups.length === 0 ? [] : [{ ...shaping, groups }];
    }
  }
}

/** How the stitches between the right edge and the centre stitch have changed in the section's rows so far. */
function centreShift(part: PlannedPart, section: number, rows: number): number {
  const first = part.sections[section]?.first ?? 1;
  let shift = 0;
  for (const mark of part.rows.slice(first - 1, first - 1 + rows).flatMap((row) => row.shaping)) {
    if (mark.edge === 'right') shift += mark.by;
    if (mark.edge === 'middle') shift += mark.by / 2;
  }
  return shift;
}
