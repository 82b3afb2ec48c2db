import type { HandSeam, SeamWay, Stretch } from '../../knit/making-up/joint.ts';
import type { GarmentId } from '../../progress/log.ts';
import { randomId } from '../../store/ids.ts';
import { changeGarment } from './change-garment.ts';

/** Joins two edges that nothing is joined to; true once it is stored. */
export function joinByHand(
  garment: GarmentId,
  [a, b]: readonly [Stretch, Stretch],
  how: SeamWay,
): Promise<boolean> {
  const seam: HandSeam = { id: randomId(8), a: [a], b: [b], how };
  return changeGarment(garment, (was) => ({ ...was, byHand: [...(was.byHand ?? []), seam] }));
}

/** Takes a seam apart again, with its tick. */
export const takeApart = (garment: GarmentId, seam: string): Promise<boolean> =>
  changeGarment(garment, ({ byHand = [], ticked, ...was }) => {
    const left = byHand.filter(({ id }) => id !== seam);
    const done = ticked?.filter((step) => step !== `join ${seam}`);
    return { ...was, ...(left.length > 0 && { byHand: left }), ...(done && { ticked: done }) };
  });
