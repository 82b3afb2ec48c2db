import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles, walkedInTurn } from './drive.ts';
import { readsPattern } from './reads-pattern.ts';
import { until } from './until.ts';
import { cachedPaths, precacheList, runningVersion, workerReady } from './worker.ts';

afterAll(removeProfiles);

/**
 * What no page asks for: the worker, the build's own notes, what is for installing or for readers elsewhere. And what
 * only who wants it asks for: the words of a language other than English (./languages.test.ts), what reads a PDF or a camera.
 */
const notForOffline =
  /^sw\.js$|^\.vite\/|words-(?!en)\w+-|^assets\/wanted-|\.txt$|^pictures\/|^icons\/(?!icon-192).*\.png$|\.schema\.json$/;

/** Everything that a page may ask for. */
const shippedFiles = () =>
  readdirSync(dist, { recursive: true, encoding: 'utf8', withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(dist, join(entry.parentPath, entry.name)))
    .filter((path) => !notForOffline.test(path))
    .sort();

describe.each(['/', '/knits/ridgeline/'])('served under %s', (base) => {
  it('keeps every file for offline use after one visit, and asks nobody else for anything', async () => {
    const host = await serve({ root: dist, base });
    const phone = await openPhone({ once: true });
    await phone.page.goto(host.url);
    await workerReady(phone.page);

    expect(precacheList(dist)).toEqual(shippedFiles());
    expect(await cachedPaths(phone.page)).toEqual(shippedFiles());
    expect(phone.strangers).toEqual([]);
    expect(phone.complaints).toEqual([]);
    await phone.close();
    await host.close();
  });
});

describe('without a network', () => {
  it('starts from cold, again and again, the browser killed in between', async () => {
    const host = await serve({ root: dist });
    const first = await openPhone();
    await first.page.goto(host.url);
    await workerReady(first.page);
    const version = await runningVersion(first.page);
    await first.kill();
    await host.close();

    for (const _ of walkedInTurn(['first', 'second', 'third'])) {
      const phone = await openPhone({ profile: first.profile });
      await phone.page.goto(`${host.url}#/`);
      await phone.page.waitForSelector('#app > *');
      expect(await runningVersion(phone.page)).toBe(version);
      expect(phone.complaints).toEqual([]);
      await phone.kill();
    }
  });
});

describe('from the first visit on', () => {
  it.each([
    ['in a worker of the page', false],
    ['by the page itself, where it may have none', true],
  ])(
    'with no network a pattern is read %s, and a language that was chosen before is chosen again',
    async (_, alone) => {
      const host = await serve({ root: dist });
      const phone = await openPhone();
      const { page } = phone;
      if (alone) await page.addInitScript(() => Reflect.deleteProperty(globalThis, 'Worker'));
      await page.goto(`${host.url}#/sample`);
      await workerReady(page);
      await page.goto(`${host.url}#/settings`);
      for (const [language, title] of [
        ['Deutsch', 'Einstellungen'],
        ['English', 'Settings'],
      ] as const) {
        // not `check`: it is chosen only once its words are there
        await page.getByRole('radio', { name: language }).click({ force: true });
        await page.getByRole('heading', { name: title, level: 1 }).waitFor();
      }
      await until(
        () => page.evaluate(async () => (await caches.keys()).some((name) => name.startsWith('wanted-'))),
        (kept) => kept,
      );
      await host.close();
      // the page of the very first visit has no worker that answers it
      await page.goto(`${host.url}#/read`);
      await page.reload();
      await readsPattern(page);
      await page.goto(`${host.url}#/settings`);
      await page.getByRole('radio', { name: 'Deutsch' }).click({ force: true });
      await page.getByRole('heading', { name: 'Einstellungen', level: 1 }).waitFor();
      await page.goto(`${host.url}#/g/sample`);
      await page.getByRole('heading', { name: 'Garn', exact: true }).waitFor();
      expect(phone.strangers).toEqual([]);
      expect(phone.complaints).toEqual([]);
      await phone.close();
    },
  );
});

const losePage = (page: Page) =>
  page.evaluate(async () => {
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const key of await cache.keys()) if (key.url.includes('index.html')) await cache.delete(key);
    }
  });

describe('an offline copy that lost its page', () => {
  it('is made whole by the next start with a network', async () => {
    const host = await serve({ root: dist });
    const phone = await openPhone({ once: true });
    await phone.page.goto(host.url);
    await workerReady(phone.page);
    // the look that each start takes after what is kept may be under way still, and mends it at once
    await until(
      async () => {
        await losePage(phone.page);
        return cachedPaths(phone.page);
      },
      (paths) => !paths.includes('index.html'),
    );

    await phone.page.reload();
    await until(
      () => cachedPaths(phone.page),
      (paths) => paths.includes('index.html'),
    );
    await workerReady(phone.page);
    await host.close();
    await phone.page.reload();
    await phone.page.waitForSelector('#app > *');
    expect(await cachedPaths(phone.page)).toEqual(shippedFiles());
    await phone.close();
  });
});
