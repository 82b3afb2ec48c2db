import { type Fault, fault } from '../fault.ts';
import { RAGLAN_TIP } from './closed-panel.ts';
import { type Design, garmentKinds } from './design.ts';
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
  const no = (code: string, field: string, sentence: string, figures: Record<string, number>): void => {
    faults.push(fault(code, sentence, figures, { field }));
  };
  if (underarm < 4 || counts.low < 2) {
    no(
      'too few stitches',
      'body.chest',
      'The chest comes to {stitches} stitches; use a finer yarn or a larger measure.',
      { stitches: underarm },
    );
  }
  if (neck < 1)
    no('no neck', 'neck.widthMm', 'The neck comes to no stitches; make it wider.', { neck: targets.neck });
  if (design.armhole === 'raglan') faults.push(...impossibleRaglan(counts));
  else {
    if (across > underarm) {
      no(
        'back wider than chest',
        'body.crossBack',
        'Across the back ({across} mm) is wider than the panel at the underarm ({underarm} mm); take a drop shoulder or more chest ease.',
        { across: mm(across), underarm: mm(underarm) },
      );
    } else if (across < underarm && pairs.armhole > 0 && (underarm - across) / 2 > 3 * pairs.armhole) {
      no(
        'armhole too shallow',
        'body.armholeDepth',
        'The armhole has {rows} rows for {stitches} stitches to be taken off at each edge; make it deeper.',
        { rows: 2 * pairs.armhole, stitches: (underarm - across) / 2 },
      );
    }
    if (neck > across - 4) {
      no(
        'neck too wide',
        'neck.widthMm',
        'A neck {neck} mm wide leaves nothing of the {across} mm between the armholes for the shoulders.',
        { neck: mm(neck), across: mm(across) },
      );
    }
  }
  if (garmentKinds[design.kind].open) {
    const half = frontNeckStitches(targets, counts);
    if (half < (design.armhole === 'raglan' ? RAGLAN_TIP + 1 : 1)) {
      no(
        'band wider than neck',
        'frontBand.heightMm',
        'A front band {band} mm wide leaves nothing of a neck {neck} mm wide; take a narrower band or a wider neck.',
        { band: targets.frontBand, neck: mm(neck) },
      );
    }
  }
  if (pairs.armhole < 2)
    no('armhole too shallow', 'body.armholeDepth', 'The armhole has only {rows} rows; make it deeper.', {
      rows: 2 * pairs.armhole,
      stitches: 0,
    });
  const most = pairsToTop(counts) - pairs.hem - 1;
  if (pairs.side < 2) {
    no(
      'too short',
      'lengthMm',
      'Nothing is left between the hem and the underarm: {length} mm in all, {armhole} mm of them armhole. Make it longer.',
      { length: Math.round(targets.length), armhole: Math.round(targets.armholeDepth) },
    );
  } else if (pairs.neck > most || pairs.backNeck > most) {
    no(
      'neck too deep',
      'neck.depthMm',
      'The neck reaches into the hem; the deepest it can be is {most} mm.',
      { most: Math.floor((most * 200) / gauge.rows) },
    );
  } else if (design.silhouette === 'waist' && (pairs.waist < 2 || pairs.side - pairs.waist < 2)) {
    no(
      'waist outside the side',
      'lengthMm',
      'The waist lies {waist} mm above the lower edge, not between hem and underarm; change the length, or take a straight body.',
      { waist: Math.round(targets.waistHeight) },
    );
  }
  return faults;
}

function impossibleRaglan({ underarm, neck, step, pairs }: PanelCounts): Fault[] {
  const off = underarm / 2 - step - neck / 2;
  if (off < 1 || neck < 6) {
    return [
      fault(
        'neck too wide',
        'Neck and underarm leave no stitches for the raglan; make the neck narrower or the underarm smaller.',
        { neck, stitches: underarm },
        { field: 'neck.widthMm' },
      ),
    ];
  }
  return off > 2 * (pairs.armhole - 1) ? [tooSteep('body.armholeDepth', off, pairs.armhole - 1)] : [];
}

/** An edge that would have to lose or gain more than a stitch a row. */
const tooSteep = (field: string, stitches: number, pairs: number): Fault =>
  fault(
    'more shapings than rows',
    '{stitches} stitches at each edge do not fit into {rows} rows, not even with one on every row; give them more rows or fewer stitches.',
    { stitches, rows: 2 * pairs },
    { field },
  );

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
  const { wide, low, cuff, top, step, pairs, cap } = counts;
  if (pairs.sleeve < 2) {
    return [
      fault(
        'sleeve too short',
        'Nothing is left of the sleeve above its cuff; make it longer.',
        { rows: 2 * pairs.sleeve },
        { field: 'sleeve.lengthMm' },
      ),
    ];
  }
  if (low < 2 || cuff < 2)
    return [
      fault(
        'too few stitches',
        'The cuff comes to {stitches} stitches; make it wider.',
        { stitches: Math.min(low, cuff) },
        { field: 'body.wrist' },
      ),
    ];
  if (low - cuff >= cuff || cuff - low > low / 2) {
    return [
      fault(
        'too many for one row',
        'The row above the cuff would have to go from {from} stitches to {to}; taper the sleeve, or make the cuff wider.',
        { from: cuff, to: low },
        { field: 'sleeve.shape' },
      ),
    ];
  }
  if (design.armhole === 'set-in' && (!cap || pairs.cap < 3)) {
    return [
      fault(
        'cap does not fit',
        'A sleeve {width} mm wide is too wide for this armhole: even a flat cap is longer. Make the armhole deeper or the sleeve narrower.',
        { width: Math.round((wide * 100) / counts.gauge.stitches) },
        { field: 'ease.upperArm' },
      ),
    ];
  }
  const off = wide / 2 - step - top / 2;
  if (design.armhole === 'raglan') {
    if (off < 1)
      return [
        fault(
          'sleeve too narrow',
          'The sleeve has {stitches} stitches, too few for a raglan; make it wider or the underarm smaller.',
          { stitches: wide },
          { field: 'ease.upperArm' },
        ),
      ];
    if (off > 2 * (pairs.cap - 1)) return [tooSteep('ease.upperArm', off, pairs.cap - 1)];
  }
  return [];
}
