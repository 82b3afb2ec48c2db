import { attempt, type Cursor, takeAnyPhrase, takePhrase, takes } from './cursor.ts';
import { readCount, readGoal, takeSts } from './goal.ts';
import { skipManner } from './manner.ts';
import type { Item } from './notation.ts';
import { counted, type ReadItem } from './plain.ts';

export const CAST_ON = ['co', 'cast -? on', 'c o'];

/** 'cast on 5 sts', within a row or at its edge. */
export function readCastOn(c: Cursor): ReadItem | undefined {
  if (!takeAnyPhrase(c, ...CAST_ON)) return undefined;
  const goal = readGoal(c);
  if (goal) return { item: { is: 'stitches to', work: 'co', goal } };
  const n = readCount(c);
  if (n === undefined) return undefined;
  takes(c, 'more', 'new');
  takeSts(c);
  skipManner(c);
  const { item } = counted('co', n);
  return takeOver(c) ? { item: { ...item, over: true } as Item } : { item };
}

/** 'over those bound off in the row before', 'in place of cast-off sts'. */
const takeOver = (c: Cursor): boolean =>
  attempt(c, () => {
    takePhrase(c, 'in the? place');
    return takePhrase(
      c,
      'over|above|of|replacing the|these|those? st|sts|ones? bo|bound|cast -? off|on? st|sts? in|on|of? the? last|previous|preceding|row? row?',
    );
  });

export const takeCastOn = (c: Cursor): boolean => takeAnyPhrase(c, ...CAST_ON);
