import { frontBorder } from './band-piece.ts';
import type { Design } from './design.ts';
import { armholes } from './kinds/armholes.ts';
import { garmentKinds } from './kinds/garments.ts';
import { silhouetteFacts } from './kinds/silhouettes.ts';
import { sleeveTops } from './kinds/sleeve-tops.ts';

/** What the finished garment is to measure, mm: the body, its ease, and the choices made. Widths are of flat panels. */
export interface Targets {
  /** back at the underarm; half of the chest with its ease */
  readonly underarm: number;
  readonly hem: number;
  readonly waist: number;
  /** between the armholes, where the shoulders are */
  readonly across: number;
  readonly neck: number;
  readonly length: number;
  readonly armholeDepth: number;
  readonly shoulderDrop: number;
  /** armhole and slope together: what a raglan has for both */
  readonly raglanDepth: number;
  /** bound off at each underarm */
  readonly underarmStep: number;
  readonly neckDepth: number;
  readonly backNeckDepth: number;
  /** height of the waist above the lower edge */
  readonly waistHeight: number;
  readonly sleeveTop: number;
  readonly cuff: number;
  /** to the underarm */
  readonly sleeve: number;
  /** width of a front band; 0 where there is none */
  readonly frontBand: number;
}

export function targetsOf(design: Design): Targets {
  const { body, ease } = design;
  const underarm = (body.chest + ease.chest) / 2;
  const hip = (body.hip + ease.hip) / 2;
  const { toNeck, underarmShare, acrossMm, sleeveTop } = armholes[design.armhole];
  const underarmStep = underarmShare === 0 ? 0 : (design.underarmMm ?? underarm * underarmShare);
  const armholeDepth = body.armholeDepth + ease.armholeDepth;
  const across = acrossMm({
    underarm,
    step: underarmStep,
    crossBack: body.crossBack + ease.crossBack,
    neck: design.neck.widthMm,
  });
  const { sewnFlat } = sleeveTops[sleeveTop];
  return {
    underarm,
    hem: silhouetteFacts[design.silhouette].followsHip ? hip : underarm,
    waist: (body.waist + ease.waist) / 2,
    across,
    neck: design.neck.widthMm,
    length: design.lengthMm,
    armholeDepth,
    shoulderDrop: toNeck ? 0 : design.shoulderDropMm,
    raglanDepth: armholeDepth + design.shoulderDropMm,
    underarmStep,
    neckDepth: design.neck.depthMm,
    backNeckDepth: toNeck ? 0 : design.neck.backDepthMm,
    waistHeight: design.lengthMm - body.napeToWaist,
    sleeveTop: sewnFlat ? 2 * armholeDepth : body.upperArm + ease.upperArm,
    cuff: body.wrist + ease.wrist,
    sleeve: design.sleeve.lengthMm ?? (sewnFlat ? body.napeToWrist - underarm / 2 : body.arm),
    frontBand: garmentKinds[design.kind].open ? frontBorder(design).heightMm : 0,
  };
}
