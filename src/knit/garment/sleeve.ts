import type { PartRecipe } from '../piece/recipe.ts';
import { type Curve, chain } from '../shape/curve.ts';
import { type EdgeStep, turned } from '../shape/edge-steps.ts';
import { knitEdge, uprightEdge } from '../shape/outline.ts';
import { capCurve, raglanCurve } from './curves.ts';
import type { Design } from './design.ts';
import { cutPart, type PanelEdge, type Stretch, stepsAlong } from './panel.ts';
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
      ? cuffUp(counts, stretches, steps)
      : topDown(counts, stretches, steps);
  return { part, edges, stretches };
}

function slantOf({ tapers }: Design, { gauge, low, wide, pairs }: SleeveCounts): PanelEdge {
  return knitSlant({
    name: 'sleeve',
    gauge,
    from: pairs.cuff,
    pairs: pairs.sleeve,
    start: low / 2,
    end: wide / 2,
    rest: 1,
    tapers,
  });
}

function capOf({ armhole }: Design, counts: SleeveCounts): readonly PanelEdge[] {
  const { gauge, wide, top, step, pairs } = counts;
  if (pairs.cap === 0) return [];
  const mm = (stitches: number): number => (stitches * 100) / gauge.stitches;
  const pairMm = 200 / gauge.rows;
  const height = pairs.cap * pairMm;
  const rest = { name: 'cap', from: pairs.cuff + pairs.sleeve, gauge } as const;
  if (armhole === 'indented') {
    const curve = chain([
      [mm(wide / 2), 0],
      [mm(wide / 2), height],
    ]);
    return [{ ...uprightEdge(pairs.cap, wide / 2), ...rest, curve }];
  }
  const curve: Curve =
    armhole === 'raglan'
      ? raglanCurve(mm(wide / 2), mm(step), mm(top / 2), height, pairMm)
      : capCurve(mm(wide / 2), mm(step), mm(top / 2), height, pairMm);
  const order = armhole === 'raglan' ? 'free' : 'falling then rising';
  const knitted = knitEdge({
    curve,
    gauge,
    pairs: pairs.cap,
    start: wide / 2,
    end: top / 2,
    order,
    endsLevel: armhole === 'set-in',
  });
  return [{ ...knitted, ...rest, curve }];
}

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
    panel(armhole === 'raglan' ? 'raglan' : armhole === 'indented' ? 'top' : 'cap', pairs.cap),
  ];
}

const whole = (stretches: readonly Stretch[]): number => stretches.reduce((sum, s) => sum + s.pairs, 0);

const cuffUp = (
  { cuff }: SleeveCounts,
  stretches: readonly Stretch[],
  steps: readonly EdgeStep[],
): PartRecipe =>
  cutPart(stretches, {
    name: 'Sleeve',
    from: { castOn: cuff },
    end: 'bind off',
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
  const down = [...stretches]
    .reverse()
    .map(({ across: _across, ...s }) => (s.name === 'cuff' ? { ...s, across: counts.cuff - counts.low } : s));
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
