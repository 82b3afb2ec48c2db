import type { Plan, PlannedPart } from '../piece/planned.ts';
import type { Edge } from '../piece/recipe.ts';
import {
  edgeLengthMm,
  firstShapedRow,
  leafAt,
  leavesOf,
  rowsAtEdge,
  rowsKnitted,
  slopeAt,
  stitchesAtEnd,
} from './top.ts';

/** The edges of a knitted piece that are seamed, in rows and stitches; read off its plan. */
export interface PieceEdges {
  /** the edge at the side seam; the right one where both are */
  readonly side: Edge;
  /** widest, and from cast-on to the highest row, mm */
  readonly widthMm: number;
  readonly heightMm: number;
  /** rows from the cast-on to the armhole (or to the end where there is none) */
  readonly rowsToArmhole: number;
  readonly hasArmhole: boolean;
  /** mm above the cast-on at which the armhole begins; 0 where there is none */
  readonly armholeAtMm: number;
  /** rows from the armhole's first bind-off to the shoulder; 0 where there is none */
  readonly armholeRows: number;
  /** stitches bound off first at the underarm of one side */
  readonly underarm: number;
  /** stitches of each shoulder; undefined where the top is straight from edge to edge */
  readonly shoulder: number | undefined;
  /** rows along one side of the neck, and stitches between its sides */
  readonly neckRows: number;
  readonly neckStitches: number;
  /** stitches of the straight top edge */
  readonly topStitches: number;
  /** along one armhole from the underarm to the shoulder, mm */
  readonly armholeEdgeMm: number;
  /** of a sleeve: along its cap from underarm to underarm, mm */
  readonly capEdgeMm: number;
}

export function edgesOf(plan: Plan): PieceEdges {
  const body = plan.parts[0];
  const side = sideEdge(plan);
  const slope = slopeAt(plan, side);
  const rows = rowsAtEdge(plan, side);
  const armhole = armholeRow(plan, side);
  const shoulder = shoulderOf(plan);
  return {
    side,
    widthMm: Math.max(
      (body?.start ?? 0) * (body?.cells[0]?.width ?? 0),
      ...(body?.rows ?? []).map((row) => row.after * (body?.cells[row.section]?.width ?? 0)),
    ),
    heightMm: Math.max(0, ...plan.parts.map((p) => p.rows[p.rows.length - 1]?.height ?? p.base)),
    rowsToArmhole: armhole === undefined ? rows : armhole - 1,
    hasArmhole: armhole !== undefined,
    armholeAtMm: armhole === undefined ? 0 : (body?.rows[armhole - 2]?.height ?? 0),
    armholeRows: armhole === undefined ? 0 : rows - slope.rows - (armhole - 1),
    underarm: armhole === undefined ? 0 : groupIn(plan, side, armhole),
    shoulder,
    neckRows: neckRows(plan, side),
    neckStitches: neckStitches(plan, shoulder),
    topStitches: body ? stitchesAtEnd(body) : 0,
    armholeEdgeMm: armhole === undefined ? 0 : edgeLengthMm(plan, side, armhole, rows - slope.rows),
    capEdgeMm: armhole === undefined ? 0 : 2 * edgeLengthMm(plan, side, armhole, rows) + topWidth(body),
  };
}

const topWidth = (body: PlannedPart | undefined): number =>
  body ? stitchesAtEnd(body) * (body.cells[body.cells.length - 1]?.width ?? 0) : 0;

/**
 * The open front of a cardigan is one panel with the neck at its inner edge: one of a mirrored pair, or, in a copied
 * pattern that has left and right apart, one whose shoulder slopes at one edge only.
 */
function isOpen(plan: Plan): boolean {
  if (leavesOf(plan).length !== 1) return false;
  return plan.mirrored || slopeAt(plan, 'right').stitches !== slopeAt(plan, 'left').stitches;
}

/** The edge that is seamed: of an open front the outer one, of a whole panel the right one stands for both. */
function sideEdge(plan: Plan): Edge {
  if (!isOpen(plan)) return 'right';
  const slopes = { right: slopeAt(plan, 'right').stitches, left: slopeAt(plan, 'left').stitches };
  if (slopes.right !== slopes.left) return slopes.right > slopes.left ? 'right' : 'left';
  const shaped = (['right', 'left'] as const).filter((edge) => firstShapedRow(plan, edge) !== undefined);
  if (shaped.length === 1) return shaped[0] === 'right' ? 'left' : 'right';
  const first = (edge: Edge) => firstShapedRow(plan, edge, 'bind off') ?? Number.POSITIVE_INFINITY;
  return first('right') <= first('left') ? 'right' : 'left';
}

/** The first group bound off at the side, unless it already belongs to the shoulder's slope. */
function armholeRow(plan: Plan, side: Edge): number | undefined {
  const row = firstShapedRow(plan, side, 'bind off');
  const slope = slopeAt(plan, side);
  if (row === undefined) return undefined;
  return slope.rows > 0 && row > rowsAtEdge(plan, side) - slope.rows ? undefined : row;
}

function groupIn(plan: Plan, side: Edge, row: number): number {
  const mark = plan.parts[0]?.rows[row - 1]?.shaping.find((m) => m.kind === 'bind off' && m.edge === side);
  return mark ? -mark.by : 0;
}

function shoulderOf(plan: Plan): number | undefined {
  if (isOpen(plan)) {
    const side = sideEdge(plan);
    const leaf = leafAt(plan, side);
    return leaf && slopeAt(plan, side).stitches + stitchesAtEnd(leaf);
  }
  const leaf = leavesOf(plan).find(
    (p) => p.parent !== undefined && 'part' in p.from && p.from.edge === 'right',
  );
  const { stitches } = slopeAt(plan, 'right');
  if (leaf) return stitches + stitchesAtEnd(leaf);
  return stitches > 0 ? stitches : undefined;
}

/** From the neck's first shaping to the shoulder, along one side. */
function neckRows(plan: Plan, side: Edge): number {
  if (isOpen(plan)) {
    const inner = side === 'right' ? 'left' : 'right';
    const first = firstShapedRow(plan, inner);
    return first === undefined ? 0 : rowsAtEdge(plan, inner) - first + 1;
  }
  return Math.max(
    0,
    ...leavesOf(plan)
      .filter((p) => p.parent !== undefined)
      .map(rowsKnitted),
  );
}

/** Stitches that lie between the shoulders: those at the middle, and those decreased on the way up. */
function neckStitches(plan: Plan, shoulder: number | undefined): number {
  const body = plan.parts[0];
  if (!body || isOpen(plan) || shoulder === undefined) return 0;
  const middle = leavesOf(plan).filter((p) => 'part' in p.from && p.from.edge === 'middle');
  if (body.end === 'split') return middle.reduce((sum, p) => sum + p.start, 0);
  return stitchesAtEnd(body);
}
