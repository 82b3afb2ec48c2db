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
    if (rows === section.rows && rest.length === 0) done.push(section);
    else if (rows === 0) rest.push(section);
    else {
      done.push({ ...section, rows, shaping: section.shaping.flatMap((s) => upTo(s, rows)) });
      rest.push(goesOn(section, rows, centreShift(part, index, section, rows)));
    }
  }
  return { done, rest };
}

/** The section from its row `from` + 1 on. What was counted and measured where it began stays with the part done. */
function goesOn(section: Section, from: number, shift: Shift): Section {
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

const upTo = (shaping: Shaping, last: number): Shaping[] =>
  keep(
    shaping,
    (row) => row <= last,
    0,
    () => 0,
  );
const after = (shaping: Shaping, last: number, shift: Shift): Shaping[] =>
  keep(shaping, (row) => row > last, -last, shift);

/** The shaping in the rows wanted, moved by `by` rows; nothing where none is left. */
function keep(shaping: Shaping, wanted: (row: number) => boolean, by: number, shift: Shift): Shaping[] {
  switch (shaping.kind) {
    case 'across':
      return wanted(shaping.row) ? [{ ...shaping, row: shaping.row + by }] : [];
    case 'edge':
    case 'middle': {
      const rows = shaping.rows.filter(wanted).map((row) => row + by);
      if (rows.length === 0) return [];
      return [
        shaping.kind === 'middle'
          ? { ...shaping, rows, from: shaping.from + shift(shaping.from) }
          : { ...shaping, rows },
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

/** How many stitches fewer (or more) lie between the right edge and the centre stitch that was at `from`. */
type Shift = (from: number) => number;

/** How the stitches before a centre stitch have changed in the section's rows so far: at the edge, at it, and at those before it. */
function centreShift(part: PlannedPart, index: number, section: Section, rows: number): Shift {
  const first = part.sections[index]?.first ?? 1;
  const atEdge = part.rows
    .slice(first - 1, first - 1 + rows)
    .flatMap((row) => row.shaping)
    .reduce((sum, mark) => (mark.edge === 'right' ? sum + mark.by : sum), 0);
  const done = section.shaping.flatMap((s) =>
    s.kind === 'middle' ? [{ from: s.from, times: s.rows.filter((row) => row <= rows).length }] : [],
  );
  return (from) =>
    done.reduce(
      (sum, centre) => sum - (centre.from < from ? 2 : centre.from === from ? 1 : 0) * centre.times,
      atEdge,
    );
}
