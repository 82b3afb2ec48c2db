import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import type { Body } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import type { garmentKinds } from '../../../src/knit/garment/kinds/garments.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { told } from '../../told.ts';

const body = bodyOfSize('women', 'M') as Body;

type Kinds = keyof typeof garmentKinds;

/** The same making up as a draft states it, and as it is proposed of the bare pieces with names that tell nothing. */
function both(kind: Kinds, armhole: 'drop' | 'set-in' | 'raglan') {
  const choices = { kind, armhole, neck: 'round', fit: 'standard' } as const;
  const made = draft(startingDesign(choices, body, 'stocking', { stitches: 22, rows: 30 }));
  if (!made.ok) throw new Error(told(made.faults));
  const { joints, recipes } = made.value;
  const garment = asPlanned({ name: 'M', pieces: recipes, joints });
  const bare = asPlanned({ name: 'M', pieces: recipes.map(unnamed) });
  if (!garment.ok || !bare.ok) throw new Error('cannot be planned');
  return [makingUpOf(garment.value), makingUpOf(bare.value)] as const;
}

const unnamed = (recipe: Recipe): Recipe => ({
  ...recipe,
  parts: recipe.parts.map((part) => ({
    ...part,
    sections: part.sections.map((section, i) => ({ ...section, name: `stretch ${i + 1}` })),
  })),
});

describe('a garment that states no making up', () => {
  for (const [kind, armhole] of [
    ['pullover', 'set-in'],
    ['pullover', 'raglan'],
    ['cardigan', 'set-in'],
    ['cardigan', 'raglan'],
  ] as const) {
    it(`has proposed from its roles and shapes alone what a draft of it states: ${kind}, ${armhole}`, () => {
      const [stated, proposed] = both(kind, armhole);
      expect(proposed.troubles).toEqual([]);
      expect(proposed.steps).toEqual(stated.steps);
    });
  }

  // a stitch of each edge of a straight top is left to the sleeve's seam, as a draft leaves it
  for (const kind of ['pullover', 'cardigan'] as const)
    it(`has proposed what a draft of it states, the seam's stitches in a straight top left out: ${kind}, drop`, () => {
      const [stated, proposed] = both(kind, 'drop');
      expect(proposed.troubles).toEqual([]);
      expect(proposed.steps.map(({ id }) => id)).toEqual(stated.steps.map(({ id }) => id));
      const [top, statedTop] = [proposed, stated].map(({ steps }) =>
        steps.find((step) => step.kind === 'set in sleeves'),
      );
      if (top?.kind !== 'set in sleeves' || statedTop?.kind !== 'set in sleeves')
        throw new Error('no sleeve is sewn in');
      // as near as an ease told in tenths of hundredths comes to it
      expect(Math.abs(top.topMm - statedTop.topMm)).toBeLessThan(1);
      // rows of 100 / 30 mm
      expect(Math.abs(top.markerRows - statedTop.markerRows)).toBeLessThanOrEqual(1);
    });

  it('what nothing is joined to is left over, with its rows: a front without a back', () => {
    const choices = { kind: 'pullover', armhole: 'drop', neck: 'round', fit: 'standard' } as const;
    const made = draft(startingDesign(choices, body, 'stocking', { stitches: 22, rows: 30 }));
    if (!made.ok) throw new Error(told(made.faults));
    const [, front, sleeve] = made.value.recipes as [Recipe, Recipe, Recipe];
    const bare = asPlanned({ name: 'M', pieces: [front, sleeve] });
    if (!bare.ok) throw new Error(told(bare.faults));
    const left = makingUpOf(bare.value).troubles.flatMap((one) =>
      one.kind === 'forgotten' && one.rest.piece === 'Front' ? [one.rest] : [],
    );
    expect(left.map(({ edge }) => edge)).toContain('right');
    expect(left.every(({ rows, stitches }) => rows + stitches > 0)).toBe(true);
  });
});
