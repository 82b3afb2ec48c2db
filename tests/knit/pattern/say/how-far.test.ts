import { describe, expect, it } from 'vitest';
import { reading } from './said.ts';

/**
 * How many words that say nothing to a reader may stand within what it reads, and how much one sentence may ask for: so
 * far and no farther, since a reader that looks on without end takes what is said behind it.
 */
const words = (n: number) => Array.from({ length: n }, () => 'xx').join(' ');
const fault = (text: string) => reading(text).includes('✗');

describe('a reader', () => {
  it.each<[string, number, (n: number) => string]>([
    ['how stitches are cast on', 6, (n) => `Cast on 40 sts using ${words(n)} method`],
    ['the yarn that is changed to', 7, (n) => `Change to ${words(n)}`],
    ['the name of a multiple', 12, (n) => `${words(n)} (multiple of 8)`],
    ['needles that are changed to', 11, (n) => `Change to ${words(n)} 4 mm needles`],
    [
      'stitches on a holder before a pick-up',
      9,
      (n) => `K 5 sts ${words(n)} from holder, pick up and k 30 sts along neck`,
    ],
    ['an edge that is picked up along', 14, (n) => `Pick up and k 30 sts along ${words(n)}`],
    ['what stands before a pick-up', 24, (n) => `With ${words(n)} pick up and k 30 sts along neck`],
    ['a stated count', 15, (n) => `K 6 rows (24 sts ${words(n)})`],
    ['a count stated behind a row', 12, (n) => `Row 1: K 4 (24 sts ${words(n)})`],
    ['a size that she wants', 5, (n) => `Work in garter st until ${words(n)} is the size you want`],
    ['the name of a fabric', 5, (n) => `Work in ${words(n)} patt for 6 rows`],
    ['the name of a row', 4, (n) => `${words(n)} row (RS): K 4`],
  ])('of %s passes over %i words, and not over one more', (_what, most, text) => {
    for (let n = 1; n <= most; n += 1) expect(fault(text(n)), text(n)).toBe(false);
    expect(fault(text(most + 1)), text(most + 1)).toBe(true);
  });

  it('of the rows of a label takes 400 of them at the most, and none after the 5000th', () => {
    expect(fault('Rows 1 to 401: K 4')).toBe(false);
    expect(fault('Rows 1 to 402: K 4')).toBe(true);
    expect(fault('Row 5000: K 4')).toBe(false);
    expect(fault('Row 5001: K 4')).toBe(true);
  });

  it('of a rib takes as many stitches as a rib may have', () => {
    const face = (text: string) => /face (\w+)/.exec(reading(text))?.[1]?.length;
    expect([40, 41].map((n) => face(`Work in k ${n}, p 1 rib for 6 rows`))).toEqual([41, undefined]);
    expect([19, 20].map((n) => face(`Work in ${n} x 2 rib for 6 rows`))).toEqual([21, undefined]);
    expect([19, 20].map((n) => face(`Work in 2 x ${n} rib for 6 rows`))).toEqual([21, undefined]);
    expect([20, 21].map((n) => face(`K ${n}, p 1 in rib for 6 rows`))).toEqual([21, undefined]);
  });

  it('of a pick-up takes thirty stretches, and of groups thirty', () => {
    const stretches = (n: number) => Array.from({ length: n }, (_, i) => `${i + 1} sts along e`).join(', ');
    const picked = (n: number) => reading(`Pick up and k ${stretches(n)}`).split('along').length - 1;
    expect([29, 30, 31].map(picked)).toEqual([29, 30, 30]);
    const bound = (n: number) =>
      reading(`Bind off 4 sts at beg of next 2 rows${', 3 sts at beg of next 2 rows'.repeat(n - 1)}`).split(
        'stitches',
      ).length - 1;
    expect([29, 30].map(bound)).toEqual([29, 30]);
  });
});
