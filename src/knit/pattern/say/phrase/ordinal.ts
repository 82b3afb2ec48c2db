import { type Cursor, endsOrdinal, peek, peekNumber, takes } from '../../../row/read/cursor.ts';

/** 'first' or '1st', which is a number with its ending glued to it. */
export const takeFirst = (c: Cursor): boolean => takes(c, 'first') || takeOrdinal(c, 1);

/** 'second' or '2nd'. */
export const takeSecond = (c: Cursor): boolean => takes(c, 'second') || takeOrdinal(c, 2);

function takeOrdinal(c: Cursor, n: number): boolean {
  if (peekNumber(c) !== n || !seesEnding(c, 1)) return false;
  c.at += 2;
  return true;
}

/** Whether the number before is an ordinal: '1st' says which stitch, not how many. */
export const seesEnding = (c: Cursor, ahead = 0): boolean => {
  const ending = peek(c, ahead);
  return endsOrdinal(ending) && ending?.glued === true;
};
