import {
  ahead,
  attempt,
  type Cursor,
  cursorOver,
  isOneOf,
  isWord,
  peekNumber,
  peekWord,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takeTo,
  took,
} from '../../row/read/cursor.ts';
import { readTimes, STS } from '../../row/read/goal.ts';
import { readEvenly } from './evenly.ts';
import type { Beat, EdgeName } from './how-far.ts';
import { joinNext, readBeats, readBeatsBefore } from './phrase/beats.ts';
import { readChanged } from './phrase/changed.ts';
import { readEdgeOf } from './phrase/edge.ts';
import { skipInset, skipInsetFirst } from './phrase/inset.ts';
import { takeStated } from './phrase/stated-count.ts';
import { readToCount } from './phrase/until.ts';
import type { Statement } from './statement.ts';

type Shape = Extract<Statement, { is: 'shape' }>;

const CHANGES: Readonly<Record<string, number>> = {
  dec: -1,
  decreasing: -1,
  inc: 1,
  increasing: 1,
  narrow: -1,
  narrowing: -1,
  widen: 1,
};

/**
 * Shaping at an edge or across a row, in whichever order it is said: 'dec 1 st at each end of next row',
 * 'at each end of every 4th row inc 1 st', 'inc 6 sts evenly across next row to 60 sts'.
 */
export const readShape = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const neckFirst = takeNeckBefore(c);
    const from = c.at;
    const when = readBeatsBefore(c);
    const edgeBefore = readEdgeOf(c);
    const later = when.length > 0 ? when : edgeBefore ? readBeats(c) : [];
    takes(c, ',', ':');
    const on = takeAnyPhrase(c, 'still? cont|continuing to?');
    const tog = takeTog(c);
    const sign = tog ? -1 : CHANGES[peekWord(c)];
    if (sign === undefined) return undefined;
    if (!tog) c.at += 1;
    const to = tog ? undefined : readToCount(c);
    const atNeck = neckFirst || seesNeck(c);
    const edgeFirst = to === undefined && !tog ? readEdgeFirst(c) : undefined;
    const by = to === undefined && !tog ? (takeManner(c) ? 1 : readBy(c)) : 1;
    const often = readOftenAt(c);
    const neck = atNeck || (edgeFirst === undefined && takePhrase(c, 'for the? neck'));
    const counted = c.tokens[c.at - 1]?.kind === 'number' || took(c, 'st', 'sts', 'once', 'more');
    const evenly = readEvenly(c, sign * by, later, counted);
    if (to !== undefined) return evenly?.is === 'evenly' ? { ...evenly, toCount: to, all: true } : undefined;
    if (evenly) return evenly;
    const shown = attempt(c, () => takePhrase(c, 'in this way|manner') && !sees(c, ':'));
    skipInsetFirst(c);
    // 'dec 1 st, neck edge, every row'
    attempt(c, () => takes(c, ',') && ahead(c, () => readEdgeOf(c)) !== undefined);
    const edgeHere = edgeFirst ?? readEdgeOf(c) ?? edgeBefore;
    const early = edgeHere === undefined ? readBeats(c, later) : later;
    const edge =
      edgeHere ??
      (early.length > later.length ? readEdgeOf(c) : undefined) ??
      (neck && early.length > 0 ? 'neck' : undefined);
    if (edge === undefined && shown && early.length > 0)
      return { is: 'repeat named', name: '', change: sign, beats: withEnd(c, early) };
    if (edge === undefined) return readUnsaid(c, sign * by, early);
    skipInset(c);
    // 'continue to dec 1 st at armhole edge twice more': in a rhythm that was said before
    if (on && early.length === 0 && !sees(c, 'of', 'on', 'in', 'every', 'each', 'next', 'foll', 'alt'))
      return undefined;
    if (takeAnyPhrase(c, 'of|on|in last row', 'of|on|in the last row')) {
      return { is: 'evenly', change: sign * by * (edge === 'both' ? 2 : 1), on: 'last', edge };
    }
    const both = early.length === 0 && takeOtherEdge(c, edge, by);
    takes(c, ',');
    if (endsInRow(c)) return { is: 'shape', change: sign * by, edge: both ? 'both' : edge, beats: early };
    const beats = soOften(readBeats(c, withTimes(c, early, from)), often);
    if (beats === undefined) return undefined;
    takes(c, 'only');
    if (both)
      return beats.length === 0
        ? undefined
        : { is: 'shape', change: sign * by, edge: 'both', beats: withEnd(c, beats) };
    const changed = readChanged(c, beats, sign * by, edge);
    if (changed) return { is: 'shape', change: sign * by, edge, beats: changed };
    // 'dec in this way at each end of every 6th row': as the row before that did
    if (shown && edge === 'both' && beats.length > 0)
      return { is: 'repeat named', name: '', change: sign, beats: withEnd(c, beats) };
    return { is: 'shape', change: sign * by, edge, beats: withEnd(c, beats) };
  });

