import { inOrder, knits, type LogEntry } from './log.ts';
import { standing } from './standing.ts';

export interface Pace {
  readonly rowsPerHour: number;
  readonly stitchesPerHour: number;
  /** what it rests on: rows, and the time they took without pauses, ms */
  readonly rows: number;
  readonly workedMs: number;
}

const HOUR_MS = 3_600_000;
/**
 * A gap is a pause when it is this many times the usual gap between rows, but never below or above these, ms. Our own
 * choice, no published source.
 */
const PAUSE_TIMES = 4;
const PAUSE_LEAST_MS = 5 * 60_000;
const PAUSE_MOST_MS = 60 * 60_000;
const FEWEST_ROWS = 3;

/**
 * How fast she knits, from the times between rows that still stand, pauses left out; undefined before three
 * such rows. `stitchesIn(row)` tells the stitches of a row of the make.
 */
export function pace(
  entries: readonly LogEntry[],
  stitchesIn: (entry: LogEntry) => number,
): Pace | undefined {
  const worked = workedRows(entries);
  const limit = pauseLimit(worked.map((row) => row.ms));
  const steady = worked.filter((row) => row.ms <= limit);
  const workedMs = steady.reduce((sum, row) => sum + row.ms, 0);
  if (steady.length < FEWEST_ROWS || workedMs === 0) return undefined;
  const stitches = steady.reduce((sum, row) => sum + stitchesIn(row.entry), 0);
  return {
    rowsPerHour: (steady.length * HOUR_MS) / workedMs,
    stitchesPerHour: (stitches * HOUR_MS) / workedMs,
    rows: steady.length,
    workedMs,
  };
}

/** Time for the stitches still to knit, ms. */
export const timeFor = (stitches: number, at: Pace): number => (stitches * HOUR_MS) / at.stitchesPerHour;

/** Rows that stand, each with the time since the knitting entry before it; a clock set back gives none. */
function workedRows(entries: readonly LogEntry[]): { entry: LogEntry; ms: number }[] {
  const stands = new Set(standing(entries).map((entry) => entry.id));
  const before = new Map<string, LogEntry>();
  const rows: { entry: LogEntry; ms: number }[] = [];
  for (const entry of entries.filter((one) => knits(one.kind)).sort(inOrder)) {
    const last = before.get(entry.make);
    if (last !== undefined && entry.kind === 'row' && stands.has(entry.id) && entry.at >= last.at) {
      rows.push({ entry, ms: entry.at - last.at });
    }
    before.set(entry.make, entry);
  }
  return rows;
}

function pauseLimit(gaps: readonly number[]): number {
  const ordered = [...gaps].sort((a, b) => a - b);
  const usual = ordered[Math.floor(ordered.length / 2)] ?? 0;
  return Math.min(PAUSE_MOST_MS, Math.max(PAUSE_LEAST_MS, usual * PAUSE_TIMES));
}
