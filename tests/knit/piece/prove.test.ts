import { describe, expect, it } from 'vitest';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart, PlannedRow } from '../../../src/knit/piece/planned.ts';
import { provePart, proveYarn } from '../../../src/knit/piece/prove.ts';
import { parseRow } from '../../../src/knit/row/read/parse.ts';
import { given } from '../../store/scenario.ts';
import { told } from '../../told.ts';

/** Ten rows of stocking stitch over 20 stitches that leave one less from row 5 on, as they are planned. */
const planned: PlannedPart = (() => {
  const made = plan({
    name: 'Square',
    makes: 1,
    parts: [
      {
        name: 'body',
        from: { castOn: 20 },
        end: 'hold',
        sections: [
          {
            name: 'plain',
            rows: 10,
            fabric: 'stocking',
            needle: 4,
            shaping: [{ kind: 'edge', edge: 'right', by: -1, rows: [5], inset: 1, lean: 'mirrored' }],
          },
        ],
      },
    ],
  });
  const part = made.ok ? made.value.parts[0] : undefined;
  if (!part) throw new Error(made.ok ? 'no part' : told(made.faults));
  return part;
})();

const withRow = (n: number, more: Partial<PlannedRow>): PlannedPart => ({
  ...planned,
  rows: planned.rows.map((row) => (row.n === n ? { ...row, ...more } : row)),
});

const disproved = (part: PlannedPart) => {
  const proven = provePart(part);
  if (proven.ok) return 'proven';
  const [{ code, figures, at } = { code: '', figures: {}, at: {} }] = proven.faults;
  return { code, ...figures, row: at.row };
};

describe('a part as it was planned', () => {
  it('is proven by working every row of it', () => {
    expect(disproved(planned)).toBe('proven');
    expect(planned.rows.map(({ after }) => after)).toEqual([20, 20, 20, 20, 19, 19, 19, 19, 19, 19]);
  });

  it('is disproved by a row that begins with other stitches than are on the needle', () => {
    expect(disproved(withRow(3, { before: 22 }))).toEqual({
      code: 'plan disproved',
      expectedStitches: 22,
      foundStitches: 20,
      row: 3,
    });
  });

  it('is disproved by a row that leaves others than it states', () => {
    expect(disproved(withRow(5, { after: 18 }))).toEqual({
      code: 'plan disproved',
      expectedStitches: 18,
      foundStitches: 19,
      row: 5,
    });
  });

  it('is disproved by what is left at its end', () => {
    expect(disproved({ ...planned, left: 21 })).toEqual({
      code: 'plan disproved',
      expectedStitches: 21,
      foundStitches: 19,
      row: undefined,
    });
  });

  it('goes on from what was counted on the needle, where a section says so', () => {
    const counted: PlannedPart = {
      ...planned,
      start: 25,
      sections: planned.sections.map((section) => ({ ...section, onNeedle: 20 })),
    };
    expect(disproved(counted)).toBe('proven');
    expect(disproved({ ...counted, sections: planned.sections })).toMatchObject({
      foundStitches: 25,
      row: 1,
    });
  });
});

describe('the yarn of a part', () => {
  type Row = readonly ['RS' | 'WS', string];
  /** Rows over 20 stitches, each with its side; the second section begins with row 3. */
  const worked = (...rows: readonly Row[]): PlannedPart => ({
    ...planned,
    rows: rows.map(
      ([side, text], i): PlannedRow => ({
        ...(planned.rows[0] as PlannedRow),
        n: i + 1,
        side,
        section: i < 2 ? 0 : 1,
        steps: given(parseRow(text)),
      }),
    ),
  });
  const lost = (...rows: readonly Row[]) =>
    proveYarn(worked(...rows)).map(({ code, figures, at }) => ({ code, ...figures, ...at }));
  const at = (row: number, expectedStitches: number, foundStitches: number) => [
    {
      code: 'plan disproved',
      expectedStitches,
      foundStitches,
      piece: 'Square',
      part: 'body',
      sectionIndex: row < 3 ? 0 : 1,
      row,
    },
  ];

  it('goes on where the last row ended, or is joined', () => {
    expect(lost(['RS', 'knit'], ['WS', 'purl'], ['RS', 'knit'])).toEqual([]);
    expect(lost(['RS', 'k15, turn'], ['WS', 'leave 5 sts unworked, p to end'])).toEqual([]);
    expect(lost(['RS', 'knit'], ['RS', 'join yarn, k to end'])).toEqual([]);
    expect(lost()).toEqual([]);
  });

  it('is lost where a row begins elsewhere: so many stitches from the edge it hangs, and there it is asked for', () => {
    expect(lost(['RS', 'k15, turn'], ['WS', 'purl'])).toEqual(at(2, 5, 0));
    expect(lost(['RS', 'knit'], ['WS', 'leave 7 sts unworked, p to end'])).toEqual(at(2, 0, 7));
    expect(lost(['RS', 'knit'], ['WS', 'purl'], ['WS', 'purl'])).toEqual(at(3, 0, 0));
    // the first of several is told
    expect(lost(['RS', 'knit'], ['RS', 'knit'], ['RS', 'knit'])).toEqual(at(2, 0, 0));
  });
});
