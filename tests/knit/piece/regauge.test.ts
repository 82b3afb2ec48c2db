import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import type { Gauge } from '../../../src/knit/gauge.ts';
import { knittedPieces } from '../../../src/knit/making-up/knitted-piece.ts';
import { makingUp } from '../../../src/knit/making-up/making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { regauge } from '../../../src/knit/piece/regauge/regauge.ts';
import { workBudget } from '../../../src/knit/piece/work-budget.ts';
import { told } from '../../told.ts';

/** RIDGELINE_DRAFTS=40 for the whole of it; a part of it in every run. */
const GAUGES = Number(process.env.RIDGELINE_DRAFTS ?? 12);

const gauge = (): fc.Arbitrary<Gauge> =>
  fc
    .record({
      stitches: fc.double({ min: 14, max: 32, noNaN: true }),
      share: fc.double({ min: 1.25, max: 1.55, noNaN: true }),
    })
    .map(({ stitches, share }) => ({
      stitches,
      rows: stitches * share,
    }));

const sizeOf = (recipe: Recipe) => {
  const made = asPlanned({ name: '', pieces: [recipe] });
  if (!made.ok) throw new Error(told(made.faults));
  const [piece] = made.value.pieces.flatMap(knittedPieces);
  if (!piece) throw new Error('nothing is knitted');
  return piece.size;
};

const inGauge = (recipe: Recipe, to: Gauge): Recipe => {
  const made = regauge(recipe, to);
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
};

describe('a garment in another gauge', () => {
  it('stays as it is in its own gauge', () => {
    for (const piece of sampleGarment.pieces) expect(inGauge(piece, piece.gauge as Gauge)).toBe(piece);
  });

  it('can be knitted in every usual gauge and is as wide and as high as before', () => {
    fc.assert(
      fc.property(gauge(), (to) => {
        for (const piece of sampleGarment.pieces.slice(0, 3)) {
          const before = sizeOf(piece);
          const after = sizeOf(inGauge(piece, to));
          expect(Math.abs(after.widthMm - before.widthMm)).toBeLessThan((4 * 100) / to.stitches);
          expect(Math.abs(after.heightMm - before.heightMm)).toBeLessThan((10 * 100) / to.rows);
        }
        expect(plan(inGauge(sampleGarment.pieces[3] as Recipe, to)).ok).toBe(true);
      }),
      { numRuns: GAUGES },
    );
  }, 30_000);

  it('keeps back and front of the same width, and both shoulders within two stitches of the back’s', () => {
    fc.assert(
      fc.property(gauge(), (to) => {
        const pieces = sampleGarment.pieces.map((piece) => inGauge(piece, to));
        const made = makingUp({ ...sampleGarment, pieces });
        if (!made.ok) throw new Error(told(made.faults));
        const shoulders = made.value.find((s) => s.kind === 'shoulders');
        expect(
          Math.abs(shoulders?.kind === 'shoulders' ? shoulders.stitches.difference : 99),
        ).toBeLessThanOrEqual(2);
        const side = made.value.find((s) => s.kind === 'side seams');
        expect(side?.kind === 'side seams' ? side.rows.difference : 99).toBe(0);
      }),
      { numRuns: GAUGES },
    );
  }, 30_000);

  it('is refused where the gauge is none, or the piece states none', () => {
    const [back] = sampleGarment.pieces as readonly [Recipe];
    expect(regauge(back, { stitches: 0, rows: 28 })).toMatchObject({
      ok: false,
      faults: [{ code: 'bad gauge' }],
    });
    const { gauge: _none, ...without } = back;
    expect(regauge(without, { stitches: 20, rows: 28 })).toMatchObject({
      ok: false,
      faults: [{ code: 'no gauge' }],
    });
  });
});

it('pieces of a garment of someone else share what may be worked for them, and are refused where it is too much', () => {
  const [piece] = sampleGarment.pieces as readonly Recipe[];
  if (!piece?.gauge) throw new Error('the sample has no gauge');
  const wide = { stitches: piece.gauge.stitches * 1.1, rows: piece.gauge.rows * 1.1 };
  const size = { width: 1, height: 1 };
  const shared = workBudget(250_000);
  const codes = Array.from({ length: 6 }, () => regauge(piece, wide, size, shared)).map((made) =>
    made.ok ? 'ok' : made.faults[0]?.code,
  );
  expect(codes[0]).toBe('ok');
  expect(codes.at(-1)).toBe('too much to plan');
});
