import type { Curve } from '../../shape/curve.ts';
import { raglanCurve, setInCurve } from '../curves.ts';
import type { SleeveTopName } from './sleeve-tops.ts';

/** Whole widths of a panel as asked for, mm, and what is bound off at each of its underarms. */
interface AskedWidths {
  readonly underarm: number;
  readonly step: number;
  readonly crossBack: number;
  readonly neck: number;
}

/** What the drafts ask of an armhole. */
export interface ArmholeFacts {
  /** it runs to the neck: back and front have no shoulders, and the sleeve's top lies in the neck */
  readonly toNeck: boolean;
  /** the rows beside it, as their section is called */
  readonly rows: 'armhole' | 'raglan';
  /** parts of a front that its neck has parted, at its right and its left edge with the right side facing, as worn */
  readonly frontParts: readonly [string, string];
  /** bound off at each underarm where the design says nothing, as a share of the panel's width; 0: nothing ever is */
  readonly underarmShare: number;
  /** what is bound off there is the knitter's to say; else it follows from the curve, or there is nothing */
  readonly asksUnderarm: boolean;
  /** all that the panel loses is bound off at the underarm at once */
  readonly isIndented: boolean;
  /** width above it, mm */
  readonly acrossMm: (asked: AskedWidths) => number;
  /** that width is a figure of its own: neither the underarm's nor the neck's */
  readonly hasOwnAcross: boolean;
  /** it is rounded: something is bound off first, then the curve; what is sewn into it has a cap */
  readonly isCurved: boolean;
  /** how much deeper than the body's a new design's is, as a share of it */
  readonly deeper: number;
  /** its shoulders usually slope */
  readonly slopes: boolean;
  /** its edge as asked for: from half the underarm's width to half the width above it, mm */
  readonly curve: (underarm: number, step: number, across: number, depth: number, levelMm?: number) => Curve;
  /** how the sleeve ends that is sewn into it */
  readonly sleeveTop: SleeveTopName;
}

/** E. Zimmermann, Knitting Without Tears, 1971 (from memory): 8 % of the chest's stitches to an underarm, half of them to a panel's edge. */
const UNDERARM_SHARE = 0.08;
/**
 * Share of a panel that each indent takes: 18 mm of a baby's, 43 of a woman's M, 68 of the largest. K. Buss, Big Book of
 * Knitting (by its look; a scanned handbook, p. 180) takes 1¼ to 3 in for adults; for children common practice, no
 * published source.
 */
const INDENT_SHARE = 0.085;

/**
 * A drop shoulder's armhole is deeper than the body's: about a quarter of the finished chest (M. S. Huff, 'Plotting a
 * sleeve'; Pope Knits, 'Heaven': 22 cm at 93, 24 at 113), as a share of the body's armhole depth.
 */
const DROP_DEEPER = 0.15;

const straight: ArmholeFacts['curve'] = (underarm, step, across, depth) =>
  raglanCurve(underarm, step, across, depth, 0);
const SHOULDERS = ['left shoulder', 'right shoulder'] as const;

/** The kinds of armhole, a line each. How it is knitted stands beside it, in `../armhole.ts`. */
const table = {
  drop: {
    toNeck: false,
    rows: 'armhole',
    frontParts: SHOULDERS,
    underarmShare: 0,
    asksUnderarm: false,
    isIndented: false,
    acrossMm: ({ underarm }) => underarm,
    hasOwnAcross: false,
    isCurved: false,
    deeper: DROP_DEEPER,
    slopes: false,
    curve: straight,
    sleeveTop: 'level',
  },
  indented: {
    toNeck: false,
    rows: 'armhole',
    frontParts: SHOULDERS,
    underarmShare: INDENT_SHARE,
    asksUnderarm: true,
    isIndented: true,
    acrossMm: ({ underarm, step }) => underarm - 2 * step,
    hasOwnAcross: true,
    isCurved: false,
    deeper: 0,
    slopes: true,
    curve: straight,
    sleeveTop: 'let in',
  },
  'set-in': {
    toNeck: false,
    rows: 'armhole',
    frontParts: SHOULDERS,
    underarmShare: UNDERARM_SHARE,
    asksUnderarm: false,
    isIndented: false,
    acrossMm: ({ crossBack }) => crossBack,
    hasOwnAcross: true,
    isCurved: true,
    deeper: 0,
    slopes: true,
    curve: (underarm, _step, across, depth, levelMm) => setInCurve(underarm, across, depth, levelMm),
    sleeveTop: 'cap',
  },
  raglan: {
    toNeck: true,
    rows: 'raglan',
    frontParts: ['left front', 'right front'],
    underarmShare: UNDERARM_SHARE,
    asksUnderarm: true,
    isIndented: false,
    acrossMm: ({ neck }) => neck,
    hasOwnAcross: false,
    isCurved: false,
    deeper: 0,
    slopes: true,
    curve: straight,
    sleeveTop: 'line',
  },
} as const satisfies Readonly<Record<string, ArmholeFacts>>;

export type ArmholeKind = keyof typeof table;
export const armholes: Readonly<Record<ArmholeKind, ArmholeFacts>> = table;
export const armholeKinds = Object.keys(table) as readonly ArmholeKind[];
