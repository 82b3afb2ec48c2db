import type { PlannedRow } from '../../knit/piece/planned.ts';

/** What the ladder shows: a row, or plain rows passed over. */
export type Rung = { readonly row: PlannedRow } | { readonly plainRows: number; readonly from: number };

/**
 * The rows after the one in hand: `length` (at least 2) of them, and always among them the next shaping row and the row
 * `stop` (its number; something is done before it); plain rows between are passed over as one rung. `worked` is the number
 * of rows worked, so the row in hand is `worked + 1`.
 */
export function rowsAhead(
  rows: readonly PlannedRow[],
  worked: number,
  length = 4,
  stop?: number,
): readonly Rung[] {
  const ahead = rows.slice(worked + 1);
  const shaping = ahead.findIndex((row) => row.shaping.length > 0);
  const stops = [shaping, ahead.findIndex(({ n }) => n === stop)]
    .filter((at, i, all) => at >= 0 && all.indexOf(at) === i)
    .sort((a, b) => a - b);
  const far = stops.filter((at) => at >= length);
  const near =
    far.length === 0 ? length : Math.max(length - 2, ...stops.map((at) => (at < length ? at + 1 : 0)));
  const rungs: Rung[] = ahead.slice(0, near).map((row) => ({ row }));
  let next = Math.min(near, ahead.length);
  for (const at of far) {
    if (at > next) rungs.push({ plainRows: at - next, from: next });
    rungs.push({ row: ahead[at] as PlannedRow });
    next = at + 1;
  }
  return rungs;
}
