import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MeasuredGauge } from '../../../../src/knit/measured-gauge.ts';
import { counts } from '../../../../src/knit/piece/counts.ts';
import { formToRecipe } from '../../../../src/knit/piece/form/read-piece.ts';
import type { StarterWords } from '../../../../src/knit/piece/form/starters.ts';
import {
  faultOf,
  neckOf,
  type StraightCounts,
  type StraightFault,
  type StraightFigure,
  type StraightShape,
  shoulderOf,
  straightCounts,
  straightFigureNames,
  straightMm,
  straightPieces,
  usualShape,
} from '../../../../src/knit/piece/form/straight.ts';
import { gaugeOf } from '../../../../src/knit/piece/gauges.ts';
import { plan } from '../../../../src/knit/piece/plan.ts';
import type { Recipe } from '../../../../src/knit/piece/recipe.ts';
import { share } from '../../../by-turns.ts';

const words = new Proxy({}, { get: (_, name) => String(name) }) as StarterWords;
const gauge = { stitches: 20, rows: 28 };

function recipes(shape: StraightShape, per: MeasuredGauge = gauge): Recipe[] {
  const found = straightCounts(shape, per);
  if (!found) throw new Error('a figure is missing');
  return straightPieces(shape, found, { gauge: per, needle: 4, words }).map((form) => {
    const read = formToRecipe(form);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    return read.value;
  });
}

