import {
  ahead,
  attempt,
  type Cursor,
  peekNumber,
  sees,
  seesOne,
  seesPhrase,
  takeAnyPhrase,
  takePhrase,
  takes,
  takeWhole,
} from './cursor.ts';
import { END, type Goal, TO_END } from './notation.ts';

export const STS = 'st|sts';
const MARKER = 'm|marker';
const WRAPPED = 'wrapped st';
const REMAIN = ['remain', 'rem', 'left', 'unworked'];

export const takeSts = (c: Cursor): boolean => takePhrase(c, STS);

/** 'to end', 'to last 4 sts', 'across', 'to 2 sts before marker' ... */
export const readGoal = (c: Cursor): Goal | undefined =>
  attempt(c, () => {
    if (!seesOne(c, 'how far')) return undefined;
    const turns = takes(c, 'alternately', 'alternating', 'alt');
    return (
      readTo(c) ??
      attempt(c, () =>
        takeAnyPhrase(c, 'across row? in? patt?', 'straight') &&
        (seesPhrase(c, 'to|until the? last|within') || (sees(c, 'until') && peekNumber(c, 1) !== undefined))
          ? readTo(c)
          : undefined,
      ) ??
      readAcross(c) ??
      (turns ? END : undefined)
    );
  });

function readTo(c: Cursor): Goal | undefined {
  if (!takes(c, 'to', 'until', 'up', 'upto')) return undefined;
  takes(c, 'to');
  takeAnyPhrase(c, 'you reach');
  const within = takes(c, 'within');
  takes(c, 'the');
  if (takes(c, 'end', 'ends')) return skipEndWords(c);
  if (takes(c, 'last')) return readLast(c);
  // 'k to cast-off sts, cast on 2, k to end': to where they are cast on
  if (takeAnyPhrase(c, 'bo|bound|cast -? off? st|sts', 'gap', 'sts? bound|cast off')) return END;
  if (takePhrase(c, WRAPPED)) return { turn: 0 };
  if (takes(c, 'next', 'first', 'second', 'foll') || sees(c, ...MARKER.split('|'))) {
    if (takePhrase(c, WRAPPED)) return { turn: 0 };
    return takePhrase(c, MARKER) ? { marker: 0 } : undefined;
  }
  takes(c, 'there');
  takes(c, 'are');
  takes(c, 'only');
  const n = takeWhole(c);
  if (n === undefined) return undefined;
  takeSts(c);
  if (takes(c, 'before')) return readBefore(c, n);
  if (takes(c, 'from', 'of')) {
    if (!takeAnyPhrase(c, 'the end', 'end')) return undefined;
    skipEndWords(c);
    return { left: n };
  }
  takes(c, 'are');
  if (takes(c, ...REMAIN)) {
    takePhrase(c, 'on the? left|lh? hand? needle');
    return { left: n };
  }
  // 'to within 4 sts, k2tog, k2'
  return within ? { left: n } : undefined;
}

function readLast(c: Cursor): Goal {
  const n = takeWhole(c) ?? 1;
  takeSts(c);
  return { left: n };
}

function readBefore(c: Cursor, n: number): Goal | undefined {
  takes(c, 'the');
  takes(c, 'next', 'first', 'second', 'foll', 'last', 'previous', 'previously');
  if (takes(c, 'end')) {
    skipEndWords(c);
    return { left: n };
  }
  if (takePhrase(c, WRAPPED)) return { turn: n };
  return takePhrase(c, MARKER) ? { marker: n } : undefined;
}

function skipEndWords(c: Cursor): Goal {
  takePhrase(c, 'of the|next|this? row|rows|rnd|needle');
  takePhrase(c, 'for left|right front|side|shoulder');
  return TO_END;
}

const readAcross = (c: Cursor): Goal | undefined =>
  attempt(c, () => {
    if (takeAnyPhrase(c, 'all the way', 'all across|along', 'straight across', 'in? every st', 'each st')) {
      takes(c, 'across');
      return END;
    }
    if (takeAnyPhrase(c, 'all rem? sts', 'the rest', 'all|back|even')) {
      // 'k back across the 50 sts'
      attempt(
        c,
        () =>
          takePhrase(c, 'across|over the|these') && takeWhole(c) !== undefined && takeSts(c) && c.at >= c.end,
      );
      return acrossTail(c);
    }
    if (takeAnyPhrase(c, 'the? rem', 'the? remainder')) {
      // 'knit remaining 13' says how many
      if (peekNumber(c) !== undefined) return undefined;
      takeSts(c);
      takePhrase(c, 'of the? row');
      return END;
    }
    if (takeAnyPhrase(c, 'around', 'entire rnd', 'the? entire|whole row', 'the row')) return END;
    if (takes(c, 'across', 'over', 'along')) {
      // 'over the first 12 sts' is a count
      return ahead(c, () => readCount(c)) === undefined ? acrossTail(c) : undefined;
    }
  });

function acrossTail(c: Cursor): Goal {
  takeAnyPhrase(c, 'across', 'to end');
  takeAnyPhrase(c, 'the|this? entire|whole? row|rnd', 'needle', 'all? the|rem? sts', 'to end');
  takePhrase(c, 'of the? row');
  takeAnyPhrase(c, 'to end', 'on needle|holder');
  return END;
}

/** 'next 3 sts', '3', 'the first 5 sts'; nothing taken when no number is said. */
export const readCount = (c: Cursor): number | undefined =>
  attempt(c, () => {
    takes(c, 'across', 'over', 'on');
    takes(c, 'the', 'these');
    if (!attempt(c, () => takeWhole(c) === 1 && takes(c, 'st') && peekNumber(c) !== undefined))
      takes(c, 'next', 'first', 'last', 'foll', 'center', 'middle', 'rem', 'other');
    return takeWhole(c);
  });

export interface Times {
  readonly n: number;
  /** 'in all': the number is the total even after 'rep from *' */
  readonly total: boolean;
  /** 'more': the number comes on top of the first */
  readonly more: boolean;
}

/** '5 times', 'twice', '× 5', '4 times more', '3 times in all'. */
export const readTimes = (c: Cursor): Times | undefined =>
  attempt(c, () => {
    if (peekNumber(c) === undefined && !seesOne(c, 'how often')) return undefined;
    const totalAhead = seesPhrase(c, 'for? a? total of');
    const n = timesNumber(c);
    if (n === undefined) return undefined;
    const more = takeAnyPhrase(c, 'more time', 'more', 'again', 'further');
    if (more) takes(c, 'time');
    const total = takeAnyPhrase(c, 'time? in all', 'in? total', 'altogether', 'all tog') || totalAhead;
    return { n, total, more };
  });

function timesNumber(c: Cursor): number | undefined {
  takes(c, 'for');
  takes(c, 'a', 'another');
  if (takes(c, 'once')) return 1;
  if (takes(c, 'twice')) return 2;
  if (takes(c, 'thrice')) return 3;
  if (takes(c, 'x')) {
    const n = takeWhole(c);
    takes(c, 'time');
    return n;
  }
  takePhrase(c, 'total of');
  return timesOf(c);
}

function timesOf(c: Cursor): number | undefined {
  const n = takeWhole(c);
  return seesPhrase(c, 'more|further time') || takes(c, 'time', 'x') ? n : undefined;
}
