import { type Cursor, cursorOver, takeNumber, takes } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';

/**
 * What the knitter says herself of a line that was not understood, written behind it so that it stays with the line when
 * the text is changed elsewhere: '[no rows]', '[6 rows]', '[6 rows, 24 sts]'.
 */
export interface Mend {
  readonly rows: number;
  /** stitches after its last row */
  readonly stitches?: number;
  /** the token at which it begins */
  readonly from: number;
}

/** The mend at the end of a line's tokens. */
export function mendIn(tokens: readonly Token[]): Mend | undefined {
  const from = tokens.map(({ text }) => text).lastIndexOf('[');
  if (from < 1 || tokens.at(-1)?.text !== ']') return undefined;
  const c = cursorOver(tokens, from + 1);
  const rows = takes(c, 'no') ? 0 : takeWholeNumber(c);
  if (rows === undefined || !takes(c, 'row', 'rows')) return undefined;
  const stitches = takes(c, ',') ? takeWholeNumber(c) : undefined;
  if (stitches !== undefined && !takes(c, 'st', 'sts')) return undefined;
  if (!takes(c, ']') || c.at < c.end) return undefined;
  return { rows, from, ...(stitches === undefined ? {} : { stitches }) };
}

function takeWholeNumber(c: Cursor): number | undefined {
  const n = takeNumber(c);
  return n !== undefined && Number.isSafeInteger(n) ? n : undefined;
}
