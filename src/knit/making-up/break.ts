import type { SeamKind } from './joint.ts';
import type { LevelOf } from './levels.ts';
import type { SeamUnit, WorkedJoint } from './work-making-up.ts';

/** Two edges that ought to be as long. */
interface Apart {
  /** the changed edge, and what it meets or lies beside */
  readonly piece: string;
  readonly to: string;
  readonly was: number;
  readonly now: number;
  readonly other: number;
  /** how much longer (> 0) than the other it is now, mm */
  readonly longerMm: number;
}

/** What a change breaks, edge by edge. */
export type Consequence =
  /** two edges met and do so no more, or are further apart than they were */
  | (Apart & { readonly kind: 'seam'; readonly of: SeamKind; readonly unit: SeamUnit })
  /** nothing joins them, and yet they were as high: two panels above their side seam, two bands that lie over each other; rows */
  | (Apart & { readonly kind: 'level'; readonly of: LevelOf })
  /** two makes of a piece that are worn as a pair were alike and are so no more; rows of their seams */
  | {
      readonly kind: 'pair';
      readonly piece: string;
      readonly was: number;
      readonly now: number;
      readonly other: number;
    }
  /** an edge has room for another number of stitches than is picked up there; `along` is the pick-up's place in its band */
  | {
      readonly kind: 'pick up';
      readonly band: string;
      readonly along: number;
      readonly stitches: number;
      readonly fit: number;
      /** how much longer the edge is than before, mm */
      readonly longerMm: number;
    }
  /** nothing is joined to some edges of a make any more, or not yet */
  | { readonly kind: 'unjoined'; readonly piece: string; readonly make: number };

/** A consequence, and where in the making up it is. */
export interface Break {
  /** the same before and after a change: what is joined to what */
  readonly key: string;
  readonly what: Consequence;
  /** the edges that it is about */
  readonly worked?: Pick<WorkedJoint, 'lines'> & Partial<WorkedJoint>;
  /** rows that the first edge has more than the second where all is well */
  readonly meant?: number;
}
