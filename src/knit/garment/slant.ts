import type { Gauge } from '../gauge.ts';
import { xAt } from '../shape/curve.ts';
import { stepsOf } from '../shape/edge-steps.ts';
import { heightOfPair, knitEdge } from '../shape/outline.ts';
import { taper } from '../shape/taper.ts';
import { slantCurve } from './curves.ts';
import type { Design } from './design.ts';
import type { PanelEdge } from './panel.ts';

export interface SlantWish {
  readonly name: 'side' | 'sleeve';
  readonly gauge: Gauge;
  readonly from: number;
  readonly pairs: number;
  /** stitches from the centre line at its ends */
  readonly start: number;
  readonly end: number;
  /** pairs at the beginning that are not shaped (the first row above a rib may be shaped across) */
  readonly rest: number;
  readonly tapers: Design['tapers'];
}

/** A straight slanting edge: a side, a sleeve. */
export function knitSlant(wish: SlantWish): PanelEdge {
  const { name, gauge, from, pairs, start, end, rest, tapers } = wish;
  const mm = (stitches: number): number => (stitches * 100) / gauge.stitches;
  const pairMm = 200 / gauge.rows;
  const curve = slantCurve(
    mm(start),
    mm(end),
    pairs * pairMm,
    Math.min(rest, pairs - 1) * pairMm,
    pairMm / 2,
  );
  const together = tapers === 'together' ? inRuns(wish) : undefined;
  const knitted = knitEdge({ curve, gauge, pairs, start, end, order: 'free' });
  if (!together) return { ...knitted, name, from, curve, gauge };
  let worst = { stitches: 0, pair: 0 };
  together.forEach((at, pair) => {
    const off = Math.abs(at - (xAt(curve, heightOfPair(pair, gauge)) * gauge.stitches) / 100);
    if (off > worst.stitches) worst = { stitches: off, pair };
  });
  return { at: together, steps: stepsOf(together, start, 'free'), worst, name, from, curve, gauge };
}

/** Stairs with the longer intervals together; undefined where one shaping in two rows is not enough. */
function inRuns({ pairs, start, end, rest }: SlantWish): readonly number[] | undefined {
  const laid = taper({ rows: pairs - rest, times: Math.abs(end - start), step: 1 });
  if (!laid.ok) return undefined;
  const shaped = new Set(laid.value.rows);
  const way = Math.sign(end - start);
  let at = start;
  return Array.from({ length: pairs }, (_, pair) => {
    if (shaped.has(pair - rest + 1)) at += way;
    return at;
  });
}
