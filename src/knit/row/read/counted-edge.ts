import type { StitchName } from '../../stitch.ts';
import { type Cursor, isWord, takePhrase, takes } from './cursor.ts';
import { readCount, readGoal, STS, takeSts } from './goal.ts';
import { skipManner } from './manner.ts';
import type { Item } from './notation.ts';
import { counted, type ReadItem } from './plain.ts';

export function countedEdge(c: Cursor, work: StitchName): ReadItem {
  const from = c.at;
  const n = readCount(c);
  takes(c, 'more');
  takes(c, 'center', 'rem', 'new');
  const centre = work === 'bo' && c.tokens.slice(from, c.at).some((one) => isWord(one, 'center', 'middle'));
  takeSts(c);
  takePhrase(c, 'of sleeve|sleeves');
  skipManner(c);
  if (n === undefined) return { item: allOf(work) };
  return centre ? { item: { is: 'stitches', work, times: n, centre } } : counted(work, n);
}

export const allOf = (work: StitchName): Item => ({
  is: 'stitches to',
  work,
  goal: { left: 'what follows' },
});

export const toGoal = (work: StitchName, c: Cursor): Item => ({
  is: 'stitches to',
  work,
  goal: readGoal(c) ?? { left: 'what follows' },
});

export const takeRest = (c: Cursor): boolean => takePhrase(c, `rem|all ${STS}`);
