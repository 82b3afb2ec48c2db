import type { FabricName } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';

/** Stitches between two holes at least; common practice, no published source. */
export const LEAST_BETWEEN = 3;

export interface HolesWish {
  readonly fabric: FabricName;
  /** along the edge: that of the panels, in which the band is picked up */
  readonly gauge: Gauge;
  /** stitches of the whole band, and of the end of it over which the holes are spread */
  readonly stitches: number;
  readonly over: number;
  /** the end with the holes: where RS rows begin, or where they end */
  readonly at: 'right' | 'left';
  readonly buttons: number;
  /** across the button, mm */
  readonly buttonMm: number | undefined;
  /** those between the first and the last stand at one distance, as far as the columns of the rib allow */
  readonly isEven?: boolean;
}
