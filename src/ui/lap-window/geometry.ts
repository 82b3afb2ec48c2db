import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';
import type { PartShape, RowShape } from '../panel-map/outline-of.ts';

/** The window on the work as it lies in her lap, in px of its own: x to the right, y downward. */
export const lap = { width: 344, height: 114, needleY: 62 } as const;

/** px at either side for the needle's ends, the yarn and what stands out of an edge */
const SIDE = 26;

/** px between two shaping rows ahead, at least: their numbers stand between them */
const PITCH = 19;

/** Shaping rows ahead that have room above the needle. */
const AHEAD = 3;

/** px that one mm takes at most: a narrow strap is not drawn as a blanket */
const MOST = 1.3;

/** px of a triangle, and of a bar's height */
const SIZE = 17;
const BAR = 7;

export interface LapRow {
  readonly n: number;
  readonly y: number;
  /** the edges as they lie in her lap, px */
  readonly left: number;
  readonly right: number;
  readonly marks: readonly LapMark[];
  /** px; the middle of its number, where it lies over none of its marks */
  readonly number: number;
  /** it stands between its marks, and has room there in large letters too */
  readonly isRoomy: boolean;
}

/** Where the count changes: triangles, and for a group the stretch of the row that it takes. */
export interface LapMark {
  /** closed path, px */
  readonly d: string;
  readonly at: 'left' | 'right' | 'within';
  readonly turn: 1 | -1;
}

export interface LapView {
  /** the row in hand on the needle */
  readonly now: LapRow;
  /** the next shaping rows, the nearest first */
  readonly ahead: readonly LapRow[];
  /** seen from the wrong side: what is right lies left */
  readonly turned: boolean;
  /** px that one mm takes */
  readonly scale: number;
  /** mm of the drawing that lie at the middle of the needle */
  readonly middle: number;
  readonly needle: number;
}

/**
 * The row in hand as she holds it: the side that faces her, the needle across, the cloth hanging from it to scale, and
 * above it the next shaping rows, to scale where they are far enough apart and have room, else one above the other.
 */
export function lapView(part: PlannedPart, shape: PartShape, row: PlannedRow): LapView {
  const drawn = shape.rows[row.n - 1] as RowShape;
  const turned = row.side === 'WS';
  const coming = comingShapings(part, row);
  const rows = [drawn, ...coming.map(({ n }) => shape.rows[n - 1] as RowShape)];
  const below = shape.rows.slice(Math.max(0, row.n - 1 - 40), row.n - 1);
  const all = [...rows, ...below];
  const left = Math.min(...all.map(({ left0, left1 }) => Math.min(left0, left1)));
  const right = Math.max(...all.map(({ right0, right1 }) => Math.max(right0, right1)));
  const scale = Math.min(MOST, (lap.width - 2 * SIDE) / Math.max(1, right - left));
  const middle = (left + right) / 2;
  const x = (mm: number) => lap.width / 2 + (turned ? middle - mm : mm - middle) * scale;
  const place = (planned: PlannedRow, at: RowShape, y: number): LapRow => {
    const edges = [x(at.left0), x(at.right0)] as const;
    const [low, high] = [Math.min(...edges), Math.max(...edges)];
    const cell = (part.cells[planned.section]?.width ?? 0) * scale;
    const marks = marksOf(planned, { low, high, y, cell, turned });
    return {
      n: planned.n,
      y,
      left: low,
      right: high,
      marks,
      number: numberAt(low, high, biggestGroup(planned) * cell, marks),
      isRoomy: fitsBetween(low, high, LARGE),
    };
  };
  let y: number = lap.needleY;
  const ahead = coming.flatMap((planned) => {
    const at = shape.rows[planned.n - 1] as RowShape;
    const toScale = lap.needleY - (drawn.bottom - at.bottom) * scale;
    const room = lap.needleY - AHEAD * PITCH;
    y = Math.min(y - PITCH, Math.max(toScale, room));
    return y < room ? [] : [place(planned, at, y)];
  });
  return { now: place(row, drawn, lap.needleY), ahead, turned, scale, middle, needle: drawn.bottom };
}

