import { afterAll, beforeAll, expect, it } from 'vitest';
import { draft } from '../../src/knit/garment/draft.ts';
import { labelsOf } from '../../src/screens/draft/drawn-measures.ts';
import { saysLength } from '../../src/words/measures.ts';
import { plainSpeech, speech } from '../../src/words/settings.ts';
import { designs } from '../knit/garment/designs.ts';
import { even } from '../knit/garment/spelled.ts';

beforeAll(() => {
  speech.value = { ...plainSpeech, units: 'cm' };
});
afterAll(() => {
  speech.value = plainSpeech;
});

it('a figure on a drawing says what was asked for where it reads as another, and only there', () => {
  let same = 0;
  let other = 0;
  for (const design of Object.values(designs)) {
    const made = draft({ ...even, ...design, ease: { ...even.ease, chest: even.ease.chest + 7 } });
    if (!made.ok) throw new Error(made.faults[0]?.code);
    for (const piece of ['Back', 'Front', 'Sleeve']) {
      const drawn = { left: -260, right: 260, top: 600, length: 600, letter: 40 };
      for (const { to, text, asked } of labelsOf(piece, made.value, drawn)) {
        if (to !== 'ease.chest' && to !== 'ease.upperArm') continue;
        const measure = {
          Back: 'width at the underarm',
          Front: 'front width at the underarm',
          Sleeve: 'sleeve width',
        };
        const rounding = made.value.roundings.find(
          (one) => one.measure === measure[piece as keyof typeof measure],
        );
        const [wish, got] = [saysLength(rounding?.askedMm ?? 0), saysLength(rounding?.madeMm ?? 0)];
        expect(text).toContain(got);
        expect(asked).toBe(wish === got ? undefined : wish);
        if (asked === undefined) same += 1;
        else other += 1;
      }
    }
  }
  // both are met among the designs
  expect(same).toBeGreaterThan(0);
  expect(other).toBeGreaterThan(0);
});
