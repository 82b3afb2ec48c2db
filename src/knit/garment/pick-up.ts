import { fitsSeamed } from '../fabric.ts';
import type { PickUp } from '../piece/recipe.ts';
import { shifted } from '../shape/edge-steps.ts';
import { knittedMm } from './cap.ts';
import { type Border, type Design, isSince } from './design.ts';
import { heldNeck } from './held-neck.ts';
import { armholes } from './kinds/armholes.ts';
import { necks } from './kinds/necks.ts';
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
  readonly armhole: PanelEdge;
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

/**
 * The same of a front's. A V that is shallow binds off the first of its stitches at once: no middle lies there that would
 * be picked up by itself, so they belong to its sides.
 */
export function frontNeckSide(design: Design, neck: Neck, counts: PanelCounts): number {
  const [first] = neck.edge.steps;
  const isLevel = necks[design.neck.shape].isPointed && first?.pair === 0 && first.as === 'group';
  return neckSide(neck, counts) + (isSince(3, design) && isLevel ? Math.abs(first.by) : 0);
}

/** Along the back neck from the right to the left; in three where its middle rests on a holder, of a raglan all of it. */
export function alongBack(design: Design, { back, counts }: BandEdges): readonly PickUp[] {
  const held = heldNeck(design).back;
  if (!back) {
    const all = { along: 'back neck', stitches: counts.neck } as const;
    return [held && armholes[design.armhole].toNeck ? { ...all, held } : all];
  }
  const side = neckSide(back, counts);
  if (!held || back.middle === 0) return [{ along: 'back neck', stitches: back.middle + 2 * side }];
  return [
    { along: 'right back neck', stitches: side },
    { along: 'middle of the back neck', stitches: back.middle, held },
    { along: 'left back neck', stitches: side },
  ];
}

/** Along the top of a sleeve that lies in the neck. */
export function alongSleeve(
  design: Design,
  { sleeveTop, counts }: BandEdges,
  worn: 'left' | 'right',
): readonly PickUp[] {
  const along = `${worn} sleeve top`;
  if (sleeveTop === 0) return [];
  if (heldNeck(design).sleeves) return [{ along, stitches: sleeveTop, held: true }];
  // the stitches that its seams take are not picked up
  return [{ along, stitches: isSince(2, design) ? sleeveTop - 2 * counts.seam : sleeveTop }];
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

/**
 * The whole pick-up made to fit the band's repeat. The difference goes to its longest stretch behind, or its last one; what
 * rests on a holder is as many as it is, so beside it both sides of the back share the difference.
 */
export function fittedPickUp(
  { fabric }: Border,
  order: readonly PickUp[],
  hasCorners = false,
  edition?: Design['edition'],
): readonly PickUp[] {
  const total = order.reduce((sum, p) => sum + p.stitches, 0);
  const near = fitsSeamed(fabric, total);
  const isNearer = near.above - total <= total - near.below || near.below === 0;
  const takes = takers(order, hasCorners, edition);
  const share = (by: number) =>
    order.map((p, i) => {
      const at = takes.indexOf(i);
      if (at < 0) return p;
      const each = Math.trunc(by / takes.length);
      const isOneMore = at < Math.abs(by) % takes.length;
      return { ...p, stitches: p.stitches + each + (isOneMore ? Math.sign(by) : 0) };
    });
  const nearest = share(isNearer ? near.above - total : near.below - total);
  return nearest.every(({ stitches }) => stitches > 0) ? nearest : share(near.above - total);
}

/** Which stretches of a pick-up may take more or fewer than lie along them. */
function takers(
  order: readonly PickUp[],
  hasCorners: boolean,
  edition: Design['edition'],
): readonly number[] {
  const free = order.flatMap(({ held }, i) => (held ? [] : [i]));
  const called = (...names: readonly string[]) => free.filter((i) => names.includes(order[i]?.along ?? ''));
  // a raglan's neck lies on four pieces: behind and before share where no corner asks for a column of its own (common practice, no published source)
  const isRaglan = order.some(({ along }) => along.endsWith('sleeve top'));
  const behind = called(
    'back neck',
    ...(isRaglan && !hasCorners ? ['front neck', 'middle of the front neck'] : []),
  );
  // where all else rests, both sides of the front share the difference
  const before =
    isSince(2, { edition }) && isRaglan && !hasCorners ? called('left front neck', 'right front neck') : [];
  // no stretch of an envelope's front is behind: its corners take what there is, none where a mitre asks for a column of its own
  const corners = called('right front corner', ...(hasCorners ? [] : ['left front corner']));
  const isPartHeld = order.some(({ held, along }) => held && along.endsWith('back neck'));
  const sides = isPartHeld ? called('right back neck', 'left back neck') : [];
  return [behind, sides, before, corners, free.slice(-1)].find((list) => list.length > 0) ?? [];
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
