import { attempt, type Cursor, takePhrase, takes, takeWhole } from '../../../row/read/cursor.ts';
import { STS } from '../../../row/read/goal.ts';
import type { Beat, EdgeName } from '../how-far.ts';

/**
 * '… every alt row | until 6 sts have been decreased', 'until 3 incs have been worked': by that the last beat ends. Of
 * decreases at both ends nobody knows whether one of them is one stitch or two, and stitches must come out.
 */
export const readChanged = (
  c: Cursor,
  beats: readonly Beat[],
  change: number,
  edge: EdgeName,
): readonly Beat[] | undefined =>
  attempt(c, () => {
    const last = beats.at(-1);
    if (last === undefined || (last.times ?? last.toCount ?? last.until) !== undefined) return undefined;
    takes(c, ',');
    const n = takes(c, 'until') ? takeWhole(c) : undefined;
    const ends = edge === 'both' ? 2 : 1;
    const each = takeChanged(c, STS, 'decreased|increased|decd|incd|added|lost')
      ? Math.abs(change) * ends
      : ends === 1 && takeChanged(c, 'dec|inc|increases|decreases', 'worked|made|completed')
        ? 1
        : undefined;
    if (n === undefined || each === undefined) return undefined;
    const before = beats.slice(0, -1).reduce((sum, { times = 0 }) => sum + times, 0);
    const times = n / each - before;
    if (!Number.isInteger(times) || times < 0) return undefined;
    return [...beats.slice(0, -1), { ...last, times, counted: true }];
  });

const takeChanged = (c: Cursor, what: string, done: string): boolean =>
  attempt(c, () => takePhrase(c, what) && takePhrase(c, `have|has|are|is been? ${done}`) && !takes(c, 'on'));
