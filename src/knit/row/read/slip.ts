import type { StitchName } from '../../stitch.ts';
import {
  attempt,
  type Cursor,
  peek,
  sees,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takeWhole,
} from './cursor.ts';
import { readGoal, takeSts } from './goal.ts';
import { bare, counted, type ReadItem } from './plain.ts';

const MANNER: readonly (readonly [string, StitchName | undefined])[] = [
  ['wyif', 'sl wyif'],
  ['with yarn in|at front', 'sl wyif'],
  [',? ( yarn in|at front )', 'sl wyif'],
  [', yarn in|at front', 'sl wyif'],
  [',? ( yarn in|at back )', 'sl wyib'],
  [', yarn in|at back', 'sl wyib'],
  ['yif', 'sl wyif'],
  ['wyib', 'sl wyib'],
  ['with yarn in|at back', 'sl wyib'],
  ['yib', 'sl wyib'],
  ['kwise|pwise', undefined],
  ['k|p -? wise', undefined],
  ['as if? to k|p', undefined],
  ['as for k|p', undefined],
  ['as if knitting|purling', undefined],
];

/** After 'sl', 'slip' or 's': a slipped stitch, or a decrease made with one. */
export function readSlip(c: Cursor): ReadItem | undefined {
  if (seesShort(c)) return undefined;
  c.at += 1;
  if (takePhrase(c, 'm|marker')) return { item: { is: 'marker', does: 'slip' } };
  const decrease = readPassedOver(c) ?? readSlipsKnitted(c);
  if (decrease) return counted(decrease, 1);
  const goal = readGoal(c);
  if (goal) return { item: { is: 'stitches to', work: manner(c), goal } };
  takes(c, 'the');
  takes(c, 'next', 'first', 'last');
  const n = takeWhole(c);
  takeSts(c);
  const work = manner(c);
  takeSts(c);
  return n === undefined && work === 'sl' ? bare(work) : counted(work, n ?? 1);
}

/** 's' stands for slip only before a number ('s1, k1, psso'). */
const seesShort = (c: Cursor): boolean => sees(c, 's') && peek(c, 1)?.kind !== 'number';

function manner(c: Cursor, work: StitchName = 'sl'): StitchName {
  const found = MANNER.find(([phrase]) => takePhrase(c, phrase));
  return found ? manner(c, found[1] ?? work) : work;
}

/** Words that may stand between the moves of one decrease. */
function gap(c: Cursor): void {
  while (takes(c, ',', '-', '.', 'and', ';', 'then')) {
    // the moves are one stitch whatever is put between them
  }
}

const PSSO = ['psso', 'p2sso', 'pass the|2|both? sl|slipped st|sts over', 'p 2 sso', 'sl st over'];

/** 'sl 1, k1, psso' and its kin: the moves after 'sl'. */
const readPassedOver = (c: Cursor): StitchName | undefined =>
  attempt(c, () => {
    const slipped = takeNumber(c) ?? 1;
    takeSts(c);
    takes(c, 'tog');
    manner(c);
    takes(c, 'tog');
    takes(c, 'tbl');
    gap(c);
    const purl = sees(c, 'p');
    if (!takes(c, 'k', 'p')) return undefined;
    takes(c, 'the', 'next');
    const n = takeNumber(c) ?? 1;
    takeSts(c);
    const tog = takes(c, 'tog');
    takeSts(c);
    gap(c);
    if (!takeAnyPhrase(c, ...PSSO)) return undefined;
    takeAnyPhrase(c, 'k st', 'the k st', 'k 2 tog', 'them', 'both sts');
    return passedOver(slipped, purl, n, tog);
  });

function passedOver(slipped: number, purl: boolean, n: number, tog: boolean): StitchName | undefined {
  if (slipped === 2) return !tog && n === 1 ? (purl ? 's2pp' : 's2kp') : undefined;
  if (slipped !== 1) return undefined;
  if (purl) return tog ? (n === 2 ? 'sp2p' : undefined) : n === 1 ? 'spp' : undefined;
  if (tog) return n === 2 ? 'sk2p' : n === 3 ? 'dec 3' : undefined;
  return n === 1 ? 'skp' : n === 2 ? 'sl1 k2 psso' : undefined;
}

/** 'slip, slip, knit', 'sl, sl, sl, k'. */
const readSlipsKnitted = (c: Cursor): StitchName | undefined =>
  attempt(c, () => {
    let slips = 1;
    gap(c);
    while (slips < 3 && takes(c, 'sl')) {
      slips += 1;
      gap(c);
    }
    if (slips < 2) return undefined;
    const purl = sees(c, 'p');
    if (!takes(c, 'k', 'p') || peek(c)?.kind === 'number') return undefined;
    if (slips === 2) return purl ? 'ssp' : 'ssk';
    return purl ? 'sssp' : 'sssk';
  });
