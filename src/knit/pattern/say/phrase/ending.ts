import {
  attempt,
  type Cursor,
  isOneOf,
  peek,
  peekWord,
  takeAnyPhrase,
  takes,
  took,
} from '../../../row/read/cursor.ts';
import type { Side } from '../../../row/step.ts';
import type { EndEdge } from '../statement.ts';
import { readSide } from './side.ts';

/** ', ending with a WS row', 'ending with RS facing for next row', 'end with row 4 of pattern'. */
export function ending(c: Cursor): { end?: Side; endEdge?: EndEdge } {
  if (!takeEnding(c)) return {};
  const ready = took(c, 'ready');
  takes(c, 'with', 'on', 'after', 'at', 'having', 'by', 'for', 'to', 'so');
  takes(c, 'that', 'working', 'work', 'a', 'an', 'the', 'last', 'completing');
  takes(c, 'worked', 'just');
  if (takeAnyPhrase(c, 'side|armhole|arm|seam|underarm edge', 'side|armhole seam'))
    return { endEdge: 'armhole' };
  if (takeAnyPhrase(c, 'front|neck|center|inner edge', 'center front edge?')) return { endEdge: 'neck' };
  const side = readSide(c);
  if (side === undefined) {
    skipRowName(c);
    return {};
  }
  const facing = takes(c, 'facing');
  takes(c, 'row', 'rows', 'side', 'rnd');
  takeAnyPhrase(c, 'for next row', 'for the next row', 'next');
  takeAnyPhrase(c, 'row', 'completed', 'just worked', 'worked');
  takes(c, ')');
  const next = facing || ready;
  return { end: next ? (side === 'RS' ? 'WS' : 'RS') : side };
}

const takeEnding = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',', '(', '-', ';');
    takes(c, 'and', 'then');
    return takes(c, 'ending', 'end', 'finishing', 'finish', 'ends', 'ended', 'ready');
  });

function skipRowName(c: Cursor): void {
  while (peek(c) && !isOneOf(peekWord(c), ', . ; )')) c.at += 1;
}
