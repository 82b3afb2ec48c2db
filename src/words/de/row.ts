import type { RowWords } from '../../knit/row/row-words.ts';
import type { StitchName } from '../../knit/stitch.ts';
import type { words as english } from '../en/row.ts';
import type { Translation } from '../message.ts';
import type { Speech } from '../settings.ts';

export const words: Translation<typeof english> = {};

/** Short and in full; the shorts are those of German leaflets (common practice, no published source). */
type Names = Partial<Readonly<Record<StitchName, readonly [short: string, full: string]>>>;

const names: Names = {
  k2tog: ['2 re zus', '2 Maschen rechts zusammenstricken'],
  p2tog: ['2 li zus', '2 Maschen links zusammenstricken'],
  k3tog: ['3 re zus', '3 Maschen rechts zusammenstricken'],
  p3tog: ['3 li zus', '3 Maschen links zusammenstricken'],
  k4tog: ['4 re zus', '4 Maschen rechts zusammenstricken'],
  p4tog: ['4 li zus', '4 Maschen links zusammenstricken'],
  k5tog: ['5 re zus', '5 Maschen rechts zusammenstricken'],
  p5tog: ['5 li zus', '5 Maschen links zusammenstricken'],
  'k2tog tbl': ['2 re verschr zus', '2 Maschen rechts verschränkt zusammenstricken'],
  'p2tog tbl': ['2 li verschr zus', '2 Maschen links verschränkt zusammenstricken'],
  'k3tog tbl': ['3 re verschr zus', '3 Maschen rechts verschränkt zusammenstricken'],
  'p3tog tbl': ['3 li verschr zus', '3 Maschen links verschränkt zusammenstricken'],
  ssk: [
    '2 abgeh re zus',
    '2 Maschen einzeln wie zum Rechtsstricken abheben, dann rechts verschränkt zusammenstricken',
  ],
  ssp: [
    '2 abgeh li zus',
    '2 Maschen einzeln wie zum Rechtsstricken abheben, dann links verschränkt zusammenstricken',
  ],
  sssk: ['3 abgeh re zus', '3 Maschen einzeln abheben, dann rechts verschränkt zusammenstricken'],
  sssp: ['3 abgeh li zus', '3 Maschen einzeln abheben, dann links verschränkt zusammenstricken'],
  skp: ['2 überz zus', '1 Masche abheben, 1 rechts stricken und die abgehobene überziehen'],
  sk2p: ['3 überz zus', '1 Masche abheben, 2 rechts zusammenstricken und die abgehobene überziehen'],
  s2kp: ['3 mittig zus', '2 Maschen zusammen abheben, 1 rechts stricken und die abgehobenen überziehen'],
  s2pp: [
    '3 mittig li zus',
    '2 Maschen verschränkt zusammen abheben, 1 links stricken und die abgehobenen überziehen',
  ],
  'join yarn': ['Faden ansetzen', 'Faden ansetzen'],
  m1: ['1 zun', '1 Masche aus dem Querfaden zunehmen'],
  m1l: ['1 zun li gen', '1 Masche links geneigt aus dem Querfaden zunehmen'],
  m1r: ['1 zun re gen', '1 Masche rechts geneigt aus dem Querfaden zunehmen'],
  m1p: ['1 li zun', '1 linke Masche aus dem Querfaden zunehmen'],
  yo: ['1 U', '1 Umschlag'],
  ds: ['Doppelmasche', 'Doppelmasche'],
  'yo twice': ['2 U', '2 Umschläge'],
  kfb: ['1 re verdopp', '1 Masche rechts verdoppeln'],
  pfb: ['1 li verdopp', '1 Masche links verdoppeln'],
  'k tbl': ['1 re verschr', '1 Masche rechts verschränkt stricken'],
  'p tbl': ['1 li verschr', '1 Masche links verschränkt stricken'],
  inc: ['1 zun', '1 Masche zunehmen'],
  dec: ['1 abn', '1 Masche abnehmen'],
  'sl wyif': ['1 abh Fv', '1 Masche abheben, Faden davor'],
  'sl wyib': ['1 abh Fh', '1 Masche abheben, Faden dahinter'],
};

/** German row words; stitches without a German name of their own keep the international abbreviation. */
export function rowWords({ rows }: Pick<Speech, 'rows'>): RowWords {
  const full = rows === 'full';
  const sts = (n: number) => (full ? (n === 1 ? 'Masche' : 'Maschen') : 'M');
  const end = (left: number) => (left === 0 ? 'bis zum Ende' : `bis ${left} ${sts(left)} vor dem Ende`);
  const verb: Partial<Record<StitchName, string>> = { k: 'rechts', p: 'links', sl: 'abheben' };
  const short: Partial<Record<StitchName, string>> = { k: 're', p: 'li', sl: 'abh' };
  const name = (work: StitchName) => names[work]?.[full ? 1 : 0] ?? work;
  const edge: Partial<Record<StitchName, (n: number) => string>> = {
    bo: (n) => `${n} ${sts(n)} abketten`,
    co: (n) => `${n} ${sts(n)} anschlagen`,
    pu: (n) => `${n} ${sts(n)} auffassen und rechts stricken`,
    hold: (n) => `${n} ${sts(n)} stilllegen`,
    take: (n) => `${n} ${sts(n)} wieder aufnehmen`,
    unworked: (n) => `${n} ${sts(n)} stehen lassen`,
    'wrap next st': () => `nächste ${sts(1)} umwickeln`,
    'picking up each wrap': () => 'dabei jede Wicklung mitstricken',
    'working each ds as one st': () => `dabei jede ${name('ds')} als eine ${sts(1)} stricken`,
  };
  const stitches = (work: StitchName, times: number): string => {
    const said = edge[work];
    if (said) return said(times);
    const plain = full ? verb[work] : short[work];
    if (plain) return `${times} ${plain}`;
    return times === 1 ? name(work) : `[${name(work)}] ${times}-mal`;
  };
  const stitchesTo = (work: StitchName, left: number): string => {
    if (work === 'unworked') return left === 0 ? 'wenden' : `${end(left)} stehen lassen`;
    if (work === 'bo') return `${end(left)} abketten`;
    return verb[work] ? `${verb[work]} ${end(left)}` : `[${name(work)}] ${end(left)}`;
  };
  return {
    stitches,
    stitchesTo,
    wholeRow: (work) =>
      work === 'bo' ? `alle ${sts(2)} im Muster abketten` : (verb[work] ?? stitchesTo(work, 0)),
    group: (inner, times) => `[${inner}] ${times}-mal`,
    groupTo: (inner, left) => `[${inner}] ${end(left)}`,
    repeatTo: (inner, left) => `*${inner}; ab * wiederholen ${end(left)}`,
    comma: ', ',
  };
}
