import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import type { Page } from 'playwright-core';
import { backupFile } from '../../src/store/backup/export.ts';
import { openStore } from '../../src/store/store.ts';
import { type RecordedDatabase, recordDatabase, restoreDatabase } from '../store/box/recorded-database.ts';
import { told } from '../told.ts';
import { until } from './until.ts';

/** All that lies in the page's box now. */
const recordedOn = (page: Page): Promise<RecordedDatabase> =>
  page.evaluate(`(${recordDatabase.toString()})(indexedDB, document.documentElement.dataset.box)`);

/** What lies in a store of the page's box now, by its key. */
export async function inTheBox(page: Page, store: string): Promise<ReadonlyMap<IDBValidKey, unknown>> {
  const { stores } = await recordedOn(page);
  return new Map(stores[store]?.records.map(({ key, value }) => [key, value]));
}

/** Waits until what was typed or chosen lies in the box: it is written beside the screen. */
export const liesInTheBox = (page: Page, text: string): Promise<unknown> =>
  until(
    () =>
      page.evaluate<boolean>(
        `(${recordDatabase.toString()})(indexedDB, document.documentElement.dataset.box).then((all) => JSON.stringify(all).includes(${JSON.stringify(text)}))`,
      ),
    (lies) => lies,
  );

/** What lies in a box by its kinds: without figures and names made by chance, and each kind of record once. */
const kindsIn = ({ stores }: RecordedDatabase): string =>
  JSON.stringify(
    Object.entries(stores).map(([name, { records }]) => [
      name,
      [...new Set(records.map((one) => JSON.stringify(one).replace(/[\w.-]*\d[\w.-]*/g, '#')))].sort(),
    ]),
  );

/** By what the kinds of what lies in the page's box now are known: to hand all of it over takes longer than to look at it there. */
const kindsOn = (page: Page): Promise<string> =>
  page.evaluate(`(async () => {
    const all = await (${recordDatabase.toString()})(indexedDB, document.documentElement.dataset.box);
    const text = new TextEncoder().encode((${kindsIn.toString()})(all));
    return new Uint8Array(await crypto.subtle.digest('SHA-256', text)).join();
  })()`);

/**
 * Makes a backup of what is on the phone now, in a box like it; gives what keeps it from being whole. `tried`: boxes of
 * which one was made already, by what their kinds are known by.
 */
export async function whatNoBackupHas(page: Page, tried: Set<string>): Promise<string[]> {
  const kinds = await kindsOn(page);
  if (tried.has(kinds)) return [];
  tried.add(kinds);
  const recorded = await recordedOn(page);
  const factory = new IDBFactory();
  await restoreDatabase(factory, 'like it', recorded);
  const store = await openStore({ name: 'like it', factory: () => factory, keep: undefined });
  if (!store.ok) return [told(store.faults)];
  const made = await backupFile(store.value.box);
  store.value.close();
  if (!made.ok) return [told(made.faults)];
  return made.value.without.length === 0 ? [] : [told(made.value.without)];
}
