import fc from 'fast-check';
import { fabricNames } from '../../src/knit/fabric.ts';
import type { Gauge } from '../../src/knit/gauge.ts';
import type { MeasuredGauge } from '../../src/knit/measured-gauge.ts';
import { plan } from '../../src/knit/piece/plan.ts';
import {
  type PartRecipe,
  type PartStart,
  type PickUp,
  pieceRoles,
  type Recipe,
  type Section,
  type SectionLength,
} from '../../src/knit/piece/recipe.ts';
import { type ReworkWish, rework } from '../../src/knit/piece/rework.ts';
import type { Step } from '../../src/knit/row/step.ts';
import { shapedInAnyWay } from './any-shaping.ts';
import { knittableRecipe } from './knittable-recipe.ts';
import { madeOf, maybe, missing } from './made-of.ts';
import { someCount, someMeasure, someName, someTension, someText } from './typed-fields.ts';

/** What of a recipe says how many stitches there are, and so cannot be drawn by itself; all else can. */
type Laid = 'parts';
type LaidPart = 'name' | 'from' | 'sections' | 'end';
type LaidSection = 'rows' | 'fabric' | 'needle' | 'shaping';

const gauge = madeOf<Gauge>({ stitches: someTension(), rows: someTension() });
const fabric = fc.constantFrom(...fabricNames);
const side = fc.constantFrom('RS' as const, 'WS' as const);

const recipeFields = madeOf<Omit<Recipe, Laid>>({
  name: someName(),
  makes: someCount(1, 4),
  mirrored: maybe(fc.boolean()),
  role: maybe(fc.constantFrom(...pieceRoles)),
  gauge: maybe(
    madeOf<MeasuredGauge>({
      stitches: someTension(),
      rows: someTension(),
      fabric: maybe(fabric),
      needle: maybe(someMeasure(80)),
    }),
  ),
  gauges: maybe(fc.dictionary(fabric, gauge, { maxKeys: 3, noNullPrototype: true })),
});

const partFields = madeOf<Omit<PartRecipe, LaidPart>>({
  firstSide: maybe(side),
  selvedge: maybe(fc.constantFrom('plain' as const, 'slipped' as const)),
});

const length = madeOf<SectionLength>({
  id: someName(),
  mm: maybe(someMeasure()),
  from: fc.constantFrom('start', 'here', 'armhole', 'rib', 'section'),
  endSide: maybe(side),
  open: fc.boolean(),
});

/** Rows that come out on any number of stitches from six on, with every form of step. */
const rows: readonly (readonly Step[])[] = [
  [{ work: 'k', until: { left: 0 } }],
  [
    { work: 'k', times: 1 },
    { work: 'yo', times: 1 },
    { work: 'k2tog', times: 1 },
    { work: 'p', until: { left: 1 } },
    { work: 'sl', times: 1 },
  ],
  [
    {
      repeat: [
        { work: 'k', times: 1 },
        { repeat: [{ work: 'p', times: 1 }], times: 2 },
      ],
      times: 2,
    },
    { work: 'patt', until: { left: 0 } },
  ],
  [
    { repeat: [{ work: 'p', times: 1 }], until: { left: 2 } },
    { work: 'k', times: 2 },
  ],
];

const sectionFields = (section: Section, mayBeSpelled: boolean) =>
  madeOf<Omit<Section, LaidSection>>({
    name: someText(12),
    words: mayBeSpelled ? maybe(fc.array(fc.constantFrom(...rows), { minLength: 1, maxLength: 4 })) : missing,
    own: maybe(
      fc.dictionary(someCount(1, Math.max(1, section.rows)).map(String), someText(), {
        minKeys: 1,
        maxKeys: 3,
        noNullPrototype: true,
      }),
    ),
    length: maybe(length),
    onNeedle: mayBeSpelled ? maybe(someCount(8, 200)) : missing,
    measured: maybe(
      madeOf<NonNullable<Section['measured']>>({ rowMm: someMeasure(40), atMm: maybe(someMeasure()) }),
    ),
  });

const pickUp = (stitches: number): fc.Arbitrary<PickUp> =>
  madeOf<PickUp>({ along: someText(12), stitches: fc.constant(stitches), held: maybe(fc.boolean()) });

/** Without spread rows that change nothing: nobody makes those, and the editor says so where one is typed. */
const knittable = knittableRecipe().map(
  ({ recipe }): Recipe => ({
    ...recipe,
    parts: recipe.parts.map((part) => ({ ...part, sections: part.sections.map(withoutIdle) })),
  }),
);

const withoutIdle = (section: Section): Section => ({
  ...section,
  shaping: section.shaping.filter((one) => one.kind !== 'across' || one.by !== 0),
});

type Draw = <T>(of: fc.Arbitrary<T>) => T;