/** 'Dec 1 st every other row 6 times (58 sts)': the count says whether at one end or at both. */
function readUnsaid(c: Cursor, change: number, beats: readonly Beat[]): Shape | undefined {
  const times = beats.reduce((sum, beat) => sum + (beat.times ?? Number.NaN), 0);
  // the count may be a sentence of its own
  const counted = beats.at(-1)?.toCount ?? takeStated(cursorOver(c.tokens, c.at));
  return times > 1 && counted !== undefined ? { is: 'shape', change, edge: 'unsaid', beats } : undefined;
}

/** 'K 2 tog at each end of every other row': a decrease at the edge, whichever way it is made; 'k2tog at beg, k to end' is a row. */
const takeTog = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, 'work', 'working');
    const tog = takeAnyPhrase(c, 'k|p 2 sts? tog', '2 sts? tog');
    return tog && ahead(c, () => readEdgeOf(c) !== undefined && readBeats(c).length > 0);
  });

/** '… at beg of row' with nothing more: the row that comes next. */
const endsInRow = (c: Cursor): boolean =>
  attempt(
    c,
    () => takeAnyPhrase(c, 'of|in the? row') && (c.at >= c.end || isOneOf(peekWord(c), '. , ; ( -')),
  );

/** 'Inc 1 st 6 times | at left end on every 4th row': how often stands before the edge. */
const readOftenAt = (c: Cursor): number | undefined =>
  attempt(c, () => {
    const times = readTimes(c);
    return times && !times.more && ahead(c, () => readEdgeOf(c)) !== undefined ? times.n : undefined;
  });

function soOften(beats: readonly Beat[], often: number | undefined): readonly Beat[] | undefined {
  if (often === undefined) return beats;
  const [only, ...more] = beats;
  if (only === undefined) return [{ every: 2, times: often, counted: true }];
  const open = more.length === 0 && (only.times ?? only.toCount ?? only.until) === undefined;
  return open ? [{ ...only, times: often, counted: true }] : undefined;
}

/** '… at neck edge and 1 st at armhole edge on next 3 rows': as many at the other one, in the same rows. */
const takeOtherEdge = (c: Cursor, edge: EdgeName, by: number): boolean =>
  attempt(c, () => {
    if (!takes(c, 'and') || takeNumber(c) !== by || !takePhrase(c, STS)) return false;
    const other = readEdgeOf(c);
    return (edge === 'neck' && other === 'armhole') || (edge === 'armhole' && other === 'neck');
  });

/** 'Dec | at neck edge | 1 st every row': the edge before the number. */
const readEdgeFirst = (c: Cursor): EdgeName | undefined =>
  attempt(c, () => {
    const edge = readEdgeOf(c);
    return edge !== undefined && seesPhrase({ ...c, at: c.at + 1 }, STS) && peekNumber(c) !== undefined
      ? edge
      : undefined;
  });

/** 'by knitting 2 tog', 'by knitting twice into': how it is made, and one of it. */
const takeManner = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!takes(c, 'by') || !takes(c, 'knitting', 'purling', 'working', 'k', 'p')) return false;
    if (takeAnyPhrase(c, '2 sts? tog')) return true;
    return takeAnyPhrase(
      c,
      'twice in|into',
      'in|into the? front and back of',
      'in|into the? front and back in|into',
    );
  });

/** 'For the neck, dec 1 st …', 'shape neck by dec 1 st …': where it lies is said by what it is for. */
const takeNeckBefore = (c: Cursor): boolean =>
  attempt(c, () => {
    if (takePhrase(c, 'for the? v? neck ,?')) return sees(c, 'dec', 'decreasing', 'inc', 'increasing');
    return isWord(c.tokens[c.at - 1], 'by') && isWord(c.tokens[c.at - 2], 'neck', 'neckline');
  });

