import { type Cursor, takeAnyPhrase, takeNumber, takePhrase, takes } from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import { readUntil } from './phrase/until.ts';
import type { Beat, Statement } from './statement.ts';

export function readEvenly(c: Cursor, change: number, when: readonly Beat[]): Statement | undefined {
  const start = c.at;
  takes(c, 'spaced', 'as');
  const evenly = takeAnyPhrase(c, 'evenly', 'even', 'at even intervals', 'at equal intervals');
  if (evenly) takeAnyPhrase(c, 'spaced', 'as possible');
  const over = readOver(c);
  const row = readRowRef(c);
  if (!evenly && row === undefined && over === undefined) {
    c.at = start;
    return undefined;
  }
  if (!evenly && !over && (row === undefined || when.length > 0)) {
    c.at = start;
    return undefined;
  }
  const at = c.at;
  takes(c, ',', '-', '(');
  const until = readUntil(c);
  if (until?.is !== 'count') c.at = at;
  return {
    is: 'evenly',
    change,
    on: row ?? 'unsaid',
    ...(until?.is === 'count' ? { toCount: until.stitches } : {}),
    ...(over === undefined ? {} : { over }),
  };
}

function readOver(c: Cursor): number | undefined {
  const start = c.at;
  if (takes(c, 'across', 'over', 'along', 'on')) {
    takes(c, 'the');
    takes(c, 'next', 'center', 'centre', 'front', 'back');
    const n = takeNumber(c);
    if (n !== undefined && takePhrase(c, STS)) return n;
  }
  c.at = start;
  return undefined;
}

/** 'across next row', 'in last row of rib', 'on this row'. */
function readRowRef(c: Cursor): 'next' | 'last' | 'unsaid' | undefined {
  const start = c.at;
  takes(c, 'across', 'in', 'on', 'over', 'along', 'during', 'to');
  takes(c, 'the');
  const last = takes(c, 'last', 'final', 'previous');
  const next = !last && takes(c, 'next', 'first', 'following', 'foll', '1st');
  if (!last && !next) takes(c, 'this');
  if (takePhrase(c, 'ws|rs|p|k|purl|knit row') || takeAnyPhrase(c, 'row', 'rnd', 'round')) {
    takeAnyPhrase(
      c,
      'of rib|ribbing|border|garter|band|welt|cuff',
      'of the rib|ribbing|border',
      'of rib pattern',
      'of garter st',
    );
    return last ? 'last' : next ? 'next' : 'unsaid';
  }
  c.at = start;
  return undefined;
}
