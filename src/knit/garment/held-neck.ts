import type { Design } from './design.ts';
import { armholes } from './kinds/armholes.ts';
import { garmentKinds } from './kinds/garments.ts';
import { neckMiddleFacts, necks } from './kinds/necks.ts';
import { openingOf } from './which-opening.ts';

/** What of a neck rests on holders until its band goes on from it, stitch by stitch. */
export interface HeldNeck {
  /** the middle of the back, or the whole top of a raglan's */
  readonly back: boolean;
  /** the middle of the front */
  readonly front: boolean;
  /** the tops of a raglan's sleeves */
  readonly sleeves: boolean;
}

const NONE: HeldNeck = { back: false, front: false, sleeves: false };

/**
 * Only stitches that a band takes up again rest; what an opening parts is bound off, and so is the middle of a neck whose
 * band is mitred at corners, which must lie on columns of its rib. A sleeve from the top down has its top cast on.
 */
export function heldNeck(design: Design): HeldNeck {
  const { kind, armhole, neck, neckband, frontBand, sleeve } = design;
  const { open } = garmentKinds[kind];
  const { isPointed, mitre } = necks[neck.shape];
  const { partsBack, partsFront, shoulders } = openingOf(design);
  const hasBand = neckband.heightMm > 0 || shoulders === 2 || (open && isPointed && frontBand.heightMm > 0);
  if (!neckMiddleFacts(neck.middle).rests || !hasBand) return NONE;
  const { toNeck } = armholes[armhole];
  return {
    back: !partsBack,
    front: !open && !partsFront && mitre === 'none',
    sleeves: toNeck && sleeve.direction === 'cuff up',
  };
}
