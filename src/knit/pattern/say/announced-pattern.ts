import {
  attempt,
  type Cursor,
  peek,
  sees,
  seesOne,
  takeAnyPhrase,
  takePhrase,
  takes,
  takesOne,
  takeTo,
} from '../../row/read/cursor.ts';

/** More words no pattern is named by. */
const MOST = 9;

/** Words alone, none of which orders anything. */
function takeWords(c: Cursor, most: number, ...but: readonly string[]): void {
  for (
    let far = 0;
    far < most &&
    (peek(c)?.kind === 'word' || sees(c, ',')) &&
    !sees(c, 'as', 'thus', 'buttonhole', ...but) &&
    !seesOne(c, 'beginning of an order');
    far += 1
  )
    takeTo(c, c.at + 1);
}

/** 'Proceed in pattern with moss stitch edges as follows:', 'Begin second rib pattern as follows:': its rows stand below. */
export const takeAnnouncedPattern = (c: Cursor): boolean =>
  attempt(c, () => {
    // 'Decrease:' on a line of its own
    if (
      attempt(
        c,
        () =>
          takes(c, 'dec', 'inc', 'decreases', 'increases', 'decreasing', 'increasing') &&
          takes(c, ':') &&
          c.at >= c.end,
      )
    )
      return true;
    if (!takesOne(c, 'goes on') && !takes(c, 'beg', 'start')) return false;
    if (takePhrase(c, 'in patt with')) takeWords(c, MOST);
    else {
      takes(c, 'in');
      takes(c, 'the');
      if (!takes(c, 'first', 'second', 'third', 'next')) return false;
      takeWords(c, 3, 'patt');
      if (!takes(c, 'patt')) return false;
    }
    if (!takeAnyPhrase(c, ',? as|thus foll', ',? thus')) return false;
    takes(c, ':', ';', '-');
    return c.at >= c.end;
  });

/** 'Keeping second rib pattern as established, …': what is on the needle, by its name. */
export const takeKeptPattern = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!takes(c, 'keeping', 'keep')) return false;
    takes(c, 'the');
    if (!takes(c, 'first', 'second', 'third')) return false;
    takeWords(c, 3, 'patt');
    return takePhrase(c, 'patt as est|set') && sees(c, ',');
  });
