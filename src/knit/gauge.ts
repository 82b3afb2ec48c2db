/** Stitches and rows per 100 mm, after washing; one for each fabric, from a swatch. */
export interface Gauge {
  readonly stitches: number;
  readonly rows: number;
}

/** One inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;

export const widthOf = (stitches: number, gauge: Gauge): number => (stitches * 100) / gauge.stitches;
export const heightOf = (rows: number, gauge: Gauge): number => (rows * 100) / gauge.rows;
