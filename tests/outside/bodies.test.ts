import { describe, expect, it } from 'vitest';
import { type BodyTable, bodyOfSize, bodyTables } from '../../src/knit/garment/bodies.ts';
import type { Body } from '../../src/knit/garment/design.ts';
import { easeFor, fitOf, fits, fitsByEase } from '../../src/knit/garment/ease.ts';
import { yarnWeights } from '../../src/knit/garment/yarn-weight.ts';
import { MM_PER_INCH } from '../../src/knit/gauge.ts';

type Range = readonly [least: number, most: number];
const one = (inches: number): Range => [inches, inches];

/** Whether each size lies within the published range, to 0.1 mm. */
function within(table: BodyTable, name: keyof Body, published: Readonly<Record<string, Range>>): void {
  for (const [size, [least, most]] of Object.entries(published)) {
    const mm = bodyOfSize(table, size)?.[name] ?? Number.NaN;
    expect(mm, `${table} ${size} ${name}`).toBeGreaterThanOrEqual(least * MM_PER_INCH - 0.1);
    expect(mm, `${table} ${size} ${name}`).toBeLessThanOrEqual(most * MM_PER_INCH + 0.1);
  }
}

describe('body tables', () => {
  it('women are those of the Craft Yarn Council (from memory)', () => {
    within('women', 'chest', {
      XS: [28, 30],
      S: [32, 34],
      M: [36, 38],
      L: [40, 42],
      XL: [44, 46],
      '2X': [48, 50],
      '3X': [52, 54],
      '4X': [56, 58],
      '5X': [60, 62],
    });
    within('women', 'napeToWrist', {
      XS: [27, 27.5],
      S: [28, 28.5],
      M: [29, 29.5],
      L: [30, 30.5],
      XL: [31, 31.5],
      '2X': [31.5, 32],
      '3X': [32.5, 33],
      '4X': [32.5, 33],
      '5X': [33, 33.5],
    });
    within('women', 'napeToWaist', {
      XS: one(16.5),
      S: one(17),
      M: one(17.25),
      L: one(17.5),
      XL: one(17.75),
      '2X': one(18),
      '3X': one(18),
      '4X': one(18.5),
      '5X': one(18.5),
    });
    within('women', 'crossBack', {
      XS: [14, 14.5],
      S: [14.5, 15],
      M: [16, 16.5],
      L: [17, 17.5],
      XL: one(17.5),
      '2X': one(18),
      '3X': one(18),
      '4X': one(18.5),
      '5X': one(18.5),
    });
    within('women', 'upperArm', {
      XS: one(9.75),
      S: one(10.25),
      M: one(11),
      L: one(12),
      XL: one(13.5),
      '2X': one(15.5),
      '3X': one(17),
      '4X': one(18.5),
      '5X': one(19.5),
    });
    within('women', 'armholeDepth', {
      XS: [6, 6.5],
      S: [6.5, 7],
      M: [7, 7.5],
      L: [7.5, 8],
      XL: [8, 8.5],
      '2X': [8.5, 9],
      '3X': [9, 9.5],
      '4X': [9.5, 10],
      '5X': [10, 10.5],
    });
    within('women', 'arm', {
      XS: one(16.5),
      S: one(17),
      M: one(17),
      L: one(17.5),
      XL: one(17.5),
      '2X': one(18),
      '3X': one(18),
      '4X': one(18.5),
      '5X': one(18.5),
    });
  });

  it('men are those of the Craft Yarn Council (from memory)', () => {
    within('men', 'chest', { S: [34, 36], M: [38, 40], L: [42, 44], XL: [46, 48], '2X': [50, 52] });
    within('men', 'napeToWrist', {
      S: [32, 32.5],
      M: [33, 33.5],
      L: [34, 34.5],
      XL: [35, 35.5],
      '2X': [36, 36.5],
    });
    within('men', 'crossBack', {
      S: [15.5, 16],
      M: [16.5, 17],
      L: [17.5, 18],
      XL: [18, 18.5],
      '2X': [18.5, 19],
    });
    within('men', 'arm', { S: one(18), M: one(18.5), L: one(19.5), XL: one(20), '2X': one(20.5) });
    within('men', 'upperArm', { S: one(12), M: one(13), L: one(15), XL: one(16), '2X': one(17) });
    within('men', 'armholeDepth', {
      S: [8.5, 9],
      M: [9, 9.5],
      L: [9.5, 10],
      XL: [10, 10.5],
      '2X': [10.5, 11],
    });
  });

  it('children and babies are those of the Craft Yarn Council (from memory)', () => {
    const list = (sizes: readonly string[], inches: readonly number[]): Record<string, Range> =>
      Object.fromEntries(sizes.map((size, i) => [size, one(inches[i] ?? Number.NaN)]));
    const years = ['2', '4', '6', '8', '10', '12', '14', '16'];
    within('children', 'crossBack', list(years, [9.25, 9.75, 10.25, 10.75, 11.25, 12, 12.25, 13]));
    within('children', 'upperArm', list(years, [7, 7.5, 8, 8.5, 8.75, 9, 9.25, 9.5]));
    within('children', 'napeToWaist', list(years, [8.5, 9.5, 10.5, 12.5, 14, 15, 15.5, 16]));
    within('children', 'armholeDepth', list(years, [4.25, 4.75, 5, 5.5, 6, 6.5, 7, 7.5]));
    within('children', 'arm', list(years, [8.5, 10.5, 11.5, 12.5, 13.5, 15, 16, 16.5]));
    within('children', 'chest', list(years, [21, 23, 25, 26.5, 28, 30, 31.5, 32.5]));
    const months = ['3 months', '6 months', '12 months', '18 months', '24 months'];
    within('babies', 'chest', list(months, [16, 17, 18, 19, 20]));
    within('babies', 'napeToWrist', list(months, [10.5, 11.5, 12.5, 14, 18]));
    within('babies', 'crossBack', list(months, [7.25, 7.75, 8.25, 8.5, 8.75]));
    within('babies', 'armholeDepth', list(months, [3.25, 3.5, 3.75, 4, 4.25]));
    within('babies', 'arm', list(months, [6, 6.5, 7.5, 8, 8.5]));
  });

  it('no measure of a larger adult size is smaller than that of the size before', () => {
    for (const table of ['women', 'men'] as const) {
      const sizes = bodyTables[table];
      for (let i = 1; i < sizes.length; i += 1) {
        for (const [name, mm] of Object.entries(sizes[i]?.body ?? {})) {
          expect(mm, `${table} ${sizes[i]?.size} ${name}`).toBeGreaterThanOrEqual(
            sizes[i - 1]?.body[name as keyof Body] ?? 0,
          );
        }
      }
    }
  });
});

