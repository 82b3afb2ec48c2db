import {
  attempt,
  type Cursor,
  takeAll,
  takeNumber,
  takePhrase,
  takes,
  takesOne,
} from '../../row/read/cursor.ts';
import { means } from '../../row/read/meanings.ts';
import type { Statement } from './statement.ts';

/** 'these 2 rows form rib', 'last 4 rows set the pattern': the rows get a name. */
export const readNamedRows = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (takes(c, 'these', 'last', 'above', 'the', 'this')) {
      takes(c, 'last', 'above');
      const n = takeNumber(c);
      if (takePhrase(c, 'row|rows') && takesOne(c, 'forms a pattern')) {
        const name = c.tokens
          .slice(c.at, c.end)
          .filter(({ kind, text }) => kind === 'word' && !means(text, 'beside the name of rows'))
          .map(({ text }) => text)
          .slice(0, 4)
          .join(' ');
        takeAll(c);
        return { is: 'named rows', name, ...(n === undefined ? {} : { rows: n }) };
      }
    }
  });
