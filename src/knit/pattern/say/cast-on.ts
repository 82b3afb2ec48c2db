import {
  attempt,
  type Cursor,
  sees,
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
    if (takeAnyPhrase(c, 'cast on', 'co', 'cast - on')) {
      takes(c, 'loosely', 'on', 'a');
      takePhrase(c, 'total of');
      const n = takeNumber(c);
      if (n !== undefined && Number.isSafeInteger(n)) {
        const more = takes(c, 'more', 'additional');
        takePhrase(c, 'st|sts');
        takes(c, 'loosely', 'for');
        if (sees(c, 'back', 'front', 'sleeve', 'border', 'body', 'lower', 'hem')) c.at += 1;
        takes(c, 'edge', 'loosely');
        if (!more && !seesPhrase(c, 'at|over')) return { is: 'cast on', stitches: n };
      }
    }
  });
