import { IDBFactory } from 'fake-indexeddb';
import { expect, it } from 'vitest';
import { exportAll } from '../../../src/store/backup/export.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { migrations } from '../../../src/store/box/schema.ts';
import { openStore, type Store } from '../../../src/store/store.ts';
import { memoryKeep } from '../beside/memory-keep.ts';
import { codesOf, given, LONG, nextRow, planOf, scarf, undoLast } from '../scenario.ts';

/**
 * A window of the app from before database 3 meets a box that this one has written: as its door knows two migrations.
 * (The app as it stood before them was tried with the same steps, and answered the same.)
 */

const factory = new IDBFactory();
const keep = memoryKeep();
const options = { factory: () => factory, name: 'box', keep };
const older = async () => given(await openStore({ ...options, migrations: migrations.slice(0, 2) }));
const draft = { version: 2, garment: 'scarf', at: 5, form: { name: 'Scarf' }, base: scarf().garment };

/** The box as the older window found it. */
const held = async (store: Store) => {
  const { garments, plans, entries, settings } = given(await exportAll(store.box));
  return { garments, plans, entries, settings };
};

it('an older window may read a newer box, and writes nothing into it: what is tapped there is kept aside and written by the newer', async () => {
  const first = await older();
  const { garment, plans } = scarf();
  given(await first.saveGarment(garment, plans));
  given(await nextRow(first, LONG));

  const newer = given(await openStore(options));
  expect(first.state()).toBe('superseded');
  given(await newer.setSetting('draft scarf', draft));
  given(await newer.rework([{ key: LONG, plan: planOf('scarf', 'long', 20), from: 1 }]));
  given(await newer.changeGarment('scarf', (was) => ({ ...was, notes: 'dry flat' })));
  const before = await held(newer);
  newer.close();
  first.close();

  const window = await older();
  expect(window.state()).toBe('read only');
  expect(given(await window.inHand(LONG)).place).toMatchObject({ rows: 1, total: 20 });
  const refused = [
    await window.setSetting('draft scarf', null),
    await window.changeGarment('scarf', (was) => ({ ...was, notes: '' })),
    await window.rework([{ key: LONG, plan: planOf('scarf', 'long', 40) }]),
    await window.deleteGarment('scarf'),
  ];
  expect(refused.map(codesOf)).toEqual(refused.map(() => ['database-newer']));
  expect(given(await nextRow(window, LONG)).held?.code).toBe('database-newer');
  expect(given(await window.settings())['draft scarf']).toEqual(draft);
  window.close();

  const again = given(await openStore(options));
  const after = await held(again);
  expect(given(await again.place(LONG))).toMatchObject({ rows: 2, total: 20 });
  expect({ ...after, entries: after.entries.length }).toEqual({
    ...before,
    entries: before.entries.length + 1,
  });
  given(await undoLast(again, LONG));
  again.close();
});

it('a file that an older window makes of a newer box bears the older number, and is read with all that is in it', async () => {
  const store = given(await openStore({ ...options, name: 'other' }));
  const { garment, plans } = scarf();
  given(await store.saveGarment(garment, plans));
  given(await store.changeGarment('scarf', (was) => ({ ...was, notes: 'dry flat' })));
  given(await nextRow(store, LONG));
  const file = given(await exportAll(store.box));
  expect(given(readBackup(JSON.stringify({ ...file, version: 1 })))).toEqual(file);
  store.close();
});
