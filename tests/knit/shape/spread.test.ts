import { describe, expect, it } from 'vitest';
import { spread } from '../../../src/knit/shape/spread.ts';
import { told } from '../../told.ts';

const groups = (stitches: number, change: number): readonly number[] => {
  const made = spread(stitches, change);
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.groups;
};

const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
const range = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i);

describe('stitches spread over a row, for every row up to 60 stitches', () => {
  for (const n of range(1, 60)) {
    it(`${n} stitches take every number of increases that there is room for`, () => {
      for (const k of range(1, n - 1)) {
        const laid = groups(n, k);
        expect(laid).toHaveLength(k + 1);
        expect(sum(laid)).toBe(n);
        const between = laid.slice(1, -1);
        expect(Math.max(...between, 0) - Math.min(...between, n)).toBeLessThanOrEqual(
          between.length > 0 ? 1 : 0,
        );
        expect(laid[0]).toBeGreaterThan(0);
        expect(laid[k]).toBeGreaterThan(0);
        expect(Math.abs((laid[0] ?? 0) - (laid[k] ?? 0))).toBeLessThanOrEqual(1);
      }
    });

    it(`${n} stitches take every number of decreases that there is room for`, () => {
      for (const k of range(1, Math.floor(n / 2))) {
        const laid = groups(n, -k);
        expect(sum(laid) + 2 * k).toBe(n);
        const between = laid.slice(1, -1);
        if (between.length > 0) expect(Math.max(...between) - Math.min(...between)).toBeLessThanOrEqual(1);
        expect(Math.abs((laid[0] ?? 0) - (laid[k] ?? 0))).toBeLessThanOrEqual(1);
      }
    });
  }

  it('lays the groups in the same order from either end, but for a half stitch that must go to one of them', () => {
    for (const n of range(2, 60)) {
      for (const k of range(1, n - 1)) {
        const ties = range(1, k).some((i) => ((2 * i - 1) * n) % (2 * k) === k);
        if (!ties) expect([...groups(n, k)].reverse()).toEqual(groups(n, k));
      }
    }
  });

  it('says how many the row can take when it is asked for more', () => {
    expect(spread(40, 40)).toMatchObject({
      ok: false,
      faults: [{ code: 'too many for one row', figures: { stitches: 40, times: 40, mostTimes: 39 } }],
    });
    expect(spread(9, -5)).toMatchObject({
      ok: false,
      faults: [{ code: 'too many for one row', figures: { stitches: 9, times: 5, mostTimes: 4 } }],
    });
  });

  it('refuses halves and nothing', () => {
    for (const [stitches, change] of [
      [40, 2.5],
      [40, Number.NaN],
      [40.5, 2],
      [0, 1],
      [0, 0],
      [-3, 0],
    ] as const)
      expect(spread(stitches, change)).toMatchObject({ ok: false, faults: [{ code: 'bad count' }] });
    expect(groups(7, 0)).toEqual([7]);
    expect(groups(1, 0)).toEqual([1]);
  });

  // 40 and 4: after stitches 5, 15, 25, 35. 10 and 3: after 1.67, 5 and 8.33. Where a half goes is laid down here.
  it.each([
    [40, 4, 44, [5, 10, 10, 10, 5]],
    [10, 3, 13, [2, 3, 3, 2]],
    [3, 1, 4, [2, 1]],
    [40, -4, 36, [4, 8, 8, 8, 4]],
    [10, -3, 7, [1, 1, 1, 1]],
    [6, -3, 3, [0, 0, 0, 0]],
    [7, -1, 6, [3, 2]],
  ])('%i stitches, %i: %i, the plain ones counted out', (stitches, change, after, laid) => {
    expect(spread(stitches, change)).toEqual({ ok: true, value: { stitches, change, after, groups: laid } });
  });
});
