import { describe, expect, it } from 'vitest';
import { assumedGauge, type FabricName, fabricNames } from '../../src/knit/fabric.ts';
import { bodyOfSize } from '../../src/knit/garment/bodies.ts';
import type { Body } from '../../src/knit/garment/design.ts';
import { draft } from '../../src/knit/garment/draft.ts';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import { startingDesign } from '../../src/knit/garment/start.ts';
import { readPattern } from '../../src/knit/pattern/read-pattern.ts';
import { gaugeOf, guessesIn } from '../../src/knit/piece/gauges.ts';
import type { Recipe } from '../../src/knit/piece/recipe.ts';
import { regauge } from '../../src/knit/piece/regauge/regauge.ts';
import { writePattern } from '../../src/knit/written/write-pattern.ts';
import { told } from '../told.ts';

const strip = (fabric: FabricName): Recipe => ({
  name: 'Strip',
  makes: 1,
  gauge: { stitches: 22, rows: 40, fabric, needle: 3.5 },
  parts: [
    {
      name: 'Strip',
      from: { castOn: 44 },
      sections: [{ name: 'all', rows: 40, fabric, needle: 3.5, shaping: [] }],
      end: 'bind off',
    },
  ],
});

const readGauge = (line: string) =>
  readPattern(`${line}\nCast on 22 sts.\nKnit 4 rows.`).pieces[0]?.recipe.gauge;

describe('what a tension was measured in', () => {
  it('is read from a pattern’s gauge line, fabric and needle, however they are worded', () => {
    const garter = { stitches: 22, rows: 40, fabric: 'garter', needle: 3.5 };
    expect(readGauge('Gauge: 22 sts and 40 rows = 10 cm in garter st on 3.5 mm needles.')).toEqual(garter);
    expect(readGauge('Tension: over garter stitch 22 sts and 40 rows = 10 cm using 3.5 mm needles.')).toEqual(
      garter,
    );
    expect(readGauge('Gauge: 22 sts and 20 ridges = 10 cm in garter st, 3.5 mm needles.')).toEqual(garter);
    expect(readGauge('Gauge: 20 sts and 28 rows = 10 cm in st st.')).toEqual({
      stitches: 20,
      rows: 28,
      fabric: 'stocking',
    });
    expect(readGauge('Gauge: 26 sts and 30 rows = 10 cm in k2, p2 rib.')).toEqual({
      stitches: 26,
      rows: 30,
      fabric: 'rib 2x2',
    });
    expect(readGauge('Gauge: 20 sts and 28 rows = 10 cm.')).toEqual({ stitches: 20, rows: 28 });
  });

  it('makes the rows of a length: 10 cm of garter at 40 rows are 40 rows, and of stocking stitch fewer', () => {
    const rows = (fabric: string, gauge?: { stitches: number; rows: number; fabric: FabricName }) =>
      readPattern(
        `Gauge: 22 sts and 40 rows = 10 cm in garter st.\nCast on 22 sts.\nWork in ${fabric} for 10 cm.`,
        gauge ? { gauge } : {},
      ).pieces[0]?.recipe.parts[0]?.sections.reduce((sum, s) => sum + s.rows, 0);
    expect(rows('garter st')).toBe(40);
    // 40 / 1.4 = 28.6 rows, and such rows come in pairs
    expect(rows('st st')).toBe(28);
    expect(rows('garter st', { stitches: 22, rows: 36, fabric: 'garter' })).toBe(36);
  });

  it('is written into a pattern and read from it again, of every fabric that leaflets name', () => {
    for (const terms of ['US', 'UK'] as const) {
      for (const fabric of fabricNames.filter((name) => name !== 'rib 1x1 matched')) {
        const made = writePattern({ name: 'Strip', pieces: [strip(fabric)] }, { terms });
        if (!made.ok) throw new Error(told(made.faults));
        expect(readPattern(made.value).pieces[0]?.recipe.gauge).toEqual(strip(fabric).gauge);
      }
    }
  });

  it('stays with a garment in another gauge; a swatch of another fabric is compared by the usual ratio', () => {
    const finer = regauge(strip('garter'), { stitches: 24, rows: 44 });
    expect(finer.ok && finer.value.gauge).toEqual({ stitches: 24, rows: 44, fabric: 'garter' });
    const same = {
      ...assumedGauge('stocking', { stitches: 33, rows: 60 }, 'garter'),
      fabric: 'stocking' as const,
    };
    const other = regauge(strip('garter'), same);
    if (!other.ok) throw new Error(told(other.faults));
    // half as fine again: 44 stitches and 40 rows become 66 and 60
    expect(other.value.parts[0]?.from).toEqual({ castOn: 66 });
    expect(other.value.parts[0]?.sections[0]?.rows).toBe(60);
    expect(other.value.gauge).toEqual(same);
    expect(gaugeOf(other.value, 'garter').rows).toBeCloseTo(60, 9);
  });

  it('is stated by every draft, which keeps what was swatched and guesses the rest anew', () => {
    const body = bodyOfSize('women', 'M') as Body;
    const choices = { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard' } as const;
    const design = startingDesign(choices, body, 'garter', { stitches: 22, rows: 40 });
    const made = draft(design);
    if (!made.ok) throw new Error(told(made.faults));
    const gauge = { stitches: 22, rows: 40, fabric: 'garter', needle: design.needles.panels };
    for (const recipe of made.value.recipes) expect(recipe.gauge).toEqual(gauge);
    expect(guessesIn(made.value.recipes).map(({ from }) => from)).toContain('garter');
    const rib = { stitches: 27, rows: 31 };
    const swatched = draft({ ...design, gauges: { ...design.gauges, [design.hem.fabric]: rib } });
    expect(swatched.ok && swatched.value.recipes[0]?.gauges).toEqual({ [design.hem.fabric]: rib });
  });

  it('is stated by the sample', () => {
    for (const piece of sampleGarment.pieces)
      expect(piece.gauge).toMatchObject({ fabric: 'stocking', needle: 4 });
    expect(guessesIn(sampleGarment.pieces)).toEqual([]);
  });
});
