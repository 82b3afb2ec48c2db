import { expect, it } from 'vitest';
import { yarnWeights } from '../../../src/knit/garment/yarn-weight.ts';

/* Craft Yarn Council, Standard Yarn Weight System: stitches to 4 inches and needles in mm; the least and the thickest from memory. */
it.each([
  [0, 'lace', 33, 40, 1.5, 2.25],
  [1, 'super fine', 27, 32, 2.25, 3.25],
  [2, 'fine', 23, 26, 3.25, 3.75],
  [3, 'light', 21, 24, 3.75, 4.5],
  [4, 'medium', 16, 20, 4.5, 5.5],
  [5, 'bulky', 12, 15, 5.5, 8],
  [6, 'super bulky', 7, 11, 8, 12.75],
  [7, 'jumbo', 1, 6, 12.75, Number.POSITIVE_INFINITY],
])('weight %i is %s: %i to %i stitches on %d to %d mm', (weight, name, least, most, thinnest, thickest) => {
  const at = (stitches: number) => yarnWeights(stitches).find((one) => one.weight === weight);
  for (const stitches of [least - 0.5, most + 0.49])
    expect(at(stitches)).toMatchObject({ name, needles: [thinnest, thickest] });
  expect([at(least - 0.51), at(most + 0.51)]).toEqual([undefined, undefined]);
});
