import { describe, expect, it } from 'vitest';
import {
  fitted,
  groupsOf,
  pairsIn,
  parityOf,
  sameParity,
  stitchesIn,
} from '../../../src/knit/garment/whole-numbers.ts';

/* Reckoned by hand at 5 mm a stitch and 8 mm a pair of rows. */
const gauge = { stitches: 20, rows: 25 };

describe('a length', () => {
  it('holds its stitches, whole or not', () => {
    expect([0, 5, 12.5, 400].map((mm) => stitchesIn(mm, gauge))).toEqual([0, 1, 2.5, 80]);
  });

  it('holds the nearest whole pairs of rows, and where it is anything at least so many', () => {
    expect([0, 3.9, 4, 11.9, 12, 200].map((mm) => pairsIn(mm, gauge))).toEqual([0, 0, 1, 1, 2, 25]);
    expect([0, 1, 12].map((mm) => pairsIn(mm, gauge, 1))).toEqual([0, 1, 2]);
    expect(pairsIn(-8, gauge, 1)).toBe(0);
  });
});

describe('widths that lie on one another', () => {
  it.each<[string, readonly number[], readonly number[]]>([
    ['even where that is nearer', [80.2, 68, 32], [80, 68, 32]],
    ['odd where that is', [80.8, 69, 33], [81, 69, 33]],
    ['the worst of them says which: 1 off of 69 goes before 0.4 and 0.4', [80.4, 69, 32.4], [81, 69, 33]],
    ['and 1 off of 68', [80.6, 68, 32.6], [80, 68, 32]],
    ['even where both are as near', [80.5, 32.5], [80, 32]],
    ['a half between two even ones goes up', [81], [81]],
    ['none', [], []],
  ])('are all even or all odd: %s', (_, asked, counts) => {
    expect(sameParity(asked)).toEqual(counts);
  });

  it('go by what lies below them, where it says', () => {
    expect(sameParity([80.8, 69, 33], 'even')).toEqual([80, 70, 34]);
    expect(sameParity([80.2, 68, 32], 'odd')).toEqual([81, 69, 33]);
  });

  it('ask a rib: of four and two, two lie at either end of a piece that is sewn', () => {
    expect(parityOf('rib 2x2')).toBe('even');
    expect(parityOf('stocking')).toBeUndefined();
    expect(parityOf('garter')).toBeUndefined();
  });
});

describe('a count', () => {
  it('is fitted to the nearest with which 2×2 rib goes on over a seam (4 n + 2), the smaller of two as near', () => {
    expect([1, 4, 5, 7, 8, 9, 80, 81].map((n) => fitted('rib 2x2', n))).toEqual([2, 2, 6, 6, 6, 10, 78, 82]);
    expect([0, -3].map((n) => fitted('rib 2x2', n))).toEqual([2, 2]);
    expect(fitted('stocking', 7)).toBe(7);
  });

  it('is parted in groups that differ by one at most, the bigger ones first', () => {
    expect(groupsOf(18, 3)).toEqual([6, 6, 6]);
    expect(groupsOf(17, 3)).toEqual([6, 6, 5]);
    expect(groupsOf(14, 4)).toEqual([4, 4, 3, 3]);
    expect(groupsOf(2, 1)).toEqual([2]);
    expect(groupsOf(1, 3)).toEqual([1, 0, 0]);
  });
});
