import { attempt, type Cursor, takeAnyPhrase, takePhrase, takes } from '../../row/read/cursor.ts';
import { readTimes } from '../../row/read/goal.ts';
import { takeStated } from './phrase/stated-count.ts';
import type { Said, Statement } from './statement.ts';

/** Oftener nothing is said again. */
const MOST_TIMES = 200;

/** 'Repeat from * 3 times more', 'rep from ** to ** twice': the instructions since the star, in a sentence of its own. */
export const readRepeatStars = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (!takes(c, 'rep', 'repeating')) return undefined;
    if (!takes(c, 'from', 'between')) return undefined;
    takes(c, 'the');
    const stars = takeStars(c);
    if (stars === undefined) return undefined;
    attempt(c, () => takes(c, 'to', 'and', '-') && takeStars(c) !== undefined);
    takes(c, ',');
    const times = readTimes(c) ?? (takeAnyPhrase(c, 'again') ? { n: 1, total: false } : undefined);
    if (times === undefined || times.n < 1 || times.n > MOST_TIMES) return undefined;
    return { is: 'repeat from stars', stars, times: times.total ? times.n - 1 : times.n };
  });

const takeStars = (c: Cursor): 1 | 2 | undefined =>
  takePhrase(c, '* *') ? 2 : takes(c, '*') ? 1 : undefined;

/** '*dec 1 st at each end of next 2 rows; rep from * 9 times more': the instructions are said again. */
export const repeatSaid = (c: Cursor, said: Said[], star: { at: number }): boolean =>
  attempt(c, () => {
    if (!takes(c, 'rep')) return false;
    takes(c, 'from', 'between');
    takes(c, '*');
    takes(c, '*');
    const times = readTimes(c);
    if (times === undefined || times.n > MOST_TIMES) return false;
    const again = said.slice(star.at + 1);
    said.splice(star.at, 1);
    for (let i = 0; i < (times.total ? times.n - 1 : times.n); i += 1) said.push(...again);
    const stated = takeStated(c);
    const last = said.at(-1);
    if (stated !== undefined && last) said[said.length - 1] = { ...last, stated };
    star.at = -1;
    return true;
  });
