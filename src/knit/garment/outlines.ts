import type { Gauge } from '../gauge.ts';
import { type Curve, type Point, pointsOf } from '../shape/curve.ts';
import { capCurve, neckCurve, raglanCurve } from './curves.ts';
import type { Design } from './design.ts';
import { armholes } from './kinds/armholes.ts';
import { garmentKinds } from './kinds/garments.ts';
import { BACK_NECK, necks } from './kinds/necks.ts';
import { silhouetteFacts } from './kinds/silhouettes.ts';
import { sleeveShapeFacts } from './kinds/sleeve-shapes.ts';
import { type SleeveTopName, sleeveTops } from './kinds/sleeve-tops.ts';
import { openingLines } from './opening-lines.ts';
import type { PanelEdge } from './panel.ts';
import type { PanelCounts } from './panel-counts.ts';
import type { Panels } from './panels.ts';
import { shoulderHeight } from './sides.ts';
import type { Sleeve } from './sleeve.ts';
import type { SleeveCounts } from './sleeve-counts.ts';
import type { Targets } from './targets.ts';

/** A piece's closed outline, mm: x from the piece's centre line (of an opened front: the body's), y above the lower edge. */
export interface PieceOutline {
  readonly piece: string;
  readonly asked: readonly Point[];
  readonly made: readonly Point[];
  /** where it opens for a head, right side facing; not there where it does not */
  readonly openings?: readonly (readonly Point[])[];
}

const lifted = (points: readonly Point[], mm: number): Point[] => points.map(([x, y]) => [x, y + mm]);
const mirrored = (points: readonly Point[]): Point[] => points.map(([x, y]): Point => [-x, y]).reverse();

/** The half outline from the bottom to the top, then its mirror image back down. */
const both = (half: readonly Point[]): Point[] => [...half, ...mirrored(half)];

/** What was asked of a back or a front, on the right-hand side. */
function askedPanel(design: Design, t: Targets, which: 'back' | 'front'): Point[] {
  const { silhouette, neck } = design;
  const { toNeck, curve: armhole } = armholes[design.armhole];
  const depth = toNeck ? t.raglanDepth : t.armholeDepth;
  const underarmY = t.length - depth - t.shoulderDrop;
  const side: Point[] = [
    [t.hem / 2, 0],
    ...(silhouetteFacts[silhouette].hasWaist ? [[t.waist / 2, t.waistHeight] as const] : []),
  ];
  const arm = lifted(
    pointsOf(armhole(t.underarm / 2, t.underarmStep, t.across / 2, depth, design.underarmMm)),
    underarmY,
  );
  const neckDepth = which === 'back' ? t.backNeckDepth : t.neckDepth;
  const from = which === 'front' && garmentKinds[design.kind].open ? t.frontBand / 2 : 0;
  const curve = neckCurve(which === 'back' ? BACK_NECK : necks[neck.shape], from, t.neck / 2, neckDepth);
  const neckline = lifted(pointsOf(curve), t.length - neckDepth).reverse();
  const half = [...side, ...arm, ...(neckDepth > 0 ? neckline : [[t.neck / 2, t.length] as const])];
  return from > 0 || (which === 'front' && garmentKinds[design.kind].open)
    ? [...half, [from, neckDepth > 0 ? t.length - neckDepth : t.length], [from, 0]]
    : both(half);
}

interface AskedCap {
  readonly height: number;
  readonly step: number;
  readonly top: number;
  readonly isSquare: boolean;
}

function askedSleeve(design: Design, t: Targets, cap: AskedCap): Point[] {
  const { armhole, sleeve, cuff } = design;
  const wide = t.sleeveTop / 2;
  const { hasOwnCuff, widensAtOnce } = sleeveShapeFacts[sleeve.shape];
  const low = hasOwnCuff ? t.cuff / 2 : wide;
  const side: Point[] = [
    [low, 0],
    [low, cuff.heightMm],
    ...(widensAtOnce ? [[wide, cuff.heightMm] as const] : []),
    [wide, t.sleeve],
  ];
  const top = pointsOf(askedTops[armholes[armhole].sleeveTop](wide, cap));
  return both([...side, ...lifted(top, t.sleeve).filter(([x]) => x > 0)]);
}

const straightTop = (wide: number, { step, top, height }: AskedCap): Curve =>
  raglanCurve(wide, step, top / 2, height, 0);

/** What was asked above the underarm of a sleeve that ends so. */
const askedTops: Readonly<Record<SleeveTopName, (wide: number, cap: AskedCap) => Curve>> = {
  level: () => [],
  'let in': straightTop,
  cap: (wide, { step, top, height, isSquare }) => capCurve(wide, step, top / 2, height, 0, isSquare),
  line: straightTop,
};

/** The knitted half outline: the edge of every pair of rows, straight runs drawn through. */
function madeHalf(
  edges: readonly PanelEdge[],
  hem: { stitches: number; pairs: number; gauge: Gauge },
  gauge: Gauge,
): Point[] {
  const pairMm = 200 / gauge.rows;
  const hemMm = (hem.pairs * 200) / hem.gauge.rows;
  const points: Point[] = [];
  if (hem.pairs > 0) {
    const x = (hem.stitches * 50) / hem.gauge.stitches;
    points.push([x, 0], [x, hemMm]);
  }
  for (const edge of edges) {
    edge.at.forEach((at, pair) => {
      const y = hemMm + (edge.from + pair - hem.pairs) * pairMm;
      const x = (at * 100) / gauge.stitches;
      points.push([x, y], [x, y + pairMm]);
    });
  }
  return straightened(points);
}

