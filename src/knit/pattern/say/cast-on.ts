import {
  attempt,
  type Cursor,
  peek,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takeTo,
} from '../../row/read/cursor.ts';
import { takesCableOn, takesCastOnto, worksAcross } from './front-door.ts';
import { takePurpose } from './phrase/purpose.ts';
import type { Statement } from './statement.ts';

/** 'cast on 92 sts'. */
export const readCastOn = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takes(c, 'loosely');
    const onto = attempt(c, () => takesCastOnto(c));
    if (onto !== false && onto !== undefined) {
      takeAnyPhrase(c, 'your|the|a? size needle', 'your|the|a? needle');
      takeOnto(c);
      takes(c, 'to');
      // which needle, up to the next mark or order
      if (takes(c, 'your', 'the', 'a')) while (peek(c) && !sees(c, ',', ';', '.', 'and')) takeTo(c, c.at + 1);
      return { is: 'cast on', stitches: onto };
    }
    if (takeAnyPhrase(c, 'cast on', 'co', 'cast - on') || takesCableOn(c)) {
      takes(c, 'loosely', 'on', 'a');
      takePhrase(c, 'total of');
      const n = takeNumber(c);
      if (n !== undefined && Number.isSafeInteger(n)) {
        const more = takes(c, 'more', 'additional');
        takePhrase(c, 'st|sts');
        takeOnto(c);
        if (takePurpose(c) && !more && !worksAcross(c)) return { is: 'cast on', stitches: n };
        takes(c, 'loosely', 'for');
        if (sees(c, 'back', 'front', 'sleeve', 'border', 'body', 'lower', 'hem', 'rib')) c.at += 1;
        takes(c, 'edge', 'loosely');
        takeMethod(c);
        if (
          !more &&
          !seesPhrase(c, 'at|over') &&
          !seesPhrase(c, 'beg of? the? next|each|every') &&
          !worksAcross(c)
        )
          return { is: 'cast on', stitches: n };
      }
    }
  });

/** 'to a #1 circular needle', 'onto #1 needles' */
const takeOnto = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, 'to', 'onto', 'on');
    takes(c, 'a', 'the', 'your');
    if (!takes(c, '#')) return false;
    takeNumber(c);
    return takePhrase(c, 'circular? needle');
  });

/** 'using your preferred method', 'by the long-tail method': how stitches are cast on says nothing of how many. */
const takeMethod = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!takes(c, 'using', 'by', 'with', 'in')) return false;
    for (let far = 0; far < 7 && peek(c) !== undefined; far += 1) {
      if (takes(c, 'method')) return true;
      takeTo(c, c.at + 1);
    }
    return false;
  });
