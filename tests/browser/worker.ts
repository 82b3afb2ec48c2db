import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { until } from './until.ts';

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

/**
 * Asks the host for a newer version, as the app does each hour; gives what became of it. Asked twice: the browser lets a
 * look that is under way already answer for the first, and that one may have begun at the host before this one.
 */
export const askForUpdate = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const { ready } = navigator.serviceWorker;
    const ask = async () =>
      (await ready).update().then(
        () => 'asked',
        (error: unknown) => String(error),
      );
    await ask();
    return ask();
  });

/** Asks for a newer version and waits until one is there to be taken. */
export async function awaitUpdate(page: Page): Promise<void> {
  const said = await askForUpdate(page);
  if (said !== 'asked') throw new Error(said);
  await until(
    () => workerStates(page),
    ({ installing, waiting }) => installing === 'none' && waiting === 'installed',
  );
}

/** Takes the waiting version as another window does that asked for it. */
export async function takeElsewhere(page: Page): Promise<void> {
  await page.evaluate(async () => {
    (await navigator.serviceWorker.ready).waiting?.postMessage({ type: 'SKIP_WAITING' });
  });
  await settled(page);
}

/** Waits until one worker runs and none is on its way. */
export async function settled(page: Page): Promise<void> {
  await until(
    () => workerStates(page),
    ({ installing, waiting, active }) =>
      installing === 'none' && waiting === 'none' && active === 'activated',
  );
}

/** The states of the three places that a worker can have. */
export const workerStates = (page: Page): Promise<Record<'installing' | 'waiting' | 'active', string>> =>
  page.evaluate(async () => {
    const { installing, waiting, active } = await navigator.serviceWorker.ready;
    const state = (worker: ServiceWorker | null) => worker?.state ?? 'none';
    return { installing: state(installing), waiting: state(waiting), active: state(active) };
  });

/** Addresses kept for offline use, below the app's folder, in order. */
export async function cachedPaths(page: Page): Promise<string[]> {
  const urls = await page.evaluate(async () => {
    const keys = await Promise.all(
      (await caches.keys())
        .filter((name) => name.includes('precache'))
        .map(async (name) => (await caches.open(name)).keys()),
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
