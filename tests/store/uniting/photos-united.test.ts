import { describe, expect, it } from 'vitest';
import { exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { previewImport } from '../../../src/store/backup/preview.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { takeBack } from '../../../src/store/backup/way-back.ts';
import { addPhoto, deletePhoto, photosOf } from '../../../src/store/garment/photos.ts';
import type { Store } from '../../../src/store/store.ts';
import { dot } from '../knitted-box.ts';
import { freshStore, given, scarf } from '../scenario.ts';

/** That a photo was taken away is a change like any other: devices that unite tell it to each other. */

const fileOf = async (store: Store) => given(await exportAll(store.box));
const handOver = async (from: Store, to: Store) =>
  given(await importBackup(to.box, await fileOf(from), 'merge'));
const captions = async (store: Store) =>
  given(await photosOf(store.box, 'scarf'))
    .map(({ caption }) => caption)
    .sort();
const photo = async (store: Store, caption: string, instead?: string) =>
  given(await addPhoto(store.box, 'scarf', dot(), { caption, instead }));

async function devices(): Promise<[Store, Store, Store]> {
  const all = await Promise.all([0, 1, 2].map(() => freshStore({ keep: undefined })));
  const [phone, tablet, third] = all as unknown as [Store, Store, Store];
  const { garment, plans } = scarf();
  given(await phone.saveGarment(garment, plans));
  await photo(phone, 'blue');
  await photo(phone, 'green');
  await handOver(phone, tablet);
  await handOver(phone, third);
  return [phone, tablet, third];
}

const idOf = async (store: Store, caption: string) =>
  given(await photosOf(store.box, 'scarf')).find((one) => one.caption === caption)?.id ?? '';

describe('a photo that was taken away on one device', () => {
  it('goes on the others too, and does not come back with their files', async () => {
    const [phone, tablet, third] = await devices();
    const before = await fileOf(phone);
    given(await deletePhoto(phone.box, await idOf(phone, 'blue')));
    await handOver(tablet, phone);
    expect(await captions(phone)).toEqual(['green']);
    await handOver(phone, tablet);
    expect(await captions(tablet)).toEqual(['green']);
    // by way of one that never had the first word of it
    await handOver(tablet, third);
    await handOver(third, phone);
    given(await importBackup(tablet.box, before, 'merge'));
    for (const store of [phone, tablet, third]) expect(await captions(store)).toEqual(['green']);
  });

  it('leaves one that was taken meanwhile on the other', async () => {
    const [phone, tablet] = await devices();
    given(await deletePhoto(phone.box, await idOf(phone, 'blue')));
    await photo(tablet, 'red');
    await handOver(tablet, phone);
    await handOver(phone, tablet);
    for (const store of [phone, tablet]) expect(await captions(store)).toEqual(['green', 'red']);
  });

  it('as one in whose place another came', async () => {
    const [phone, tablet] = await devices();
    await photo(phone, 'violet', await idOf(phone, 'blue'));
    await handOver(tablet, phone);
    await handOver(phone, tablet);
    for (const store of [phone, tablet]) expect(await captions(store)).toEqual(['green', 'violet']);
  });

  it('leaves what was changed of the garment on both devices', async () => {
    const [phone, tablet] = await devices();
    given(await phone.changeGarment('scarf', (was) => ({ ...was, notes: 'dry flat' })));
    given(await deletePhoto(phone.box, await idOf(phone, 'blue')));
    given(await tablet.changeGarment('scarf', (was) => ({ ...was, ticked: ['block'] })));
    await handOver(tablet, phone);
    await handOver(phone, tablet);
    for (const store of [phone, tablet])
      expect(given(await store.garment('scarf'))).toMatchObject({ notes: 'dry flat', ticked: ['block'] });
    expect(given(await tablet.garment('scarf'))).toEqual(given(await phone.garment('scarf')));
  });

  it('is not counted as one that would come in', async () => {
    const [phone, tablet] = await devices();
    given(await deletePhoto(phone.box, await idOf(phone, 'blue')));
    expect(given(await previewImport(phone.box, await fileOf(tablet), 'merge')).photos).toBe(0);
  });

  it('is there again where its coming away is taken back, or an older state takes the place of everything', async () => {
    const [phone, tablet] = await devices();
    const before = await fileOf(phone);
    given(await deletePhoto(phone.box, await idOf(phone, 'blue')));
    await handOver(phone, tablet);
    given(await takeBack(tablet.box));
    expect(await captions(tablet)).toEqual(['blue', 'green']);
    given(await importBackup(phone.box, before, 'replace'));
    expect(await captions(phone)).toEqual(['blue', 'green']);
  });

  it('can be put into a file, which is read back as it is', async () => {
    const [phone] = await devices();
    given(await deletePhoto(phone.box, await idOf(phone, 'blue')));
    const file = await fileOf(phone);
    expect(given(readBackup(JSON.stringify(file)))).toEqual(file);
  });
});
