import { countAt } from '../../knit/piece/count/count-at.ts';
import type { Check } from '../../knit/piece/explain-count.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { type FirmGround, firmGround } from '../../progress/firm-ground.ts';
import { knits, type LogEntry } from '../../progress/log.ts';
import { standing } from '../../progress/standing.ts';

/** What the log tells of the rows on the needle. */
export interface Known {
  readonly checks: readonly Check[];
  readonly firm: FirmGround | undefined;
  /** rows with a lifeline in them, lowest first */
  readonly lifelines: readonly number[];
}

export function knownFrom(entries: readonly LogEntry[], part: PlannedPart): Known {
  let kept: LogEntry[] = [];
  for (const entry of standing(entries)) {
    // what lay above a row that was ripped back to is gone
    if (knits(entry.kind)) kept = kept.filter((one) => one.row <= entry.row);
    else kept.push(entry);
  }
  const checks = kept.flatMap(({ kind, row, count }) =>
    kind === 'check' && count !== undefined ? [{ row, count }] : [],
  );
  const lifelines = [...new Set(kept.filter(({ kind }) => kind === 'lifeline').map(({ row }) => row))];
  return {
    checks,
    firm: firmGround(entries, (row) => countAt(part, row)),
    lifelines: lifelines.sort((a, b) => a - b),
  };
}
