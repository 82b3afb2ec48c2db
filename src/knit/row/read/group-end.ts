import { ahead, attempt, type Cursor, sees, takeAnyPhrase, takePhrase, takes, takeWhole } from './cursor.ts';
import { readGoal, readTimes, STS } from './goal.ts';
import type { Goal } from './notation.ts';

/** What stands after a closing bracket. */
export type GroupEnd =
  | { readonly is: 'once' }
  | { readonly is: 'times'; readonly n: number }
  | { readonly is: 'goal'; readonly goal: Goal }
  | { readonly is: 'over'; readonly stitches: number }
  | { readonly is: 'in one'; readonly times: number };

export const readGroupEnd = (c: Cursor): GroupEnd => readInOne(c) ?? readHowFar(c) ?? { is: 'once' };

const readInOne = (c: Cursor): GroupEnd | undefined =>
  attempt(c, () => {
    takes(c, 'all');
    const many = readInEach(c);
    if (many !== undefined) return { is: 'in one', times: many };
    return readInOneStitch(c) ? { is: 'in one', times: readTimes(c)?.n ?? 1 } : undefined;
  });

const readHowFar = (c: Cursor): GroupEnd | undefined =>
  attempt(c, () => {
    attempt(c, () => takes(c, ',', ';') && sees(c, 'rep', 'repeated') && seesGoalOf(c));
    if (takes(c, 'rep', 'repeated')) {
      takeAnyPhrase(c, 'instructions in parentheses|brackets', 'these sts');
    }
    takes(c, ',');
    const times = readTimes(c);
    if (times) return { is: 'times', n: times.more ? times.n + 1 : times.n };
    const goal = readGoal(c);
    if (goal) return { is: 'goal', goal };
    if (!takes(c, 'over', 'across', 'on', 'for', 'along')) return undefined;
    takes(c, 'the');
    takes(c, 'next', 'first', 'center', 'foll', 'last');
    const n = takeWhole(c);
    return n !== undefined && takePhrase(c, STS) ? { is: 'over', stitches: n } : undefined;
  });

/** 'K1, [p1, k1], rep to end': without a star it is the bracket that is repeated. */
const seesGoalOf = (c: Cursor): boolean => ahead(c, () => takes(c, 'rep') && readGoal(c) !== undefined);

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
      const n = takeWhole(c);
      if (takePhrase(c, STS)) return n;
    }
  });
