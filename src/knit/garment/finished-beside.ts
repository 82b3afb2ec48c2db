import { factsOf } from '../fabric-facts.ts';
import { type Finished, finished, neckWorn } from '../making-up/finished.ts';
import { workJoints } from '../making-up/work-making-up.ts';
import { asPlanned } from '../piece/as-planned.ts';
import type { Design } from './design.ts';
import type { Draft } from './draft.ts';
import { designGauge } from './gauges.ts';
import { armholes } from './kinds/armholes.ts';
import { garmentKinds } from './kinds/garments.ts';
import { sleeveTops } from './kinds/sleeve-tops.ts';

/** A measure of the garment when it is made up, seams deducted, beside what was asked for; mm. */
export interface FinishedMeasure {
  readonly measure: 'chest' | 'length' | 'nape to cuff' | 'upper arm' | 'wrist' | 'neck';
  readonly askedMm: number;
  readonly madeMm: number;
  /** of a wrist, as wide as it stretches: a rib lies narrower than what it has to let through */
  readonly stretchedMm?: number;
}

/**
 * What a draft measures when it is knitted, sewn and banded, each beside what was asked. The neck is the edge of its band,
 * beside the head that it has to stretch over; a neck that opens has none. Nothing where its pieces cannot be planned.
 */
export function finishedBeside(design: Design, draft: Draft): readonly FinishedMeasure[] {
  const planned = asPlanned({ name: '', pieces: draft.recipes });
  if (!planned.ok) return [];
  const made = finished(workJoints(draft.joints, planned.value).worked, planned.value);
  return asked(design, draft, made).flatMap(({ measure, askedMm, madeMm }) => {
    if (askedMm === undefined || madeMm === undefined) return [];
    const stretched = measure === 'wrist' ? { stretchedMm: madeMm * cuffStretches(design) } : {};
    return [{ measure, askedMm, madeMm, ...stretched }];
  });
}

/** How many times its own width a cuff stretches: as a neckband, so far beyond the width of its stitches in the panels' fabric. */
function cuffStretches(design: Design): number {
  const fabric = design.cuff.heightMm > 0 ? design.cuff.fabric : design.fabric;
  const stitchesIn = (one: Design['fabric']): number => designGauge(design, one).gauge.stitches;
  return (factsOf(fabric).stretch * stitchesIn(fabric)) / stitchesIn(design.fabric);
}

interface Beside {
  readonly measure: FinishedMeasure['measure'];
  readonly askedMm: number | undefined;
  readonly madeMm: number | undefined;
}

function asked({ kind, armhole, sleeve, body }: Design, { targets }: Draft, made: Finished): Beside[] {
  const { sleeves, open } = garmentKinds[kind];
  // the arm alone may ask for a sleeve that is set in, or a raglan's
  const fromNape =
    sleeves &&
    sleeve.lengthMm === undefined &&
    (sleeve.endsAtWrist || sleeveTops[armholes[armhole].sleeveTop].sewnFlat);
  return [
    { measure: 'chest', askedMm: 2 * targets.underarm, madeMm: made.chest },
    { measure: 'length', askedMm: targets.length, madeMm: made.length },
    {
      measure: 'nape to cuff',
      askedMm: fromNape ? body.napeToWrist : undefined,
      madeMm: made.napeToCuff,
    },
    { measure: 'upper arm', askedMm: sleeves ? targets.sleeveTop : undefined, madeMm: made.upperArm },
    { measure: 'wrist', askedMm: sleeves ? targets.cuff : undefined, madeMm: made.wrist },
    {
      measure: 'neck',
      askedMm: open ? undefined : body.head,
      madeMm: neckWorn(made),
    },
  ];
}
