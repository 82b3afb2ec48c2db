import { fault, ok, type Result, refuse } from '../fault.ts';
import type { Side } from '../row/step.ts';
import { workRow } from '../row/work.ts';
import { countAt } from './count/count-at.ts';
import { nextSide } from './count/observation.ts';
import type { PlannedPart, PlannedRow } from './planned.ts';

/** What ripping back means: what comes off, what is on the needle then, what follows. */
export interface RipBack {
  readonly from: number;
  /** rows worked afterwards */
  readonly to: number;
  /** rows to pull */
  readonly rows: number;
  /** stitches on the needle afterwards */
  readonly count: number;
  /** stitches by which `count` may be off: the needle was counted anew further up, and where it went wrong is not known; else 0 */
  readonly uncertain: number;
  /** counts after each row that is pulled, from the one under the needle down; the last is `count` */
  readonly counts: readonly number[];
  /** the row that comes next, where the part goes on */
  readonly next: PlannedRow | undefined;
  readonly nextSide: Side;
  /** needle to take again for that row, mm; undefined where the one in hand goes on */
  readonly needle: number | undefined;
  /** shaping rows that go with it and have to be worked again */
  readonly shaping: readonly number[];
  /** stitches pulled out: they give their yarn back */
  readonly stitches: number;
  /** bound-off groups in it: their stitches come back to the needle (or on it again), by row */
  readonly groups: readonly { readonly row: number; readonly stitches: number }[];
  /** lifelines between, and the rows at which to stop that are easiest to take up: plain, worked on the wrong side */
  readonly stops: readonly Stop[];
}

export interface Stop {
  /** rows worked when she stops there */
  readonly row: number;
  readonly why: 'lifeline' | 'plain row';
}

/** To rows worked, to the nearest lifeline below, or to the last row where the count was right. */
export type RipTarget =
  | { readonly to: number }
  | { readonly lifelines: readonly number[] }
  | { readonly firmGround: number | undefined };

/**
 * Pulls the part back from `from` rows worked.
 * @returns a fault 'nothing to rip' where the target is not below, 'no lifeline', 'no firm ground', 'row outside'
 */
export function ripBack(
  part: PlannedPart,
  from: number,
  target: RipTarget,
  lifelines: readonly number[] = 'lifelines' in target ? target.lifelines : [],
): Result<RipBack> {
  const found = rowOf(target, from);
  if (!found.ok) return found;
  const to = found.value;
  const count = countAt(part, to);
  if (count === undefined || countAt(part, from) === undefined) {
    return refuse(fault('row outside', { rows: part.rows.length, row: to }));
  }
  if (to >= from) {
    return refuse(fault('nothing to rip', { row: to, fromRow: from }));
  }
  const pulled = part.rows.slice(to, from);
  return ok({
    from,
    to,
    rows: from - to,
    count,
    uncertain: recounted(part, to, from),
    counts: pulled.map((row) => countAt(part, row.n - 1) ?? row.before).reverse(),
    next: part.rows[to],
    nextSide: nextSide(part, to),
    needle: anotherNeedle(part.rows[to], part.rows[from - 1]),
    shaping: pulled.filter((row) => row.shaping.length > 0).map((row) => row.n),
    stitches: pulled.reduce((sum, row) => sum + row.after, 0),
    groups: pulled.flatMap((row) => groupsIn(row)),
    stops: stopsBetween(part, to, from, lifelines),
  });
}

const anotherNeedle = (next: PlannedRow | undefined, last: PlannedRow | undefined): number | undefined =>
  next?.needle === last?.needle ? undefined : next?.needle;

/** What a count taken anew above `to` put right. */
function recounted(part: PlannedPart, to: number, from: number): number {
  const above = part.sections.filter(
    (section) => section.onNeedle !== undefined && section.first - 1 > to && section.first - 1 <= from,
  );
  return above.reduce(
    (sum, { onNeedle = 0, first }) => sum + Math.abs(onNeedle - (part.rows[first - 2]?.after ?? part.start)),
    0,
  );
}

function rowOf(target: RipTarget, from: number): Result<number> {
  if ('to' in target) return ok(target.to);
  if ('lifelines' in target) {
    const below = target.lifelines.filter((row) => row < from);
    return below.length > 0 ? ok(Math.max(...below)) : refuse(fault('no lifeline', { fromRow: from }));
  }
  const { firmGround } = target;
  return firmGround !== undefined && firmGround < from
    ? ok(firmGround)
    : refuse(fault('no firm ground', { fromRow: from }));
}

function groupsIn(row: PlannedRow): { row: number; stitches: number }[] {
  const worked = workRow(row.steps, row.before);
  return worked.ok && worked.value.boundOff > 0 ? [{ row: row.n, stitches: worked.value.boundOff }] : [];
}

function stopsBetween(part: PlannedPart, to: number, from: number, lifelines: readonly number[]): Stop[] {
  const lines = lifelines
    .filter((row) => row >= to && row < from)
    .map((row): Stop => ({ row, why: 'lifeline' }));
  const isPlain = (row: PlannedRow | undefined): boolean =>
    row !== undefined && row.shaping.length === 0 && row.side === 'WS';
  // below the target she loses a row or two and gains an easy row to pick up
  const plain = [to, to - 1, to - 2].filter((row) => isPlain(part.rows[row - 1])).slice(0, 1);
  return [...lines, ...plain.map((row): Stop => ({ row, why: 'plain row' }))].sort((a, b) => b.row - a.row);
}
