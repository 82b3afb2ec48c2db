import {
  attempt,
  type Cursor,
  endsOrdinal,
  isWord,
  peek,
  peekNumber,
  peekWord,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takes,
  took,
} from '../../../row/read/cursor.ts';
import { readTimes, type Times } from '../../../row/read/goal.ts';
import type { Beat } from '../how-far.ts';
import { readLength } from './measure.ts';
import { readRowKind } from './row-kind.ts';
import { readToCount, readUntil } from './until.ts';

/** 'on next row', 'every other row', 'on every RS row' before the word that says what is done. */
export function readBeatsBefore(c: Cursor): Beat[] {
  if (!sees(c, 'on', 'every', 'next', 'each', 'in', 'at', 'over')) return [];
  if (
    sees(c, 'at', 'each', 'in', 'on') &&
    !isWord(peek(c, 1), 'next', 'every', 'each', 'the', 'rs', 'foll', 'this', 'row') &&
    peek(c, 1)?.kind !== 'number'
  )
    return [];
  if (peekWord(c) === 'each' && isWord(peek(c, 1), 'end', 'side', 'edge')) return [];
  return readBeats(c);
}

/** A row is worked from one needle on to the other: 'at beg of each needle'. */
const ROWS = 'row|rows|rnd|rnds|needle';

/** 'of next and every foll 4th row to 60 sts', 'every other row 5 times, then every row 3 times'; those said `before` come first. */
export function readBeats(c: Cursor, before: readonly Beat[] = []): Beat[] {
  const beats = [...before, ...(readNumberedRows(c) ?? (before.length === 0 ? readOften(c) : []))];
  while (beats.length < 20) {
    const start = c.at;
    const beat = attempt(c, () => {
      if (beats.length > 0) skipChain(c);
      return readBeat(c, beats.length > 0);
    });
    if (beat === undefined) break;
    const isRow = isWord(c.tokens[start - 1], 'row', 'rows');
    beats.push(before.length > 0 ? beat : joinNumbered(beats, joinNext(beats, beat, isRow)));
  }
  return beats;
}

/** '10 times on every 2nd row': how often before on which rows. */
const readOften = (c: Cursor): Beat[] =>
  attempt(c, () => {
    const times = readTimes(c);
    if (times === undefined || times.more || !sees(c, 'on', 'in', 'every')) return undefined;
    const beat = readBeat(c, false);
    const open = beat && (beat.times ?? beat.toCount ?? beat.until) === undefined;
    return open ? [{ ...beat, times: times.n, counted: true }] : undefined;
  }) ?? [];

function skipChain(c: Cursor): void {
  takes(c, ',', ';');
  takes(c, 'and', 'then', 'followed');
  takes(c, 'then', 'by');
  takeAnyPhrase(c, 'again');
}

/** 'next and every foll 4th row 8 times' counts the next row among the eight, and so does whatever is said 'in all'; 'next row, then every 4th row 8 times' does not. */
export function joinNext(beats: readonly Beat[], beat: Beat, rowSaid: boolean): Beat {
  const before = beats.at(-1);
  if (before?.times !== 1 || beats.length !== 1 || beat.times === undefined || beat.further || !beat.counted)
    return beat;
  return rowSaid && !beat.total ? beat : { ...beat, times: Math.max(0, beat.times - 1) };
}

/** '5th row and 9th row': each is counted from here. */
function joinNumbered(beats: readonly Beat[], beat: Beat): Beat {
  const numbered = (one: Beat) => one.times === 1 && one.first === one.every && !one.side;
  if (!numbered(beat) || beats.length === 0 || (beats[0]?.every ?? 1) === 1) return beat;
  if (!beats.every((one, i) => numbered(one) || (i > 0 && one.times === 1 && one.first === undefined)))
    return beat;
  const rows = beats.reduce((sum, { every }) => sum + every, 0);
  return beat.every > rows ? { every: beat.every - rows, times: 1 } : beat;
}

/** 'on 5th, 11th and 17th rows', each counted from here. */
const readNumberedRows = (c: Cursor): Beat[] | undefined =>
  attempt(c, () => {
    takes(c, 'of', 'on', 'in', 'at');
    takes(c, 'the');
    takes(c, 'foll');
    const numbers = [0];
    for (let n = takeNumber(c); n !== undefined; n = takeNumber(c)) {
      if (!endsOrdinal(peek(c)) || n <= (numbers.at(-1) as number)) return undefined;
      c.at += 1;
      numbers.push(n);
      takes(c, ',');
      takes(c, 'and');
    }
    if (numbers.length < 3 || !takes(c, 'rows', 'row')) return undefined;
    return numbers.slice(1).map((n, i) => {
      const every = n - (numbers[i] as number);
      return { ...(i === 0 ? { first: n } : {}), every, times: 1 };
    });
  });

