import { describe, expect, it } from 'vitest';
import { type BodyTable, bodyOfSize, bodyTables, type SizedBody } from '../../src/knit/garment/bodies.ts';
import type { Body } from '../../src/knit/garment/design.ts';
import { easeFor, type Fit, fits, fitsByEase } from '../../src/knit/garment/ease.ts';
import { yarnWeights } from '../../src/knit/garment/yarn-weight.ts';
import { MM_PER_INCH } from '../../src/knit/gauge.ts';

type Range = readonly [least: number, most: number];
const inch = (inches: number): number => inches * MM_PER_INCH;
const about = (inches: number, by: number): Range => [inches - by, inches + by];

/** Whether each size lies within the published range in inches, to 0.1 mm. */
function within(table: BodyTable, name: keyof Body, published: Readonly<Record<string, Range>>): void {
  for (const [size, [least, most]] of Object.entries(published)) {
    const mm = bodyOfSize(table, size)?.[name] ?? Number.NaN;
    expect(mm, `${table} ${size} ${name}`).toBeGreaterThanOrEqual(inch(least) - 0.1);
    expect(mm, `${table} ${size} ${name}`).toBeLessThanOrEqual(inch(most) + 0.1);
  }
}

/** A published row of figures, read between its columns. */
function between(columns: readonly number[], figures: readonly number[], at: number): number {
  const i = columns.findIndex((column) => column > at - 0.001);
  const [left = 0, right = 0] = [columns[i - 1], columns[i]];
  const [low = 0, high = 0] = [figures[i - 1], figures[i]];
  return low + ((high - low) * (at - left)) / (right - left);
}

const chestInches = (size: SizedBody): number => size.body.chest / MM_PER_INCH;

