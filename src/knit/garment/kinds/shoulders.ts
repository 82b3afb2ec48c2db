import type { SeamWay } from '../../making-up/joint.ts';

/** How a sloped shoulder is worked. */
export interface ShoulderFacts {
  /** in rows that turn before its end, which keep all its stitches on the needle; else in bound-off steps */
  readonly turns: boolean;
}

const ways = {
  steps: { turns: false },
  'short rows': { turns: true },
} as const satisfies Readonly<Record<string, ShoulderFacts>>;

export type ShoulderWay = keyof typeof ways;
export const shoulderWays = Object.keys(ways) as readonly ShoulderWay[];

/** What becomes of its stitches at the end. */
export interface ShoulderEndFacts {
  /** they rest until they are joined to the other piece's; else they are bound off */
  readonly rests: boolean;
  readonly seam: SeamWay;
}

const ends = {
  'bind off': { rests: false, seam: 'mattress' },
  'three-needle': { rests: true, seam: 'three-needle' },
  grafted: { rests: true, seam: 'grafted' },
} as const satisfies Readonly<Record<string, ShoulderEndFacts>>;

/** Bound off and sewn; or resting, to be bound off together with the other piece's shoulder, or grafted to it. */
export type ShoulderEnd = keyof typeof ends;
export const shoulderEnds = Object.keys(ends) as readonly ShoulderEnd[];

/** Facts of a design's shoulders: bound off in steps where it says nothing. */
export const shoulderFacts = (way: ShoulderWay = 'steps'): ShoulderFacts => ways[way];
export const shoulderEndFacts = (end: ShoulderEnd = 'bind off'): ShoulderEndFacts => ends[end];
