import { readFileSync } from 'node:fs';
import { afterAll, expect, it } from 'vitest';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import { garmentToLink } from '../../src/store/share/link.ts';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { settled } from './settled.ts';
import { until } from './until.ts';
import { workerReady } from './worker.ts';

afterAll(removeProfiles);

/** What the system does with a share target: it posts a form to the app. */
const formTo = (address: string) =>
  `<!doctype html><form method="post" enctype="multipart/form-data" action="${address}">
    <input type="file" name="file"><input name="text"><button>Share</button></form>`;

it('a backup, a link and a text that another app shares are taken in, with no network', async () => {
  const host = await serve({ root: dist });
  const other = await serve({
    root: dist,
    instead: (_, response) => {
      response.writeHead(200, { 'Content-Type': 'text/html' });
      response.end(formTo(host.url));
      return true;
    },
  });
  const phone = await openPhone({ once: true });
  const { page } = phone;
  await page.goto(host.url);
  await workerReady(page);
  await host.close();

  await page.goto(other.url);
  await page.locator('[type=file]').setInputFiles({
    name: 'backup.json',
    mimeType: 'application/json',
    buffer: readFileSync('tests/store/golden/backup-v1.json'),
  });
  await page.getByRole('button', { name: 'Share' }).tap();
  // any web page can post one: it is told as what it is, and nothing of it is shown before she asks
  await page.getByText('Another app or a web page has handed over a file').waitFor();
  expect(await page.getByRole('button', { name: 'Unite' }).count()).toBe(0);
  await page.getByRole('button', { name: 'Look at it' }).tap();
  await page.getByRole('button', { name: 'Unite' }).tap();
  await page.getByText('The file is taken in.').waitFor();
  await page.reload();
  await page.locator('.backup').waitFor();
  await settled(page);
  expect(await page.getByRole('button', { name: 'Unite' }).count()).toBe(0);

  // a link of any host: only what stands in its fragment is read
  await page.goto(other.url);
  await page
    .locator('[name=text]')
    .fill(`https://example.org/app/#/open/${await garmentToLink(sampleGarment)}`);
  await page.locator('[type=file]').evaluate((input) => input.remove());
  await page.getByRole('button', { name: 'Share' }).tap();
  await page.getByRole('heading', { level: 1, name: sampleGarment.name }).waitFor();

  // any other text is a pattern's, perhaps: told as what it is, and read where she says so; nothing of it in the address
  await page.goto(other.url);
  await page.locator('[name=text]').fill('BACK Cast on 40 sts.');
  await page.locator('[type=file]').evaluate((input) => input.remove());
  await page.getByRole('button', { name: 'Share' }).tap();
  await page.getByText('A text was handed over').waitFor();
  expect(page.url()).not.toContain('Cast');
  const field = page.getByLabel('The text', { exact: true });
  expect(await field.inputValue()).toBe('');
  await page.getByRole('button', { name: 'Read it here' }).tap();
  await until(
    () => field.inputValue(),
    (text) => text === 'BACK Cast on 40 sts.',
  );

  // an address alone has nothing to read
  await page.goto(other.url);
  await page.locator('[name=text]').fill('https://example.org/pattern');
  await page.locator('[type=file]').evaluate((input) => input.remove());
  await page.getByRole('button', { name: 'Share' }).tap();
  await page.getByText('That is the address of a page').waitFor();

  // a text file is no backup, but may be a pattern's
  await page.goto(other.url);
  await page.locator('[type=file]').setInputFiles({
    name: 'vest.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from('VEST\nCast on 60 sts.'),
  });
  await page.getByRole('button', { name: 'Share' }).tap();
  await page.getByRole('button', { name: 'Look at it' }).tap();
  await page.getByRole('button', { name: 'Read it as a pattern’s text' }).tap();
  await page.getByRole('button', { name: 'Read it instead of what stands here' }).tap();
  await until(
    () => field.inputValue(),
    (text) => text.startsWith('VEST'),
  );
  expect(phone.strangers).toEqual([]);
  await phone.close();
  await other.close();
});
