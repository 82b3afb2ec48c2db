import type { FabricName } from '../fabric.ts';
import { type Fault, fault } from '../fault.ts';
import { lengthOf } from '../shape/curve.ts';
import { type Design, garmentKinds } from './design.ts';
import type { BandEdges } from './pick-up.ts';

/** How far a band stretches beyond its width, by fabric; common practice, no published source. */
const STRETCH: Readonly<Record<FabricName, number>> = {
  garter: 1.2,
  stocking: 1.2,
  'reverse stocking': 1.2,
  'rib 1x1': 1.35,
  'rib 1x1 matched': 1.35,
  'rib 2x2': 1.4,
  moss: 1.15,
};

/** Neck edge times the stretch of its band against the head; an opened front lets any head through. */
export function headWarning(design: Design, bands: BandEdges): Fault[] {
  if (garmentKinds[design.kind].open) return [];
  const neckMm = neckEdgeMm(bands);
  const stretch = STRETCH[design.neckband.heightMm > 0 ? design.neckband.fabric : design.fabric];
  const opens = neckMm * stretch;
  if (opens >= design.body.head) return [];
  const figures = {
    neckMm: Math.round(neckMm),
    opensMm: Math.round(opens),
    headMm: Math.round(design.body.head),
  };
  return [fault('head does not pass', figures, { field: 'neck.widthMm' })];
}

/** Length of the whole neck edge, mm. */
export function neckEdgeMm({ counts, front, back, sleeveTop }: BandEdges): number {
  const straight = (counts.neck * 100) / counts.gauge.stitches;
  const half = (neck: BandEdges['front']): number => (neck ? 2 * lengthOf(neck.edge.curve) : straight);
  return half(front) + half(back) + (2 * sleeveTop * 100) / counts.gauge.stitches;
}
