import type { FabricName } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import type { Body, Design } from './design.ts';
import { easeFor, type Fit } from './ease.ts';
import type { ArmholeKind } from './kinds/armholes.ts';
import { armholes } from './kinds/armholes.ts';
import type { GarmentKind } from './kinds/garments.ts';
import type { NeckShape } from './kinds/necks.ts';
import { necks } from './kinds/necks.ts';
import { withHeadThrough } from './neck-for-head.ts';
import { byPublishedRules } from './published-rules.ts';

/** What she has chosen before she looks at single figures. */
export interface Choices {
  readonly kind: GarmentKind;
  readonly armhole: ArmholeKind;
  readonly neck: NeckShape;
  readonly fit: Fit;
}

/**
 * Shares of measures with which a design begins; all common practice, no published source. Of the head's girth: with it a round neck of a baby or a small child is still too narrow, and the draft says so.
 */
const NECK_OF_HEAD = 0.27;
const SHOULDER_DROP_OF_CROSS_BACK = 0.07;
const BELOW_WAIST_OF_NAPE_TO_WAIST = 0.45;
const HEM_OF_ARMHOLE = 0.3;

/** across a button, and the chest below which it is a small one; common practice, no published source */
const BUTTON_MM = 18;
const SMALL_BUTTON_MM = 13;
const GROWN_CHEST_MM = 700;

/** A whole design to begin with, from a body, a swatch and four choices; every figure may be changed. */
export const startingDesign = (choices: Choices, body: Body, fabric: FabricName, gauge: Gauge): Design => ({
  ...seamedDesign(choices, body, fabric, gauge),
  edition: 3,
});

/** As designs began before the third edition of the rules that they are drafted by. */
export const secondDesign = (choices: Choices, body: Body, fabric: FabricName, gauge: Gauge): Design => ({
  ...seamedDesign(choices, body, fabric, gauge),
  edition: 2,
});

/** As designs began before the second edition of the rules that they are drafted by. */
export function seamedDesign(choices: Choices, body: Body, fabric: FabricName, gauge: Gauge): Design {
  const begun = ruledDesign(choices, body, fabric, gauge);
  return { ...begun, seamStitch: true, sleeve: { ...begun.sleeve, endsAtWrist: true } };
}

/** As designs began before each had stitches for its seams and a sleeve no longer than the wrist. */
export const ruledDesign = (choices: Choices, body: Body, fabric: FabricName, gauge: Gauge): Design =>
  withHeadThrough(byPublishedRules(simpleDesign(choices, body, fabric, gauge)));

/** The same from shares of the body only, as all designs began once. */
export function simpleDesign(choices: Choices, body: Body, fabric: FabricName, gauge: Gauge): Design {
  const { kind, armhole, neck, fit } = choices;
  const borderMm = whole(HEM_OF_ARMHOLE * body.armholeDepth);
  const rib: FabricName = 'rib 2x2';
  const shape = necks[neck];
  const bandMm = whole(Math.min(30, 0.15 * body.armholeDepth));
  return {
    kind,
    armhole,
    body,
    ease: easeFor(fit),
    lengthMm: whole(body.napeToWaist * (1 + BELOW_WAIST_OF_NAPE_TO_WAIST)),
    silhouette: 'straight',
    neck: {
      shape: neck,
      widthMm: whole(Math.max(shape.ofCrossBack * body.crossBack, NECK_OF_HEAD * body.head)),
      depthMm: whole(shape.ofArmhole * body.armholeDepth),
      backDepthMm: whole(shape.backOfArmhole * body.armholeDepth),
    },
    shoulderDropMm: armholes[armhole].slopes ? whole(SHOULDER_DROP_OF_CROSS_BACK * body.crossBack) : 0,
    sleeve: { shape: 'tapered', direction: 'cuff up', capEase: 0 },
    hem: { fabric: rib, heightMm: borderMm, count: 'fitted' },
    cuff: { fabric: rib, heightMm: borderMm },
    neckband: { fabric: shape.band, heightMm: bandMm, mitre: 'every second row' },
    frontBand: {
      fabric: 'rib 1x1 matched',
      heightMm: bandMm,
      buttons: 6,
      buttonMm: body.chest < GROWN_CHEST_MM ? SMALL_BUTTON_MM : BUTTON_MM,
    },
    armholeBand: { fabric: rib, heightMm: bandMm },
    fabric,
    gauges: { [fabric]: gauge },
    needles: { panels: 4, borders: 3.5 },
    tapers: 'together',
    overruled: [],
  };
}

const whole = (mm: number): number => Math.round(mm);
