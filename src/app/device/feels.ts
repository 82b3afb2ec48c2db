import type { PlannedPart } from '../../knit/piece/planned.ts';
import { isShaping, rowAt } from '../in-hand/row-now.ts';

/** What the hand and the ear are told when a row is done. */
export type Feel = 'plain' | 'shaping' | 'before row' | 'section end' | 'part end';

/**
 * What to tell of the moment after a row was finished, `rows` now being worked: first that something is done before the
 * next row, or an end, then what row comes. More than two in one go are not told apart by a hand.
 */
export function feelsAt(part: PlannedPart, rows: number, hasBefore = false): readonly Feel[] {
  const next = rowAt(part, rows);
  if (next === undefined) return ['part end'];
  const last = part.rows[rows - 1];
  const ends = last !== undefined && last.section !== next.section;
  const feels: Feel[] = hasBefore ? ['before row'] : ends ? ['section end'] : [];
  if (isShaping(next)) return [...feels, 'shaping'];
  return feels.length > 0 ? feels : ['plain'];
}
