import type { Gauge } from '../gauge.ts';
import type { Curve } from '../shape/curve.ts';
import { type KnittedEdge, knitEdge } from '../shape/outline.ts';
import { raglanCurve } from './curves.ts';
import type { Design } from './design.ts';
import { asKnitted, inRuns } from './slant.ts';

export interface RaglanWish {
  readonly gauge: Gauge;
  readonly pairs: number;
  /** stitches from the centre line before the underarm is bound off, and at the neck */
  readonly start: number;
  readonly end: number;
  /** bound off at the underarm */
  readonly step: number;
  readonly tapers: Design['tapers'];
}

/**
 * A raglan line, of body or sleeve: the underarm bound off, one pair of rows without shaping, then decreases to the
 * neck. Easy to keep in mind they are two regular stretches, as the lines that are sewn together should be.
 */
export function knitRaglan(wish: RaglanWish): { readonly curve: Curve; readonly knitted: KnittedEdge } {
  const { gauge, pairs, start, end, step, tapers } = wish;
  const mm = (stitches: number): number => (stitches * 100) / gauge.stitches;
  const pairMm = 200 / gauge.rows;
  const curve = raglanCurve(mm(start), mm(step), mm(end), pairs * pairMm, pairMm);
  const foot = start - step;
  const together =
    tapers === 'together' ? inRuns({ from: 1, pairs, last: pairs, start: foot, end }) : undefined;
  if (!together) return { curve, knitted: knitEdge({ curve, gauge, pairs, start, end, order: 'free' }) };
  const { at, worst, steps } = asKnitted(together, foot, curve, gauge);
  const underarm = step > 0 ? [{ pair: 0, by: -step, as: step > 2 ? 'group' : 'single' } as const] : [];
  return { curve, knitted: { at, worst, steps: [...underarm, ...steps] } };
}
