import { fabrics } from '../fabric.ts';
import type { PickUp, PieceRole, Recipe, Section } from '../piece/recipe.ts';
import { lengthOf } from '../shape/curve.ts';
import { buttonholeRows } from './buttonholes.ts';
import { type Border, type Design, garmentKinds } from './design.ts';
import { designGauge } from './gauges.ts';
import { type BandEdges, backPickUp, fittedPickUp, frontEdgeMm, neckSide, openNeckSide } from './pick-up.ts';
import { stitchesIn } from './whole-numbers.ts';

/** Every band of the garment, each a piece of its own. */
export function bandsOf(design: Design, edges: BandEdges): readonly Recipe[] {
  const { open, sleeves } = garmentKinds[design.kind];
  const bands: Recipe[] = [];
  const around = open && design.neck.shape === 'V' && design.frontBand.heightMm > 0;
  if (design.neckband.heightMm > 0 && !around) bands.push(neckband(design, edges));
  if (open && design.frontBand.heightMm > 0)
    bands.push(...(around ? [aroundBand(design, edges)] : frontBands(design, edges)));
  if (!sleeves && design.armholeBand.heightMm > 0) bands.push(armholeBand(design, edges));
  return bands;
}

function neckband(design: Design, edges: BandEdges): Recipe {
  const { open } = garmentKinds[design.kind];
  const { front, counts, sleeveTop } = edges;
  const isV = design.neck.shape === 'V';
  const start = open ? edges.frontHalf : (counts.neck % 2) / 2;
  const side = front
    ? open
      ? openNeckSide(front, counts)
      : neckSide(front, counts, start)
    : Math.max(1, Math.floor(counts.neck / 2));
  const mitred = isV && !open && front !== undefined;
  const sideOfV = mitred ? knitColumn(design, side) : side;
  const back = backPickUp(edges);
  const top = (which: string): PickUp[] =>
    sleeveTop > 0 ? [{ along: `${which} sleeve top`, stitches: sleeveTop }] : [];
  const middle: PickUp[] = mitred
    ? [{ along: 'point of the V', stitches: 1 }]
    : !open && front && front.middle > 0
      ? [{ along: 'middle of the front neck', stitches: front.middle }]
      : [];
  const left: PickUp = { along: 'left front neck', stitches: sideOfV };
  const right: PickUp = { along: 'right front neck', stitches: sideOfV };
  const behind: PickUp = { along: 'back neck', stitches: back };
  const order = open
    ? [right, ...top('right'), behind, ...top('left'), left]
    : front
      ? [...top('left'), left, ...middle, right, ...top('right'), behind]
      : [...top('left'), { along: 'front neck', stitches: counts.neck }, ...top('right'), behind];
  const centre = order.indexOf(middle[0] ?? behind);
  const from = order.slice(0, centre).reduce((sum, p) => sum + p.stitches, 0);
  const shaping = mitred ? [{ kind: 'middle' as const, rows: mitreRows(design, sideOfV), from }] : [];
  return bandPiece(
    ['Neckband', 'neckband'],
    fittedPickUp(design.neckband, order),
    design,
    design.neckband,
    shaping,
  );
}

/** The centre stitch of a mitre is a knit stitch: the side before it is made to end accordingly. */
function knitColumn({ neckband }: Design, side: number): number {
  const face = fabrics[neckband.fabric].rows[0] ?? 'k';
  let stitches = side;
  while (face[stitches % face.length] !== 'k' && face.includes('k')) stitches += 1;
  return stitches;
}

const bandRows = (design: Design, band: Border): number =>
  Math.max(1, Math.round((band.heightMm * designGauge(design, band.fabric).gauge.rows) / 100));

/** Mitre decreases on RS rows (the even ones: a band begins with a WS row) or on every row. */
function mitreRows(design: Design, side: number): number[] {
  const rows = bandRows(design, design.neckband);
  const every = design.neckband.mitre === 'every row' ? 1 : 2;
  const all = Array.from({ length: Math.floor(rows / every) }, (_, i) => (i + 1) * every);
  return all.slice(0, Math.max(0, side - 1));
}

