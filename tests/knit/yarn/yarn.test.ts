import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import { lastBall } from '../../../src/knit/yarn/last-ball.ts';
import { loopsUpTo } from '../../../src/knit/yarn/loops.ts';
import { yarnFor } from '../../../src/knit/yarn/need.ts';
import { colourOf, loopsByColour } from '../../../src/knit/yarn/stripes.ts';
import { knittableRecipe } from '../../arbitraries/knittable-recipe.ts';
import { share } from '../../by-turns.ts';
import { told } from '../../told.ts';

const square = (over: Partial<Garment> = {}): Garment => ({
  name: 'square',
  pieces: [
    {
      name: 'square',
      makes: 2,
      gauge: { stitches: 20, rows: 28 },
      parts: [
        {
          name: 'square',
          from: { castOn: 20 },
          end: 'bind off',
          sections: [{ name: 'plain', rows: 28, fabric: 'stocking', needle: 4, shaping: [] }],
        },
      ],
    },
  ],
  yarns: [{ name: 'Hollin', grams: 50, metres: 120, balls: 1 }],
  ...over,
});

const need = (garment: Garment, taken: Parameters<typeof yarnFor>[1] = []) => {
  const made = yarnFor(garment, taken);
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
};

const swatch = {
  fabric: 'stocking' as const,
  stitches: 20,
  widthMm: 100,
  rows: 28,
  heightMm: 100,
  needle: 4,
  weighed: { grams: 6, stitches: 20, rows: 28 },
};

describe('yarn for a garment', () => {
  it('sections add up to makes and makes to the whole, for every recipe', () => {
    fc.assert(
      fc.property(knittableRecipe(), fc.integer({ min: 1, max: 3 }), ({ recipe }, makes) => {
        const whole = need({ ...square(), pieces: [{ ...recipe, makes }] });
        expect(whole.makes).toHaveLength(makes);
        const sections = whole.makes.flatMap((m) => m.sections).reduce((sum, s) => sum + s.metres, 0);
        expect(sections).toBeCloseTo(whole.metres, 6);
      }),
      { numRuns: share(100) },
    );
  });

  it('of several weighed swatches that of the fabric itself is taken, wherever it stands', () => {
    const garter = { ...swatch, fabric: 'garter' as const, weighed: { grams: 9, stitches: 20, rows: 28 } };
    const alone = need(square({ swatches: [swatch] }));
    for (const swatches of [
      [garter, swatch],
      [swatch, garter],
    ])
      expect(need(square({ swatches }))).toEqual(alone);
    const other = need(square({ swatches: [garter] }));
    expect(other.basis).toBe('weighed swatch of another fabric');
    expect(other.metres / alone.metres).toBeCloseTo(9 / 6, 6);
  });

  it('a piece like the weighed swatch takes what the swatch weighed', () => {
    const whole = need(square({ swatches: [swatch] }));
    expect(whole.basis).toBe('weighed swatch');
    expect(whole.makes[0]?.grams).toBeCloseTo(6, 6);
  });

  it('says by which relation it was found, with the wider margin where it holds less well', () => {
    expect(need(square()).basis).toBe('loop length');
    expect(need(square()).margin).toBeCloseTo(0.25, 6);
    const garter = square();
    const pieces = garter.pieces.map((p) => ({
      ...p,
      parts: p.parts.map((part) => ({
        ...part,
        sections: part.sections.map((s) => ({ ...s, fabric: 'garter' as const })),
      })),
    }));
    expect(need({ ...garter, pieces }).margin).toBeCloseTo(0.3, 6);
  });

  it('counts whole balls, and those still to buy while the dye lot is there', () => {
    const whole = need(square({ swatches: [{ ...swatch, weighed: { ...swatch.weighed, grams: 60 } }] }));
    expect(whole.balls).toBe(3);
    expect(whole.short).toBe(2);
  });

  it('corrects what is still to be knitted by what the finished makes took', () => {
    const before = need(square({ swatches: [swatch] }));
    const after = need(square({ swatches: [swatch] }), [{ piece: 'square', make: 1, grams: 7.5 }]);
    expect(after.correction).toBeCloseTo(1.25, 6);
    expect(after.metres).toBeCloseTo(before.metres * 1.25, 6);
  });

  it('a weight that cannot be is refused', () => {
    expect(yarnFor(square(), [{ piece: 'square', make: 1, grams: -2 }])).toMatchObject({
      ok: false,
      faults: [{ code: 'bad weight' }],
    });
  });

  it('two strands held together take twice the balls', () => {
    const held = (strands: number) =>
      need(square({ yarns: [{ name: 'Hollin', grams: 5, metres: 12, strands }] }));
    expect(held(2).grams).toBeCloseTo(2 * (held(1).grams ?? 0), 6);
    expect(held(2).balls).toBe(Math.ceil((2 * held(1).metresToBuy) / 12));
  });

  it('a swatch knitted with two strands weighs both, and so does the garment', () => {
    const yarns = [{ name: 'Hollin', grams: 50, metres: 120, strands: 2 }];
    expect(need(square({ swatches: [swatch], yarns })).makes[0]?.grams).toBeCloseTo(6, 6);
  });
});

describe('the ball in hand', () => {
  const made = plan(square().pieces[0] as Garment['pieces'][number]);
  if (!made.ok) throw new Error(told(made.faults));
  const part = made.value.parts[0];
  if (!part) throw new Error('no part');

  it('finishes the part when it weighs more than the rows left', () => {
    expect(lastBall(part, 10, 100, 0.01, 2400)).toMatchObject({ enough: true, lastRow: 29 });
  });

  it('says to which row it lasts and where the next is joined', () => {
    const left = lastBall(part, 10, 1.0 + 150 / 2400, 0.01, 2400);
    expect(left).toMatchObject({ enough: false, lastRow: 15, joinAt: 16 });
    expect(left.needed).toBeCloseTo(19 * 20 * 0.01, 6);
  });

  it('lasts to no row at all when it is nearly gone', () => {
    const left = lastBall(part, 10, 0.01, 0.01, 2400);
    expect(left.enough).toBe(false);
    expect(left.lastRow).toBeUndefined();
    expect(left.joinAt).toBe(11);
  });
});

describe('stripes', () => {
  it('share the loops of every part among the colours without a rest', () => {
    fc.assert(
      fc.property(
        knittableRecipe(),
        fc.array(
          fc.record({
            colour: fc.constantFrom('woad', 'madder', 'weld'),
            rows: fc.integer({ min: 1, max: 9 }),
          }),
          { minLength: 1, maxLength: 4 },
        ),
        ({ recipe }, stripes) => {
          const whole = plan(recipe);
          if (!whole.ok) return;
          for (const part of whole.value.parts) {
            if (part.rows.length === 0) continue;
            const shared = [...loopsByColour(part, (row) => colourOf(stripes, row)).values()].reduce(
              (a, b) => a + b,
              0,
            );
            expect(shared).toBe(loopsUpTo(part, part.rows.length));
          }
        },
      ),
      { numRuns: share(100) },
    );
  });
});
