import {
  attempt,
  type Cursor,
  isWord,
  peek,
  peekWord,
  sees,
  seesOne,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takesOne,
  takeTo,
  took,
} from '../../../row/read/cursor.ts';
import type { MarkName, Until } from '../how-far.ts';
import { ending } from './ending.ts';
import { readLength } from './measure.ts';
import { seesEnding } from './ordinal.ts';
import { readFrom } from './place.ts';
import { readSameLength } from './same-length.ts';

/** What a stretch of rows runs to: 'until armhole measures 20 cm, ending with a WS row', 'for 6 rows'. */
export const readUntil = (c: Cursor): Until | undefined => attempt(c, () => readFor(c) ?? readTill(c));

/** ', until 60 sts remain': a count and no other end, after one of the marks. */
export const readToCount = (c: Cursor, ...marks: readonly string[]): number | undefined =>
  attempt(c, () => {
    takes(c, ...marks);
    const until = readUntil(c);
    return until?.is === 'count' ? until.stitches : undefined;
  });

const readFor = (c: Cursor): Until | undefined =>
  attempt(c, () => {
    takes(c, 'for', 'over', 'on');
    takes(c, 'the');
    takes(c, 'next', 'foll', 'first');
    takes(c, 'a', 'another');
    takes(c, 'further');
    const mm = readLength(c);
    if (mm !== undefined) {
      takes(c, 'more', 'deep');
      // 'for 9 in, from the first binding off'
      const from = readFrom(c) ?? attempt(c, () => (takes(c, ',') ? readFrom(c) : undefined));
      skipOrSo(c);
      return { is: 'length', mm, from: from ?? 'here', ...ending(c) };
    }
    const n = takeNumber(c);
    takes(c, 'more', 'further');
    if (n !== undefined && takes(c, 'row', 'rows')) {
      takes(c, 'more');
      return { is: 'rows', n, ...ending(c) };
    }
    if (n !== undefined && takes(c, 'ridge')) {
      return { is: 'rows', n: 2 * n, ...ending(c) };
    }
  });

function readTill(c: Cursor): Until | undefined {
  const under = readToUnderarm(c);
  if (under) return under;
  // 'work as high as back'
  if (seesPhrase(c, 'as high|long|deep as')) return readSameLength(c);
  if (!takes(c, 'until', 'to', 'when', 'once', 'after')) return undefined;
  takes(c, 'to');
  takes(c, 'the', 'there', 'your', 'you');
  const count = readCountEnd(c);
  if (count) return count;
  if (takesLessThanWanted(c)) return { is: 'open', ...ending(c) };
  const same = readSameLength(c);
  if (same) return same;
  const measured = readMeasured(c);
  if (measured) return measured;
  if (
    takeAnyPhrase(
      c,
      'desired|required|wanted|correct length',
      'length desired|required',
      'long enough',
      'length is as desired',
    )
  ) {
    return { is: 'open', ...ending(c) };
  }
  if (takeAsSheLikes(c) || takeYarnEnds(c)) return { is: 'open', ...ending(c) };
  return undefined;
}

/** 'until piece is 2 cm less than desired length': hers, as the length is. */
const takesLessThanWanted = (c: Cursor): boolean =>
  attempt(c, () => {
    takesOne(c, 'what is measured');
    takes(c, 'is', 'measures');
    takes(c, 'about', 'approx');
    if (readLength(c) === undefined || !takes(c, 'less', 'shorter')) return false;
    return takePhrase(c, 'than the? desired|required|wanted length?');
  });

/** 'Work to underarm, 7½ inches': so long from the beginning. */
const readToUnderarm = (c: Cursor): Until | undefined =>
  attempt(c, () => {
    if (!takeAnyPhrase(c, 'to the? underarm|armhole')) return undefined;
    takes(c, ',', '-', '(');
    takes(c, 'about', 'approx');
    const mm = readLength(c);
    takes(c, ')');
    return mm === undefined ? undefined : { is: 'length', mm, from: 'start', ...ending(c) };
  });

