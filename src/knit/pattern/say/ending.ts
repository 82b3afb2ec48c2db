import { attempt, type Cursor, takePhrase, takes } from '../../row/read/cursor.ts';
import { ending } from './phrase/ending.ts';
import { readSide } from './phrase/side.ts';
import type { Statement } from './statement.ts';

/** ', ending with a WS row' behind a repeat or a shaping: it says where that ends, and works nothing by itself. */
export const readEnding = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const sure = readSure(c);
    if (sure) return sure;
    const start = c.at;
    const end = ending(c);
    return c.at === start ? undefined : { is: 'ending', ...end };
  });

/** 'Make sure that the last row is a WS row' */
const readSure = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (!takePhrase(c, 'make|be sure that? the|your? last row is a')) return undefined;
    const end = readSide(c);
    return end !== undefined && takes(c, 'row') ? { is: 'ending', end } : undefined;
  });
