import { fitsSeamed } from '../fabric.ts';
import type { PickUp } from '../piece/recipe.ts';
import { lengthOf } from '../shape/curve.ts';
import type { Border } from './design.ts';
import type { Neck } from './neck.ts';
import type { PanelEdge } from './panel.ts';
import { type PanelCounts, pairsToTop } from './panel-counts.ts';
import { stitchesIn } from './whole-numbers.ts';

/** What the bands are picked up along. */
export interface BandEdges {
  readonly counts: PanelCounts;
  readonly front: Neck | undefined;
  readonly back: Neck | undefined;
  /** half of the front neck's stitches at the top, and of the back's */
  readonly frontHalf: number;
  /** stitches at the top of one sleeve, where a raglan leaves it in the neck */
  readonly sleeveTop: number;
  readonly armhole: PanelEdge | undefined;
}

/**
 * Stitches picked up along a neck edge: one for each bound-off stitch at the middle, and along the rest as many as lie
 * in its length: stitch gauge over row gauge for each row of an upright edge (common practice, no published source).
 */
export function neckSide(neck: Neck, counts: PanelCounts, start: number): number {
  const level = ((neck.middle / 2 - start) * 100) / counts.gauge.stitches;
  return Math.max(1, Math.round(stitchesIn(lengthOf(neck.edge.curve) - Math.max(0, level), counts.gauge)));
}

export function backPickUp({ back, counts }: BandEdges): number {
  return back ? back.middle + 2 * neckSide(back, counts, (counts.neck % 2) / 2) : counts.neck;
}

/** Half of a back neck that is parted, from its opening to the shoulder. */
export function halfBackPickUp({ back, counts }: BandEdges): number {
  const start = (counts.neck % 2) / 2;
  return back ? back.middle / 2 - start + neckSide(back, counts, start) : 0;
}

/** A cardigan's neck from its first decrease up: nothing of it rests at a middle, and the rows below are still its front edge. */
export function openNeckSide(front: Neck, counts: PanelCounts): number {
  const plain = pairsBeforeNeck(front) / Math.max(1, front.edge.at.length);
  return Math.max(1, Math.round(stitchesIn(lengthOf(front.edge.curve) * (1 - plain), counts.gauge)));
}

/** Pairs of rows from where a neck's curve begins to its first decrease. */
const pairsBeforeNeck = ({ edge }: Neck): number => edge.steps[0]?.pair ?? 0;

/** From the lower edge to the neck's first decrease, mm. */
export function frontEdgeMm({ counts, front }: BandEdges): number {
  const { hem } = counts.pairs;
  const to = front ? front.edge.from + pairsBeforeNeck(front) : pairsToTop(counts);
  return (hem * 200) / counts.hemGauge.rows + ((to - hem) * 200) / counts.gauge.rows;
}

/** The whole pick-up made to fit the band's repeat; the difference goes to its longest stretch behind, or its last one. */
export function fittedPickUp({ fabric }: Border, order: readonly PickUp[]): readonly PickUp[] {
  const total = order.reduce((sum, p) => sum + p.stitches, 0);
  const near = fitsSeamed(fabric, total);
  const by =
    near.above - total <= total - near.below || near.below === 0 ? near.above - total : near.below - total;
  const behind = order.findIndex((p) => p.along === 'back neck');
  const at = behind === -1 ? order.length - 1 : behind;
  return order.map((p, i) =>
    i === at
      ? { ...p, stitches: p.stitches + ((order[at]?.stitches ?? 0) + by > 0 ? by : near.above - total) }
      : p,
  );
}
