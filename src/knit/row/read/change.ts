import type { StitchName } from '../../stitch.ts';
import {
  attempt,
  type Cursor,
  endsOrdinal,
  peek,
  sees,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takeTo,
  takeWhole,
} from './cursor.ts';
import { readGoal, STS, takeSts } from './goal.ts';
import { END, type Item } from './notation.ts';
import { counted, type ReadItem, readOfNext } from './plain.ts';

/** After a word for yarn over: once unless said. */
export function readOver(c: Cursor): ReadItem | undefined {
  const doubled = takes(c, 'dbl');
  if (!takeAnyPhrase(c, 'yarn|wool|wl|w over|fwd|rnd', 'wl rd', 'y o', 'yo|o|over')) {
    return undefined;
  }
  takePhrase(c, 'on? the? needle|n');
  if (doubled || takes(c, 'twice')) return counted('yo twice', 1);
  if (takes(c, 'once')) return counted('yo', 1);
  const n = attempt(c, () => {
    const glued = peek(c)?.glued === true;
    const often = takeWhole(c);
    return takes(c, 'time', 'x') || glued ? often : undefined;
  });
  return n === 2 ? counted('yo twice', 1) : counted('yo', n ?? 1);
}

/** After 'm' or 'make': 'm1', 'm1l', 'make 1 purlwise', or a bobble. */
export function readMake(c: Cursor): ReadItem | undefined {
  c.at += 1;
  if (takePhrase(c, 'a? bobble')) return counted('mb', 1);
  takes(c, 'a');
  const n = takeWhole(c);
  if (n === undefined) return undefined;
  takeSts(c);
  return counted(leanOf(c), n);
}

function leanOf(c: Cursor): StitchName {
  if (takePhrase(c, '-? left|l leaning?')) return 'm1l';
  if (takePhrase(c, '-? right|r leaning?')) return 'm1r';
  if (takePhrase(c, '-? p|pwise')) return 'm1p';
  takePhrase(c, '-? k|kwise|a|z|t|tbl');
  return 'm1';
}

/** 'inc 1', 'inc in next st', 'inc in each of next 3 sts', 'inc 4 sts evenly across'. */
export function readIncrease(c: Cursor): ReadItem | undefined {
  c.at += 1;
  takes(c, 'once');
  if (takeAnyPhrase(c, 'by k|knitting|p|purling in|into the? front and then? in|into? the? back of')) {
    takes(c, 'the');
    takeAnyPhrase(c, '1 st|nd|rd', 'next|first|last');
    return takeSts(c) ? counted('inc', 1) : undefined;
  }
  if (takeAnyPhrase(c, 'in|into the? front|back loop? of')) {
    takes(c, 'the', 'next', 'first', 'last', 'same');
    return takeSts(c) ? counted('inc', 1) : undefined;
  }
  takes(c, 'by');
  const n = takeWhole(c);
  const each = takes(c, 'each');
  takeSts(c);
  const evenly = readEvenly(c, n ?? 1);
  if (evenly) return evenly;
  const nth = everyNth(c);
  if (nth) return nth;
  if (sees(c, 'in', 'into')) {
    const over = overNext(c);
    if (over === 'every') return { item: { is: 'stitches to', work: 'inc', goal: { left: 'what follows' } } };
    takePhrase(c, 'pwise|kwise');
    if (over !== undefined) return many('inc', n ?? 1, over, each);
  }
  if (takePhrase(c, 'next st')) return counted('inc', 1);
  takePhrase(c, 'pwise|kwise');
  return counted('inc', n ?? 1);
}

/** 'inc in every 10th st', 'inc 1 st in every 6th st across'. */
const everyNth = (c: Cursor): ReadItem | undefined =>
  attempt(c, () => {
    if (!takeAnyPhrase(c, 'in|into every|each')) return undefined;
    const n = takeWhole(c);
    if (n === undefined || n < 2 || !endsOrdinal(peek(c))) return undefined;
    takeTo(c, c.at + 1);
    if (!takeSts(c)) return undefined;
    readGoal(c);
    const items: Item[] = [
      { is: 'stitches', work: 'k', times: n - 1 },
      { is: 'stitches', work: 'inc', times: 1 },
    ];
    return { item: { is: 'group to', items, goal: END, nth: true } };
  });

/** 'dec 1', 'dec 2 sts', 'dec 6 sts evenly across'. */
export function readDecrease(c: Cursor): ReadItem | undefined {
  c.at += 1;
  const n = takeWhole(c);
  takeSts(c);
  const evenly = readEvenly(c, -(n ?? 1));
  if (evenly) return evenly;
  if (n !== undefined && n >= 2 && n <= 4 && takeAnyPhrase(c, 'at once', 'tog')) {
    return counted(n === 2 ? 'dec 2' : n === 3 ? 'dec 3' : 'dec 4', 1);
  }
  return counted('dec', n ?? 1);
}

const EVENLY = [
  'spaced? evenly',
  'even',
  'at even|equal intervals',
  'at center|middle of row',
  'at center|middle',
  'in center|middle st',
];

const readEvenly = (c: Cursor, change: number): ReadItem | undefined =>
  attempt(c, () => {
    takes(c, 'spaced', 'as');
    if (!takeAnyPhrase(c, ...EVENLY)) return undefined;
    takeAnyPhrase(c, 'spaced', 'as possible');
    // 'increasing evenly by 16'
    const by = attempt(c, () => (takes(c, 'by') ? takeWhole(c) : undefined));
    if (by !== undefined) {
      takeSts(c);
      return { item: { is: 'evenly', change: Math.sign(change) * by } };
    }
    const over = readOverStitches(c);
    if (over !== undefined) return { item: { is: 'evenly', change, over } };
    readGoal(c);
    takePhrase(c, 'across|along|in|on? this? row');
    const to = attempt(c, () => {
      const n = takes(c, 'to') ? takeWhole(c) : undefined;
      return takeSts(c) ? n : undefined;
    });
    return { item: { is: 'evenly', change, ...(to === undefined ? {} : { to }) } };
  });

/** 'across 24 sts', 'over the next 24 sts'. */
const readOverStitches = (c: Cursor): number | undefined =>
  attempt(c, () => {
    takes(c, 'across', 'over', 'along', 'in');
    takes(c, 'the');
    takes(c, 'next', 'center');
    const over = takeNumber(c);
    return over !== undefined && takeSts(c) ? over : undefined;
  });

/** 'in next st' → 1, 'in each of next 4 sts' → 4, 'in each st' → every one; 'in' is taken in any case. */
function overNext(c: Cursor): number | 'every' | undefined {
  if (attempt(c, () => takes(c, 'in', 'into') && takeAnyPhrase(c, `each|every ${STS}`))) {
    takes(c, 'across');
    takeAnyPhrase(c, 'to end');
    return 'every';
  }
  const n = readOfNext(c);
  if (n === undefined) takes(c, 'in', 'into');
  return n;
}

function many(work: 'inc', n: number, over: number, each: boolean): ReadItem {
  if (each || n === 1 || over > 1) return counted(work, over);
  const named = ({ 2: 'inc 2', 3: 'inc 3', 4: 'inc 4' } as const)[n];
  return counted(named ?? work, named ? 1 : n);
}
