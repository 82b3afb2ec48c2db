import { inOrder, knits, type LogEntry } from './log.ts';
import { plansIn } from './log-chain.ts';
import type { Place } from './place.ts';
import { firstPlan } from './take-back.ts';

/**
 * The place after the entries, given in any order: where the last change of place led, row and plan from that one
 * entry, so that it is always a row of the plan that was knitted. What moves nothing has no say in it.
 */
export function foldPlace(entries: readonly LogEntry[]): Place {
  let moved: LogEntry | undefined;
  let seq = 0;
  let at = 0;
  for (const entry of entries) {
    seq = Math.max(seq, entry.seq);
    if (!knits(entry.kind)) continue;
    at = Math.max(at, entry.at);
    if (moved === undefined || inOrder(entry, moved) > 0) moved = entry;
  }
  const plan = moved === undefined ? firstPlan(entries) : plansIn(entries)(moved);
  return { rows: moved?.row ?? 0, plan, seq, at };
}
