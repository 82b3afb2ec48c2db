import { expect, it } from 'vitest';
import { loopLengthMm } from '../../../src/knit/yarn/loop-length.ts';
import { yarnFor } from '../../../src/knit/yarn/need.ts';

/* D. L. Munden 1959, constants from memory: stitches in a square centimetre times the loop's length squared. */
it('a loop is as long as its share of the fabric asks: 2 by 2.8 to the centimetre', () => {
  expect(loopLengthMm({ stitches: 20, rows: 28 })).toBeCloseTo(10 * Math.sqrt(21.6 / 5.6), 9);
  expect(loopLengthMm({ stitches: 20, rows: 28 }, 'dry relaxed')).toBeCloseTo(10 * Math.sqrt(19 / 5.6), 9);
  expect(loopLengthMm({ stitches: 40, rows: 56 })).toBeCloseTo(
    loopLengthMm({ stitches: 20, rows: 28 }) / 2,
    9,
  );
});

it('a garment of no piece takes no yarn, and nothing is kept in reserve for it', () => {
  expect(yarnFor({ name: '', pieces: [] })).toMatchObject({
    value: { metres: 0, margin: 0, metresToBuy: 0, correction: 1, makes: [] },
  });
});
