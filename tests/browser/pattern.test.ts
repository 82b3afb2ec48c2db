import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { violations } from './axe.ts';
import type { phones } from './drive.ts';
import { hostAndPhone } from './host-and-phone.ts';
import { mixed } from './reads-pattern.ts';

const at = hostAndPhone();

async function openEmpty(size: keyof typeof phones): Promise<Page> {
  const phone = await at.open({ size });
  await phone.page.goto(`${at.url}#/read`);
  await phone.page.getByLabel('The text').waitFor();
  return phone.page;
}

const lineOf = (page: Page, words: string) => page.locator('.pattern-line', { hasText: words });

describe('a pattern’s text', () => {
  it('is read line by line, mended, sized, kept through a reload, and becomes a garment', async () => {
    const page = await openEmpty('common');
    await page.getByLabel('Name of the garment').fill('Plain vest');
    await page.getByLabel('The text').fill(mixed);

    // the first size: 40 − 6 are 34, and the text says 33
    const bound = lineOf(page, 'BO 3 sts');
    await bound.getByText('The text says 33 stitches; its instructions leave 34.').waitFor();
    await expect.poll(() => bound.locator('.pattern-row-count').allInnerTexts()).toEqual(['37', '34']);

    // it is mended in its own line, and the rest follows
    await page.getByRole('button', { name: 'Change line 6' }).tap();
    await page
      .getByLabel('Line 6', { exact: true })
      .fill('BO 3 sts at beg of next 2 rows. (34 (38, 42) sts)');
    await page.getByRole('button', { name: 'Done' }).tap();
    await bound.getByText('its instructions leave').waitFor({ state: 'detached' });

    // what was not understood is mended by saying how many rows it is, or that it is none, and stays so in the text
    const own = lineOf(page, 'wibble');
    await own.getByText('Not understood').waitFor();
    await own.getByLabel('Stitches after this line', { exact: true }).fill('31');
    await own.getByRole('button', { name: 'It is so many rows' }).tap();
    await own.locator('blockquote', { hasText: '[1 row, 31 sts]' }).waitFor();
    await own.getByText('As you say').waitFor();
    await expect.poll(() => own.locator('.pattern-fault').count()).toBe(0);
    await own.getByRole('button', { name: 'It makes no rows' }).tap();
    await own.getByText('Makes no rows.').waitFor();
    await expect
      .poll(() => page.getByLabel('The text').inputValue())
      .toContain('wibble three sts of it. [no rows]');

    // every number follows the size
    await page.getByRole('radio', { name: 'L', exact: true }).check();
    await lineOf(page, 'Cast on').getByText('48 sts on the needle').waitFor();
    await page.getByRole('radio', { name: 'S', exact: true }).check();

    // a gauge makes rows of the length (a browser in US English measures in inches)
    await lineOf(page, '20 cm').getByText('A length of which no rows are known').waitFor();
    await page.getByLabel('Stitches in 4 in', { exact: true }).fill('20');
    await page.getByLabel('Rows in 4 in', { exact: true }).fill('30');
    await lineOf(page, '20 cm').getByText('A length: 56 rows by the gauge.').waitFor();

    await page.reload();
    await lineOf(page, '20 cm').getByText('A length: 56 rows by the gauge.').waitFor();
    await page.getByRole('button', { name: 'Make the garment' }).tap();
    await page.getByRole('heading', { name: 'Plain vest' }).waitFor();
    await page.getByText('Back').first().waitFor();

    // the next pattern begins with an empty page
    await page.goto(`${at.url}#/read`);
    await expect.poll(() => page.getByLabel('The text').inputValue()).toBe('');
    expect(at.phone?.complaints).toEqual([]);
  });

  it('asks near the end of a length whether it is long enough, and grows it by two rows', async () => {
    const page = await openEmpty('common');
    await page.getByLabel('Name of the garment').fill('Scarf');
    await page
      .getByLabel('The text')
      .fill(
        'Gauge: 20 sts and 30 rows = 10 cm.\nBACK\nCast on 20 sts. Work in st st until piece measures 3 cm, ending with a WS row.\nBO.',
      );
    await lineOf(page, 'Cast on 20').waitFor();
    await page.getByRole('button', { name: 'Make the garment' }).tap();
    await page.getByRole('link', { name: /Begin/ }).first().tap();
    const row = (n: number, of: number) =>
      page.getByRole('region', { name: new RegExp(`^Row ${n} of ${of}`) });
    const done = page.getByRole('button', { name: 'Row done' });
    // 3 cm at 30 rows to 10 cm are 9 rows, 10 to end after a WS row, and the row that binds off
    for (let n = 1; n <= 6; n += 1) {
      await row(n, 11).waitFor();
      await done.tap();
    }
    await row(7, 11).waitFor();
    await page.getByRole('button', { name: 'Two rows more' }).tap();
    await row(7, 13).waitFor();
    await page.getByRole('button', { name: 'Long enough' }).tap();
    await row(7, 7).waitFor();
    await page
      .getByText(/Bind off all sts/i)
      .first()
      .waitFor();
    await page.reload();
    await row(7, 7).waitFor();
  });

  it('fits 320 px without a sideways scroll, and passes what a machine can see', async () => {
    const page = await openEmpty('small');
    await page.getByLabel('The text').fill(mixed);
    await lineOf(page, 'BO 3 sts').waitFor();
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wide).toBeLessThanOrEqual(0);
    expect(await violations(page)).toEqual([]);
  });

  it('in another language is said to be so where she looks, on the smallest phone', async () => {
    const page = await openEmpty('small');
    const text = page.getByLabel('The text');
    await text.tap();
    await text.fill(
      'RÜCKENTEIL\n96 Maschen anschlagen. 4 Reihen kraus rechts stricken.\nAlle Maschen abketten.',
    );
    const said = page.getByText('This text is not in English: Deutsch');
    await said.waitFor();
    const box = await said.boundingBox();
    expect(box?.y).toBeGreaterThan(0);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThan(540);
  });

  it('is copied in by keyboard alone', async () => {
    const page = await openEmpty('common');
    await page.getByLabel('Name of the garment').focus();
    await page.keyboard.type('Scarf');
    await page.keyboard.press('Tab');
    await page.keyboard.type('Cast on 20 sts. Knit 10 rows. Bind off.');
    await lineOf(page, 'Cast on 20').waitFor();
    await page.getByRole('button', { name: 'Make the garment' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Scarf' }).waitFor();
  });
});
