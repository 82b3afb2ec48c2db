import { readFileSync } from 'node:fs';
import type { ServerResponse } from 'node:http';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { readsPattern } from './reads-pattern.ts';
import { until } from './until.ts';
import { precacheList, workerReady } from './worker.ts';

afterAll(removeProfiles);

/** What a host that knows no better answers for any address. */
const answerPage = (response: ServerResponse, html = '<!doctype html><title>Welcome</title>') => {
  response.writeHead(200, { 'Content-Type': 'text/html' });
  response.end(html);
  return true;
};

/** Puts something else in the place of a file that is kept for offline use. */
const garble = (page: Page, file: string, instead: string) =>
  page.evaluate(
    async ([file, instead]) => {
      let found = 0;
      for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        for (const request of await cache.keys()) {
          if (!request.url.includes(file)) continue;
          found += 1;
          await cache.put(request, new Response(instead, { headers: { 'Content-Type': 'text/javascript' } }));
        }
      }
      if (found === 0) throw new Error(`${file} is not kept.`);
    },
    [file, instead] as const,
  );

const started = (page: Page) => page.locator('.empty').waitFor();
const words = (page: Page) => page.getByText('Ridgeline could not start');

async function installed() {
  const host = await serve({ root: dist });
  const phone = await openPhone({ once: true });
  await phone.page.goto(host.url);
  await workerReady(phone.page);
  return { host, phone, page: phone.page };
}

describe('a wrong answer of the host on the first visit', () => {
  it.each([
    ['the settings', '/handing-on-', '#/settings', (page: Page) => page.getByRole('radio').first().waitFor()],
    ['the reader of patterns', '/worker-', '#/read', readsPattern],
  ])(
    'for %s is not kept: the next start has all, and it works without a network',
    async (_, file, at, works) => {
      let wrong = 0;
      const host = await serve({
        root: dist,
        instead: (path, response) => {
          if (!path.includes(file) || wrong > 1) return false;
          wrong += 1;
          // and the browser is told to keep that for a year
          response.setHeader('Cache-Control', 'public, max-age=31536000, immutable');
          return answerPage(response);
        },
      });
      const phone = await openPhone({ once: true });
      const { page } = phone;
      await page.goto(host.url);
      await until(
        () => Promise.resolve(wrong),
        (times) => times === 2,
      );
      await until(
        () =>
          page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.installing ?? null),
        (installing) => installing === null,
      );
      await page.reload();
      await workerReady(page);
      await host.close();
      await page.goto(host.url + at);
      await works(page);
      await phone.close();
    },
  );
});

describe('a page that cannot start', () => {
  it.each([
    ['emptied', ''],
    ['garbled', 'const a = ;'],
  ])('since its first script is %s on this phone heals itself with a network', async (_, instead) => {
    const { host, phone, page } = await installed();
    await garble(page, 'row-in-hand-', instead);
    await page.reload();
    await started(page);
    expect(await words(page).isVisible()).toBe(false);
    await host.close();
    await page.goto(host.url);
    await started(page);
    await phone.close();
  });

  it('says so in words without a network, in both languages, and heals once there is one', async () => {
    const { host, phone, page } = await installed();
    const { port } = host;
    await garble(page, 'row-in-hand-', '');
    await host.close();
    await page.reload();
    await words(page).waitFor();
    await page.getByText('Ridgeline konnte nicht starten').waitFor();
    const again = await serve({ root: dist, port });
    await page.getByRole('link', { name: 'try again' }).tap();
    await started(page);
    await phone.close();
    await again.close();
  });

  it('since a proxy gives last week’s page asks for it anew, and says so in words where it comes again', async () => {
    const page1 = readFileSync(join(dist, 'index.html'), 'utf8').replaceAll(
      'row-in-hand-',
      'row-in-hand-OLD-',
    );
    let old = 1;
    const host = await serve({
      root: dist,
      instead: (path, response) => {
        if (path !== '/' || old === 0) return false;
        old -= 1;
        return answerPage(response, page1);
      },
    });
    const phone = await openPhone({ once: true });
    await phone.page.goto(host.url);
    await started(phone.page);
    await phone.close();

    old = Number.POSITIVE_INFINITY;
    const other = await openPhone({ once: true });
    await other.page.goto(host.url);
    await words(other.page).waitFor();
    await other.close();
    await host.close();
  });
});

it('a file that is garbled on this phone is mended before it is wanted, once a day', async () => {
  const { host, phone, page } = await installed();
  const file = precacheList(dist).find((path) => path.includes('handing-on-') && path.endsWith('.js')) ?? '';
  const text = () =>
    page.evaluate(async (path) => (await caches.match(new URL(path, document.baseURI).href))?.text(), file);
  const whole = await text();
  const lookedThrough = () =>
    page.evaluate(async () => {
      const { scope } = await navigator.serviceWorker.ready;
      return (await caches.match(`${scope}looked-through`)) !== undefined;
    });
  await until(lookedThrough, (done) => done);
  await garble(page, file, '');
  // a day later
  await page.evaluate(async () => {
    const { scope } = await navigator.serviceWorker.ready;
    const cache = await caches.open(`looked-through-${scope}`);
    await cache.put(`${scope}looked-through`, new Response(String(Date.now() - 90_000_000)));
  });
  await page.reload();
  await until(text, (now) => now === whole);
  await host.close();
  await page.goto(`${host.url}#/settings`);
  await page.getByRole('radio', { name: 'Deutsch' }).waitFor();
  await phone.close();
});
