import { IDBFactory } from 'fake-indexeddb';
import { vi } from 'vitest';
import * as editing from '../../../src/app/drafts/editor/editor.ts';
import { saveGarment } from '../../../src/app/drafts/editor/save-garment.ts';
import { readKept } from '../../../src/app/drafts/kept/read-kept.ts';
import { emptyDraft } from '../../../src/app/drafts/pattern/draft.ts';
import { textOfPdf } from '../../../src/app/drafts/pattern/from-file/pdf.ts';
import { textOfFile } from '../../../src/app/drafts/pattern/from-file/read-file.ts';
import { makeGarment } from '../../../src/app/drafts/pattern/make-garment.ts';
import * as reader from '../../../src/app/drafts/pattern/reader.ts';
import { openGarmentInHand } from '../../../src/app/garments/open-garments.ts';
import { openMake } from '../../../src/app/in-hand/open-make.ts';
import { lengthen } from '../../../src/app/in-hand/stretch-in-hand.ts';
import { forgetStore, giveStore } from '../../../src/app/store.ts';
import { takeBack } from '../../../src/store/backup/way-back.ts';
import { migrations } from '../../../src/store/box/schema.ts';
import type { StoreFaults } from '../../../src/store/faults.ts';
import { addPhoto } from '../../../src/store/garment/photos.ts';
import { openStore, type Store, type StoreOptions } from '../../../src/store/store.ts';
import { madePdf } from '../../app/drafts/pattern/from-file/made-pdf.ts';
import { openApp } from '../../app/open-app.ts';
import { memoryKeep } from '../../store/beside/memory-keep.ts';
import { FaultyFactory, fuse, type Mishap } from '../../store/box/faulty-factory.ts';
import { dot } from '../../store/knitted-box.ts';
import { freshStore, given, LONG, nextName, nextRow, scarf, undoLast } from '../../store/scenario.ts';
import type { Drivers, Made } from './drivers.ts';

type Code = Exclude<keyof StoreFaults, `backup-${string}` | `link ${string}`>;

const newer = [...migrations, { to: migrations.length + 1, run: () => undefined }];

/** A box with a scarf of so many rows in it. */
async function box(rows = 30): Promise<Store> {
  const store = await freshStore();
  const { garment, plans } = scarf('scarf', rows);
  given(await store.saveGarment(garment, plans));
  return store;
}

/** Opens a box that is as it should not be. */
const opening = (factory: unknown, more: StoreOptions = {}) =>
  openStore({
    name: nextName(),
    keep: memoryKeep(),
    pauseMs: 0,
    factory: () => factory as IDBFactory,
    ...more,
  });

/** A store whose storage fails from `fail` on. */
async function failing() {
  const wire = fuse();
  const keep = memoryKeep();
  const factory = new FaultyFactory(new IDBFactory(), wire);
  const spareFactory = async () => undefined;
  const store = given(await opening(factory, { keep, spareFactory }));
  const fail = (mishap: Mishap) => Object.assign(wire, { at: wire.step + 1, mishap, lasting: true });
  return { store, keep, fail };
}

async function tapped(mishap: Mishap): Promise<Made> {
  const { store, keep, fail } = await failing();
  const { garment, plans } = scarf();
  given(await store.saveGarment(garment, plans));
  keep.full = true;
  fail(mishap);
  return store.finishRow(LONG, 1);
}

/** A database of another version, or of another make, under the name of ours. */
async function made(version: number, stores: readonly string[]) {
  const factory = new IDBFactory();
  const name = nextName();
  const db = await new Promise<IDBDatabase>((resolve) => {
    const request = factory.open(name, version);
    request.onupgradeneeded = () => {
      for (const store of stores) request.result.createObjectStore(store);
    };
    request.onsuccess = () => resolve(request.result as unknown as IDBDatabase);
  });
  return { factory, name, db };
}

async function ofANewerApp(): Promise<Made> {
  const store = await freshStore();
  store.close();
  const { factory, name } = store;
  given(await opening(factory, { name, migrations: newer })).close();
  return given(await opening(factory, { name })).deleteGarment('scarf');
}

async function held(): Promise<Made> {
  const { factory, name, db } = await made(1, ['garments']);
  const opened = await opening(factory, { name, migrations: newer, patienceMs: 100 });
  db.close();
  return opened;
}

