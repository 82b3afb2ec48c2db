import type { RowWords } from '../../knit/row/row-words.ts';
import type { StitchName } from '../../knit/stitch.ts';
import type { words as english } from '../en/row.ts';
import type { Translation } from '../message.ts';
import type { Speech } from '../settings.ts';

export const words: Translation<typeof english> = {};

/**
 * Short and in full. Words and shorts as published lists have them: bergers-cathares.com ('Tricot : abréviations': m.,
 * aug., att., derr., dev.), la-boutique-du-tricot ('Les augmentations': intercalaire, barrée), biscottecie.com (surjet
 * simple), T. de Dillmont, 'Encyclopédie des ouvrages de dames' (jeté, mailles rabattues, prises par derrière); the rest
 * is common practice, no published source.
 */
type Names = Partial<Readonly<Record<StitchName, readonly [short: string, full: string]>>>;

const names: Names = {
  k2tog: ['2 m ens end', '2 mailles ensemble à l’endroit'],
  p2tog: ['2 m ens env', '2 mailles ensemble à l’envers'],
  k3tog: ['3 m ens end', '3 mailles ensemble à l’endroit'],
  p3tog: ['3 m ens env', '3 mailles ensemble à l’envers'],
  k4tog: ['4 m ens end', '4 mailles ensemble à l’endroit'],
  p4tog: ['4 m ens env', '4 mailles ensemble à l’envers'],
  k5tog: ['5 m ens end', '5 mailles ensemble à l’endroit'],
  p5tog: ['5 m ens env', '5 mailles ensemble à l’envers'],
  'k2tog tbl': ['2 m ens end torse', '2 mailles ensemble à l’endroit, prises par derrière'],
  'p2tog tbl': ['2 m ens env torse', '2 mailles ensemble à l’envers, prises par derrière'],
  'k3tog tbl': ['3 m ens end torse', '3 mailles ensemble à l’endroit, prises par derrière'],
  'p3tog tbl': ['3 m ens env torse', '3 mailles ensemble à l’envers, prises par derrière'],
  ssk: [
    '2 m gliss ens end',
    'glisser 2 mailles une à une comme à l’endroit, puis les tricoter ensemble à l’endroit, prises par derrière',
  ],
  ssp: [
    '2 m gliss ens env',
    'glisser 2 mailles une à une comme à l’endroit, puis les tricoter ensemble à l’envers, prises par derrière',
  ],
  sssk: [
    '3 m gliss ens end',
    'glisser 3 mailles une à une, puis les tricoter ensemble à l’endroit, prises par derrière',
  ],
  sssp: [
    '3 m gliss ens env',
    'glisser 3 mailles une à une, puis les tricoter ensemble à l’envers, prises par derrière',
  ],
  skp: ['1 surj simple', 'surjet simple'],
  sk2p: ['1 surj double', 'surjet double'],
  s2kp: ['1 surj double centré', 'surjet double centré'],
  s2pp: [
    '1 surj double centré env',
    'glisser 2 mailles ensemble par derrière, 1 maille à l’envers, rabattre les mailles glissées',
  ],
  'join yarn': ['rattacher le fil', 'rattacher le fil'],
  m1: ['1 aug interc', '1 augmentation intercalaire'],
  m1l: ['1 aug interc G', '1 augmentation intercalaire penchée à gauche'],
  m1r: ['1 aug interc D', '1 augmentation intercalaire penchée à droite'],
  m1p: ['1 aug interc env', '1 augmentation intercalaire à l’envers'],
  yo: ['1 jeté', '1 jeté'],
  ds: ['m double', 'maille double'],
  'yo twice': ['1 double jeté', '1 double jeté'],
  kfb: ['1 aug barrée', '1 augmentation barrée à l’endroit'],
  pfb: ['1 aug barrée env', '1 augmentation barrée à l’envers'],
  'k tbl': ['1 m end torse', '1 maille torse à l’endroit'],
  'p tbl': ['1 m env torse', '1 maille torse à l’envers'],
  inc: ['1 aug', '1 augmentation'],
  dec: ['1 dim', '1 diminution'],
  'sl wyif': ['gliss 1 m fil dev', 'glisser 1 maille, fil devant'],
  'sl wyib': ['gliss 1 m fil derr', 'glisser 1 maille, fil derrière'],
};

/** French row words; stitches without a French name of their own keep the international abbreviation. */
export function rowWords({ rows }: Pick<Speech, 'rows'>): RowWords {
  const full = rows === 'full';
  const sts = (n: number) => (full ? (n === 1 ? 'maille' : 'mailles') : 'm');
  const last = full ? 'dernières' : 'dern';
  const end = (left: number) =>
    left === 0
      ? 'jusqu’à la fin'
      : left === 1
        ? `jusqu’à la ${full ? 'dernière' : 'dern'} ${sts(1)}`
        : `jusqu’aux ${left} ${last} ${sts(left)}`;
  const side: Partial<Record<StitchName, string>> = full
    ? { k: 'à l’endroit', p: 'à l’envers' }
    : { k: 'end', p: 'env' };
  const name = (work: StitchName) => names[work]?.[full ? 1 : 0] ?? work;
  const edge: Partial<Record<StitchName, (n: number) => string>> = {
    sl: (n) => `${full ? 'glisser' : 'gliss'} ${n} ${sts(n)}`,
    bo: (n) => `${full ? 'rabattre' : 'rab'} ${n} ${sts(n)}`,
    co: (n) => `monter ${n} ${sts(n)}`,
    pu: (n) => `relever et tricoter ${n} ${sts(n)}`,
    hold: (n) => `mettre ${n} ${sts(n)} en ${full ? 'attente' : 'att'}`,
    take: (n) => `reprendre ${n} ${sts(n)} en ${full ? 'attente' : 'att'}`,
    unworked: (n) => `laisser ${n} ${sts(n)} sans les tricoter`,
    'wrap next st': () => `envelopper la ${sts(1)} suivante`,
    'picking up each wrap': () => 'en reprenant chaque fil enroulé',
    'working each ds as one st': () => `en tricotant chaque ${name('ds')} comme une seule ${sts(1)}`,
  };
  const stitches = (work: StitchName, times: number): string => {
    const said = edge[work];
    if (said) return said(times);
    if (side[work]) return `${times} ${sts(times)} ${side[work]}`;
    return times === 1 ? name(work) : `[${name(work)}] ${times} fois`;
  };
  const stitchesTo = (work: StitchName, left: number): string => {
    if (work === 'unworked')
      return left === 0 ? 'tourner' : `laisser les mailles ${end(left)} sans les tricoter`;
    if (work === 'bo') return `${full ? 'rabattre' : 'rab'} ${end(left)}`;
    if (work === 'sl') return `${full ? 'glisser' : 'gliss'} ${end(left)}`;
    return side[work] ? `${side[work]} ${end(left)}` : `[${name(work)}] ${end(left)}`;
  };
  const whole: Partial<Record<StitchName, string>> = {
    bo: full
      ? 'rabattre toutes les mailles comme elles se présentent'
      : 'rab toutes les m comme elles se présentent',
    k: 'tout à l’endroit',
    p: 'tout à l’envers',
  };
  return {
    stitches,
    stitchesTo,
    wholeRow: (work) => whole[work] ?? stitchesTo(work, 0),
    group: (inner, times) => `[${inner}] ${times} fois`,
    groupTo: (inner, left) => `[${inner}] ${end(left)}`,
    repeatTo: (inner, left) => `*${inner} ; répéter depuis * ${end(left)}`,
    comma: ', ',
  };
}
