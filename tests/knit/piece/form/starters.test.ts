import { describe, expect, it } from 'vitest';
import { counts } from '../../../../src/knit/piece/counts.ts';
import { formToRecipe } from '../../../../src/knit/piece/form/read-piece.ts';
import {
  type StarterName,
  type StarterWords,
  starter,
  starterNames,
} from '../../../../src/knit/piece/form/starters.ts';
import { plan } from '../../../../src/knit/piece/plan.ts';
import type { Recipe } from '../../../../src/knit/piece/recipe.ts';

const words = new Proxy({}, { get: (_, name) => String(name) }) as StarterWords;

/** From bulky to fine, with the flat rows of garter and the tall ones of a slipped fabric. */
const gauges = [9, 12, 16, 18, 20, 21, 22, 24, 28, 32, 36].flatMap((stitches) =>
  [1.2, 1.35, 1.5, 2].map((tall) => ({ stitches, rows: Math.round(stitches * tall) })),
);

function recipeOf(name: StarterName, gauge: { stitches: number; rows: number }): Recipe {
  const read = formToRecipe(starter(name, { gauge, needle: 4, words }));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

const lefts = (name: StarterName, gauge: { stitches: number; rows: number }) =>
  counts(recipeOf(name, gauge)).map((part) => part.left);

describe('starters', () => {
  it.each(starterNames)('a %s can be knitted at any usual gauge', (name) => {
    for (const gauge of gauges) {
      const planned = plan(recipeOf(name, gauge));
      expect(planned.ok ? [] : planned.faults, `${gauge.stitches} × ${gauge.rows}`).toEqual([]);
    }
  });

  it('front and back agree: same cast-on, same rows at the side, same stitches at the shoulder', () => {
    for (const gauge of gauges) {
      const [back, front] = [recipeOf('back', gauge), recipeOf('front', gauge)];
      const [backRib, backBody] = back.parts[0]?.sections ?? [];
      const [rib, body, armholes] = front.parts[0]?.sections ?? [];
      expect(front.parts[0]?.from).toEqual(back.parts[0]?.from);
      expect([rib?.rows, body?.rows]).toEqual([backRib?.rows, backBody?.rows]);
      const neck = front.parts[1]?.sections[0];
      expect((armholes?.rows ?? 0) + (neck?.rows ?? 0)).toBe(back.parts[0]?.sections[2]?.rows);
      const top = counts(front)[0]?.left ?? 0;
      const shoulder = counts(front)[1]?.sections[0]?.after ?? 0;
      // common practice, no published source: the back neck is all stitches less both shoulders
      expect(lefts('back', gauge)).toEqual([top - 2 * shoulder]);
    }
  });

  it('the sides of the band are alike and the back neck is picked up stitch for stitch', () => {
    for (const gauge of gauges) {
      const { from } = recipeOf('neckband', gauge).parts[0] ?? {};
      const [left, point, right, back] =
        from && 'pickUp' in from ? from.pickUp.map((edge) => edge.stitches) : [];
      expect(left).toBe(right);
      expect(point).toBe(1);
      expect([back]).toEqual(lefts('back', gauge));
    }
  });
});
