import { IDBDatabase, IDBFactory } from 'fake-indexeddb';
import { describe, expect, it, vi } from 'vitest';
import type { Change } from '../../../src/store/box/changes.ts';
import { openDoor } from '../../../src/store/box/door.ts';
import { pause } from '../../../src/store/box/in-time.ts';
import { migrations } from '../../../src/store/box/schema.ts';
import { openStore } from '../../../src/store/store.ts';
import { memoryKeep } from '../beside/memory-keep.ts';
import { codesOf, freshStore, given, nextName, scarf } from '../scenario.ts';
import { FaultyFactory, fuse } from './faulty-factory.ts';

describe('a box that two windows open for the first time at once', () => {
  it('has one device, whose letters both have', async () => {
    const factory = new IDBFactory();
    const name = nextName();
    const open = async () => given(await openStore({ factory: () => factory, name, keep: undefined }));
    const windows = await Promise.all([open(), open(), open()]);
    const [device] = windows.map(({ box }) => box.device);
    expect(device).toMatch(/^[0-9a-z]{8}$/);
    for (const { box } of windows) expect(box.device).toBe(device);
    const [first] = windows;
    expect(given(await first.settings())).toMatchObject({ device });
    for (const window of windows) window.close();
  });
});

describe('an opening that answers too late', () => {
  it('is closed again, so that it holds up no newer version', async () => {
    const inner = new IDBFactory();
    const name = nextName();
    let isSlow = true;
    const held: (() => void)[] = [];
    const slow = {
      open: (...asked: Parameters<IDBFactory['open']>) => {
        const request = inner.open(...asked);
        if (!isSlow) return request;
        // its success is told only once the door has given up
        Object.defineProperty(request, 'onsuccess', {
          set: (told: () => void) => {
            request.addEventListener('success', () => held.push(told));
          },
        });
        return request;
      },
    } as unknown as IDBFactory;
    const door = openDoor({
      factory: () => slow,
      name,
      migrations,
      patienceMs: () => 5,
      longPatienceMs: () => 5,
      pauseMs: 0,
      onState: () => undefined,
    });
    expect(codesOf(await door.read(['garments'], (tx) => tx.objectStore('garments').count()))).toEqual([
      'store-not-answering',
    ]);
    isSlow = false;
    for (const tell of held) tell();
    await pause(0);
    const deleted = await new Promise<string>((done) => {
      const request = inner.deleteDatabase(name);
      request.onsuccess = () => done('deleted');
      request.onblocked = () => done('blocked');
    });
    expect(deleted).toBe('deleted');
  });
});

describe('a garment that is written or deleted', () => {
  it('is told by its id, and the number of garments is known beside the box', async () => {
    const store = await freshStore({ keep: memoryKeep() });
    const heard: Change[] = [];
    const stop = store.onChange((change) => heard.push(change));
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    const hat = scarf('hat');
    given(await store.saveGarment(hat.garment, hat.plans));
    expect(store.box.sentinel.read().garments).toBe(2);
    given(await store.changeGarment('hat', (was) => ({ ...was, notes: 'warm' })));
    given(await store.deleteGarment('scarf'));
    expect(codesOf(await store.changeGarment('scarf', (was) => was))).toEqual(['no-such-garment']);
    expect(store.box.sentinel.read().garments).toBe(1);
    stop();
    given(await store.deleteGarment('hat'));
    expect(heard).toEqual(['scarf', 'hat', 'hat', 'scarf'].map((id) => ({ kind: 'garment', id })));
    store.close();
  });
});

describe('a box that cannot be opened', () => {
  it('lets go of its database', async () => {
    const sound = new IDBFactory();
    const name = nextName();
    const closed = vi.spyOn(IDBDatabase.prototype, 'close');
    // there is no room for the device's letters
    const open = (at: number) =>
      openStore({
        factory: () => new FaultyFactory(sound, { ...fuse(), at, lasting: true, mishap: 'has no room' }),
        spareFactory: async () => undefined,
        name,
        keep: undefined,
        pauseMs: 0,
      });
    const refused = await open(5);
    expect(codesOf(refused)).toEqual(['storage-full']);
    expect(closed).toHaveBeenCalled();
    closed.mockRestore();
  });
});