const seesNeck = (c: Cursor): boolean => seesPhrase(c, 'for the? neck');

/** 'Every 4th row dec 1 st at each end 5 times': the times of the beat that was said first. */
function withTimes(c: Cursor, beats: readonly Beat[], from: number): readonly Beat[] {
  const last = beats.at(-1);
  const times =
    last !== undefined && last.times === undefined
      ? attempt(c, () => {
          takes(c, ',');
          return readTimes(c);
        })
      : undefined;
  if (last === undefined || times === undefined) return beats;
  const { n, more, total } = times;
  const counted: Beat = {
    ...last,
    times: n,
    counted: true,
    ...(more ? { further: true } : {}),
    ...(total ? { total: true } : {}),
  };
  const before = beats.slice(0, -1);
  const join = c.tokens.findIndex((token, i) => i > from && isWord(token, 'and', 'then'));
  const ended = isWord(c.tokens[join - 1], ',') ? join - 2 : join - 1;
  return [...before, joinNext(before, counted, isWord(c.tokens[ended], 'row'))];
}

/** '… every other row, 5 times in all' and '… at neck edge until 17 sts remain' close the last beat. */
function withEnd(c: Cursor, beats: readonly Beat[]): readonly Beat[] {
  const last = beats.at(-1);
  if (!last || last.times !== undefined || last.toCount !== undefined || last.until !== undefined)
    return beats;
  const toCount = readToCount(c, ',');
  return toCount === undefined ? beats : [...beats.slice(0, -1), { ...last, toCount }];
}

/** '… and 1 st at neck edge every 4th row': the word for the change stands before the first of them only. */
export const readElidedShape = (
  c: Cursor,
  { change, edge: at, beats: before }: Shape,
): Statement | undefined =>
  attempt(c, () => {
    // 'dec 1 st each side, then | every 2 cm 7 times more'
    if (before.length === 0 && sees(c, 'every')) {
      const beats = readBeats(c);
      return beats.length === 1 && beats[0]?.times ? { is: 'shape', change, edge: at, beats } : undefined;
    }
    const n = takeNumber(c);
    if (n !== undefined && (before.length === 0 || !takePhrase(c, STS))) return undefined;
    // '… of next 5 rows, then each end of every alt row until 44 sts remain': as many as before
    const again = before.length > 0 && sees(c, 'each', 'both', 'at');
    const edge = n === undefined && !again ? undefined : readEdgeOf(c);
    const beats = edge === undefined ? [] : readBeats(c);
    const by = n === undefined ? change : Math.sign(change) * n;
    if (edge !== undefined && beats.length > 0) return { is: 'shape', change: by, edge, beats };
  });

/** 'At neck edge, BO 6 sts once, | then dec 1 st every other row 3 times': at the edge that was said before. */
export const readShapeThere = (c: Cursor, edge: EdgeName): Statement | undefined =>
  attempt(c, () => {
    const sign = CHANGES[peekWord(c)];
    if (sign === undefined || edge === 'beginning' || edge === 'end') return undefined;
    takeTo(c, c.at + 1);
    const n = takeNumber(c);
    if (n === undefined || !takePhrase(c, STS)) return undefined;
    const beats = readBeats(c);
    const last = beats.at(-1);
    const closed = last?.times !== undefined || last?.toCount !== undefined || last?.until !== undefined;
    return closed ? { is: 'shape', change: sign * n, edge, beats } : undefined;
  });

function readBy(c: Cursor): number {
  takeAnyPhrase(c, 'for the? neck|armhole|raglan|shoulder|sleeve');
  takes(c, 'a', 'by');
  takes(c, 'single', 'once');
  const n = takeNumber(c);
  takes(c, 'more');
  takePhrase(c, STS);
  return n ?? 1;
}

/** 'work even at armhole and | dec 1 st at neck edge …': the other edge has no shaping. */
export const readEvenThere = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const even = takeAnyPhrase(
      c,
      'work|keep|cont|continuing|keeping? even|straight at|on the? armhole|side|neck|front|other edge|side? and|but|,',
    );
    return even && sees(c, 'dec', 'inc', 'decreasing', 'increasing')
      ? { is: 'note', about: 'aside' }
      : undefined;
  });
