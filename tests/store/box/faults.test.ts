import { readFileSync } from 'node:fs';
import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it, vi } from 'vitest';
import { backupFile } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { migrations } from '../../../src/store/box/schema.ts';
import { openStore, type Store, type StoreOptions } from '../../../src/store/store.ts';
import { memoryKeep } from '../beside/memory-keep.ts';
import { codesOf, given, LONG, nextName, nextRow, scarf, undoLast } from '../scenario.ts';
import { FaultyFactory, fuse, type Mishap } from './faulty-factory.ts';
import { type RecordedDatabase, restoreDatabase } from './recorded-database.ts';

const recordedV1 = JSON.parse(
  readFileSync(new URL('../golden/database-v1.json', import.meta.url), 'utf8'),
) as RecordedDatabase;

/** long enough for a busy machine, short enough for a test */
const IMPATIENT_MS = 400;

/** A phone: a box, a small keep, and a storage that can be told to fail. */
function phone(more: StoreOptions = {}) {
  const sound = new IDBFactory();
  const wire = fuse();
  const keep = memoryKeep();
  const options = { name: nextName(), keep, pauseMs: 0, spareFactory: async () => undefined, ...more };
  const open = (factory: unknown = new FaultyFactory(sound, wire)) =>
    openStore({ ...options, factory: () => factory as IDBFactory });
  const fail = (mishap: Mishap) => Object.assign(wire, { at: wire.step + 1, mishap, lasting: true });
  const heal = () => Object.assign(wire, { at: undefined });
  return { open, fail, heal, keep, sound, options };
}

async function withScarf(store: Store, rows = 0): Promise<Store> {
  const { garment, plans } = scarf();
  given(await store.saveGarment(garment, plans));
  for (let i = 0; i < rows; i += 1) given(await nextRow(store, LONG));
  return store;
}

describe('a full phone', () => {
  it('refuses a row that nothing else takes either, keeps what was there, and takes it when there is room again', async () => {
    const { open, fail, heal, keep } = phone();
    const store = await withScarf(given(await open()), 2);
    keep.full = true;
    fail('has no room');
    expect(codesOf(await nextRow(store, LONG))).toEqual(['storage-full']);
    heal();
    expect(given(await store.place(LONG)).rows).toBe(2);
    expect(given(await nextRow(store, LONG)).place.rows).toBe(3);
  });
});

describe('a storage that the browser has closed', () => {
  it('is opened anew without anyone noticing when it answers again', async () => {
    const { open, fail, heal } = phone();
    const store = await withScarf(given(await open()), 1);
    Object.assign(fail('is closed by the browser'), { lasting: false });
    expect(given(await nextRow(store, LONG))).toMatchObject({ place: { rows: 2 } });
    heal();
    expect(given(await store.entriesOf(LONG))).toHaveLength(2);
  });

  for (const mishap of [
    'throws',
    'never answers',
    'aborts without an error',
    'is closed by the browser',
  ] as const) {
    it(`and ${mishap}: she knits on, the rows are held, and they are written once it answers`, async () => {
      const { open, fail, heal } = phone(mishap === 'never answers' ? { patienceMs: IMPATIENT_MS } : {});
      const store = await withScarf(given(await open()), 2);
      fail(mishap);
      expect(given(await nextRow(store, LONG))).toMatchObject({
        held: expect.anything(),
        place: { rows: 3 },
      });
      expect(given(await nextRow(store, LONG))).toMatchObject({
        held: expect.anything(),
        place: { rows: 4 },
      });
      expect(given(await undoLast(store, LONG))).toMatchObject({
        held: expect.anything(),
        place: { rows: 3 },
      });
      expect(given(await store.append(LONG, { kind: 'note', text: 'hm' })).held).toBeDefined();
      expect(given(await store.place(LONG)).rows).toBe(3);
      expect(store.held()).toBe(4);
      heal();
      while (!(await store.probe()).ok);
      expect(store.held()).toBe(0);
      expect(given(await store.place(LONG)).rows).toBe(3);
      const kinds = given(await store.entriesOf(LONG)).map((entry) => entry.kind);
      expect(kinds).toEqual(['row', 'row', 'row', 'row', 'undo', 'note']);
      store.close();
    });
  }

  it('gives the held rows to the next start, each once, also when the first writing was cut off', async () => {
    const { open, fail, keep, sound, options } = phone();
    const store = await withScarf(given(await open()), 2);
    fail('throws');
    given(await nextRow(store, LONG));
    given(await nextRow(store, LONG));
    store.close();
    const kept = [0, 1, 2, 3, 4]
      .flatMap((i) => keep.key(i) ?? [])
      .map((key) => [key, keep.getItem(key) ?? ''] as const);
    const first = given(await openStore({ ...options, factory: () => sound }));
    expect(given(await first.place(LONG)).rows).toBe(4);
    first.close();
    // written, but the journal was not emptied before the phone went dark
    for (const [key, value] of kept) keep.setItem(key, value);
    const second = given(await openStore({ ...options, factory: () => sound }));
    expect(given(await second.place(LONG)).rows).toBe(4);
    expect(given(await second.entriesOf(LONG))).toHaveLength(4);
    expect(second.held()).toBe(0);
  });

  it('leaves the row not done where the small keep is full too, and a retry does it once', async () => {
    const { open, fail, heal, keep } = phone({ patienceMs: IMPATIENT_MS });
    const store = await withScarf(given(await open()), 2);
    keep.full = true;
    fail('never answers');
    expect(codesOf(await nextRow(store, LONG))).toEqual(['store-not-answering']);
    expect(store.held()).toBe(0);
    heal();
    while (!(await nextRow(store, LONG)).ok);
    expect(given(await store.place(LONG)).rows).toBe(3);
    expect(given(await store.entriesOf(LONG))).toHaveLength(3);
  });

  it('is asked once where it did not answer before, and as patiently as at first once it has', async () => {
    const { open, fail, heal } = phone();
    const store = await withScarf(given(await open()));
    /** how often it was in vain */
    const asked = async () => {
      const wire = fail('throws');
      wire.blown = 0;
      expect(codesOf(await store.list())).toEqual(['store-not-answering']);
      return wire.blown;
    };
    const [first, second] = [await asked(), await asked()];
    expect(first).toBeGreaterThan(second);
    expect(second).toBe(1);
    heal();
    expect(given(await store.list())).toHaveLength(1);
    expect(await asked()).toBe(first);
    heal();
    store.close();
  });

  it('is healed through another factory where the page’s own stays dead', async () => {
    const sound = new IDBFactory();
    const wire = fuse();
    const dead = new FaultyFactory(sound, wire);
    let asked = 0;
    const spareFactory = async () => {
      asked += 1;
      return sound;
    };
    const options = { name: nextName(), keep: memoryKeep(), pauseMs: 0, spareFactory };
    const store = await withScarf(given(await openStore({ ...options, factory: () => dead as never })), 1);
    Object.assign(wire, { at: wire.step + 1, mishap: 'throws', lasting: true });
    const tapped = given(await nextRow(store, LONG));
    expect(tapped.held).toBeUndefined();
    expect(tapped.place.rows).toBe(2);
    expect(asked).toBe(1);
    expect(given(await nextRow(store, LONG)).place.rows).toBe(3);
    expect(asked).toBe(1);
  });

  it('keeps the row in hand on the screen', async () => {
    const { open, fail } = phone();
    const store = await withScarf(given(await open()), 2);
    given(await store.inHand(LONG));
    fail('throws');
    given(await nextRow(store, LONG));
    const hand = given(await store.inHand(LONG));
    expect(hand.place.rows).toBe(3);
    expect(hand.plan.plan.rows).toHaveLength(30);
    // what was never read cannot be told: that is a fault, not an empty basket
    expect(codesOf(await store.list())).toEqual(['store-not-answering']);
    store.close();
  });
});

