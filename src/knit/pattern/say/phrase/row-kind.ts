import {
  attempt,
  type Cursor,
  endsOrdinal,
  peek,
  peekNumber,
  peekWord,
  takeAnyPhrase,
  takeNumber,
  takes,
  takeTo,
} from '../../../row/read/cursor.ts';
import { means } from '../../../row/read/meanings.ts';
import type { Side } from '../../../row/step.ts';

interface RowKind {
  readonly every: number;
  readonly side?: Side;
  readonly and?: number;
}

const ORDINALS = 'third fourth fifth sixth seventh eighth ninth tenth'.split(' ');

/** 'other', 'alternate', '4th', 'RS', '3 rd', 'second'. */
export function readRowKind(c: Cursor): RowKind | undefined {
  if (takes(c, 'other', 'alt', 'second', 'alternating')) return { every: 2, ...readAnd(c) };
  const every = ORDINALS.indexOf(peekWord(c)) + 3;
  if (every > 2) {
    c.at += 1;
    return { every };
  }
  if (takeAnyPhrase(c, 'rs', 'right side', 'k', 'front')) return { every: 2, side: 'RS' };
  if (takeAnyPhrase(c, 'ws', 'wrong side', 'p')) return { every: 2, side: 'WS' };
  const n = peekNumber(c);
  if (n === undefined || !means(peekWord(c, 1), 'ordinal ending')) return undefined;
  c.at += 2;
  return { every: n, ...readAnd(c) };
}

/** 'every 4th and 2nd row', 'every 2nd and 4th row alternately'. */
const readAnd = (c: Cursor): { and: number } | undefined =>
  attempt(c, () => {
    if (!takes(c, 'and')) return undefined;
    const n = takeNumber(c);
    if (n === undefined || !endsOrdinal(peek(c))) return undefined;
    c.at += 1;
    return { and: n };
  });

/** 'Next row (WS) Divide for fronts and back: k17': what the row does. */
export const skipDivide = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!takes(c, 'divide')) return false;
    for (let far = 0; far < 8 && peek(c)?.kind === 'word'; far += 1) takeTo(c, c.at + 1);
    return takes(c, ':');
  });
