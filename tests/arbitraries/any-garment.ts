import fc from 'fast-check';
import { newForm } from '../../src/app/drafts/design/form.ts';
import type { ReadDesign } from '../../src/app/drafts/pattern/draft.ts';
import { usualSet } from '../../src/app/garments/size-set.ts';
import { fabricNames } from '../../src/knit/fabric.ts';
import type { Swatch, Yarn } from '../../src/knit/piece/garment.ts';
import type { Taken } from '../../src/knit/yarn/need.ts';
import type { Restriped, Stripe, Striped } from '../../src/knit/yarn/stripes.ts';
import type { GarmentRecord, PieceRecord, RowNote } from '../../src/store/records.ts';
import { anyHandSeam, anyJoint } from './any-joint.ts';
import { anyRecipe } from './any-recipe.ts';
import { knownGarment } from './known-garments.ts';
import { madeOf, maybe, missing } from './made-of.ts';
import { someCount, someMeasure, someName, someText } from './typed-fields.ts';

const id = fc.string({ unit: fc.constantFrom(...'abcXYZ019_-'), minLength: 1, maxLength: 12 });
const time = someCount(0, 2_000_000_000);

const swatch = madeOf<Swatch>({
  fabric: fc.constantFrom(...fabricNames),
  stitches: someMeasure(),
  widthMm: someMeasure(),
  rows: someMeasure(),
  heightMm: someMeasure(),
  needle: someMeasure(80),
  before: maybe(
    madeOf<NonNullable<Swatch['before']>>({
      stitches: someMeasure(),
      widthMm: someMeasure(),
      rows: someMeasure(),
      heightMm: someMeasure(),
    }),
  ),
  weighed: maybe(
    madeOf<NonNullable<Swatch['weighed']>>({
      grams: someMeasure(),
      stitches: someMeasure(),
      rows: someMeasure(),
    }),
  ),
});

const yarn = madeOf<Yarn>({
  name: someText(12),
  fibre: maybe(someText(12)),
  colour: maybe(someText(12)),
  dyeLot: maybe(someText(12)),
  grams: maybe(someMeasure()),
  metres: maybe(someMeasure()),
  balls: maybe(someCount(0, 40)),
  strands: maybe(someCount(0, 4)),
});

const pieces = (): fc.Arbitrary<readonly PieceRecord[]> =>
  fc
    .oneof(
      { weight: 9, arbitrary: fc.array(anyRecipe(), { minLength: 1, maxLength: 2 }) },
      { weight: 1, arbitrary: knownGarment() },
    )
    .chain((recipes) =>
      fc
        .uniqueArray(id, { minLength: recipes.length, maxLength: recipes.length })
        .map((ids) => recipes.map((recipe, i) => ({ id: ids[i] as string, recipe }))),
    );

const readDesign = madeOf<ReadDesign>({
  kind: fc.constant('read'),
  version: fc.constant(1),
  options: fc.record({ size: someCount(0, 4) }),
});

/**
 * A garment as it may lie in the box, with any field of the model: what the reader, the editor, the drafter, a
 * rework and a link can make. All of it can be knitted. A field that the model learns and that nothing makes here
 * does not compile.
 */
export const anyGarment = (): fc.Arbitrary<GarmentRecord> =>
  madeOf<GarmentRecord>({
    id,
    createdAt: time,
    changedAt: time,
    name: someName(),
    pieces: pieces(),
    swatches: maybe(fc.array(swatch, { maxLength: 3 })),
    yarns: maybe(fc.array(yarn, { maxLength: 3 })),
    joints: maybe(fc.array(anyJoint(), { maxLength: 3 })),
    byHand: maybe(fc.array(anyHandSeam(), { maxLength: 3 })),
    notes: maybe(someText()),
    credits: maybe(someText()),
    licence: maybe(someText()),
    design: maybe(fc.oneof(readDesign, fc.constant(newForm()))),
    sizes: maybe(fc.constant(usualSet(newForm()))),
    rowNotes: maybe(
      fc.array(
        fc.constantFrom<RowNote>(
          { piece: 'Back', part: 'Back', row: 3, text: 'loosely' },
          { piece: 'Back', part: 'left', row: 9, address: 'https://example.org/how#there' },
        ),
        { maxLength: 2 },
      ),
    ),
    texts: maybe(
      fc.dictionary(fc.constantFrom('pattern1', 'pattern2'), someText(), { noNullPrototype: true }),
    ),
    ticked: maybe(fc.array(someText(12), { maxLength: 3 })),
    taken: maybe(
      fc.array(madeOf<Taken>({ piece: someText(12), make: someCount(1, 4), grams: someMeasure() }), {
        maxLength: 3,
      }),
    ),
    stripes: maybe(
      fc.array(madeOf<Stripe>({ colour: someText(12), rows: someCount(0, 40) }), { maxLength: 3 }),
    ),
    restriped: maybe(
      fc.array(
        madeOf<Restriped>({
          piece: fc.constantFrom('pattern1', 'pattern2'),
          make: someCount(1, 3),
          part: someCount(0, 4),
          row: someCount(1, 400),
          at: someCount(1, 400),
          stripes: fc.array(madeOf<Stripe>({ colour: someText(12), rows: someCount(0, 40) }), {
            maxLength: 3,
          }),
        }),
        { maxLength: 3 },
      ),
    ),
    striped: maybe(
      fc.dictionary(
        fc.constantFrom('pattern1', 'pattern2'),
        madeOf<Striped>({
          first: someCount(1, 40),
          last: maybe(someCount(1, 400)),
          at: fc.integer({ min: -400, max: 400 }),
          back: maybe(fc.constant(true as const)),
        }),
        { noNullPrototype: true },
      ),
    ),
    // the store's to give, when a garment that lies in the box is changed
    marks: missing,
  });
