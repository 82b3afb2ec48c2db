import { type FabricName, fitsSeamed } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import { type Cap, capFor } from './cap.ts';
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
  /** of a set-in armhole */
  readonly cap: Cap | undefined;
  readonly isTopDown: boolean;
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
  const isTopDown = design.sleeve.direction === 'top down';
  const cap =
    design.armhole === 'set-in' && armhole
      ? capFor({ gauge, wide, step, top, isTopDown }, armhole, design.sleeve.capEase)
      : undefined;
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
    isTopDown,
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
  if (design.armhole === 'set-in') return cap?.pairs ?? 0;
  // an indented armhole takes in as much of the sleeve's length as it is wide
  return design.armhole === 'indented' ? pairsIn((step * 100) / panels.gauge.stitches, panels.gauge) : 0;
}
