import { afterAll, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { laterFilesKept, laterList, precacheList, workerReady } from './worker.ts';

afterAll(removeProfiles);

it('a language chosen and a pattern copied with no network are on the phone: they come after the first screen', async () => {
  const later = laterList(dist);
  expect(later).toHaveLength(2);
  for (const name of later) expect(precacheList(dist)).not.toContain(name);
  const host = await serve({ root: dist });
  const phone = await openPhone();
  const { page } = phone;
  await page.goto(`${host.url}#/sample`);
  await workerReady(page);
  await laterFilesKept(page);
  await page.goto(`${host.url}#/settings`);
  await page.reload();
  await host.close();

  await page.goto(`${host.url}#/read`);
  await page.getByRole('textbox').first().waitFor();
  await page.goto(`${host.url}#/settings`);
  await page.getByRole('radio', { name: 'Deutsch' }).check({ force: true });
  await page.goto(`${host.url}#/g/sample`);
  await page.getByRole('heading', { name: 'Garn', exact: true }).waitFor();
  expect(phone.strangers).toEqual([]);
  await phone.close();
});
