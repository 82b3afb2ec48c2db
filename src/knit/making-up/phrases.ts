import type { SeamWay } from './joint.ts';
import type { PickUpRatio } from './pick-up.ts';
import type { Worn } from './piece-edges.ts';
import {
  type BandEdge,
  type Ease,
  easeOf,
  type JoinedEdge,
  type MakingUpStep,
  type UnderarmSeam,
} from './step.ts';
import type { RaglanLine } from './waiting-seam.ts';
import type { SeamUnit } from './work-making-up.ts';

/**
 * What is told of a step, sentence by sentence and without words: the screen and the written pattern say it each in its
 * own, and neither can leave out what the other tells.
 */
export type Phrase =
  | { readonly say: 'block to'; readonly widthMm: number; readonly heightMm: number }
  /** two edges that are sewn together; `seams` alike */
  | {
      readonly say: 'edges';
      readonly unit: Exclude<SeamUnit, 'mm'>;
      readonly both: Ease;
      readonly names: readonly [string, string];
      readonly seams: number;
      /** nobody would ease one more after every second one */
      readonly isFarOff: boolean;
    }
  | { readonly say: 'way'; readonly how: SeamWay }
  | {
      readonly say: 'picked up';
      readonly edges: readonly { readonly along: string; readonly stitches: number }[];
      readonly total: number;
    }
  | { readonly say: 'ratio'; readonly ratio: PickUpRatio }
  | { readonly say: 'share'; readonly percent: number }
  | { readonly say: 'a shoulder waits'; readonly worn: Worn }
  | { readonly say: 'a line waits'; readonly line: RaglanLine }
  | { readonly say: 'first the open shoulder'; readonly worn: Worn }
  | { readonly say: 'first the open line'; readonly line: RaglanLine }
  | { readonly say: 'ends of the band'; readonly band: string; readonly rows: number }
  | { readonly say: 'neck'; readonly edges: readonly BandEdge[]; readonly total: number }
  | {
      readonly say: 'raglan lines';
      readonly which: 'four' | 'three' | 'one has an opening' | 'of one sleeve';
    }
  | { readonly say: 'underarm'; readonly underarm: UnderarmSeam; readonly isOwn: boolean }
  | { readonly say: 'marker'; readonly rows: number; readonly mm: number }
  | { readonly say: 'quarters'; readonly rows: readonly number[] }
  | {
      readonly say: 'top and armhole';
      readonly topMm: number;
      readonly armholeMm: number;
      readonly meet: boolean;
    }
  | { readonly say: 'loop'; readonly of: 'back' | 'raglan'; readonly rows: number }
  | {
      readonly say: 'lap';
      readonly of: 'left shoulder' | 'both shoulders' | 'placket';
      readonly band?: string;
      readonly rows: number;
    }
  | { readonly say: 'buttons below'; readonly count: number }
  | { readonly say: 'holes'; readonly band: string; readonly stitches: readonly number[] }
  | { readonly say: 'buttons opposite'; readonly on: string | undefined }
  | {
      readonly say: 'joined';
      readonly unit: SeamUnit;
      readonly edges: readonly [JoinedEdge, JoinedEdge];
      readonly both: Ease;
      readonly isFarOff: boolean;
    }
  | { readonly [S in PlainPhrase]: { readonly say: S } }[PlainPhrase];

/** Those without a figure. */
export const plainPhrases = [
  'one stitch in',
  'the left shoulder is buttoned',
  'one shoulder waits',
  'the left back line to its opening',
  'middle of the top',
  'over the head',
  'before the sleeves',
  'joined evenly',
  'an edge is gone',
  'along the seams',
] as const;

export type PlainPhrase = (typeof plainPhrases)[number];

/** One more after every second or third stitch is no easing any more; common practice, no published source. */
const LEAST_EVERY = 3;

const isFarOff = ({ oneMoreEvery }: Ease): boolean => oneMoreEvery > 0 && oneMoreEvery < LEAST_EVERY;

/** Top and armhole closer than this meet as they are, mm. */
const MEETS_MM = 15;

type Of<K extends MakingUpStep['kind']> = Extract<MakingUpStep, { kind: K }>;

export function phrasesOf(step: MakingUpStep): readonly Phrase[] {
  switch (step.kind) {
    case 'block':
      return [{ say: 'block to', widthMm: step.widthMm, heightMm: step.heightMm }];
    case 'shoulders':
      return shoulders(step);
    case 'pick up':
      return pickUp(step);
    case 'close':
      return close(step);
    case 'neck edge':
      return [{ say: 'neck', edges: step.edges, total: step.total }, { say: 'one shoulder waits' }];
    case 'raglan':
      return raglan(step);
    case 'set in sleeves':
      return sleeves(step);
    case 'side seams':
      return rowToRow(step.rows, [step.back, step.front]);
    case 'sleeve seams':
      return rowToRow(easeOf(step.rows, step.rows), [step.sleeve, step.sleeve]);
    case 'opening':
      return [{ say: 'loop', of: step.of, rows: step.rows }, { say: 'over the head' }];
    case 'lap':
      return lap(step);
    case 'buttons':
      return [
        { say: 'holes', band: step.band, stitches: step.stitches },
        { say: 'buttons opposite', on: step.on },
      ];
    case 'join':
      return join(step);
    case 'ends':
      return [{ say: 'along the seams' }];
  }
}

