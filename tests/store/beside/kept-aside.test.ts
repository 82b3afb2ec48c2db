import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import type { MakeKey } from '../../../src/progress/log.ts';
import { migrations } from '../../../src/store/box/schema.ts';
import { openStore, type Store, type StoreOptions } from '../../../src/store/store.ts';
import { FaultyFactory, fuse, type Mishap } from '../box/faulty-factory.ts';
import { codesOf, given, LONG, nextName, nextRow, scarf, undoLast } from '../scenario.ts';
import { memoryKeep } from './memory-keep.ts';

const CUFFS = ['scarf/cuff/0/1', 'scarf/cuff/0/2'] as const;
const newer = [...migrations, { to: migrations.length + 1, run: () => undefined }];

/** A phone whose storage can fail, with windows that share its small keep; two rows of a scarf are knitted. */
async function phone() {
  const sound = new IDBFactory();
  const wire = fuse();
  const keep = memoryKeep();
  const options: StoreOptions = { name: nextName(), keep, pauseMs: 0, spareFactory: async () => undefined };
  const open = async (more: StoreOptions = {}): Promise<Store> =>
    given(await openStore({ ...options, factory: () => new FaultyFactory(sound, wire) as never, ...more }));
  const fail = (mishap: Mishap) => Object.assign(wire, { at: wire.step + 1, mishap, lasting: true });
  const heal = () => Object.assign(wire, { at: undefined });
  const store = await open();
  const { garment, plans } = scarf();
  given(await store.saveGarment(garment, plans));
  for (let i = 0; i < 2; i += 1) given(await nextRow(store, LONG));
  given(await store.inHand(LONG));
  return { store, open, fail, heal, keep, sound };
}

const rowsIn = async (store: Store, key: MakeKey = LONG) =>
  given(await store.entriesOf(key)).map(({ kind, row }) => [kind, row]);

describe('rows tapped while the disk is full', () => {
  it('are kept beside the box, are there after a reload, and go in once each as soon as there is room', async () => {
    const { store, open, fail, heal, sound } = await phone();
    fail('has no room');
    expect(given(await store.finishRow(LONG, 3))).toMatchObject({
      place: { rows: 3 },
      held: { code: 'storage-full' },
    });
    given(await store.finishRow(LONG, 4));
    given(await store.append(LONG, { kind: 'note', text: 'green', from: 4 }));
    store.close();
    // the page is loaded again, and the disk can be read only
    heal();
    const again = await open({ factory: () => fullFactory(sound) });
    expect(again.held()).toBe(3);
    expect(given(await again.inHand(LONG)).place.rows).toBe(4);
    expect(given(await again.placesOf('scarf')).find(({ id }) => id === LONG)?.rows).toBe(4);
    expect(given(await nextRow(again, LONG)).place.rows).toBe(5);
    expect(given(await undoLast(again, LONG)).place.rows).toBe(4);
    again.close();
    const later = await open();
    expect(later.held()).toBe(0);
    expect(await rowsIn(later)).toEqual([
      ['row', 1],
      ['row', 2],
      ['row', 3],
      ['row', 4],
      ['note', 4],
      ['row', 5],
      ['undo', 4],
    ]);
    later.close();
  });

  it('are refused where nothing else takes them either, and are written once when tapped again', async () => {
    const { store, fail, heal, keep } = await phone();
    fail('has no room');
    keep.full = true;
    expect(codesOf(await store.finishRow(LONG, 3))).toEqual(['storage-full']);
    expect(store.held()).toBe(0);
    heal();
    expect(given(await nextRow(store, LONG)).held).toBeUndefined();
    expect((await rowsIn(store)).length).toBe(3);
    store.close();
  });
});

/** Everything can be read, nothing written. */
function fullFactory(sound: IDBFactory): IDBFactory {
  const wire = fuse();
  const factory = new FaultyFactory(sound, wire);
  const open = factory.open.bind(factory);
  factory.open = ((name: string, version?: number) => {
    const request = open(name, version) as unknown as IDBOpenDBRequest;
    request.addEventListener('success', () => {
      const db = request.result;
      const real = db.transaction.bind(db);
      db.transaction = (stores, mode, options) => {
        const tx = real(stores, mode, options);
        if (mode !== 'readwrite') return tx;
        throw new DOMException('no room', 'QuotaExceededError');
      };
    });
    return request;
  }) as never;
  return factory as never;
}

describe('rows tapped in a window that is too old', () => {
  it('are kept beside the box, and a newer window writes them', async () => {
    const { store, open } = await phone();
    const young = await open({ migrations: newer });
    expect(given(await nextRow(store, LONG))).toMatchObject({
      place: { rows: 3 },
      held: { code: 'database-newer' },
    });
    expect(given(await nextRow(store, LONG)).place.rows).toBe(4);
    expect(await rowsIn(young)).toHaveLength(2);
    given(await young.probe());
    expect(store.held()).toBe(0);
    expect(await rowsIn(young)).toHaveLength(4);
    expect(given(await young.place(LONG)).rows).toBe(4);
    store.close();
    young.close();
  });
});

describe('rows of two makes on one needle', () => {
  const pair = CUFFS.map((key) => ({ key, row: 1 }));

  it('are kept beside the box together while that does not take them, and go in once each', async () => {
    const { store, fail, heal } = await phone();
    given(await store.placesOf('scarf'));
    fail('has no room');
    expect(given(await store.finishRows(pair)).map(({ rows }) => rows)).toEqual([1, 1]);
    expect(store.held()).toBe(2);
    heal();
    given(await store.probe());
    for (const key of CUFFS) expect(await rowsIn(store, key)).toEqual([['row', 1]]);
    store.close();
  });

  it('are refused both where only one of them can be kept', async () => {
    const { store, fail, heal, keep } = await phone();
    given(await store.placesOf('scarf'));
    fail('has no room');
    const { setItem } = keep;
    let taken = 0;
    keep.setItem = (key, value) => {
      if (key.includes('.held.')) taken += 1;
      if (taken > 1) throw new DOMException('full', 'QuotaExceededError');
      setItem.call(keep, key, value);
    };
    expect(codesOf(await store.finishRows(pair))).toEqual(['storage-full']);
    expect(store.held()).toBe(0);
    keep.setItem = setItem;
    heal();
    expect(given(await store.finishRows(pair)).map(({ rows }) => rows)).toEqual([1, 1]);
    for (const key of CUFFS) expect(await rowsIn(store, key)).toEqual([['row', 1]]);
    store.close();
  });
});

describe('rows kept beside the box that do not fit it any more', () => {
  it('are written neither one nor the other, the notes among them are, and she is told', async () => {
    const { store, open, fail, heal, sound } = await phone();
    const other = await open({ factory: () => sound, keep: memoryKeep() });
    fail('throws');
    given(await nextRow(store, LONG));
    given(await nextRow(store, LONG));
    given(await store.append(LONG, { kind: 'note', text: 'green', from: 4 }));
    given(await other.finishRow(LONG, 3));
    heal();
    while (!(await store.probe()).ok);
    expect(store.held()).toBe(0);
    expect(store.dropped()?.code).toBe('place-moved');
    expect(store.dropped()).toBeUndefined();
    expect(await rowsIn(store)).toEqual([
      ['row', 1],
      ['row', 2],
      ['row', 3],
      ['note', 3],
    ]);
    store.close();
    other.close();
  });
});
