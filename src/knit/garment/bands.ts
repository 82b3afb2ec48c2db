import { fabrics } from '../fabric.ts';
import type { PickUp, Recipe, Section } from '../piece/recipe.ts';
import { lengthOf } from '../shape/curve.ts';
import { bandPiece, bandRows } from './band-piece.ts';
import type { Design } from './design.ts';
import { aroundBand, frontBands } from './front-bands.ts';
import { heldNeck } from './held-neck.ts';
import { garmentKinds } from './kinds/garments.ts';
import { necks } from './kinds/necks.ts';
import { cornerAt, lapCorner } from './lap-corners.ts';
import {
  collarPickUp,
  lapBorder,
  openingPairs,
  shoulderHoles,
  shoulderPickUp,
  withEvenHoles,
} from './neck-opening.ts';
import {
  alongBack,
  alongSleeve,
  type BandEdges,
  fittedPickUp,
  frontNeckSide,
  halfBackPickUp,
  openNeckSide,
  sharedPickUp,
} from './pick-up.ts';
import { besidePlacket, placketBands } from './placket.ts';
import { openingOf } from './which-opening.ts';
import { stitchesIn } from './whole-numbers.ts';

/** Every band of the garment, each a piece of its own. */
export function bandsOf(design: Design, edges: BandEdges): readonly Recipe[] {
  const { open, sleeves } = garmentKinds[design.kind];
  const bands: Recipe[] = [];
  const around = open && necks[design.neck.shape].isPointed && design.frontBand.heightMm > 0;
  const { shoulders } = openingOf(design);
  if ((design.neckband.heightMm > 0 || shoulders === 2) && !around) bands.push(neckband(design, edges));
  if (shoulders === 2) bands.push(backNeckband(design, edges));
  if (shoulders === 1) bands.push(shoulderBand(design, edges));
  bands.push(...placketBands(design, edges));
  if (open && design.frontBand.heightMm > 0)
    bands.push(...(around ? [aroundBand(design, edges)] : frontBands(design, edges)));
  if (!sleeves && design.armholeBand.heightMm > 0) bands.push(armholeBand(design, edges));
  return bands;
}

function neckband(design: Design, edges: BandEdges): Recipe {
  const { open } = garmentKinds[design.kind];
  const { front, counts } = edges;
  const sleeveTop = alongSleeve(design, edges, 'left').reduce((sum, { stitches }) => sum + stitches, 0);
  const { mitre } = necks[design.neck.shape];
  const { shoulders, ...parts } = openingOf(design);
  // a neck of less than a pair of rows is none, nor is an opening of the back
  const partsFront = parts.partsFront && front !== undefined;
  const half = parts.partsBack && openingPairs(design, counts, 'back') > 0 ? halfBackPickUp(edges) : 0;
  const lap = shoulders === 2 ? shoulderPickUp(design, counts) : 0;
  const corner = lap > 0 ? lapCorner(design, counts) : 0;
  const lead = half + lap + corner;
  const side = front
    ? open
      ? openNeckSide(front, counts)
      : partsFront
        ? besidePlacket(design, counts, front)
        : frontNeckSide(design, front, counts)
    : Math.max(1, Math.floor(counts.neck / 2));
  const mitred = mitre === 'point' && !open && front !== undefined;
  const square = mitre === 'corners' && front !== undefined;
  const sideOfV =
    mitred || (square && !open) ? knitColumn(design, side, sleeveTop + lead) + (square ? 1 : 0) : side;
  const top = (which: 'left' | 'right') => alongSleeve(design, edges, which);
  const isHeld = heldNeck(design).front;
  const middle: PickUp[] = mitred
    ? [{ along: 'point of the V', stitches: 1 }]
    : !open && !partsFront && front && front.middle > 0
      ? [
          {
            along: 'middle of the front neck',
            stitches: square
              ? betweenCorners(design, front.middle, sideOfV + sleeveTop + lead)
              : front.middle,
            ...(isHeld ? { held: true } : {}),
          },
        ]
      : [];
  const left: PickUp = { along: 'left front neck', stitches: sideOfV };
  const right: PickUp = { along: 'right front neck', stitches: sideOfV };
  const [first, last]: readonly [readonly PickUp[], readonly PickUp[]] =
    half > 0
      ? [[{ along: 'left back neck', stitches: half }], [{ along: 'right back neck', stitches: half }]]
      : lap > 0
        ? [
            [{ along: 'left front shoulder', stitches: lap }, ...cornerAt('left front', corner)],
            [...cornerAt('right front', corner), { along: 'right front shoulder', stitches: lap }],
          ]
        : [[], alongBack(design, edges)];
  const order =
    open || partsFront
      ? [right, ...top('right'), ...last, ...top('left'), left]
      : front
        ? [...first, ...top('left'), left, ...middle, right, ...top('right'), ...last]
        : [
            ...first,
            ...top('left'),
            { along: 'front neck', stitches: counts.neck },
            ...top('right'),
            ...last,
          ];
  const centre = middle[0] ? order.indexOf(middle[0]) : order.length - last.length;
  const from = order.slice(0, centre).reduce((sum, p) => sum + p.stitches, 0);
  const pickUp = fittedPickUp(design.neckband, order, mitred || square, design.edition);
  const corners = mitred
    ? [from]
    : square
      ? open
        ? cornersOfOpen(pickUp, cornerOfOpen(design, edges, sideOfV))
        : [from - 1, from + (middle[0]?.stitches ?? 0)]
      : [];
  // each row takes a stitch from either side of each corner
  const between = square ? (open ? (corners[0] ?? 0) : Math.floor((middle[0]?.stitches ?? 0) / 2)) : sideOfV;
  const room = Math.min(sideOfV, between);
  return lap > 0
    ? bandPiece(
        ['Front neckband', 'neckband'],
        pickUp,
        design,
        lapBorder(design),
        mitres(design, corners, room),
      )
    : bandPiece(['Neckband', 'neckband'], pickUp, design, design.neckband, mitres(design, corners, room));
}

