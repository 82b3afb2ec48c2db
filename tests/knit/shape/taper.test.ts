import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type TaperWish, taper } from '../../../src/knit/shape/taper.ts';
import { told } from '../../told.ts';

const wish = (): fc.Arbitrary<TaperWish> =>
  fc.record(
    {
      rows: fc.integer({ min: 1, max: 300 }),
      times: fc.integer({ min: 1, max: 60 }),
      step: fc.constantFrom(1 as const, 2 as const),
      first: fc.integer({ min: 1, max: 12 }),
      on: fc.constantFrom('odd' as const, 'even' as const),
      order: fc.constantFrom('longer first' as const, 'shorter first' as const, 'blended' as const),
    },
    { requiredKeys: ['rows', 'times'] },
  );

/** Rows that may shape, counted apart from the function under test. */
function slots({ rows, step = 2, first, on }: TaperWish): number[] {
  const start = first ?? (step === 2 && on === 'even' ? 2 : 1);
  const out = [];
  for (let row = start; row <= rows; row += step) out.push(row);
  return out;
}

describe('shaping laid over rows', () => {
  it('has exactly the shapings asked for, on the rows allowed, with intervals that differ by one step at most', () => {
    fc.assert(
      fc.property(wish(), (w) => {
        const allowed = slots(w);
        const made = taper(w);
        if (w.times > allowed.length) {
          expect(made).toMatchObject({
            ok: false,
            faults: [{ code: 'shaping does not fit', figures: { mostTimes: allowed.length } }],
          });
          return;
        }
        if (!made.ok) throw new Error(told(made.faults));
        const { rows } = made.value;
        expect(rows).toHaveLength(w.times);
        expect(rows.filter((row) => !allowed.includes(row))).toEqual([]);
        const gaps = rows.slice(1).map((row, i) => row - (rows[i] ?? 0));
        expect(gaps.every((g) => g > 0)).toBe(true);
        if (gaps.length > 0) expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(w.step ?? 2);
        if (w.first !== undefined) expect(rows[0]).toBe(w.first);
        if (w.times > 1 || w.first === undefined) expect(rows.at(-1)).toBe(allowed.at(-1));
      }),
      { numRuns: 400 },
    );
  });

  it('says its rows as runs that lead back to the same rows', () => {
    fc.assert(
      fc.property(wish(), (w) => {
        const made = taper(w);
        if (!made.ok) return;
        const back = [made.value.first];
        for (const run of made.value.runs) {
          for (let i = 0; i < run.times; i += 1) back.push((back.at(-1) ?? 0) + run.every);
        }
        expect(back).toEqual(made.value.rows);
      }),
    );
  });

  it('keeps longer and shorter intervals together unless they are to be blended', () => {
    fc.assert(
      fc.property(wish(), (w) => {
        const made = taper(w);
        if (made.ok && w.order !== 'blended')
          expect(made.value.runs.length).toBeLessThanOrEqual(w.first ? 2 : 3);
      }),
    );
  });

  it('lays nothing where nothing is asked', () => {
    const nothing = { ok: true, value: { rows: [], first: 0, runs: [] } };
    expect(taper({ rows: 20, times: 0 })).toEqual(nothing);
    expect(taper({ rows: 0, times: 0 })).toEqual(nothing);
    expect(taper({ rows: 20, times: 0, first: 0 })).toEqual(nothing);
    expect(taper({ rows: 4, times: 0, first: 9 })).toEqual(nothing);
  });

  // each reckoned by hand: R rows and n shapings are r = R mod n intervals of q + 1 and n − r of q = R div n
  // (common practice, no published source); with every second row only, in pairs of rows
  it.each<[string, TaperWish, number[], string]>([
    ['a row in five', { rows: 20, times: 4, step: 1 }, [5, 10, 15, 20], '5×3'],
    ['longer first', { rows: 22, times: 4, step: 1 }, [6, 12, 17, 22], '6×1 5×2'],
    ['shorter first', { rows: 22, times: 4, step: 1, order: 'shorter first' }, [5, 10, 16, 22], '5×1 6×2'],
    ['blended', { rows: 22, times: 4, step: 1, order: 'blended' }, [5, 11, 16, 22], '6×1 5×1 6×1'],
    ['RS rows', { rows: 20, times: 3 }, [7, 13, 19], '6×2'],
    ['WS rows', { rows: 20, times: 3, on: 'even' }, [8, 14, 20], '6×2'],
    ['even rows where any may shape are any', { rows: 6, times: 3, step: 1, on: 'even' }, [2, 4, 6], '2×2'],
    ['from row 3 on', { rows: 20, times: 3, first: 3 }, [3, 11, 19], '8×2'],
    ['from row 2 on', { rows: 20, times: 4, first: 2 }, [2, 8, 14, 20], '6×3'],
    ['once, from row 5', { rows: 20, times: 1, first: 5 }, [5], ''],
    ['as many as there is room for', { rows: 5, times: 3 }, [1, 3, 5], '2×2'],
  ])('%s', (_, asked, rows, runs) => {
    const made = taper(asked);
    if (!made.ok) throw new Error(told(made.faults));
    expect(made.value.rows).toEqual(rows);
    expect(made.value.first).toBe(rows[0]);
    expect(made.value.runs.map(({ every, times }) => `${every}×${times}`).join(' ')).toBe(runs);
  });

  it.each<[string, TaperWish, number]>([
    ['one more than the RS rows', { rows: 5, times: 4 }, 3],
    ['one more than the rows', { rows: 5, times: 6, step: 1 }, 5],
    ['more than from its first row on', { rows: 9, times: 3, first: 7 }, 2],
    ['a first row beyond the last', { rows: 4, times: 1, first: 9 }, 0],
    ['no rows', { rows: 0, times: 1 }, 0],
  ])('says how many there is room for: %s', (_, asked, mostTimes) => {
    expect(taper(asked)).toMatchObject({
      ok: false,
      faults: [
        { code: 'shaping does not fit', figures: { rows: asked.rows, times: asked.times, mostTimes } },
      ],
    });
  });

  it('refuses what is no count, and a first row of 0', () => {
    for (const asked of [
      { rows: 2.5, times: 1 },
      { rows: 20, times: -1 },
      { rows: -20, times: 0 },
      { rows: 20, times: 2, first: 1.5 },
      { rows: 20, times: 2, first: -1 },
      { rows: Number.NaN, times: 2 },
    ])
      expect(taper(asked)).toMatchObject({ ok: false, faults: [{ code: 'bad count' }] });
    expect(taper({ rows: 20, times: 2, first: 0 })).toMatchObject({
      ok: false,
      faults: [{ code: 'shaping does not fit' }],
    });
  });
});
