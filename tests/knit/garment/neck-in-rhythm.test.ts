import { describe, expect, it } from 'vitest';
import { necks } from '../../../src/knit/garment/kinds/necks.ts';
import { besideNeck, knitNeck, type NeckWish } from '../../../src/knit/garment/neck.ts';
import type { PanelEdge } from '../../../src/knit/garment/panel.ts';
import { even } from './spelled.ts';

/*
 * Half a V of six stitches in ten pairs of rows, the last of them plain: six intervals in nine pairs are three of one pair and
 * three of two. Counted on paper; the order of the intervals is that of the leaflets named in src/knit/garment/neck.ts.
 */
const wish: NeckWish = {
  shape: necks.V,
  gauge: { stitches: 20, rows: 25 },
  from: 50,
  pairs: 10,
  start: 0,
  end: 6,
};
const shorterFirst = [1, 2, 3, 3, 4, 4, 5, 5, 6, 6];
const longerFirst = [0, 1, 1, 2, 2, 3, 4, 5, 6, 6];
/** Beside an outer edge so many stitches from the centre at each of the ten pairs. */
const beside = (outer: readonly (number | undefined)[], more: Partial<NeckWish> = {}) =>
  knitNeck({ ...wish, ...more, beside: (pair) => outer[pair - 50] });
const upright = Array.from({ length: 10 }, () => 30);

describe('a V in rows that are easy to keep in mind', () => {
  it('has its shorter intervals first, and a plain pair of rows at its top', () => {
    const { edge, middle } = beside(upright);
    expect(edge.at).toEqual(shorterFirst);
    expect(edge.steps).toEqual([0, 1, 2, 4, 6, 8].map((pair) => ({ pair, by: -1, as: 'single' })));
    expect(middle).toBe(0);
    expect(edge).toMatchObject({ name: 'neck', from: 50 });
  });

  it('begins beside the one stitch of an odd panel, which is its middle', () => {
    const { edge, middle } = beside(upright, { start: 0.5, end: 6.5 });
    expect(edge.at).toEqual(shorterFirst.map((stitches) => stitches + 0.5));
    expect(middle).toBe(1);
  });

  it('has the longer ones first beside an edge that still widens, where the shorter ones would leave a narrow place', () => {
    // as much as at the top, ten stitches, is left at each pair
    const widening = longerFirst.map((stitches) => stitches + 10);
    expect(beside(widening).edge.at).toEqual(longerFirst);
    expect(beside(shorterFirst.map((stitches) => stitches + 10)).edge.at).toEqual(shorterFirst);
  });

  it('is laid along its line where neither has room, or nothing lies beside it', () => {
    const plain = knitNeck(wish).edge.at;
    expect(plain).not.toEqual(longerFirst);
    expect(plain).not.toEqual(shorterFirst);
    const narrow = longerFirst.map((stitches, pair) => stitches + (pair === 2 ? 9 : 10));
    expect(beside(narrow).edge.at).toEqual(plain);
    // 21 stitches in nine pairs of rows are more than one in each row
    expect(beside(upright, { end: 21 }).edge.at).toEqual(knitNeck({ ...wish, end: 21 }).edge.at);
  });

  it('has room wherever no edge is known beside it', () => {
    expect(beside([]).edge.at).toEqual(shorterFirst);
    expect(beside([undefined, undefined, undefined, ...upright.slice(3)]).edge.at).toEqual(shorterFirst);
    // at its top it is then as wide as its neck
    expect(beside([...shorterFirst.slice(0, 9), undefined]).edge.at).toEqual(shorterFirst);
    expect(beside([...longerFirst.slice(0, 9), undefined]).edge.at).toEqual(longerFirst);
  });

  it('of one pair of rows is shaped in it', () => {
    expect(beside([30], { pairs: 1, end: 2 }).edge.at).toEqual([2]);
    expect(beside([30, 30], { pairs: 2, end: 2 }).edge.at).toEqual([2, 2]);
  });
});

describe('any other neck', () => {
  it('is laid along its curve, whatever lies beside it', () => {
    for (const shape of [necks.round, necks.boat])
      expect(beside(upright, { shape }).edge.at).toEqual(knitNeck({ ...wish, shape }).edge.at);
  });

  it('has what lies level in its middle, both halves of it, and no step for that', () => {
    const { edge, middle } = knitNeck({ ...wish, shape: necks.round, end: 16 });
    expect(middle).toBe(2 * (edge.at[0] ?? 0));
    expect(middle).toBeGreaterThan(6);
    expect(edge.steps.every(({ pair }) => pair > 0)).toBe(true);
    expect(edge.steps.reduce((sum, { by }) => sum - by, 0)).toBe(16 - middle / 2);
  });

  it('that is square stands upright beside all of its width', () => {
    const { edge, middle } = knitNeck({ ...wish, shape: necks.square, end: 16 });
    expect([edge.at, edge.steps, middle]).toEqual([Array.from({ length: 10 }, () => 16), [], 32]);
  });
});

describe('what lies beside a V', () => {
  const edges = [
    { from: 5, at: [40, 41] },
    { from: 7, at: [39, 38] },
  ] as unknown as readonly PanelEdge[];
  const known = (more: Pick<typeof even, 'tapers'> & { edition?: 2 }) =>
    besideNeck({ ...even, ...more }, edges);

  it('is the highest edge that has begun there', () => {
    const at = known({ tapers: 'together', edition: 2 });
    expect([4, 5, 6, 7, 8, 9].map((pair) => at?.(pair))).toEqual([undefined, 40, 41, 39, 38, undefined]);
  });

  it('is not asked for in the first edition, nor where rows are laid along lines', () => {
    expect(known({ tapers: 'together' })).toBeUndefined();
    expect(known({ tapers: 'blended', edition: 2 })).toBeUndefined();
  });
});
