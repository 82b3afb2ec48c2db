import { factsOf } from '../fabric-facts.ts';
import type { PlannedPart, PlannedRow } from './planned.ts';

/** Whether row `n` (from 1) lies in ridges. */
const isRidged = (part: PlannedPart, n: number): boolean => {
  const fabric = part.sections[part.rows[n - 1]?.section ?? -1]?.fabric;
  return fabric !== undefined && factsOf(fabric).ridges;
};

/** The first row (from 1) of the garter stitch that row `n` lies in. */
function firstOf(part: PlannedPart, n: number): number {
  let first = n;
  while (isRidged(part, first - 1)) first -= 1;
  return first;
}

/**
 * The ridge that row `n` (from 1) works or ends, counted on the right side from where garter stitch begins: a row
 * from the wrong side ends one. Undefined where the row lies in none.
 */
export const ridgeAt = (part: PlannedPart, n: number): number | undefined =>
  isRidged(part, n) ? ridgeFrom(part, firstOf(part, n), n) : undefined;

function ridgeFrom(part: PlannedPart, first: number, n: number): number {
  const ended = part.rows.slice(first - 1, n).filter((row) => row.side === 'WS').length;
  return (part.rows[n - 1] as PlannedRow).side === 'WS' ? ended : ended + 1;
}

/** Ridges that rows `after` + 1 to `to` make, two rows to a ridge; undefined where not all of them lie in ridges. */
export function ridgesIn(part: PlannedPart, after: number, to: number): number | undefined {
  if (to <= after) return undefined;
  for (let n = after + 1; n <= to; n += 1) if (!isRidged(part, n)) return undefined;
  return (to - after) / 2;
}

/** The lowest of these rows (from the bottom; 0: the start) above which all lies in ridges up to row `n`; undefined where none is. */
export const ridgedFrom = (part: PlannedPart, rows: readonly number[], n: number): number | undefined =>
  rows.find((row) => ridgesIn(part, row, n) !== undefined);

/** Rows worked when so many ridges of the garter stitch that row `n` lies in are there and no more, up to row `n`. */
export function rowOfRidge(part: PlannedPart, n: number, ridges: number): number {
  const first = firstOf(part, n);
  let rows = first - 1;
  while (rows < n && ridgeFrom(part, first, rows + 1) <= ridges) rows += 1;
  return rows;
}