/** 'until a few yards of yarn are left', 'until you run out of yarn'. */
const takeYarnEnds = (c: Cursor): boolean =>
  attempt(c, () => {
    if (takePhrase(c, 'you? run|are out of the? yarn|wool')) return true;
    for (let far = 0; far < 7 && !takes(c, 'yarn', 'wool'); far += 1) {
      if (sees(c, 'st', 'sts', 'row', 'rows', ',', '.', ';')) return false;
      takeTo(c, c.at + 1);
    }
    return (
      took(c, 'yarn', 'wool') &&
      takeAnyPhrase(c, 'is|are left', 'remain|rem', 'is nearly|almost? used up|gone|finished')
    );
  });

/** 'until you like the length', 'until the scarf is the size you want'. */
const takeAsSheLikes = (c: Cursor): boolean =>
  attempt(c, () => {
    for (let far = 0; far < 10 && peek(c)?.kind === 'word'; far += 1) {
      const wish = took(c, 'you', 'length', 'size', 'long') && seesOne(c, 'as she likes');
      const desired =
        took(c, 'is', 'the', 'measures', 'reach') &&
        takePhrase(c, 'desired|required|wanted length|size|depth|width');
      if (desired) return true;
      takeTo(c, c.at + 1);
      if (wish) {
        takeAnyPhrase(c, 'the? length|size|width', 'it? to be?');
        return true;
      }
    }
    return false;
  });

/** 'until 60 sts remain', 'to 60 sts', 'until there are 60 sts on needle'. */
const readCountEnd = (c: Cursor): Until | undefined =>
  attempt(c, () => {
    if (takeAnyPhrase(c, 'all sts|st are? bound|cast|worked off', 'no sts remain|rem'))
      return { is: 'count', stitches: 0 };
    takes(c, 'are', 'have', 'is', 'remain', 'rem');
    takes(c, 'only');
    takes(c, 'a');
    takePhrase(c, 'total of');
    const there = took(c, 'are', 'have');
    const n = takeNumber(c);
    if (n !== undefined && takeLeft(c, there)) return { is: 'count', stitches: n };
    if (n !== undefined && !seesEnding(c) && takePhrase(c, 'st|sts')) {
      // '6 sts have been decreased' are none on the needle
      if (sees(c, 'have', 'has') || seesPhrase(c, 'are increased|decreased|added')) return undefined;
      takes(c, 'are', 'is');
      if (takes(c, 'left')) takes(c, 'over');
      else takes(c, 'remain', 'rem', 'in', 'on');
      takeAnyPhrase(c, 'are? on? the? needle', 'all', 'on the right needle', 'for each shoulder');
      return { is: 'count', stitches: n };
    }
    if (n !== undefined) {
      takes(c, 'more');
      if (takes(c, 'rows', 'row') && !sees(c, 'less', 'fewer', 'shorter')) {
        takeAnyPhrase(c, 'in? all? have|are? been? worked|completed|knitted|done|made', 'in all');
        const from = readFrom(c);
        takePhrase(c, 'have|are been? worked|completed|knitted|done|made');
        return { is: 'rows in all', n, from: from ?? 'start' };
      }
      if (takes(c, 'ridge') && !sees(c, 'less', 'fewer')) {
        // 'in garter st until 4 ridges have been made'
        if (takePhrase(c, 'have|are been? made|worked|completed on? the? right? side?'))
          return { is: 'rows', n: 2 * n, ...ending(c) };
        return { is: 'rows in all', n: 2 * n, from: 'start' };
      }
    }
  });

/** 'until 54 remain', 'until there are 54': stitches, though nobody says so. */
const takeLeft = (c: Cursor, there: boolean): boolean =>
  attempt(c, () => {
    const left = takeAnyPhrase(c, 'are? left', 'remain|rem');
    return (left || there) && (c.at >= c.end || sees(c, '.', ',', ';'));
  });

