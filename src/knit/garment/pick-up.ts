import { fitsSeamed } from '../fabric.ts';
import type { PickUp } from '../piece/recipe.ts';
import { shifted } from '../shape/edge-steps.ts';
import { knittedMm } from './cap.ts';
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
  /** stitches that a shaped raglan front keeps at each end of its neck */
  readonly tip: number;
  readonly armhole: PanelEdge | undefined;
}

/** The side of a neck beside its middle along the knitted edge, mm. */
export const neckSideMm = ({ edge }: Neck): number => knittedMm(edge, edge.at.length, true);

/**
 * Stitches picked up along the side of a neck edge: as many as lie in the length of the knitted edge, which on thick
 * yarn is longer than its curve: stitch gauge over row gauge for each row of an upright edge, one for each stitch that
 * is bound off (common practice, no published source).
 */
export const neckSide = (neck: Neck, counts: PanelCounts): number =>
  Math.max(1, Math.round(stitchesIn(neckSideMm(neck), counts.gauge)));

export function backPickUp({ back, counts }: BandEdges): number {
  return back ? back.middle + 2 * neckSide(back, counts) : counts.neck;
}

/** Half of a back neck that is parted, from its opening to the shoulder. */
export function halfBackPickUp({ back, counts }: BandEdges): number {
  return back ? back.middle / 2 - (counts.neck % 2) / 2 + neckSide(back, counts) : 0;
}

/** A cardigan's neck from its first decrease up: nothing of it rests at a middle, and the rows below are still its front edge. */
export function openNeckSide({ edge }: Neck, counts: PanelCounts): number {
  const [first] = edge.steps;
  const from = first?.pair ?? 0;
  const level = first?.as === 'group' ? Math.abs(first.by) : 0;
  const rest = knittedMm({ ...edge, steps: shifted(edge.steps, -from) }, edge.at.length - from);
  return Math.max(1, level + Math.round(stitchesIn(rest, counts.gauge)));
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

/** The pick-up of two edges of the same length made to fit the band's repeat: shared between them. */
export function sharedPickUp(
  { fabric }: Border,
  each: number,
  names: readonly [string, string],
): readonly PickUp[] {
  const total = Math.max(2, Math.round(2 * each));
  const near = fitsSeamed(fabric, total);
  const fit = near.above - total <= total - near.below || near.below < 2 ? near.above : near.below;
  const half = Math.floor(fit / 2);
  return [
    { along: names[0], stitches: half },
    { along: names[1], stitches: fit - half },
  ];
}
