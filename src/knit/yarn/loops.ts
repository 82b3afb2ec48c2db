import type { PlannedPart, PlannedRow } from '../piece/planned.ts';
import { workRow } from '../row/work.ts';

/**
 * Loops are what uses yarn: every stitch left on the needle, every one bound off and every one put on a holder in
 * the row is one. The set-up counts one loop for each stitch cast on or picked up; stitches taken from a holder
 * cost nothing.
 */
export function rowLoops(row: PlannedRow): number {
  if (row.before === row.after) return row.after;
  const worked = workRow(row.steps, row.before);
  return worked.ok ? worked.value.after + worked.value.boundOff : row.after;
}

export const setUpLoops = (part: PlannedPart): number => ('part' in part.from ? 0 : part.start);

/** Loops of the set-up and the first `rows` rows. */
export function loopsUpTo(part: PlannedPart, rows: number): number {
  let sum = rows > 0 ? setUpLoops(part) : 0;
  for (const row of part.rows.slice(0, rows)) sum += rowLoops(row);
  return sum;
}
