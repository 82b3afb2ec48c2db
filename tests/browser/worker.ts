import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

/** What tests ask of the service worker and of its caches. */

/** Waits until the worker of this page runs, all its files stored. */
export async function workerReady(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    if (active === null) throw new Error('No worker became active.');
    if (active.state === 'activated') return;
    await new Promise<void>((resolve) => {
      active.addEventListener('statechange', () => active.state === 'activated' && resolve());
    });
  });
}

/** Asks the host for a newer version, as the app does each hour, and waits until one is there to be taken. */
export async function awaitUpdate(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
  });
  await page.waitForFunction(async () => {
    const registration = await navigator.serviceWorker.ready;
    return registration.waiting?.state === 'installed';
  });
}

/** Addresses kept for offline use, below the app's folder, in order. */
export async function cachedPaths(page: Page): Promise<string[]> {
  const urls = await page.evaluate(async () => {
    const keys = await Promise.all(
      (await caches.keys()).map(async (name) => (await caches.open(name)).keys()),
    );
    return keys.flat().map(({ url }) => url.slice(new URL('./', document.baseURI).href.length));
  });
  return urls.map((url) => url.replace(/\?__WB_REVISION__=.*$/, '')).sort();
}

/** The list of files that the built worker keeps. */
export function precacheList(dist: string): string[] {
  const worker = readFileSync(join(dist, 'sw.js'), 'utf8');
  return [...worker.matchAll(/url:"([^"]+)",revision:/g)].map((match) => match[1] ?? '').sort();
}

/** The version of the app that a window runs. */
export const runningVersion = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => document.documentElement.dataset.version);
