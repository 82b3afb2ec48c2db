import { attempt, type Cursor } from '../../row/read/cursor.ts';
import { ending } from './phrase/ending.ts';
import type { Statement } from './statement.ts';

/** ', ending with a WS row' behind a repeat or a shaping: it says where that ends, and works nothing by itself. */
export const readEnding = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const start = c.at;
    const end = ending(c);
    return c.at === start ? undefined : { is: 'ending', ...end };
  });
