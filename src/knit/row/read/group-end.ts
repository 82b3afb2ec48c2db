import { attempt, type Cursor, sees, takeAnyPhrase, takeNumber, takePhrase, takes } from './cursor.ts';
import { readGoal, readTimes, STS } from './goal.ts';
import type { Goal } from './notation.ts';

/** What stands after a closing bracket. */
export type GroupEnd =
  | { readonly is: 'once' }
  | { readonly is: 'times'; readonly n: number }
  | { readonly is: 'goal'; readonly goal: Goal }
  | { readonly is: 'over'; readonly stitches: number }
  | { readonly is: 'in one'; readonly times: number };

export function readGroupEnd(c: Cursor): GroupEnd {
  const start = c.at;
  takes(c, 'all');
  const many = readInEach(c);
  if (many !== undefined) return { is: 'in one', times: many };
  if (readInOneStitch(c)) {
    const times = readTimes(c);
    return { is: 'in one', times: times?.n ?? 1 };
  }
  c.at = start;
  if (takes(c, 'rep', 'repeated')) {
    takeAnyPhrase(c, 'instructions in parentheses|brackets', 'these sts');
  }
  takes(c, ',');
  const times = readTimes(c);
  if (times) return { is: 'times', n: times.more ? times.n + 1 : times.n };
  const goal = readGoal(c);
  if (goal) return { is: 'goal', goal };
  if (takes(c, 'over', 'across', 'on', 'for', 'along')) {
    takes(c, 'the');
    takes(c, 'next', 'first', 'center', 'foll', 'last');
    const n = takeNumber(c);
    if (n !== undefined && Number.isSafeInteger(n) && takePhrase(c, STS)) return { is: 'over', stitches: n };
  }
  c.at = start;
  return { is: 'once' };
}

/** 'in next st', 'into same st', 'in 1 st'. */
export const readInOneStitch = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!sees(c, 'all', 'in', 'into')) return false;
    takes(c, 'all');
    if (takes(c, 'in', 'into')) {
      takes(c, 'the');
      takes(c, 'same', 'next', 'foll', 'first', 'last', 'center');
      takePhrase(c, '1');
      if (takePhrase(c, 'st|loop')) return true;
    }
    return false;
  });

/** 'in each of next 3 sts'. */
const readInEach = (c: Cursor): number | undefined =>
  attempt(c, () => {
    if (takes(c, 'in', 'into') && takes(c, 'each') && takes(c, 'of')) {
      takes(c, 'the');
      takes(c, 'next', 'foll');
      const n = takeNumber(c);
      if (n !== undefined && Number.isSafeInteger(n) && takePhrase(c, STS)) return n;
    }
  });
