import { foldPlace, moves, standing } from './fold.ts';
import type { LogEntry } from './log.ts';

/** A row on the needle and how it came to be there. */
export interface MadeRow {
  /** row number, from 1 */
  readonly row: number;
  /** when it was finished, ms; undefined where the place was set past it by hand */
  readonly at: number | undefined;
}

/** The rows now worked, in order from row 1: one for each, whatever was ripped, undone or skipped on the way. */
export function madeRows(entries: readonly LogEntry[]): MadeRow[] {
  const made: (number | undefined)[] = [];
  for (const entry of standing(entries).filter((one) => moves(one.kind))) {
    made.length = Math.min(made.length, entry.row);
    while (made.length < entry.row) made.push(undefined);
    if (entry.kind === 'row' && entry.row > 0) made[entry.row - 1] = entry.at;
  }
  const { rows } = foldPlace(entries);
  return Array.from({ length: rows }, (_, i) => ({ row: i + 1, at: made[i] }));
}
