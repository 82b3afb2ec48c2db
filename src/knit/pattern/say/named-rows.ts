import {
  attempt,
  type Cursor,
  endsOrdinal,
  isWord,
  sees,
  takeNumber,
  takePhrase,
  takes,
  takesOne,
  takeTo,
  took,
} from '../../row/read/cursor.ts';
import { means } from '../../row/read/meanings.ts';
import type { Statement } from './statement.ts';

/** 'From 1st to 8th row (sets patt)', 'rows 1 to 8 (form the pattern)': said by their numbers, they have them already. */
function takeNumberedRows(c: Cursor): boolean {
  const from = takes(c, 'from');
  const rows = takes(c, 'rows') || (took(c, '(') && sees(c, 'first'));
  if (!from && !rows) return false;
  for (let ends = 0; ends < 2; ends += 1) {
    takes(c, 'row');
    if (!takes(c, 'first') && takeNumber(c) === undefined) return false;
    if (endsOrdinal(c.tokens[c.at])) takeTo(c, c.at + 1);
    takes(c, 'row', 'rows');
    if (ends === 0 && !takes(c, 'to', '-', 'and', 'through')) return false;
  }
  takes(c, 'inclusive', 'incl');
  return true;
}

/** 'These 2 rows | will now be referred to as 1x1 rib'. */
const CALLED = 'are|is|will now? be? called|known|referred to? as?';

/** 'these 2 rows form rib', 'last 4 rows set the pattern': the rows get a name. */
export const readNamedRows = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const numbered = attempt(c, () => takeNumberedRows(c) && takesOne(c, 'forms a pattern'));
    if (numbered) {
      takeTo(c, c.end);
      return { is: 'note', about: 'aside' };
    }
    if (takes(c, 'these', 'last', 'above', 'the', 'this')) {
      takes(c, 'last', 'above');
      const n = takeNumber(c);
      const rows = takePhrase(c, 'row|rows');
      // 'the last 8 rows (first to 8th rows incl) constitute pattern'
      attempt(c, () => rows && takes(c, '(') && takeNumberedRows(c) && takes(c, ')'));
      if (rows && (takesOne(c, 'forms a pattern') || takePhrase(c, CALLED))) {
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