describe('ease', () => {
  it('classes of fit are those of the Craft Yarn Council (from memory): standard is 2 to 4 inches', () => {
    const published = { 'very close': -1, close: 1.5, standard: 3, loose: 5, oversized: 8 };
    for (const [fit, inches] of Object.entries(published)) expect(fitOf(inches * MM_PER_INCH)).toBe(fit);
    expect(fitsByEase.standard).toEqual([2, 4]);
    for (const fit of fits) expect(fitOf(easeFor(fit).chest)).toBe(fit);
  });
});

describe('yarn weights', () => {
  it('every gauge from 6 to 40 stitches has a weight of the Craft Yarn Council; only 23 and 24 have two', () => {
    for (let stitches = 6; stitches <= 40; stitches += 1) {
      expect(yarnWeights(stitches)).toHaveLength(stitches === 23 || stitches === 24 ? 2 : 1);
    }
    // Craft Yarn Council, chart: light 21 to 24 on 3.75 to 4.5 mm; medium 16 to 20 on 4.5 to 5.5 mm
    expect(yarnWeights(22)[0]).toMatchObject({ weight: 3, needles: [3.75, 4.5] });
    expect(yarnWeights(18)[0]).toMatchObject({ weight: 4, needles: [4.5, 5.5] });
  });
});
