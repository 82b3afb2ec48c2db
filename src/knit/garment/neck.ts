import type { Gauge } from '../gauge.ts';
import { type EdgeWish, knitEdge, uprightEdge } from '../shape/outline.ts';
import { neckCurve } from './curves.ts';
import type { NeckEdge } from './kinds/necks.ts';
import type { PanelEdge } from './panel.ts';

export interface NeckWish {
  readonly shape: NeckEdge;
  readonly gauge: Gauge;
  /** pair of rows at which the neck begins, and how many it takes */
  readonly from: number;
  readonly pairs: number;
  /** stitches from the centre line at the bottom (half a stitch where the count is odd; the front edge of a cardigan) */
  readonly start: number;
  /** stitches from the centre line at the top */
  readonly end: number;
}

export interface Neck {
  readonly edge: PanelEdge;
  /** stitches bound off (or rested) at the middle of a closed panel, both halves */
  readonly middle: number;
}

/** A neck edge: what lies in the middle when it begins, and its steps above that. */
export function knitNeck(wish: NeckWish): Neck {
  const { shape, gauge, from, pairs, start, end } = wish;
  const mm = (stitches: number): number => (stitches * 100) / gauge.stitches;
  const curve = neckCurve(shape, mm(start), mm(end), (pairs * 200) / gauge.rows, 100 / gauge.rows);
  const edge: Omit<EdgeWish, 'start'> = {
    curve,
    gauge,
    pairs,
    end,
    order: shape.isPointed ? 'free' : 'falling',
    outward: -1,
  };
  if (shape.level === 1)
    return { edge: { ...uprightEdge(pairs, end), name: 'neck', from, curve, gauge }, middle: 2 * end };
  const knitted = knitEdge({ ...edge, start });
  const middle = shape.isPointed ? 2 * start : 2 * (knitted.at[0] ?? start);
  const steps = shape.isPointed ? knitted.steps : knitted.steps.filter((step) => step.pair > 0);
  return { edge: { ...knitted, steps, name: 'neck', from, curve, gauge }, middle };
}
