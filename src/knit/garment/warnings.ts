import { fits } from '../fabric.ts';
import { type Fault, fault } from '../fault.ts';
import { buttonholePlaces } from './buttonholes.ts';
import type { Design } from './design.ts';
import { usualEase } from './ease.ts';
import { type HeadFit, headWarning } from './head-through-neck.ts';
import type { HolesWish } from './holes-wish.ts';
import { armholes } from './kinds/armholes.ts';
import { garmentKinds } from './kinds/garments.ts';
import { silhouetteFacts } from './kinds/silhouettes.ts';
import { sleeveShapeFacts } from './kinds/sleeve-shapes.ts';
import { sleeveTops } from './kinds/sleeve-tops.ts';
import type { PanelEdge } from './panel.ts';
import type { PanelCounts } from './panel-counts.ts';
import type { SleeveCounts } from './sleeve-counts.ts';
import type { Targets } from './targets.ts';

/** A caution, with the field it speaks of; she may overrule it. */
export type Warning = Fault & { readonly overruled: boolean };

export interface Warned {
  readonly design: Design;
  readonly targets: Targets;
  readonly counts: PanelCounts;
  readonly head: HeadFit | undefined;
  readonly edges: readonly PanelEdge[];
  readonly sleeve: SleeveCounts | undefined;
  /** the button holes as they are wished for */
  readonly holes: HolesWish | undefined;
}

export function warningsOf(warned: Warned): readonly Warning[] {
  const all = [
    ...headWarning(warned.head),
    ...easeWarnings(warned),
    ...slantWarnings(warned),
    ...sleeveWarnings(warned),
    ...multipleWarnings(warned),
    ...shapeWarnings(warned),
  ];
  return all.map((w) => ({ ...w, overruled: warned.design.overruled.includes(w.code) }));
}

function easeWarnings({ design }: Warned): Fault[] {
  const { sleeves } = garmentKinds[design.kind];
  return (['chest', 'hip', 'upperArm', 'wrist'] as const).flatMap((name) => {
    if (name === 'hip' && !silhouetteFacts[design.silhouette].followsHip) return [];
    if ((name === 'upperArm' || name === 'wrist') && !sleeves) return [];
    const [least, most] = usualEase[name];
    const ease = design.ease[name];
    if (ease >= least && ease <= most) return [];
    return [fault('unusual ease', { easeMm: ease, leastMm: least, mostMm: most }, { field: `ease.${name}` })];
  });
}

/** More shapings than RS rows: every row has to be shaped, some on the WS. */
function slantWarnings({ edges }: Warned): Fault[] {
  return edges.flatMap((edge) => {
    if (edge.name !== 'side' && edge.name !== 'sleeve') return [];
    if (edge.steps.every((step) => Math.abs(step.by) === 1)) return [];
    const stitches = edge.steps.reduce((sum, step) => sum + Math.abs(step.by), 0);
    return [
      fault(
        'more shapings than right side rows',
        { stitches, rows: 2 * edge.at.length },
        { field: edge.name === 'side' ? 'silhouette' : 'sleeve.shape' },
      ),
    ];
  });
}

/** A cap between these shares of the armhole's depth sits well; common practice, no published source. */
const CAP_SHARE = { least: 0.4, most: 0.9 } as const;

function sleeveWarnings({ design, targets, counts, sleeve }: Warned): Fault[] {
  if (!sleeve) return [];
  const mm = (stitches: number): number => Math.round((stitches * 100) / counts.gauge.stitches);
  const list: Fault[] = [];
  const depth = Math.round((counts.pairs.armhole * 200) / counts.gauge.rows);
  if (sleeve.cap) {
    const cap = Math.round(sleeve.cap.heightMm);
    if (cap < CAP_SHARE.least * depth || cap > CAP_SHARE.most * depth) {
      list.push(
        fault(
          'cap out of proportion',
          { capMm: cap, depthMm: depth, widthMm: mm(sleeve.wide) },
          { field: 'ease.upperArm' },
        ),
      );
    }
  }
  const arm = design.body.upperArm;
  if (
    sleeveTops[armholes[design.armhole].sleeveTop].sewnFlat &&
    mm(sleeve.wide) < arm + Math.min(0, design.ease.upperArm)
  ) {
    list.push(
      fault(
        'sleeve top narrower than the arm',
        { widthMm: mm(sleeve.wide), armMm: Math.round(arm) },
        { field: 'body.armholeDepth' },
      ),
    );
  }
  if (targets.cuff > targets.sleeveTop && sleeveShapeFacts[design.sleeve.shape].hasOwnCuff) {
    list.push(
      fault(
        'cuff wider than sleeve',
        { cuffMm: Math.round(targets.cuff), topMm: Math.round(targets.sleeveTop) },
        { field: 'ease.wrist' },
      ),
    );
  }
  return list;
}

/** Counts that a rib's repeat does not take, where they were not made to fit, with the nearest that do. */
function multipleWarnings({ design, counts }: Warned): Fault[] {
  if (design.hem.count === 'fitted' || counts.pairs.hem === 0) return [];
  const near = fits(design.hem.fabric, counts.hem);
  if (near.fits) return [];
  return [
    fault(
      'rib multiple',
      {
        stitches: counts.hem,
        fabric: design.hem.fabric,
        belowStitches: near.below,
        aboveStitches: near.above,
      },
      { field: 'hem.count' },
    ),
  ];
}

function shapeWarnings({ design, targets, counts, holes }: Warned): Fault[] {
  const list: Fault[] = [];
  if (targets.neckDepth < targets.backNeckDepth) {
    list.push(
      fault(
        'front neck above back neck',
        { frontMm: Math.round(targets.neckDepth), backMm: Math.round(targets.backNeckDepth) },
        { field: 'neck.depthMm' },
      ),
    );
  }
  if (
    !silhouetteFacts[design.silhouette].followsHip &&
    targets.hem < design.body.hip / 2 &&
    design.lengthMm > design.body.napeToWaist + HIP_BELOW_WAIST_MM
  ) {
    list.push(
      fault(
        'narrow at the hip',
        { hipMm: Math.round(design.body.hip), hemMm: Math.round(2 * targets.hem) },
        { field: 'silhouette' },
      ),
    );
  }
  if (holes !== undefined && !buttonholePlaces(holes)) {
    const figures = { buttons: holes.buttons, stitches: holes.over };
    list.push(fault('too many buttons', figures, { field: 'frontBand.buttons' }));
  }
  const [outer] = counts.shoulder;
  if (outer !== undefined && outer < 2) {
    list.push(
      fault(
        'narrow shoulder',
        { stitches: counts.shoulder.reduce((sum, n) => sum + n, 0) },
        { field: 'neck.widthMm' },
      ),
    );
  }
  return list;
}
/** where hips are fullest, below the waist; common practice, no published source */
const HIP_BELOW_WAIST_MM = 180;
