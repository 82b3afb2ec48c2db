import { assumedGauge, type FabricName, fabrics } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import type { Swatch } from '../piece/garment.ts';
import type { Design } from './design.ts';

/** Gauge of a washed swatch. Garter counted in ridges has two rows to a ridge. */
export const gaugeOfSwatch = (swatch: Pick<Swatch, 'stitches' | 'widthMm' | 'rows' | 'heightMm'>): Gauge => ({
  stitches: (swatch.stitches * 100) / swatch.widthMm,
  rows: (swatch.rows * 100) / swatch.heightMm,
});

/** A ridge of garter stitch is two rows. */
export const ROWS_PER_RIDGE = 2;

/** A design's gauge of a fabric, and whether it was swatched or worked out by the usual ratio. */
export function designGauge(
  design: Pick<Design, 'fabric' | 'gauges'>,
  fabric: FabricName,
): { gauge: Gauge; swatched: boolean } {
  const own = design.gauges[fabric];
  if (own) return { gauge: own, swatched: true };
  const { fabric: main, gauges } = design;
  const known = gauges[main] ?? gauges.stocking;
  const knownFabric = gauges[main] ? main : 'stocking';
  if (!known) return { gauge: { stitches: 0, rows: 0 }, swatched: false };
  const { ratio } = fabrics[knownFabric];
  const stocking: Gauge = { stitches: known.stitches / ratio.stitches, rows: known.rows / ratio.rows };
  return { gauge: assumedGauge(fabric, stocking), swatched: false };
}
