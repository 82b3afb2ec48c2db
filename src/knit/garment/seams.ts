import { sewnMm } from '../making-up/seam-stitch.ts';
import { type Match, match } from '../piece/match.ts';
import { capSeam, toleranceMm } from './cap.ts';
import type { Design } from './design.ts';
import { armholes } from './kinds/armholes.ts';
import type { SleeveTopName } from './kinds/sleeve-tops.ts';
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
  const { toNeck, sleeveTop } = armholes[design.armhole];
  if (!toNeck) {
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
  const { sleeve } = figures;
  return sleeve ? [...seams, ...sleeveSeams[sleeveTop]({ ...figures, sleeve, design })] : seams;
}

interface SewnSleeve extends SeamFigures {
  readonly sleeve: NonNullable<SeamFigures['sleeve']>;
  readonly design: Design;
}

/** What is sewn where a sleeve of each kind meets its armhole. */
const sleeveSeams: Readonly<Record<SleeveTopName, (sewn: SewnSleeve) => Match[]>> = {
  level: (sewn) => [flatSeam(sewn)],
  'let in': (sewn) => {
    const { counts, sleeve } = sewn;
    const rowMm = 100 / counts.gauge.rows;
    const rows = { piece: 'Sleeve', measure: 2 * sleeve.counts.pairs.cap * rowMm };
    const indent = { piece: 'Back', measure: counts.step * (100 / counts.gauge.stitches) };
    return [
      flatSeam(sewn),
      match({ seam: 'underarm', unit: 'mm', first: rows, second: indent, tolerance: 2 * rowMm }),
    ];
  },
  line: ({ counts, sleeve }) => {
    const first = { piece: 'Sleeve', measure: 2 * sleeve.counts.pairs.cap };
    const second = { piece: 'Back', measure: 2 * counts.pairs.armhole };
    return [
      match({ seam: 'raglan', unit: 'rows', first, second, tolerance: 0 }),
      underarm(sleeve.counts.step, counts.step),
    ];
  },
  cap: ({ counts, panels, sleeve, design }) => {
    const armhole = panels.sides.edges[panels.sides.edges.length - 1];
    if (!armhole) return [];
    const sewn = capSeam(sleeve.counts, sleeve.counts.pairs.cap, armhole);
    const first = { piece: 'Sleeve', measure: sewn.cap };
    const second = { piece: 'Back', measure: sewn.armhole };
    const ease = design.sleeve.capEase;
    const bodyStep = armhole.steps[0]?.pair === 0 ? -armhole.steps[0].by : 0;
    const tolerance = toleranceMm(counts.gauge);
    return [
      match({ seam: 'armhole', unit: 'mm', first, second, ease, tolerance }),
      ...(sewn.underarm === undefined ? [] : [underarm(sewn.underarm, bodyStep)]),
    ];
  },
};

/** A level top along both rows' ends of an upright armhole. */
function flatSeam({ counts: { gauge, pairs }, sleeve }: SewnSleeve): Match {
  const stitchMm = 100 / gauge.stitches;
  const first = { piece: 'Sleeve', measure: sewnMm(sleeve.counts.wide, 2 * sleeve.counts.seam, stitchMm) };
  const second = { piece: 'Back', measure: 4 * pairs.armhole * (100 / gauge.rows) };
  return match({ seam: 'armhole', unit: 'mm', first, second, tolerance: stitchMm });
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
