import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changesBefore, lengthsAt, lengthTo } from '../../../src/knit/piece/before-row.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { knittableRecipe } from '../../arbitraries/knittable-recipe.ts';
import { told } from '../../told.ts';

/** 10 rows of rib, 30 plain rows, then 6 rows with two decreases; a row is 4 mm high, in the rib 100/30 mm. */
const made = plan({
  name: 'Back',
  makes: 1,
  gauge: { stitches: 20, rows: 25, fabric: 'stocking', needle: 4 },
  gauges: { 'rib 1x1': { stitches: 20, rows: 30 } },
  parts: [
    {
      name: 'Back',
      from: { castOn: 40 },
      end: 'hold',
      sections: [
        { name: 'rib', rows: 10, fabric: 'rib 1x1', needle: 3.5, shaping: [] },
        { name: 'body', rows: 30, fabric: 'stocking', needle: 4, shaping: [] },
        {
          name: 'armholes',
          rows: 6,
          fabric: 'stocking',
          needle: 4,
          shaping: [{ kind: 'edge', edge: 'both', by: -1, rows: [1, 3], inset: 1, lean: 'mirrored' }],
        },
      ],
    },
  ],
});
if (!made.ok) throw new Error(told(made.faults));
const part = made.value.parts[0] as PlannedPart;
const before = (n: number) => changesBefore(part, part.rows[n - 1] as PlannedPart['rows'][number]);

describe('what the plan changes before a row', () => {
  it('is the needle where another one comes, and nothing on the rows that go on with it', () => {
    expect(before(11)).toEqual([{ kind: 'needle', mm: 4 }]);
    expect([2, 10, 12, 40].flatMap(before)).toEqual([]);
  });

  it('is a measuring point where a long stretch ends and shaping begins: 10 rows of 100/30 mm and 30 of 4 mm', () => {
    const [point, ...more] = before(41);
    expect(more).toEqual([]);
    expect(point).toMatchObject({ kind: 'measure' });
    expect(point && 'mm' in point ? point.mm : 0).toBeCloseTo((10 * 100) / 30 + 120, 6);
  });

  it('is measured from where the part itself begins: 24 rows of 4 mm above the 10 of the body', () => {
    const side = { name: 'side', fabric: 'stocking', needle: 4 } as const;
    const parted = plan({
      name: 'Back',
      makes: 1,
      gauge: { stitches: 20, rows: 25, fabric: 'stocking', needle: 4 },
      parts: [
        {
          name: 'Back',
          from: { castOn: 40 },
          end: 'split',
          sections: [{ ...side, rows: 10, shaping: [] }],
        },
        ...(['right', 'left'] as const).map((edge) => ({
          name: edge,
          from: { part: 'Back', stitches: 20, edge },
          end: 'hold' as const,
          sections: [
            { ...side, rows: 24, shaping: [] },
            {
              ...side,
              rows: 4,
              shaping: [{ kind: 'edge', edge, by: -1, rows: [1], inset: 1, lean: 'mirrored' }],
            },
          ] as const,
        })),
      ],
    });
    if (!parted.ok) throw new Error(told(parted.faults));
    for (const one of parted.value.parts.slice(1)) {
      const at = one.rows[24] as PlannedPart['rows'][number];
      expect(changesBefore(one, at)).toEqual([{ kind: 'measure', mm: expect.closeTo(96, 6) }]);
      expect(lengthsAt(one, 24)).toEqual({ soFar: expect.closeTo(96, 6), toGo: expect.closeTo(16, 6) });
    }
  });

  it('is nothing before row 1: what is done there is the set-up', () => expect(before(1)).toEqual([]));

  it('is a change of needle wherever the needle of the row before is another, for any piece', () => {
    fc.assert(
      fc.property(knittableRecipe(), ({ recipe }) => {
        const any = plan(recipe);
        if (!any.ok) throw new Error(told(any.faults));
        for (const one of any.value.parts) {
          const told = one.rows.filter((row) =>
            changesBefore(one, row).some(({ kind }) => kind === 'needle'),
          );
          const needles = one.rows.filter((row, i) => i > 0 && one.rows[i - 1]?.needle !== row.needle);
          expect(told).toEqual(needles);
        }
      }),
      { numRuns: 40, seed: 22, endOnFailure: true },
    );
  });
});

/** Sections of so many rows, each with the rows that are shaped; the rows before which something is measured. */
function measured(...sections: readonly (readonly [rows: number, ...shaped: number[]])[]): readonly number[] {
  const shaped = plan({
    name: 'Back',
    makes: 1,
    gauge: { stitches: 20, rows: 25, fabric: 'stocking', needle: 4 },
    parts: [
      {
        name: 'Back',
        from: { castOn: 60 },
        end: 'hold',
        sections: sections.map(([rows, ...at], i) => ({
          name: `section ${i}`,
          rows,
          fabric: 'stocking',
          needle: 4,
          shaping:
            at.length === 0
              ? []
              : [{ kind: 'edge', edge: 'both', by: -1, rows: at, inset: 1, lean: 'mirrored' }],
        })),
      },
    ],
  });
  if (!shaped.ok) throw new Error(told(shaped.faults));
  const [one] = shaped.value.parts;
  return one?.rows.filter((row) => changesBefore(one, row).length > 0).map(({ n }) => n) ?? [];
}

describe('a place to measure', () => {
  it('comes after twenty rows or more', () => {
    expect(measured([20], [4, 1])).toEqual([21]);
    expect(measured([19], [4, 1])).toEqual([]);
  });

  it('comes where any row of the next section is shaped, the last one too, and not for one behind it', () => {
    expect(measured([20], [4, 4])).toEqual([21]);
    expect(measured([20], [4], [4, 1])).toEqual([]);
    expect(measured([20], [20], [4, 1])).toEqual([41]);
  });

  it('comes only where nothing of the stretch was shaped, neither its first row nor its last', () => {
    expect(measured([20, 1], [4, 1])).toEqual([]);
    expect(measured([20, 20], [4, 1])).toEqual([]);
    expect(measured([4, 4], [20], [4, 1])).toEqual([25]);
  });
});

describe('lengths beside the rows', () => {
  it('are what is knitted, what is left of the section, and what lies before a row: by hand', () => {
    expect(lengthsAt(part, 0)).toEqual({ soFar: 0, toGo: expect.closeTo(1000 / 30, 6) });
    expect(lengthsAt(part, 20)).toEqual({
      soFar: expect.closeTo(1000 / 30 + 40, 6),
      toGo: expect.closeTo(80, 6),
    });
    expect(lengthTo(part, 20, 41)).toBeCloseTo(80, 6);
    expect(lengthsAt(part, 46)).toEqual({ soFar: expect.closeTo(1000 / 30 + 144, 6), toGo: 0 });
  });
});
