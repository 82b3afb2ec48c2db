import { afterAll, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { until } from './until.ts';
import { workerReady } from './worker.ts';

afterAll(removeProfiles);

it('two copies of the app under one host keep their own garments and their own files, the one below the other', async () => {
  const above = await serve({ root: dist });
  const { port } = above;
  await above.close();
  // the copy below answers first where its folder is named
  const both = async () => {
    const inner = await serve({ root: dist, base: '/copy/' });
    const outer = await serve({
      root: dist,
      port,
      instead: (path, response) => {
        if (!path.startsWith('/copy/')) return false;
        void fetch(`http://localhost:${inner.port}${path}`).then(async (answer) => {
          const type = answer.headers.get('Content-Type') ?? '';
          response.writeHead(answer.status, { 'Content-Type': type });
          response.end(Buffer.from(await answer.arrayBuffer()));
        });
        return true;
      },
    });
    return { url: outer.url, close: () => Promise.all([outer.close(), inner.close()]) };
  };
  const host = await both();
  const phone = await openPhone({ once: true });
  const { page } = phone;
  await page.goto(`${host.url}#/sample`);
  await page.locator('.row-card, main').first().waitFor();
  await workerReady(page);

  await page.goto(`${host.url}copy/`);
  await page.locator('.empty').waitFor();
  // its own worker, not the one of the folder above: what is ready is settled once in the life of a page
  await until(
    () => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.scope),
    (scope) => scope === `${host.url}copy/`,
    30_000,
  );
  await until(
    () => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active?.state),
    (state) => state === 'activated',
    30_000,
  );
  await page.reload();
  await page.locator('.empty').waitFor();
  await workerReady(page);
  // what is kept, and when it was looked through
  await until(
    () => page.evaluate(async () => (await caches.keys()).sort()),
    (names) =>
      names.filter((name) => name.endsWith('/copy/')).length === 2 &&
      names.filter((name) => name.endsWith(`:${port}/`)).length === 2,
  );

  await host.close();
  await page.goto(`${host.url}copy/`);
  await page.locator('.empty').waitFor();
  await page.goto(`${host.url}#/g/sample`);
  await page.getByRole('heading', { name: 'Yarn', exact: true }).waitFor();
  expect(phone.strangers).toEqual([]);
  await phone.close();
});