function comingShapings(part: PlannedPart, row: PlannedRow): readonly PlannedRow[] {
  const found: PlannedRow[] = [];
  for (let i = row.n; i < part.rows.length && found.length < AHEAD; i += 1) {
    const next = part.rows[i] as PlannedRow;
    if (next.shaping.length > 0 && next.after > 0) found.push(next);
  }
  return found;
}

/** px that a number with its word takes to either side of its middle */
const NUMBER = 38;
/** the same in large letters (lap-window.css) */
const LARGE = 58;

/** With a mark at either end. */
const fitsBetween = (low: number, high: number, number: number): boolean => high - low >= 2 * (number + SIZE);

/**
 * Between the marks of its row; where that is short, beyond them, at the end that shapes, since beyond the other the row
 * below has its mark: at the right where both do, and at the other where there is more room.
 */
function numberAt(low: number, high: number, group: number, marks: readonly LapMark[]): number {
  if (fitsBetween(low, high, NUMBER)) return (low + high) / 2;
  const out = Math.max(group, SIZE) + NUMBER;
  const hasRoom = { left: low - out - NUMBER >= 0, right: high + out + NUMBER <= lap.width };
  const isLeft = marks.some(({ at }) => at === 'left') && !marks.some(({ at }) => at === 'right');
  return (isLeft && hasRoom.left) || !hasRoom.right ? low - out : high + out;
}

/** Stitches that are bound off or cast on in one go. */
const biggestGroup = ({ shaping }: PlannedRow): number =>
  Math.max(0, ...shaping.map(({ kind, by }) => (kind === 'edge' ? 0 : Math.abs(by))));

interface Line {
  readonly low: number;
  readonly high: number;
  readonly y: number;
  /** px that a stitch takes */
  readonly cell: number;
  readonly turned: boolean;
}

function marksOf({ shaping }: PlannedRow, line: Line): readonly LapMark[] {
  return shaping.flatMap((mark): LapMark[] => {
    const turn = mark.by < 0 ? -1 : 1;
    if (mark.kind === 'across')
      return across(line, mark.by).map((x) => ({ d: upright(x, line.y, turn), at: 'within', turn }));
    if (mark.edge !== 'right' && mark.edge !== 'left')
      return [{ d: upright((line.low + line.high) / 2, line.y, turn), at: 'within', turn }];
    if (mark.by === 0) return [];
    const at = (mark.edge === 'right') === line.turned ? 'left' : 'right';
    const group = mark.kind === 'edge' ? 0 : Math.abs(mark.by) * line.cell;
    return [{ d: sideways({ at, turn, group, ...line }), at, turn }];
  });
}

/** As many as change, four at the most: they say that it is all along the row; the row's number stands in the middle. */
const across = ({ low, high }: Line, by: number): readonly number[] =>
  [0.25, 0.75, 0.1, 0.9].slice(0, Math.abs(by)).map((part) => low + (high - low) * part);

interface Sideways extends Line, Pick<LapMark, 'at' | 'turn'> {
  /** px that a group bound off or cast on takes; 0 for single stitches */
  readonly group: number;
}

/**
 * Fewer stitches: the foot on the edge, the tip inside; more: the foot on the edge, the tip beyond it. A group lies beside
 * the triangle as a bar: bound off beyond the new edge, cast on within it.
 */
function sideways({ at, turn, group, low, high, y }: Sideways): string {
  const edge = at === 'left' ? low : high;
  const inward = at === 'left' ? 1 : -1;
  const tip = edge + (turn < 0 ? inward : -inward) * SIZE;
  const end = edge + (turn < 0 ? -inward : inward) * group;
  const bar = group > 0 ? `M${px(edge)} ${px(y - BAR / 2)}H${px(end)}V${px(y + BAR / 2)}H${px(edge)}z` : '';
  return `${bar}M${px(edge)} ${px(y - SIZE / 2)}V${px(y + SIZE / 2)}L${px(tip)} ${px(y)}z`;
}

function upright(x: number, y: number, turn: 1 | -1): string {
  const foot = y + (turn < 0 ? SIZE / 2 : -SIZE / 2);
  const tip = y - (turn < 0 ? SIZE / 2 : -SIZE / 2);
  return `M${px(x - SIZE / 2)} ${px(foot)}H${px(x + SIZE / 2)}L${px(x)} ${px(tip)}z`;
}

const px = (value: number): string => String(Math.round(value * 10) / 10);
