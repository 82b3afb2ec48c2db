import { describe, expect, it } from 'vitest';
import type { Backup } from '../../../src/store/backup/document.ts';
import { exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { takeBack } from '../../../src/store/backup/way-back.ts';
import { addPhoto } from '../../../src/store/garment/photos.ts';
import type { Store } from '../../../src/store/store.ts';
import { dot } from '../knitted-box.ts';
import { freshStore, given, LONG, nextRow, scarf } from '../scenario.ts';

/** What a backup that is read in makes of the settings and pictures of the box, and what taking it back does. */

const set = async (store: Store, settings: object) => {
  for (const [name, value] of Object.entries(settings)) given(await store.setSetting(name, value));
};
const chosen = async (store: Store) => given(await exportAll(store.box)).settings;
const fileWith = async (settings: object): Promise<Backup> => {
  const other = await freshStore({ keep: undefined });
  await set(other, settings);
  const file = given(await exportAll(other.box));
  other.close();
  return file;
};

describe('settings', () => {
  const here = { both: 'mine', same: 1, own: 'mine' };
  const there = { both: 'of the file', same: 1, new: 'of the file' };

  it.each([
    ['merge', { both: 'mine', same: 1, own: 'mine', new: 'of the file' }],
    ['replace', there],
  ] as const)('read in with %s', async (mode, after) => {
    const store = await freshStore({ keep: undefined });
    await set(store, here);
    given(await importBackup(store.box, await fileWith(there), mode));
    expect(await chosen(store)).toEqual(after);
    given(await takeBack(store.box));
    expect(await chosen(store)).toEqual(here);
    store.close();
  });

  it('that she has set since stay when it is taken back', async () => {
    const store = await freshStore({ keep: undefined });
    await set(store, here);
    given(await importBackup(store.box, await fileWith(there), 'replace'));
    await set(store, { both: 'since', new: 'since' });
    given(await takeBack(store.box));
    expect(await chosen(store)).toEqual({ both: 'since', new: 'since', same: 1, own: 'mine' });
    store.close();
  });
});

describe('pictures', () => {
  const lying = async (store: Store) =>
    given(await store.box.door.read(['photos'], (tx) => tx.objectStore('photos').getAllKeys()));

  async function scarfWithPhoto(caption: string) {
    const store = await freshStore({ keep: undefined });
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    const { id } = given(await addPhoto(store.box, 'scarf', dot(), { caption }));
    return { store, id };
  }

  it('that went come back, and those that came go', async () => {
    const { store, id } = await scarfWithPhoto('mine');
    const other = await scarfWithPhoto('of the file');
    given(await importBackup(store.box, given(await exportAll(other.store.box)), 'replace'));
    expect(await lying(store)).toEqual([other.id]);
    given(await takeBack(store.box));
    expect(await lying(store)).toEqual([id]);
    store.close();
    other.store.close();
  });

  it('of a garment that she has deleted since do not come back', async () => {
    const { store } = await scarfWithPhoto('mine');
    const other = await scarfWithPhoto('of the file');
    given(await importBackup(store.box, given(await exportAll(other.store.box)), 'replace'));
    given(await store.deleteGarment('scarf'));
    given(await takeBack(store.box));
    expect(await lying(store)).toEqual([]);
    store.close();
    other.store.close();
  });

  it('of a garment that came and was knitted on since stay with it', async () => {
    const store = await freshStore({ keep: undefined });
    const other = await scarfWithPhoto('of the file');
    given(await importBackup(store.box, given(await exportAll(other.store.box)), 'merge'));
    given(await nextRow(store, LONG));
    expect(given(await takeBack(store.box)).kept).toEqual(['Moorland scarf']);
    expect(await lying(store)).toEqual([other.id]);
    store.close();
    other.store.close();
  });

  it('of a garment that came and was left alone go with it', async () => {
    const store = await freshStore({ keep: undefined });
    const other = await scarfWithPhoto('of the file');
    given(await importBackup(store.box, given(await exportAll(other.store.box)), 'merge'));
    expect(given(await takeBack(store.box)).kept).toEqual([]);
    expect(await lying(store)).toEqual([]);
    store.close();
    other.store.close();
  });
});
