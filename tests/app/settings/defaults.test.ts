import { expect, it } from 'vitest';
import { numbered } from '../../../src/app/garments/save-new.ts';
import { readSettings } from '../../../src/app/settings/settings.ts';
import { scarf } from '../../store/scenario.ts';

it('what holds until she chooses', () => {
  const first = {
    theme: 'auto',
    hand: 'right',
    keys: false,
    headset: true,
    buzz: true,
    tick: false,
    voice: false,
    rest: true,
    dim: false,
  };
  expect(readSettings({})).toEqual(first);
  expect(readSettings({ theme: 'green', keys: 'yes', hand: 'left' })).toEqual({ ...first, hand: 'left' });
});

it('pieces of a new garment are numbered from 1', () => {
  const recipes = scarf().garment.pieces.map(({ recipe }) => recipe);
  expect(numbered(recipes)).toEqual([
    { id: 'piece1', recipe: recipes[0] },
    { id: 'piece2', recipe: recipes[1] },
  ]);
});
