import {
  attempt,
  type Cursor,
  endsOrdinal,
  peek,
  peekNumber,
  seesPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../../row/read/cursor.ts';
import { readSide } from './side.ts';

export const ROWS = 'row|rows|rnd|rnds';

/** '1, 3 and 5', '3–20', '1 to 4'. */
export function readNumbers(c: Cursor): number[] {
  const rows: number[] = [];
  while (rows.length < 400) {
    const n = peekNumber(c);
    if (n === undefined || !Number.isSafeInteger(n) || n < 1 || n > 5000) break;
    c.at += 1;
    if (endsOrdinal(peek(c)) && peek(c)?.glued) c.at += 1;
    rows.push(n);
    const last = readLast(c, n);
    if (last === undefined) break;
    for (let i = n + 1; i <= last; i += 1) rows.push(i);
    if (!goesOn(c)) break;
  }
  return rows;
}

/** The last row of '3–20', or the one row itself; undefined where the numbers cannot be a stretch of rows. */
const readLast = (c: Cursor, first: number): number | undefined =>
  attempt(c, () => {
    takeSideNote(c);
    if (!takes(c, '-', 'to', 'through')) return first;
    takePhrase(c, ROWS);
    const last = takeNumber(c);
    if (endsOrdinal(peek(c)) && peek(c)?.glued) c.at += 1;
    if (last === undefined || last < first || last - first > 400) return undefined;
    takes(c, 'inclusive', 'incl');
    return last;
  });

const goesOn = (c: Cursor): boolean =>
  attempt(c, () => {
    const comma = takes(c, ',');
    const parted = takes(c, 'and') || comma;
    takePhrase(c, ROWS);
    return parted && peekNumber(c) !== undefined;
  });

/** '1 (RS) and 3 (RS)' */
const takeSideNote = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!takes(c, '(') || readSide(c) === undefined) return false;
    takes(c, 'row');
    return takes(c, ')') && seesPhrase(c, 'and|,|-');
  });
