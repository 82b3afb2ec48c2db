import { type Cursor, takeAnyPhrase, takes } from './cursor.ts';
import { readCount, readGoal, takeSts } from './goal.ts';
import { skipManner } from './manner.ts';
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
  takeAnyPhrase(
    c,
    'over bo|bound|cast sts',
    'over bound off sts',
    'over cast off sts',
    'over those bound|cast off',
  );
  takeAnyPhrase(c, 'over the bound|cast - off sts', 'over bound - off sts', 'over the bound off sts');
  return counted('co', n);
}

export const takeCastOn = (c: Cursor): boolean => takeAnyPhrase(c, ...CAST_ON);