describe('a box that vanished', () => {
  it('is missed, not greeted as new, until she restores it or lets it go', async () => {
    const { open, keep, options } = phone();
    const store = await withScarf(given(await open()), 2);
    expect(store.missing()).toBeUndefined();
    const { text } = given(await backupFile(store.box));
    const empty = new IDBFactory();
    const emptied = given(await openStore({ ...options, factory: () => empty }));
    expect(emptied.missing()).toEqual({ garments: 1, entries: 2, backupAt: 0, backupEntries: 0 });
    expect(given(await emptied.list())).toEqual([]);
    given(await importBackup(emptied.box, given(readBackup(text)), 'merge'));
    expect(emptied.missing()).toBeUndefined();
    expect(given(await emptied.place(LONG)).rows).toBe(2);
    const again = new IDBFactory();
    const lost = given(await openStore({ ...options, factory: () => again }));
    expect(lost.missing()?.garments).toBe(1);
    lost.forgetMissing();
    expect(lost.missing()).toBeUndefined();
    expect(keep.length).toBe(1);
  });

  it('is not missed where she deleted the last garment herself', async () => {
    const { open, options, sound } = phone();
    const store = await withScarf(given(await open()));
    given(await store.deleteGarment('scarf'));
    expect(given(await openStore({ ...options, factory: () => sound })).missing()).toBeUndefined();
  });

  it('gets the held rows back with its garments', async () => {
    const { open, fail, options } = phone();
    const store = await withScarf(given(await open()), 2);
    const { text } = given(await backupFile(store.box));
    fail('throws');
    given(await nextRow(store, LONG));
    store.close();
    const empty = new IDBFactory();
    const emptied = given(await openStore({ ...options, factory: () => empty }));
    expect(emptied.held()).toBe(1);
    given(await importBackup(emptied.box, given(readBackup(text)), 'merge'));
    await vi.waitFor(() => expect(emptied.held()).toBe(0));
    expect(given(await emptied.place(LONG)).rows).toBe(3);
  });

  it('dates its last backup outside itself', async () => {
    const { open } = phone({ now: () => 77_000 });
    const store = await withScarf(given(await open()), 3);
    given(await backupFile(store.box)).kept();
    expect(store.sinceBackup()).toEqual({ garments: 1, entries: 3, backupAt: 77_000, backupEntries: 3 });
    given(await nextRow(store, LONG));
    expect(store.sinceBackup()).toMatchObject({ entries: 4, backupEntries: 3 });
  });
});

