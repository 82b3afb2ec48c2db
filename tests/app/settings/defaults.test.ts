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

it('what she can choose, and nothing else', () => {
  const isTaken = (name: string, value: unknown) =>
    (readSettings({ [name]: value }) as Readonly<Record<string, unknown>>)[name] === value;
  const words = ['auto', 'light', 'dark', 'right', 'left', true, false, 'true', '', null];
  const taken = (name: string) => words.filter((word) => isTaken(name, word));
  expect(taken('theme')).toEqual(['auto', 'light', 'dark']);
  expect(taken('hand')).toEqual(['right', 'left']);
  for (const name of ['keys', 'headset', 'buzz', 'tick', 'voice', 'rest', 'dim'])
    expect(taken(name), name).toEqual([true, false]);
});

it('pieces of a new garment are numbered from 1', () => {
  const recipes = scarf().garment.pieces.map(({ recipe }) => recipe);
  expect(numbered(recipes)).toEqual([
    { id: 'piece1', recipe: recipes[0] },
    { id: 'piece2', recipe: recipes[1] },
  ]);
});
