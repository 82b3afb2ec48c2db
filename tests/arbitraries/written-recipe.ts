import fc from 'fast-check';
import { fabricNames } from '../../src/knit/fabric.ts';
import type { Group, PartRecipe, PartStart, Recipe, Section, Shaping } from '../../src/knit/piece/recipe.ts';
import { letter } from './typed-fields.ts';

/**
 * Recipes as somebody may have written them down: whole in form, with every kind of start and shaping, whether
 * or not they can be knitted.
 */
export const writtenRecipe = (): fc.Arbitrary<Recipe> =>
  fc
    .record(
      {
        name: written(),
        makes: fc.integer({ min: 1, max: 4 }),
        mirrored: fc.boolean(),
        gauge: fc.record(
          {
            stitches: measure(),
            rows: measure(),
            fabric: fc.constantFrom(...fabricNames),
            needle: measure(),
          },
          { requiredKeys: ['stitches', 'rows'] },
        ),
        gauges: fc.constant({ garter: { stitches: 21.5, rows: 40 } }),
        parts: parts(),
      },
      { requiredKeys: ['name', 'makes', 'parts'] },
    )
    // as it comes out of the database: plain objects
    .map((recipe) => structuredClone(recipe) as Recipe);

const written = () => fc.string({ minLength: 1, maxLength: 12, unit: letter }).filter((s) => s.trim() !== '');
const measure = () => fc.integer({ min: 100, max: 6000 }).map((hundredths) => hundredths / 46);
const count = () => fc.integer({ min: 1, max: 200 });

const parts = (): fc.Arbitrary<readonly PartRecipe[]> =>
  fc
    .uniqueArray(written(), { minLength: 1, maxLength: 4 })
    .chain((names) => fc.tuple(...names.map((name, i) => part(name, names.slice(0, i)))));

const part = (name: string, earlier: readonly string[]): fc.Arbitrary<PartRecipe> =>
  fc
    .record(
      {
        name: fc.constant(name),
        from: start(earlier),
        firstSide: fc.constantFrom('RS', 'WS'),
        selvedge: fc.constantFrom('plain', 'slipped'),
        sections: fc.array(section(), { maxLength: 3 }),
        end: fc.constantFrom('bind off', 'hold', 'split'),
      },
      { requiredKeys: ['name', 'from', 'sections', 'end'] },
    )
    .map((made) => made as PartRecipe);

const start = (earlier: readonly string[]): fc.Arbitrary<PartStart> => {
  const castOn = count().map((castOn) => ({ castOn }));
  const pickUp = fc
    .array(fc.record({ along: fc.string({ maxLength: 10 }), stitches: count() }), { maxLength: 3 })
    .map((pickUp) => ({ pickUp }));
  if (earlier.length === 0) return fc.oneof(castOn, pickUp);
  const split = fc.record({
    part: fc.constantFrom(...earlier),
    stitches: count(),
    edge: fc.constantFrom('right', 'left', 'middle'),
  });
  return fc.oneof(castOn, pickUp, split) as fc.Arbitrary<PartStart>;
};

const section = (): fc.Arbitrary<Section> =>
  fc
    .record(
      {
        name: fc.string({ maxLength: 10 }),
        rows: fc.integer({ min: 0, max: 120 }),
        fabric: fc.constantFrom(...fabricNames),
        needle: fc.constantFrom(2.5, 3, 3.25, 3.75, 4, 10),
        shaping: fc.array(shaping(), { maxLength: 4 }).map((lists) => lists.flat()),
        words: fc.constant([
          [
            { work: 'k', times: 2 },
            { work: 'k', until: { left: 0 } },
          ],
        ]),
      },
      { requiredKeys: ['name', 'rows', 'fabric', 'needle', 'shaping'] },
    )
    .map((made) => made as Section);

/** Rows that rise, as often in a rhythm as not. */
const rows = (): fc.Arbitrary<readonly number[]> =>
  fc
    .tuple(fc.integer({ min: 1, max: 9 }), fc.array(fc.constantFrom(1, 2, 2, 2, 4, 6), { maxLength: 14 }))
    .map(([first, gaps]) => {
      const rising = [first];
      for (const gap of gaps) rising.push((rising.at(-1) ?? 0) + gap);
      return rising;
    })
    .chain((list) => fc.constantFrom(list, []));

const groups = (): fc.Arbitrary<readonly Group[]> =>
  rows().chain((list) =>
    fc
      .array(fc.integer({ min: 1, max: 12 }), { minLength: list.length, maxLength: list.length })
      .map((sizes) => list.map((row, i) => ({ row, stitches: sizes[i] as number }))),
  );

const shaping = (): fc.Arbitrary<readonly Shaping[]> =>
  fc.oneof(
    fc
      .record({
        kind: fc.constant('edge' as const),
        edge: fc.constantFrom('right' as const, 'left' as const, 'both' as const),
        by: fc.constantFrom(-2, -1, 1, 2),
        rows: rows(),
        inset: fc.integer({ min: 0, max: 9 }),
        lean: fc.constantFrom('mirrored' as const, 'plain' as const),
      })
      .map(alone),
    fc
      .record({ kind: fc.constant('across' as const), row: count(), by: fc.constantFrom(-30, -1, 1, 24) })
      .map(alone),
    fc.record({ kind: fc.constant('middle' as const), rows: rows(), from: count() }).map(alone),
    oneEdge().map(alone),
    oneEdge().map(atBothEdges),
  );

type GroupShaping = Extract<Shaping, { readonly groups: unknown }>;

const oneEdge = (): fc.Arbitrary<GroupShaping> =>
  fc.record({
    kind: fc.constantFrom('bind off' as const, 'cast on' as const),
    edge: fc.constantFrom('right' as const, 'left' as const),
    groups: groups(),
  });

const alone = (shaping: Shaping): readonly Shaping[] => [shaping];

/** The same groups at the other edge, one row later. */
const atBothEdges = (one: GroupShaping): readonly Shaping[] => [
  one,
  {
    ...one,
    edge: one.edge === 'right' ? 'left' : 'right',
    groups: one.groups.map((group) => ({ ...group, row: group.row + 1 })),
  },
];