const edges = (
  unit: 'rows' | 'stitches',
  both: Ease,
  names: readonly [string, string],
  seams = 1,
): Phrase => ({ say: 'edges', unit, both, names, seams, isFarOff: isFarOff(both) });

const rowToRow = (both: Ease, names: readonly [string, string]): readonly Phrase[] => [
  edges('rows', both, names),
  { say: 'way', how: 'mattress' },
  { say: 'one stitch in' },
];

function shoulders(step: Of<'shoulders'>): Phrase[] {
  const { stitches, seams, side, how, back, front, isOtherButtoned, nos } = step;
  const all: Phrase[] = [
    edges('stitches', stitches, [back, front], seams),
    { say: 'way', how: how ?? 'sewn' },
  ];
  // of a half that came out otherwise: the other shoulder is another step
  if (seams > 1 || nos) return all;
  if (isOtherButtoned) return [...all, { say: 'the left shoulder is buttoned' }];
  return [...all, { say: 'a shoulder waits', worn: side === 'left' ? 'right' : 'left' }];
}

function pickUp({ edges: along, total, ratio, percent }: Of<'pick up'>): Phrase[] {
  return [
    { say: 'picked up', edges: along, total },
    ...(ratio.stitches === ratio.rows ? [] : [{ say: 'ratio', ratio } as const]),
    ...(percent === undefined ? [] : [{ say: 'share', percent } as const]),
  ];
}

function close({ band, rows, seam }: Of<'close'>): Phrase[] {
  const ends: Phrase = { say: 'ends of the band', band, rows };
  if (!seam) return [ends];
  return [
    seam.of === 'shoulder'
      ? { say: 'first the open shoulder', worn: seam.line.startsWith('left') ? 'left' : 'right' }
      : { say: 'first the open line', line: seam.line },
    edges(seam.of === 'shoulder' ? 'stitches' : 'rows', seam.both, ['', '']),
    { say: 'way', how: seam.of === 'raglan' ? 'mattress' : (seam.how ?? 'sewn') },
    ends,
  ];
}

function raglan(step: Of<'raglan'>): Phrase[] {
  const { sleeve, rows, asFarAsOpening, underarm: own, waits } = step;
  const names = [sleeve, ''] as const;
  return [
    { say: 'raglan lines', which: whichLines(step) },
    edges('rows', rows, names),
    ...(asFarAsOpening
      ? ([{ say: 'the left back line to its opening' }, edges('rows', asFarAsOpening, names)] as const)
      : []),
    { say: 'way', how: 'mattress' },
    ...(waits ? ([{ say: 'a line waits', line: waits }] as const) : []),
    ...underarm(own),
  ];
}

function whichLines({ nos, seams, asFarAsOpening }: Of<'raglan'>) {
  if (asFarAsOpening) return 'one has an opening';
  if (nos) return 'of one sleeve';
  return seams === 4 ? 'four' : 'three';
}

function sleeves(step: Of<'set in sleeves'>): Phrase[] {
  const { topMm, armholeMm, markerRows, markerMm, quarters, underarm: own } = step;
  // where stitches are bound off at the underarm their corner is the mark
  const marker: readonly Phrase[] =
    own.stitches > 0 ? [] : [{ say: 'marker', rows: markerRows, mm: markerMm }];
  const meet = Math.abs(topMm - armholeMm) <= MEETS_MM;
  return [
    ...marker,
    { say: 'middle of the top' },
    { say: 'quarters', rows: quarters },
    ...underarm(own),
    { say: 'top and armhole', topMm, armholeMm, meet },
  ];
}

const underarm = (own: UnderarmSeam): readonly Phrase[] =>
  own.stitches === 0 ? [] : [{ say: 'underarm', underarm: own, isOwn: own.rows === 0 }];

function lap({ of, rows, band, buttons = 1 }: Of<'lap'>): Phrase[] {
  const laid: Phrase = { say: 'lap', of, rows, ...(band !== undefined && { band }) };
  if (of === 'placket') return [laid, { say: 'over the head' }];
  if (of === 'both shoulders') return [laid, { say: 'before the sleeves' }];
  return [laid, { say: 'buttons below', count: buttons }, { say: 'over the head' }];
}

/** What she joined herself. */
function join({ edges: [a, b], how, unit }: Of<'join'>): Phrase[] {
  if (!a || !b) return [{ say: 'an edge is gone' }];
  const both = easeOf(a.count, b.count);
  const isUneven = unit === 'mm' && Math.abs(a.mm - b.mm) > MEETS_MM;
  return [
    { say: 'joined', unit, edges: [a, b], both, isFarOff: unit !== 'mm' && isFarOff(both) },
    ...(isUneven ? ([{ say: 'joined evenly' }] as const) : []),
    { say: 'way', how },
  ];
}
