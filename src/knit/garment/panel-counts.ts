import type { Gauge } from '../gauge.ts';
import { SEAM_STITCH } from '../making-up/seam-stitch.ts';
import { type Design, isSince } from './design.ts';
import { designGauge } from './gauges.ts';
import { armholes } from './kinds/armholes.ts';
import { shoulderFacts } from './kinds/shoulders.ts';
import { silhouetteFacts } from './kinds/silhouettes.ts';
import { CLOSING_PAIRS } from './short-rows.ts';
import type { Targets } from './targets.ts';
import { fitted, groupsOf, pairsIn, parityOf, sameParity, stitchesIn } from './whole-numbers.ts';

/** Back and front in whole stitches and pairs of rows; a front opens at the middle by `frontGap`. */
export interface PanelCounts {
  readonly gauge: Gauge;
  readonly hemGauge: Gauge;
  /** stitches of the back in its rib */
  readonly hem: number;
  /** stitches above the hem */
  readonly low: number;
  readonly waist: number;
  readonly underarm: number;
  readonly across: number;
  readonly neck: number;
  /** bound off at each underarm by a raglan or an indented armhole */
  readonly step: number;
  /** stitches that each side has for its seam */
  readonly seam: number;
  /** of one shoulder, in the groups in which it is bound off, the outer one first; none for a raglan */
  readonly shoulder: readonly number[];
  readonly pairs: {
    readonly hem: number;
    /** from the hem to the underarm */
    readonly side: number;
    /** from the hem to the waist */
    readonly waist: number;
    /** from the underarm to the first shoulder group, or to the end of a raglan */
    readonly armhole: number;
    /** between the first shoulder group and the last */
    readonly slope: number;
    readonly neck: number;
    readonly backNeck: number;
  };
}

export const pairsToTop = ({ pairs }: PanelCounts): number =>
  pairs.hem + pairs.side + pairs.armhole + pairs.slope;

/** Stitches that each sewn edge of a piece has for its seam. */
export const seamStitches = ({ seamStitch = false }: Pick<Design, 'seamStitch'>): number =>
  seamStitch ? SEAM_STITCH : 0;

/** Whole numbers for the panels. Lengths carry their rounding on, so that the whole is never more than a row off. */
export function panelCounts(design: Design, targets: Targets): PanelCounts {
  const { gauge } = designGauge(design, design.fabric);
  const hemGauge = designGauge(design, design.hem.fabric).gauge;
  const seams = 2 * seamStitches(design);
  const widths = [targets.underarm, targets.across, targets.neck, targets.hem, targets.waist];
  const { followsHip, hasWaist } = silhouetteFacts[design.silhouette];
  const more = [seams, armholes[design.armhole].toNeck ? 0 : seams, 0, seams, seams];
  const used = hasWaist ? 5 : followsHip ? 4 : 3;
  const counts = sameParity(
    widths.slice(0, used).map((mm, i) => stitchesIn(mm, gauge) + (more[i] ?? 0)),
    design.hem.heightMm > 0 && design.hem.count === 'fitted' ? parityOf(design.hem.fabric) : undefined,
  );
  const [underarm = 0, across = 0, neck = 0, low = underarm, waist = low] = counts;
  const { toNeck, isIndented } = armholes[design.armhole];
  const step = isIndented
    ? (underarm - across) / 2
    : Math.max(0, Math.round(stitchesIn(targets.underarmStep, gauge)));
  const shoulder = (across - neck) / 2;
  const pairs = pairsOf(design, targets, gauge, hemGauge);
  return {
    gauge,
    hemGauge,
    hem: pairs.hem === 0 || design.hem.count === 'as body' ? low : fitted(design.hem.fabric, low),
    low,
    waist,
    underarm,
    across,
    neck,
    step,
    seam: seamStitches(design),
    shoulder: toNeck
      ? []
      : shoulder > 0
        ? groupsOf(shoulder, Math.min(shoulder, mostSteps(design), stepsOver(design, pairs.slope)))
        : [shoulder],
    pairs,
  };
}

/**
 * Steps of a shoulder at the most: printed leaflets have two (Patons & Baldwins 45632; American Thread, Star Book
 * No. 201), three or four are common practice.
 */
const MOST_STEPS = 4;

/**
 * In the second edition short rows turn in every pair of rows of the slope, each time at a new stitch: a pair without a
 * turn of its own would be turned where the one before was. Steps of one size, the larger ones first where they do not come
 * out even: common practice, no published source.
 */
const mostSteps = (design: Design): number =>
  isSince(2, design) && shoulderFacts(design.shoulder).turns ? Number.POSITIVE_INFINITY : MOST_STEPS;

/** The last step has no rows of its own; short rows need the last pair to close their gaps. */
const stepsOver = ({ shoulder }: Design, slope: number): number =>
  shoulderFacts(shoulder).turns ? Math.max(1, slope - CLOSING_PAIRS + 1) : slope + 1;

function pairsOf(design: Design, targets: Targets, gauge: Gauge, hemGauge: Gauge): PanelCounts['pairs'] {
  const pairMm = 200 / gauge.rows;
  const hem = pairsIn(design.hem.heightMm, hemGauge, 1);
  const hemMm = (hem * 200) / hemGauge.rows;
  const { toNeck } = armholes[design.armhole];
  const armhole = pairsIn(toNeck ? targets.raglanDepth : targets.armholeDepth, gauge);
  const slope =
    toNeck || targets.shoulderDrop === 0
      ? 0
      : Math.max(1, pairsIn(targets.armholeDepth + targets.shoulderDrop, gauge) - armhole);
  const side = Math.round((targets.length - hemMm) / pairMm) - armhole - slope;
  return {
    hem,
    side,
    waist: Math.round((targets.waistHeight - hemMm) / pairMm),
    armhole,
    slope,
    neck: pairsIn(targets.neckDepth, gauge),
    backNeck: pairsIn(targets.backNeckDepth, gauge),
  };
}
