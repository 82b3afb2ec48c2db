import type { FabricName } from '../../fabric.ts';

/** What the edge of a neck is. The shares are common practice, no published source. */
export interface NeckEdge {
  /** it slants from a point at the middle: nothing of it lies level, and a front band may run on round it */
  readonly isPointed: boolean;
  /** share of half its width that is bound off level before its curve; 1: all of it, at a right angle to its sides */
  readonly level: number;
}

/** What the drafts ask of a neck. The shares of a new design are common practice, no published source. */
export interface NeckFacts extends NeckEdge {
  /** where its band is mitred: at the point, or at its two corners */
  readonly mitre: 'point' | 'corners' | 'none';
  /** width of a new design's, as a share of the cross back; a third lies in the middle of printed back necks (22 to 59 in the hundred) */
  readonly ofCrossBack: number;
  /** depth of a new design's in front, and behind, as shares of the armhole's depth */
  readonly ofArmhole: number;
  readonly backOfArmhole: number;
  /** fabric of a new design's band */
  readonly band: FabricName;
}

const BACK = 0.1;

const table = {
  V: {
    isPointed: true,
    level: 0,
    mitre: 'point',
    ofCrossBack: 0.38,
    ofArmhole: 0.95,
    backOfArmhole: BACK,
    band: 'rib 1x1 matched',
  },
  round: {
    isPointed: false,
    level: 0.2,
    mitre: 'none',
    ofCrossBack: 0.42,
    ofArmhole: 0.42,
    backOfArmhole: BACK,
    band: 'rib 2x2',
  },
  square: {
    isPointed: false,
    level: 1,
    mitre: 'corners',
    ofCrossBack: 0.46,
    ofArmhole: 0.5,
    backOfArmhole: BACK,
    band: 'rib 2x2',
  },
  /** as deep behind as in front */
  boat: {
    isPointed: false,
    level: 0.5,
    mitre: 'none',
    ofCrossBack: 0.62,
    ofArmhole: 0.12,
    backOfArmhole: 0.12,
    band: 'rib 2x2',
  },
} as const satisfies Readonly<Record<string, NeckFacts>>;

export type NeckShape = keyof typeof table;
export const necks: Readonly<Record<NeckShape, NeckFacts>> = table;
export const neckShapes = Object.keys(table) as readonly NeckShape[];

/** A back's is always the same, whatever the front's. */
export const BACK_NECK: NeckEdge = { isPointed: false, level: 0.6 };

/** What becomes of the stitches in the middle of a neck. */
export interface NeckMiddleFacts {
  /** they rest on a holder until the band is knitted on from them; else they are bound off */
  readonly rests: boolean;
}

const middles = {
  'bind off': { rests: false },
  hold: { rests: true },
} as const satisfies Readonly<Record<string, NeckMiddleFacts>>;

export type NeckMiddle = keyof typeof middles;
export const neckMiddles = Object.keys(middles) as readonly NeckMiddle[];

/** Facts of a design's neck: bound off where it says nothing. */
export const neckMiddleFacts = (name: NeckMiddle = 'bind off'): NeckMiddleFacts =>
  middles[name] ?? middles['bind off'];
