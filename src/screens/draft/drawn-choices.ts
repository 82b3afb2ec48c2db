import type { ArmholeFacts } from '../../knit/garment/kinds/armholes.ts';
import type { GarmentFacts } from '../../knit/garment/kinds/garments.ts';
import type { NeckFacts } from '../../knit/garment/kinds/necks.ts';
import type { SilhouetteFacts } from '../../knit/garment/kinds/silhouettes.ts';
import type { SleeveShapeFacts } from '../../knit/garment/kinds/sleeve-shapes.ts';
import type { Curve, Point } from '../../knit/shape/curve.ts';

/** Choices as small drawings in a box of 48 by 40, drawn from what their records hold: one that is added draws itself. */

export const drawnGarment = ({ open, sleeves }: GarmentFacts): string =>
  (sleeves
    ? 'M16 37V17L11 25L4 21L13 6L20 4Q24 8 28 4L35 6L44 21L37 25L32 17V37Z'
    : 'M15 37V18Q19 14 18 5L21 4L24 14L27 4L30 5Q29 14 33 18V37Z') + (open ? 'M24 12V37' : '');

/** A panel's upper half with the neck cut out of it. */
export function drawnNeck({ isPointed, level, ofCrossBack, ofArmhole }: NeckFacts): string {
  const half = ofCrossBack * 20;
  const deep = 6 + Math.max(3, ofArmhole * 24);
  const [left, right] = [24 - half, 24 + half];
  const [from, to] = [24 - half * level, 24 + half * level];
  const edge = isPointed
    ? `L24 ${deep}L${right} 6`
    : `C${left} ${(6 + deep) / 2} ${(left + from) / 2} ${deep} ${from} ${deep}H${to}C${(right + to) / 2} ${deep} ${right} ${(6 + deep) / 2} ${right} 6`;
  return `M6 38V10L${left} 6${edge}L42 10V38Z`;
}

/** The half of a panel beside its armhole, the curve as it is asked for. */
export function drawnArmhole({ curve, acrossMm, underarmShare, toNeck }: ArmholeFacts): string {
  const half = 36;
  const neck = toNeck ? 12 : 14;
  const step = underarmShare * 2 * half;
  const across = acrossMm({ underarm: 2 * half, step, crossBack: 52, neck: 2 * neck }) / 2;
  const put = ([x, y]: Point): string => `${(4 + x).toFixed(1)} ${(28 - y).toFixed(1)}`;
  return `M4 38H${4 + half}V28${pathOf(curve(half, step, across, 21), put)}L${4 + neck} 4H4Z`;
}

const pathOf = (curve: Curve, put: (point: Point) => string): string =>
  curve
    .map(([, ...points], i) => {
      const from = i === 0 ? `L${put(curve[0]?.[0] ?? [0, 0])}` : '';
      return `${from}${points.length === 1 ? 'L' : 'C'}${points.map(put).join(' ')}`;
    })
    .join('');

export function drawnSilhouette({ followsHip, hasWaist }: SilhouetteFacts): string {
  const hip = followsHip ? 7 : 12;
  const waist = hasWaist ? 16 : (hip + 12) / 2;
  return `M${hip} 37L${waist} 23L12 11V4H36V11L${48 - waist} 23L${48 - hip} 37Z`;
}

export function drawnSleeve({ beginsNarrow, hasOwnCuff }: SleeveShapeFacts): string {
  const cuff = hasOwnCuff ? 6 : 12;
  const above = beginsNarrow ? 6 : 12;
  return `M${24 - cuff} 38V32H${24 - above}L10 15L19 4H29L38 15L${24 + above} 32H${24 + cuff}V38Z`;
}