describe('an older app on a newer database', () => {
  it('reads and saves to a file, and writes nothing', async () => {
    const { sound, options, open, keep } = phone();
    const old = await withScarf(given(await open(sound)), 2);
    old.close();
    const newer = [...migrations, { to: migrations.length + 1, run: () => undefined }];
    given(await openStore({ ...options, factory: () => sound, migrations: newer })).close();
    const store = given(await open(sound));
    expect(store.state()).toBe('read only');
    expect(given(await store.inHand()).place.rows).toBe(2);
    keep.full = true;
    expect(codesOf(await nextRow(store, LONG))).toEqual(['database-newer']);
    expect(codesOf(await store.deleteGarment('scarf'))).toEqual(['database-newer']);
    expect(given(await backupFile(store.box)).garments).toBe(1);
    expect(store.held()).toBe(0);
  });
});

describe('another window', () => {
  const newer = [...migrations, { to: migrations.length + 1, run: () => undefined }];

  it('that is newer gets the database at once, and this one says that it is superseded', async () => {
    const { sound, options, open } = phone();
    const store = await withScarf(given(await open(sound)), 1);
    const states: string[] = [];
    store.onChange((change) => change.kind === 'state' && states.push(store.state()));
    const other = given(await openStore({ ...options, factory: () => sound, migrations: newer }));
    expect(states).toContain('superseded');
    given(await nextRow(other, LONG));
    expect(given(await nextRow(store, LONG)).held?.code).toBe('database-newer');
    expect(given(await other.entriesOf(LONG))).toHaveLength(2);
    given(await other.probe());
    expect(given(await other.place(LONG)).rows).toBe(3);
  });

  it('that is older and does not let go blocks it, which is said; it opens when the other is closed', async () => {
    const { sound, options } = phone({ patienceMs: IMPATIENT_MS });
    await restoreDatabase(sound, options.name, recordedV1);
    const stubborn = await new Promise<IDBDatabase>((resolve) => {
      const request = sound.open(options.name);
      request.onsuccess = () => resolve(request.result as unknown as IDBDatabase);
    });
    expect(codesOf(await openStore({ ...options, factory: () => sound }))).toEqual(['database-blocked']);
    stubborn.close();
    const store = given(await openStore({ ...options, factory: () => sound, patienceMs: 8000 }));
    expect(given(await store.place(LONG)).rows).toBe(5);
  });

  it('hears of every row', async () => {
    const { sound, open } = phone();
    const one = await withScarf(given(await open(sound)));
    const other = given(await open(sound));
    const heard = new Promise((resolve) => {
      other.onChange((change, fromElsewhere) => fromElsewhere && resolve(change));
    });
    given(await nextRow(one, LONG));
    expect(await heard).toEqual({ kind: 'place', key: LONG });
    one.close();
    other.close();
  });
});

describe('a browser that refuses its storage', () => {
  it('is said to refuse, however it does so', async () => {
    const { options } = phone();
    const refusing = {
      open: () => {
        throw new DOMException('denied', 'SecurityError');
      },
    };
    expect(codesOf(await openStore({ ...options, factory: () => undefined }))).toEqual(['storage-refused']);
    expect(codesOf(await openStore({ ...options, factory: () => refusing as never }))).toEqual([
      'storage-refused',
    ]);
  });

  it('holds a database that is not ours, which is left alone', async () => {
    const { sound, options } = phone();
    await new Promise<void>((resolve) => {
      const request = sound.open(options.name, migrations.length);
      request.onupgradeneeded = () => void request.result.createObjectStore('strangers');
      request.onsuccess = () => resolve(request.result.close());
    });
    expect(codesOf(await openStore({ ...options, factory: () => sound }))).toEqual(['database-strange']);
    const names = await new Promise((resolve) => {
      const request = sound.open(options.name);
      request.onsuccess = () => {
        resolve([...request.result.objectStoreNames]);
        request.result.close();
      };
    });
    expect(names).toEqual(['strangers']);
    // nor is it held: whoever it belongs to may put it away
    const away = await new Promise((resolve) => {
      const request = sound.deleteDatabase(options.name);
      request.onblocked = () => resolve('blocked');
      request.onsuccess = () => resolve('away');
    });
    expect(away).toBe('away');
  });
});

describe('a clock that jumps', () => {
  it('changes neither the order of the rows nor the place', async () => {
    const clock = [5e9, 1e9, 9e9, 0, 7e9, 2e9, 3e9];
    let tick = 0;
    const { open } = phone({ now: () => clock[tick++ % clock.length] ?? 0 });
    const store = await withScarf(given(await open()), 6);
    expect(given(await store.entriesOf(LONG)).map((entry) => entry.row)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(given(await store.place(LONG)).rows).toBe(6);
    expect(given(await undoLast(store, LONG)).place.rows).toBe(5);
    expect(given(await nextRow(store, 'scarf/cuff/0/1')).place.rows).toBe(1);
    expect(given(await store.inHand()).place.id).toBe('scarf/cuff/0/1');
  });
});
