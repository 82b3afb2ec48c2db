import { assumedGauge, type FabricName } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import { fabricOfGauge, type MeasuredGauge } from '../measured-gauge.ts';
import type { Swatch } from '../piece/garment.ts';
import type { Design } from './design.ts';

/** Gauge of a washed swatch. Garter counted in ridges has two rows to a ridge. */
export const gaugeOfSwatch = (swatch: Pick<Swatch, 'stitches' | 'widthMm' | 'rows' | 'heightMm'>): Gauge => ({
  stitches: (swatch.stitches * 100) / swatch.widthMm,
  rows: (swatch.rows * 100) / swatch.heightMm,
});

/** A ridge of garter stitch is two rows. */
export const ROWS_PER_RIDGE = 2;

/** The swatch that every other fabric of a design is guessed from, with what it was knitted in; of the panels where there is one. */
export function mainGauge({
  fabric,
  gauges,
  needles,
}: Pick<Design, 'fabric' | 'gauges' | 'needles'>): MeasuredGauge {
  const own = gauges[fabric];
  if (own) return { ...own, fabric, needle: needles.panels };
  return { ...(gauges.stocking ?? { stitches: 0, rows: 0 }), fabric: 'stocking' };
}

/** A design's gauge of a fabric, and whether it was swatched or worked out by the usual ratio. */
export function designGauge(
  design: Pick<Design, 'fabric' | 'gauges' | 'needles'>,
  fabric: FabricName,
): { gauge: Gauge; swatched: boolean } {
  const own = design.gauges[fabric];
  if (own) return { gauge: own, swatched: true };
  const known = mainGauge(design);
  return { gauge: assumedGauge(fabric, known, fabricOfGauge(known)), swatched: false };
}
