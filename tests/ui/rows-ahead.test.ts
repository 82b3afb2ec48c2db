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

const said = (all: readonly PlannedRow[], worked: number) =>
  rowsAhead(all, worked).map((rung) => ('row' in rung ? rung.row.n : `${rung.plainRows} plain`));

describe('the ladder of rows ahead', () => {
  it('shows the four rows after the one in hand when a shaping row is among them', () => {
    expect(said(rows(20, [13]), 9)).toEqual([11, 12, 13, 14]);
  });

  it('passes over plain rows so that the next shaping is always among its rungs', () => {
    expect(said(rows(60, [50]), 9)).toEqual([11, 12, '37 plain', 50]);
    expect(said(rows(60, [15]), 9)).toEqual([11, 12, '2 plain', 15]);
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
        (shaped, worked, length) => {
          let next = worked + 2;
          const rungs = rowsAhead(rows(80, shaped), worked, length);
          for (const rung of rungs) {
            expect('row' in rung ? rung.row.n : next).toBe(next);
            next += 'row' in rung ? 1 : rung.plainRows;
          }
          expect(rungs.length).toBeLessThanOrEqual(length);
          const coming = shaped.filter((n) => n > worked + 1).sort((a, b) => a - b)[0];
          const shown = rungs.some((rung) => 'row' in rung && rung.row.n === coming);
          expect(coming === undefined || shown).toBe(true);
        },
      ),
      { seed: 13 },
    );
  });
});
