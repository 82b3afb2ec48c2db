import fc from 'fast-check';
import { plan } from '../../src/knit/piece/plan.ts';
import type { PartRecipe, Recipe, Shaping } from '../../src/knit/piece/recipe.ts';
import type { GarmentRecord } from '../../src/store/records.ts';
import { anyGarment } from '../arbitraries/any-garment.ts';

/** Garments that she may begin in a run. */

/** A small piece, quickly knitted: a straight or shaped body, with two shoulders at times. */
const smallPiece = (name: string): fc.Arbitrary<Recipe> =>
  fc
    .record({
      castOn: fc.integer({ min: 6, max: 16 }).map((half) => half * 2),
      rows: fc.integer({ min: 2, max: 9 }),
      shaped: fc.boolean(),
      splits: fc.boolean(),
      makes: fc.constantFrom(1, 1, 2),
      mirrored: fc.boolean(),
      fabric: fc.constantFrom('garter' as const, 'stocking' as const),
    })
    .map(({ castOn, rows, shaped, splits, makes, mirrored, fabric }) => {
      const needle = 4;
      const edge: Shaping = { kind: 'edge', edge: 'both', by: -1, rows: [rows], inset: 1, lean: 'mirrored' };
      const body: PartRecipe = {
        name: 'body',
        from: { castOn },
        sections: [
          { name: 'rib', rows: 2, fabric: 'garter', needle, shaping: [] },
          { name: 'body', rows, fabric, needle, shaping: shaped ? [edge] : [] },
        ],
        end: splits ? 'split' : 'bind off',
      };
      const half = (shaped ? castOn - 2 : castOn) / 2;
      const shoulder = (side: 'right' | 'left'): PartRecipe => ({
        name: `${side} shoulder`,
        from: { part: 'body', stitches: half, edge: side },
        sections: [{ name: 'shoulder', rows: 4, fabric, needle, shaping: [] }],
        end: 'bind off',
      });
      const parts = splits ? [body, shoulder('right'), shoulder('left')] : [body];
      const recipe: Recipe = {
        name,
        makes,
        mirrored: mirrored && makes > 1,
        gauge: { stitches: 20, rows: 28 },
        parts,
      };
      return plan(recipe).ok ? recipe : { ...recipe, mirrored: false };
    });

const smallGarment = (): fc.Arbitrary<GarmentRecord> =>
  fc.tuple(smallPiece('Back'), smallPiece('Sleeve'), fc.boolean()).map(([back, sleeve, both]) => ({
    id: 'small',
    name: 'Harbour vest',
    createdAt: 0,
    changedAt: 0,
    pieces: [{ id: 'back', recipe: back }, ...(both ? [{ id: 'sleeve', recipe: sleeve }] : [])],
  }));

/** Two or three: mostly small ones, at times any that the model can hold. */
export const wardrobe = (): fc.Arbitrary<readonly GarmentRecord[]> =>
  fc.array(fc.oneof({ weight: 8, arbitrary: smallGarment() }, { weight: 1, arbitrary: anyGarment() }), {
    minLength: 2,
    maxLength: 3,
  });
