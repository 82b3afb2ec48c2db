import { fault, ok, type Result, refuse } from '../fault.ts';

/** Increases or decreases spread evenly over one row. */
export interface Spread {
  readonly stitches: number;
  /** stitches added (> 0) or removed (< 0) */
  readonly change: number;
  readonly after: number;
  /** plain stitches before the first shaping, between each two, and after the last: one more than there are shapings */
  readonly groups: readonly number[];
}

/**
 * Spreads `change` increases (or, below zero, decreases of two stitches into one) over a row of `stitches`.
 * The i-th increase of k comes after stitch round((i − ½)·n/k), so the groups between two of them differ by at most
 * one, the ends take about half a group each, and none lies at an edge. Decreases are laid in the same way among
 * the stitches that they leave alone.
 * @returns a fault 'too many for one row' with the most that the row can take
 */
export function spread(stitches: number, change: number): Result<Spread> {
  if (!Number.isSafeInteger(stitches) || stitches < 1) {
    return refuse(fault('bad count'));
  }
  if (!Number.isSafeInteger(change)) {
    return refuse(fault('bad count'));
  }
  const times = Math.abs(change);
  const most = change > 0 ? stitches - 1 : Math.floor(stitches / 2);
  if (times > most) return refuse(tooMany(stitches, change, most));
  const over = change > 0 ? stitches : stitches - 2 * times;
  return ok({ stitches, change, after: stitches + change, groups: groupsOf(over, times) });
}

const tooMany = (stitches: number, change: number, most: number) =>
  fault('too many for one row', { stitches, times: Math.abs(change), mostTimes: most });

function groupsOf(over: number, times: number): number[] {
  if (times === 0) return [over];
  const groups: number[] = [];
  let done = 0;
  for (let i = 1; i <= times; i += 1) {
    const position = Math.floor(((2 * i - 1) * over + times) / (2 * times));
    groups.push(position - done);
    done = position;
  }
  groups.push(over - done);
  return groups;
}
