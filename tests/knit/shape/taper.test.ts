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
        for (const row of rows) expect(allowed).toContain(row);
        const gaps = rows.slice(1).map((row, i) => row - (rows[i] ?? 0));
        expect(gaps.every((g) => g > 0)).toBe(true);
        if (gaps.length > 0) expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(w.step ?? 2);
        if (w.first !== undefined) expect(rows[0]).toBe(w.first);
        if (w.times > 1 || w.first === undefined) expect(rows.at(-1)).toBe(allowed.at(-1));
      }),
      { numRuns: 2000 },
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
    expect(taper({ rows: 20, times: 0 })).toEqual({ ok: true, value: { rows: [], first: 0, runs: [] } });
  });
});
