import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plan } from '../../src/knit/piece/plan.ts';
import type { Recipe } from '../../src/knit/piece/recipe.ts';
import { type RowShape, shapeOfPart, shapeOfPiece } from '../../src/ui/panel-map/outline-of.ts';
import { knittableRecipe } from '../arbitraries/knittable-recipe.ts';
import { neck, partsOf, strip } from './pieces.ts';

const width = (row: RowShape) => row.right1 - row.left1;

const only = (recipe: Recipe) => {
  const [part] = partsOf(recipe);
  if (!part) throw new Error('no part');
  return part;
};

describe('the outline of a piece', () => {
  it('is a strip as wide as its stitches and as high as its rows', () => {
    expect(shapeOfPiece(partsOf(strip(30, 50))).box).toEqual({ x: -150, y: -200, width: 150, height: 200 });
  });

  it('steps in at the bottom of the row for a group bound off, at the edge where it is bound off', () => {
    const recipe = strip(30, 4);
    const [part] = recipe.parts;
    const shaped = part && {
      ...part,
      sections: part.sections.map((section) => ({
        ...section,
        shaping: [{ kind: 'bind off', edge: 'right', groups: [{ row: 3, stitches: 6 }] } as const],
      })),
    };
    const { rows, notches } = shapeOfPart(only({ ...recipe, parts: shaped ? [shaped] : [] }));
    expect(rows.map(({ right0, right1 }) => [right0, right1])).toEqual(
      [
        [-0, 0],
        [0, 0],
        [-30, -30],
        [-30, -30],
      ].map((pair) => pair.map((x) => expect.closeTo(x, 6))),
    );
    expect(rows.every(({ left0, left1 }) => left0 === -150 && left1 === -150)).toBe(true);
    expect(notches).toEqual([expect.objectContaining({ row: 3, at: 'right', turn: -1, y: -10 })]);
  });

  it('slopes for a stitch decreased at an edge, and only at that edge', () => {
    const [, right] = shapeOfPiece(partsOf(neck)).parts;
    const last = right?.rows.at(-1);
    expect(right?.rows[0]).toMatchObject({ right0: 0, right1: 0, left0: -75, left1: -70 });
    expect(last).toMatchObject({ right1: 0, left1: -60 });
  });

  it('lets the parts after a split stand on the part that they came from, side by side', () => {
    const { parts } = shapeOfPiece(partsOf(neck));
    const [body, right, , left] = parts;
    expect(right?.rows[0]?.right0).toBeCloseTo(body?.rows.at(-1)?.right1 ?? Number.NaN, 6);
    expect(left?.rows[0]?.left0).toBeCloseTo(body?.rows.at(-1)?.left1 ?? Number.NaN, 6);
    expect(left?.rows[0]?.right0).toBeCloseTo(-125, 6);
    expect(right?.rows[0]?.bottom).toBe(body?.rows.at(-1)?.top);
  });

  it('is as wide after each row as the plan’s stitches, for any piece that can be knitted', () => {
    fc.assert(
      fc.property(knittableRecipe(), ({ recipe }) => {
        const made = plan(recipe);
        if (!made.ok) throw new Error('the recipe should be knittable');
        for (const part of made.value.parts) {
          const shape = shapeOfPart(part);
          part.rows.forEach((row, i) => {
            const drawn = shape.rows[i];
            if (!drawn || drawn.top === drawn.bottom) return;
            expect(width(drawn)).toBeCloseTo(row.after * (part.cells[row.section]?.width ?? 0), 6);
            expect(drawn.bottom - drawn.top).toBeCloseTo(part.cells[row.section]?.height ?? 0, 6);
          });
        }
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it('marks every shaping of a plan with one notch, on the row where it is worked', () => {
    fc.assert(
      fc.property(knittableRecipe(), ({ recipe }) => {
        const made = plan(recipe);
        if (!made.ok) throw new Error('the recipe should be knittable');
        for (const part of made.value.parts) {
          const flat = (n: number) =>
            (part.rows[n - 1]?.height ?? 0) === (part.rows[n - 2]?.height ?? part.base);
          const marks = part.rows.flatMap((row) =>
            row.shaping
              .filter((mark) => mark.by !== 0 && !flat(row.n))
              .map((mark) => [row.n, Math.sign(mark.by)]),
          );
          expect(shapeOfPart(part).notches.map(({ row, turn }) => [row, turn])).toEqual(marks);
        }
      }),
      { numRuns: 60, seed: 12 },
    );
  });
});
