import { type Fault, fault } from '../fault.ts';
import { LEAST_PAIRS } from './cap.ts';
import { RAGLAN_TIP } from './closed-panel.ts';
import type { Design } from './design.ts';
import { armholes } from './kinds/armholes.ts';
import { garmentKinds } from './kinds/garments.ts';
import { silhouetteFacts } from './kinds/silhouettes.ts';
import type { SleeveTopName } from './kinds/sleeve-tops.ts';
import { openingPairs } from './neck-opening.ts';
import { frontNeckStitches } from './open-front.ts';
import type { PanelEdge } from './panel.ts';
import { type PanelCounts, pairsToTop } from './panel-counts.ts';
import type { SleeveCounts } from './sleeve-counts.ts';
import type { Targets } from './targets.ts';

/** Why back and front cannot be knitted at all; each at the field that would mend it. */
export function impossiblePanels(design: Design, targets: Targets, counts: PanelCounts): Fault[] {
  const { pairs, underarm, across, neck, gauge } = counts;
  const mm = (stitches: number): number => Math.round((stitches * 100) / gauge.stitches);
  const faults: Fault[] = [];
  const no = (found: Fault): void => {
    faults.push(found);
  };
  if (underarm < 4 || counts.low < 2) {
    no(fault('too few stitches', { stitches: underarm }, { field: 'body.chest' }));
  }
  if (neck < 1) no(fault('no neck', {}, { field: 'neck.widthMm' }));
  const { toNeck } = armholes[design.armhole];
  if (toNeck && !garmentKinds[design.kind].sleeves)
    no(fault('raglan without sleeves', {}, { field: 'armhole' }));
  if (toNeck) faults.push(...impossibleRaglan(counts));
  else {
    if (across > underarm) {
      no(
        fault(
          'back wider than chest',
          { acrossMm: mm(across), underarmMm: mm(underarm) },
          { field: 'body.crossBack' },
        ),
      );
    } else if (pairs.armhole >= 2 && (underarm - across) / 2 > 3 * pairs.armhole) {
      no(fault('armhole too shallow', { rows: 2 * pairs.armhole }, { field: 'body.armholeDepth' }));
    }
    if (neck > across - 4) {
      no(fault('neck too wide', { neckMm: mm(neck), acrossMm: mm(across) }, { field: 'neck.widthMm' }));
    }
  }
  if (garmentKinds[design.kind].open) {
    const half = frontNeckStitches(targets, counts);
    if (half < (toNeck ? RAGLAN_TIP + 1 : 1)) {
      no(
        fault(
          'band wider than neck',
          { bandMm: targets.frontBand, neckMm: mm(neck) },
          { field: 'frontBand.heightMm' },
        ),
      );
    }
  }
  if (pairs.armhole < 2)
    no(fault('armhole too shallow', { rows: 2 * pairs.armhole }, { field: 'body.armholeDepth' }));
  const most = pairsToTop(counts) - pairs.hem - 1;
  if (pairs.side < 2) {
    no(
      fault(
        'too short',
        { lengthMm: Math.round(targets.length), armholeMm: Math.round(targets.armholeDepth) },
        { field: 'lengthMm' },
      ),
    );
  } else if (
    pairs.neck + openingPairs(design, counts, 'front') > most ||
    pairs.backNeck + openingPairs(design, counts, 'back') > most
  ) {
    no(fault('neck too deep', { mostMm: Math.floor((most * 200) / gauge.rows) }, { field: 'neck.depthMm' }));
  } else if (
    silhouetteFacts[design.silhouette].hasWaist &&
    (pairs.waist < 2 || pairs.side - pairs.waist < 2)
  ) {
    no(fault('waist outside the side', { waistMm: Math.round(targets.waistHeight) }, { field: 'lengthMm' }));
  }
  return faults;
}

/** Stitches of the neck that the raglan lines of back or front may leave at the least; common practice, no published source. */
const LEAST_RAGLAN_NECK = 6;

function impossibleRaglan({ underarm, neck, step, pairs }: PanelCounts): Fault[] {
  const off = underarm / 2 - step - neck / 2;
  const field = 'neck.widthMm';
  if (neck < LEAST_RAGLAN_NECK)
    return [
      fault('raglan neck too narrow', { neckStitches: neck, leastStitches: LEAST_RAGLAN_NECK }, { field }),
    ];
  if (off < 1)
    return [fault('raglan neck too wide', { neckStitches: neck, underarmStitches: underarm }, { field })];
  return off > 2 * (pairs.armhole - 1) ? [tooSteep('body.armholeDepth', off, pairs.armhole - 1)] : [];
}

/** An edge that would have to lose or gain more than a stitch a row. */
const tooSteep = (field: string, stitches: number, pairs: number): Fault =>
  fault('more shapings than rows', { stitches, rows: 2 * pairs }, { field });

/** Slants that no row could work one by one: their steps came out as groups. */
export function impossibleSlants(edges: readonly PanelEdge[]): Fault[] {
  return edges.flatMap((edge) => {
    if (edge.name !== 'side' && edge.name !== 'sleeve') return [];
    if (edge.steps.every((step) => step.as === 'single')) return [];
    const stitches = edge.steps.reduce((sum, step) => sum + Math.abs(step.by), 0);
    return [tooSteep(edge.name === 'side' ? 'silhouette' : 'sleeve.shape', stitches, edge.at.length)];
  });
}

export function impossibleSleeve(design: Design, counts: SleeveCounts): Fault[] {
  const { low, cuff, pairs } = counts;
  if (pairs.sleeve < 2) {
    return [fault('sleeve too short', {}, { field: 'sleeve.lengthMm' })];
  }
  if (low < 2 || cuff < 2)
    return [fault('too few stitches', { stitches: Math.min(low, cuff) }, { field: 'body.wrist' })];
  if (low - cuff >= cuff || cuff - low > low / 2) {
    return [
      fault(
        'cuff too narrow to widen',
        { cuffStitches: cuff, sleeveStitches: low },
        { field: 'sleeve.shape' },
      ),
    ];
  }
  return impossibleTops[armholes[design.armhole].sleeveTop](counts);
}

/** Why no sleeve can end so. */
const impossibleTops: Readonly<Record<SleeveTopName, (counts: SleeveCounts) => Fault[]>> = {
  level: () => [],
  'let in': () => [],
  cap: ({ cap, pairs, wide, gauge }) =>
    cap && pairs.cap >= LEAST_PAIRS
      ? []
      : [
          fault(
            'cap does not fit',
            { widthMm: Math.round((wide * 100) / gauge.stitches) },
            { field: 'ease.upperArm' },
          ),
        ],
  line: ({ wide, step, top, pairs }) => {
    const off = wide / 2 - step - top / 2;
    if (off < 1) return [fault('sleeve too narrow', { stitches: wide }, { field: 'ease.upperArm' })];
    return off > 2 * (pairs.cap - 1) ? [tooSteep('ease.upperArm', off, pairs.cap - 1)] : [];
  },
};
