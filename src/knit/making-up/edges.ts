import type { Plan, PlannedPart, PlannedRow } from '../piece/planned.ts';
import type { Edge } from '../piece/recipe.ts';

/** The edges of a knitted piece that are seamed, in rows and stitches; read off its plan. */
export interface PieceEdges {
  /** widest, and from cast-on to the highest row, mm */
  readonly widthMm: number;
  readonly heightMm: number;
  /** rows from the cast-on to the armhole (or to the end where there is none) */
  readonly rowsToArmhole: number;
  readonly armholeAtMm: number | undefined;
  /** rows from the armhole's first bind-off to the shoulder */
  readonly armholeRows: number;
  /** stitches bound off at the underarm of one side */
  readonly underarm: number;
  /** stitches of each shoulder, right edge first; undefined where the top is straight */
  readonly shoulders: { readonly right: number; readonly left: number } | undefined;
  /** rows along each side of the neck, and stitches between them */
  readonly neckRows: number;
  readonly neckStitches: number;
  /** stitches of the straight top edge: what is left where no shoulder is shaped or split */
  readonly top: number;
}

/** A bind-off group this many rows from the next one still belongs to the same slope. */
const SLOPE_GAP = 4;

export function edgesOf(plan: Plan): PieceEdges {
  const body = plan.parts[0];
  if (!body) return noEdges;
  const leaves = plan.parts.filter((p) => !plan.parts.some((q) => q.parent === p.name));
  const armhole = firstGroup(body);
  const knitted = rowsKnitted(body);
  const shoulders = shouldersOf(body, leaves);
  const slopeRows = body.end === 'split' ? 0 : slopeStart(body);
  const shoulderAt = knitted + longest(leaves.filter((p) => p !== body).map(rowsKnitted)) - slopeRows;
  return {
    widthMm: Math.max(...body.rows.map((row) => row.after * cellWidth(body, row)), body.start * (body.cells[0]?.width ?? 0)),
    heightMm: Math.max(0, ...plan.parts.map((p) => p.rows[p.rows.length - 1]?.height ?? p.base)),
    rowsToArmhole: armhole ? armhole.n - 1 : knitted,
    armholeAtMm: armhole ? (body.rows[armhole.n - 2]?.height ?? 0) : undefined,
    armholeRows: armhole ? shoulderAt - (armhole.n - 1) : 0,
    underarm: armhole ? -(armhole.shaping.find((m) => m.kind === 'bind off')?.by ?? 0) : 0,
    shoulders,
    neckRows: longest(leaves.filter((p) => p.parent !== undefined).map(rowsKnitted)),
    neckStitches: neckStitches(body, leaves),
    top: stitchesAtEnd(body),
  };
}

const noEdges: PieceEdges = {
  widthMm: 0,
  heightMm: 0,
  rowsToArmhole: 0,
  armholeAtMm: undefined,
  armholeRows: 0,
  underarm: 0,
  shoulders: undefined,
  neckRows: 0,
  neckStitches: 0,
  top: 0,
};

const longest = (rows: readonly number[]): number => Math.max(0, ...rows);

const cellWidth = (part: PlannedPart, row: PlannedRow): number => part.cells[row.section]?.width ?? 0;

const isLastBindOff = (row: PlannedRow): boolean => row.after === 0 && row.before > 0;

/** Rows of fabric: the row that binds everything off adds no height. */
export const rowsKnitted = (part: PlannedPart): number => part.rows.filter((row) => !isLastBindOff(row)).length;

/** Stitches on the needle when only the bind-off or the holder is left to come. */
export function stitchesAtEnd(part: PlannedPart): number {
  const last = part.rows[part.rows.length - 1];
  if (!last) return part.start;
  return isLastBindOff(last) ? last.before : last.after;
}

/** The first group bound off at an edge: the armhole, unless it already belongs to the shoulder's slope. */
function firstGroup(body: PlannedPart): PlannedRow | undefined {
  const row = body.rows.find((r) => r.shaping.some((m) => m.kind === 'bind off' && (m.edge === 'right' || m.edge === 'left')));
  if (!row) return undefined;
  const slopes = body.end === 'split' ? 0 : slopeStart(body);
  return row.n > rowsKnitted(body) - slopes ? undefined : row;
}

/** Stitches bound off at an edge in the groups that lead to the part's end. */
function slopeAt(part: PlannedPart, edge: Edge): { stitches: number; rows: number } {
  const knitted = rowsKnitted(part);
  let stitches = 0;
  let from = knitted + 1;
  for (let n = knitted; n >= 1; n -= 1) {
    const mark = part.rows[n - 1]?.shaping.find((m) => m.kind === 'bind off' && m.edge === edge);
    if (mark) {
      stitches -= mark.by;
      from = n;
    } else if (from - n > SLOPE_GAP) break;
  }
  return { stitches, rows: stitches > 0 ? knitted - from + 1 : 0 };
}

const slopeStart = (part: PlannedPart): number => Math.max(slopeAt(part, 'right').rows, slopeAt(part, 'left').rows);

function shouldersOf(body: PlannedPart, leaves: readonly PlannedPart[]): PieceEdges['shoulders'] {
  const shoulder = (edge: Edge): number | undefined => {
    const part = leaves.find((p) => p !== body && 'part' in p.from && p.from.edge === edge);
    return part && slopeAt(part, edge).stitches + stitchesAtEnd(part);
  };
  const right = shoulder('right');
  const left = shoulder('left');
  if (right !== undefined && left !== undefined) return { right, left };
  const slopes = { right: slopeAt(body, 'right').stitches, left: slopeAt(body, 'left').stitches };
  return slopes.right > 0 || slopes.left > 0 ? slopes : undefined;
}

/** Stitches of the neck between the shoulders: bound off or held at the middle, or left when both shoulders are off. */
function neckStitches(body: PlannedPart, leaves: readonly PlannedPart[]): number {
  const middle = leaves.filter((p) => 'part' in p.from && p.from.edge === 'middle');
  if (middle.length > 0) return middle.reduce((sum, p) => sum + p.start, 0);
  return body.end === 'split' ? 0 : slopeStart(body) > 0 ? stitchesAtEnd(body) : 0;
}
