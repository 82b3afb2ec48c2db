import { describe, expect, it } from 'vitest';
import { openFile, takeIn } from '../../../src/app/backup/backup.ts';
import { codesOfGarment } from '../../../src/app/backup/codes-of-garment.ts';
import { garmentFile } from '../../../src/app/backup/one-garment.ts';
import { openSample } from '../../../src/app/garments/sample.ts';
import { forgetStore, giveStore } from '../../../src/app/store.ts';
import { addPhoto, photosOf } from '../../../src/store/garment/photos.ts';
import { type RunCode, readRunCode, textOfRun, withCode } from '../../../src/store/share/code-run.ts';
import type { Store } from '../../../src/store/store.ts';
import { dot } from '../../store/knitted-box.ts';
import { given } from '../../store/scenario.ts';
import { openApp, openEmptyApp } from '../open-app.ts';

const sample = { id: 'sample', name: 'Harbour/pullover' };
const BACK = 'sample/back/0/1';
const rowsOf = async (store: Store) => given(await store.place(BACK)).rows;

const use = (store: Store) => {
  forgetStore();
  giveStore(store);
};

const knit = async (store: Store, rows: number) => {
  for (let n = 0; n < rows; n += 1) given(await store.finishRow(BACK, (await rowsOf(store)) + 1));
};

/** Takes in what another device handed over; gives what she is told before she does. */
async function takeOn(store: Store, text: string) {
  use(store);
  const file = await openFile(new Blob([text]));
  if (!file?.ok) throw new Error('not read');
  given(await takeIn(file.value.backup, 'merge'));
  return file.value;
}

const fileFrom = async (store: Store) => {
  use(store);
  return given(await garmentFile(sample)).text;
};

describe('a garment on its way to another device', () => {
  it('comes with its place, goes back further, and says before it is taken in from which row to which', async () => {
    const { store: phone } = await openApp();
    await knit(phone, 3);
    const tablet = await openEmptyApp();
    const first = await takeOn(tablet, await fileFrom(phone));
    expect(first.merge.garments).toMatchObject([{ kind: 'new', entriesIn: 3 }]);
    expect(await rowsOf(tablet)).toBe(3);

    await knit(tablet, 4);
    const back = await takeOn(phone, await fileFrom(tablet));
    expect(back.merge.garments).toMatchObject([
      { kind: 'changed', makes: [{ piece: 'Back', here: 3, there: 7, after: 7 }] },
    ]);
    expect(await rowsOf(phone)).toBe(7);
    expect(await takeOn(phone, await fileFrom(tablet))).toMatchObject({ merge: { garments: [] } });
  });

  it('is never put in the stead of what is there, and takes nothing else with it', async () => {
    const { store: phone } = await openApp();
    given(await openSample('baby'));
    given(await phone.setSetting('hand', 'left'));
    const file = await takeOn(await openEmptyApp(), await fileFrom(phone));
    expect(file.replace).toBeUndefined();
    expect(file.backup.garments.map(({ id }) => id)).toEqual(['sample']);
    expect(file.backup.settings).toEqual({});
  });

  it('has its photos in the file, and a name that any disk takes', async () => {
    const { store: phone } = await openApp();
    given(await addPhoto(phone.box, 'sample', dot(), { caption: 'the rib' }));
    const { name } = given(await garmentFile(sample));
    expect(name).toBe('Harbourpullover.ridgeline.json');
    const tablet = await openEmptyApp();
    await takeOn(tablet, await fileFrom(phone));
    expect(given(await photosOf(tablet.box, 'sample'))).toMatchObject([{ caption: 'the rib' }]);
  });

  it('comes by codes too, without its photos', async () => {
    const { store: phone } = await openApp();
    await knit(phone, 2);
    given(await addPhoto(phone.box, 'sample', dot()));
    const codes = given(await codesOfGarment('sample')) ?? [];
    expect(codes.length).toBeGreaterThan(5);
    const run = codes.reduce<readonly RunCode[]>((all, code) => {
      const read = readRunCode(code);
      return read ? withCode(all, read) : all;
    }, []);
    const tablet = await openEmptyApp();
    await takeOn(tablet, (await textOfRun(run)) ?? '');
    expect(await rowsOf(tablet)).toBe(2);
    expect(given(await photosOf(tablet.box, 'sample'))).toEqual([]);
  });

  it('that is not there is told', async () => {
    await openEmptyApp();
    expect(await garmentFile({ id: 'none', name: 'None' })).toMatchObject({
      faults: [{ code: 'no-such-garment' }],
    });
  });
});
