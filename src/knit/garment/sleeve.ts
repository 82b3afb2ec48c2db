import type { PartEnd, PartRecipe } from '../piece/recipe.ts';
import { type Curve, chain } from '../shape/curve.ts';
import { type EdgeStep, turned } from '../shape/edge-steps.ts';
import { type KnittedEdge, uprightEdge } from '../shape/outline.ts';
import { knitCap } from './cap.ts';
import type { Design } from './design.ts';
import { heldNeck } from './held-neck.ts';
import { armholes } from './kinds/armholes.ts';
import { type SleeveTopName, sleeveTops } from './kinds/sleeve-tops.ts';
import { cutPart, type PanelEdge, type Stretch, stepsAlong } from './panel.ts';
import { knitRaglan } from './raglan.ts';
import { knitSlant } from './slant.ts';
import type { SleeveCounts } from './sleeve-counts.ts';

export interface Sleeve {
  readonly part: PartRecipe;
  /** from the cuff up, whichever way it is knitted */
  readonly edges: readonly PanelEdge[];
  readonly stretches: readonly Stretch[];
}

export function knitSleeve(design: Design, counts: SleeveCounts): Sleeve {
  const edges = [slantOf(design, counts), ...capOf(design, counts)];
  const stretches = stretchesOf(design, counts);
  const steps = stepsAlong(edges);
  const part =
    design.sleeve.direction === 'cuff up'
      ? cuffUp(counts, stretches, steps, heldNeck(design).sleeves ? 'hold' : 'bind off')
      : topDown(counts, stretches, steps);
  return { part, edges, stretches };
}

function slantOf({ tapers, sleeve }: Design, { gauge, low, wide, pairs }: SleeveCounts): PanelEdge {
  return knitSlant({
    name: 'sleeve',
    gauge,
    from: pairs.cuff,
    pairs: pairs.sleeve,
    start: low / 2,
    end: wide / 2,
    rest: sleeve.direction === 'top down' ? ABOVE_CUFF + 1 : 1,
    tapers,
  });
}

function capOf({ armhole, tapers }: Design, counts: SleeveCounts): readonly PanelEdge[] {
  const { gauge, pairs } = counts;
  if (pairs.cap === 0) return [];
  const { curve, knitted } = tops[armholes[armhole].sleeveTop](counts, tapers);
  return [{ ...knitted, name: 'cap', from: pairs.cuff + pairs.sleeve, gauge, curve }];
}

interface KnittedTop {
  readonly curve: Curve;
  readonly knitted: KnittedEdge;
}

const upright = ({ wide, gauge, pairs }: SleeveCounts): KnittedTop => ({
  curve: chain([
    [(wide * 50) / gauge.stitches, 0],
    [(wide * 50) / gauge.stitches, (pairs.cap * 200) / gauge.rows],
  ]),
  knitted: uprightEdge(pairs.cap, wide / 2),
});

/** The edge above the underarm of a sleeve that ends so. */
const tops: Readonly<Record<SleeveTopName, (counts: SleeveCounts, tapers: Design['tapers']) => KnittedTop>> =
  {
    level: upright,
    'let in': upright,
    line: ({ gauge, pairs, wide, step, top }, tapers) =>
      knitRaglan({ gauge, pairs: pairs.cap, start: wide / 2, step, end: top / 2, tapers }),
    cap: (counts) => knitCap(counts, counts.pairs.cap),
  };

function stretchesOf({ armhole, cuff, fabric, needles }: Design, counts: SleeveCounts): readonly Stretch[] {
  const { pairs, low } = counts;
  const panel = (name: string, length: number): Stretch => ({
    name,
    fabric,
    needle: needles.panels,
    pairs: length,
  });
  return [
    { name: 'cuff', fabric: cuff.fabric, needle: needles.borders, pairs: pairs.cuff },
    { ...panel('sleeve', pairs.sleeve), across: low - counts.cuff },
    panel(sleeveTops[armholes[armhole].sleeveTop].rows, pairs.cap),
  ];
}

const whole = (stretches: readonly Stretch[]): number => stretches.reduce((sum, s) => sum + s.pairs, 0);

const cuffUp = (
  { cuff }: SleeveCounts,
  stretches: readonly Stretch[],
  steps: readonly EdgeStep[],
  end: PartEnd,
): PartRecipe =>
  cutPart(stretches, {
    name: 'Sleeve',
    from: { castOn: cuff },
    end,
    pairs: [0, whole(stretches)],
    right: steps,
    left: steps,
    stitches: cuff,
  });

/** The same sleeve from its top: the order of the stretches turned round, and the change of count before the cuff. */
function topDown(
  counts: SleeveCounts,
  stretches: readonly Stretch[],
  steps: readonly EdgeStep[],
): PartRecipe {
  const pairs = whole(stretches);
  const back = turned(steps, pairs);
  const top = counts.low + 2 * steps.reduce((sum, step) => sum + step.by, 0);
  const down = [...stretches].reverse().flatMap((stretch) => towardsCuff(stretch, counts));
  return cutPart(down, {
    name: 'Sleeve',
    from: { castOn: top },
    end: 'bind off',
    pairs: [0, pairs],
    right: back,
    left: back,
    stitches: top,
  });
}

/** Pairs of rows above a cuff that is reached from above: its change of count lies in them, and no rib row is broken by it. */
const ABOVE_CUFF = 1;

function towardsCuff(
  { across: _across, ...stretch }: Stretch,
  { cuff, low, pairs }: SleeveCounts,
): readonly Stretch[] {
  if (cuff === low || pairs.cuff === 0) return [stretch];
  if (pairs.sleeve <= ABOVE_CUFF + 1)
    return [stretch.name === 'cuff' ? { ...stretch, across: cuff - low } : stretch];
  if (stretch.name !== 'sleeve') return [stretch];
  return [
    { ...stretch, pairs: stretch.pairs - ABOVE_CUFF },
    { ...stretch, pairs: ABOVE_CUFF, across: cuff - low },
  ];
}
