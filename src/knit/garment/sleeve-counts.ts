import { type FabricName, fitsSeamed } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import { sewnMm } from '../making-up/seam-stitch.ts';
import { type Cap, type CapWish, capFor, capSeam, knitCap } from './cap.ts';
import { type Design, isSince } from './design.ts';
import { designGauge } from './gauges.ts';
import { armholes } from './kinds/armholes.ts';
import { sleeveShapeFacts } from './kinds/sleeve-shapes.ts';
import { type SleeveTopName, sleeveTops } from './kinds/sleeve-tops.ts';
import type { PanelEdge } from './panel.ts';
import { type PanelCounts, seamStitches } from './panel-counts.ts';
import type { Sides } from './sides.ts';
import type { Targets } from './targets.ts';
import { fitted, type Parity, pairsIn, sameParity, stitchesIn } from './whole-numbers.ts';

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
  const lowMm = beginsNarrow ? targets.cuff : askedWidthMm;
  const own = seamStitches(design);
  // the sleeve's own seam takes a stitch of either end of a straight top, those of a raglan of its top in the neck; the first edition had none for them
  const isSecond = isSince(2, design);
  const seam = flat && !isSecond ? 0 : own;
  const topStitches =
    Math.max(LEAST_TOP, stitchesIn(design.sleeve.capTopMm ?? topMm(askedWidthMm), gauge)) +
    (isSecond && armholes[design.armhole].toNeck ? 2 * own : 0);
  const lowSeam = beginsNarrow ? own : seam;
  const asked = [
    stitchesIn(askedWidthMm, gauge) + 2 * seam,
    topStitches,
    stitchesIn(lowMm, gauge) + 2 * lowSeam,
  ];
  const cuffPairs = pairsIn(design.cuff.heightMm, cuffGauge, 1);
  const armhole = sides.edges[sides.edges.length - 1];
  const first = armhole?.steps[0];
  const step = first?.pair === 0 ? -first.by : 0;
  const isTopDown = design.sleeve.direction === 'top down';
  const endsSquare = design.sleeve.capTopMm !== undefined;
  const laid = (parity?: Parity): Laid => {
    const [wide = 0, top = 0, low = 0] = sameParity(asked, parity);
    const wanted = widensAtOnce ? Math.round(stitchesIn(targets.cuff, gauge)) + 2 * own : low;
    const cuff = cuffPairs > 0 ? fittedCuff(design.cuff.fabric, wanted, low) : low;
    if (end !== 'cap' || !armhole) return { wide, top, low, cuff };
    const wish = { gauge, wide, step, top, isTopDown, endsSquare };
    const cap = capFor(wish, armhole, design.sleeve.capEase);
    return cap
      ? { wide, top, low, cuff, cap, miss: missOf(wish, cap, armhole, design.sleeve.capEase, topStitches) }
      : { wide, top, low, cuff };
  };
  const { wide, top, low, cuff, cap } = withoutLoss(laid, design.cuff.fabric, isSecond ? NOW : AT_FIRST);
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

/** A sleeve in whole stitches, all even or all odd but for its cuff. */
interface Laid {
  readonly wide: number;
  readonly top: number;
  readonly low: number;
  readonly cuff: number;
  readonly cap?: Cap;
  readonly miss?: CapMiss;
}

/** How far a cap is from what was asked: rows of its edge, stitches of its top. */
interface CapMiss {
  readonly rows: number;
  readonly stitches: number;
}

function missOf(wish: CapWish, cap: Cap, armhole: PanelEdge, ease: number, topStitches: number): CapMiss {
  const sewn = capSeam(wish, cap.pairs, armhole);
  const top = 2 * (knitCap(wish, cap.pairs).knitted.at.at(-1) ?? 0);
  return {
    rows: (Math.abs(sewn.cap - sewn.armhole * (1 + ease / 100)) * wish.gauge.rows) / 100,
    stitches: Math.abs(top - topStitches),
  };
}

/** What a cuff may cost that loses no stitch above it; common practice, no published source. */
interface MayCost {
  /** how far its cap may be off at the most for the sake of an even count */
  readonly cap: CapMiss;
  /** the share of itself to which a cuff may be narrower: a rib stretches */
  readonly cuff: number;
}
const AT_FIRST: MayCost = { cap: { rows: 1.1, stitches: 4 }, cuff: 0.85 };
/** In the second edition, for the thickest yarn: two rows of a cap are still within the row and the stitch that may be sewn together. */
const NOW: MayCost = { cap: { rows: 2, stitches: 4 }, cuff: 0.75 };

/**
 * A cuff's rib is even, mostly: over an odd sleeve one stitch more would be lost above it, and won again in the rows that
 * widen. Then the whole sleeve is even too, where its cap is as good; else the cuff is a repeat narrower, and its stitches are
 * increased.
 */
function withoutLoss(laid: (parity?: Parity) => Laid, fabric: FabricName, may: MayCost): Laid {
  const free = laid();
  if (free.cuff !== free.low + 1 || free.low >= free.wide) return free;
  const other = laid('even');
  const isAsGood = (of: keyof CapMiss): boolean =>
    (other.miss?.[of] ?? 0) <= Math.max(free.miss?.[of] ?? 0, may.cap[of]);
  const hasCap = (free.cap === undefined) === (other.cap === undefined);
  if (hasCap && isAsGood('rows') && isAsGood('stitches')) return other;
  const { below } = fitsSeamed(fabric, free.low);
  return below >= may.cuff * free.cuff ? { ...free, cuff: below } : free;
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
  const above = sewnMm(across, 2, 100 / gauge.stitches) / 2 + (capPairs * 200) / gauge.rows;
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
