import { takeBindOff } from '../../row/read/bind-off.ts';
import {
  ahead,
  attempt,
  type Cursor,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takePhrase,
  takes,
  takeWhole,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import type { Statement } from './statement.ts';

/** 'bind off center 12 sts and work each side separately': a row of its own, unless it is spelled out behind it. */
export const readCentre = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (!takeBindOff(c)) return undefined;
    takes(c, 'the');
    if (!takes(c, 'center', 'middle')) return undefined;
    const times = takeWhole(c);
    if (times === undefined || times < 1 || !takePhrase(c, STS)) return undefined;
    takeAnyPhrase(c, 'for the? back|front? of? the? neck', 'for the? neckline|v', 'loosely');
    if (goesOnInRow(c)) return undefined;
    return { is: 'row', items: [{ is: 'stitches', work: 'bo', times, centre: true }] };
  });

/** '…, k to end', 'and work across': how the row goes on; 'and work each side' says what comes after it. */
const goesOnInRow = (c: Cursor): boolean =>
  ahead(c, () => {
    while (takes(c, ',', ';', '.', 'and', 'then')) {
      // what joins it to the rest
    }
    if (sees(c, 'k', 'p', 'patt', 'rib', 'sl', 'join', '*', '(', 'knitting'))
      return !seesPhrase(c, 'k|p each|both');
    return sees(c, 'work') && !seesPhrase(c, 'work each|both|1|on|right|left|sides|separately|first');
  });
