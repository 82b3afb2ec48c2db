/**
 * The making up as a language: what is done with which edges, in its order. Plain data, kept with a garment; it is
 * worked by `workMakingUp`, which judges it.
 */

/**
 * A stretch of the boundary of one make. Sides go up from the beginning of their part, beginnings and tops from the
 * right edge to the left one (right side facing), unless they are turned round.
 */
export interface Stretch {
  readonly piece: string;
  /** from 1 */
  readonly make: number;
  readonly part: string;
  readonly edge: 'start' | 'top' | 'right' | 'left';
  /** of a side: the sections that it runs along, by name (a rework keeps the names); all unless said */
  readonly sections?: readonly string[];
  /** of a side: its rows within the part, first and last, from 1 */
  readonly rows?: { readonly first: number; readonly last: number };
  /** of a side: what is bound off or cast on at once in its first pair of rows, or all but that */
  readonly level?: 'only' | 'without';
  /** of a side: below its first decrease, or from it on */
  readonly shaped?: 'before' | 'after';
  /** of a beginning or a top: so many stitches, counted from the right edge; all unless said */
  readonly stitches?: { readonly from: number; readonly to: number };
  readonly reversed?: true;
}

/** Stretches one after the other: each begins where the one before it ends. */
export type Line = readonly Stretch[];

export const seamKinds = [
  'shoulder',
  'side',
  'sleeve',
  'armhole',
  'underarm',
  'raglan',
  'band',
  'lap',
  'other',
] as const;
/** what a seam joins; 'sleeve' and 'band' are closings: two sides of one make; a 'lap' lies over the other edge and is caught at both ends */
export type SeamKind = (typeof seamKinds)[number];

export const seamWays = ['mattress', 'three-needle', 'grafted', 'sewn'] as const;
export type SeamWay = (typeof seamWays)[number];

export const freeEdges = ['hem', 'cuff', 'front', 'neck', 'armhole', 'opening'] as const;
export type FreeEdge = (typeof freeEdges)[number];

/** So many stitches picked up along a line. */
export interface Along {
  readonly line: Line;
  readonly stitches: number;
  /** so many are meant for each hundred that the line has room for; a hundred unless said */
  readonly percent?: number;
}

/** One step of the making up: which edges become one. */
export type Joint =
  | {
      readonly kind: 'seam';
      readonly of: SeamKind;
      readonly a: Line;
      readonly b: Line;
      readonly how: SeamWay;
      /** how much longer the first is meant to be, in hundredths of the second */
      readonly ease?: number;
      /** of a seam that she joined herself: its id */
      readonly byHand?: string;
    }
  /** a make of the band's piece grows from the lines, from its right edge to its left one */
  | {
      readonly kind: 'pick up';
      readonly piece: string;
      readonly make: number;
      readonly along: readonly Along[];
    }
  | { readonly kind: 'left free'; readonly line: Line; readonly as: FreeEdge };

/** Two edges that she joins herself, since the making up that is proposed leaves them over. */
export interface HandSeam {
  /** its tick is kept under it */
  readonly id: string;
  readonly a: Line;
  readonly b: Line;
  readonly how: SeamWay;
}

export const jointOf = ({ id, a, b, how }: HandSeam): Joint => ({
  kind: 'seam',
  of: 'other',
  a,
  b,
  how,
  byHand: id,
});
