import { expect, it } from 'vitest';
import { planRecords } from '../../../src/app/garments/plan-records.ts';
import { isSampleName, openSample } from '../../../src/app/garments/sample.ts';
import type { GarmentRecord } from '../../../src/store/records.ts';
import { given } from '../../store/scenario.ts';
import { openEmptyApp } from '../open-app.ts';

it('samples are known by three names, and no other', () => {
  const names = ['sample', 'cardigan', 'baby', 'pullover', 'back', 'Sample', ''];
  expect(names.filter(isSampleName)).toEqual(['sample', 'cardigan', 'baby']);
});

it('a sample is made where it is missing, begun at its back, and as it is where it is there', async () => {
  const store = await openEmptyApp();
  expect(given(await openSample('baby', 5))).toBe('baby/back/0/1');
  const made = given(await store.garment('baby'));
  expect(made).toMatchObject({ id: 'baby', createdAt: 5 });
  for (const { id, recipe } of made.pieces) expect(id).toBe(recipe.name.toLowerCase().replaceAll(' ', '-'));
  expect(given(await openSample('baby', 9))).toBe('baby/back/0/1');
  expect(given(await store.garment('baby')).createdAt).toBe(5);
});

it('a garment that cannot be planned says of each piece why', () => {
  const bad = (name: string, castOn: number): GarmentRecord['pieces'][number] => ({
    id: name,
    recipe: {
      name,
      makes: 1,
      parts: [
        {
          name: 'all',
          from: { castOn },
          sections: [{ name: 'all', rows: 4, fabric: 'garter', needle: 4, shaping: [] }],
          end: 'bind off',
        },
      ],
    },
  });
  const garment = (...pieces: GarmentRecord['pieces']): GarmentRecord => ({
    id: 'g',
    name: 'G',
    createdAt: 1,
    changedAt: 1,
    pieces,
  });
  const refused = planRecords(garment(bad('One', 0), bad('Good', 10), bad('Two', -3)));
  expect(refused.ok ? [] : refused.faults.map(({ at }) => at.piece)).toEqual(['One', 'Two']);
  const planned = given(planRecords(garment(bad('Good', 10), bad('Other', 12))));
  expect(planned.map(({ id, piece, version, mirror }) => [id, piece, version, mirror])).toEqual([
    ['g/Good/0/s/1', 'Good', 1, false],
    ['g/Other/0/s/1', 'Other', 1, false],
  ]);
});
