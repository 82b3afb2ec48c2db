import type { EntryKind, LogEntry } from './log.ts';

/** What the log says about a make. */
export interface Place {
  /** rows worked */
  readonly rows: number;
  /** id of the plan; undefined while nothing in the log names one */
  readonly plan: string | undefined;
  readonly seq: number;
  /** when it was last knitted, ms; 0 when never */
  readonly at: number;
}

/** The one order of a log, the same on every device: clocks have no say in it. */
export const inOrder = (a: LogEntry, b: LogEntry): number =>
  a.seq - b.seq || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

const moving: ReadonlySet<EntryKind> = new Set<EntryKind>(['row', 'place', 'rip back', 'rework']);

/** Whether the kind sets the place by itself; an undo does so by taking another back. */
export const moves = (kind: EntryKind): boolean => moving.has(kind);

/** Whether the entry belongs to the knitting itself, unlike a note, a check, a lifeline or the striking out of one. */
export const knits = (kind: EntryKind): boolean => moves(kind) || kind === 'undo';

/** The same entries in the log's order. */
export const sorted = (entries: readonly LogEntry[]): LogEntry[] => [...entries].sort(inOrder);

/** The place after the entries, given in any order. */
export function foldPlace(entries: readonly LogEntry[]): Place {
  let last: LogEntry | undefined;
  let named: LogEntry | undefined;
  let at = 0;
  for (const entry of entries) {
    if (last === undefined || inOrder(entry, last) > 0) last = entry;
    if (entry.plan !== undefined && (named === undefined || inOrder(entry, named) > 0)) named = entry;
    if (knits(entry.kind)) at = Math.max(at, entry.at);
  }
  return { rows: last?.row ?? 0, plan: named?.plan, seq: last?.seq ?? 0, at };
}

/** Entries in order, without what was taken back and without the taking back. */
export function standing(entries: readonly LogEntry[]): LogEntry[] {
  const undone = new Set(entries.map((entry) => entry.undoes));
  const taking = (entry: LogEntry) => entry.kind === 'undo' || entry.kind === 'strike';
  return sorted(entries.filter((entry) => !taking(entry) && !undone.has(entry.id)));
}

/** What an undo has to say: the entries it takes back, newest first, and the place before them. */
export interface TakeBack {
  readonly undoes: readonly string[];
  readonly rows: number;
  readonly plan: string | undefined;
}

/**
 * Finds the last change of place that still stands and the place before it. More than one entry is taken
 * back only where the newest ones changed nothing (two devices that came to the same row).
 * The entries are the whole log of the make.
 */
export function takeBack(entries: readonly LogEntry[], now: Place): TakeBack | undefined {
  const steps = standing(entries).filter((entry) => moves(entry.kind));
  const undoes: string[] = [];
  for (let i = steps.length - 1; i >= 0; i -= 1) {
    const step = steps[i] as LogEntry;
    const before = steps[i - 1];
    undoes.push(step.id);
    const rows = before?.row ?? 0;
    const plan = planOf(steps.slice(0, i), entries);
    if (rows !== now.rows || plan !== now.plan) return { undoes, rows, plan };
  }
  return undefined;
}

/** The plan that the steps name last; before any of them, the one that the log began with. */
function planOf(steps: readonly LogEntry[], entries: readonly LogEntry[]): string | undefined {
  const named = steps.filter((step) => step.plan !== undefined).at(-1)?.plan;
  return named ?? sorted(entries).find((entry) => entry.plan !== undefined)?.plan;
}