describe('a garment of straight panels', () => {
  it('is reckoned from lengths in pairs: 54 cm at 20 to 10 cm are 108 stitches, 58 cm at 28 are 162 rows', () => {
    // 54 × 2.0 = 108; 58 × 2.8 = 162.4; 5 × 2.8 = 14; 24 × 2.0 = 48; 18 × 2.8 = 50.4; 42 × 2.0 = 84; 43 × 2.8 = 120.4
    expect(straightCounts(usualShape, gauge)).toEqual({
      width: 108,
      length: 162,
      border: 14,
      neckWidth: 48,
      neckDepth: 50,
      cuff: 48,
      sleeveTop: 84,
      sleeveLength: 120,
    });
  });

  it('is as wide and as long as is usual unless she says otherwise, in millimetres', () => {
    const usual = straightFigureNames.map((name) => [name, straightMm(usualShape, name, undefined)]);
    expect(Object.fromEntries(usual)).toEqual({
      width: 540,
      length: 580,
      border: 50,
      neckWidth: 240,
      neckDepth: 180,
      cuff: 240,
      sleeveTop: 420,
      sleeveLength: 430,
    });
  });

  it('with a V has its left shoulder at the right edge, decreased at the neck on its left, and the other way round', () => {
    const front = recipes({ ...usualShape, neck: 'V' }).find(({ parts }) => parts.length === 3);
    const sides = front?.parts.slice(1).map(({ name, from, sections }) => ({
      name,
      from,
      decreased: sections.flatMap(({ shaping }) =>
        shaping.map((one) => (one.kind === 'edge' ? [one.edge, one.by, one.inset] : [])),
      ),
    }));
    // half of 108, and 24 to take in on either side
    expect(sides).toEqual([
      {
        name: 'leftShoulder',
        from: { part: 'body', stitches: 54, edge: 'right' },
        decreased: [['left', -1, 2]],
      },
      {
        name: 'rightShoulder',
        from: { part: 'body', stitches: 54, edge: 'left' },
        decreased: [['right', -1, 2]],
      },
    ]);
  });

  it('takes a count as it was given, and says what it measures', () => {
    const shape: StraightShape = { neck: 'boat', given: { width: { count: 111 }, length: { mm: 600 } } };
    expect(straightCounts(shape, gauge)).toMatchObject({ width: 111, length: 168 });
    expect(straightMm(shape, 'width', gauge)).toBe(555);
    expect(straightMm(shape, 'length', gauge)).toBe(600);
    expect(straightMm(shape, 'width', undefined)).toBeUndefined();
    expect(straightCounts({ neck: 'boat', given: { width: { count: null } } }, gauge)).toBeUndefined();
    expect(straightCounts({ neck: 'boat', given: { width: { mm: null } } }, gauge)).toBeUndefined();
  });

  it('in garter stitch is as long as it was asked for, its border reckoned as the rib that it is', () => {
    const per = { stitches: 20, rows: 40, fabric: 'garter', needle: 4 } as const;
    const asked = { length: 620, border: 30, sleeveLength: 440 };
    const given = Object.fromEntries(Object.entries(asked).map(([name, mm]) => [name, { mm }]));
    const shape: StraightShape = { neck: 'boat', given };
    const heightOf = (sections: Recipe['parts'][number]['sections']) =>
      sections.reduce((mm, { rows, fabric }) => mm + (rows / gaugeOf({ gauge: per }, fabric).rows) * 100, 0);
    const [back, , sleeve] = recipes(shape, per).map(({ parts }) => parts[0]?.sections ?? []);
    // counts come in pairs of rows: half a pair at most is too much or too little, of the rib and of the rest
    expect(Math.abs(heightOf(back?.slice(0, 1) ?? []) - 30)).toBeLessThan(4);
    expect(Math.abs(heightOf(back ?? []) - 620)).toBeLessThan(3);
    expect(Math.abs(heightOf(sleeve ?? []) - 440)).toBeLessThan(3);
    // and a count says what it measures by the same
    const counted = straightCounts(shape, per);
    const same: StraightShape = {
      neck: 'boat',
      given: { border: { count: counted?.border ?? 0 }, length: { count: counted?.length ?? 0 } },
    };
    expect(straightMm(same, 'border', per)).toBeCloseTo(heightOf(back?.slice(0, 1) ?? []), 6);
    expect(straightMm(same, 'length', per)).toBeCloseTo(heightOf(back ?? []), 6);
  });

  it('is as long as its rows where nothing is said of its border', () => {
    const shape: StraightShape = { neck: 'boat', given: { border: { mm: null }, length: { count: 140 } } };
    expect(straightMm(shape, 'length', gauge)).toBe(500);
    expect(straightMm(shape, 'border', gauge)).toBeUndefined();
    expect(straightCounts(shape, gauge)).toBeUndefined();
  });

  it('has sleeves that widen in the first row above the cuff', () => {
    const sleeve = recipes(usualShape)[2];
    expect(sleeve?.makes).toBe(2);
    expect(sleeve?.parts[0]?.sections.map(({ rows, shaping }) => [rows, shaping])).toEqual([
      [14, []],
      [106, [{ kind: 'across', row: 1, by: 36 }]],
    ]);
  });

  it('both shoulders are alike: the neck takes the odd stitch', () => {
    const found = straightCounts({ neck: 'boat', given: { neckWidth: { count: 47 } } }, gauge);
    expect(found && [shoulderOf(found), neckOf(found)]).toEqual([30, 48]);
  });

  it.each([
    ['odd V', { neck: 'V', given: { width: { count: 111 } } }],
    ['neck too wide', { neck: 'boat', given: { neckWidth: { count: 106 } } }],
    ['too short', { neck: 'boat', given: { length: { count: 16 } } }],
    ['too short', { neck: 'V', given: { neckDepth: { count: 150 } } }],
    ['too short', { neck: 'boat', given: { sleeveLength: { count: 14 } } }],
    ['neck too steep', { neck: 'V', given: { neckDepth: { count: 20 } } }],
    ['sleeve too wide', { neck: 'boat', given: { cuff: { count: 40 } } }],
    ['sleeve too wide', { neck: 'boat', given: { sleeveTop: { count: 40 } } }],
  ] as const)('%s is told before a piece is made', (fault, shape) => {
    const found = straightCounts(shape, gauge);
    expect(found && faultOf(shape, found)).toBe(fault);
  });

  it.each([
    // a border of ten rows, two above it, two that bind off the shoulders
    [{ length: 14 }, undefined],
    [{ length: 13 }, 'too short'],
    [{ sleeveLength: 12 }, undefined],
    [{ sleeveLength: 11 }, 'too short'],
  ])('two rows between border and end are enough: %j', (over, fault) => {
    const usual = straightCounts(usualShape, gauge);
    expect(usual && faultOf(usualShape, { ...usual, border: 10, ...over })).toBe(fault);
  });

  it.each<[string, StraightShape['neck'], Partial<StraightCounts>, StraightFault | undefined]>([
    ['shoulders of two stitches', 'boat', { width: 52, neckWidth: 48 }, undefined],
    ['of one', 'boat', { width: 51, neckWidth: 48 }, 'neck too wide'],
    ['an odd width without a V', 'boat', { width: 109 }, undefined],
    // of 108 half are 54, of which 30 are shoulder
    ['a stitch in each row of the V', 'V', { neckDepth: 24 }, undefined],
    ['more stitches than rows', 'V', { neckDepth: 23 }, 'neck too steep'],
    // 162 less a border of 14, two rows above it and two that bind off
    ['a V that begins two rows above the border', 'V', { neckDepth: 144 }, undefined],
    ['one row above it', 'V', { neckDepth: 145 }, 'too short'],
    ['a sleeve as wide as its cuff', 'boat', { cuff: 48, sleeveTop: 48 }, undefined],
    ['narrower', 'boat', { cuff: 48, sleeveTop: 47 }, 'sleeve too wide'],
    ['a stitch made between every two', 'boat', { cuff: 48, sleeveTop: 95 }, undefined],
    ['one more', 'boat', { cuff: 48, sleeveTop: 96 }, 'sleeve too wide'],
  ])('%s', (_, neck, over, fault) => {
    const usual = straightCounts(usualShape, gauge);
    expect(usual && faultOf({ ...usualShape, neck }, { ...usual, ...over })).toBe(fault);
  });

  it('needs one of everything but the border', () => {
    const withCount = (name: StraightFigure, count: number) =>
      straightCounts({ neck: 'boat', given: { [name]: { count } } }, gauge)?.[name];
    expect(straightFigureNames.map((name) => withCount(name, 1))).toEqual(straightFigureNames.map(() => 1));
    expect(straightFigureNames.filter((name) => withCount(name, 0) === 0)).toEqual(['border']);
  });

  it('can be knitted whatever is said, and its pieces agree (law)', () => {
    const mm = (min: number, max: number) =>
      fc.oneof(
        fc.record({ mm: fc.integer({ min, max }) }),
        fc.record({ count: fc.integer({ min: 10, max: 160 }) }),
      );
    const shapes = fc.record({
      neck: fc.constantFrom('boat' as const, 'V' as const),
      given: fc.record(
        {
          width: mm(300, 700),
          length: mm(300, 800),
          border: fc.record({ mm: fc.integer({ min: 0, max: 90 }) }),
          neckWidth: mm(120, 320),
          neckDepth: mm(40, 260),
          cuff: mm(150, 300),
          sleeveTop: mm(250, 500),
          sleeveLength: mm(200, 500),
        },
        { requiredKeys: [] },
      ),
    });
    const gauges = fc.record({
      stitches: fc.integer({ min: 10, max: 34 }),
      rows: fc.integer({ min: 14, max: 50 }),
    });
    fc.assert(
      fc.property(shapes, gauges, (shape, per) => {
        const found = straightCounts(shape, per);
        fc.pre(found !== undefined && faultOf(shape, found) === undefined);
        const [back, front, sleeve] = recipes(shape, per) as [Recipe, Recipe, Recipe];
        for (const recipe of [back, front, sleeve]) {
          const planned = plan(recipe);
          expect(planned.ok ? [] : planned.faults).toEqual([]);
        }
        const rows = (recipe: Recipe) =>
          recipe.parts.map((part) => part.sections.reduce((sum, section) => sum + section.rows, 0));
        expect(rows(back)).toEqual([found?.length]);
        // the front's shoulders are bound off in the row in which the back's first one is
        expect(shape.neck === 'V' ? (rows(front)[0] ?? 0) + (rows(front)[1] ?? 0) + 2 : rows(front)[0]).toBe(
          found?.length,
        );
        if (shape.neck === 'V')
          expect(counts(front)[1]?.sections.at(-1)?.after).toBe(found && shoulderOf(found));
        expect(rows(sleeve)).toEqual([found?.sleeveLength]);
        expect(counts(sleeve)[0]?.sections.at(-1)?.after).toBe(found?.sleeveTop);
      }),
      { endOnFailure: true, numRuns: share(60) },
    );
  });
});
