/** Lengths for the scale bar, mm: round ones in the unit in use. */
const bars: Readonly<Record<'cm' | 'in', readonly number[]>> = {
  cm: [10, 20, 50, 100, 200, 500],
  in: [0.5, 1, 2, 4, 8, 20].map((inches) => inches * 25.4),
};

/** The longest round length that takes no more than two fifths of the drawing's width. */
export const scaleBarMm = (widthMm: number, unit: 'cm' | 'in'): number =>
  bars[unit].reduce((best, length) => (length <= widthMm * 0.4 ? length : best));
