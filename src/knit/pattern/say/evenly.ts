import { attempt, type Cursor, takeAnyPhrase, takeNumber, takePhrase, takes } from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import type { Beat } from './how-far.ts';
import { seesEnding, takeFirst } from './phrase/ordinal.ts';
import { readToCount } from './phrase/until.ts';
import type { Statement } from './statement.ts';

/** `counted` where the text says how many: 'inc on next row' leaves that to what was said before. */
export const readEvenly = (
  c: Cursor,
  change: number,
  when: readonly Beat[],
  counted: boolean,
): Statement | undefined =>
  attempt(c, () => {
    takes(c, 'spaced', 'as');
    const evenly = takeAnyPhrase(c, 'evenly|even', 'at even|equal intervals');
    if (evenly) takeAnyPhrase(c, 'spaced', 'as possible');
    const over = readOver(c);
    const row = readRowRef(c);
    if (!evenly && row === undefined && over === undefined) return undefined;
    if (!counted && !evenly && over === undefined) return undefined;
    if (!evenly && !over && (row === undefined || when.length > 0)) return undefined;
    const toCount = readToCount(c, ',', '-', '(');
    return {
      is: 'evenly',
      change,
      on: row ?? 'unsaid',
      // 'inc at even intervals to 75 sts': as many as it takes
      ...(toCount === undefined ? {} : { toCount, ...(counted ? {} : { all: true }) }),
      ...(over === undefined ? {} : { over }),
    };
  });

const readOver = (c: Cursor): number | undefined =>
  attempt(c, () => {
    if (takes(c, 'across', 'over', 'along', 'on')) {
      takes(c, 'the');
      takes(c, 'next', 'center', 'front', 'back');
      const n = takeNumber(c);
      if (n !== undefined && !seesEnding(c) && takePhrase(c, STS)) return n;
    }
  });

/** 'across next row', 'in last row of rib', 'on this row'. */
const readRowRef = (c: Cursor): 'next' | 'last' | 'unsaid' | undefined =>
  attempt(c, () => {
    takes(c, 'across', 'in', 'on', 'over', 'along', 'during', 'to');
    takes(c, 'the');
    const last = takes(c, 'last', 'final', 'previous');
    const next = !last && (takes(c, 'next', 'foll') || takeFirst(c));
    if (!last && !next) takes(c, 'this');
    if (takePhrase(c, 'ws|rs|p|k row') || takes(c, 'row')) {
      takeAnyPhrase(c, 'of rib|garter patt|st', 'of the? rib|border|garter|band|welt|cuff');
      return last ? 'last' : next ? 'next' : 'unsaid';
    }
  });
