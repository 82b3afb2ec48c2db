import { foldPlace } from './fold.ts';
import { type LogEntry, rowOfNote } from './log.ts';
import { pace } from './pace.ts';
import { standing } from './standing.ts';

/** What the log of one make tells when it is read back: rows, days, time, and what happened on the way. */
export interface MakeRecord {
  /** `makeKey` of it */
  readonly make: string;
  readonly rows: number;
  /** first and last row finished, ms since 1970; undefined while none is */
  readonly from: number | undefined;
  readonly to: number | undefined;
  /** time at the needles, pauses left out, ms; undefined before it can be told */
  readonly workedMs: number | undefined;
  /** times it was ripped back, and planned anew */
  readonly ripped: number;
  readonly reworked: number;
  /** rows at which the needle was counted */
  readonly checked: readonly number[];
  /** her words at a row */
  readonly notes: readonly { readonly row: number; readonly text: string }[];
}

/** Reads the log of one make; entries in any order. */
export function makeRecord(make: string, entries: readonly LogEntry[]): MakeRecord {
  const own = standing(entries.filter((entry) => entry.make === make));
  const rows = own.filter((entry) => entry.kind === 'row');
  const times = rows.map((entry) => entry.at);
  const speed = pace(own, () => 1);
  return {
    make,
    rows: foldPlace(entries.filter((entry) => entry.make === make)).rows,
    from: times.length > 0 ? Math.min(...times) : undefined,
    to: times.length > 0 ? Math.max(...times) : undefined,
    workedMs: speed?.workedMs,
    ripped: own.filter((entry) => entry.kind === 'rip back').length,
    reworked: own.filter((entry) => entry.kind === 'rework').length,
    checked: own.filter((entry) => entry.kind === 'check').map((entry) => entry.row),
    notes: own.flatMap((entry) =>
      entry.kind === 'note' && entry.text ? [{ row: rowOfNote(entry) - 1, text: entry.text }] : [],
    ),
  };
}
