import { fitsSeamed } from '../fabric.ts';
import type { PickUp, Recipe } from '../piece/recipe.ts';
import { bandPiece, bandRows, frontBorder } from './band-piece.ts';
import { buttonholePlaces, evenAlong } from './buttonholes.ts';
import { type Design, isSince } from './design.ts';
import { evenCount } from './even-holes.ts';
import { designGauge } from './gauges.ts';
import type { HolesWish } from './holes-wish.ts';
import { garmentKinds } from './kinds/garments.ts';
import { necks } from './kinds/necks.ts';
import {
  alongBack,
  alongSleeve,
  type BandEdges,
  fittedPickUp,
  frontEdgeMm,
  openNeckSide,
} from './pick-up.ts';
import { stitchesIn } from './whole-numbers.ts';

/** Both bands along the fronts; the one that lies on top has the holes. */
export function frontBands(design: Design, edges: BandEdges): readonly Recipe[] {
  const holesIn = design.frontBand.holesIn ?? 'right front';
  const band = (front: 'left' | 'right'): Recipe => {
    const along = alongFront(design, edges, front);
    return holesIn === `${front} front`
      ? bandPiece(
          ['Buttonhole band', 'front band'],
          along,
          design,
          frontBorder(design),
          [],
          holesOf(design, edges),
        )
      : bandPiece(['Button band', 'front band'], along, design, frontBorder(design), []);
  };
  // the buttons are placed before the holes are worked
  return holesIn === 'right front' ? [band('left'), band('right')] : [band('right'), band('left')];
}

function alongFront(design: Design, edges: BandEdges, front: 'left' | 'right'): readonly PickUp[] {
  const { neckband } = design;
  const collar =
    neckband.heightMm > 0
      ? (bandRows(design, neckband) * 100) / designGauge(design, neckband.fabric).gauge.rows
      : 0;
  const stitches = Math.max(1, Math.round(stitchesIn(frontEdgeMm(edges) + collar, edges.counts.gauge)));
  const along = fittedPickUp(design.frontBand, [{ along: `${front} front edge`, stitches }]);
  return evenAlong(holesWish(design, edges), along);
}

/** One band round both fronts and the neck. */
export const aroundBand = (design: Design, edges: BandEdges): Recipe =>
  bandPiece(
    ['Front band', 'front band'],
    aroundPickUp(design, edges),
    design,
    frontBorder(design),
    [],
    holesOf(design, edges),
  );

function aroundPickUp(design: Design, edges: BandEdges): readonly PickUp[] {
  const { front, counts } = edges;
  const straight = straightOf(design, edges);
  // a V of less than a pair of rows is none: the front's stitches lie level at its top
  const slant = front ? openNeckSide(front, counts) : isSince(3, design) ? edges.frontHalf : 0;
  const top = (which: 'left' | 'right') => alongSleeve(design, edges, which);
  const neck = (which: string): PickUp[] =>
    slant > 0 ? [{ along: `${which} front neck`, stitches: slant }] : [];
  return fittedPickUp(design.frontBand, [
    { along: 'right front edge', stitches: straight },
    ...neck('right'),
    ...top('right'),
    ...alongBack(design, edges),
    ...top('left'),
    ...neck('left'),
    { along: 'left front edge', stitches: straight },
  ]);
}

/** Along the edge of one front, where a band goes on round the neck. */
function straightOf(design: Design, edges: BandEdges): number {
  const stitches = Math.max(1, Math.round(stitchesIn(frontEdgeMm(edges), edges.counts.gauge)));
  const wish = holesWish(design, edges);
  if (!wish?.isEven) return stitches;
  // whatever the neck adds, the whole is a count that the rib takes
  return evenCount(wish.fabric, stitches, false, (over) =>
    buttonholePlaces({ ...wish, over, stitches: fitsSeamed(wish.fabric, over).above }),
  );
}

const sumOf = (list: readonly PickUp[]): number => list.reduce((sum, p) => sum + p.stitches, 0);

/** The button holes of the garment as they are wished for; undefined where it has none. */
export function holesOf(design: Design, edges: BandEdges): HolesWish | undefined {
  const wish = holesWish(design, edges);
  if (!wish) return undefined;
  if (!necks[design.neck.shape].isPointed) {
    const stitches = sumOf(alongFront(design, edges, 'right'));
    return { ...wish, stitches, over: stitches };
  }
  return { ...wish, stitches: sumOf(aroundPickUp(design, edges)), over: straightOf(design, edges) };
}

/** The same before it is known over how many stitches they are spread. */
function holesWish(
  { kind, neck, frontBand, edition }: Design,
  { counts: { gauge } }: BandEdges,
): Omit<HolesWish, 'stitches' | 'over'> | undefined {
  const { fabric, buttons, buttonMm, holesIn = 'right front', heightMm } = frontBand;
  if (!garmentKinds[kind].open || heightMm === 0 || buttons === 0) return undefined;
  const isRound = necks[neck.shape].isPointed;
  return {
    fabric,
    buttons,
    buttonMm,
    gauge,
    at: isRound && holesIn !== 'right front' ? 'left' : 'right',
    ...(isSince(2, { edition }) ? { isEven: true } : {}),
  };
}
