import { openLast } from './between.ts';
import { atEnd, attempt, type Cursor, sees, takeAnyPhrase, takes, takeTo, takeWhole } from './cursor.ts';
import { takeSts } from './goal.ts';
import { END, type Item } from './notation.ts';
import type { Level } from './repeat.ts';

/** 'k across, dec 1 st at end of row', 'rib, inc 1 st at each end': the changes lie in the row that is worked. */
export const shapesEnds = (c: Cursor, level: Level): boolean =>
  attempt(c, () => {
    const sign = sees(c, 'dec', 'decreasing') ? 'dec' : 'inc';
    takeTo(c, c.at + 1);
    if (takeWhole(c) !== 1 || !takeSts(c)) return false;
    takes(c, 'at', 'on');
    const both = takeAnyPhrase(c, 'each|both end|ends|side|edge', 'beg and end');
    const first = !both && takeAnyPhrase(c, 'the? beg|start');
    if (!both && !first && !takeAnyPhrase(c, 'the? end')) return false;
    takeAnyPhrase(c, 'of the? row|needle', 'of this|last row');
    const last = level.items.at(-1);
    // 'k to end' and a bare 'k' are the whole row
    const bare = last?.is === 'stitches' && last.times === 1 && level.items.length === 1;
    if (level.star >= 0 || !atStop(c) || !(bare || (last && 'goal' in last))) return false;
    if (bare) level.items[0] = { is: 'stitches to', work: last.work, goal: END };
    else openLast(level);
    const edge: Item = { is: 'stitches', work: sign, times: 1 };
    if (both || first) level.items.unshift(edge);
    if (!first) level.items.push(edge);
    return true;
  });

const atStop = (c: Cursor): boolean => atEnd(c) || sees(c, '.', ';', ',');
