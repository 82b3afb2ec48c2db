import { describe, expect, it } from 'vitest';
import { easeFor } from '../../src/knit/garment/ease.ts';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import { startingDesign } from '../../src/knit/garment/start.ts';
import { loopLengthMm, MUNDEN_KS } from '../../src/knit/yarn/loop-length.ts';
import { yarnFor } from '../../src/knit/yarn/need.ts';
import { told } from '../told.ts';
import { bodyOf, drafted, inch, perInch } from './drafted.ts';

const METRES_PER_YARD = 0.9144; // international yard and pound agreement, 1959

describe('loop length of plain knitted fabric (D. L. Munden, J. Textile Inst. 50, 1959, T448–T471; constants from memory)', () => {
  it('20 stitches and 28 rows in 10 cm take 1.84 cm a stitch dry relaxed and 1.96 wet relaxed: √(19.0 / 5.6) and √(21.6 / 5.6)', () => {
    expect(loopLengthMm({ stitches: 20, rows: 28 }, 'dry relaxed') / 10).toBeCloseTo(1.842, 3);
    expect(loopLengthMm({ stitches: 20, rows: 28 }) / 10).toBeCloseTo(1.964, 3);
  });

  it('agrees to 1 in 100 with courses = Kc / l and wales = Kw / l: Kc 5.3 and Kw 4.1 wet relaxed, 5.0 and 3.8 dry', () => {
    expect(Math.abs((5.3 * 4.1) / MUNDEN_KS['wet relaxed'] - 1)).toBeLessThan(0.01);
    expect(Math.abs((5.0 * 3.8) / MUNDEN_KS['dry relaxed'] - 1)).toBeLessThan(0.01);
    const lengthCm = 1.5;
    const gauge = { stitches: (4.1 / lengthCm) * 10, rows: (5.3 / lengthCm) * 10 };
    expect(loopLengthMm(gauge) / 10 / lengthCm).toBeCloseTo(1, 2);
  });

  it('a washed fabric is denser than a dry one and not as dense as one relaxed fully: 5.5 and 4.2 (GATE 2015, textile engineering)', () => {
    expect(MUNDEN_KS['wet relaxed']).toBeGreaterThan(MUNDEN_KS['dry relaxed']);
    expect(MUNDEN_KS['wet relaxed']).toBeLessThan(5.5 * 4.2);
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
    if (!need.ok) throw new Error(told(need.faults));
    return need.value.metres / METRES_PER_YARD;
  }
});

/*
 * Patterns in stocking stitch that print gauge, chest, length and yards, as their pages give them: Josh Bennett, Men's
 * Striped Cardigan, 2009 (7, 9 and 10 skeins of 185 yards; its M asks for as much as its XL and is left out); Cathy
 * Payson, My Go To Knit Cardigan, 2018; Megan Goodacre, Comfy Drop Shoulder Sweater, 2015; Pascuali, raglan cardigan at 19 × 27 (melian.co), and Strands of Life 4196,
 * pullover at 22 × 31, without a length. What they do not print is the standard body's.
 */
describe('yarn to buy for garments in print', () => {
  const bennett = { kind: 'cardigan', armhole: 'set-in', table: 'men', gauge: [18, 24] } as const;
  const payson = { kind: 'cardigan', armhole: 'drop', table: 'women', gauge: [18, 26] } as const;
  const goodacre = { kind: 'pullover', armhole: 'drop', table: 'women', gauge: [22, 32] } as const;
  const pascuali = { kind: 'cardigan', armhole: 'raglan', table: 'women', gauge: [19, 27] } as const;
  const strands = { kind: 'pullover', armhole: 'set-in', table: 'women', gauge: [22, 31] } as const;
  const garments = [
    { name: 'Bennett, S', ...bennett, size: 'S', chest: 40, length: 25, sleeve: 21, yards: 1295 },
    { name: 'Bennett, L', ...bennett, size: 'L', chest: 44, length: 27, sleeve: 23, yards: 1665 },
    { name: 'Bennett, XL', ...bennett, size: 'XL', chest: 46, length: 28, sleeve: 24, yards: 1850 },
    { name: 'Payson, smallest', ...payson, size: 'L', chest: 50.5, length: 28, yards: 1386 },
    { name: 'Payson, largest', ...payson, size: '3X', chest: 59.5, length: 30.5, yards: 1584 },
    { name: 'Goodacre, smallest', ...goodacre, size: 'S', chest: 36.75, length: 23.5, yards: 1450 },
    { name: 'Goodacre, largest', ...goodacre, size: '5X', chest: 68.75, length: 25.5, yards: 2610 },
    { name: 'Pascuali, smaller', ...pascuali, size: 'S', chest: 35.4, yards: 1260 },
    { name: 'Pascuali, larger', ...pascuali, size: 'XL', chest: 48, yards: 1680 },
    { name: 'Strands of Life, smaller', ...strands, size: 'S', chest: 36.8, yards: 1176 },
    { name: 'Strands of Life, larger', ...strands, size: 'L', chest: 46.5, yards: 1542 },
  ];

  it.each(garments)(
    '$name: no less than nine tenths of the $yards yards that it asks for, and at most a third more, with a swatch',
    (printed) => {
      const { kind, armhole, table, size, chest, yards } = printed;
      const [stitches, rows] = printed.gauge;
      const standard = bodyOf(table, size);
      const arm = 'sleeve' in printed && printed.sleeve ? inch(printed.sleeve) : standard.arm;
      const body = { ...standard, arm };
      const begun = startingDesign(
        { kind, armhole, neck: 'round', fit: 'standard' },
        body,
        'stocking',
        perInch(stitches / 4, rows / 4),
      );
      const around = inch(chest) - body.chest;
      const made = drafted({
        ...begun,
        // the inches that they print are those of their counts
        seamStitch: false,
        sleeve: { ...begun.sleeve, endsAtWrist: false },
        // the depth of their armholes is not printed either: the body's, with a little ease
        ease: {
          ...begun.ease,
          chest: around,
          hip: inch(chest) - body.hip,
          waist: around,
          armholeDepth: easeFor('standard').armholeDepth,
        },
        lengthMm: 'length' in printed ? inch(printed.length ?? 0) : begun.lengthMm,
      });
      const need = yarnFor({ name: printed.name, pieces: made.recipes });
      if (!need.ok) throw new Error(told(need.faults));
      const ours = need.value.metresToBuy / METRES_PER_YARD;
      expect(ours / yards, `${Math.round(ours)} yards`).toBeGreaterThan(0.895);
      expect(ours / yards, `${Math.round(ours)} yards`).toBeLessThan(4 / 3);
    },
  );
});

/*
 * Least yards that guides ask for a pullover: women's M by stitches to the inch (Knitting & Crocheting All-in-One For
 * Dummies); women's M in fingering and men's L in sport weight (Ajanta Studios, yardage guide). Children's guides ask for
 * half as much again as the formula finds: babies of 12 to 18 months in fingering, toddlers of 2 to 6 and children of 6 to
 * 12 years in sport weight (the same guide); sizes 2 to 10 at 18 × 24 by whole balls of 250 yards, of which the last but
 * one is used up (Caron CAK0329-008151M). 'most' is what they ask for at most.
 */
describe('yarn to buy without a weighed swatch', () => {
  const guide = [
    { table: 'women', size: 'M', perInch: 7.5, least: 1500 },
    { table: 'women', size: 'M', perInch: 6.5, least: 1200 },
    { table: 'women', size: 'M', perInch: 5.5, least: 1000 },
    { table: 'women', size: 'M', perInch: 4.5, least: 800 },
    { table: 'women', size: 'M', perInch: 3.5, least: 600 },
    { table: 'women', size: 'M', perInch: 2.25, least: 400 },
    { table: 'women', size: 'M', perInch: 7, least: 1500 },
    { table: 'men', size: 'L', perInch: 6, least: 1700 },
    { table: 'babies', size: '18 months', perInch: 7, least: 600, most: 700 },
    { table: 'children', size: '4', perInch: 6, least: 800, most: 1000 },
    { table: 'children', size: '8', perInch: 6, least: 1000, most: 1500 },
    { table: 'children', size: '2', perInch: 4.5, least: 315, most: 500 },
    { table: 'children', size: '4', perInch: 4.5, least: 500, most: 750 },
    { table: 'children', size: '6', perInch: 4.5, least: 500, most: 750 },
    { table: 'children', size: '8', perInch: 4.5, least: 750, most: 1000 },
    { table: 'children', size: '10', perInch: 4.5, least: 750, most: 1000 },
  ] as const;

  it.each(guide)(
    'is never below the $least yards of the guide, nor a tenth above its most: $table $size, $perInch stitches to the inch',
    (asked) => {
      const gauge = perInch(asked.perInch, 1.4 * asked.perInch);
      const choices = { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard' } as const;
      const made = drafted(startingDesign(choices, bodyOf(asked.table, asked.size), 'stocking', gauge));
      const need = yarnFor({ name: 'guide', pieces: made.recipes });
      if (!need.ok) throw new Error(told(need.faults));
      const yards = need.value.metresToBuy / METRES_PER_YARD;
      expect(yards).toBeGreaterThanOrEqual(asked.least);
      if ('most' in asked) expect(yards).toBeLessThanOrEqual(1.1 * asked.most);
    },
  );
});

describe('yarn of the sample garment', () => {
  it('is what its makes and sections add up to', () => {
    const need = yarnFor(sampleGarment);
    if (!need.ok) throw new Error(told(need.faults));
    const sections = need.value.makes.flatMap((m) => m.sections);
    expect(sections.reduce((sum, s) => sum + s.metres, 0)).toBeCloseTo(need.value.metres, 6);
  });
});
