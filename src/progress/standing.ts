import { inOrder, type LogEntry } from './log.ts';

/** The same entries in the log's order. */
export const sorted = (entries: readonly LogEntry[]): LogEntry[] => [...entries].sort(inOrder);

/** Entries in order, without what was taken back and without the taking back. */
export function standing(entries: readonly LogEntry[]): LogEntry[] {
  const undone = new Set(entries.map((entry) => entry.undoes));
  const taking = (entry: LogEntry) => entry.kind === 'undo' || entry.kind === 'strike';
  return sorted(entries.filter((entry) => !taking(entry) && !undone.has(entry.id)));
}
