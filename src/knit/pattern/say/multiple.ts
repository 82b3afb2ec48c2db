import { type Cursor, cursorOver, isWord, peek, peekWord, takes, takeTo } from '../../row/read/cursor.ts';
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
  takes(tail, 'multiple', 'multiples', 'mult', 'worked', 'over');
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
  while (
    tail.at < tail.end &&
    !/^[:.]$/.test(peekWord(tail)) &&
    /^(for|edge|extra|over|end|sts|,|selvedge|\)|\]|st|balance)$/.test(peekWord(tail))
  )
    tail.at += 1;
  takes(tail, ':');
  takes(tail, ')', ']');
  takes(tail, ':');
  takeTo(c, tail.at);
  return { is: 'multiple', of: of.value, plus, name: cleanName(name) };
}

function findMultiple(c: Cursor): number | undefined {
  for (let i = c.at; i < Math.min(c.end, c.at + 14); i += 1) {
    if (isWord(c.tokens[i], 'multiple', 'multiples', 'mult')) return i;
  }
  return undefined;
}

const cleanName = (name: string): string =>
  name
    .replace(/\b(pattern stitch|pattern|patt|stitch|st|pat|is|a|worked|over|the|on)\b/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
