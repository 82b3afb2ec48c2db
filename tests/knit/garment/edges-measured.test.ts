import { describe, expect, it } from 'vitest';
import { knittedMm } from '../../../src/knit/garment/cap.ts';
import { knitRaglan } from '../../../src/knit/garment/raglan.ts';
import type { EdgeStep } from '../../../src/knit/shape/edge-steps.ts';

/* Reckoned by hand at 5 mm a stitch and 8 mm a pair of rows. */
const gauge = { stitches: 20, rows: 25 };

describe('a knitted edge of ten pairs of rows', () => {
  const mm = (...steps: readonly EdgeStep[]) => knittedMm({ steps, gauge }, 10);
  const slant = (height: number) => Math.hypot(5, height) - height;

  it('is as long as its rows are high where it stands upright', () => {
    expect(mm()).toBe(80);
  });

  it('is longer by a slant where a stitch is decreased or increased: two rows beside one, one of the first of two', () => {
    expect(mm({ pair: 4, by: -1, as: 'single' })).toBeCloseTo(80 + slant(8), 6);
    expect(mm({ pair: 4, by: 1, as: 'single' })).toBeCloseTo(80 + slant(8), 6);
    expect(mm({ pair: 4, by: -2, as: 'single' })).toBeCloseTo(80 + slant(4) + slant(8), 6);
    expect(mm({ pair: 0, by: -1, as: 'single' })).toBeCloseTo(80 + slant(8), 6);
  });

  it('is longer by what is bound off in the midst of it, and not by what is bound off first', () => {
    expect(mm({ pair: 0, by: -6, as: 'group' })).toBe(80);
    expect(mm({ pair: 5, by: -6, as: 'group' })).toBeGreaterThan(100);
    expect(mm({ pair: 5, by: -6, as: 'group' })).toBeLessThanOrEqual(110);
    // above its top there is nothing
    expect(mm({ pair: 10, by: -1, as: 'single' })).toBe(80);
  });
});

describe('a raglan’s line of 20 stitches to 4, in 12 pairs of rows', () => {
  const line = (step: number, tapers: 'together' | 'blended', end = 4) =>
    knitRaglan({ gauge, pairs: 12, start: 20, step, end, tapers }).knitted;

  it.each([
    [0, undefined],
    [1, { pair: 0, by: -1, as: 'single' }],
    [2, { pair: 0, by: -2, as: 'single' }],
    [3, { pair: 0, by: -3, as: 'group' }],
    [6, { pair: 0, by: -6, as: 'group' }],
  ] as const)('binds off %i at its foot, and stands for a pair of rows', (step, first) => {
    const { at, steps } = line(step, 'together');
    expect(steps.find(({ pair }) => pair === 0)).toEqual(first);
    expect([at[0], at.at(-1)]).toEqual([20 - step, 4]);
    expect(steps.reduce((sum, { by }) => sum - by, 0)).toBe(16);
  });

  it('has the longer intervals first where it is easy to keep in mind', () => {
    // ten in eleven pairs of rows: one of two, then one in each
    expect(line(6, 'together').at).toEqual([14, 14, 13, 12, 11, 10, 9, 8, 7, 6, 5, 4]);
    // 14 in eleven pairs: the first three of them in both rows
    expect(line(2, 'together').at).toEqual([18, 16, 14, 12, 11, 10, 9, 8, 7, 6, 5, 4]);
  });

  it('is laid along its line where there is no room for that, or it was not asked for', () => {
    // 23 in eleven pairs are more than one in each row
    expect(line(0, 'together', -3)).toEqual(line(0, 'blended', -3));
    expect(line(10, 'blended').at).not.toEqual(line(10, 'together').at);
  });
});
