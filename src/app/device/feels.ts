import type { PlannedPart } from '../../knit/piece/planned.ts';
import { isShaping, rowAt } from '../in-hand/row-now.ts';

/** What the hand and the ear are told when a row is done. */
export type Feel = 'plain' | 'shaping' | 'section end' | 'part end';

/** What to tell of the moment after a row was finished, `rows` now being worked: an end first, then what comes. */
export function feelsAt(part: PlannedPart, rows: number): readonly Feel[] {
  const next = rowAt(part, rows);
  if (next === undefined) return ['part end'];
  const last = part.rows[rows - 1];
  const feels: Feel[] = last !== undefined && last.section !== next.section ? ['section end'] : [];
  if (isShaping(next)) return [...feels, 'shaping'];
  return feels.length > 0 ? feels : ['plain'];
}
