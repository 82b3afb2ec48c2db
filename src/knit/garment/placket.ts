import type { PickUp, Recipe } from '../piece/recipe.ts';
import { bandPiece, roomForHoles } from './band-piece.ts';
import type { Border, Design } from './design.ts';
import type { Neck } from './neck.ts';
import { collarPickUp, holesAlong, openingPairs, withEvenHoles } from './neck-opening.ts';
import type { PanelCounts } from './panel-counts.ts';
import { type BandEdges, fittedPickUp, frontNeckSide } from './pick-up.ts';
import { openingOf } from './which-opening.ts';
import { stitchesIn } from './whole-numbers.ts';

/** Width of a placket's band where the design has none along a front; common practice, no published source. */
const PLACKET_MM = 20;

/** The border along either edge of a placket: as along a front. */
export const placketBorder = (design: Design): Border => {
  const { fabric, heightMm } = design.frontBand;
  return roomForHoles(design, { fabric, heightMm: heightMm > 0 ? heightMm : PLACKET_MM });
};

/**
 * Stitches bound off at the lower end of a placket, as wide as one of its bands, which both lie over them (common
 * practice, no published source); no more than lie level at the bottom of the neck.
 */
export function placketStitches(design: Design, { gauge, neck }: PanelCounts, { middle }: Neck): number {
  const odd = neck % 2;
  const wanted = 2 * Math.round((stitchesIn(placketBorder(design).heightMm, gauge) - odd) / 2) + odd;
  return Math.max(odd, Math.min(wanted, middle));
}

/** Stitches picked up from a placket to the shoulder: what lies level beside it, and the side of the neck. */
export const besidePlacket = (design: Design, counts: PanelCounts, front: Neck): number =>
  (front.middle - placketStitches(design, counts, front)) / 2 + frontNeckSide(design, front, counts);

/** Both bands of a placket, from its lower end to the edge of the neckband; the one with the holes lies on top. */
export function placketBands(design: Design, { counts, front }: BandEdges): readonly Recipe[] {
  if (!openingOf(design).partsFront || !front) return [];
  const { gauge } = counts;
  const band = placketBorder(design);
  const slit = (openingPairs(design, counts, 'front') * 200) / gauge.rows;
  const stitches = Math.max(2, Math.round(stitchesIn(slit, gauge)) + collarPickUp(design, counts));
  const along = (side: 'left' | 'right'): readonly PickUp[] =>
    withEvenHoles(design, band, gauge, fittedPickUp(band, [{ along: `${side} front edge`, stitches }]));
  const onTop = design.frontBand.holesIn === 'left front' ? 'left' : 'right';
  const below = onTop === 'left' ? 'right' : 'left';
  const total = along(onTop)[0]?.stitches ?? stitches;
  const holes = holesAlong(design, band, gauge, total);
  // the buttons are placed before the holes are worked
  return [
    bandPiece(['Button band', 'front band'], along(below), design, band, []),
    bandPiece(['Buttonhole band', 'front band'], along(onTop), design, band, [], holes),
  ];
}
