import { type Design, garmentKinds } from './design.ts';

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

/** E. Zimmermann, Knitting Without Tears, 1971 (from memory): 8 % of the chest's stitches to an underarm, half of them to a panel's edge. */
const UNDERARM_SHARE = 0.08;
/**
 * Share of a panel that each indent takes: 18 mm of a baby's, 43 of a woman's M, 68 of the largest. K. Buss, Big Book of
 * Knitting (by its look; a scanned handbook, p. 180) takes 1¼ to 3 in for adults; for children common practice, no
 * published source.
 */
const INDENT_SHARE = 0.085;

export function targetsOf(design: Design): Targets {
  const { body, ease, armhole } = design;
  const underarm = (body.chest + ease.chest) / 2;
  const hip = (body.hip + ease.hip) / 2;
  const underarmStep =
    design.underarmMm ?? underarm * (armhole === 'indented' ? INDENT_SHARE : UNDERARM_SHARE);
  const armholeDepth = body.armholeDepth + ease.armholeDepth;
  const across = acrossOf(design, underarm, underarmStep);
  const sewnFlat = armhole === 'drop' || armhole === 'indented';
  return {
    underarm,
    hem: design.silhouette === 'straight' ? underarm : hip,
    waist: (body.waist + ease.waist) / 2,
    across,
    neck: design.neck.widthMm,
    length: design.lengthMm,
    armholeDepth,
    shoulderDrop: armhole === 'raglan' ? 0 : design.shoulderDropMm,
    raglanDepth: armholeDepth + design.shoulderDropMm,
    underarmStep: armhole === 'drop' ? 0 : underarmStep,
    neckDepth: design.neck.depthMm,
    backNeckDepth: armhole === 'raglan' ? 0 : design.neck.backDepthMm,
    waistHeight: design.lengthMm - body.napeToWaist,
    sleeveTop: sewnFlat ? 2 * armholeDepth : body.upperArm + ease.upperArm,
    cuff: body.wrist + ease.wrist,
    sleeve: design.sleeve.lengthMm ?? (sewnFlat ? body.napeToWrist - underarm / 2 : body.arm),
    frontBand: garmentKinds[design.kind].open ? design.frontBand.heightMm : 0,
  };
}

function acrossOf({ armhole, body, ease, neck }: Design, underarm: number, step: number): number {
  switch (armhole) {
    case 'drop':
      return underarm;
    case 'indented':
      return underarm - 2 * step;
    case 'set-in':
      return body.crossBack + ease.crossBack;
    case 'raglan':
      return neck.widthMm;
  }
}
