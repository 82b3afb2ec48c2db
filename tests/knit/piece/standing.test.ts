import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Result } from '../../../src/knit/fault.ts';
import { demoGarment } from '../../../src/knit/garment/demo.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import { type PlannedPart, partsOfMake } from '../../../src/knit/piece/planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { alike, sameRows, standingMake } from '../../../src/knit/piece/standing.ts';
import { knittableRecipe } from '../../arbitraries/knittable-recipe.ts';
import { told } from '../../told.ts';

function value<T>(made: Result<T>): T {
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
}

const sizes = (parts: readonly PlannedPart[]) =>
  parts.flatMap(({ base, offset, cells, rows }) => [
    base,
    offset,
    ...cells.flatMap(({ width, height }) => [width, height]),
    ...rows.map(({ height }) => height),
  ]);

/** Every figure in mm to a millionth, and all else as it is. */
function sameAsPlanned(recipe: Recipe): void {
  const made = value(plan(recipe));
  for (let make = 1; make <= recipe.makes; make += 1) {
    const parts = partsOfMake(made, make);
    const standing = standingMake(recipe, make, parts);
    const [now, then] = [sizes(standing.parts), sizes(parts)];
    expect(now).toHaveLength(then.length);
    expect(Math.max(...now.map((mm, i) => Math.abs(mm - (then[i] ?? 0))))).toBeLessThan(1e-6);
    expect(standing.parts.map(({ rows }) => rows.map(({ steps }) => steps))).toEqual(
      parts.map(({ rows }) => rows.map(({ steps }) => steps)),
    );
  }
}

const demo = value(demoGarment('cardigan'));

describe('a make that was not planned anew', () => {
  it('stands as it was planned, whatever the tension was measured in', () => {
    fc.assert(
      fc.property(
        knittableRecipe(),
        fc.constantFrom(undefined, 'garter', 'stocking', 'moss'),
        ({ recipe }, fabric) => {
          const { gauge } = recipe;
          sameAsPlanned(
            gauge && fabric ? { ...recipe, gauge: { ...gauge, fabric } as Recipe['gauge'] & object } : recipe,
          );
        },
      ),
      { numRuns: 60, endOnFailure: true },
    );
    for (const recipe of [...sampleGarment.pieces, ...demo.pieces]) sameAsPlanned(recipe);
  });

  it('is like the other makes of its piece, mirror images among them', () => {
    for (const { makes } of value(asPlanned(demo)).pieces) expect(alike(makes)).toHaveLength(1);
  });
});

describe('on paper', () => {
  it('each front of a cardigan has rows of its own, two sleeves the same', () => {
    const sheets = value(asPlanned(demo)).pieces.map(({ recipe, makes }) => [
      recipe.name,
      ...sameRows(recipe, makes).map((group) => group.map(({ make }) => make)),
    ]);
    expect(sheets).toEqual([
      ['Back', [1]],
      ['Front', [1], [2]],
      ['Sleeve', [1, 2]],
      ['Front band', [1]],
    ]);
  });
});

describe('makes of the same counts', () => {
  const [first] = value(asPlanned(sampleGarment)).pieces[0]?.makes ?? [];
  if (!first) throw new Error('the sample has a back');
  const raised = (mm: number): typeof first => ({
    ...first,
    make: 2,
    parts: first.parts.map((part, i) => ({
      ...part,
      ...(first.recipe.parts[i] ? { recipe: first.recipe.parts[i] } : {}),
      rows: part.rows.map((row) => ({ ...row, height: Math.round(row.height) + mm })),
    })),
  });

  it('are alike where their heights are, to a tenth of a millimetre', () => {
    const groups = (mm: number) => alike([raised(0), raised(mm)]).length;
    expect([-0.04, 0, 0.04].map(groups)).toEqual([1, 1, 1]);
    expect([-0.06, 0.06].map(groups)).toEqual([2, 2]);
  });
});

describe('two sleeves', () => {
  it('are alike when both were planned anew in the same way, and not when one was', () => {
    const piece = value(asPlanned(sampleGarment)).pieces.find(({ recipe }) => recipe.name === 'Sleeve');
    const [first, second] = piece?.makes ?? [];
    if (!first || !second) throw new Error('the sample has two sleeves');
    const shorter = (make: typeof first) => ({
      ...make,
      parts: make.parts.map((part, i) => {
        const recipe = make.recipe.parts[i];
        return { ...part, ...(recipe ? { recipe } : {}), rows: part.rows.slice(0, -2) };
      }),
    });
    const groups = (...makes: (typeof first)[]) => alike(makes).map((group) => group.map(({ make }) => make));
    expect(groups(first, second)).toEqual([[1, 2]]);
    expect(groups(first, shorter(second))).toEqual([[1], [2]]);
    expect(groups(shorter(first), shorter(second))).toEqual([[1, 2]]);
  });
});
