import { MM_PER_INCH } from '../../gauge.ts';
import {
  attempt,
  type Cursor,
  isWord,
  peek,
  peekNumber,
  seesOne,
  seesPhrase,
  takeAnyPhrase,
  takePhrase,
  takes,
  takeTo,
  takeWhole,
} from '../../row/read/cursor.ts';
import { readRow } from '../../row/read/row.ts';
import type { Beat } from './how-far.ts';
import { readBeats, readBeatsBefore } from './phrase/beats.ts';
import { readLength } from './phrase/measure.ts';
import type { Statement } from './statement.ts';

const HOLES = ['buttonhole|buttonholes row|rows?', 'button -? hole|holes row|rows?'];

/** 'working a buttonhole every 16th row', 'make 5 buttonholes, the rest spaced evenly', 'omitting buttonholes': beside what is worked. */
export const readButtonholes = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takes(c, '(');
    takes(c, 'and', 'but');
    if (takeAnyPhrase(c, 'omit|omitting the?', 'without the?', 'with no', 'leave out the?')) {
      if (!takeAnyPhrase(c, ...HOLES)) return undefined;
      takes(c, ')');
      return { is: 'buttonholes', beats: [], omitted: true };
    }
    // 'on next row and every 10th row thereafter make a buttonhole'
    const before = readBeatsBefore(c);
    if (before.length > 0) takes(c, ',');
    const n = readMade(c);
    if (n === undefined) return undefined;
    takeInset(c);
    takeAnyPhrase(c, 'in the? same way|manner', 'as before|above|given|set|on');
    takeAnyPhrase(
      c,
      'on|in|at|along the? right|left? front? edge|border|band|side',
      'on|in|at|along the? button|buttonhole border|band',
      'on|in|at|along the? right|left? front',
    );
    // on which front is hers to choose
    takePhrase(c, 'for boys|girls|men|women ,? and on? the? right|left front for boys|girls|men|women ,?');
    takeInset(c);
    // 'work buttonhole as follows: …' is the row itself
    if (c.at < c.end && seesPhrase(c, ',? as|thus|:')) return undefined;
    // '3 in all' would be inches
    const inner = { ...c, end: untilMade(c) };
    const beats = before.length > 0 ? before : (readWhere(inner) ?? []);
    takeTo(c, inner.at);
    const last = beats.at(-1);
    const made = takeUntilMade(c);
    const earlier = beats.slice(0, -1).reduce((sum, { times = 0 }) => sum + times, 0);
    const ends =
      made === undefined ? (last?.times === undefined && n > 0 ? n : undefined) : Math.max(0, made - earlier);
    const items = beats.length > 0 ? readSpelled(c) : undefined;
    if (items && !items.ok) return undefined;
    if (items) takeTo(c, c.end);
    else if (beats.length === 0) takeRest(c);
    takes(c, ')');
    const counted = ends !== undefined && last ? [...beats.slice(0, -1), { ...last, times: ends }] : beats;
    return { is: 'buttonholes', beats: counted, ...(items?.ok ? { items: items.value } : {}) };
  });

/** '… every 14th row, as follows: k2, yo, k2tog, k to end', '… every 14th row: k2, yo, …': how such a row is worked. */
const readSpelled = (c: Cursor): ReturnType<typeof readRow> | undefined =>
  takeAnyPhrase(c, ',? as foll :|,|-', ',? thus :|,|-')
    ? readRow(c)
    : attempt(c, () => {
        const row = takes(c, ':') ? readRow(c) : undefined;
        return row?.ok ? row : undefined;
      });

/** 'making 3 more buttonholes', 'following buttonholes are made': how many, 0 where nobody says. */
const readMade = (c: Cursor): number | undefined =>
  attempt(c, () => {
    const are = attempt(c, () => {
      takes(c, 'foll', 'the');
      return takeAnyPhrase(c, ...HOLES) && takeAnyPhrase(c, 'is|are made|worked|spaced');
    });
    if (are) return 0;
    // 'rep buttonhole row' works on to it
    const again = !seesPhrase(c, 'rep buttonhole row') && takes(c, 'rep', 'repeating');
    if (!again && !takes(c, 'work', 'working', 'make', 'making', 'cont', 'continuing', 'with'))
      return undefined;
    takes(c, 'to', 'working', 'making', 'work', 'make');
    const n = takes(c, 'a', 'the', 'another', 'all') ? 0 : (takeWhole(c) ?? 0);
    takes(c, 'more', 'further', 'other');
    return takeAnyPhrase(c, ...HOLES) ? n : undefined;
  });

