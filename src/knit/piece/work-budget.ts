import { type Fault, fault } from '../fault.ts';

/** What may still be worked; several pieces can draw on one. Counted in stitches, so it is the same on every device. */
export interface WorkBudget {
  left: number;
  readonly most: number;
}

/** A row costs something however few its stitches are. */
const ROW = 100;

/** As many stitches as a part can have at most, 2000 on each of 5000 rows, and their rows; a pullover has 100,000. */
const MOST_STITCHES_WORKED = 12_000_000;

export const workBudget = (most: number = MOST_STITCHES_WORKED): WorkBudget => ({ left: most, most });

/** Takes a row of so many stitches (or steps, where it has more of them) from the budget; a fault when it is used up. */
export function takeRow(budget: WorkBudget, stitches: number): Fault | undefined {
  budget.left -= stitches + ROW;
  if (budget.left >= 0) return undefined;
  return fault('too much to plan', { mostStitches: budget.most });
}
