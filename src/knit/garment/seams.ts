import { type Match, match } from '../piece/match.ts';
import { halfCapMm, knittedMm, toleranceMm } from './cap.ts';
import type { Design } from './design.ts';
import type { PanelCounts } from './panel-counts.ts';
import type { Panels } from './panels.ts';
import { shoulderOf, sideRowsOf } from './seam-figures.ts';
import type { Sleeve } from './sleeve.ts';
import type { SleeveCounts } from './sleeve-counts.ts';

/** What the seams join: counted from the recipes, not from the wish behind them. */
export interface SeamFigures {
  readonly counts: PanelCounts;
  readonly panels: Panels;
  readonly sleeve: { readonly counts: SleeveCounts; readonly knitted: Sleeve } | undefined;
}

/** Every seam of the garment. */
export function seamsOf(design: Design, figures: SeamFigures): readonly Match[] {
  const { counts, panels } = figures;
  const [back, front] = panels.recipes;
  const seams = [
    match({
      seam: 'side',
      unit: 'rows',
      first: { piece: 'Front', measure: sideRowsOf(front) },
      second: { piece: 'Back', measure: sideRowsOf(back) },
      tolerance: 0,
    }),
  ];
  if (design.armhole !== 'raglan') {
    seams.push(
      match({
        seam: 'shoulder',
        unit: 'stitches',
        first: { piece: 'Front', measure: frontShoulder(panels, counts) },
        second: {
          piece: 'Back',
          measure: shoulderOf(back, panels.back.neck ? 0 : counts.neck, panels.back.neck === undefined),
        },
        tolerance: 0,
      }),
    );
  }
  return figures.sleeve ? [...seams, ...sleeveSeams(design, figures, figures.sleeve)] : seams;
}

function sleeveSeams(
  design: Design,
  { counts, panels }: SeamFigures,
  sleeve: NonNullable<SeamFigures['sleeve']>,
): Match[] {
  const armhole = panels.sides.edges[panels.sides.edges.length - 1];
  const { gauge, pairs } = counts;
  const stitchMm = 100 / gauge.stitches;
  const rowMm = 100 / gauge.rows;
  const { wide, step } = sleeve.counts;
  switch (design.armhole) {
    case 'drop':
    case 'indented': {
      const top = { piece: 'Sleeve', measure: wide * stitchMm };
      const twice = { piece: 'Back', measure: 4 * pairs.armhole * rowMm };
      const seams = [match({ seam: 'armhole', unit: 'mm', first: top, second: twice, tolerance: stitchMm })];
      if (design.armhole === 'drop') return seams;
      const rows = { piece: 'Sleeve', measure: 2 * sleeve.counts.pairs.cap * rowMm };
      const indent = { piece: 'Back', measure: counts.step * stitchMm };
      return [
        ...seams,
        match({ seam: 'underarm', unit: 'mm', first: rows, second: indent, tolerance: 2 * rowMm }),
      ];
    }
    case 'raglan': {
      const first = { piece: 'Sleeve', measure: 2 * sleeve.counts.pairs.cap };
      const second = { piece: 'Back', measure: 2 * pairs.armhole };
      return [
        match({ seam: 'raglan', unit: 'rows', first, second, tolerance: 0 }),
        underarm(step, counts.step),
      ];
    }
    case 'set-in': {
      const first = { piece: 'Sleeve', measure: halfCapMm(sleeve.counts, sleeve.counts.pairs.cap) };
      const second = { piece: 'Back', measure: armhole ? knittedMm(armhole, armhole.at.length) : 0 };
      const ease = design.sleeve.capEase;
      const bodyStep = armhole?.steps[0]?.pair === 0 ? -armhole.steps[0].by : 0;
      return [
        match({ seam: 'armhole', unit: 'mm', first, second, ease, tolerance: toleranceMm(gauge) }),
        underarm(step, bodyStep),
      ];
    }
  }
}

const underarm = (sleeve: number, body: number): Match =>
  match({
    seam: 'underarm',
    unit: 'stitches',
    first: { piece: 'Sleeve', measure: sleeve },
    second: { piece: 'Back', measure: body },
    tolerance: 0,
  });

function frontShoulder({ recipes, open, front }: Panels, counts: PanelCounts): number {
  if (front.neck) return shoulderOf(recipes[1], 0, false);
  return shoulderOf(recipes[1], open ? open.neckStitches : counts.neck, open === undefined);
}
