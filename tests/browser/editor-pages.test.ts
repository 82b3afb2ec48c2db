import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { phones, walkedOn } from './drive.ts';
import { addShaping, openSection, partOf, shot, toPieces, type, violationsUnrolled } from './editor-hand.ts';
import { hostAndPhone } from './host-and-phone.ts';

const at = hostAndPhone();

async function openNew(size: keyof typeof phones): Promise<Page> {
  const phone = await at.open({ size });
  await phone.page.goto(`${at.url}#/new`);
  await phone.page.getByLabel('Stitches in 4 in').waitFor();
  return phone.page;
}

describe('the pages of a garment by its numbers', () => {
  it.each(walkedOn('small'))(
    'every page is whole and readable on the %s phone',
    async (size) => {
      const page = await openNew(size);
      await type(page, 'Stitches in 4 in', '22');
      await type(page, 'Rows in 4 in', '30');
      await page.getByText('Yarn and notes').tap();
      for (const name of ['A back', 'A front with a V', 'A sleeve', 'A neckband']) {
        await page.getByRole('button', { name, exact: true }).tap();
      }
      await page.getByRole('button', { name: 'Save', exact: true }).tap();
      await page.getByText('What is marked cannot be knitted yet.').waitFor();
      await shot(page, 'garment');
      expect(await violationsUnrolled(page)).toEqual([]);
      for (const piece of ['Back', 'Front', 'Sleeve', 'Neckband']) {
        await page.locator('.edit-piece-link').filter({ hasText: piece }).tap();
        await partOf(page, 0).waitFor();
        const last = (await partOf(page, 0).locator('.edit-band').count()) - 1;
        const card = await openSection(page, 0, last);
        if (piece === 'Back') await addShaping(page, card, 'At an edge, again and again');
        if (piece === 'Sleeve') await addShaping(page, card, 'Evenly across one row');
        await shot(page, `piece-${piece}`);
        // a front has nothing that a back has not
        if (piece !== 'Front') expect(await violationsUnrolled(page)).toEqual([]);
        await (await openSection(page, 0, 'start')).getByText('Edge stitch and first row').tap();
        await shot(page, `start-${piece}`);
        if (piece !== 'Front') expect(await violationsUnrolled(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phones[size].width);
        await toPieces(page);
        // the focus comes back after the frame that drew the list
        await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toContain(piece);
      }
      // what is not saved is found again in the workbasket
      await page.goto(`${at.url}#/`);
      await page.getByRole('heading', { name: 'Not saved yet' }).waitFor();
      await shot(page, 'workbasket');
      await page.getByRole('link', { name: /A garment without a name/ }).tap();
      await page.getByLabel('Stitches in 4 in').waitFor();
      await expect.poll(() => page.locator('.edit-piece-link').count()).toBe(4);
    },
    120_000,
  );

  it('in German, in letters twice as large, nothing runs off the small phone', async () => {
    const phone = await at.open({ size: 'small' });
    await phone.page.addInitScript(() => {
      Object.defineProperty(navigator, 'languages', { get: () => ['de-DE'] });
    });
    const { page } = phone;
    await page.goto(`${at.url}#/new`);
    await type(page, 'Maschen auf 10 cm', '22');
    await type(page, 'Reihen auf 10 cm', '30');
    for (const name of ['Ein Vorderteil mit V', 'Eine Halsblende']) {
      await page.getByRole('button', { name, exact: true }).tap();
    }
    for (const [piece, part, section] of [
      ['Vorderteil', 1, 1],
      ['Halsblende', 0, 0],
    ] as const) {
      await page.locator('.edit-piece-link').filter({ hasText: piece }).tap();
      await partOf(page, part).waitFor();
      await openSection(page, part, section);
      await page.evaluate(() => {
        document.documentElement.style.fontSize = '200%';
      });
      await shot(page, `german-${piece}`);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phones.small.width);
      // where a long word may be parted is no letter
      expect((await page.locator('main').innerText()).replaceAll('\u00ad', '')).toContain(
        'Abschnitt hinzufügen',
      );
      await page.evaluate(() => {
        document.documentElement.style.fontSize = '';
      });
      await page.getByRole('link', { name: /^Zurück/ }).tap();
      await page.waitForSelector('#edit-add');
    }
    expect(phone.complaints).toEqual([]);
  }, 90_000);
});
