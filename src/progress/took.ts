import type { LogEntry } from './log.ts';
import { makeRecord } from './make-record.ts';
import { sittings } from './sittings.ts';

/** What makes took until their last row. */
export interface Took {
  /** stretches without a long pause in which rows were finished */
  readonly sittings: number;
  /** calendar days from the first to the last row, both counted */
  readonly days: number;
  /** time at the needles, pauses left out, ms; undefined before it can be told */
  readonly workedMs: number | undefined;
}

const DAY_MS = 24 * 3_600_000;

/**
 * @param makes `makeKey` of each; entries of others are left out
 * @param behindMs what her clock is behind UTC, ms: a day is hers
 * @returns undefined where no row is written down
 */
export function took(
  makes: readonly string[],
  entries: readonly LogEntry[],
  behindMs: number,
): Took | undefined {
  const own = entries.filter(({ make }) => makes.includes(make));
  const records = makes.map((make) => makeRecord(make, own));
  const times = records.flatMap(({ from, to }) => (from === undefined || to === undefined ? [] : [from, to]));
  if (times.length === 0) return undefined;
  const day = (at: number) => Math.floor((at - behindMs) / DAY_MS);
  const worked = records.flatMap(({ workedMs }) => (workedMs === undefined ? [] : [workedMs]));
  return {
    sittings: sittings(own).filter(({ rows }) => rows > 0).length,
    days: day(Math.max(...times)) - day(Math.min(...times)) + 1,
    workedMs: worked.length > 0 ? worked.reduce((sum, ms) => sum + ms, 0) : undefined,
  };
}
