import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { until } from './until.ts';
import { precacheList, workerReady } from './worker.ts';

afterAll(removeProfiles);

it('a language chosen with no network is on the phone: its words come after the first screen', async () => {
  const words = readdirSync(join(dist, 'assets')).filter((name) => name.startsWith('words-de-'));
  expect(words).toHaveLength(1);
  expect(precacheList(dist)).not.toContain(`assets/${words[0]}`);
  const host = await serve({ root: dist });
  const phone = await openPhone();
  const { page } = phone;
  await page.goto(`${host.url}#/sample`);
  await workerReady(page);
  await until(
    () => page.evaluate(async () => (await (await caches.open('languages')).keys()).length),
    (count) => count === 1,
  );
  await page.goto(`${host.url}#/settings`);
  await page.reload();
  await host.close();

  await page.getByRole('radio', { name: 'Deutsch' }).check({ force: true });
  await page.goto(`${host.url}#/g/sample`);
  await page.getByRole('heading', { name: 'Garn' }).waitFor();
  expect(phone.strangers).toEqual([]);
  await phone.close();
});
