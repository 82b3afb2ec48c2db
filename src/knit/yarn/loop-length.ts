import type { Gauge } from '../gauge.ts';

/**
 * Stitches per square centimetre × (loop length in cm)², for plain knitted wool: D. L. Munden, "The Geometry and
 * Dimensional Properties of Plain-knit Fabrics", J. Textile Inst. 50 (1959), T448–T471. Constants from memory.
 */
export const MUNDEN_KS = { 'dry relaxed': 19.0, 'wet relaxed': 21.6 } as const;

export type Relaxed = keyof typeof MUNDEN_KS;

/**
 * Yarn in one stitch of plain knitted fabric, mm, from its gauge alone. It holds for stocking stitch in wool;
 * ribs, garter and moss need a weighed swatch or a wider margin.
 * @param gauge stitches and rows per 100 mm; a washed swatch is wet relaxed
 */
export function loopLengthMm(gauge: Gauge, relaxed: Relaxed = 'wet relaxed'): number {
  const perSquareCm = (gauge.stitches / 10) * (gauge.rows / 10);
  return 10 * Math.sqrt(MUNDEN_KS[relaxed] / perSquareCm);
}
