/** Pieces that are seamed must agree: the figures of the two edges of a seam, held against each other. */
export interface SeamEdge {
  readonly piece: string;
  /** stitches, rows or mm, as the seam's unit says */
  readonly measure: number;
}

export type SeamUnit = 'stitches' | 'rows' | 'mm';

export interface SeamWish {
  readonly seam: string;
  readonly unit: SeamUnit;
  readonly first: SeamEdge;
  readonly second: SeamEdge;
  /** how much longer the first is meant to be, in hundredths of the second */
  readonly ease?: number;
  /** what sewing (or the roundings to whole stitches and rows) takes up without being seen, in the unit */
  readonly tolerance: number;
}

export interface Match extends SeamWish {
  /** what the first is longer (> 0) or shorter than it is meant to be */
  readonly difference: number;
  readonly agrees: boolean;
  /** where it does not agree: ease in one of the longer edge's stitches, rows or mm every so many of them */
  readonly easeInEvery?: number;
}

/** Holds the two edges of a seam against each other. */
export function match(wish: SeamWish): Match {
  const { first, second, ease = 0, tolerance } = wish;
  const difference = first.measure - second.measure * (1 + ease / 100);
  if (Math.abs(difference) <= tolerance) return { ...wish, difference, agrees: true };
  const longer = Math.max(first.measure, second.measure * (1 + ease / 100));
  return { ...wish, difference, agrees: false, easeInEvery: longer / Math.abs(difference) };
}