const readMeasured = (c: Cursor): Until | undefined =>
  attempt(c, () => {
    const what: string[] = [];
    let early: MarkName | undefined;
    while (
      takeAnyPhrase(c, 'from the? beg|start|beginning') ||
      seesOne(c, 'what is measured') ||
      seesOne(c, 'beside what is measured') ||
      // whatever she knits: 'until apron measures'
      (peek(c)?.kind === 'word' && isWord(peek(c, 1), 'measures'))
    ) {
      if (took(c, 'beg', 'start', 'beginning')) continue;
      what.push(peekWord(c));
      c.at += 1;
      // 'until armhole from first shaping measures 8 cm'
      if (sees(c, 'from') && !seesPhrase(c, 'from the? beg|start|beginning')) early = readFrom(c);
    }
    takes(c, 'measures', 'measure', 'is', 'measuring', 'are', 'reaches', 'measured');
    // 'until piece measures from first row of armhole shaping 7 inches'
    early ??= sees(c, 'from', 'above') || seesPhrase(c, 'in all') ? readFrom(c) : undefined;
    const mm = readLength(c);
    if (mm === undefined) return early === undefined ? readMeasuredInRows(c, what) : undefined;
    takes(c, 'in');
    takes(c, 'long', 'deep', 'length', 'all', 'total', 'high', 'wide');
    const from = decreasedFrom(c, early ?? readFrom(c), what) ?? fromMeasured(what);
    takeAnyPhrase(c, 'along|at the? seam|center|side|front back|front|seam|edge? edge?', 'on the? straight');
    skipOrSo(c);
    skipStraightUp(c);
    return { is: 'length', mm, from, ...ending(c) };
  });

/** An armhole 'from first decreasing point' is that armhole's, whether a heading names it or none. */
function decreasedFrom(c: Cursor, from: MarkName | undefined, what: readonly string[]): MarkName | undefined {
  const point =
    from === 'heading'
      ? took(c, 'dec', 'point')
      : takeAnyPhrase(c, 'from the? first decreasing point|row', 'from the? 1 st decreasing|dec point|row?');
  return from === 'heading' || point ? (point && fromMeasured(what) === 'armhole' ? 'armhole' : from) : from;
}

/** ', or any desired length to underarm', 'or until you run out of yarn': it is hers to say so. */
export const skipOrSo = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',', '(');
    if (!takes(c, 'or')) return false;
    let hers = false;
    for (; c.at < c.end && !sees(c, ',', '.', ';', ':', ')', 'ending', 'finishing'); takeTo(c, c.at + 1)) {
      if (peek(c)?.kind === 'number') return false;
      hers ||= seesOne(c, 'as she likes') || sees(c, 'length', 'yarn');
    }
    takes(c, ')');
    return hers;
  });

/** 'until strip goes round the neck', 'until it fits': an end that is seen, and no count and no row. */
export const readSeenEnd = (c: Cursor): Until | undefined =>
  attempt(c, () => {
    if (!takes(c, 'until')) return undefined;
    let seen = false;
    let like = false;
    for (; c.at < c.end && !sees(c, ',', '.', ';', '('); takeTo(c, c.at + 1)) {
      const word = peek(c)?.kind === 'word' || peek(c)?.value === 1;
      // 'the same length as the 30 sts that were bound off'
      like ||= seesPhrase(c, 'same length|width|size as');
      if (!like && (!word || seesOne(c, 'no end that is seen'))) return undefined;
      seen ||= seesOne(c, 'end that is seen');
    }
    return seen || like ? { is: 'open', ...ending(c) } : undefined;
  });

/** '…, measuring straight up from the bound off sts': how it is measured changes nothing. */
const skipStraightUp = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',', '(');
    if (!takeAnyPhrase(c, 'measured|measuring? straight up?', 'measured|measuring')) return false;
    for (let far = 0; far < 16 && c.at < c.end && !sees(c, ',', '.', ';', ')'); far += 1) takeTo(c, c.at + 1);
    takes(c, ')');
    return true;
  });

/** 'until piece measures 55 rows' counts rows. */
const readMeasuredInRows = (c: Cursor, what: readonly string[]): Until | undefined =>
  attempt(c, () => {
    const measured = took(c, 'measures', 'measure', 'is');
    const n = takeNumber(c);
    if (!measured || n === undefined || !takes(c, 'rows')) return undefined;
    return { is: 'rows in all', n, from: readFrom(c) ?? fromMeasured(what) };
  });

/** What is measured tells where from. */
const MARKS: Readonly<Record<string, MarkName>> = {
  armhole: 'armhole',
  raglan: 'armhole',
  rib: 'section',
  border: 'section',
  band: 'section',
  hem: 'section',
  cuff: 'section',
  neckband: 'section',
  collar: 'section',
  neck: 'heading',
  yoke: 'heading',
};

const fromMeasured = (what: readonly string[]): MarkName => {
  const word = what.find((one) => Object.hasOwn(MARKS, one));
  return word === undefined ? 'start' : (MARKS[word] ?? 'start');
};
