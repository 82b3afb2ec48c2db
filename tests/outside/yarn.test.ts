import { describe, expect, it } from 'vitest';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import { yarnFor } from '../../src/knit/index.ts';
import { loopLengthMm, MUNDEN_KS } from '../../src/knit/yarn/loop-length.ts';

const METRES_PER_YARD = 0.9144; // international yard and pound agreement, 1959

describe('loop length of plain knitted fabric (D. L. Munden, J. Textile Inst. 50, 1959, T448–T471; constants from memory)', () => {
  it('20 stitches and 28 rows in 10 cm take about 1.9 cm a stitch', () => {
    expect(loopLengthMm({ stitches: 20, rows: 28 }) / 10).toBeCloseTo(1.9, 0);
    expect(loopLengthMm({ stitches: 20, rows: 28 }, 'dry relaxed') / 10).toBeGreaterThan(1.8);
    expect(loopLengthMm({ stitches: 20, rows: 28 }) / 10).toBeLessThan(2.0);
  });

  it('agrees with courses = Kc / l and wales = Kw / l: Kc 5.3 and Kw 4.1 multiply to Ks 21.6, 5.0 and 3.8 to 19.0', () => {
    expect(5.3 * 4.1).toBeCloseTo(MUNDEN_KS['wet relaxed'], 0);
    expect(5.0 * 3.8).toBeCloseTo(MUNDEN_KS['dry relaxed'], 0);
    const lengthCm = 1.5;
    const gauge = { stitches: (4.1 / lengthCm) * 10, rows: (5.3 / lengthCm) * 10 };
    expect(loopLengthMm(gauge) / 10).toBeCloseTo(lengthCm, 1);
  });

  it('half as dense a fabric has stitches √2 times as long', () => {
    const fine = loopLengthMm({ stitches: 28, rows: 40 });
    expect(loopLengthMm({ stitches: 14, rows: 40 }) / fine).toBeCloseTo(Math.SQRT2, 10);
  });
});

describe('yards for an adult sweater (Knitting & Crocheting All-in-One For Dummies, article 197579 at dummies.com)', () => {
  const printed: readonly (readonly [name: string, perInch: number, least: number, most: number])[] = [
    ['6–7 stitches an inch', 6.5, 1200, 2500],
    ['5–6 stitches an inch', 5.5, 1000, 2000],
    ['4–5 stitches an inch', 4.5, 800, 1500],
  ];

  it.each(printed)('%s', (_name, perInch, least, most) => {
    const yards = areaYards(perInch);
    expect(yards).toBeGreaterThanOrEqual(least);
    expect(yards).toBeLessThanOrEqual(most);
  });

  /** Two panels of 54 × 64 cm and two sleeves of 33 × 46 cm on average: a plain sweater of ours, in stocking stitch. */
  function areaYards(perInch: number): number {
    const stitches = (perInch * 100) / 25.4;
    const gauge = { stitches, rows: stitches * 1.4 };
    const panel = (name: string, width: number, height: number, makes: number) => ({
      name,
      makes,
      gauge,
      parts: [
        {
          name,
          from: { castOn: Math.round((width * gauge.stitches) / 100) },
          end: 'bind off' as const,
          sections: [
            {
              name,
              rows: Math.round((height * gauge.rows) / 100),
              fabric: 'stocking' as const,
              needle: 4,
              shaping: [],
            },
          ],
        },
      ],
    });
    const need = yarnFor({
      name: 'plain',
      pieces: [panel('body', 540, 640, 2), panel('sleeve', 330, 460, 2)],
    });
    if (!need.ok) throw new Error(need.faults[0]?.sentence);
    return need.value.metres / METRES_PER_YARD;
  }
});

describe('yarn of the sample garment', () => {
  it('is what its makes and sections add up to', () => {
    const need = yarnFor(sampleGarment);
    if (!need.ok) throw new Error(need.faults[0]?.sentence);
    const sections = need.value.makes.flatMap((m) => m.sections);
    expect(sections.reduce((sum, s) => sum + s.metres, 0)).toBeCloseTo(need.value.metres, 6);
  });
});
