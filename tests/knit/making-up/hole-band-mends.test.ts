import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { answers } from '../../../src/knit/making-up/mends.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { withRows } from '../../../src/knit/piece/rework/lay-anew.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';
import { told } from '../../told.ts';
import { even } from '../garment/spelled.ts';

const { neck, frontBand } = even;

function longer(recipe: Recipe, name: string, by: number): Recipe {
  const parts = recipe.parts.map((part) => ({
    ...part,
    sections: part.sections.map((section) => {
      const made = section.name === name ? withRows(section, section.rows + by) : undefined;
      return made?.ok ? made.value : section;
    }),
  }));
  return { ...recipe, parts };
}

function garments(more: Partial<Design>, by: number) {
  const made = draft({ ...even, kind: 'cardigan', frontBand: { ...frontBand, buttons: 5 }, ...more });
  if (!made.ok) throw new Error(told(made.faults));
  const { recipes, joints } = made.value;
  const of = (pieces: readonly Recipe[]): StandingGarment => {
    const planned = asPlanned({ name: 'any', pieces, joints });
    if (!planned.ok) throw new Error(told(planned.faults));
    return { ...planned.value, joints };
  };
  const changed = recipes.map((one) =>
    one.name === 'Front' || one.name === 'Back' ? longer(one, 'body', by) : one,
  );
  return { before: of(recipes), after: of(changed) };
}

const buttonsOf = (garment: StandingGarment) => {
  const step = makingUpOf(garment).steps.find(({ kind }) => kind === 'buttons');
  return step?.kind === 'buttons' ? step.stitches : [];
};

/*
 * A front 64 mm longer takes 13 stitches more along its edge: one for every 5 mm of the even design's 20 to 10 cm. That holes
 * are spread anew over the longer band, first and last where they were, is common practice, no published source.
 */
describe('a band with button holes along a front that is made longer', () => {
  it.each([
    ['along the right front', {}],
    ['along the left front', { frontBand: { ...frontBand, buttons: 5, holesIn: 'left front' } }],
    ['round a V', { neck: { ...neck, shape: 'V', depthMm: 160 } }],
  ] as const)('%s is offered with as many holes, spread anew', (_, more) => {
    const { before, after } = garments(more as Partial<Design>, 16);
    const bands = [...answers({ before, after, inHand: 'Front' })].filter(
      ({ what: [one] }) => one.kind === 'pick up',
    );
    expect(bands.length).toBeGreaterThan(0);
    let garment = after;
    for (let n = 0; n < 4; n += 1) {
      const [mend] = [...answers({ before, after: garment, inHand: 'Front' })].flatMap(({ mends }) => mends);
      if (mend) garment = mend.garment;
    }
    expect(makingUpOf(garment).troubles).toEqual([]);
    expect([...answers({ before, after: garment, inHand: 'Front' })]).toEqual([]);
    const [was, now] = [buttonsOf(before), buttonsOf(garment)];
    expect(now).toHaveLength(5);
    expect(Math.abs((now[0] ?? 0) - (was[0] ?? 0))).toBeLessThanOrEqual(2);
    const gaps = now.slice(1).map((at, i) => at - (now[i] ?? 0));
    expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(2);
    expect(Math.abs((now.at(-1) ?? 0) - (was.at(-1) ?? 0) - 13)).toBeLessThanOrEqual(3);
  });
});
