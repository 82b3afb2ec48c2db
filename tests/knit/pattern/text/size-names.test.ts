import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { table } from '../table.ts';
import { expectCut } from './cut.ts';

/** How patterns are usually set: common practice, no published source. */
describe('sizes are called what a line calls them', () => {
  it.each(
    table(`
      Sizes: {S (M, L)|S [M, L]|S, M, L|S; M; L|S: M: L|S / M / L|S - M - L|S – M – L|S — M — L|S, M and L|S (M) L} → S | M | L
      {Size: S (M, L)|Size S (M, L)|Sizes S (M, L)|To fit S (M, L)|To fit bust S (M, L)|To fit chest S (M, L)|To fit age S (M, L)|To fit size S (M, L)|To fit sizes S (M, L)|Size range S (M, L)|Finished bust S (M, L)|Finished chest: S (M, L)|size - S (M, L)|Sizes – S (M, L)} → S | M | L
      In the sizes S (M, L) → S | M | L
      Sizes: S | M | L → S | M | L
      Here sizes: 80 (90) cm → 80 | 90
      Nothing here ¶ Sizes: S (M, L) ¶ Sizes: A (B, C) → S | M | L
      {Directions are for size 12. Changes for sizes 14 and 16 are in parentheses|Directions for size 12; changes for 14, 16 in brackets|Size 12 (changes for sizes 14 & 16 is in parenth.)} → 12 | 14 | 16
      Directions are for size 12 and no more → 
      Sizes: S only → 
      Sizes: S (M, L) only → 
      Sizes: S → 
      Sizes: S (a very long name here, L) → 
      Sizes: S (a sixteen letter, L) → S | a sixteen letter | L
      Sizes: {cm|in|inches|ins|year|years|yr|yrs|month|months|to fit|ladies|men|women|chest|bust|s'}, S, M → S | M
      Sizes: S. (M., L.) → S | M | L
      Sizes: S.5 (M.5, L.5) → S.5 | M.5 | L.5
      Sizes S (M, L) ¶ and so on → S | M | L
      The sizes: S (M, L) ¶ and (so, on) → S | M | L
      Sizes: , S, , M → S | M
      A long story about sizes that goes on. S (M, L) → 
      Sizes and so on: that is it (M, L) → so on | that is it | M | L
      Size ¶ S (M, L) → 
    `),
  )('$line', expectCut('size-names'));
});

/** What a slash or a bracket between names parts is told by how many numbers the lists below have. */
describe('sizes of a text with three numbers each', () => {
  it.each([
    ['To fit ages 2/3 (4/5, 6/7) yrs', '2/3 | 4/5 | 6/7'],
    ['Age 2 (4: 6) yrs', '2 | 4 | 6'],
    ['Sizes: 34/36/38', '34 | 36 | 38'],
    ['Sizes: S (34) M (38) L (42)', 'S (34) | M (38) | L (42)'],
    [
      'To fit size cm: 80-85 (Size S), 90-95 (Size M), 100-105 (Size L)',
      '80-85 (S) | 90-95 (M) | 100-105 (L)',
    ],
    ['Size 4. Changes for sizes 6 and 8 are given in parentheses', '4 | 6 | 8'],
    ['Size 2 years\nSizes 4 and 6 years in parentheses', '2 | 4 | 6'],
    ['Directions are given for size 34.\nChanges for sizes 36 and 38\nare in parentheses.', '34 | 36 | 38'],
    [
      'To fit bust 32 to 34 (36 to 38: 40 to 42) in. (81 to 86 (91 to 97: 101 to 107) cm)',
      '32 to 34 | 36 to 38 | 40 to 42',
    ],
    ['Size: 9 months, Gauge: 8 st to 1"', '1 | 2 | 3'],
    ['Work 2 rows (all sizes) (38 (45-45) sts left).', '1 | 2 | 3'],
  ])('%s', (line, names) => {
    expect(readPattern(`${line}\nCast on 20 (24, 28) sts.`).sizes.join(' | ')).toBe(names);
  });

  it.each(['S', '34'])('are meant by either of their names: %s', (name) => {
    const text = `Sizes: S (34) M (38) L (42)\nCast on 20 (24, 28) sts.\nSize ${name} only: k 1 row.\nSizes 1 and 3 only: k 1 row.`;
    const rows = [0, 1, 2].map(
      (size) => readPattern(text, { size }).lines.flatMap((line) => line.rows).length,
    );
    expect(rows).toEqual([2, 0, 1]);
  });

  it('may be many, of several words each', () => {
    const names = ['Mum no 2', '3 months', '6 months', '12 months', '18 months', '24 months', 'für Opa'];
    const text = `Sizes: ${names[0]} (${names.slice(1).join(', ')})\nCast on 20 (24, 28, 30, 32, 34, 36) sts.\nSizes ${names.slice(0, 5).join(', ')} and ${names[5]} only: Row 1 (RS): knit. (20 (24, 28, 30, 32, 34, –) sts)`;
    const read = names.map((_, size) => readPattern(text, { size }).lines);
    expect(read.map((lines) => lines.flatMap((line) => line.rows).length)).toEqual([1, 1, 1, 1, 1, 1, 0]);
    expect(read.flat().flatMap(({ faults }) => faults)).toEqual([]);
  });
});
