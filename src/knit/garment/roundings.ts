import type { Gauge } from '../gauge.ts';
import { sewnMm } from '../making-up/seam-stitch.ts';
import type { Design } from './design.ts';
import { armholes } from './kinds/armholes.ts';
import { garmentKinds } from './kinds/garments.ts';
import { silhouetteFacts } from './kinds/silhouettes.ts';
import { sleeveShapeFacts } from './kinds/sleeve-shapes.ts';
import type { OpenFront } from './open-front.ts';
import { type PanelCounts, pairsToTop, seamStitches } from './panel-counts.ts';
import type { SleeveCounts } from './sleeve-counts.ts';
import type { Targets } from './targets.ts';

export type Measure =
  | 'width at the underarm'
  | 'width above the hem'
  | 'width at the waist'
  | 'width across the shoulders'
  | 'neck width'
  | 'front width at the underarm'
  | 'length'
  | 'hem height'
  | 'armhole depth'
  | 'raglan depth'
  | 'shoulder drop'
  | 'neck depth'
  | 'back neck depth'
  | 'cuff width'
  | 'cuff height'
  | 'sleeve width'
  | 'sleeve length';

/** '52.0 cm asked, 94 stitches make 51.9 cm', as figures. */
export interface Rounding {
  readonly piece: string;
  readonly measure: Measure;
  readonly askedMm: number;
  readonly madeMm: number;
  readonly count: number;
  readonly unit: 'stitches' | 'rows';
  /** mm that one stitch is wide or one row high */
  readonly unitMm: number;
}

/** Every figure asked for, with what whole stitches and rows make of it. */
export function roundingsOf(
  design: Design,
  targets: Targets,
  counts: PanelCounts,
  open: OpenFront | undefined,
  sleeve: SleeveCounts | undefined,
): readonly Rounding[] {
  const list = [...panelWidths(design, targets, counts), ...panelHeights(design, targets, counts)];
  if (open) {
    const asked = (targets.underarm - targets.frontBand) / 2;
    list.push(
      width('Front', 'front width at the underarm', asked, open.underarm, counts.gauge, seamStitches(design)),
    );
  }
  if (sleeve && garmentKinds[design.kind].sleeves) list.push(...sleeveRoundings(design, targets, sleeve));
  return list;
}

function panelWidths(design: Design, targets: Targets, counts: PanelCounts): Rounding[] {
  const { gauge } = counts;
  const seams = 2 * seamStitches(design);
  const list = [width('Back', 'width at the underarm', targets.underarm, counts.underarm, gauge, seams)];
  const { followsHip, hasWaist } = silhouetteFacts[design.silhouette];
  if (followsHip) list.push(width('Back', 'width above the hem', targets.hem, counts.low, gauge, seams));
  if (hasWaist) list.push(width('Back', 'width at the waist', targets.waist, counts.waist, gauge, seams));
  if (armholes[design.armhole].hasOwnAcross) {
    list.push(width('Back', 'width across the shoulders', targets.across, counts.across, gauge, seams));
  }
  list.push(width('Back', 'neck width', targets.neck, counts.neck, gauge));
  return list;
}

function panelHeights(design: Design, targets: Targets, counts: PanelCounts): Rounding[] {
  const { gauge, hemGauge, pairs } = counts;
  const list: Rounding[] = [];
  if (pairs.hem > 0) list.push(height('Back', 'hem height', design.hem.heightMm, pairs.hem, hemGauge));
  const hemMm = (pairs.hem * 200) / hemGauge.rows;
  const rows = 2 * (pairsToTop(counts) - pairs.hem);
  list.push({
    piece: 'Back',
    measure: 'length',
    askedMm: targets.length,
    madeMm: hemMm + (rows * 100) / gauge.rows,
    count: rows + 2 * pairs.hem,
    unit: 'rows',
    unitMm: 100 / gauge.rows,
  });
  if (armholes[design.armhole].toNeck)
    list.push(height('Back', 'raglan depth', targets.raglanDepth, pairs.armhole, gauge));
  else {
    list.push(height('Back', 'armhole depth', targets.armholeDepth, pairs.armhole, gauge));
    if (targets.shoulderDrop > 0)
      list.push(height('Back', 'shoulder drop', targets.shoulderDrop, pairs.slope, gauge));
  }
  if (targets.neckDepth > 0) list.push(height('Front', 'neck depth', targets.neckDepth, pairs.neck, gauge));
  if (targets.backNeckDepth > 0)
    list.push(height('Back', 'back neck depth', targets.backNeckDepth, pairs.backNeck, gauge));
  return list;
}

function sleeveRoundings(design: Design, targets: Targets, sleeve: SleeveCounts): Rounding[] {
  const { gauge, cuffGauge, pairs } = sleeve;
  const list: Rounding[] = [];
  if (sleeveShapeFacts[design.sleeve.shape].beginsNarrow)
    list.push(width('Sleeve', 'cuff width', targets.cuff, sleeve.low, gauge, 2 * seamStitches(design)));
  if (pairs.cuff > 0) list.push(height('Sleeve', 'cuff height', design.cuff.heightMm, pairs.cuff, cuffGauge));
  list.push(width('Sleeve', 'sleeve width', sleeve.askedWidthMm, sleeve.wide, gauge, 2 * sleeve.seam));
  list.push({
    piece: 'Sleeve',
    measure: 'sleeve length',
    askedMm: sleeve.askedLengthMm,
    madeMm: (pairs.cuff * 200) / cuffGauge.rows + (pairs.sleeve * 200) / gauge.rows,
    count: 2 * (pairs.cuff + pairs.sleeve),
    unit: 'rows',
    unitMm: 100 / gauge.rows,
  });
  return list;
}

/** @param edges of it that have a stitch for the seam, which is no part of the width asked for */
const width = (
  piece: string,
  measure: Measure,
  askedMm: number,
  stitches: number,
  gauge: Gauge,
  edges = 0,
): Rounding => ({
  piece,
  measure,
  askedMm,
  madeMm: sewnMm(stitches, edges, 100 / gauge.stitches),
  count: stitches,
  unit: 'stitches',
  unitMm: 100 / gauge.stitches,
});

const height = (piece: string, measure: Measure, askedMm: number, pairs: number, gauge: Gauge): Rounding => ({
  piece,
  measure,
  askedMm,
  madeMm: (pairs * 200) / gauge.rows,
  count: 2 * pairs,
  unit: 'rows',
  unitMm: 100 / gauge.rows,
});
