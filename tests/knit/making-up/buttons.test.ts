import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import { buttonsStep } from '../../../src/knit/making-up/buttons.ts';
import type { Joint } from '../../../src/knit/making-up/joint.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import type { Step } from '../../../src/knit/row/step.ts';
import { bodyOf, drafted, perInch } from '../../outside/drafted.ts';
import { told } from '../../told.ts';

function buttons(neck: 'round' | 'V', holesIn: 'right front' | 'left front', count = 5) {
  const begun = startingDesign(
    { kind: 'cardigan', armhole: 'set-in', neck, fit: 'standard' },
    bodyOf('women', 'M'),
    'stocking',
    perInch(5, 7),
  );
  const design: Design = { ...begun, frontBand: { ...begun.frontBand, buttons: count, holesIn } };
  const { recipes, joints } = drafted(design);
  const garment = asPlanned({ name: 'cardigan', pieces: recipes, joints });
  if (!garment.ok) throw new Error('not planned');
  const { steps } = makingUpOf(garment.value);
  const step = steps.find((one) => one.kind === 'buttons');
  const { stitches = [], band, on } = step ?? {};
  return { stitches, band, on, kinds: steps.map(({ kind }) => kind).slice(-2) };
}

describe('the buttons of a cardigan (opposite the holes: common practice, no published source)', () => {
  it.each(['right front', 'left front'] as const)(
    'are a step before the ends: holes in the %s',
    (holesIn) => {
      const { stitches, band, on, kinds } = buttons('round', holesIn);
      expect(kinds).toEqual(['buttons', 'ends']);
      expect([band, on]).toEqual(['Buttonhole band', 'Button band']);
      expect(stitches).toHaveLength(5);
      expect(stitches).toEqual([...stitches].sort((a, b) => a - b));
    },
  );

  it('lie as high whichever front has the holes, to a repeat of the rib', () => {
    const right = buttons('round', 'right front').stitches;
    const left = buttons('round', 'left front').stitches;
    for (const [i, n] of right.entries()) expect(Math.abs(n - (left[i] ?? 0))).toBeLessThanOrEqual(4);
  });

  it.each(['right front', 'left front'] as const)(
    'of a band round fronts and neck are counted from the lower end of the %s, and end below the V',
    (holesIn) => {
      const { stitches, band, on } = buttons('V', holesIn);
      expect([band, on]).toEqual(['Front band', undefined]);
      // 10 to 15 mm from the end to the first: a few stitches at 5 to the inch
      expect(stitches[0]).toBeLessThanOrEqual(6);
      expect(stitches.at(-1)).toBeLessThan(100);
    },
  );

  /** A band of 100 stitches with two-stitch holes, their middles at the given stitches, picked up along fronts up or down. */
  const ofBand = (middles: readonly number[], ...fronts: readonly ('up' | 'down')[]) => {
    const steps: Step[] = [];
    let at = 0;
    for (const middle of middles) {
      steps.push({ work: 'k', times: middle - 1 - at }, { work: 'bo', times: 2 });
      at = middle + 1;
    }
    steps.push({ work: 'k', times: 100 - at });
    const closed = steps.map(
      (step): Step => ('work' in step && step.work === 'bo' ? { work: 'co', times: 2 } : step),
    );
    const section = {
      name: 'band',
      rows: 3,
      fabric: 'garter',
      needle: 4,
      shaping: [],
      words: [[{ work: 'k', times: 100 }], steps, [...closed].reverse()],
    } as const;
    const band: Recipe = {
      name: 'Front band',
      role: 'front band',
      makes: 1,
      parts: [
        {
          name: 'Front band',
          from: { pickUp: [{ along: 'fronts', stitches: 100 }] },
          sections: [section],
          end: 'bind off',
        },
      ],
    };
    const along = fronts.map((way) => ({
      line: [
        { piece: 'Front', make: 1, part: 'Front', edge: 'right', ...(way === 'down' && { reversed: true }) },
      ],
      stitches: 50,
    }));
    const garment = asPlanned({ name: 'cardigan', pieces: [band] });
    if (!garment.ok) throw new Error(told(garment.faults));
    const step = buttonsStep(garment.value, [
      { kind: 'pick up', piece: 'Front band', make: 1, along } as Joint,
    ]);
    return step?.kind === 'buttons' ? step.stitches : undefined;
  };

  it.each([
    ['up one front, its right edge below', [10, 30, 90], ['up'], [10, 30, 90]],
    ['down one front, its left edge below', [10, 30, 90], ['down'], [10, 70, 90]],
    ['up one and down the other, nearer to the first', [10, 20, 60], ['up', 'down'], [10, 20, 60]],
    ['up one and down the other, nearer to the last', [40, 80, 95], ['up', 'down'], [5, 20, 60]],
    [
      'up one and down the other, the last of them nearest to its end',
      [20, 30, 95],
      ['up', 'down'],
      [5, 70, 80],
    ],
    ['up one and down the other, as near to both', [10, 30, 90], ['up', 'down'], [10, 30, 90]],
  ] as const)('by hand: of a band that goes %s', (_, middles, fronts, stitches) => {
    expect(ofBand(middles, ...fronts)).toEqual(stitches);
  });

  it('are no step where no holes are worked', () => {
    expect(buttons('round', 'right front', 0).band).toBeUndefined();
  });
});
