import { expect, it } from 'vitest';
import { joinByHand, takeApart } from '../../../src/app/garments/join-by-hand.ts';
import { openGarment } from '../../../src/app/garments/open-garments.ts';
import { garmentShown } from '../../../src/app/state.ts';
import type { Stretch } from '../../../src/knit/making-up/joint.ts';
import { given } from '../../store/scenario.ts';
import { openApp } from '../open-app.ts';

const edge = (piece: string): Stretch => ({ piece, part: 'Body', make: 1, edge: 'left' }) as Stretch;

it('a seam by hand is one more, shown at once, and goes again with its own tick only', async () => {
  const { store } = await openApp();
  await openGarment('sample');
  const seams = async () => given(await store.garment('sample')).byHand ?? [];
  expect(await joinByHand('sample', [edge('Front'), edge('Back')], 'mattress')).toBe(true);
  expect(await joinByHand('sample', [edge('Back'), edge('Front')], 'grafted')).toBe(true);
  const [first, second] = await seams();
  expect(first).toEqual({ id: first?.id, a: [edge('Front')], b: [edge('Back')], how: 'mattress' });
  expect(second).toMatchObject({ a: [edge('Back')], how: 'grafted' });
  expect(first?.id).not.toBe(second?.id);
  expect(garmentShown.value?.garment.byHand).toHaveLength(2);
  const ticks = [`join ${first?.id}`, `join ${second?.id}`, 'block'];
  given(await store.changeGarment('sample', (was) => ({ ...was, ticked: ticks })));
  expect(await takeApart('sample', first?.id ?? '')).toBe(true);
  expect(await seams()).toEqual([second]);
  expect(given(await store.garment('sample')).ticked).toEqual(ticks.slice(1));
  await takeApart('sample', second?.id ?? '');
  const left = given(await store.garment('sample'));
  expect('byHand' in left).toBe(false);
  expect(left.ticked).toEqual(['block']);
});
