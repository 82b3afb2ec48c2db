import { attempt, type Cursor, takes, takeWhole } from './cursor.ts';
import { readGoal, takeSts } from './goal.ts';
import type { Item } from './notation.ts';
import type { Level } from './repeat.ts';

/** 'K 7, p 1, k 1, over the next 7 sts': the last two alternate over so many. */
export const ribOver = (c: Cursor, level: Level): boolean =>
  attempt(c, () => {
    takes(c, ',');
    const rib = takes(c, 'rib');
    const [a, b] = level.items.slice(-2);
    if (a?.is !== 'stitches' || b?.is !== 'stitches') return false;
    const turns = (a.work === 'k' && b.work === 'p') || (a.work === 'p' && b.work === 'k');
    if (!turns || a.times !== b.times || level.items.length - 2 < Math.max(0, level.star)) return false;
    // 'k 13, k 1, p 1 rib to last 13 sts'
    const goal = rib ? readGoal(c) : undefined;
    if (goal) {
      level.items.splice(-2, 2, { is: 'group to', items: [a, b], goal });
      return true;
    }
    if (!takes(c, 'over') && !rib) return false;
    takes(c, 'the');
    takes(c, 'next', 'first', 'last');
    const n = takeWhole(c);
    if (n === undefined || !takeSts(c)) return false;
    const span = a.times + b.times;
    const rest = n % span;
    if (n < span || (rest !== 0 && rest !== a.times)) return false;
    const group: Item = { is: 'group', items: [a, b], times: Math.floor(n / span) };
    level.items.splice(-2, 2, group, ...(rest === 0 ? [] : [a]));
    return true;
  });
