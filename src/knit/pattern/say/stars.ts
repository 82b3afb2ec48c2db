import { attempt, type Cursor, takePhrase } from '../../row/read/cursor.ts';
import type { Statement } from './statement.ts';

/** Two stars on their own: a place that another piece is worked from or to. */
export const readStars = (c: Cursor): Statement | undefined =>
  attempt(c, () =>
    takePhrase(c, '* * *')
      ? { is: 'stars', three: true }
      : takePhrase(c, '* *')
        ? { is: 'stars' }
        : undefined,
  );
