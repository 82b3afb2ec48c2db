import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';

/** A line of the paper's table: one row, or a run of plain rows that repeat the same one or two. */
export interface PaperLine {
  readonly first: number;
  readonly last: number;
  /** the rows that the line spells out: one, or the two that a run repeats */
  readonly rows: readonly PlannedRow[];
  readonly after: number;
}

/** The colour of a row, where rows have one. */
export type ColourAt = (row: number) => string | undefined;

/**
 * A part as lines with a box for every row. Plain rows of one section that repeat in turns of one or two become one
 * line; a row with shaping always has a line of its own, and a stripe begins a line.
 */
export function linesOf(part: PlannedPart, colour: ColourAt = () => undefined): readonly PaperLine[] {
  const lines: PaperLine[] = [];
  let at = 0;
  while (at < part.rows.length) {
    const length = runFrom(part.rows, at, colour);
    const rows = part.rows.slice(at, at + length);
    const [first, second] = rows;
    if (!first) break;
    const spelled = length > 1 && second && !alike(first, second) ? [first, second] : [first];
    const last = rows[rows.length - 1] ?? first;
    lines.push({ first: first.n, last: last.n, rows: spelled, after: last.after });
    at += length;
  }
  return lines;
}

/** How many rows from `at` repeat in turns of one or two; 1 where it is not worth a run. */
function runFrom(rows: readonly PlannedRow[], at: number, colour: ColourAt): number {
  const first = rows[at];
  if (!first || first.shaping.length > 0) return 1;
  let end = at + 1;
  while (continues(rows, at, end, first.section) && colour(end + 1) === colour(first.n)) end += 1;
  return end - at >= 3 ? end - at : 1;
}

function continues(rows: readonly PlannedRow[], at: number, end: number, section: number): boolean {
  const row = rows[end];
  if (!row || row.section !== section || row.shaping.length > 0) return false;
  const before = rows[end - 2];
  return end - at < 2 || (before !== undefined && alike(row, before));
}

const alike = (one: PlannedRow, other: PlannedRow): boolean =>
  JSON.stringify(one.steps) === JSON.stringify(other.steps);
