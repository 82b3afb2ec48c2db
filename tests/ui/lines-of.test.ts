import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plan } from '../../src/knit/piece/plan.ts';
import { linesOf } from '../../src/ui/print/lines-of.ts';
import { knittableRecipe } from '../arbitraries/knittable-recipe.ts';
import { neck, partsOf, strip } from './pieces.ts';

const [plain] = partsOf(strip(20, 98));
const [, shoulder] = partsOf(neck);

describe('the lines of the paper plan', () => {
  it('are one for a run of plain rows, which spells out the two that it repeats', () => {
    if (!plain) throw new Error('no part');
    const lines = linesOf(plain);
    expect(lines.map(({ first, last, after }) => [first, last, after])).toEqual([[1, 98, 20]]);
    expect(lines[0]?.rows.map(({ side }) => side)).toEqual(['RS', 'WS']);
  });

  it('give each shaping row a line of its own', () => {
    if (!shoulder) throw new Error('no part');
    expect(linesOf(shoulder).map(({ first, last }) => [first, last])).toEqual([
      [1, 1],
      [2, 2],
      [3, 3],
      [4, 4],
      [5, 5],
      [6, 10],
    ]);
  });

  it('leave out no row, cross no section and hide no shaping, for any piece that can be knitted', () => {
    fc.assert(
      fc.property(knittableRecipe(), ({ recipe }) => {
        const made = plan(recipe);
        if (!made.ok) throw new Error('the recipe should be knittable');
        for (const part of made.value.parts) {
          let next = 1;
          for (const line of linesOf(part)) {
            expect(line.first).toBe(next);
            next = line.last + 1;
            const rows = part.rows.slice(line.first - 1, line.last);
            expect(new Set(rows.map(({ section }) => section)).size).toBe(1);
            expect(rows.length === 1 || rows.every(({ shaping }) => shaping.length === 0)).toBe(true);
            expect(rows.map(({ steps }) => steps)).toEqual(
              rows.map((_, i) => line.rows[i % line.rows.length]?.steps),
            );
            expect(line.after).toBe(rows.at(-1)?.after);
          }
          expect(next).toBe(part.rows.length + 1);
        }
      }),
      { numRuns: 60, seed: 14 },
    );
  });
});
