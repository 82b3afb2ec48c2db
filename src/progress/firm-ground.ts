import { foldPlace } from './fold.ts';
import type { LogEntry } from './log.ts';
import { standing } from './standing.ts';

export interface FirmGround {
  /** rows worked where the count agreed */
  readonly row: number;
  readonly count: number;
  /** ms since 1970 */
  readonly at: number;
  readonly entry: string;
}

/**
 * The last row at which she counted the needle and the count was as planned: a mistake found later lies above it.
 * A check above a row that was ripped back to is void. `planned(row)` tells the stitches after a row.
 */
export function firmGround(
  entries: readonly LogEntry[],
  planned: (row: number) => number | undefined,
): FirmGround | undefined {
  return agreed(entries, (entry) => entry.kind === 'check' && entry.count === planned(entry.row));
}

function agreed(entries: readonly LogEntry[], firm: (entry: LogEntry) => boolean): FirmGround | undefined {
  const best = kept(entries, firm).at(-1);
  if (best === undefined) return undefined;
  return { row: best.row, count: best.count ?? 0, at: best.at, entry: best.id };
}

/** The entries asked for that lie in rows still on the needle, lowest row first. */
function kept(entries: readonly LogEntry[], wanted: (entry: LogEntry) => boolean): LogEntry[] {
  let found: LogEntry[] = [];
  for (const entry of standing(entries)) {
    // going down takes out what lay above; going up again does not bring it back
    found = found.filter((one) => one.row <= entry.row);
    if (wanted(entry)) found.push(entry);
  }
  const { rows } = foldPlace(entries);
  return found.filter((one) => one.row <= rows);
}
