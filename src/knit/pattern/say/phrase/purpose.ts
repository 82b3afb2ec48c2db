import {
  attempt,
  type Cursor,
  isOneOf,
  peek,
  peekWord,
  takeAnyPhrase,
  takes,
  takeTo,
} from '../../../row/read/cursor.ts';

/** Farther on it is no purpose any more. */
const LONGEST = 6;

/**
 * 'for lower edge of back', 'for the shoulder', 'onto larger needles': what stitches are for and where they go, up to the
 * next mark or order. It takes nothing where a number or a stitch stands in it: then rows are said.
 */
export const takePurpose = (c: Cursor): boolean =>
  attempt(c, () => {
    if (takeAnyPhrase(c, 'for a? 3 -? needle bind|cast -? off')) return true;
    if (!takes(c, 'for', 'onto')) return false;
    for (let far = 0; far < LONGEST && peek(c) !== undefined; far += 1) {
      if (isOneOf(peekWord(c), ', ; . : - and with using in') && far > 0) return true;
      if (peek(c)?.kind !== 'word' || isOneOf(peekWord(c), NOT_WITHIN)) return false;
      takeTo(c, c.at + 1);
    }
    return peek(c) === undefined;
  });

const NOT_WITHIN = 'k p work row rows st sts rep until bind cast inc dec foll next each and';
