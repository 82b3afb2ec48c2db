import {
  attempt,
  type Cursor,
  peekText,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import type { Statement } from './statement.ts';

/** 'cast on 92 sts'. */
export const readCastOn = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takes(c, 'loosely');
    if (takeAnyPhrase(c, 'cast on', 'co', 'casting on', 'cast - on')) {
      takes(c, 'loosely', 'on', 'a');
      takePhrase(c, 'total of');
      const n = takeNumber(c);
      if (n !== undefined && Number.isSafeInteger(n)) {
        const more = takes(c, 'more', 'additional');
        takePhrase(c, 'st|sts|stitches|stitch');
        takes(c, 'loosely', 'for');
        if (/^(back|front|sleeve|border|body|lower|hem)$/.test(peekText(c))) c.at += 1;
        takes(c, 'edge', 'loosely');
        if (!more && !seesPhrase(c, 'at|over')) return { is: 'cast on', stitches: n };
      }
    }
  });
