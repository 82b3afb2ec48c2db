import type { Plan, PlannedPart, PlannedRow, ShapingMark } from '../piece/planned.ts';
import type { Edge } from '../piece/recipe.ts';

/** A bind-off group this many rows from the next one still belongs to the same slope. */
const SLOPE_GAP = 4;

const isLastBindOff = (row: PlannedRow): boolean => row.after === 0 && row.before > 0;

/** Rows of fabric: the row that binds everything off adds no height. */
export const rowsKnitted = (part: PlannedPart): number =>
  part.rows.filter((row) => !isLastBindOff(row)).length;

/** Stitches on the needle when only the bind-off or the holder is left to come. */
export function stitchesAtEnd(part: PlannedPart): number {
  const last = part.rows[part.rows.length - 1];
  if (!last) return part.start;
  return isLastBindOff(last) ? last.before : last.after;
}

/** Parts that no other part goes on from. */
export const leavesOf = (plan: Plan): PlannedPart[] =>
  plan.parts.filter((p) => !plan.parts.some((q) => q.parent === p.name));

/** The leaf that lies at an edge of the piece: the part itself where it was never split. */
export const leafAt = (plan: Plan, edge: Edge): PlannedPart | undefined =>
  leavesOf(plan).find((p) => p.parent === undefined || ('part' in p.from && p.from.edge === edge));

/** What an edge needs of a row: its shaping and how large a stitch is, mm. */
interface EdgeRow {
  readonly shaping: readonly ShapingMark[];
  readonly cell: { readonly width: number; readonly height: number };
}

const noCell = { width: 0, height: 0 };

/** Rows at an edge from the piece's top downwards, through the parts that the topmost one goes on from. */
function rowsFromTop(plan: Plan, edge: Edge): EdgeRow[] {
  const rows: EdgeRow[] = [];
  let part = leafAt(plan, edge);
  while (part) {
    const { cells } = part;
    const knitted = part.rows.filter((row) => !isLastBindOff(row)).reverse();
    rows.push(...knitted.map((row) => ({ shaping: row.shaping, cell: cells[row.section] ?? noCell })));
    const { parent } = part;
    part = parent === undefined ? undefined : plan.parts.find((p) => p.name === parent);
  }
  return rows;
}

export interface Slope {
  /** bound off in groups that lead up to the top */
  readonly stitches: number;
  /** rows from the first of them to the top; 0 when there is none */
  readonly rows: number;
}

/** The shoulder's slope at an edge: the groups bound off one after the other up to the top. */
export function slopeAt(plan: Plan, edge: Edge): Slope {
  let stitches = 0;
  let rows = 0;
  for (const [i, row] of rowsFromTop(plan, edge).entries()) {
    const mark = row.shaping.find((m) => m.kind === 'bind off' && m.edge === edge);
    if (mark) {
      stitches -= mark.by;
      rows = i + 1;
    } else if (i + 1 - rows > SLOPE_GAP) break;
  }
  return { stitches, rows };
}

/** Rows from the cast-on to the top, at an edge. */
export const rowsAtEdge = (plan: Plan, edge: Edge): number => rowsFromTop(plan, edge).length;

/** Row (from 1, from the cast-on) of the first shaping of a kind at an edge. */
export function firstShapedRow(plan: Plan, edge: Edge, kind?: 'bind off'): number | undefined {
  const rows = rowsFromTop(plan, edge).reverse();
  const at = rows.findIndex((row) =>
    row.shaping.some((m) => m.edge === edge && m.by < 0 && (kind === undefined || m.kind === kind)),
  );
  return at < 0 ? undefined : at + 1;
}

/** Length of an edge over the rows from `first` to `last` (from 1, from the cast-on), mm, stitch by stitch along its steps. */
export function edgeLengthMm(plan: Plan, edge: Edge, first: number, last: number): number {
  const rows = rowsFromTop(plan, edge)
    .reverse()
    .slice(first - 1, last);
  return rows.reduce((sum, { shaping, cell }) => {
    const by = shaping.reduce((n, m) => n + (m.edge === edge ? m.by : 0), 0);
    return sum + Math.hypot(by * cell.width, cell.height);
  }, 0);
}
