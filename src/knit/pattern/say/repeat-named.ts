import {
  attempt,
  type Cursor,
  endsOrdinal,
  peek,
  peekWord,
  sees,
  takeAnyPhrase,
  takeNumber,
  takes,
  took,
} from '../../row/read/cursor.ts';
import { readTimes } from '../../row/read/goal.ts';
import { means } from '../../row/read/meanings.ts';
import { rowName } from './label.ts';
import { readBeats } from './phrase/beats.ts';
import { readToCount } from './phrase/until.ts';
import type { Statement } from './statement.ts';

/** 'rep dec row every other row 3 times more', 'work inc row every 6th row until there are 60 sts', 'rep row 27 on every foll 8th row'. */
export const readRepeatNamed = (c: Cursor): Statement | undefined => readNamed(c) ?? readLast(c);

const readNamed = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (takes(c, 'rep', 'repeating', 'work', 'working')) {
      takes(c, 'the', 'this', 'last');
      // 'the 1st decrease row' is the one
      attempt(c, () => takeNumber(c) !== undefined && endsOrdinal(peek(c)) && takes(c, peekWord(c)));
      const numbered = readNumber(c);
      if (numbered) return numbered;
      const name = rowName(peekWord(c));
      if (peek(c)?.kind === 'word' && !means(name, 'no name of a row')) {
        c.at += 1;
        if (takes(c, 'row')) {
          takes(c, ',');
          const beats = readBeats(c);
          if (beats.length > 0) return { is: 'repeat named', name, beats };
          const toCount = readToCount(c);
          if (toCount !== undefined)
            return { is: 'repeat named', name, beats: [{ first: 1, every: 1, toCount }] };
          // 'repeat buttonhole row once more.'
          const { n = 1 } = readTimes(c) ?? {};
          if (name === 'buttonhole' && n === 1 && (c.at >= c.end || sees(c, '.', ';')))
            return { is: 'repeat named', name, beats: [{ first: 1, every: 1, times: 1 }] };
        }
      }
    }
  });

/** 'Repeat on each RS row 11 more times', 'rep this dec every 4th row twice': the last row that changed the count. */
const readLast = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const goesOn = takeGoesOnSo(c);
    if (goesOn) return lastOnBeats(c, 2);
    if (!takes(c, 'rep', 'repeating')) return undefined;
    const said = takes(c, 'the', 'this', 'last');
    takes(c, 'last');
    takes(c, 'dec', 'inc', 'decreases', 'increases', 'shaping');
    const named = said || took(c, 'dec', 'inc');
    if (named) takes(c, 'row');
    return lastOnBeats(c, named ? 2 : 1);
  });

function lastOnBeats(c: Cursor, most: number): Statement | undefined {
  const beats = sees(c, 'on', 'every', 'each', 'foll') ? readBeats(c) : [];
  const ends = beats.at(-1);
  const closed = ends?.times !== undefined || ends?.toCount !== undefined;
  return closed && beats.length <= most ? { is: 'repeat named', name: '', beats } : undefined;
}

/** 'Continue decreasing thus', 'cont to dec in this way': as it was done last. */
const takeGoesOnSo = (c: Cursor): boolean =>
  attempt(
    c,
    () =>
      takeAnyPhrase(c, 'cont to? dec|inc|decreasing|increasing') &&
      takeAnyPhrase(c, 'thus', 'in this|the? same? way|manner', 'as before|set', 'in same manner as before'),
  );

/** 'rep row 2 5 times' is the row by itself, again and again: a rhythm says on which rows. */
const readNumber = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const number = takes(c, 'row') ? takeNumber(c) : undefined;
    const beats = sees(c, 'on', 'every', 'each', 'foll') ? readBeats(c) : [];
    if (number !== undefined && beats.length > 0)
      return { is: 'repeat named', name: String(number), number, beats };
  });
