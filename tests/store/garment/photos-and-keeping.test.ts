import { describe, expect, it } from 'vitest';
import { askToKeep, isKept, roomLeft } from '../../../src/store/box/persist.ts';
import { addPhoto, deletePhoto, photosOf } from '../../../src/store/garment/photos.ts';
import { dot, knittedBox } from '../knitted-box.ts';
import { codesOf, given } from '../scenario.ts';

describe('photos', () => {
  it('belong to a garment and go with it', async () => {
    const store = await knittedBox();
    const photo = given(await addPhoto(store.box, 'scarf', dot()));
    expect(given(await photosOf(store.box, 'scarf'))).toHaveLength(2);
    given(await deletePhoto(store.box, photo.id));
    expect(given(await photosOf(store.box, 'scarf')).map((one) => one.caption)).toEqual([
      'the first hand of rows',
    ]);
    given(await store.deleteGarment('scarf'));
    expect(given(await photosOf(store.box, 'scarf'))).toEqual([]);
    expect(codesOf(await addPhoto(store.box, 'scarf', dot()))).toEqual(['no-such-garment']);
  });

  it('are pictures of pixels only', async () => {
    const store = await knittedBox();
    const script = new Blob(['<svg onload="x"/>'], { type: 'image/svg+xml' });
    expect(codesOf(await addPhoto(store.box, 'scarf', script))).toEqual(['not-storable']);
  });
});

describe('asking the browser to keep the box', () => {
  it('tells what it answered', async () => {
    expect(await askToKeep({ persist: async () => true })).toBe('kept');
    expect(await askToKeep({ persist: async () => false })).toBe('not kept');
    expect(await isKept({ persisted: async () => true })).toBe('kept');
  });

  it('does not know where the browser has no such thing, or fails to answer', async () => {
    expect(await askToKeep({})).toBe('unknown');
    expect(await isKept({ persisted: () => Promise.reject(new TypeError('no')) })).toBe('unknown');
    expect(await roomLeft({})).toBeUndefined();
  });

  it('tells the room that is left', async () => {
    expect(await roomLeft({ estimate: async () => ({ usage: 30, quota: 100 }) })).toEqual({
      used: 30,
      free: 70,
    });
  });
});
