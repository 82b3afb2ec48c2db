import { attempt, type Cursor, takeAll, takeNumber, takePhrase, takes } from '../../row/read/cursor.ts';
import type { Statement } from './statement.ts';

/** 'these 2 rows form rib', 'last 4 rows set the pattern': the rows get a name. */
export const readNamedRows = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (takes(c, 'these', 'last', 'above', 'the', 'this')) {
      takes(c, 'last', 'above');
      const n = takeNumber(c);
      if (takePhrase(c, 'row|rows') && takes(c, 'form', 'forms', 'set', 'sets', 'establish', 'complete')) {
        const name = c.tokens
          .slice(c.at, c.end)
          .filter(({ kind, text }) => kind === 'word' && !/^(the|a|patt|pattern|st|stitch|in|as)$/.test(text))
          .map(({ text }) => text)
          .slice(0, 4)
          .join(' ');
        takeAll(c);
        return { is: 'named rows', name, ...(n === undefined ? {} : { rows: n }) };
      }
    }
  });
