import { changeBefore, type EdgeStep } from '../shape/edge-steps.ts';
import { knitArmhole } from './armhole.ts';
import type { Design } from './design.ts';
import { armholes } from './kinds/armholes.ts';
import { shoulderFacts } from './kinds/shoulders.ts';
import { silhouetteFacts } from './kinds/silhouettes.ts';
import { type PanelEdge, type Stretch, stepsAlong } from './panel.ts';
import { type PanelCounts, pairsToTop } from './panel-counts.ts';
import { CLOSING_PAIRS } from './short-rows.ts';
import { knitSlant } from './slant.ts';

/** What back and fronts have in common: their side seams, armholes and shoulders, from the right edge to the centre. */
export interface Sides {
  readonly edges: readonly PanelEdge[];
  readonly steps: readonly EdgeStep[];
  /** pairs of rows to the top */
  readonly pairs: number;
  readonly stretches: readonly Stretch[];
}

export function knitSides(design: Design, counts: PanelCounts): Sides {
  const { pairs, gauge } = counts;
  const { curve, knitted } = knitArmhole(design, counts);
  const underarm = pairs.hem + pairs.side;
  const armhole: PanelEdge = { ...knitted, name: 'armhole', from: underarm, curve, gauge };
  const edges = [...sideSeam(design, counts), armhole];
  const top = underarm + pairs.armhole;
  const shoulder: readonly EdgeStep[] = counts.shoulder
    .slice(0, -1)
    .map((stitches, i) => ({ pair: top + shoulderPair(design, counts, i), by: -stitches, as: 'group' }));
  return {
    edges,
    steps: [...stepsAlong(edges), ...shoulder],
    pairs: pairsToTop(counts),
    stretches: stretchesOf(design, counts),
  };
}

function sideSeam(design: Design, counts: PanelCounts): readonly PanelEdge[] {
  const { pairs, gauge, low, waist, underarm } = counts;
  const common = { name: 'side', gauge, tapers: design.tapers } as const;
  if (!silhouetteFacts[design.silhouette].hasWaist) {
    const slant = { from: pairs.hem, pairs: pairs.side, start: low / 2, end: underarm / 2, rest: 1 };
    return pairs.side > 0 ? [knitSlant({ ...common, ...slant })] : [];
  }
  const lower = { from: pairs.hem, pairs: pairs.waist, start: low / 2, end: waist / 2, rest: 1 };
  const upper = {
    from: pairs.hem + pairs.waist,
    pairs: pairs.side - pairs.waist,
    start: waist / 2,
    end: underarm / 2,
    rest: 0,
  };
  return pairs.waist > 0 && upper.pairs > 0
    ? [knitSlant({ ...common, ...lower }), knitSlant({ ...common, ...upper })]
    : [];
}

function stretchesOf(design: Design, { pairs, hem, low }: PanelCounts): readonly Stretch[] {
  const { needles, fabric } = design;
  const closing = shoulderFacts(design.shoulder).turns ? Math.min(CLOSING_PAIRS, pairs.slope) : 0;
  const panel = (name: string, length: number, across = 0): Stretch => ({
    name,
    fabric,
    needle: needles.panels,
    pairs: length,
    across,
  });
  return [
    { name: 'hem', fabric: design.hem.fabric, needle: needles.borders, pairs: pairs.hem },
    panel('body', pairs.side, low - hem),
    panel(armholes[design.armhole].rows, pairs.armhole),
    panel('shoulder', pairs.slope - closing),
    ...(closing > 0 ? [panel('shoulder', closing)] : []),
  ];
}

/** Stitches of a symmetrical panel before pair `pair`; at its very beginning the rib's count. */
export const countBefore = (counts: PanelCounts, steps: readonly EdgeStep[], pair: number): number =>
  pair <= counts.pairs.hem && counts.pairs.hem > 0 ? counts.hem : counts.low + 2 * changeBefore(steps, pair);

/**
 * Pairs above the armhole at which a shoulder's group (from 0, the outer one first) is bound off, the last one at the
 * top; in short rows the pair in which the work turns before it.
 */
function shoulderPair(
  { shoulder: way }: Pick<Design, 'shoulder'>,
  { shoulder, pairs: { slope } }: PanelCounts,
  group: number,
): number {
  const last = shoulder.length - 1;
  if (last < 1 || group === last) return slope;
  if (!shoulderFacts(way).turns) return Math.round((group * slope) / last);
  const lastTurn = slope - CLOSING_PAIRS - 1;
  return Math.round((group * lastTurn) / Math.max(1, last - 1));
}

/** Pairs above the armhole to which a group's stitches are knitted; short rows are all closed by the last pair. */
export function shoulderHeight(design: Design, counts: PanelCounts, group: number): number {
  const closed = shoulderFacts(design.shoulder).turns ? CLOSING_PAIRS : 0;
  return Math.min(counts.pairs.slope, shoulderPair(design, counts, group) + closed);
}
