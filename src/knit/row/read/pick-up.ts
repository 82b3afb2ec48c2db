import { type Cursor, peek, seesPhrase, takeAnyPhrase, takes } from './cursor.ts';
import { readCount, readGoal, takeSts } from './goal.ts';
import { counted, type ReadItem } from './plain.ts';

/** 'pick up and knit 12 sts along neck': the edge's name is read elsewhere, here it is passed over. */
export function readPickUp(c: Cursor): ReadItem | undefined {
  if (!takeAnyPhrase(c, 'pick up', 'pu', 'pick - up')) return undefined;
  takes(c, 'and', ',');
  takes(c, 'k', 'p');
  const goal = readGoal(c);
  if (goal) return { item: { is: 'stitches to', work: 'pu', goal } };
  const n = readCount(c);
  if (n === undefined) return undefined;
  takeSts(c);
  if (seesForEach(c)) return undefined;
  while (peek(c)?.kind === 'word' && !takes(c, ',')) {
    if (seesPhrase(c, 'and k|pick') || seesPhrase(c, 'k|p|from holder')) break;
    c.at += 1;
  }
  return counted('pu', n);
}

/** 'pick up 1 st for each ridge': how many that is nobody says. */
export const seesForEach = (c: Cursor): boolean => seesPhrase(c, 'for|in|from every|each');
