import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import type { Knitter } from './knitter.ts';
import type { Sight } from './sights.ts';

/** States that come of what lies in the box: of another device, of a full disk, of a file, of something broken. */

const make = 'sample/back/0/1';
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).tap();

/** Loaded anew at that address: what stood in the page before is gone. */
async function fresh(page: Page, knitter: Knitter, hash: string): Promise<void> {
  await knitter.open(hash);
  await page.reload();
}

/** The make with rows left in it, whatever was seen before. */
async function inHand(page: Page, knitter: Knitter): Promise<void> {
  await fresh(page, knitter, `#/k/${make}?row=40`);
  await press(page, 'Make row 40 the next');
  await knitter.pad.waitFor();
}

type Entry = Readonly<Record<string, unknown>> & { readonly seq?: number; readonly row?: number };

/** An entry of the make past the app, as another window or device writes it; `place`: what it makes of the place. */
const written = (page: Page, entry: Entry, place: 'next row' | 'another way') =>
  page.evaluate(
    async ({ key, entry: given, place: becomes }) => {
      const answer = <T>(request: IDBRequest<T>): Promise<T> =>
        new Promise((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error);
        });
      const db = await answer(indexedDB.open(document.documentElement.dataset.box ?? ''));
      const tx = db.transaction(['log', 'places'], 'readwrite');
      const was = await answer(tx.objectStore('places').get(key));
      const next = { seq: was.seq + 1, row: was.rows + 1 };
      tx.objectStore('log').put({ make: key, at: was.at, plan: was.plan, ...next, ...given });
      const moved = { rows: next.row, seq: next.seq, touched: was.touched + 1 };
      tx.objectStore('places').put({ ...was, ...(becomes === 'next row' ? moved : { ways: 1 }) });
      await new Promise((resolve) => {
        tx.oncomplete = resolve;
      });
      db.close();
    },
    { key: make, entry, place },
  );

const setting = (page: Page, name: string, value: unknown) =>
  page.evaluate(
    async ({ name: key, value: stored }) => {
      const db = await new Promise<IDBDatabase>((resolve) => {
        const opening = indexedDB.open(document.documentElement.dataset.box ?? '');
        opening.onsuccess = () => resolve(opening.result);
      });
      const tx = db.transaction('settings', 'readwrite');
      if (stored === undefined) tx.objectStore('settings').delete(key);
      else tx.objectStore('settings').put(stored, key);
      await new Promise((resolve) => {
        tx.oncomplete = resolve;
      });
      db.close();
    },
    { name, value },
  );

/** Of another device; without its photo, which a box read in Node would not give back as a picture. */
const otherBackup = (): Buffer => {
  const file = JSON.parse(readFileSync('tests/store/golden/backup-v2.json', 'utf8')) as object;
  return Buffer.from(JSON.stringify({ ...file, photos: [] }));
};

const choose = async (page: Page, knitter: Knitter) => {
  await fresh(page, knitter, '#/backup');
  await page
    .getByLabel('Choose the file')
    .first()
    .setInputFiles({ name: 'backup.json', mimeType: 'application/json', buffer: otherBackup() });
  await page.getByRole('button', { name: 'Unite', exact: true }).waitFor();
};

export const sightsOfTheBox: readonly Sight[] = [
  {
    name: 'row done elsewhere',
    screen: 'knitting',
    come: async (page, knitter) => {
      await inHand(page, knitter);
      await written(page, { id: 'zzzzzzzz-window', kind: 'row' }, 'next row');
      await knitter.pad.tap();
      await page.locator('.screen-foot .notice').waitFor();
    },
  },
  {
    name: 'row kept aside',
    screen: 'knitting',
    come: async (page, knitter) => {
      await inHand(page, knitter);
      await page.evaluate(() => {
        for (const write of ['put', 'add'] as const)
          IDBObjectStore.prototype[write] = () => {
            throw new DOMException('no room', 'QuotaExceededError');
          };
      });
      await knitter.pad.tap();
      await page.getByText('kept beside').or(page.locator('.screen-foot .notice')).first().waitFor();
    },
  },
  {
    name: 'two ways',
    screen: 'knitting',
    come: async (page, knitter) => {
      await inHand(page, knitter);
      await written(page, { id: '00000000-tablet', kind: 'place', seq: 1, row: 3 }, 'another way');
      await page.reload();
      await page.getByRole('button', { name: 'Two ways here: choose' }).waitFor();
    },
  },
  {
    name: 'two ways to choose from',
    screen: 'knitting',
    come: async (page) => {
      await press(page, 'Two ways here: choose');
      await page.locator('dialog[open]').waitFor();
    },
  },
  { name: 'backup looked at', screen: 'backup', come: choose },
  {
    name: 'what goes where everything is replaced',
    screen: 'backup',
    come: async (page) => {
      await press(page, 'Replace everything');
      await page.locator('dialog[open]').waitFor();
    },
  },
  {
    name: 'way back on the workbasket',
    screen: 'workbasket',
    come: async (page, knitter) => {
      await choose(page, knitter);
      await press(page, 'Unite');
      await page.getByText('The file is taken in.').waitFor();
      await fresh(page, knitter, '#/');
      await page.getByRole('button', { name: 'Take it back' }).waitFor();
    },
  },
  {
    name: 'file handed over',
    screen: 'backup',
    come: async (page, knitter) => {
      await page.evaluate(async () => {
        const cache = await caches.open(`shared-${new URL('./', document.baseURI).href}`);
        await cache.put('file', new Response('{}'));
      });
      await fresh(page, knitter, '#/backup');
      await page.getByRole('button', { name: 'Look at it' }).waitFor();
    },
  },
  {
    name: 'draft that cannot be read',
    screen: 'newGarment',
    come: async (page, knitter) => {
      await setting(page, 'draft new', { version: 2, garment: 'odd', at: 1, form: { name: 5 } });
      await fresh(page, knitter, '#/new');
      await page.getByRole('alert').waitFor();
    },
  },
];