function straightened(points: readonly Point[]): Point[] {
  return points.filter((point, i) => {
    const before = points[i - 1];
    const after = points[i + 1];
    if (!before || !after) return true;
    return !(before[0] === point[0] && after[0] === point[0]);
  });
}

/** The outline of every panel, as asked and as knitted. */
export function outlinesOf(
  design: Design,
  targets: Targets,
  counts: PanelCounts,
  panels: Panels,
  sleeve: { readonly counts: SleeveCounts; readonly knitted: Sleeve } | undefined,
): readonly PieceOutline[] {
  const list: PieceOutline[] = [
    {
      piece: 'Back',
      asked: askedPanel(design, targets, 'back'),
      made: madePanel(design, counts, panels, 'back'),
      ...openingsOf(design, counts, panels, 'back'),
    },
    {
      piece: 'Front',
      asked: askedPanel(design, targets, 'front'),
      made: madePanel(design, counts, panels, 'front'),
      ...openingsOf(design, counts, panels, 'front'),
    },
  ];
  if (sleeve) list.push(sleeveOutline(design, targets, sleeve));
  return list;
}

function openingsOf(
  design: Design,
  counts: PanelCounts,
  panels: Panels,
  which: 'back' | 'front',
): Pick<PieceOutline, 'openings'> {
  const { pairs, gauge, hemGauge } = counts;
  const hemMm = (pairs.hem * 200) / hemGauge.rows;
  const pairMm = 200 / gauge.rows;
  const top = hemMm + (panels.sides.pairs - pairs.hem) * pairMm;
  const shoulder = shoulderPoints(design, counts, top, [100 / gauge.stitches, pairMm]);
  const openings = openingLines({ design, counts, panels, which, shoulder, hemMm });
  return openings.length === 0 ? {} : { openings };
}

function madePanel(design: Design, counts: PanelCounts, panels: Panels, which: 'back' | 'front'): Point[] {
  const { gauge, hemGauge, pairs } = counts;
  const open = which === 'front' ? panels.open : undefined;
  const stitchMm = 100 / gauge.stitches;
  const pairMm = 200 / gauge.rows;
  const hemMm = (pairs.hem * 200) / hemGauge.rows;
  const gap = open ? (counts.underarm / 2 - open.underarm) * stitchMm : 0;
  const half = madeHalf(
    panels.sides.edges,
    { stitches: counts.hem, pairs: pairs.hem, gauge: hemGauge },
    gauge,
  );
  const top = hemMm + (panels.sides.pairs - pairs.hem) * pairMm;
  const shoulder = shoulderPoints(design, counts, top, [stitchMm, pairMm]);
  const neck = (which === 'back' ? panels.back : panels.front).neck?.edge;
  const neckline = neck
    ? straightened(
        neck.at.flatMap((at, pair): Point[] => {
          const y = hemMm + (neck.from + pair - pairs.hem) * pairMm;
          return [
            [at * stitchMm, y],
            [at * stitchMm, y + pairMm],
          ];
        }),
      ).reverse()
    : [[(counts.neck / 2) * stitchMm, top] as const];
  const outer = [...half, ...shoulder, ...neckline];
  const bottom = neck ? hemMm + (neck.from - pairs.hem) * pairMm : top;
  return open ? [...outer, [gap, bottom], [gap, 0]] : both(outer);
}

/** The steps in which a shoulder is bound off, from the arm to the neck. */
function shoulderPoints(
  design: Design,
  counts: PanelCounts,
  top: number,
  [stitchMm, pairMm]: readonly [number, number],
): Point[] {
  const points: Point[] = [];
  let x = (counts.across / 2) * stitchMm;
  counts.shoulder.forEach((stitches, i) => {
    const y = top - (counts.pairs.slope - shoulderHeight(design, counts, i)) * pairMm;
    points.push([x, y], [x - stitches * stitchMm, y]);
    x -= stitches * stitchMm;
  });
  return points;
}

function sleeveOutline(
  design: Design,
  targets: Targets,
  { counts, knitted }: { readonly counts: SleeveCounts; readonly knitted: Sleeve },
): PieceOutline {
  const { gauge, cuffGauge, pairs, step, top } = counts;
  const stitchMm = 100 / gauge.stitches;
  const height = counts.cap?.heightMm ?? (pairs.cap * 200) / gauge.rows;
  const { sewnFlat: flat } = sleeveTops[armholes[design.armhole].sleeveTop];
  const cap = {
    height,
    step: flat ? 0 : step * stitchMm,
    top: flat ? 2 * targets.armholeDepth : top * stitchMm,
    isSquare: counts.endsSquare,
  };
  const hem = { stitches: counts.cuff, pairs: pairs.cuff, gauge: cuffGauge };
  return {
    piece: 'Sleeve',
    asked: askedSleeve(design, targets, cap),
    made: both(madeHalf(knitted.edges, hem, gauge)),
  };
}
