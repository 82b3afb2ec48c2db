import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlannedRow } from '../../src/knit/piece/planned.ts';
import { rowsAhead } from '../../src/ui/ladder/rows-ahead.ts';

const rows = (count: number, shaped: readonly number[]): PlannedRow[] =>
  Array.from({ length: count }, (_, i) => ({
    n: i + 1,
    side: i % 2 === 0 ? 'RS' : 'WS',
    section: 0,
    needle: 4,
    steps: [{ work: 'k', until: { left: 0 } }],
    before: 20,
    after: 20,
    shaping: shaped.includes(i + 1) ? [{ kind: 'edge', edge: 'right', by: -1 }] : [],
    height: (i + 1) * 4,
  }));

const said = (all: readonly PlannedRow[], worked: number, stop?: number) =>
  rowsAhead(all, worked, 4, stop).map((rung) => ('row' in rung ? rung.row.n : `${rung.plainRows} plain`));

describe('the ladder of rows ahead', () => {
  it('shows the four rows after the one in hand when a shaping row is among them', () => {
    expect(said(rows(20, [13]), 9)).toEqual([11, 12, 13, 14]);
  });

  it('passes over plain rows so that the next shaping is always among its rungs', () => {
    expect(said(rows(60, [50]), 9)).toEqual([11, 12, '37 plain', 50]);
    expect(said(rows(60, [15]), 9)).toEqual([11, 12, '2 plain', 15]);
  });

  it('has among them the row before which something is done, nearer or farther than the next shaping', () => {
    expect(said(rows(60, [50]), 9, 30)).toEqual([11, 12, '17 plain', 30, '19 plain', 50]);
    expect(said(rows(60, [20]), 9, 41)).toEqual([11, 12, '7 plain', 20, '20 plain', 41]);
    expect(said(rows(60, [50]), 9, 13)).toEqual([11, 12, 13, '36 plain', 50]);
    expect(said(rows(60, [50]), 9, 50)).toEqual([11, 12, '37 plain', 50]);
    expect(said(rows(60, []), 9, 30)).toEqual([11, 12, '17 plain', 30]);
  });

  it('shows what is left near the end, and nothing on the last row', () => {
    expect(said(rows(12, []), 9)).toEqual([11, 12]);
    expect(said(rows(12, []), 11)).toEqual([]);
    expect(said(rows(12, []), 12)).toEqual([]);
  });

  it('leaves out no row: rungs and passed rows follow each other without a gap', () => {
    const shapedRows = fc.uniqueArray(fc.integer({ min: 1, max: 80 }), { maxLength: 5 });
    fc.assert(
      fc.property(
        shapedRows,
        fc.integer({ min: 0, max: 80 }),
        fc.integer({ min: 2, max: 6 }),
        fc.option(fc.integer({ min: 1, max: 80 }), { nil: undefined }),
        (shaped, worked, length, stop) => {
          let next = worked + 2;
          const rungs = rowsAhead(rows(80, shaped), worked, length, stop);
          for (const rung of rungs) {
            expect('row' in rung ? rung.row.n : next).toBe(next);
            next += 'row' in rung ? 1 : rung.plainRows;
          }
          expect(rungs.length).toBeLessThanOrEqual(length + 2);
          const coming = shaped.filter((n) => n > worked + 1).sort((a, b) => a - b)[0];
          const shown = rungs.some((rung) => 'row' in rung && rung.row.n === coming);
          expect(coming === undefined || shown).toBe(true);
          const isThere = rungs.some((rung) => 'row' in rung && rung.row.n === stop);
          expect(stop === undefined || stop < worked + 2 || isThere).toBe(true);
        },
      ),
      { seed: 13 },
    );
  });
});
