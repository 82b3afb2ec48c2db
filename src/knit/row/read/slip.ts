import type { StitchName } from '../../stitch.ts';
import {
  attempt,
  type Cursor,
  peek,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takeWhole,
  took,
} from './cursor.ts';
import { readGoal, takeSts } from './goal.ts';
import { bare, counted, type ReadItem } from './plain.ts';

const MANNER: readonly (readonly [string, StitchName | undefined])[] = [
  ['wyif', 'sl wyif'],
  ['with yarn|wool in|at front of? work?', 'sl wyif'],
  [',? (? yarn|wool in|at front of? work? )?', 'sl wyif'],
  [',? (? yarn|wool in|at back of? work? )?', 'sl wyib'],
  ['yif', 'sl wyif'],
  ['wyib', 'sl wyib'],
  ['with yarn|wool in|at back of? work?', 'sl wyib'],
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

/** 'wyif sl 3 sts pwise': said first. */
export function readFrontSlip(c: Cursor): ReadItem | undefined {
  c.at += 1;
  takes(c, ',');
  const read = sees(c, 'sl') ? readSlip(c) : undefined;
  return read?.item.is === 'stitches' && read.item.work === 'sl' ? counted('sl wyif', read.item.times) : read;
}

/** 's' stands for slip only before a number ('s1, k1, psso'). */
const seesShort = (c: Cursor): boolean => sees(c, 's') && peek(c, 1)?.kind !== 'number';

function manner(c: Cursor, work: StitchName = 'sl'): StitchName {
  const found = MANNER.find(([phrase]) => takePhrase(c, phrase));
  return found ? manner(c, found[1] ?? work) : work;
}

const YARN = 'the? yarn|wool|thread|wl|w|cotton to|in|at? the?';

/** Where the yarn is brought: 'bring wool to front', 'wl fwd', 'yf'. */
function takeMoved(c: Cursor): 'sl wyif' | 'sl wyib' | undefined {
  const said = takes(c, 'bring', 'take', 'pass', 'put', 'with');
  const short = peek(c)?.text ?? '';
  if (!said && takeAnyPhrase(c, 'yo', 'yb|ytb|ybk|wb|wbk')) {
    if (/^[yw]t?f/.test(short)) return 'sl wyif';
    return took(c, 'yo') ? undefined : 'sl wyib';
  }
  const front = takePhrase(c, `${YARN} front|fwd|fd`);
  if (!front && !takePhrase(c, `${YARN} back|bk`)) return undefined;
  takePhrase(c, 'of the? work');
  return front ? 'sl wyif' : 'sl wyib';
}

function takeBack(c: Cursor): ReturnType<typeof takeMoved> {
  takes(c, ',');
  return takeMoved(c);
}

/** 'yarn to front, sl 1, yarn to back', 'with yarn in front sl 1': where the yarn lies meanwhile; no stitch is made of it. */
export const readMovedSlip = (c: Cursor): ReadItem | undefined =>
  attempt(c, () => {
    const stays = sees(c, 'with') || seesPhrase(c, 'yarn|wool in');
    const work = takeMoved(c);
    takes(c, ',');
    if (work === undefined || !sees(c, 'sl', 's')) return undefined;
    const slipped = readSlip(c)?.item;
    if (slipped?.is !== 'stitches' || slipped.work !== 'sl') return undefined;
    // 'yf, sl 1' by itself lays the yarn over the needle
    const back = stays ? undefined : attempt(c, () => takeBack(c));
    if (!stays && (back === undefined || back === work)) return undefined;
    return { item: { ...slipped, work } };
  });

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
    // 'sl 1 k, k 1, psso': as if to knit
    attempt(c, () => takes(c, 'k') && takes(c, ',') && sees(c, 'k'));
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
    if (!takeAnyPhrase(c, ...PSSO) && !takeBarePass(c)) return undefined;
    takeAnyPhrase(c, 'the? k st', 'k 2 tog', 'them', 'both sts');
    return passedOver(slipped, purl, n, tog);
  });

/** 'slip, k and pass,': over what, everybody knows. */
const takeBarePass = (c: Cursor): boolean =>
  attempt(c, () => takes(c, 'pass') && (c.at >= c.end || sees(c, ',', ';', '.', '*')));

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