const readBeat = (c: Cursor, later: boolean): Beat | undefined =>
  attempt(c, () => {
    const rhythm = attempt(c, () => {
      takes(c, 'of', 'on', 'in', 'at', 'over', 'for', 'working');
      takes(c, 'the');
      if (!attempt(c, () => takes(c, 'each', 'every') && takes(c, 'of'))) takes(c, 'each');
      takes(c, 'of');
      takes(c, 'the');
      return readNext(c) ?? readEvery(c) ?? readOrdinal(c) ?? readFollowing(c);
    });
    if (rhythm) return readBeatEnd(c, rhythm);
    const ridges = readRidges(c);
    if (ridges) return ridges;
    const times = readTimes(c);
    if (times && !later) return readBeatEnd(c, { every: 2, times: times.n });
    if (times && later && times.more) return { every: 2, times: times.n, further: true };
  });

/** 'next row', 'next 4 rows', 'next 3 RS rows', 'next alt row'; 'next and' leaves the rest to the next beat. */
const readNext = (c: Cursor): Beat | undefined =>
  attempt(c, () => {
    if (takes(c, 'this', 'same')) {
      if (takeAnyPhrase(c, ROWS) || seesPhrase(c, 'and')) return { first: 1, every: 1, times: 1 };
      return undefined;
    }
    if (!takes(c, 'next')) return undefined;
    const n = takeNumber(c);
    const kind = readRowKind(c);
    if (takeAnyPhrase(c, ROWS)) {
      const every = kind?.every ?? 1;
      return {
        ...(kind?.side ? { side: kind.side } : {}),
        first: kind?.side ? 1 : every === 1 ? 1 : every,
        every,
        times: n ?? 1,
      };
    }
    if (seesPhrase(c, 'and|,|then') && n === undefined)
      return { first: 1, every: 1, times: 1, ...(kind?.side ? { side: kind.side } : {}) };
  });

/** 'every row', 'every 4th row', 'every following alt row', 'each RS row', 'every 6 rows'. */
const readEvery = (c: Cursor): Beat | undefined =>
  attempt(c, () => {
    const each = took(c, 'each');
    takes(c, 'alternately');
    if (!takes(c, 'every', 'each', 'ev') && !each) return undefined;
    takes(c, 'foll');
    const kind = readRowKind(c);
    if (kind) {
      takes(c, 'foll');
      if (takeAnyPhrase(c, ROWS)) {
        takes(c, 'alternately', 'foll');
        return kind;
      }
      if (takes(c, 'ridge', 'rib', 'ribs')) {
        skipRows(c, 2 * kind.every);
        return { ...kind, every: 2 * kind.every };
      }
      if (c.at >= c.end || peek(c)?.kind !== 'word') return kind;
    } else {
      if (takeAnyPhrase(c, ROWS)) return { first: 1, every: 1 };
      const everyMm = takes(c, 'inch') ? 25.4 : takes(c, 'cm') ? 10 : readLength(c);
      if (everyMm !== undefined) return { every: 1, everyMm };
      const n = takeNumber(c);
      if (n !== undefined && takeAnyPhrase(c, ROWS)) return { every: n };
    }
  });

/** 'every 9th ridge (18th row)' says it twice. */
const skipRows = (c: Cursor, n: number): boolean =>
  attempt(c, () => {
    if (!takes(c, '(') || takeNumber(c) !== n) return false;
    if (endsOrdinal(peek(c))) takes(c, 'th', 'nd');
    return takeAnyPhrase(c, ROWS) && takes(c, ')');
  });

/** '3rd row', '3rd and every foll 4th row' (the rest is the next beat), 'row 5', '5th and foll 6th rows'. */
const readOrdinal = (c: Cursor): Beat | undefined =>
  attempt(c, () => {
    const named = attempt(c, () => (takes(c, 'row') ? takeNumber(c) : undefined));
    if (named !== undefined) return { first: named, every: named, times: 1 };
    const foll = takes(c, 'foll');
    if (!foll && takes(c, 'first'))
      return takeAnyPhrase(c, ROWS) ? { first: 1, every: 1, times: 1 } : undefined;
    const kind = readRowKind(c);
    if (kind && !kind.side) {
      if (takeAnyPhrase(c, ROWS) || seesPhrase(c, 'and|foll|then')) {
        return foll ? { every: kind.every, times: 1 } : { first: kind.every, every: kind.every, times: 1 };
      }
    }
  });

