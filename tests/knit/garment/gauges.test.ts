import { expect, it } from 'vitest';
import { designGauge, gaugeOfSwatch, mainGauge } from '../../../src/knit/garment/gauges.ts';
import type { even } from './spelled.ts';

const needles = { panels: 4, borders: 3 };
const stocking = { stitches: 20, rows: 25 };

it('every fabric is guessed from the swatch of the panels, else from that of stocking stitch, else from none', () => {
  const moss = { stitches: 19, rows: 33 };
  const main = (gauges: typeof even.gauges) => mainGauge({ fabric: 'moss', gauges, needles });
  expect(main({ stocking, moss })).toEqual({ ...moss, fabric: 'moss', needle: 4 });
  expect(main({ stocking })).toEqual({ ...stocking, fabric: 'stocking' });
  expect(main({})).toEqual({ stitches: 0, rows: 0, fabric: 'stocking' });
});

it('a fabric with a swatch of its own has that gauge, another one a guess', () => {
  const moss = { stitches: 19, rows: 33 };
  const design = { fabric: 'stocking', gauges: { stocking, moss }, needles } as const;
  expect(designGauge(design, 'moss')).toEqual({ gauge: moss, swatched: true });
  expect(designGauge(design, 'stocking')).toEqual({ gauge: stocking, swatched: true });
  // stocking stitch and its back are one cloth, garter is shorter: src/knit/fabric.ts
  expect(designGauge(design, 'reverse stocking')).toEqual({ gauge: stocking, swatched: false });
  expect(designGauge(design, 'garter').swatched).toBe(false);
  expect(designGauge(design, 'garter').gauge.rows).toBeGreaterThan(stocking.rows);
});

it('a swatch of 45 stitches and 56 rows over 150 by 140 mm has 30 and 40 to 100 mm', () => {
  expect(gaugeOfSwatch({ stitches: 45, widthMm: 150, rows: 56, heightMm: 140 })).toEqual({
    stitches: 30,
    rows: 40,
  });
});
