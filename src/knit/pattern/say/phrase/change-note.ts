import {
  attempt,
  type Cursor,
  isOneOf,
  isWord,
  peekWord,
  seesOne,
  takeNumber,
  takePhrase,
  takes,
} from '../../../row/read/cursor.ts';
import { STS } from '../../../row/read/goal.ts';
import { means } from '../../../row/read/meanings.ts';

/** '2 sts dec’d', '(4 sts increased)': what a row changes, not what it leaves. */
export const takeChangeNote = (c: Cursor): boolean =>
  attempt(c, () => {
    const open = takes(c, '(', '[');
    if (takeNumber(c) !== undefined && takePhrase(c, STS) && seesOne(c, 'changed')) {
      c.at += 1;
      takes(c, 'd');
      if (open) takes(c, ')', ']');
      if (c.at >= c.end || isOneOf(peekWord(c), '. , ;')) return true;
    }
    return false;
  });

/** Where a sentence ends before such a note. */
export function withoutChangeNote(c: Cursor): number {
  let end = c.end;
  while (end > c.at && isOneOf(c.tokens[end - 1]?.text ?? '', '. ) ]')) end -= 1;
  if (isWord(c.tokens[end - 1], 'd')) end -= 1;
  if (!means(c.tokens[end - 1]?.text, 'changed')) return c.end;
  if (!isWord(c.tokens[end - 2], 'st', 'sts') || c.tokens[end - 3]?.kind !== 'number') return c.end;
  const at = end - 3;
  const parting = isOneOf(c.tokens[at - 1]?.text ?? '', '( [ - , ; : =');
  return parting && at - 1 > c.at ? at - 1 : c.end;
}
