import fc from 'fast-check';
import { inColours } from '../../src/app/garments/coloured-makes.ts';
import { numbered } from '../../src/app/garments/save-new.ts';
import { bodiesOf, type SizeSet } from '../../src/app/garments/size-set.ts';
import { type Adjustment, adjustablePaths, adjusted, figureAt } from '../../src/knit/garment/adjust.ts';
import { bodyTableNames, bodyTables } from '../../src/knit/garment/bodies.ts';
import type { Body, Design } from '../../src/knit/garment/design.ts';
import { resized } from '../../src/knit/garment/grade.ts';
import type { Garment } from '../../src/knit/piece/garment.ts';
import { englishWritten } from '../../src/knit/written/english.ts';
import type { Point } from '../../src/knit/written/look-through.ts';
import { draftSize } from '../../src/knit/written/work-size.ts';
import { stripedThrough } from '../../src/knit/yarn/striped-through.ts';
import type { Restriped, Stripe } from '../../src/knit/yarn/stripes.ts';
import type { GarmentRecord } from '../../src/store/records.ts';
import { needleNumber } from '../../src/words/needle-sizes.ts';
import { someBody, wholeDesign } from './design.ts';

const some = <T>(...of: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...of);

/** What people are called, and garments, as they are typed. */
const people = [
  'Ada',
  'Jörg K.',
  'Mum, no. 2',
  '42',
  'M',
  'für Opa',
  '3–4 years',
  'Only',
  'Ann and Bea',
  'Back',
  '(me)',
  '!?',
] as const;
const nobody: [(typeof people)[number], Body][] = [];

const titles = [
  'Fen',
  'Back to school',
  'Größe 3 (blau)',
  'Mum’s 2nd',
  'Ridge & Rib No. 7',
  'SLEEVES',
  'Row 1',
] as const;

const yarn = fc.record(
  {
    name: some('Hollin', 'No. 4, soft', 'Wool & Co. 50/50'),
    fibre: some('wool', '80 % wool, 20 % alpaca'),
    grams: some(50, 100),
    metres: some(120, 87.5),
    strands: some(1, 2),
    colour: some('natural white', '12'),
    balls: some(9),
  },
  { requiredKeys: ['name', 'fibre'] },
);

/** What of a garment is not drafted, and which points of an editor are not met for that. */
const beside = (): fc.Arbitrary<{ rest: Omit<Garment, 'pieces'>; missing: readonly Point[] }> =>
  fc
    .record(
      {
        name: some(...titles),
        credits: some('A. Knitter', 'Ann O’Hara (2024), J. K.'),
        licence: some('CC BY 4.0', 'for your own use, not for sale'),
        notes: some('Begun in March.\n\nSee page 2.'),
        yarns: fc.array(yarn, { minLength: 1, maxLength: 2 }),
        swatches: fc.constant([
          { fabric: 'stocking', stitches: 21, widthMm: 100, rows: 28, heightMm: 100, needle: 4 } as const,
        ]),
      },
      { requiredKeys: ['name'] },
    )
    .map((rest) => {
      const [first] = rest.yarns ?? [];
      const missing: Point[] = [
        ...(rest.credits ? [] : ['title' as const]),
        ...(first?.grams && first.metres ? [] : ['yarn' as const]),
        ...(rest.swatches ? [] : ['washed' as const]),
        ...(rest.licence ? [] : ['licence' as const]),
      ];
      return { rest, missing };
    });

const stripe = fc.record({
  colour: some('natural white', 'A', 'No. 12', 'red, dark', 'Sea/Sand', 'b'),
  rows: fc.integer({ min: 1, max: 12 }),
});

const stripes = fc.array(stripe, { minLength: 2, maxLength: 5 });

/** Other stripes from a row on; where it lies is a share of what the piece has. */
const otherFrom = fc.record({
  piece: fc.nat(),
  make: fc.nat(),
  part: fc.nat(),
  row: fc.nat(),
  at: fc.integer({ min: 1, max: 12 }),
  stripes,
});
type OtherFrom = typeof otherFrom extends fc.Arbitrary<infer T> ? T : never;

/** Her own size, in which the rows are that she restriped. */
const OWN = 'Hers';

