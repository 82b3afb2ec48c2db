import { attempt, type Cursor, takeAnyPhrase, takeNumber, takes } from '../../../row/read/cursor.ts';
import type { Until } from '../how-far.ts';
import { ending } from './ending.ts';

/**
 * 'for 3 cm, 10 rows', 'until work measures 6 cm, 20 rows total', 'for 12 cm, approx 24 rows': the length in rows as the
 * text knitted it. The rows are what is counted; the length is what they come to.
 */
export const readRowsThen = (c: Cursor, until: Until | undefined): Until | undefined =>
  attempt(c, () => {
    if (until?.is !== 'length') return undefined;
    takes(c, ',', '-', '(', '=');
    takeAnyPhrase(c, 'that is', 'i.e', 'ie', '=', 'or');
    takes(c, 'approx', 'about');
    const n = takeNumber(c);
    if (n === undefined || !Number.isSafeInteger(n) || n < 1 || !takes(c, 'rows')) return undefined;
    const all = takeAnyPhrase(c, 'in? total|all|altogether', 'from beg|start');
    takes(c, ')');
    if (c.at < c.end && !takes(c, ',') && !isStop(c)) return undefined;
    if (until.from === 'start' || all)
      return { is: 'rows in all', n, from: until.from === 'here' ? 'start' : until.from };
    return until.from === 'here' ? { is: 'rows', n, ...sides(until), ...ending(c) } : undefined;
  });

const isStop = (c: Cursor): boolean => c.tokens[c.at]?.kind === 'mark';

const sides = ({ end, endEdge }: Extract<Until, { is: 'length' }>) => ({
  ...(end === undefined ? {} : { end }),
  ...(endEdge === undefined ? {} : { endEdge }),
});
