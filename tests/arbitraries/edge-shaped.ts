import fc from 'fast-check';
import { type FabricName, fabricNames, fits } from '../../src/knit/fabric.ts';
import type { Recipe, Shaping } from '../../src/knit/piece/recipe.ts';

/** Panels shaped at their edges in every way that a row can be: either edge or both, on either side, one stitch or two. */
export const edgeShaped = (
  fabrics: readonly FabricName[] = fabricNames,
  counts: (count: number) => number = (count) => count,
): fc.Arbitrary<Recipe> =>
  fc
    .record({
      fabric: fc.constantFrom(...fabrics),
      castOn: fc.integer({ min: 40, max: 90 }),
      hem: fc.integer({ min: 0, max: 3 }),
      rows: fc.uniqueArray(fc.integer({ min: 1, max: 14 }), { minLength: 1, maxLength: 5 }),
      edge: fc.constantFrom('both' as const, 'right' as const, 'left' as const),
      by: fc.constantFrom(-2, -1, -1, 1, 1, 2),
      inset: fc.integer({ min: 0, max: 3 }),
      lean: fc.constantFrom('mirrored' as const, 'mirrored' as const, 'plain' as const),
    })
    .map(({ fabric, castOn, hem, rows, edge, by, inset, lean }) => {
      const count = fits(fabric, counts(castOn)).above;
      const shaping: Shaping = { kind: 'edge', edge, by, rows: [...rows].sort((a, b) => a - b), inset, lean };
      return {
        name: 'Panel',
        makes: 1,
        parts: [
          {
            name: 'body',
            from: { castOn: count },
            end: 'hold',
            sections: [
              { name: 'hem', rows: hem, fabric: 'stocking', needle: 4, shaping: [] },
              { name: 'shaped', rows: 16, fabric, needle: 4, shaping: [shaping] },
            ],
          },
        ],
      };
    });

/** Drawn in and let out again at the same edges, as at a waist, in a fabric that shows where it is out of step. */
export const waisted = (): fc.Arbitrary<Recipe> =>
  fc
    .record({
      fabric: fc.constantFrom<FabricName>('rib 1x1', 'rib 2x2', 'moss', 'rib 1x1 matched'),
      castOn: fc.integer({ min: 40, max: 90 }),
      inward: fc.uniqueArray(fc.integer({ min: 1, max: 10 }), { minLength: 1, maxLength: 4 }),
      outward: fc.uniqueArray(fc.integer({ min: 1, max: 10 }), { minLength: 1, maxLength: 4 }),
      edge: fc.constantFrom('both' as const, 'right' as const, 'left' as const),
      inset: fc.integer({ min: 0, max: 3 }),
    })
    .map(({ fabric, castOn, inward, outward, edge, inset }) => {
      const shaped = (by: number, rows: readonly number[]): Shaping => ({
        kind: 'edge',
        edge,
        by,
        rows: rows.map((row) => (by < 0 ? row : row + 10)).sort((a, b) => a - b),
        inset,
        lean: 'mirrored',
      });
      const shaping = [shaped(-1, inward), shaped(1, outward)];
      return {
        name: 'Panel',
        makes: 1,
        parts: [
          {
            name: 'body',
            from: { castOn: fits(fabric, castOn).above },
            end: 'hold',
            sections: [{ name: 'waist', rows: 22, fabric, needle: 4, shaping }],
          },
        ],
      };
    });
