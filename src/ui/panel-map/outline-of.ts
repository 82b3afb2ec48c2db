import type { PlannedPart, PlannedRow, ShapingMark } from '../../knit/piece/planned.ts';

/**
 * The shape of a piece in mm, as it lies on the table with the right side up. x grows to the right, so the right edge
 * of the cast-on is at 0 and the left one at minus its width; y grows downward as in SVG, so row tops are negative.
 */
export interface PartShape {
  /** of each row; `rows[i]` is row number i + 1 */
  readonly rows: readonly RowShape[];
  readonly notches: readonly Notch[];
  /** y of the part's start */
  readonly base: number;
}

/** Edges of a row at its bottom and its top; groups bound off or cast on move the bottom, single stitches the top. */
export interface RowShape {
  readonly bottom: number;
  readonly top: number;
  readonly left0: number;
  readonly right0: number;
  readonly left1: number;
  readonly right1: number;
}

/** Where the count changes: `turn` −1 fewer stitches, +1 more. */
export interface Notch {
  readonly row: number;
  readonly x: number;
  readonly y: number;
  readonly at: 'left' | 'right' | 'within';
  readonly turn: 1 | -1;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface PieceShape {
  readonly parts: readonly PartShape[];
  readonly box: Box;
}

/** mm between parts that hang together with no other (a band beside a body) */
const APART_MM = 40;

export function shapeOfPiece(parts: readonly PlannedPart[]): PieceShape {
  const shapes: PartShape[] = [];
  let shift = 0;
  const shifts = new Map<string, number>();
  for (const part of parts) {
    const drawn = shapeOfPart(part);
    const own = part.parent === undefined ? shift : (shifts.get(part.parent) ?? 0);
    shifts.set(part.name, own);
    const moved = own === 0 ? drawn : moveBy(drawn, own);
    shapes.push(moved);
    if (part.parent === undefined) shift = boxOf(shapes).x - APART_MM;
  }
  return { parts: shapes, box: boxOf(shapes) };
}

export function shapeOfPart(part: PlannedPart): PartShape {
  const first = part.cells[0]?.width ?? 0;
  const rows: RowShape[] = [];
  const notches: Notch[] = [];
  let right = -part.offset;
  let left = right - part.start * first;
  let bottom = -part.base;
  for (const row of part.rows) {
    const cell = part.cells[row.section]?.width ?? first;
    const top = -row.height;
    const shape = rowShape(row, { left, right, bottom, top, cell });
    rows.push(shape);
    notches.push(...row.shaping.flatMap((mark) => notchOf(mark, row.n, shape)));
    ({ left1: left, right1: right } = shape);
    bottom = top;
  }
  return { rows, notches, base: -part.base };
}

interface Before {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
  /** mm a stitch is wide */
  readonly cell: number;
}

function rowShape(row: PlannedRow, { left, right, bottom, top, cell }: Before): RowShape {
  // The bind-off that ends a part takes no height: the edge stays where the last row left it.
  if (top === bottom) return { bottom, top, left0: left, right0: right, left1: left, right1: right };
  const groups = edgeSums(row.shaping, isGroup);
  const singles = edgeSums(row.shaping, (mark) => !isGroup(mark));
  // Another fabric draws the same stitches in or lets them out, both edges alike, where its section begins.
  const drawnIn = (row.before * cell - (right - left)) / 2;
  const left0 = left - drawnIn - groups.left * cell;
  const right0 = right + drawnIn + groups.right * cell;
  const left1 = left0 - singles.left * cell;
  const right1 = right0 + singles.right * cell;
  // What is left is shaping across the row or at its middle: both edges give alike.
  const rest = (row.after * cell - (right1 - left1)) / 2;
  return { bottom, top, left0, right0, left1: left1 - rest, right1: right1 + rest };
}

const isGroup = (mark: ShapingMark): boolean => mark.kind === 'bind off' || mark.kind === 'cast on';

function edgeSums(marks: readonly ShapingMark[], counts: (mark: ShapingMark) => boolean) {
  const sum = { left: 0, right: 0 };
  for (const mark of marks)
    if (counts(mark) && (mark.edge === 'left' || mark.edge === 'right')) sum[mark.edge] += mark.by;
  return sum;
}

function notchOf(
  mark: ShapingMark,
  row: number,
  { bottom, top, left1, right1, left0, right0 }: RowShape,
): Notch[] {
  if (mark.by === 0 || top === bottom) return [];
  const y = (bottom + top) / 2;
  const turn = mark.by < 0 ? -1 : 1;
  if (mark.edge === 'left') return [{ row, y, turn, at: 'left', x: (left0 + left1) / 2 }];
  if (mark.edge === 'right') return [{ row, y, turn, at: 'right', x: (right0 + right1) / 2 }];
  return [{ row, y, turn, at: 'within', x: (left0 + right0) / 2 }];
}

const moveBy = ({ rows, notches, base }: PartShape, x: number): PartShape => ({
  base,
  notches: notches.map((notch) => ({ ...notch, x: notch.x + x })),
  rows: rows.map((row) => ({
    ...row,
    left0: row.left0 + x,
    left1: row.left1 + x,
    right0: row.right0 + x,
    right1: row.right1 + x,
  })),
});

export function boxOf(shapes: readonly PartShape[]): Box {
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { rows, base } of shapes) {
    y1 = Math.max(y1, base);
    for (const row of rows) {
      x0 = Math.min(x0, row.left0, row.left1);
      x1 = Math.max(x1, row.right0, row.right1);
      y0 = Math.min(y0, row.top);
    }
  }
  return x0 > x1 ? { x: 0, y: 0, width: 0, height: 0 } : { x: x0, y: y0, width: x1 - x0, height: y1 - y0 };
}
