import { type Result, refuse } from '../../fault.ts';
import type { Step } from '../step.ts';
import { cursorOver } from './cursor.ts';
import { lex } from './lex.ts';
import { readRow } from './row.ts';
import { settle } from './settle.ts';

/** Longest row read; no row of knitting is longer, and it keeps pasted rubbish from taking long. */
export const LONGEST_ROW = 20_000;

/**
 * Reads one row instruction in US or UK words, abbreviated or in full: 'k2, k2tog, knit to end',
 * '*k1, p1; rep from * to last 2 sts, k2'. It undoes `printRow`.
 * `rep from * n times` means n further times and `[…] n times` n in all (American Thread Co., Star Book No. 223,
 * p. 22, and Bulkies, Book No. 006).
 * @returns the steps, or faults with line, column and what was expected
 */
export function parseRow(text: string): Result<Step[]> {
  const items = readRow(cursorOver(lex(text.slice(0, LONGEST_ROW))));
  if (!items.ok) return items;
  const settled = settle(items.value);
  return settled.ok ? { ok: true, value: [...settled.value.steps] } : refuse(...settled.faults);
}
