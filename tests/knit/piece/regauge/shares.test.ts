import { describe, expect, it } from 'vitest';
import type { Recipe, Shaping } from '../../../../src/knit/piece/recipe.ts';
import { shapedTo } from '../../../../src/knit/piece/regauge/shaped-to.ts';
import { wornEdge } from '../../../../src/knit/piece/regauge/two-edges.ts';

describe('the edge of half a front that lies at the side seam', () => {
  const worn = (more: Partial<Recipe>) => wornEdge({ name: 'Front', makes: 1, parts: [], ...more });

  // a left front is worn at the left, so that its seam lies at its right edge, seen from the right side
  it('is the right one of a left front, the left one of a right front, and of a pair that of the first', () => {
    expect(worn({ role: 'left front' })).toBe('right');
    expect(worn({ role: 'right front' })).toBe('left');
    expect(worn({ role: 'front', mirrored: true, makes: 2 })).toBe('right');
  });

  it('is none of a whole front, or of a piece that is no front', () => {
    expect(worn({ role: 'front' })).toBeUndefined();
    expect(worn({ role: 'sleeve', mirrored: true, makes: 2 })).toBeUndefined();
    expect(worn({})).toBeUndefined();
  });
});

/* Reckoned by hand: half as many stitches again, as many rows. */
describe('what rounding leaves over of the stitches that are taken off', () => {
  const slant = (...rows: readonly number[]): Shaping => ({
    kind: 'edge',
    edge: 'right',
    by: -1,
    rows,
    inset: 1,
    lean: 'mirrored',
  });
  const off = (edge: 'right' | 'left', stitches: number): Shaping => ({
    kind: 'bind off',
    edge,
    groups: [{ row: 1, stitches }],
  });
  const shared = (before: number, oldAfter: number, ...shaping: readonly Shaping[]) =>
    shapedTo(shaping, { stitches: 1.5, rows: 1 }, { before, oldAfter, rows: 20 });

  it('goes to the decreases beside a group that is no middle', () => {
    // of 60 to 90: 6 at once become 9, 14 decreases 21; the 40 that were left are 60, and nothing is over
    expect(shared(90, 40, off('right', 6), slant(...Array.from({ length: 14 }, (_, i) => i + 3)))).toEqual([
      9, 21,
    ]);
  });

  it('goes to the middle of a neck, which is bound off with one of its sides', () => {
    const [middle, side] = shared(30, 9, off('right', 8), slant(3, 5, 7));
    // 20 were on the needle: 9 that were left become 13 or 14, its side has 4 or 5 decreases as its twin has
    expect([4, 5]).toContain(side);
    expect(30 - (middle ?? 0) - (side ?? 0)).toBeGreaterThanOrEqual(13);
    expect(30 - (middle ?? 0) - (side ?? 0)).toBeLessThanOrEqual(14);
  });
});
