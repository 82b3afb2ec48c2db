import {
  attempt,
  type Cursor,
  endsOrdinal,
  isOneOf,
  peek,
  peekNumber,
  peekWord,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  took,
} from '../../../row/read/cursor.ts';
import type { Side } from '../../../row/step.ts';
import type { EndEdge } from '../how-far.ts';
import { readSide } from './side.ts';

/** ', ending with a WS row', 'ending with RS facing for next row', 'end with row 4 of pattern'. */
export const ending = (c: Cursor): End => readOdd(c) ?? attempt(c, () => readEnd(c)) ?? {};

/** ', working an odd number of rows'. */
const readOdd = (c: Cursor): End | undefined =>
  attempt(c, () => {
    takes(c, ',');
    takes(c, 'working', 'work');
    takes(c, 'an');
    const odd = takes(c, 'odd');
    return (odd || takes(c, 'even')) && takePhrase(c, 'number of rows') ? { odd } : undefined;
  });

interface End {
  readonly end?: Side;
  readonly endEdge?: EndEdge;
  /** an odd number of rows, or an even one */
  readonly odd?: boolean;
  /** the row of the pattern that is the last */
  readonly endRow?: number;
}

/** Undefined also where rows are still to come: 'ending with 4 rows in garter st', 'end with a repeat of rows 2–4'. */
function readEnd(c: Cursor): End | undefined {
  const seen = readFacingNext(c);
  if (seen) return seen;
  if (!takeEnding(c)) return undefined;
  const ready = took(c, 'ready');
  takes(c, 'with', 'on', 'after', 'at', 'having', 'by', 'for', 'to', 'so');
  takes(c, 'that', 'working', 'work', 'a', 'an', 'the', 'last', 'completing');
  takes(c, 'worked', 'just');
  // 'end by working a right side row'
  takes(c, 'a', 'an', 'the');
  if (sees(c, 'rep', 'repeats') || seesPhrase(c, 'a rep') || rowsToCome(c)) return undefined;
  takeAnyPhrase(c, 'row on the', 'row on');
  if (takeAnyPhrase(c, 'side|armhole|arm|seam|underarm edge', 'side|armhole seam'))
    return { endEdge: 'armhole' };
  if (takeAnyPhrase(c, 'front|neck|center|inner edge', 'center front edge?')) return { endEdge: 'neck' };
  const side = readSide(c);
  if (side === undefined) {
    const endRow = readPatternRow(c);
    return skipRowName(c) ? (endRow === undefined ? {} : { endRow }) : undefined;
  }
  const facing = takes(c, 'facing');
  takes(c, 'row', 'rows', 'side');
  takeAnyPhrase(c, 'of the? work|piece');
  takeAnyPhrase(c, 'for next row', 'for the next row', 'next');
  takeAnyPhrase(c, 'row', 'completed', 'just worked', 'worked');
  takes(c, ')');
  const next = facing || ready;
  return { end: next ? (side === 'RS' ? 'WS' : 'RS') : side };
}

/** ', with RS facing for next row'. */
const readFacingNext = (c: Cursor): End | undefined =>
  attempt(c, () => {
    takes(c, ',');
    const side = takes(c, 'with') ? readSide(c) : undefined;
    if (side === undefined) return undefined;
    takes(c, 'side');
    return takes(c, 'facing') && takePhrase(c, 'for the? next row')
      ? { end: side === 'RS' ? 'WS' : 'RS' }
      : undefined;
  });

/** 'row 4 of pattern', 'a 4th patt row', '4th row of patt'. */
const readPatternRow = (c: Cursor): number | undefined =>
  attempt(c, () => {
    if (seesPhrase(c, 'patt row')) takes(c, 'patt');
    const named = took(c, 'row') || takes(c, 'row');
    const word = ['first', 'second', 'third', 'fourth'].indexOf(peekWord(c));
    if (word >= 0 && peekWord(c, 1) === 'row') {
      c.at += 2;
      return word + 1;
    }
    const n = takeNumber(c);
    if (!named && !endsOrdinal(peek(c))) return undefined;
    if (!named) c.at += 1;
    return takeAnyPhrase(c, 'patt|rib row', 'row? of the? patt|rib') || named ? n : undefined;
  });

const rowsToCome = (c: Cursor): boolean =>
  peekNumber(c) !== undefined &&
  (peekWord(c, 1) === 'rows' || peekWord(c, 1) === 'ridge' || peekWord(c, 1) === 'more');

const takeEnding = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',', '(', '-', ';');
    takes(c, 'and', 'then', 'thus', 'so');
    return (
      takes(c, 'ending', 'end', 'finishing', 'finish', 'ends', 'ended', 'ready') ||
      takePhrase(c, 'working last row on')
    );
  });

/** Not where something is to come within it: 'end the piece with 4 rows of garter st', 'finish the other front'. */
function skipRowName(c: Cursor): boolean {
  // 'ending on a 2nd row and inc 6 sts evenly'
  const more = () =>
    isOneOf(peekWord(c), 'and &') && isOneOf(peekWord(c, 1), 'inc dec increasing decreasing bind cast work');
  while (peek(c) && !isOneOf(peekWord(c), ', . ; )') && !more()) {
    if (rowsToCome(c) || seesPhrase(c, 'other|second front|side|half|shoulder|sleeve')) return false;
    c.at += 1;
  }
  return true;
}
