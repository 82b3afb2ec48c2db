import { inOrder, knits, type LogEntry, moves, type PlanId } from './log.ts';
import type { Place } from './place.ts';
import { sorted, standing } from './standing.ts';

/** What an undo has to say: the entries it takes back, newest first, and the place before them. */
export interface TakeBack {
  readonly undoes: readonly string[];
  readonly rows: number;
  readonly plan: PlanId | undefined;
  /** of a choice between ways: id of the entry that told the place before it, from which the undo goes on */
  readonly follows?: string;
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
    undoes.push(step.id);
    const left = step.settles && toldBefore(entries, step);
    const before = left ?? steps[i - 1];
    const rows = before?.row ?? 0;
    const plan = left?.plan ?? steps.slice(0, i).reverse().find(named)?.plan ?? firstPlan(entries);
    if (rows !== now.rows || plan !== now.plan)
      return { undoes, rows, plan, ...(left && { follows: left.id }) };
  }
  return undefined;
}

/** The entry that told the place when she chose a way. */
const toldBefore = (entries: readonly LogEntry[], choice: LogEntry): LogEntry | undefined =>
  sorted(entries)
    .filter((entry) => knits(entry.kind) && inOrder(entry, choice) < 0)
    .at(-1);

/** The plan that the log began with. */
export const firstPlan = (entries: readonly LogEntry[]): PlanId | undefined =>
  sorted(entries).find(named)?.plan;

/** Older entries name no plan: it is that of the last one before them that does. */
const named = (entry: LogEntry): boolean => entry.plan !== undefined;
