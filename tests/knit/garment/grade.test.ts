import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { type GradedPiece, gradedPiece, resized } from '../../../src/knit/garment/grade.ts';
import { armholeKinds } from '../../../src/knit/garment/kinds/armholes.ts';
import { type GarmentKind, garmentKinds } from '../../../src/knit/garment/kinds/garments.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { told } from '../../told.ts';
import { graded } from './graded.ts';

/** What a table of sizes says of a piece, held against a walk over its rows. */

const body = bodyOfSize('women', 'M');
if (body === undefined) throw new Error('no such size');

const kinds = Object.keys(garmentKinds) as GarmentKind[];
const garments = kinds.flatMap((kind) =>
  // a raglan has its sleeve's half of the shoulder
  armholeKinds
    .filter((armhole) => armhole !== 'raglan' || !kind.endsWith('vest'))
    .map((armhole) => ({
      name: `${kind}, ${armhole}`,
      design: startingDesign({ kind, armhole, neck: 'round', fit: 'close' }, body, 'stocking', {
        stitches: 22,
        rows: 30,
      }),
    })),
);

/** Up, down and off in a piece, by the counts before and after each row and what each row says that it does. */
function walked(parts: readonly PlannedPart[]): GradedPiece['shapings'] {
  const sums = { increases: 0, decreases: 0, boundOff: 0 };
  for (const { shaping, before, after } of parts.flatMap(({ rows }) => rows)) {
    const off = shaping.filter(({ kind }) => kind === 'bind off').reduce((sum, { by }) => sum - by, 0);
    const down = shaping.filter(({ kind, by }) => kind !== 'bind off' && kind !== 'turn' && by < 0);
    const fewer = down.reduce((sum, { by }) => sum - by, 0);
    sums.boundOff += off;
    sums.decreases += fewer;
    // whatever else is there after the row was made in it
    sums.increases += after - before + off + fewer;
  }
  return sums;
}

describe.each(garments)('the table of sizes of a $name', ({ design }) => {
  const drafted = draft(design);
  const [own] = graded(design, [{ size: 'M', body }]);

  it('has for each piece the figures of its rows', () => {
    if (!drafted.ok) throw new Error(told(drafted.faults));
    expect(own?.pieces.map(({ name }) => name)).toEqual(drafted.value.recipes.map(({ name }) => name));
    for (const [i, recipe] of drafted.value.recipes.entries()) {
      const planned = plan(recipe);
      const piece = own?.pieces[i];
      if (!planned.ok || piece === undefined) throw new Error(recipe.name);
      const { parts } = planned.value;
      expect(piece.makes).toBe(recipe.makes);
      expect(piece.castOn).toBe(parts[0]?.start);
      expect(piece.shapings).toEqual(walked(parts));
      const widest = Math.max(
        parts[0]?.start ?? 0,
        ...parts.flatMap(({ rows }) => rows.map(({ after }) => after)),
      );
      expect(piece.widest).toBe(widest);
      expect(piece.ends.map(({ part }) => part)).toEqual(parts.map(({ name }) => name));
    }
  });

  it('has rows from the cast-on to the highest shoulder, the bind-off not counted', () => {
    if (!drafted.ok) throw new Error(told(drafted.faults));
    for (const [i, recipe] of drafted.value.recipes.entries()) {
      const planned = plan(recipe);
      if (!planned.ok) throw new Error(recipe.name);
      const knitted = planned.value.parts.map(({ rows }) => rows.filter(({ after }) => after > 0).length);
      const [below = 0, ...above] = knitted;
      expect(own?.pieces[i]?.rows).toBe(below + Math.max(0, ...above));
    }
  });
});

it('the rows of a piece are those of its body and of the longer side above it, the bind-off not counted', () => {
  const part = (rows: number, end: PlannedPart['end'], before = 20) =>
    ({
      name: 'any',
      start: 20,
      left: 16,
      end,
      rows: Array.from({ length: rows }, () => ({ before, after: 20, shaping: [] })),
    }) as unknown as PlannedPart;
  const told = (...parts: readonly PlannedPart[]) =>
    gradedPiece({ name: 'Front', makes: 1, parts: [] }, parts);
  expect(told(part(10, 'split'), part(7, 'bind off'), part(5, 'bind off')).rows).toBe(16);
  expect(told(part(10, 'split'), part(5, 'bind off'), part(7, 'bind off')).rows).toBe(16);
  expect([told(part(10, 'bind off')).rows, told(part(10, 'hold')).rows]).toEqual([9, 10]);
  // what is on the needle before it is bound off, or rests
  expect(
    told(part(10, 'bind off', 18), part(3, 'hold'), part(0, 'bind off')).ends.map(({ stitches }) => stitches),
  ).toEqual([18, 16, 20]);
});

