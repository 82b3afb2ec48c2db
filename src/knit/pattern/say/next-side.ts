import { attempt, type Cursor, takeAnyPhrase, takes } from '../../row/read/cursor.ts';
import { readSide } from './phrase/side.ts';
import type { Statement } from './statement.ts';

/** '(RS)' before an instruction, 'noting first row is a WS row'. */
export const readNextSide = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const noting = takeAnyPhrase(
      c,
      'noting that? first row is',
      'noting that? 1 st row is',
      'noting first row will be',
      'first row is',
    );
    const open = !noting && takes(c, '(', '[');
    if (!noting && !open) return undefined;
    takes(c, 'a', 'the', 'on');
    const side = readSide(c);
    if (side === undefined) return undefined;
    takes(c, 'row', 'side');
    return noting || takes(c, ')', ']') ? { is: 'next side', side } : undefined;
  });
