import { expect, it } from 'vitest';
import { easeFor, type Fit } from '../../../src/knit/garment/ease.ts';
import type { NeckShape } from '../../../src/knit/garment/kinds/necks.ts';
import { secondDesign, simpleDesign, startingDesign } from '../../../src/knit/garment/start.ts';
import { even } from './spelled.ts';

/* Reckoned by hand from the body of `spelled.ts`: shares are common practice, no published source. */
const { body } = even;
const gauge = { stitches: 20, rows: 25 };
const begun = (neck: NeckShape, armhole: 'drop' | 'set-in' = 'set-in') =>
  simpleDesign({ kind: 'cardigan', armhole, neck, fit: 'standard' }, body, 'stocking', gauge);

it.each<[NeckShape, width: number, depth: number, back: number, band: string]>([
  // 0.27 of the head of 560 mm is wider than 0.38 or 0.42 of the cross back of 330
  ['V', 151, 171, 18, 'rib 1x1 matched'],
  ['round', 151, 76, 18, 'rib 2x2'],
  ['square', 152, 90, 18, 'rib 2x2'],
  ['boat', 205, 22, 22, 'rib 2x2'],
])(
  'a %s neck begins %i mm wide, %i deep in front and %i behind, in %s',
  (shape, widthMm, depthMm, backDepthMm, band) => {
    const design = begun(shape);
    expect(design.neck).toEqual({ shape, widthMm, depthMm, backDepthMm });
    expect(design.neckband).toEqual({ fabric: band, heightMm: 27, mitre: 'every second row' });
  },
);

it('borders, length, slope and buttons come from the body too', () => {
  const design = begun('round');
  expect(design).toMatchObject({
    lengthMm: 580,
    shoulderDropMm: 23,
    silhouette: 'straight',
    hem: { fabric: 'rib 2x2', heightMm: 54, count: 'fitted' },
    cuff: { fabric: 'rib 2x2', heightMm: 54 },
    armholeBand: { fabric: 'rib 2x2', heightMm: 27 },
    frontBand: { fabric: 'rib 1x1 matched', heightMm: 27, buttons: 6, buttonMm: 18 },
    sleeve: { shape: 'tapered', direction: 'cuff up', capEase: 0 },
    gauges: { stocking: gauge },
    needles: { panels: 4, borders: 3.5 },
    tapers: 'together',
    overruled: [],
  });
  expect(begun('round', 'drop').shoulderDropMm).toBe(0);
  const small = (chest: number) =>
    simpleDesign(
      { kind: 'cardigan', armhole: 'drop', neck: 'V', fit: 'close' },
      { ...body, chest },
      'moss',
      gauge,
    );
  expect([small(699), small(700)].map(({ frontBand }) => frontBand.buttonMm)).toEqual([13, 18]);
  const tall = simpleDesign(
    { kind: 'vest', armhole: 'drop', neck: 'V', fit: 'close' },
    { ...body, armholeDepth: 220 },
    'moss',
    gauge,
  );
  expect(tall.neckband.heightMm).toBe(30);
});

it.each<[Fit, readonly number[]]>([
  // chest, waist, hip, upper arm, wrist, cross back, armhole: the middle of the class in inches, and shares of it
  ['very close', [-25.4, -25.4, -17.78, 0, 15, 0, 0]],
  ['close', [38.1, 38.1, 26.67, 22.86, 20.955, 5.715, 5.715]],
  ['standard', [76.2, 76.2, 53.34, 45.72, 41.91, 11.43, 11.43]],
  ['loose', [127, 127, 88.9, 76.2, 69.85, 19.05, 19.05]],
  ['oversized', [228.6, 228.6, 160.02, 137.16, 125.73, 34.29, 34.29]],
])('the ease of a %s fit, mm', (fit, figures) => {
  const { chest, waist, hip, upperArm, wrist, crossBack, armholeDepth } = easeFor(fit);
  const all = [chest, waist, hip, upperArm, wrist, crossBack, armholeDepth];
  expect(all.map((mm) => Math.round(mm * 1000) / 1000)).toEqual(figures);
});

it('a design of the second edition begins as one of the third does, but for its rules', () => {
  const choices = { kind: 'vest', armhole: 'drop', neck: 'boat', fit: 'loose' } as const;
  const third = startingDesign(choices, body, 'moss', gauge);
  expect(third).toMatchObject({ edition: 3, kind: 'vest', fabric: 'moss', gauges: { moss: gauge }, body });
  expect(secondDesign(choices, body, 'moss', gauge)).toEqual({ ...third, edition: 2 });
});