/** Of an envelope neck: along the back from arm to arm. */
function backNeckband(design: Design, edges: BandEdges): Recipe {
  const stitches = shoulderPickUp(design, edges.counts);
  const corner = lapCorner(design, edges.counts);
  const order: PickUp[] = [
    { along: 'right back shoulder', stitches },
    ...cornerAt('right back', corner),
    ...alongBack(design, edges),
    ...cornerAt('left back', corner),
    { along: 'left back shoulder', stitches },
  ];
  const band = lapBorder(design);
  return bandPiece(['Back neckband', 'neckband'], fittedPickUp(band, order), design, band, []);
}

/** Of a buttoned shoulder: along the left front from the arm to the edge of the neckband, with the holes; it lies on the back. */
function shoulderBand(design: Design, { counts }: BandEdges): Recipe {
  const stitches = shoulderPickUp(design, counts) + collarPickUp(design, counts);
  const band = lapBorder(design);
  const order = withEvenHoles(
    design,
    band,
    counts.gauge,
    fittedPickUp(band, [{ along: 'left front shoulder', stitches }]),
  );
  const holes = shoulderHoles(design, counts, order[0]?.stitches ?? stitches);
  return bandPiece(['Shoulder band', 'other'], order, design, band, [], holes);
}

/**
 * Paired decreases at the point of a V and at each corner of a square neck: a right angle takes two stitches off on
 * every second row (S. Robicheau, 'Pointe On', Berroco Sox; D. Jones, 'How to knit a mitered square', 2013).
 */
const mitres = (design: Design, corners: readonly number[], room: number): Section['shaping'] => {
  const rows = mitreRows(design, room);
  return rows.length === 0 ? [] : corners.map((from) => ({ kind: 'middle', rows, from }) as const);
};

/** The stitches between the corners of a square neck; the second corner stitch is a knit stitch too. */
function betweenCorners(design: Design, middle: number, side: number): number {
  return knitColumn(design, side + middle) - side;
}

/** The corner stitch of an open square neck, counted from the front edge, where what lies level was bound off. */
const cornerOfOpen = (design: Design, { frontHalf }: BandEdges, side: number): number =>
  Math.min(knitColumn(design, frontHalf), Math.max(0, side - 2));

function cornersOfOpen(pickUp: readonly PickUp[], corner: number): readonly number[] {
  const all = pickUp.reduce((sum, p) => sum + p.stitches, 0);
  return corner < 1 || all - 1 - corner <= corner ? [] : [corner, all - 1 - corner];
}

/** The centre stitch of a mitre is a knit stitch: the side before it, on which `before` lie, is made to end accordingly. */
function knitColumn({ neckband }: Design, side: number, before = 0): number {
  const face = fabrics[neckband.fabric].rows[0] ?? 'k';
  let stitches = side;
  while (face[(before + stitches) % face.length] !== 'k' && face.includes('k')) stitches += 1;
  return stitches;
}

/** Mitre decreases on RS rows (the even ones: a band begins with a WS row) or on every row. */
function mitreRows(design: Design, side: number): number[] {
  const rows = bandRows(design, design.neckband);
  const every = design.neckband.mitre === 'every row' ? 1 : 2;
  const all = Array.from({ length: Math.floor(rows / every) }, (_, i) => (i + 1) * every);
  return all.slice(0, Math.max(0, side - 1));
}

function armholeBand(design: Design, { armhole, counts }: BandEdges): Recipe {
  const share = (design.armholeBand.percent ?? 100) / 100;
  // the published share is one of the curve's length
  const along = stitchesIn(lengthOf(armhole.curve), counts.gauge);
  return {
    ...bandPiece(
      ['Armhole band', 'armhole band'],
      sharedPickUp(design.armholeBand, share * along, ['front armhole', 'back armhole']),
      design,
      design.armholeBand,
      [],
    ),
    makes: 2,
  };
}