/** A recipe that can be knitted and may have any field of the model. */
const withAnyField = (): fc.Arbitrary<Recipe> =>
  fc.gen().map((g) => {
    const draw: Draw = (of) => g(() => of);
    const laid = draw(fc.oneof(knittable, shapedInAnyWay()));
    const names = draw(
      fc.uniqueArray(someName(), { minLength: laid.parts.length, maxLength: laid.parts.length }),
    );
    const nameOf = (old: string) => names[laid.parts.findIndex((part) => part.name === old)] ?? old;
    const parts = laid.parts.map((part) => anyPart(draw, part, nameOf));
    const recipe: Recipe = { ...draw(recipeFields), parts };
    // a group on the other side or a mirror image without a row for it: the same without what was drawn
    return plan(recipe).ok ? recipe : { ...draw(recipeFields), mirrored: false, parts: laid.parts };
  });

function anyPart(draw: Draw, part: PartRecipe, nameOf: (old: string) => string): PartRecipe {
  const { firstSide, ...fields } = draw(partFields);
  const hasGroups = part.sections.some(({ shaping }) => shaping.some((one) => 'groups' in one));
  const sections = part.sections.map((section, i) => {
    const isLast = i === part.sections.length - 1 && part.end !== 'split';
    const plain = section.shaping.length === 0 && isLast && section.fabric === 'stocking';
    return { ...section, ...draw(sectionFields(section, plain)) };
  });
  const from = anyStart(draw, part.from, nameOf);
  const shown = 'pickUp' in from ? 'RS' : undefined;
  const first = (hasGroups || 'part' in from ? undefined : firstSide) ?? shown;
  const side = first === undefined ? {} : { firstSide: first };
  return { name: nameOf(part.name), from, ...side, ...fields, sections, end: part.end };
}

type StartWith<Field extends string> = Extract<PartStart, { readonly [K in Field]: unknown }>;

/** As many stitches, cast on or picked up. A start of another kind does not compile. */
function anyStart(
  draw: Draw,
  from: StartWith<'castOn'> | StartWith<'part'> | StartWith<'pickUp'>,
  nameOf: (old: string) => string,
): PartStart {
  if ('pickUp' in from) return from;
  if ('part' in from) {
    const { part, stitches, edge } = from;
    const fields = {
      part: fc.constant(nameOf(part)),
      stitches: fc.constant(stitches),
      edge: fc.constant(edge),
    };
    return draw(madeOf<StartWith<'part'>>(fields));
  }
  const { castOn } = from;
  if (draw(fc.boolean())) return draw(madeOf<StartWith<'castOn'>>({ castOn: fc.constant(castOn) }));
  const right = draw(someCount(1, castOn - 1));
  return draw(madeOf<StartWith<'pickUp'>>({ pickUp: fc.tuple(pickUp(right), pickUp(castOn - right)) }));
}

const wish: fc.Arbitrary<ReworkWish> = fc.oneof(
  fc.record({ kind: fc.constant('accept' as const), stitches: someCount(20, 150) }),
  fc.record({ kind: fc.constant('measured' as const), heightMm: someMeasure(200), above: fc.constant(0) }),
  fc.record({ kind: fc.constant('rows' as const), section: someCount(0, 2), rows: someCount(2, 40) }),
);

/** A recipe whose rows not yet knitted were planned anew; the recipe itself where the wish could not be met. */
const reworked = (): fc.Arbitrary<Recipe> =>
  fc.tuple(knittable, wish, fc.double({ min: 0, max: 0.9, noNaN: true })).map(([recipe, asked, at]) => {
    const planned = plan(recipe);
    const index = recipe.parts.length - 1;
    const part = planned.ok ? planned.value.parts[index] : undefined;
    const worked = Math.floor((part?.rows.length ?? 0) * at);
    const wished =
      asked.kind === 'accept'
        ? { ...asked, stitches: Math.max(1, (part?.rows[worked]?.before ?? 0) + (asked.stitches % 5) - 2) }
        : asked.kind === 'measured'
          ? { ...asked, heightMm: (part?.rows[worked - 1]?.height ?? 1) * (0.8 + asked.heightMm / 500) }
          : asked;
    const anew = part && rework(recipe, index, part, worked, wished);
    if (!anew?.ok) return recipe;
    const changed = new Map(anew.value.parts.map((one) => [one.index, one.part.recipe]));
    const again = { ...recipe, parts: recipe.parts.map((old, i) => changed.get(i) ?? old) };
    return plan(again).ok ? again : recipe;
  });

/** A recipe such as the editor, the reader, the drafter or a rework may leave: it can be knitted, and may have any field. */
export const anyRecipe = (): fc.Arbitrary<Recipe> =>
  fc.oneof({ weight: 3, arbitrary: withAnyField() }, { weight: 1, arbitrary: reworked() });
