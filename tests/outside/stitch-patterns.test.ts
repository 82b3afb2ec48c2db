import { describe, expect, it } from 'vitest';
import { readPattern } from '../../src/knit/pattern/read-pattern.ts';
import { stitchPatterns } from './patterns/stitch-patterns.ts';

describe('published stitch patterns, read from text', () => {
  it.each(stitchPatterns.map((one) => [`${one.source} (not the book’s: ${one.ours})`, one] as const))(
    '%s',
    (_, { text, of, plus, slipAt }) => {
      const read = readPattern(text);
      const [pattern] = read.patterns;
      expect(pattern).toMatchObject({ of, plus });
      expect(read.patterns).toHaveLength(1);
      const told = read.lines.filter(({ faults }) => faults.length > 0).map(({ line }) => line);
      expect(told).toEqual(slipAt === undefined ? [] : [slipAt]);
    },
  );

  it('come out on the counts that garments use them on: 68, 77, 86, 95, 104 (Star Book No. 223)', () => {
    const crossRib = stitchPatterns.find(({ source }) => source.includes('cross-rib'))?.text ?? '';
    for (const count of [68, 77, 86, 95, 104]) {
      const read = readPattern(
        `${crossRib}\n\nBACK\nCO ${count} sts. Work in cross rib for 8 rows. (${count} sts)`,
      );
      expect(read.lines.flatMap(({ faults }) => faults)).toEqual([]);
    }
  });

  it('on another count is told: 79 is no multiple of 4 plus 1 (PG 26113, broken rib)', () => {
    const read = readPattern(`Broken rib (multiple of 4 plus 1)
Row 1: *K2, p2; rep from * to last st, k1.

BACK
CO 79 sts. Work in broken rib for 10 rows.`);
    const codes = read.lines.flatMap(({ faults }) => faults.map(({ code }) => code));
    expect(codes).toContain('not a multiple');
  });
});

describe('arithmetical slips of printed patterns', () => {
  const stockings = 'Mrs G. Cupples, The Stocking-Knitter’s Manual (PG 57273)';
  const slips: readonly (readonly [string, string])[] = [
    [
      `${stockings}, 2–3 years, merino: 22 + 1 + 22 + 45 on 86`,
      'CO 86 sts.\nNext row: K22, p1, k22, k45. (86 sts)',
    ],
    [
      `${stockings}, lambs’ wool: 12 + 1 + 12 + 25 on 52`,
      'CO 52 sts.\nNext row: K12, p1, k12, k25. (52 sts)',
    ],
    [
      `${stockings}, 4–5 years, fingering: 17 + 1 + 17 + 33 on 66`,
      'CO 66 sts.\nNext row: K17, p1, k17, k33. (66 sts)',
    ],
    [
      'Needlework Economies (PG 48050), toe: 4 fewer at a time from 65 never meets 20',
      'CO 65 sts.\nDec 2 sts at each end of every other row until 20 sts remain.',
    ],
    [
      'Slip stitch vest, Hilde vol. 120 (freevintageknitting.com), large: four groups of 11 leave 25 of 69, not 26',
      'CO 69 sts.\nBO 11 sts at beg of next 4 rows. (26 sts)',
    ],
  ];
  it.each(slips)('%s: is found at its line', (_, text) => {
    const read = readPattern(text);
    expect(read.lines.map(({ faults }) => faults.length > 0)).toEqual([false, true]);
  });

  it('says both figures: the text says 36, the instructions leave 35', () => {
    const read = readPattern('CO 37 sts.\nNext row: K2tog, k to last 2 sts, k2tog. (36 sts)');
    expect(read.lines[1]?.faults).toMatchObject([
      { code: 'count contradicts', figures: { statedStitches: 36, foundStitches: 35 } },
    ]);
  });
});
