import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { violations } from './axe.ts';
import { phones } from './drive.ts';
import { openSection, shot } from './editor-hand.ts';
import { hostAndPhone } from './host-and-phone.ts';

const at = hostAndPhone();

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });

async function openSample(size: keyof typeof phones = 'common'): Promise<Page> {
  const phone = await at.open({ size });
  const { page } = phone;
  await page.goto(`${at.url}#/sample`);
  await button(page, 'Row done').waitFor();
  return page;
}

/** The field with the rows of a section of a piece in the editor; a page that has just been turned folds its sections. */
async function rowsField(page: Page, piece: string, section: number): Promise<Locator> {
  await page.goto(`${at.url}#/edit/sample?piece=${piece}`);
  await page.getByRole('heading', { level: 1, name: new RegExp(`^${piece}$`, 'i') }).waitFor();
  const rows = page.locator(`#edit-section-0-${section}`).getByLabel('Rows', { exact: true });
  await expect
    .poll(async () => {
      await openSection(page, 0, section);
      return rows.isVisible();
    })
    .toBe(true);
  return rows;
}

async function changeRows(page: Page, piece: string, section: number, by: number): Promise<void> {
  const rows = await rowsField(page, piece, section);
  await rows.fill(String(Number(await rows.inputValue()) + by));
}

const rowsOf = async (page: Page, piece: string, section: number): Promise<number> =>
  Number(await (await rowsField(page, piece, section)).inputValue());

/** The garment's own screen comes next. */
const isSaved = async (page: Page) => {
  await page.locator('.edit-foot').waitFor({ state: 'detached' });
  await page.waitForURL(/#\/g\/sample/);
  await page.getByRole('heading', { level: 1, name: 'Harbour pullover' }).waitFor();
};

const fits = async (page: Page) =>
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);

describe('one change and all that it breaks', () => {
  for (const size of ['common', 'small'] as const) {
    it(`a front made longer: the back is made longer too in one tap, saved with it (${phones[size].width} px)`, async () => {
      const page = await openSample(size);
      const before = await rowsOf(page, 'back', 1);
      await changeRows(page, 'front', 1, 16);
      await page.getByText('What no longer matches').waitFor();
      await page.getByText(/Front and Back are sewn together: \d+\srows against \d+/).waitFor();
      // the foot says no tick while something is told above
      await button(page, '1 place no longer matches').waitFor();
      expect(await page.getByText('Every row works out').count()).toBe(0);
      const mend = button(page, /Make Back 16 rows longer too, in “.*”/).first();
      await mend.waitFor();
      await fits(page);
      expect(await violations(page)).toEqual([]);
      await shot(page, `mends-editor-${size}`);
      await mend.tap();
      await page.getByText('What no longer matches').waitFor({ state: 'detached' });
      await page.getByText('Every row works out').waitFor();
      await button(page, 'Save').tap();
      await isSaved(page);
      await expect.poll(() => rowsOf(page, 'back', 1)).toBe(before + 16);
    });
  }

  it('a back on the needles gets its rows when the front is saved, and only rows not yet knitted', async () => {
    const page = await openSample();
    await button(page, 'Row done').tap();
    await page.getByText('Row 2 of').first().waitFor();
    const total = await page
      .getByText(/Row 2 of \d+/)
      .first()
      .innerText();
    await changeRows(page, 'front', 1, 8);
    const mend = button(page, /Make Back 8 rows longer too/).first();
    await mend.waitFor();
    await page.getByText('It is on the needles: only rows not yet knitted change.').first().waitFor();
    await mend.tap();
    await page.getByText('Saved together with it').waitFor();
    await shot(page, 'mends-begun');
    await button(page, 'Save').tap();
    await isSaved(page);
    await page.goto(`${at.url}#/k/sample/back/0/1`);
    const rows = Number(/of (\d+)/.exec(total)?.[1]);
    await page
      .getByText(`Row 2 of ${rows + 8}`)
      .first()
      .waitFor();
  });

  it('a back planned anew on the needles takes the front along', async () => {
    const page = await openSample();
    await button(page, 'Row done').tap();
    await page.getByText('Row 2 of').first().waitFor();
    const before = await rowsOf(page, 'front', 1);
    await page.goto(`${at.url}#/k/sample/back/0/1/rework`);
    await page.getByText('I want a stretch longer or shorter').tap();
    await page.getByLabel('Which stretch', { exact: true }).selectOption({ index: 1 });
    const field = page.getByLabel('Rows of it in all', { exact: true });
    await field.fill(String(Number(await field.inputValue()) + 8));
    await page.getByText('What no longer matches').waitFor();
    const mend = button(page, /Make Front \d+ rows longer too/).first();
    await mend.waitFor();
    await shot(page, 'mends-rework');
    await mend.tap();
    await page.getByText('Saved together with it').waitFor();
    expect(await violations(page)).toEqual([]);
    await button(page, 'Knit by this plan').tap();
    await page.getByText('From here on by the new plan.').waitFor();
    await expect.poll(() => rowsOf(page, 'front', 1)).toBeGreaterThan(before);
  });
});
