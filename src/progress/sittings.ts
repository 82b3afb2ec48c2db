import { knits, type LogEntry } from './log.ts';
import { standing } from './standing.ts';

/** A stretch of knitting without a long pause. */
export interface Sitting {
  /** first and last entry, ms since 1970 */
  readonly from: number;
  readonly to: number;
  /** rows finished in it that were not taken back */
  readonly rows: number;
  /** rows ripped back in it */
  readonly ripped: number;
  /** keys of the makes knitted on, in the order in which they were taken up */
  readonly makes: readonly string[];
}

/** After this long without a row she has laid it down, ms; our own choice, no published source. */
export const LAID_DOWN_MS = 45 * 60_000;

/**
 * The sittings that the entries tell of (of one make or of many), oldest first. A clock that was set back
 * or forward begins a new one: no sitting lasts longer than its rows show.
 */
export function sittings(entries: readonly LogEntry[], laidDownMs = LAID_DOWN_MS): Sitting[] {
  const kept = new Set(standing(entries).map((entry) => entry.id));
  const ripped = rippedBy(entries);
  const found: Sitting[] = [];
  for (const entry of inTime(entries)) {
    const open = found.at(-1);
    const goesOn = open !== undefined && entry.at - open.to <= laidDownMs;
    const before = goesOn ? open : { from: entry.at, to: entry.at, rows: 0, ripped: 0, makes: [] };
    const after = {
      from: before.from,
      to: entry.at,
      rows: before.rows + (entry.kind === 'row' && kept.has(entry.id) ? 1 : 0),
      ripped: before.ripped + (ripped.get(entry.id) ?? 0),
      makes: before.makes.includes(entry.make) ? before.makes : [...before.makes, entry.make],
    };
    if (goesOn) found[found.length - 1] = after;
    else found.push(after);
  }
  return found;
}

const inTime = (entries: readonly LogEntry[]): LogEntry[] =>
  entries.filter((entry) => knits(entry.kind)).sort((a, b) => a.at - b.at || a.seq - b.seq);

/** Rows that each standing rip took off the needle. */
function rippedBy(entries: readonly LogEntry[]): ReadonlyMap<string, number> {
  const rows = new Map<string, number>();
  const ripped = new Map<string, number>();
  for (const entry of standing(entries)) {
    const before = rows.get(entry.make) ?? 0;
    if (entry.kind === 'rip back' && entry.row < before) ripped.set(entry.id, before - entry.row);
    rows.set(entry.make, entry.row);
  }
  return ripped;
}
