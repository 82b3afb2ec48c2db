import { afterAll, expect, it, vi } from 'vitest';
import { words } from '../../src/words/en/notices.ts';
import { storedOf } from '../faults/stored.ts';
import { sampleBack } from '../faults/tapping.ts';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { knitterAt } from './knitter.ts';

/** Two starts and a disk; a machine that does much else beside needs many times as long. */
vi.setConfig({ testTimeout: 180_000 });

afterAll(removeProfiles);

it('rows tapped while the disk is full lie beside it, are told, outlast a reload, and go in when there is room', async () => {
  const host = await serve({ root: dist });
  const first = await openPhone();
  await knitterAt(first.page, host.url).openSample();
  await knitterAt(first.page, host.url).knit(1);
  await first.close();
  // the browser remembers for half a minute how much room there was: the disk fills up while it is closed
  const phone = await openPhone({ profile: first.profile });
  const { page } = phone;
  const { origin } = new URL(host.url);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
  const knitter = knitterAt(page, host.url);
  await knitter.openSample();
  await knitter.knit(2);
  const notice = page.getByText(words.held);
  await notice.waitFor();
  await page.getByText(words.heldFull).waitFor();
  expect((await storedOf(page, sampleBack)).place?.rows).toBe(1);

  await page.reload();
  await knitter.shows(4);
  await notice.waitFor();
  await knitter.pad.tap();
  await knitter.shows(5);
  expect((await storedOf(page, sampleBack)).place?.rows).toBe(1);

  await devtools.send('Storage.overrideQuotaForOrigin', { origin });
  await expect.poll(async () => (await storedOf(page, sampleBack)).place?.rows, { timeout: 60_000 }).toBe(4);
  await notice.waitFor({ state: 'detached' });
  await knitter.shows(5);
  await phone.close();
  await host.close();
});
