import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { byPublishedRules } from '../../../src/knit/garment/published-rules.ts';
import { even } from './spelled.ts';

const { body, ease, gauges } = even;
const ruled = (changes: Partial<Design> = {}): Design => byPublishedRules({ ...even, ...changes });

/* Reckoned by hand from the rules' own figures: a panel of (760 + 40) / 2 = 400 mm, a back of 330 mm, an arm of 300 mm. */
describe('what published rules choose for a design', () => {
  it('of a set-in sleeve: what is bound off first, the top of the cap, the edge’s ease', () => {
    const made = ruled();
    // 5.5 in the hundred of 400 mm are less than 23; 70 mm are less than a quarter of 300
    expect(made.underarmMm).toBe(22);
    expect(made.sleeve.capTopMm).toBe(70);
    expect(made.armholeBand).toEqual({ ...even.armholeBand, percent: 88 });
    // 400 less 30 at either side leaves the 340 that are wanted
    expect(made.ease).toEqual({ ...ease, crossBack: 10, wrist: 40, waist: 30, armholeDepth: 20 });
  });

  it('of a broad panel no more than an inch’s bind-off and 30 mm at either side', () => {
    const broad = ruled({ body: { ...body, chest: 1000 } });
    expect(broad.underarmMm).toBe(23);
    expect(broad.ease.crossBack).toBe(10);
    // a panel of 380 mm loses 28.5 at either side: 323 mm across, seven less than the back
    expect(ruled({ body: { ...body, chest: 720 } }).ease.crossBack).toBe(-7);
    expect(ruled({ body: { ...body, upperArm: 240 } }).sleeve.capTopMm).toBe(65);
  });

  it('no more than 60 mm of ease at a wrist, and 30 at a waist at least', () => {
    expect(ruled({ ease: { ...ease, wrist: 61, waist: 31 } }).ease).toMatchObject({ wrist: 60, waist: 31 });
    expect(ruled({ ease: { ...ease, wrist: 59, waist: 29 } }).ease).toMatchObject({ wrist: 59, waist: 30 });
  });

  it('of a vest an armhole that lies inside the cross back by its band, and is as much deeper', () => {
    // 330 less twice 16 + 8.25; 20 + 16 + 15
    expect(ruled({ kind: 'vest' }).ease).toMatchObject({ crossBack: -48, armholeDepth: 51 });
    expect(ruled({ kind: 'vest', body: { ...body, crossBack: 440 } }).ease.crossBack).toBe(340 - 440);
  });

  it('a whole stitch for each seam where four of them are wider than a fit has to spare', () => {
    const at = (stitches: number) =>
      ruled({ gauges: { ...gauges, stocking: { stitches, rows: 25 } } }).seamStitch;
    expect([17, 18, 18.5, 20].map(at)).toEqual([true, true, undefined, undefined]);
    expect(ruled({ gauges: {} }).seamStitch).toBeUndefined();
  });

  it.each(['raglan', 'drop', 'indented'] as const)(
    'of a sleeve without a cap, as on a %s, no more than the ease',
    (armhole) => {
      const made = ruled({ armhole, ease: { ...ease, wrist: 100 } });
      expect(made).not.toHaveProperty('underarmMm');
      expect(made.sleeve).toEqual(even.sleeve);
      expect(made.armholeBand).toEqual(even.armholeBand);
      expect(made.ease).toMatchObject({ wrist: 60, waist: 30, crossBack: 10 });
    },
  );
});