describe('body tables', () => {
  it('women’s chests are the busts to fit of the Craft Yarn Council’s nine sizes: 30 inches for XS, 4 more for each next (Yay For Yarn, Dotty Pullover, which names that standard)', () => {
    bodyTables.women.forEach((size, i) => {
      expect(chestInches(size), size.size).toBeLessThanOrEqual(30 + 4 * i);
      expect(chestInches(size), size.size).toBeGreaterThanOrEqual(28 + 4 * i);
    });
  });

  it('children’s chests are those that a yarn maker prints for 2, 4, 6, 8 and 10 years (Caron, Child’s Crew, CAK0329-008151M)', () => {
    const printed = { '2': 21, '4': 23, '6': 25, '8': 26.5, '10': 28 };
    for (const [size, inches] of Object.entries(printed))
      within('children', 'chest', { [size]: about(inches, 0) });
  });

  // WHO Child Growth Standards, head circumference for age, 2007: medians in cm and, from two years on, two standard
  // deviations either way; as kept in a public repository of growth data
  it('babies’ heads lie between the medians of girls and boys in the WHO’s growth standards', () => {
    const medians: Readonly<Record<string, Range>> = {
      '3 months': [39.5, 40.5],
      '6 months': [42.2, 43.3],
      '12 months': [44.9, 46.1],
      '18 months': [46.2, 47.4],
      '24 months': [47.2, 48.3],
    };
    expect(bodyTables.babies.map(({ size }) => size)).toEqual(Object.keys(medians));
    for (const { size, body } of bodyTables.babies) {
      expect(body.head / 10, size).toBeGreaterThanOrEqual(medians[size]?.[0] ?? Number.NaN);
      expect(body.head / 10, size).toBeLessThanOrEqual(medians[size]?.[1] ?? Number.NaN);
    }
  });

  it('heads at 2 and 4 years lie within two standard deviations of the WHO’s medians', () => {
    const heads = { '2': [44.4, 51], '4': [46.5, 53.1] } as const;
    for (const [size, [least, most]] of Object.entries(heads)) {
      const head = (bodyOfSize('children', size)?.head ?? Number.NaN) / 10;
      expect(head, size).toBeGreaterThan(least);
      expect(head, size).toBeLessThan(most);
    }
  });

  // ANSUR II, the survey of 1,986 women and 4,082 men of the U.S. Army (Gordon et al., NATICK/TR-15/007, 2014): first
  // and 99th percentile of buttock and wrist circumference, mm, as computed from its public data in a public repository.
  // A soldier is no 3X: the sizes beyond the percentiles are left out.
  it('hips and wrists of the sizes that a survey of soldiers has lie between its first and 99th percentile', () => {
    const survey = [
      ['women', ['S', 'M', 'L', 'XL'], [867, 1206.3], [138, 174]],
      ['men', ['S', 'M', 'L'], [861.8, 1218], [156, 198]],
    ] as const;
    for (const [table, sizes, hip, wrist] of survey) {
      for (const size of sizes) {
        within(table, 'hip', { [size]: [hip[0] / MM_PER_INCH, hip[1] / MM_PER_INCH] });
        within(table, 'wrist', { [size]: [wrist[0] / MM_PER_INCH, wrist[1] / MM_PER_INCH] });
      }
    }
  });

  it('a cross back is within an inch of the shoulder to shoulder of a published cardigan for that bust, S to 2X (Pope Knits, Heaven: nine sizes with 2½ inches of ease)', () => {
    const busts = [34, 37, 41, 45, 49, 53, 57, 61, 65].map((finished) => finished - 2.5);
    const crossBacks = [14, 15, 16.5, 17.5, 18.5, 19, 20, 20.5, 22.5];
    for (const size of bodyTables.women.filter((one) => ['S', 'M', 'L', 'XL', '2X'].includes(one.size)))
      within('women', 'crossBack', { [size.size]: about(between(busts, crossBacks, chestInches(size)), 1) });
  });

  it('an upper arm leaves a published pullover’s sleeve for that bust 1 to 3 inches of ease, S to 2X (Gift of Knitting, Rain: seven sizes)', () => {
    const busts = [29, 33, 36, 40, 43, 46, 49];
    const sleeves = [11.25, 12, 12.75, 13.5, 14.75, 16.5, 18];
    for (const size of bodyTables.women.filter((one) => ['S', 'M', 'L', 'XL', '2X'].includes(one.size))) {
      const sleeve = between(busts, sleeves, chestInches(size));
      within('women', 'upperArm', { [size.size]: [sleeve - 3, sleeve - 1] });
    }
  });

  // Sweaters He and She, Star Book No. 223 (PG 65789): coat and vest for ladies of 32, 34, 36 and men of 38, 40, 42
  // inches (sizes by Star Book No. 201, PG 61105, p. 14); Star Book No. 220 (PG 66272) for 2 (4) years
  it('armhole depths lie between half an inch less than a coat’s and a vest’s in a leaflet of six sizes', () => {
    within('women', 'armholeDepth', { S: [6.5, 8], M: [7, 8.5] });
    within('men', 'armholeDepth', { S: [7.5, 9], M: [8, 9.5], L: [8.5, 10] });
    within('children', 'armholeDepth', { '2': about(4.5, 0.5), '4': about(5, 0.5) });
  });

  it('arms are within an inch of the sleeves to the underarm in those leaflets', () => {
    within('women', 'arm', { S: about(16.5, 1), M: about(17.5, 1) });
    within('men', 'arm', { S: about(18, 1), M: about(19, 1), L: about(20, 1) });
    within('children', 'arm', { '2': about(9, 1), '4': about(10, 1) });
  });

  it('nape to wrist and to waist, of which nothing published is at hand, are the Craft Yarn Council’s as remembered (from memory, not a check from outside)', () => {
    within('women', 'napeToWrist', { XS: [27, 27.5], M: [29, 29.5], '2X': [31.5, 32], '5X': [33, 33.5] });
    within('men', 'napeToWrist', { S: [32, 32.5], L: [34, 34.5], '2X': [36, 36.5] });
    within('women', 'napeToWaist', { XS: about(16.5, 0), M: about(17.25, 0), '5X': about(18.5, 0) });
    within('children', 'napeToWaist', { '2': about(8.5, 0), '8': about(12.5, 0), '16': about(16, 0) });
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
  const within = (fit: Fit, mm: number): boolean =>
    mm >= inch(fitsByEase[fit][0]) && mm <= inch(fitsByEase[fit][1]);

  // Lion Brand's table of that standard, quoted at gratefullyinhisgrace.blogspot.com, 4 August 2011. The Council's chart
  // of August 2021 calls zero ease 'close': these are the classes of the older one.
  it('the classes of fit are those of the Craft Yarn Council before 2021: none, 1 to 2, 2 to 4, 4 to 6, and more than 6 inches', () => {
    const published = { 'very close': 0, close: 1.5, standard: 3, loose: 5, oversized: 6.5 };
    for (const fit of fits) expect(within(fit, inch(published[fit])), fit).toBe(true);
    expect([fitsByEase.close, fitsByEase.standard, fitsByEase.loose]).toEqual([
      [1, 2],
      [2, 4],
      [4, 6],
    ]);
  });

  it('a fit that is chosen eases the chest by what its class has', () => {
    for (const fit of fits) expect(within(fit, easeFor(fit).chest), fit).toBe(true);
  });
});

describe('yarn weights', () => {
  it('every gauge from 6 to 40 stitches has a weight of the Craft Yarn Council; only 23 and 24 have two', () => {
    for (let stitches = 6; stitches <= 40; stitches += 1) {
      expect(yarnWeights(stitches)).toHaveLength(stitches === 23 || stitches === 24 ? 2 : 1);
    }
  });

  // the Craft Yarn Council's Standard Yarn Weight System; below 6 and the names of 0 from memory
  it('each weight has its name and its stitches to 4 inches; finer than lace is none', () => {
    const all = Array.from({ length: 45 }, (_, stitches) => stitches);
    const ranges: Record<string, number[]> = {};
    for (const stitches of all)
      for (const { weight, name } of yarnWeights(stitches)) {
        const [least = stitches] = ranges[`${weight} ${name}`] ?? [];
        ranges[`${weight} ${name}`] = [least, stitches];
      }
    expect(ranges).toEqual({
      '0 lace': [33, 40],
      '1 super fine': [27, 32],
      '2 fine': [23, 26],
      '3 light': [21, 24],
      '4 medium': [16, 20],
      '5 bulky': [12, 15],
      '6 super bulky': [7, 11],
      '7 jumbo': [1, 6],
    });
    expect([yarnWeights(20.4), yarnWeights(20.5), yarnWeights(40.5)].map((of) => of[0]?.name)).toEqual([
      'medium',
      'light',
      undefined,
    ]);
  });

  // Craft Yarn Council, Standard Yarn Weight System: 0 to 2 in its guide to yarn weights, 3 to 7 in the chart as
  // 222handspun.com has it; the least needle of 6 from memory
  it('has the chart’s stitches and needles; the thickest has no largest needle', () => {
    const chart = [
      [36, 0, [1.5, 2.25]],
      [30, 1, [2.25, 3.25]],
      [26, 2, [3.25, 3.75]],
      [22, 3, [3.75, 4.5]],
      [18, 4, [4.5, 5.5]],
      [14, 5, [5.5, 8]],
      [9, 6, [8, 12.75]],
    ] as const;
    for (const [stitches, weight, needles] of chart) {
      expect(yarnWeights(stitches)[0]).toMatchObject({ weight, needles });
    }
    expect(yarnWeights(5)[0]).toMatchObject({ weight: 7, needles: [12.75, Number.POSITIVE_INFINITY] });
  });
});
