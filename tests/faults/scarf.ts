import { IDBFactory } from 'fake-indexeddb';
import type { Page } from 'playwright-core';
import { openStore } from '../../src/store/store.ts';
import { recordDatabase } from '../store/box/recorded-database.ts';
import { given, scarf } from '../store/scenario.ts';

/** The scarf's one make: a garment with as many rows as a test needs. */
export const scarfMake = 'scarf/long/0/1';

const kept = ['garments', 'summaries', 'plans', 'places'] as const;

/** Puts a scarf of so many rows into the browser's database, as the store itself would have written it. */
export async function layScarf(page: Page, rows: number): Promise<void> {
  const factory = new IDBFactory();
  const store = given(await openStore({ name: 'scarf', factory: () => factory, keep: undefined }));
  const { garment, plans } = scarf('scarf', rows);
  given(await store.saveGarment(garment, plans));
  store.close();
  const { stores } = await recordDatabase(factory, 'scarf');
  const records = kept.map((name) => ({
    name,
    values: stores[name]?.records.map(({ value }) => value) ?? [],
  }));
  await page.evaluate(async (all) => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('ridgeline');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const tx = db.transaction(
      all.map(({ name }) => name),
      'readwrite',
    );
    for (const { name, values } of all) for (const value of values) tx.objectStore(name).put(value);
    await new Promise((resolve, reject) => {
      tx.oncomplete = resolve;
      tx.onabort = () => reject(tx.error);
    });
    db.close();
  }, records);
}
