import type { PlannedRow } from '../../knit/piece/planned.ts';

/** What the ladder shows: a row, or plain rows passed over. */
export type Rung = { readonly row: PlannedRow } | { readonly plainRows: number };

/**
 * The rows after the one in hand: `length` (at least 2) of them, and the next shaping row always among them; plain rows between
 * are passed over as one rung. `worked` is the number of rows worked, so the row in hand is `worked + 1`.
 */
export function rowsAhead(rows: readonly PlannedRow[], worked: number, length = 4): readonly Rung[] {
  const ahead = rows.slice(worked + 1);
  const shaping = ahead.findIndex((row) => row.shaping.length > 0);
  if (shaping < length) return ahead.slice(0, length).map((row) => ({ row }));
  const near = ahead.slice(0, length - 2);
  const passed = shaping - near.length;
  const rungs: Rung[] = near.map((row) => ({ row }));
  if (passed > 0) rungs.push({ plainRows: passed });
  const next = ahead[shaping];
  return next ? [...rungs, { row: next }] : rungs;
}
