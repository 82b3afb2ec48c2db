import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assumedGauge, type FabricName, fabricNames, fabrics } from '../../../src/knit/fabric.ts';
import { formToRecipe } from '../../../src/knit/piece/form/read-piece.ts';
import { type StarterWords, starter, starterNames } from '../../../src/knit/piece/form/starters.ts';
import { gaugeOf, guessesIn } from '../../../src/knit/piece/gauges.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { told } from '../../told.ts';

const someFabric = () => fc.constantFrom(...fabricNames);
const someGauge = () =>
  fc.record({ stitches: fc.integer({ min: 8, max: 40 }), rows: fc.integer({ min: 10, max: 60 }) });

const panel = (fabric: FabricName, more: Partial<Recipe>): Recipe => ({
  name: 'Panel',
  makes: 1,
  parts: [
    {
      name: 'Panel',
      from: { castOn: 40 },
      sections: [{ name: 'all', rows: 20, fabric, needle: 4, shaping: [] }],
      end: 'bind off',
    },
  ],
  ...more,
});

describe('a gauge that was measured in one fabric', () => {
  it('stands in that fabric as it was counted, whatever the fabric', () => {
    fc.assert(
      fc.property(someFabric(), someGauge(), (fabric, gauge) => {
        expect(gaugeOf({ gauge: { ...gauge, fabric } }, fabric)).toMatchObject(gauge);
      }),
    );
  });

  it('guessed for another fabric and back again is the gauge that was measured', () => {
    fc.assert(
      fc.property(someFabric(), someFabric(), someGauge(), (from, to, gauge) => {
        const there = assumedGauge(to, gauge, from);
        const back = assumedGauge(from, there, to);
        expect(back.stitches).toBeCloseTo(gauge.stitches, 9);
        expect(back.rows).toBeCloseTo(gauge.rows, 9);
      }),
    );
  });

  it('guessed by way of stocking stitch or straight is the same', () => {
    fc.assert(
      fc.property(someFabric(), someFabric(), someGauge(), (from, to, gauge) => {
        const straight = assumedGauge(to, gauge, from);
        const round = assumedGauge(to, assumedGauge('stocking', gauge, from));
        expect(straight.stitches).toBeCloseTo(round.stitches, 9);
        expect(straight.rows).toBeCloseTo(round.rows, 9);
      }),
    );
  });

  it('is not asked where that fabric was swatched itself', () => {
    const gauges = { 'rib 2x2': { stitches: 30, rows: 31 } } as const;
    const gauge = { stitches: 22, rows: 40, fabric: 'garter' } as const;
    expect(gaugeOf({ gauge, gauges }, 'rib 2x2')).toEqual({ stitches: 30, rows: 31 });
    expect(gaugeOf({ gauge, gauges: { garter: { stitches: 1, rows: 1 } } }, 'garter')).toEqual(gauge);
  });

  it('is taken as stocking stitch where nobody named a fabric, as it always was', () => {
    for (const fabric of fabricNames) {
      const { stitches, rows } = fabrics[fabric].ratio;
      expect(gaugeOf({ gauge: { stitches: 22, rows: 40 } }, fabric)).toEqual({
        stitches: 22 * stitches,
        rows: 40 * rows,
      });
    }
  });

  it('says of each other fabric that its figure is guessed, and from which; of none that was measured', () => {
    const gauge = { stitches: 22, rows: 40, fabric: 'garter' } as const;
    expect(guessesIn([panel('garter', { gauge })])).toEqual([]);
    expect(guessesIn([panel('rib 2x2', { gauge }), panel('rib 2x2', { gauge })])).toEqual([
      { fabric: 'rib 2x2', from: 'garter' },
    ]);
    expect(guessesIn([panel('rib 2x2', { gauge: { stitches: 22, rows: 30 } })])).toEqual([
      { fabric: 'rib 2x2', from: 'stocking' },
    ]);
    const gauges = { 'rib 2x2': { stitches: 30, rows: 31 } } as const;
    expect(guessesIn([panel('rib 2x2', { gauge, gauges })])).toEqual([]);
    expect(guessesIn([panel('rib 2x2', {})])).toEqual([]);
    expect(guessesIn([panel('reverse stocking', { gauge: { ...gauge, fabric: 'stocking' } })])).toEqual([]);
  });
});

const words = new Proxy({} as StarterWords, { get: (_, name) => String(name) });

describe('a piece to begin from', () => {
  it('begins in the fabric and needle of the tension, is as wide and long as in any other, and can be knitted', () => {
    for (const fabric of fabricNames) {
      for (const name of starterNames) {
        const gauge = { ...assumedGauge(fabric, { stitches: 21, rows: 28 }), fabric, needle: 4 };
        const recipe = formToRecipe(starter(name, { gauge, needle: 4, words }));
        expect(recipe.ok).toBe(true);
        if (!recipe.ok) continue;
        expect(recipe.value.gauge).toEqual(gauge);
        const made = plan(recipe.value);
        expect(made.ok, `${name} in ${fabric}: ${made.ok ? '' : told(made.faults)}`).toBe(true);
        if (!made.ok || name !== 'back') continue;
        const main = fabric === 'rib 1x1 matched' ? 'rib 1x1' : fabric;
        const sections = recipe.value.parts[0]?.sections.slice(1) ?? [];
        expect(new Set(sections.map((s) => s.fabric))).toEqual(new Set([main]));
        // 60 of rib, 340 of body and 220 of armhole, mm, and the shoulders' six rows
        const rows = made.value.parts[0]?.rows ?? [];
        expect(Math.abs((rows.at(-1)?.height ?? 0) - 620 - 600 / gauge.rows)).toBeLessThan(12);
      }
    }
  });
});
