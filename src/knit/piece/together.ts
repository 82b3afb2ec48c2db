import { fault, ok, type Result, refuse } from '../fault.ts';
import type { Side } from '../row/step.ts';
import { nextSide } from './count/observation.ts';
import type { PlannedPart, PlannedRow } from './planned.ts';

/** One make on the shared needle: its part and the rows worked of it. */
export interface OnNeedle {
  readonly part: PlannedPart;
  readonly rows: number;
}

/** The next thing to knit of those on the needle. */
export interface TogetherStep {
  /** which of them, from 0 in the order given */
  readonly make: number;
  readonly row: PlannedRow;
}

export interface TogetherOrder {
  /** what is still to be worked until all are level again, in the order in which the needle meets them */
  readonly steps: readonly TogetherStep[];
  readonly side: Side;
  /** whether one tap may finish this row on all of them: they are level */
  readonly level: boolean;
  /** rows by which the one furthest along is ahead */
  readonly ahead: number;
}

/**
 * Pieces knitted beside each other on one needle, each from its own ball: every row is worked across all of them, and
 * turned only then. As RS faces the first one given lies at the right end, so RS rows meet it first and WS rows last.
 * A piece that has ended is left out.
 * @returns faults 'not level' (more than one row apart: bring the one behind up first), 'sides differ'
 *   (they cannot be worked in one row), 'all done'
 */
export function togetherOrder(pieces: readonly OnNeedle[]): Result<TogetherOrder> {
  const going = pieces
    .map((piece, make) => ({ ...piece, make }))
    .filter(({ part, rows }) => rows < part.rows.length);
  if (going.length === 0) return refuse(fault('all done'));
  const least = Math.min(...going.map(({ rows }) => rows));
  const most = Math.max(...going.map(({ rows }) => rows));
  if (most - least > 1) {
    return refuse(fault('not level', { rows: most - least }));
  }
  const behind = going.filter(({ rows }) => rows === least);
  const sides = new Set(behind.map(({ part, rows }) => nextSide(part, rows)));
  if (sides.size > 1) {
    return refuse(fault('sides differ'));
  }
  const side = [...sides][0] ?? 'RS';
  const steps = behind.map(({ make, part, rows }) => ({ make, row: part.rows[rows] as PlannedRow }));
  return ok({
    steps: side === 'RS' ? steps : steps.reverse(),
    side,
    level: behind.length === going.length,
    ahead: most - least,
  });
}