/** In which rows; a comma before what is no such place parts it from what comes next. */
const readWhere = (c: Cursor): readonly Beat[] | undefined =>
  attempt(c, () => {
    takes(c, ',');
    const beats = readApart(c) ?? readAfter(c) ?? readRowsNamed(c) ?? readBeats(c);
    return beats.length > 0 ? beats : undefined;
  });

/** ', 3 sts in from front edge,': where in the row is said by her words. */
const takeInset = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',');
    if (takeWhole(c) === undefined || !takeAnyPhrase(c, 'sts|st in? from the? front|center|same? edge'))
      return false;
    takes(c, ',');
    return true;
  });

/** 'after the first ½ in and every 2 in thereafter', 'when piece measures 2 cm and again when piece measures 6 cm'. */
const readAfter = (c: Cursor): Beat[] | undefined =>
  attempt(c, () => {
    const first = readFirstLength(c) ?? readWhole(c);
    if (first === undefined) return undefined;
    takes(c, ',');
    takes(c, 'and');
    takes(c, 'again', 'then');
    takePhrase(c, ',? measuring from the? 1 st? row? of? the? last buttonhole ,?');
    const again = readWhole(c);
    const beats = again ? [again] : readBeats(c);
    return beats.length === 1 ? [first, ...beats] : undefined;
  });

/** 'after the first ½ in', 'after the 1st inch'. */
const readFirstLength = (c: Cursor): Beat | undefined =>
  attempt(c, () => {
    if (!takeAnyPhrase(c, 'after the? first', 'after the? 1 st')) return undefined;
    const mm = readLength(c) ?? (takes(c, 'inch', 'in') ? MM_PER_INCH : takes(c, 'cm') ? 10 : undefined);
    return mm === undefined ? undefined : { every: 1, everyMm: mm, times: 1 };
  });

/** 'when piece measures 2 cm': from its beginning. */
const readWhole = (c: Cursor): Beat | undefined =>
  attempt(c, () => {
    if (!takePhrase(c, 'when the? piece|work|band|front measures')) return undefined;
    const mm = readLength(c);
    return mm === undefined ? undefined : { every: 1, everyMm: mm, times: 1, whole: true };
  });

/** '2 in apart'. */
const readApart = (c: Cursor): Beat[] | undefined =>
  attempt(c, () => {
    const everyMm = readLength(c);
    return everyMm !== undefined && takes(c, 'apart') ? [{ every: 1, everyMm }] : undefined;
  });

/** 'on rows 5, 15 and 25', each counted from here. */
const readRowsNamed = (c: Cursor): Beat[] | undefined =>
  attempt(c, () => {
    takes(c, 'on', 'in');
    if (!takes(c, 'rows')) return undefined;
    const beats: Beat[] = [];
    let before = 0;
    for (let n = takeWhole(c); n !== undefined && n > before; n = takeWhole(c)) {
      beats.push({ ...(before === 0 ? { first: n } : {}), every: n - before, times: 1 });
      before = n;
      takePhrase(c, ',? and?');
    }
    return beats.length > 0 ? beats : undefined;
  });

/** Where 'until 7 in all are made' begins; the end where nothing of it is said. */
function untilMade(c: Cursor): number {
  for (let at = c.at; at < c.end; at += 1) if (takeUntilMade({ ...c, at }) !== undefined) return at;
  return c.end;
}

const takeUntilMade = (c: Cursor): number | undefined =>
  attempt(c, () => {
    takes(c, ',');
    if (!takes(c, 'until')) return undefined;
    takePhrase(c, 'there are');
    const n = takeWhole(c);
    const holes = takeAnyPhrase(c, ...HOLES);
    // not so many inches
    const all = takePhrase(c, 'in all');
    return takeAnyPhrase(c, 'are|have been? made|worked') || holes || all ? n : undefined;
  });

/** Where they lie is said in words that nobody reads: 'the first 2 cm from the edge, the rest spaced evenly'. */
function takeRest(c: Cursor): void {
  while (c.at < c.end && !isWord(peek(c), '.', ';', ')') && !seesOrder(c)) takeTo(c, c.at + 1);
}

/** ', and dec 1 st', 'until work measures': what is ordered next. */
function seesOrder(c: Cursor): boolean {
  const parted = isWord(peek(c), ',', 'and', 'then');
  const next = parted ? { ...c, at: c.at + 1 } : c;
  if (parted && (seesOne(next, 'beginning of an order') || seesPhrase(next, 'at the? same time|until')))
    return true;
  return isWord(peek(next), 'until') && peekNumber(next, 1) === undefined;
}
