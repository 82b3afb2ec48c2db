import type { PlannedPart, PlannedRow, ShapingMark } from '../piece/planned.ts';
import type { Edge } from '../piece/recipe.ts';
import { rowsKnitted, stitchesAtEnd } from './top.ts';

/** A step along a side: a row that grows there, or stitches that lie level. */
export interface Bit {
  /** of the part, from 1 */
  readonly row: number;
  readonly section: string;
  /** bound off or cast on at once; else the row's own height, and what is decreased or increased in it */
  readonly level: boolean;
  /** below 0: taken away */
  readonly by: number;
  /** of one stitch, and of the row; mm */
  readonly width: number;
  readonly height: number;
}

/** A side of a part from its beginning up. */
export function sideBits(part: PlannedPart, edge: Edge): readonly Bit[] {
  const found = known.get(part) ?? {};
  known.set(part, found);
  found[edge] ??= bitsAlong(part, edge);
  return found[edge];
}

/** A plan never changes, and the same sides are asked for with every mend that is tried. */
const known = new WeakMap<PlannedPart, { [E in Edge]?: readonly Bit[] }>();

function bitsAlong(part: PlannedPart, edge: Edge): readonly Bit[] {
  const bits: Bit[] = [];
  for (const row of part.rows.slice(0, rowsKnitted(part))) {
    const section = part.sections[row.section]?.name ?? '';
    const { width, height } = part.cells[row.section] ?? { width: 0, height: 0 };
    const bit = (isLevel: boolean, by: number): Bit => ({
      row: row.n,
      section,
      level: isLevel,
      by,
      width,
      height,
    });
    const level = sum(row, edge, isAtOnce);
    if (level !== 0) bits.splice(beforePair(bits, row, edge), 0, bit(true, level));
    if (!isIdle(row, edge)) bits.push(bit(false, sum(row, edge, isInRow)));
  }
  return bits;
}

const isAtOnce = ({ kind }: ShapingMark): boolean => kind === 'bind off' || kind === 'cast on';
const isInRow = ({ kind }: ShapingMark): boolean => kind === 'edge';

/** Most rows shape nothing. */
const sum = ({ shaping }: PlannedRow, edge: Edge, of: (mark: ShapingMark) => boolean): number =>
  shaping.length === 0
    ? 0
    : shaping.reduce((total, mark) => total + (mark.edge === edge && of(mark) ? mark.by : 0), 0);

/** Groups at the left edge begin the wrong-side row of a pair: they lie as high as those at the right edge. */
const beforePair = (bits: readonly Bit[], { side, n }: PlannedRow, edge: Edge): number =>
  edge === 'left' && side === 'WS' && bits.at(-1)?.level === false && bits.at(-1)?.row === n - 1
    ? bits.length - 1
    : bits.length;

/** Rows of short rows that do not come to the edge: those that turn before it, and those that begin at the turn. */
function isIdle({ side, steps }: PlannedRow, edge: Edge): boolean {
  const step = (side === 'RS') === (edge === 'right') ? steps[0] : steps.at(-1);
  return step !== undefined && 'work' in step && step.work === 'unworked';
}

/** Rows without a change after which what is taken off at once begins an edge anew. */
const ANEW = 6;

/**
 * Length of a run of bits along the knitted edge, mm. A decrease or a small group belongs to a slant over the rows up to
 * the next one; the slant after the last is as steep as the one before it, and what follows is upright. What lies
 * level where the run begins, or after a stretch without shaping, is a corner.
 * @param isBesideLevel what lies before the run is level (the middle of a neck): its first group goes on from there
 */
export function lengthAlong(bits: readonly Bit[], isBesideLevel = false): number {
  const { lead, events } = eventsIn(bits, isBesideLevel);
  let length = lead;
  events.forEach((event, i) => {
    const before = events[i - 1];
    const across = Math.abs(event.by) * event.width;
    if (event.corner) {
      length += across + event.heightAfter;
      return;
    }
    const most = before ? 2 * Math.max(2, before.rowsAfter) : event.rowsAfter;
    const last = Math.max(2, before?.rowsAfter ?? 2);
    const rows = Math.min(event.rowsAfter, i === events.length - 1 ? last : most);
    const rise = event.rowsAfter === 0 ? 0 : (event.heightAfter * rows) / event.rowsAfter;
    length += Math.hypot(across, rise) + event.heightAfter - rise;
  });
  return length;
}

interface Event {
  readonly by: number;
  readonly width: number;
  readonly corner: boolean;
  rowsAfter: number;
  heightAfter: number;
}

function eventsIn(bits: readonly Bit[], isBesideLevel: boolean): { lead: number; events: readonly Event[] } {
  const events: Event[] = [];
  let lead = 0;
  let leadRows = isBesideLevel ? 0 : ANEW;
  for (const [i, bit] of bits.entries()) {
    const last = events.at(-1);
    if (bit.by !== 0) {
      const corner = bit.level && (i === 0 || (last?.rowsAfter ?? leadRows) >= ANEW) && Math.abs(bit.by) > 1;
      events.push({ by: bit.by, width: bit.width, corner, rowsAfter: 0, heightAfter: 0 });
    }
    const now = events.at(-1);
    if (bit.level) continue;
    if (now) {
      now.rowsAfter += 1;
      now.heightAfter += bit.height;
    } else {
      lead += bit.height;
      leadRows += 1;
    }
  }
  return { lead, events };
}

/** Stitches of a part's beginning or top, and how wide one of them is. */
export function endOf(part: PlannedPart, edge: 'start' | 'top'): { stitches: number; width: number } {
  if (edge === 'start') return { stitches: part.start, width: part.cells[0]?.width ?? 0 };
  const last = part.rows[rowsKnitted(part) - 1];
  const width = part.cells[last?.section ?? 0]?.width ?? 0;
  return { stitches: stitchesAtEnd(part), width };
}
