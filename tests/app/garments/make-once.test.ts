import { expect, it } from 'vitest';
import { keepGarment } from '../../../src/app/garments/keep-garment.ts';
import { openSample } from '../../../src/app/garments/sample.ts';
import { fault, refuse } from '../../../src/knit/fault.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { addPhoto, photosOf } from '../../../src/store/garment/photos.ts';
import { openStore, type Store } from '../../../src/store/store.ts';
import { dot } from '../../store/knitted-box.ts';
import { codesOf, freshStore, given, nextRow, scarf } from '../../store/scenario.ts';
import { openApp } from '../open-app.ts';

/** A store that writes a garment and then gives no answer, once. */
const silentOnce = (store: Store): Store => {
  let silent = true;
  return {
    ...store,
    saveGarment: async (garment, plans) => {
      const done = await store.saveGarment(garment, plans);
      if (!silent || garment.id === 'sample') return done;
      silent = false;
      return refuse(fault('store-not-answering'));
    },
  };
};

it('a garment that was stored without an answer is the same one when it is made once more', async () => {
  const { store } = await openApp(silentOnce);
  expect(codesOf(await keepGarment(sampleGarment, 1000))).toEqual(['store-not-answering']);
  const id = given(await keepGarment(sampleGarment, 2000));
  expect(given(await store.list()).map((one) => one.id)).toEqual(expect.arrayContaining([id, 'sample']));
  expect(given(await store.list())).toHaveLength(2);
  // one that she wants twice is made twice
  expect(given(await keepGarment(sampleGarment, 3000))).not.toBe(id);
  expect(given(await store.list())).toHaveLength(3);
});

it('the sample that another window makes and knits on meanwhile stays as it is', async () => {
  const store = await freshStore();
  const { garment, plans } = scarf('sample');
  given(await store.saveGarment(garment, plans));
  const long = 'sample/long/0/1';
  given(await nextRow(store, long));
  const { back } = await openApp(() => ({ ...store, garment: async () => refuse(fault('no-such-garment')) }));
  expect(given(await openSample())).toBe(back);
  expect(given(await store.garment('sample')).name).toBe(garment.name);
  expect(given(await store.place(long)).rows).toBe(1);
});

it('a garment does not take the place of another one of its id', async () => {
  const store = await freshStore();
  const { garment, plans } = scarf();
  given(await store.saveGarment({ ...garment, notes: 'mine' }, plans));
  expect(codesOf(await store.saveGarment(garment, plans))).toEqual(['garment-there']);
  expect(given(await store.garment('scarf')).notes).toBe('mine');
});

it('a photo takes the place of the one before in the same write', async () => {
  const store = await freshStore();
  const { garment, plans } = scarf();
  given(await store.saveGarment(garment, plans));
  const first = given(await addPhoto(store.box, 'scarf', dot()));
  const other = given(await openStore({ factory: () => store.factory, name: store.name }));
  const writes: number[] = [];
  const box = {
    ...store.box,
    door: {
      ...store.box.door,
      write: ((...asked: Parameters<typeof store.box.door.write>) => {
        writes.push(1);
        return store.box.door.write(...asked);
      }) as typeof store.box.door.write,
    },
  };
  const second = given(await addPhoto(box, 'scarf', dot(), { instead: first.id }));
  expect(given(await photosOf(other.box, 'scarf')).map(({ id }) => id)).toEqual([second.id]);
  expect(writes).toHaveLength(1);
  other.close();
});
