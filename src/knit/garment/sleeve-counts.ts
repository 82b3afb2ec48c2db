import { type FabricName, fitsSeamed } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import { lengthOf } from '../shape/curve.ts';
import { capCurve } from './curves.ts';
import type { Design } from './design.ts';
import { designGauge } from './gauges.ts';
import type { PanelCounts } from './panel-counts.ts';
import type { Sides } from './sides.ts';
import type { Targets } from './targets.ts';
import { fitted, pairsIn, sameParity, stitchesIn } from './whole-numbers.ts';

export interface SleeveCounts {
  readonly gauge: Gauge;
  readonly cuffGauge: Gauge;
  /** in the rib, above it, at the underarm, and at the top of a cap or raglan (elsewhere as at the underarm) */
  readonly cuff: number;
  readonly low: number;
  readonly wide: number;
  readonly top: number;
  /** bound off at each underarm */
  readonly step: number;
  /** what `wide` is rounded from: the upper arm with its ease, or twice the armhole's depth as knitted */
  readonly askedWidthMm: number;
  readonly pairs: { readonly cuff: number; readonly sleeve: number; readonly cap: number };
  /** of a set-in cap: its height before rounding to rows, and how far its edge may be off the armhole's, mm */
  readonly cap: { readonly heightMm: number; readonly offMm: number } | undefined;
}

/**
 * share of a sleeve's width at which a set-in cap's curve ends; common practice, no published source. What is bound off
 * there is more, 29 to 51 in the hundred, since the curve's last steps are level too.
 */
const CAP_TOP_SHARE = 0.25;
/** width of a raglan sleeve at the neck; common practice, no published source */
const RAGLAN_TOP_MM = 30;
/** stitches at the top of a cap or raglan at least, so that both edges can be shaped */
const LEAST_TOP = 4;

export function sleeveCounts(
  design: Design,
  targets: Targets,
  panels: PanelCounts,
  sides: Sides,
): SleeveCounts {
  const { gauge } = panels;
  const { shape } = design.sleeve;
  const cuffGauge = designGauge(design, design.cuff.fabric).gauge;
  const flat = design.armhole === 'drop' || design.armhole === 'indented';
  const askedWidthMm = flat ? (panels.pairs.armhole * 400) / gauge.rows : targets.sleeveTop;
  const topStitches = Math.max(LEAST_TOP, stitchesIn(topOf(design, askedWidthMm), gauge));
  const lowMm = shape === 'tapered' ? targets.cuff : askedWidthMm;
  const asked = [stitchesIn(askedWidthMm, gauge), topStitches, stitchesIn(lowMm, gauge)];
  const [wide = 0, top = 0, low = 0] = sameParity(asked);
  const cuffPairs = pairsIn(design.cuff.heightMm, cuffGauge, 1);
  const wanted = shape === 'after cuff' ? Math.round(stitchesIn(targets.cuff, gauge)) : low;
  const cuff = cuffPairs > 0 ? fittedCuff(design.cuff.fabric, wanted, low) : low;
  const armhole = sides.edges[sides.edges.length - 1];
  const first = armhole?.steps[0];
  const step = first?.pair === 0 ? -first.by : 0;
  const cap = design.armhole === 'set-in' ? solveCap(design, panels, sides, { wide, top, step }) : undefined;
  return {
    gauge,
    cuffGauge,
    cuff,
    low,
    wide,
    top: flat ? wide : top,
    step: flat ? 0 : step,
    askedWidthMm,
    pairs: {
      cuff: cuffPairs,
      sleeve: pairsIn(targets.sleeve - (cuffPairs * 200) / cuffGauge.rows, gauge),
      cap: capPairs(design, panels, step, cap),
    },
    cap,
  };
}

/** One row can at most make a stitch after each one: where the nearest count is too small for that, the next one up. */
function fittedCuff(fabric: FabricName, wanted: number, low: number): number {
  const near = fitted(fabric, wanted);
  return low - near >= near ? fitsSeamed(fabric, wanted).above : near;
}

function topOf({ armhole }: Design, widthMm: number): number {
  if (armhole === 'set-in') return CAP_TOP_SHARE * widthMm;
  return armhole === 'raglan' ? RAGLAN_TOP_MM : widthMm;
}

function capPairs(design: Design, panels: PanelCounts, step: number, cap: SleeveCounts['cap']): number {
  if (design.armhole === 'raglan') return panels.pairs.armhole;
  if (design.armhole === 'set-in') return cap ? pairsIn(cap.heightMm, panels.gauge) : 0;
  // an indented armhole takes in as much of the sleeve's length as it is wide
  return design.armhole === 'indented' ? pairsIn((step * 100) / panels.gauge.stitches, panels.gauge) : 0;
}

/**
 * The height at which a cap's edge is as long as the armhole's, with the ease asked for: the edge only grows with the
 * height, so halving the range finds it to a hundredth of a millimetre. Undefined where even a flat cap is longer.
 */
function solveCap(
  design: Design,
  { gauge }: PanelCounts,
  sides: Sides,
  { wide, top, step }: { wide: number; top: number; step: number },
): SleeveCounts['cap'] {
  const armhole = sides.edges[sides.edges.length - 1];
  if (!armhole || wide / 2 - step <= top / 2) return undefined;
  const wanted = lengthOf(armhole.curve) * (1 + design.sleeve.capEase / 100);
  const mm = (stitches: number): number => (stitches * 100) / gauge.stitches;
  const pairMm = 200 / gauge.rows;
  const edge = (height: number): number =>
    lengthOf(capCurve(mm(wide / 2), mm(step), mm(top / 2), height, pairMm));
  let low = pairMm;
  let high = wanted;
  if (edge(low) > wanted) return undefined;
  while (high - low > CAP_BOUND_MM) {
    const middle = (low + high) / 2;
    if (edge(middle) < wanted) low = middle;
    else high = middle;
  }
  return { heightMm: (low + high) / 2, offMm: Math.abs(edge((low + high) / 2) - wanted) };
}
const CAP_BOUND_MM = 0.005;
