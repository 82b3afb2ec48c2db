import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { bodyOf, drafted, perInch } from '../../outside/drafted.ts';

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

  it('are no step where no holes are worked', () => {
    expect(buttons('round', 'right front', 0).band).toBeUndefined();
  });
});
