import { describe, expect, it } from 'vitest';
import { makesOfStep } from '../../../src/knit/making-up/makes-of-step.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { standing } from './by-hand.ts';
import { back, front, neckband, sleeve } from './pullover.ts';

describe('what has to be knitted before a step of a pullover with set-in sleeves', () => {
  const garment = standing(back, front, sleeve, neckband);
  const made = makingUpOf(garment);
  const wanted = (id: string) => {
    const step = made.steps.find((one) => one.id === id);
    if (!step) throw new Error(`no step ${id}`);
    return makesOfStep(step, made, garment)
      .map(({ piece, make }) => `${piece} ${make}`)
      .join(', ');
  };

  // what is sewn has to be there, and what is picked up from; a band grows by being picked up: common practice, no published source
  it.each([
    ['block Back', 'Back 1'],
    ['block Sleeve', 'Sleeve 1, Sleeve 2'],
    ['shoulders', 'Back 1, Front 1'],
    ['pick up Neckband', 'Back 1, Front 1'],
    ['close Neckband', 'Back 1, Front 1, Neckband 1'],
    ['set in sleeves', 'Back 1, Front 1, Sleeve 1, Sleeve 2'],
    ['side seams', 'Back 1, Front 1'],
    ['sleeve seams', 'Sleeve 1, Sleeve 2'],
    ['ends', 'Back 1, Front 1, Sleeve 1, Sleeve 2, Neckband 1'],
  ])('%s: %s', (id, makes) => {
    expect(wanted(id)).toBe(makes);
  });

  it('buttons: the band that they are sewn to, and what they are held against, nothing else', () => {
    const step = { id: 'buttons', kind: 'buttons', band: 'Neckband', stitches: [4] } as const;
    const names = (one: Parameters<typeof makesOfStep>[0]) =>
      makesOfStep(one, made, garment).map(({ piece }) => piece);
    expect(names(step)).toEqual(['Neckband']);
    expect(names({ ...step, on: 'Front' })).toEqual(['Front', 'Neckband']);
  });
});
