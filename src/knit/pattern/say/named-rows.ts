import {
  attempt,
  type Cursor,
  isWord,
  takeNumber,
  takePhrase,
  takes,
  takesOne,
  takeTo,
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
        // 'these 2 rows form rib, repeat a further 4 times': what is ordered behind it is no name
        const order = c.tokens.findIndex(
          (token, i) =>
            i > c.at && i < c.end && token.word === 'rep' && isWord(c.tokens[i - 1], ',', ';', 'and'),
        );
        const end = order < 0 ? c.end : order;
        const name = c.tokens
          .slice(c.at, end)
          .filter(({ kind, text }) => kind === 'word' && !means(text, 'beside the name of rows'))
          .map(({ text }) => text)
          .slice(0, 4)
          .join(' ');
        takeTo(c, end);
        return { is: 'named rows', name, ...(n === undefined ? {} : { rows: n }) };
      }
    }
  });
