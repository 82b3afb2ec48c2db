import { type FabricName, fitsSeamed } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import { type Cap, capFor } from './cap.ts';
import type { Design } from './design.ts';
import { designGauge } from './gauges.ts';
import { armholes } from './kinds/armholes.ts';
import { sleeveShapeFacts } from './kinds/sleeve-shapes.ts';
import { type SleeveTopName, sleeveTops } from './kinds/sleeve-tops.ts';
import { type PanelCounts, seamStitches } from './panel-counts.ts';
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
  /** to the underarm, mm */
  readonly askedLengthMm: number;
  readonly pairs: { readonly cuff: number; readonly sleeve: number; readonly cap: number };
  /** of a set-in armhole */
  readonly cap: Cap | undefined;
  readonly isTopDown: boolean;
  /** stitches of `wide` that each side has for its seam */
  readonly seam: number;
  /** the top of a set-in cap is as wide as it was asked for */
  readonly endsSquare: boolean;
}

/** stitches at the top of a cap or raglan at least, so that both edges can be shaped */
const LEAST_TOP = 4;

export function sleeveCounts(
  design: Design,
  targets: Targets,
  panels: PanelCounts,
  sides: Sides,
): SleeveCounts {
  const { gauge } = panels;
  const cuffGauge = designGauge(design, design.cuff.fabric).gauge;
  const end = armholes[design.armhole].sleeveTop;
  const { sewnFlat: flat, topMm } = sleeveTops[end];
  const { beginsNarrow, widensAtOnce } = sleeveShapeFacts[design.sleeve.shape];
  const askedWidthMm = flat ? (panels.pairs.armhole * 400) / gauge.rows : targets.sleeveTop;
  const topStitches = Math.max(LEAST_TOP, stitchesIn(design.sleeve.capTopMm ?? topMm(askedWidthMm), gauge));
  const lowMm = beginsNarrow ? targets.cuff : askedWidthMm;
  // the top of a straight sleeve is sewn along its whole width
  const own = seamStitches(design);
  const seam = flat ? 0 : own;
  const lowSeam = beginsNarrow ? own : seam;
  const asked = [
    stitchesIn(askedWidthMm, gauge) + 2 * seam,
    topStitches,
    stitchesIn(lowMm, gauge) + 2 * lowSeam,
  ];
  const [wide = 0, top = 0, low = 0] = sameParity(asked);
  const cuffPairs = pairsIn(design.cuff.heightMm, cuffGauge, 1);
  const wanted = widensAtOnce ? Math.round(stitchesIn(targets.cuff, gauge)) + 2 * own : low;
  const cuff = cuffPairs > 0 ? fittedCuff(design.cuff.fabric, wanted, low) : low;
  const armhole = sides.edges[sides.edges.length - 1];
  const first = armhole?.steps[0];
  const step = first?.pair === 0 ? -first.by : 0;
  const isTopDown = design.sleeve.direction === 'top down';
  const endsSquare = design.sleeve.capTopMm !== undefined;
  const cap =
    end === 'cap' && armhole
      ? capFor({ gauge, wide, step, top, isTopDown, endsSquare }, armhole, design.sleeve.capEase)
      : undefined;
  const capPairs = pairsOfTop[end](panels, step, cap);
  const askedLengthMm = flat ? targets.sleeve : askedLength(design, targets.sleeve, panels, capPairs);
  return {
    gauge,
    cuffGauge,
    cuff,
    low,
    wide,
    top: flat ? wide : top,
    step: flat ? 0 : step,
    askedWidthMm,
    askedLengthMm,
    pairs: {
      cuff: cuffPairs,
      sleeve: pairsIn(askedLengthMm - (cuffPairs * 200) / cuffGauge.rows, gauge),
      cap: capPairs,
    },
    cap,
    isTopDown,
    seam,
    endsSquare,
  };
}

/** A sleeve keeps so much of the arm at least, whatever is above it; common practice, no published source. */
const LEAST_OF_ARM = 2 / 3;

/** By the arm, or less where half the back and what lies above the underarm would carry it beyond the wrist; mm. */
function askedLength(
  { body, sleeve }: Design,
  armMm: number,
  { across, gauge }: PanelCounts,
  capPairs: number,
): number {
  if (!sleeve.endsAtWrist || sleeve.lengthMm !== undefined) return armMm;
  // a seam takes a stitch
  const above = ((across / 2 - 1) * 100) / gauge.stitches + (capPairs * 200) / gauge.rows;
  return Math.min(armMm, Math.max(LEAST_OF_ARM * armMm, body.napeToWrist - above));
}

/** a cuff may be so much wider than the wrist asks; common practice, no published source */
const MOST_WIDER = 1.25;

/** One row can at most make a stitch after each one: where the nearest count is too small for that, the least that is not. */
function fittedCuff(fabric: FabricName, wanted: number, low: number): number {
  const near = fitted(fabric, wanted);
  if (low - near < near) return near;
  const { above } = fitsSeamed(fabric, Math.ceil((low + 1) / 2));
  return above <= MOST_WIDER * wanted ? above : fitsSeamed(fabric, wanted).above;
}

/** Pairs of rows above the underarm. */
const pairsOfTop: Readonly<
  Record<SleeveTopName, (panels: PanelCounts, step: number, cap: SleeveCounts['cap']) => number>
> = {
  level: () => 0,
  // an indented armhole takes in as much of the sleeve's length as it is wide
  'let in': ({ gauge }, step) => pairsIn((step * 100) / gauge.stitches, gauge),
  cap: (_panels, _step, cap) => cap?.pairs ?? 0,
  line: ({ pairs }) => pairs.armhole,
};