async function ofStrangers(): Promise<Made> {
  const { factory, name, db } = await made(migrations.length, ['strangers']);
  db.close();
  return opening(factory, { name });
}

/** A garment read from a text, in the stretch that the text gives as a length, and a storage that has no room by then. */
async function lengthened(): Promise<Made> {
  const { store, fail } = await failing();
  forgetStore();
  giveStore(store);
  reader.pattern.value = {
    ...emptyDraft,
    text: 'Cast on 20 sts.\nWork in st st until piece measures 30 cm.',
  };
  const id = given(await makeGarment('Scarf', (unread) => unread.join('\n')));
  const [place] = given(await store.placesOf(id));
  const make = place?.id ?? 'no/place/0/1';
  given(await store.finishRow(make, 1));
  await openMake(make);
  await openGarmentInHand(id);
  fail('has no room');
  return lengthen();
}

/** Where a file of the app cannot be fetched: its loading fails, nothing stands in for what it does. */
async function withoutItsFile(): Promise<Made> {
  const file = '../../../src/app/drafts/kept/kept-shapes.ts';
  vi.doMock(file, () => {
    throw new TypeError('Failed to fetch dynamically imported module');
  });
  const read = await readKept('person', { name: 'Ada' });
  vi.doUnmock(file);
  return read;
}

export const storeDrivers: Drivers<Code> = {
  'storage-full': () => tapped('has no room'),
  'storage-refused': () => opening(undefined),
  'store-not-answering': () => tapped('throws'),
  'database-newer': ofANewerApp,
  'database-blocked': held,
  'database-strange': ofStrangers,
  'migration-failed': () =>
    opening(new IDBFactory(), {
      migrations: [
        ...migrations,
        { to: migrations.length + 1, run: () => Promise.reject(new Error('planted')) },
      ],
    }),
  'not-storable': async () => {
    const { garment, plans } = scarf('a/b');
    return (await freshStore()).saveGarment(garment, plans);
  },
  'text-too-long': async () =>
    (await box()).changeGarment('scarf', (was) => ({ ...was, notes: 'x'.repeat(100_001) })),
  'photos-full': async () => addPhoto((await box()).box, 'scarf', dot(), { most: 10 }),
  'no-such-garment': async () => (await freshStore()).deleteGarment('nobody'),
  'garment-there': async () => {
    const { garment, plans } = scarf();
    return (await box()).saveGarment({ ...garment, name: 'Another' }, plans);
  },
  'no-such-make': async () => (await box()).goTo('scarf/none/0/1', 1, 'place'),
  'no-such-plan': async () => (await box()).plan('scarf/none/0/s/1'),
  'no-such-entry': async () => (await box()).append(LONG, { kind: 'strike', undoes: 'nowhere' }),
  'app-incomplete': withoutItsFile,
  'document protected': () => textOfPdf(madePdf([[]], true)),
  'document damaged': () => textOfPdf(new ArrayBuffer(9)),
  'document pictures only': () => textOfPdf(madePdf([[]])),
  'document too long': () => textOfPdf(madePdf(Array.from({ length: 121 }, () => []))),
  'document too large': () => textOfFile({ size: 61_000_000 } as Blob),
  'document unknown': () => textOfFile(new Blob([new Uint8Array(9)])),
  'plan-missing': async () => {
    const { garment, plans } = scarf();
    return (await freshStore()).saveGarment(garment, plans.slice(1));
  },
  'at-the-end': async () => {
    const store = await box(1);
    given(await nextRow(store, LONG));
    return nextRow(store, LONG);
  },
  'place-moved': async () => (await box()).finishRow(LONG, 7),
  'plan-moved': async () => (await box()).finishRow(LONG, 1, 'scarf/long/0/s/9'),
  'row-outside': async () => (await box()).goTo(LONG, 31, 'place'),
  'nothing-to-undo': async () => undoLast(await box(), LONG),
  'no-way-back': async () => takeBack((await box()).box),
  'kept-unreadable': () => readKept('person', { name: 7 }),
  'nothing to save': async () => {
    await openApp();
    editing.editor.value = undefined;
    return saveGarment();
  },
  'text missing': async () => {
    await openApp();
    return lengthen();
  },
  'not stored': lengthened,
};
