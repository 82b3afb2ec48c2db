import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepPhoto, openPhoto, removePhoto } from '../../../src/app/garments/photo.ts';
import { openMake } from '../../../src/app/in-hand/open-make.ts';
import { inHand, readFault } from '../../../src/app/state.ts';
import { addPhoto, photosOf } from '../../../src/store/garment/photos.ts';
import { type OpenApp, openApp } from '../open-app.ts';

let app: OpenApp;
let garment: string;

/** A phone that draws every picture as the text in it. */
function phone(reads = true): void {
  vi.stubGlobal('createImageBitmap', async (file: Blob) => {
    if (!reads) throw new Error('no picture');
    const text = await file.text();
    return { width: 10, height: 10, text, close: () => undefined };
  });
  let drawn = '';
  vi.stubGlobal('document', {
    createElement: () => ({
      getContext: () => ({
        drawImage: (picture: { text: string }) => {
          drawn = picture.text;
        },
      }),
      toBlob: (take: (blob: Blob) => void) => take(new Blob([drawn], { type: 'image/jpeg' })),
    }),
  });
}

beforeEach(async () => {
  app = await openApp();
  await openMake(app.back);
  garment = inHand.value?.place.garment ?? '';
  phone();
});
afterEach(() => vi.unstubAllGlobals());

describe('the photo of the yarn', () => {
  it('is none before one is kept, and then the one kept last, in the place of the one before', async () => {
    expect(await openPhoto(garment)).toBeUndefined();
    const first = await keepPhoto(garment, new Blob(['first']));
    expect((await openPhoto(garment))?.id).toBe(first?.id);
    const second = await keepPhoto(garment, new Blob(['second']));
    expect(second?.id).not.toBe(first?.id);
    expect((await openPhoto(garment))?.id).toBe(second?.id);
    const kept = await photosOf(app.store.box, garment);
    expect(kept.ok && kept.value.map(({ id }) => id)).toEqual([second?.id]);
  });

  it('is the newest of several, as two devices bring them together; of one moment the one that is kept last', async () => {
    const { box } = app.store;
    const add = async (at: number) => {
      const added = await addPhoto(
        { ...box, now: () => at },
        garment,
        new Blob([`${at}`], { type: 'image/jpeg' }),
      );
      return added.ok ? added.value.id : '';
    };
    const opened = async () => (await openPhoto(garment))?.id;
    const early = await add(1000);
    expect(await opened()).toBe(early);
    const late = await add(3000);
    expect(await opened()).toBe(late);
    await add(2000);
    expect(await opened()).toBe(late);
    await add(3000);
    const kept = await photosOf(box, garment);
    const newest = kept.ok ? kept.value.filter(({ at }) => at === 3000).map(({ id }) => id) : [];
    expect(newest).toHaveLength(2);
    expect(await opened()).toBe(newest[1]);
  });

  it('that cannot be read leaves the one before', async () => {
    const first = await keepPhoto(garment, new Blob(['first']));
    phone(false);
    expect(await keepPhoto(garment, new Blob(['second']))).toBeUndefined();
    expect((await openPhoto(garment))?.id).toBe(first?.id);
  });

  it('is gone when it is taken away', async () => {
    const first = await keepPhoto(garment, new Blob(['first']));
    readFault.value = undefined;
    expect(await removePhoto(first?.id ?? '')).toBe(true);
    expect(await openPhoto(garment)).toBeUndefined();
    expect(readFault.value).toBeUndefined();
  });
});
