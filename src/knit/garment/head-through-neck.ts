import { factsOf } from '../fabric-facts.ts';
import { type Fault, fault } from '../fault.ts';
import type { Design } from './design.ts';
import { garmentKinds } from './kinds/garments.ts';
import { opensMoreMm } from './neck-opening.ts';
import { type BandEdges, neckSideMm } from './pick-up.ts';

/** Neck edge times the stretch of its band against the head; an opened front lets any head through. */
export function headWarning(design: Design, bands: BandEdges): Fault[] {
  if (garmentKinds[design.kind].open) return [];
  const neckMm = neckEdgeMm(bands);
  const { stretch } = factsOf(design.neckband.heightMm > 0 ? design.neckband.fabric : design.fabric);
  const opens = neckMm * stretch + opensMoreMm(design, bands.counts, stretch);
  if (opens >= design.body.head) return [];
  const figures = {
    neckMm: Math.round(neckMm),
    opensMm: Math.round(opens),
    headMm: Math.round(design.body.head),
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
