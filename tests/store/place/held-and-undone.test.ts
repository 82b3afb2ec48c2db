import { IDBFactory } from 'fake-indexeddb';
import { expect, it } from 'vitest';
import { openStore } from '../../../src/store/store.ts';
import { memoryKeep } from '../beside/memory-keep.ts';
import { FaultyFactory, fuse } from '../box/faulty-factory.ts';
import { given, LONG, nextName, nextRow, scarf } from '../scenario.ts';

it('a row that was held, written and then undone in another window is counted when it is knitted again', async () => {
  const sound = new IDBFactory();
  const wire = fuse();
  const name = nextName();
  const options = { name, keep: memoryKeep(), pauseMs: 0, spareFactory: async () => undefined };
  const other = given(await openStore({ ...options, factory: () => sound }));
  const { garment, plans } = scarf();
  given(await other.saveGarment(garment, plans));
  for (let i = 0; i < 3; i += 1) given(await nextRow(other, LONG));
  const store = given(
    await openStore({ ...options, factory: () => new FaultyFactory(sound, wire) as never }),
  );
  given(await store.place(LONG));
  Object.assign(wire, { at: wire.step + 1, lasting: true });
  expect(given(await store.finishRow(LONG, 4)).held).toBeDefined();
  wire.at = undefined;
  given(await store.probe());
  expect(given(await other.place(LONG)).rows).toBe(4);
  given(await other.undo(LONG, 4));
  given(await store.finishRow(LONG, 4));
  expect(given(await other.place(LONG)).rows).toBe(4);
  for (const one of [store, other]) one.close();
});
