import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

/**
 * Lets the browser begin a new journal for the database of the page, which must be the app's. What is written last, and
 * what is kept of each transaction so that it can be undone, stays in a journal of up to 4 MB; after every commit all
 * that has been undone with there is gone through, and when the database is opened all of it is read. How full the journal
 * is tells how a device was filled just now, not how full the device is: each is to be measured with a new one.
 */
export async function beginJournal(page: Page, profile: string): Promise<void> {
  const { host } = new URL(page.url());
  const folder = join(profile, 'Default', 'IndexedDB', `http_${host.replace(':', '_')}.indexeddb.leveldb`);
  const journal = () => {
    if (!existsSync(folder)) return undefined;
    // the one before is still there while it is put away
    return readdirSync(folder)
      .filter((name) => name.endsWith('.log'))
      .sort()
      .at(-1);
  };
  const first = journal();
  // a browser that keeps its databases otherwise has no such file
  if (first === undefined) return;
  for (let tries = 0; journal() === first; tries += 1) {
    if (tries > 200) throw new Error('The browser begins no new journal.');
    await page.evaluate(writeNoise);
  }
}

/** Runs in the page: writes 50 kB and takes them back. */
async function writeNoise(): Promise<void> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open('ridgeline');
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const inPhotos = async (work: (photos: IDBObjectStore) => void) => {
    const tx = db.transaction('photos', 'readwrite');
    work(tx.objectStore('photos'));
    await new Promise<void>((resolve, reject) => {
      tx.oncomplete = () => resolve();
      tx.onabort = () => reject(tx.error);
    });
  };
  // so small that it is kept in the database and not beside it, and does not get smaller by packing
  const noise = crypto.getRandomValues(new Uint8Array(50_000));
  await inPhotos((photos) => photos.put({ id: 'bench', garment: 'none', noise }));
  await inPhotos((photos) => photos.clear());
  db.close();
}