describe('a design in another size', () => {
  const design = startingDesign(
    { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'close' },
    body,
    'stocking',
    {
      stitches: 22,
      rows: 30,
    },
  );
  const own = { ...design, underarmMm: 60, sleeve: { ...design.sleeve, lengthMm: 400 } };
  const measures = (of: typeof own) => ({
    lengthMm: of.lengthMm,
    neckWidthMm: of.neck.widthMm,
    neckDepthMm: of.neck.depthMm,
    backDepthMm: of.neck.backDepthMm,
    shoulderDropMm: of.shoulderDropMm,
    underarmMm: of.underarmMm,
    sleeveMm: of.sleeve.lengthMm,
  });

  it('of a body half as large again has every length of it half as large again, borders and choices as they were', () => {
    const larger = Object.fromEntries(
      Object.entries(body).map(([name, mm]) => [name, mm * 1.5]),
    ) as unknown as typeof body;
    const grown = resized(own, larger) as typeof own;
    expect(grown.body).toEqual(larger);
    for (const [name, mm] of Object.entries(measures(own)))
      expect(measures(grown)[name as keyof ReturnType<typeof measures>], name).toBe(
        Math.round((mm ?? 0) * 1.5),
      );
    expect(grown.ease).toEqual(own.ease);
    expect(grown.neck.shape).toBe(own.neck.shape);
  });

  it('follows for each length the measure that it hangs on', () => {
    const moved = (measure: keyof typeof body) => {
      const to = resized(own, { ...body, [measure]: body[measure] * 2 }) as typeof own;
      const [before, after] = [measures(own), measures(to)];
      return Object.keys(before).filter(
        (name) => before[name as keyof typeof before] !== after[name as keyof typeof after],
      );
    };
    expect(moved('napeToWaist')).toEqual(['lengthMm']);
    expect(moved('crossBack')).toEqual(['neckWidthMm', 'shoulderDropMm']);
    expect(moved('armholeDepth')).toEqual(['neckDepthMm', 'backDepthMm']);
    expect(moved('chest')).toEqual(['underarmMm']);
    expect(moved('arm')).toEqual(['sleeveMm']);
    expect(moved('head')).toEqual([]);
  });

  it('has an opening that is as much deeper as its armhole, and a cap’s top as much wider as its arm; none where it had none', () => {
    const opened = {
      ...own,
      neck: { ...own.neck, openingMm: 80 },
      sleeve: { ...own.sleeve, capTopMm: 70 },
    };
    const larger = { ...body, armholeDepth: 1.5 * body.armholeDepth, upperArm: 2 * body.upperArm };
    expect(resized(opened, larger).neck.openingMm).toBe(120);
    expect(resized(opened, larger).sleeve.capTopMm).toBe(140);
    const { openingMm: _, ...neck } = opened.neck;
    const { capTopMm: __, lengthMm: ___, ...sleeve } = opened.sleeve;
    const { underarmMm: ____, ...plain } = { ...opened, neck, sleeve };
    const grown = resized(plain, larger);
    expect([Object.keys(grown.neck), Object.keys(grown.sleeve)]).toEqual([
      Object.keys(neck),
      Object.keys(sleeve),
    ]);
    expect(grown).not.toHaveProperty('underarmMm');
  });

  it('takes the yarn that her weighed swatch says', () => {
    const metres = (grams: number) =>
      graded(design, [{ size: 'M', body }], {
        swatches: [
          {
            fabric: 'stocking',
            stitches: 44,
            widthMm: 200,
            rows: 60,
            heightMm: 200,
            needle: 4,
            weighed: { grams, stitches: 44, rows: 60 },
          },
        ],
        yarns: [{ name: 'Wool', grams: 50, metres: 100 }],
      })[0]?.metres ?? Number.NaN;
    expect(metres(20) / metres(10)).toBeCloseTo(2, 1);
  });

  it('that cannot be knitted says why, and has no pieces and no yarn', () => {
    const tiny = { ...body, crossBack: 20, chest: 40, armholeDepth: 5 };
    const [none] = graded(own, [{ size: 'none', body: tiny }]);
    expect(none?.faults.length).toBeGreaterThan(0);
    expect(none).toMatchObject({ size: 'none', pieces: [], metres: 0 });
  });
});

describe('what a piece comes to in a table of sizes, reckoned by hand', () => {
  const shaped = (kind: 'cast on' | 'bind off', edge: 'right' | 'left', row: number, stitches: number) =>
    ({ kind, edge, groups: [{ row, stitches }] }) as const;
  const slant = (by: 1 | -1, ...rows: readonly number[]) =>
    ({ kind: 'edge', edge: 'both', by, rows, inset: 1, lean: 'mirrored' }) as const;

  it('counts what is cast on at an edge and spread over a row beside what grows stitch by stitch', () => {
    // 20; one more at each edge of rows 3 and 5: 24; 4 and 4 cast on: 32; 6 spread: 38; 2 less at each edge: 34; 5 bound off: 29
    const made = plan({
      name: 'Sleeve',
      makes: 2,
      parts: [
        {
          name: 'sleeve',
          from: { castOn: 20 },
          end: 'hold',
          sections: [
            { name: 'a', rows: 6, fabric: 'stocking', needle: 4, shaping: [slant(1, 3, 5)] },
            {
              name: 'b',
              rows: 4,
              fabric: 'stocking',
              needle: 4,
              shaping: [shaped('cast on', 'right', 1, 4), shaped('cast on', 'left', 2, 4)],
            },
            {
              name: 'c',
              rows: 2,
              fabric: 'stocking',
              needle: 4,
              shaping: [{ kind: 'across', row: 1, by: 6 }],
            },
            { name: 'd', rows: 4, fabric: 'stocking', needle: 4, shaping: [slant(-1, 1, 3)] },
            {
              name: 'e',
              rows: 2,
              fabric: 'stocking',
              needle: 4,
              shaping: [shaped('bind off', 'right', 1, 5)],
            },
          ],
        },
      ],
    });
    if (!made.ok) throw new Error(told(made.faults));
    expect(gradedPiece({ name: 'Sleeve', makes: 2, parts: [] }, made.value.parts)).toEqual({
      name: 'Sleeve',
      makes: 2,
      castOn: 20,
      rows: 18,
      widest: 38,
      ends: [{ part: 'sleeve', stitches: 29 }],
      shapings: { increases: 4 + 8 + 6, decreases: 4, boundOff: 5 },
    });
  });
});