/** The garment as it lies in the workbasket, in stripes that go through its pieces, others from a row of hers on. */
function striped(
  design: Design,
  rest: Omit<Garment, 'pieces'>,
  all: readonly Stripe[],
  others: readonly OtherFrom[],
) {
  const made = draftSize('', design, rest);
  if (!made.ok) return undefined;
  const lies = stripedThrough(made.value.garment);
  const pieces = numbered(made.value.garment.pieces.map(({ recipe }) => recipe));
  const laid = pieces.flatMap(({ id, recipe }) => {
    const own = lies.get(recipe.name);
    return own ? [[id, own] as const] : [];
  });
  return {
    ...rest,
    id: 'sample' as GarmentRecord['id'],
    createdAt: 0,
    changedAt: 0,
    pieces,
    joints: made.value.made.joints,
    stripes: all,
    striped: Object.fromEntries(laid),
    restriped: others.flatMap((other): Restriped[] => {
      const i = other.piece % pieces.length;
      const [piece, parts] = [pieces[i], made.value.garment.pieces[i]?.makes[0]?.parts];
      if (!piece || !parts) return [];
      const part = other.part % parts.length;
      const row = 1 + (other.row % Math.max(1, parts[part]?.rows.length ?? 0));
      return [{ ...other, piece: piece.id, make: 1 + (other.make % piece.recipe.makes), part, row }];
    }),
  };
}

interface SetOtherwise {
  readonly path: number;
  readonly share: number;
  readonly size: number | undefined;
}

/** A figure of the design, more or less, for one of the sizes or for all. */
function adjustment(
  design: Design,
  names: readonly string[],
  { path, share, size }: SetOtherwise,
): Adjustment[] {
  const at = adjustablePaths[path % adjustablePaths.length];
  const was = at && figureAt(design, at);
  if (at === undefined || was === undefined) return [];
  const own = size === undefined ? undefined : names[size % names.length];
  return [{ path: at, mm: Math.round(was * share) / 100, ...(own !== undefined && { size: own }) }];
}

/** The designs of a law in sizes of a table and by own measures, some set otherwise, and in whose words; those that can be knitted. */
export const inSizes = () =>
  fc
    .record({
      design: wholeDesign(),
      table: some(...bodyTableNames),
      from: fc.nat(4),
      // most of them few, since each size is read by itself
      count: some(1, 1, 1, 2, 2, 0, 3, 5),
      own: fc.oneof(fc.constant(nobody), fc.array(fc.tuple(some(...people), someBody()), { maxLength: 2 })),
      otherwise: fc.array(
        fc.record({
          path: fc.nat(),
          share: fc.integer({ min: 85, max: 115 }),
          size: fc.option(fc.nat(), { nil: undefined }),
        }),
        { maxLength: 2 },
      ),
      beside: beside(),
      colours: fc.oneof(
        fc.constant({ all: [], others: [] }),
        fc.record({ all: stripes, others: fc.array(otherFrom, { maxLength: 2 }) }),
      ),
      words: some(englishWritten('US'), englishWritten('UK')),
      units: some('cm' as const, 'in' as const, 'both' as const),
      needle: some(undefined, (mm: number) => {
        const number = needleNumber(mm, 'US');
        return number && `US ${number}`;
      }),
    })
    .map(
      ({
        design,
        table,
        from,
        count,
        own,
        otherwise,
        beside: { rest, missing },
        colours: { all, others },
        needle,
        ...said
      }) => {
        const hers = others.length > 0 ? [[OWN, design.body] as const] : [];
        const set: SizeSet = {
          version: 1,
          table,
          sizes: bodyTables[table].slice(from, from + count).map(({ size }) => size),
          people: [...own, ...hers].map(([name, body]) => ({ name, body })) as unknown as SizeSet['people'],
          adjusted: [],
        };
        const bodies = [...bodiesOf(set)].sort((a, b) => a.body.chest - b.body.chest);
        const names = bodies.map(({ size }) => size);
        const by = otherwise.flatMap((one) => adjustment(design, names, one));
        const record = all.length > 0 ? striped(design, rest, all, others) : undefined;
        const hasMore = Object.keys(design.gauges).length > 1;
        return {
          ...said,
          // a gauge over 4 inches is no whole tenth of one over 10 cm
          units: hasMore && said.units === 'in' ? ('both' as const) : said.units,
          ...(needle && { needle }),
          missing,
          sizes: bodies.flatMap(({ size, body }) => {
            const made = draftSize(size, adjusted(resized(design, body), by, size), rest);
            if (!made.ok) return [];
            return [record ? inColours(record, made.value) : made.value];
          }),
        };
      },
    );
