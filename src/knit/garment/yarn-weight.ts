/**
 * Yarn weights by the gauge of stocking stitch: Craft Yarn Council, Standard Yarn Weight System; stitches in 4 inches
 * (10 cm), needles in mm; the thickest is worked on 12.75 mm and larger. Weights 2 and 3 overlap at 23 and 24
 * stitches; the other neighbours do not. The least needle of weight 6 is from memory.
 */
const table = [
  { weight: 0, name: 'lace', stitches: [33, 40], needles: [1.5, 2.25] },
  { weight: 1, name: 'super fine', stitches: [27, 32], needles: [2.25, 3.25] },
  { weight: 2, name: 'fine', stitches: [23, 26], needles: [3.25, 3.75] },
  { weight: 3, name: 'light', stitches: [21, 24], needles: [3.75, 4.5] },
  { weight: 4, name: 'medium', stitches: [16, 20], needles: [4.5, 5.5] },
  { weight: 5, name: 'bulky', stitches: [12, 15], needles: [5.5, 8] },
  { weight: 6, name: 'super bulky', stitches: [7, 11], needles: [8, 12.75] },
  { weight: 7, name: 'jumbo', stitches: [1, 6], needles: [12.75, Number.POSITIVE_INFINITY] },
] as const;

export type YarnWeight = (typeof table)[number];

/** The weights whose range takes a gauge (stitches to 100 mm, rounded); none beyond the finest lace. */
export function yarnWeights(stitchesPer100Mm: number): readonly YarnWeight[] {
  const stitches = Math.round(stitchesPer100Mm);
  return table.filter(({ stitches: [least, most] }) => stitches >= least && stitches <= most);
}
