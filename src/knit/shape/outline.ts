import type { Gauge } from '../gauge.ts';
import { type Curve, xAt } from './curve.ts';
import { type EdgeStep, stepsOf } from './edge-steps.ts';
import { type StepOrder, stairsOf } from './stairs.ts';

/** An edge as it is wanted: a curve in mm from the centre line, and the counts that it joins. */
export interface EdgeWish {
  /** x in mm from the centre line (or any line along the rows), y in mm above the edge's first row */
  readonly curve: Curve;
  readonly gauge: Gauge;
  /** pairs of rows that the edge takes */
  readonly pairs: number;
  /** stitches from the centre line before the first pair and at the last one; halves where the count is odd */
  readonly start: number;
  readonly end: number;
  readonly order: StepOrder;
  /** the curve's top is level (a cap): what is left there is bound off in one go, whatever `end` says */
  readonly endsLevel?: boolean;
  /** −1 for a neck edge, where a wider curve means fewer stitches */
  readonly outward?: 1 | -1;
}

/** The edge as it is knitted. */
export interface KnittedEdge {
  /** stitches from the centre line at each pair */
  readonly at: readonly number[];
  readonly steps: readonly EdgeStep[];
  /** stitches off the curve at most, and the pair (from 0) where */
  readonly worst: { readonly stitches: number; readonly pair: number };
}

/** The height, mm, at which an edge is held against its curve: halfway up a pair of rows. */
export const heightOfPair = (pair: number, gauge: Gauge): number => ((2 * pair + 1) * 100) / gauge.rows;

/**
 * Outline to rows, for a neck, an armhole, a cap, a raglan and a side alike: the curve is read halfway up each pair
 * of rows, rounded to whole stitches (half a stitch off at most), and its steps put in the order that the trade keeps.
 */
export function knitEdge(wish: EdgeWish): KnittedEdge {
  const { curve, gauge, pairs, start, end, order, endsLevel = false, outward = 1 } = wish;
  const targets = Array.from(
    { length: pairs },
    (_, pair) => (xAt(curve, heightOfPair(pair, gauge)) * gauge.stitches) / 100,
  );
  const { at, worst } = stairsOf(targets, start, end, order, endsLevel);
  return { at, worst, steps: stepsOf(at, start, order, outward) };
}

/** An edge that does not move. */
export const uprightEdge = (pairs: number, at: number): KnittedEdge => ({
  at: Array.from({ length: pairs }, () => at),
  steps: [],
  worst: { stitches: 0, pair: 0 },
});
