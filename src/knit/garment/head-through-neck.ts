import { factsOf } from '../fabric-facts.ts';
import { type Fault, fault } from '../fault.ts';
import type { Design } from './design.ts';
import { garmentKinds } from './kinds/garments.ts';
import { opensMoreMm } from './neck-opening.ts';
import { type BandEdges, neckSideMm } from './pick-up.ts';
import { placketStitches } from './placket.ts';
import { openingOf } from './which-opening.ts';

/** A closed neck held against the head, mm. */
export interface HeadFit {
  /** along the neck's knitted edge */
  readonly neckMm: number;
  /** as wide as it opens: the edge times the stretch of its band, and what an opening adds */
  readonly opensMm: number;
  readonly headMm: number;
}

/** Undefined of a front that opens: it lets any head through. */
export function headFit(design: Design, bands: BandEdges): HeadFit | undefined {
  if (garmentKinds[design.kind].open) return undefined;
  const neckMm = neckEdgeMm(bands) - placketMm(design, bands);
  const { stretch } = factsOf(design.neckband.heightMm > 0 ? design.neckband.fabric : design.fabric);
  const opensMm = neckMm * stretch + opensMoreMm(design, bands.counts, stretch);
  return { neckMm, opensMm, headMm: design.body.head };
}

/** What lies between the edges of a placket is no part of the neck's edge. */
const placketMm = (design: Design, { counts, front }: BandEdges): number =>
  openingOf(design).partsFront && front
    ? (placketStitches(design, counts, front) * 100) / counts.gauge.stitches
    : 0;

export function headWarning(head: HeadFit | undefined): Fault[] {
  if (!head || head.opensMm >= head.headMm) return [];
  const figures = {
    neckMm: Math.round(head.neckMm),
    opensMm: Math.round(head.opensMm),
    headMm: Math.round(head.headMm),
  };
  return [fault('head does not pass', figures, { field: 'neck.widthMm' })];
}

/** Length of the whole neck along its knitted edge, mm. */
export function neckEdgeMm({ counts, front, back, sleeveTop, tip }: BandEdges): number {
  const mm = (stitches: number): number => (stitches * 100) / counts.gauge.stitches;
  const whole = (neck: BandEdges['front']): number =>
    neck ? mm(neck.middle) + 2 * neckSideMm(neck) : mm(counts.neck);
  return whole(front) + whole(back) + 2 * mm(sleeveTop + tip);
}
