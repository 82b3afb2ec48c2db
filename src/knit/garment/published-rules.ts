import type { Design, Ease } from './design.ts';
import { armholes } from './kinds/armholes.ts';
import { garmentKinds } from './kinds/garments.ts';

/**
 * What a set-in armhole takes off each side of a panel at least, and what of it is bound off first. The handbook's
 * first bind-off is an inch (knittingmagic.biz, vests; 20 to 25 mm common practice); small panels take a share of
 * their width (common practice, no published source).
 */
const TAKEN = { mm: 30, share: 0.075 } as const;
const FIRST_BOUND_OFF = { mm: 23, share: 0.055 } as const;
/**
 * Width bound off at the top of a cap: 2¾ in (a scanned handbook, by its look K. Buss, Big Book of Knitting, p. 180);
 * 3 in elsewhere (slippedstitches.wordpress.com, 2014). Of small sleeves a quarter.
 */
const CAP_TOP = { mm: 70, share: 0.25 } as const;
/** An armhole band lies inside the cross back, and its armhole is as much deeper; mm beside the band's own width. */
const BESIDE_BAND = { across: { mm: 10, share: 0.025 }, depth: 15 } as const;
/** Of an armhole's length in stitches: In Fashions, American Thread (PG62842), picks up 84 for 2 × 8½ in at 5 to the inch, a stitch for each of depth, of a curved armhole. */
const BAND_PERCENT = 88;
/** A wrist's ease at the most, a waist's at the least, mm; common practice, no published source. */
const MOST_WRIST = 60;
const LEAST_WAIST = 30;
/** Up to this gauge a seam stitch is wider than 5 mm, and four of them take more than a fit has to spare. */
const SEAM_STITCH_UP_TO = 18;

/** A length, or a share of a width where that is less. */
const shareOf = ({ mm, share }: { readonly mm: number; readonly share: number }, width: number): number =>
  Math.min(mm, share * width);

/** A begun design with what published rules choose for its kind. */
export function byPublishedRules(begun: Design): Design {
  const { body } = begun;
  const panel = (body.chest + begun.ease.chest) / 2;
  const { isCurved: isSetIn } = armholes[begun.armhole];
  const stitches = begun.gauges[begun.fabric]?.stitches ?? Number.POSITIVE_INFINITY;
  return {
    ...begun,
    ease: easeOf(begun, panel - 2 * shareOf(TAKEN, panel)),
    ...(isSetIn ? { underarmMm: Math.round(shareOf(FIRST_BOUND_OFF, panel)) } : {}),
    sleeve: isSetIn
      ? { ...begun.sleeve, capTopMm: Math.round(shareOf(CAP_TOP, body.upperArm + begun.ease.upperArm)) }
      : begun.sleeve,
    ...(isSetIn ? { armholeBand: { ...begun.armholeBand, percent: BAND_PERCENT } } : {}),
    ...(stitches <= SEAM_STITCH_UP_TO ? { seamStitch: true } : {}),
  };
}

function easeOf(begun: Design, mostAcross: number): Ease {
  const { body, ease } = begun;
  const { isCurved, deeper } = armholes[begun.armhole];
  const eased = {
    ...ease,
    armholeDepth: ease.armholeDepth + Math.round(deeper * body.armholeDepth),
    wrist: Math.min(MOST_WRIST, ease.wrist),
    waist: Math.max(LEAST_WAIST, ease.waist),
  };
  if (!isCurved) return eased;
  const band = garmentKinds[begun.kind].sleeves ? undefined : begun.armholeBand.heightMm;
  const wanted =
    band === undefined
      ? body.crossBack + ease.crossBack
      : body.crossBack - 2 * (band + shareOf(BESIDE_BAND.across, body.crossBack));
  return {
    ...eased,
    crossBack: Math.round(Math.min(wanted, mostAcross) - body.crossBack),
    armholeDepth: ease.armholeDepth + (band === undefined ? 0 : band + BESIDE_BAND.depth),
  };
}
