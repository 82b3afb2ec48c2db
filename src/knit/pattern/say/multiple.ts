import { type Cursor, cursorOver, isWord, peek, seesOne, takes, takeTo } from '../../row/read/cursor.ts';
import { withoutWords } from '../../row/read/meanings.ts';
import type { Statement } from './statement.ts';

/** A line like 'Basket pattern (multiple of 8 plus 4)' names a stitch pattern. */
export function readMultiple(c: Cursor): Statement | undefined {
  const at = findMultiple(c);
  if (at === undefined) return undefined;
  const name = c.tokens
    .slice(c.at, at)
    .filter((token) => token.kind !== 'mark')
    .map((token) => token.text)
    .join(' ');
  const tail = cursorOver(c.tokens, at, c.end);
  takes(tail, 'multiple', 'multiples', 'mult');
  takes(tail, 'of');
  takes(tail, 'a');
  const of = peek(tail);
  if (of?.kind !== 'number') return undefined;
  tail.at += 1;
  takes(tail, 'st', 'sts');
  let plus = 0;
  if (takes(tail, '+', 'plus', 'and', ',')) {
    takes(tail, 'plus', '+');
    const more = peek(tail);
    if (more?.kind === 'number') {
      plus = more.value;
      tail.at += 1;
    }
  }
  takes(tail, 'st', 'sts');
  while (tail.at < tail.end && seesOne(tail, 'after a multiple')) tail.at += 1;
  takeTo(c, tail.at);
  return { is: 'multiple', of: of.value, plus, name: withoutWords(name, 'beside the name of a multiple') };
}

function findMultiple(c: Cursor): number | undefined {
  for (let i = c.at; i < Math.min(c.end, c.at + 14); i += 1) {
    if (isWord(c.tokens[i], 'multiple', 'multiples', 'mult')) return i;
  }
  return undefined;
}
