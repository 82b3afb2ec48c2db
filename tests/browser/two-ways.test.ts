import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { violations } from './axe.ts';
import { openPhone, type Phone, removeProfiles } from './drive.ts';
import { hiddenAt } from './hidden-at.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';

afterAll(removeProfiles);

const pictures = process.env.RIDGELINE_PICTURES;
const picture = async (page: Page, name: string) => {
  if (pictures) await page.screenshot({ path: `${pictures}/${name}.png`, fullPage: true });
};

/** The whole box in a file, as she hands it over. */
async function backupOf({ page }: Phone, url: string): Promise<Buffer> {
  await page.goto(`${url}#/backup`);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Make a backup' }).tap(),
  ]);
  return readFileSync(await download.path());
}

async function chooseFile({ page }: Phone, url: string, buffer: Buffer): Promise<void> {
  await page.goto(`${url}#/backup`);
  const choose = page.getByLabel('Choose the file').first();
  await choose.setInputFiles({ name: 'backup.json', mimeType: 'application/json', buffer });
  await page.getByRole('button', { name: 'Unite' }).waitFor();
}

async function unite(phone: Phone, url: string, buffer: Buffer): Promise<void> {
  await chooseFile(phone, url, buffer);
  await phone.page.getByRole('button', { name: 'Unite' }).tap();
  await phone.page.getByText('The file is taken in.').waitFor();
}

/** Plans the rest anew from so many stitches, and knits on by that. */
async function planAnew({ page }: Phone, stitches: number, rows: number): Promise<void> {
  const make = page.url();
  await page.goto(`${make}/rework`);
  await page.getByText('The count stays as it is', { exact: true }).tap();
  await page.getByRole('textbox', { name: 'Stitches really on the needle' }).fill(String(stitches));
  await page.getByRole('button', { name: 'Knit by this plan' }).tap();
  await page.getByText('From here on by the new plan.').waitFor();
  await page.goto(make);
  await knitterAt(page, '').pad.waitFor();
  await knitterAt(page, '').knit(rows);
}

it('two phones plan the same piece anew, are united by a file, and she chooses between the two ways', async () => {
  const host = await plainHost();
  const [one, two] = [await openPhone({ worker: false }), await openPhone({ size: 'small', worker: false })];
  for (const { page } of [one, two]) await page.addInitScript('delete window.showSaveFilePicker');
  const first = knitterAt(one.page, host.url);
  await first.openSample();
  await first.knit(4);
  const make = one.page.url();
  const { after } = await first.row();
  await unite(two, host.url, await backupOf(one, host.url));
  await two.page.goto(make);
  await knitterAt(two.page, host.url).shows(5);
  await one.page.goto(make);
  await first.shows(5);

  await planAnew(one, after + 2, 3);
  await planAnew(two, after - 2, 2);
  await chooseFile(one, host.url, await backupOf(two, host.url));
  await one.page
    .getByText(/two ways, row 7 of .* here and row 6 of .* in the file/)
    .first()
    .waitFor();
  await picture(one.page, 'preview-390');
  await one.page.getByRole('button', { name: 'Unite' }).tap();
  await one.page.getByText('The file is taken in.').waitFor();
  await unite(two, host.url, await backupOf(one, host.url));
  for (const [name, { page }] of [
    ['390', one],
    ['320', two],
  ] as const) {
    await page.goto(make);
    await page.getByRole('button', { name: 'Two ways here: choose' }).waitFor();
    await knitterAt(page, host.url).shows(8);
    await picture(page, `asked-${name}`);
    // until she chooses the row is read and knitted on, also in larger letters
    await expect.poll(() => hiddenAt(page, [100, 150, 200])).toEqual([]);
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Two ways here: choose' }).tap();
    await page.getByText('Two devices went two ways here').waitFor();
    await picture(page, `choose-${name}`);
    expect(await violations(page)).toEqual([]);
  }
  expect(await two.page.evaluate('document.documentElement.scrollWidth')).toBe(320);

  await two.page.getByRole('button', { name: /^Row 6 worked\s*\d+ stitches\s*this device$/ }).tap();
  await knitterAt(two.page, host.url).shows(7);
  await two.page.getByRole('button', { name: 'Two ways here: choose' }).waitFor({ state: 'detached' });
  await two.page.reload();
  await knitterAt(two.page, host.url).shows(7);
  await two.page.goto(`${make}/rip`);
  await two.page.getByRole('button', { name: 'Take that up again' }).waitFor();
  await picture(two.page, 'left-320');
  expect(await violations(two.page)).toEqual([]);

  await unite(one, host.url, await backupOf(two, host.url));
  await one.page.goto(make);
  await first.shows(7);
  await one.page.goto(`${make}/rip`);
  await one.page.getByRole('button', { name: 'Take that up again' }).tap();
  await one.page.getByText(/^Row\s6 worked, .* from the other device/).waitFor();
  await one.page.goto(make);
  await first.shows(8);
  expect([...one.strangers, ...two.strangers, ...one.complaints, ...two.complaints]).toEqual([]);
  await one.close();
  await two.close();
}, 240_000);