/** 'foll 3 alt rows', 'foll 4th row', 'following 5 rows', 'alternate rows'. */
const readFollowing = (c: Cursor): Beat | undefined => readFollowingRows(c) ?? readRowsOfKind(c);

const readFollowingRows = (c: Cursor): Beat | undefined =>
  attempt(c, () => {
    const ahead = takeNumber(c);
    if (!takes(c, 'foll', ...(ahead === undefined ? ['the'] : []))) return undefined;
    const n = ahead ?? takeNumber(c);
    const kind = readRowKind(c);
    const side = kind?.side ? { side: kind.side } : {};
    if (n !== undefined)
      return takeAnyPhrase(c, ROWS) ? { every: kind?.every ?? 1, ...side, times: n } : undefined;
    if (kind && takeAnyPhrase(c, ROWS)) return { every: kind.every, times: 1, ...side };
    // 'at beg of foll rows until 60 sts remain'
    if (takes(c, 'rows')) return sees(c, 'until', 'to') ? { first: 1, every: 1 } : undefined;
    return takeAnyPhrase(c, 'row') ? { first: 1, every: 1, times: 1 } : undefined;
  });

const readRowsOfKind = (c: Cursor): Beat | undefined =>
  attempt(c, () => {
    if (takes(c, 'alt', 'rs', 'ws') || (seesPhrase(c, 'k|p rows') && takes(c, 'k', 'p'))) {
      const said = c.tokens[c.at - 1]?.word;
      // in stocking stitch the knit rows are those of the right side
      const word = said === 'k' ? 'rs' : said === 'p' ? 'ws' : said;
      if (takeAnyPhrase(c, 'rows', 'row'))
        return {
          every: 2,
          ...(word === 'rs' ? { side: 'RS' as const } : word === 'ws' ? { side: 'WS' as const } : {}),
        };
    }
  });

/** '5 times', ', 5 times', '(5 times)' behind what is done. */
export const readTimesBehind = (c: Cursor): Times | undefined =>
  attempt(c, () => {
    const open = takes(c, '(');
    if (!open) takes(c, ',', '-');
    const times = readTimes(c);
    return times && open && !takes(c, ')') ? undefined : times;
  });

/** '… 8 times', '… to 60 sts', '… until armhole measures 10 cm', '… once'. */
function readBeatEnd(c: Cursor, beat: Beat): Beat {
  takes(c, 'thereafter');
  const times = readTimesBehind(c);
  if (times) {
    const single = beat.times;
    const read: Beat = {
      ...beat,
      counted: true,
      times: single !== undefined && single > 1 ? single * times.n : times.n,
      ...(times.more ? { further: true } : {}),
      ...(times.total ? { total: true } : {}),
    };
    return withCount(c, read);
  }
  const rows = beat.times === undefined ? attempt(c, () => readForRows(c, beat.every)) : undefined;
  if (rows !== undefined) return { ...beat, counted: true, times: rows };
  if (beat.times === 1 && seesPhrase(c, 'and')) return beat;
  return attempt(c, () => untilOf(c, beat)) ?? beat;
}

/** 'every row for 6 rows' is six times, 'every other row for 6 rows' three times. */
function readForRows(c: Cursor, every: number): number | undefined {
  if (!takes(c, 'for')) return undefined;
  takes(c, 'a', 'the');
  takes(c, 'next', 'further');
  const n = takeNumber(c);
  return n !== undefined && n % every === 0 && takeAnyPhrase(c, 'rows') ? n / every : undefined;
}

/** 'dec 1 st each side for 3 ridges': once in each of them. */
const readRidges = (c: Cursor): Beat | undefined =>
  attempt(c, () => {
    const n = takes(c, 'for') ? takeNumber(c) : undefined;
    return n !== undefined && takes(c, 'ridge') ? { every: 2, times: n, counted: true } : undefined;
  });

function untilOf(c: Cursor, beat: Beat): Beat | undefined {
  // '…, 13 inches' says how long it is by then
  if (takes(c, ',') && peekNumber(c) !== undefined) return undefined;
  const until = readUntil(c);
  if (until?.is === 'count') return { ...beat, toCount: until.stitches, ...dropTimes(beat) };
  // 'at each end of first row, until work measures 8 cm': the rows around it run so far
  return until && until.is !== 'rows' && beat.times !== 1 ? { ...beat, until } : undefined;
}

const dropTimes = (beat: Beat): object => (beat.times === 1 ? { times: undefined } : {});

/** '8 times, until 60 sts remain': the count is stated, not another end. */
function withCount(c: Cursor, beat: Beat): Beat {
  const stitches = readToCount(c, ',', '-');
  return stitches === undefined ? beat : { ...beat, toCount: stitches };
}