function frontBands(design: Design, edges: BandEdges): readonly Recipe[] {
  const collar =
    design.neckband.heightMm > 0
      ? (bandRows(design, design.neckband) * 100) / designGauge(design, design.neckband.fabric).gauge.rows
      : 0;
  const stitches = Math.max(1, Math.round(stitchesIn(frontEdgeMm(edges) + collar, edges.counts.gauge)));
  const along = (edge: string): readonly PickUp[] =>
    fittedPickUp(design.frontBand, [{ along: `${edge} front edge`, stitches }]);
  const count = along('left')[0]?.stitches ?? stitches;
  return [
    bandPiece(['Button band', 'front band'], along('left'), design, design.frontBand, []),
    bandPiece(['Buttonhole band', 'front band'], along('right'), design, design.frontBand, [], count),
  ];
}

function aroundBand(design: Design, edges: BandEdges): Recipe {
  const { front, counts, sleeveTop } = edges;
  const straight = Math.max(1, Math.round(stitchesIn(frontEdgeMm(edges), counts.gauge)));
  const slant = front ? openNeckSide(front, counts) : 0;
  const top = (which: string): PickUp[] =>
    sleeveTop > 0 ? [{ along: `${which} sleeve top`, stitches: sleeveTop }] : [];
  const neck = (which: string): PickUp[] =>
    slant > 0 ? [{ along: `${which} front neck`, stitches: slant }] : [];
  const order: PickUp[] = [
    { along: 'right front edge', stitches: straight },
    ...neck('right'),
    ...top('right'),
    { along: 'back neck', stitches: backPickUp(edges) },
    ...top('left'),
    ...neck('left'),
    { along: 'left front edge', stitches: straight },
  ];
  return bandPiece(
    ['Front band', 'front band'],
    fittedPickUp(design.frontBand, order),
    design,
    design.frontBand,
    [],
    straight,
  );
}

function armholeBand(design: Design, { armhole, counts }: BandEdges): Recipe {
  const each = Math.max(1, Math.round(stitchesIn(armhole ? lengthOf(armhole.curve) : 0, counts.gauge)));
  const order: PickUp[] = [
    { along: 'front armhole', stitches: each },
    { along: 'back armhole', stitches: each },
  ];
  return {
    ...bandPiece(
      ['Armhole band', 'armhole band'],
      fittedPickUp(design.armholeBand, order),
      design,
      design.armholeBand,
      [],
    ),
    makes: 2,
  };
}

/** @param buttonsOver stitches from the right edge over which the button holes are spread; none where left out */
function bandPiece(
  [name, role]: readonly [string, PieceRole],
  pickUp: readonly PickUp[],
  design: Design,
  band: Border,
  shaping: Section['shaping'],
  buttonsOver?: number,
): Recipe {
  const rows = bandRows(design, band);
  const stitches = pickUp.reduce((sum, p) => sum + p.stitches, 0);
  const plain = (n: number): Section => ({
    name: 'band',
    rows: n,
    fabric: band.fabric,
    needle: design.needles.borders,
    shaping: [],
  });
  const words =
    buttonsOver === undefined
      ? undefined
      : buttonholeRows(band.fabric, stitches, buttonsOver, design.frontBand.buttons, rowsBeforeHoles(rows));
  const sections: Section[] = words
    ? [
        plain(rowsBeforeHoles(rows)),
        { ...plain(2), name: 'button holes', words },
        plain(Math.max(1, rows - rowsBeforeHoles(rows) - 2)),
      ]
    : [{ ...plain(rows), shaping }];
  return {
    name,
    role,
    makes: 1,
    parts: [{ name, from: { pickUp }, firstSide: 'WS', sections, end: 'bind off' }],
  };
}

/** An odd number, so that the holes are bound off on an RS row, in the middle of the band. */
const rowsBeforeHoles = (rows: number): number => 2 * Math.max(0, Math.floor((rows - 3) / 4)) + 1;

/** Stitches over which button holes are spread; undefined where the garment has none. */
export function buttonsOver(design: Design, edges: BandEdges): number | undefined {
  const { open } = garmentKinds[design.kind];
  if (!open || design.frontBand.heightMm === 0 || design.frontBand.buttons === 0) return undefined;
  const straight = Math.max(1, Math.round(stitchesIn(frontEdgeMm(edges), edges.counts.gauge)));
  if (design.neck.shape === 'V') return straight;
  return frontBands(design, edges)[0]?.parts.flatMap((p) => ('pickUp' in p.from ? p.from.pickUp : []))[0]
    ?.stitches;
}
