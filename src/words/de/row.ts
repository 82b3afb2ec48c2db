import type { RowWords } from '../../knit/row/row-words.ts';
import type { StitchName } from '../../knit/stitch.ts';
import type { words as english } from '../en/row.ts';
import type { Translation } from '../message.ts';
import type { Speech } from '../settings.ts';

export const words: Translation<typeof english> = {};

/**
 * Short and in full. M, re, li, U, [ ] and * as in a published list: strickanleitungen-kostenlos.de ('So wird eine
 * Strickanleitung für Muster gelesen'); '2 M re zusstr', verschr, str, Hin-R and Rück-R as a yarn house prints them
 * (Garnstudio, pattern 7350 in German). Sources differ: knitpro.eu has '2 M re zus str', others '2 M re zsm'; HR and RR,
 * or Hinr and Rückr, are met too. 'Abgeh', 'mittig' and 'gen' are common practice, no published source.
 */
type Names = Partial<Readonly<Record<StitchName, readonly [short: string, full: string]>>>;

const names: Names = {
  k2tog: ['2 M re zusstr', '2 Maschen rechts zusammenstricken'],
  p2tog: ['2 M li zusstr', '2 Maschen links zusammenstricken'],
  k3tog: ['3 M re zusstr', '3 Maschen rechts zusammenstricken'],
  p3tog: ['3 M li zusstr', '3 Maschen links zusammenstricken'],
  k4tog: ['4 M re zusstr', '4 Maschen rechts zusammenstricken'],
  p4tog: ['4 M li zusstr', '4 Maschen links zusammenstricken'],
  k5tog: ['5 M re zusstr', '5 Maschen rechts zusammenstricken'],
  p5tog: ['5 M li zusstr', '5 Maschen links zusammenstricken'],
  'k2tog tbl': ['2 M re verschr zusstr', '2 Maschen rechts verschränkt zusammenstricken'],
  'p2tog tbl': ['2 M li verschr zusstr', '2 Maschen links verschränkt zusammenstricken'],
  'k3tog tbl': ['3 M re verschr zusstr', '3 Maschen rechts verschränkt zusammenstricken'],
  'p3tog tbl': ['3 M li verschr zusstr', '3 Maschen links verschränkt zusammenstricken'],
  ssk: [
    '2 M abgeh re zusstr',
    '2 Maschen einzeln wie zum Rechtsstricken abheben, dann rechts verschränkt zusammenstricken',
  ],
  ssp: [
    '2 M abgeh li zusstr',
    '2 Maschen einzeln wie zum Rechtsstricken abheben, dann links verschränkt zusammenstricken',
  ],
  sssk: ['3 M abgeh re zusstr', '3 Maschen einzeln abheben, dann rechts verschränkt zusammenstricken'],
  sssp: ['3 M abgeh li zusstr', '3 Maschen einzeln abheben, dann links verschränkt zusammenstricken'],
  skp: ['2 M überz zusstr', '1 Masche abheben, 1 rechts stricken und die abgehobene überziehen'],
  sk2p: ['3 M überz zusstr', '1 Masche abheben, 2 rechts zusammenstricken und die abgehobene überziehen'],
  s2kp: ['3 M mittig zusstr', '2 Maschen zusammen abheben, 1 rechts stricken und die abgehobenen überziehen'],
  s2pp: [
    '3 M mittig li zusstr',
    '2 Maschen verschränkt zusammen abheben, 1 links stricken und die abgehobenen überziehen',
  ],
  'join yarn': ['Faden ansetzen', 'Faden ansetzen'],
  m1: ['1 M zun', '1 Masche aus dem Querfaden zunehmen'],
  m1l: ['1 M li gen zun', '1 Masche links geneigt aus dem Querfaden zunehmen'],
  m1r: ['1 M re gen zun', '1 Masche rechts geneigt aus dem Querfaden zunehmen'],
  m1p: ['1 M li zun', '1 linke Masche aus dem Querfaden zunehmen'],
  yo: ['1 U', '1 Umschlag'],
  ds: ['Doppelmasche', 'Doppelmasche'],
  'yo twice': ['2 U', '2 Umschläge'],
  kfb: ['1 M re verdopp', '1 Masche rechts verdoppeln'],
  pfb: ['1 M li verdopp', '1 Masche links verdoppeln'],
  'k tbl': ['1 M re verschr', '1 Masche rechts verschränkt stricken'],
  'p tbl': ['1 M li verschr', '1 Masche links verschränkt stricken'],
  inc: ['1 M zun', '1 Masche zunehmen'],
  dec: ['1 M abn', '1 Masche abnehmen'],
  'sl wyif': ['1 M abh Fv', '1 Masche abheben, Faden davor'],
  'sl wyib': ['1 M abh Fh', '1 Masche abheben, Faden dahinter'],
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
