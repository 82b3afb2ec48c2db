import { type FabricName, fits } from '../fabric.ts';
import { factsOf } from '../fabric-facts.ts';
import type { Gauge } from '../gauge.ts';

/** 'k 3 of 4': so many stitches picked up out of so many rows. */
export interface PickUpRatio {
  readonly stitches: number;
  readonly rows: number;
}

/** Ratios that can be kept in the head; beyond fives nobody counts along an edge. */
const LARGEST = 5;

/**
 * How many stitches to pick up along rows: stitch gauge ÷ row gauge as a simple fraction; garter takes one a ridge
 * (two rows). Common practice, no published source.
 */
export function pickUpRatio(fabric: FabricName, gauge: Gauge): PickUpRatio {
  const { pickUp } = factsOf(fabric);
  if (pickUp) return pickUp;
  return nearestRatio(gauge.stitches / gauge.rows);
}

/** The simple fraction that comes nearest; one for each row at most. */
export function nearestRatio(share: number): PickUpRatio {
  const wanted = Math.min(1, share);
  let best: PickUpRatio = { stitches: 1, rows: 1 };
  for (let rows = 1; rows <= LARGEST; rows += 1) {
    for (let stitches = 1; stitches <= rows; stitches += 1) {
      if (Math.abs(stitches / rows - wanted) < Math.abs(best.stitches / best.rows - wanted) - 1e-9)
        best = { stitches, rows };
    }
  }
  return best;
}

/** Stitches picked up along so many rows at a ratio. */
export const alongRows = (rows: number, ratio: PickUpRatio): number =>
  Math.round((rows * ratio.stitches) / ratio.rows);

/** The count nearest to `total` that the band's fabric can be worked over. */
export function toMultiple(total: number, fabric: FabricName): number {
  const near = fits(fabric, total);
  if (near.fits) return total;
  return total - near.below <= near.above - total && near.below > 0 ? near.below : near.above;
}
