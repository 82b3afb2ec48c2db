import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { openPhone, removeProfiles } from './drive.ts';
import { shot, violationsUnrolled } from './editor-hand.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';
import { atRow } from './sights.ts';

afterAll(removeProfiles);

/** Rows of the second colour, which is darker than the first, as the drawing shows them. */
const darkRows = (page: Page): Promise<number> =>
  page.locator('.map .stripes path[fill-opacity="0.55"]').count();

it('other stripes from the needle on: said before they are taken, with what lies beside; before the row they begin with, and after a reload; and drawn on the back when it is done', async () => {
  const host = await plainHost();
  const phone = await openPhone({ size: 'small', reducedMotion: 'reduce', worker: false });
  const { page } = phone;
  const knitter = knitterAt(page, host.url);
  const press = (name: string | RegExp) => page.getByRole('button', { name, exact: true }).tap();
  await knitter.openSample();
  // the front is further than the back will be
  await atRow(page, knitter, 51, '#/k/sample/front/0/1');
  await atRow(page, knitter, 41);
  await knitter.open('#/k/sample/back/0/1/rework');
  // nothing has changed until she says what
  await page.getByText('What has changed?').waitFor();
  expect(await page.getByRole('radio', { checked: true }).count()).toBe(0);
  await page.getByText('Other stripes from here', { exact: true }).tap();
  const take = page.getByRole('button', { name: 'Knit by this plan', exact: true });
  await page.locator('.map .stripes').waitFor({ state: 'attached' });
  expect(await take.count()).toBe(0);
  await press('Add a color');
  await page.getByLabel('Color 1', { exact: true }).fill('woad');
  await press('Add a color');
  await page.getByLabel('Color 2', { exact: true }).fill('sand');
  // by the name that is typed, before its field is left
  await page.getByText(/^Row\s41: woad, Row\s43: sand, Row\s45: woad/).waitFor();
  await page.getByLabel('From row', { exact: true }).fill('43');
  await page.getByText(/^Row\s43: woad, Row\s45: sand, Row\s47: woad/).waitFor();
  // two of each four, from row 45 of some 190 on
  expect(await darkRows(page)).toBeGreaterThan(60);
  const named = await page.locator('.count-card .stripes-key li').allInnerTexts();
  expect(named.map((name) => name.trim())).toEqual(['woad', 'sand']);
  await page.getByText('In Front too, from row 43').waitFor();
  await page.getByText('Its rows 43 to 50 are knitted and stay as they are.').waitFor();
  await shot(page, 'stripes-ahead');
  expect(await violationsUnrolled(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  await page
    .getByText(/^In Sleeve.* too, from row/)
    .last()
    .tap();
  await page.getByText(/its colors would lie beside others/).waitFor();
  await press('Knit by this plan');
  await page.getByText('From here on by the new plan.').waitFor();
  await page.getByRole('link', { name: 'Back to the row in hand' }).last().tap();
  await knitter.pad.waitFor();
  const before = page.locator('.before-row', { hasText: 'woad' });
  for (const row of [41, 42]) {
    await knitter.shows(row);
    expect(await before.count()).toBe(0);
    await knitter.knit(1);
  }
  await before.waitFor();
  await page.reload();
  await before.waitFor();
  await knitter.open('#/k/sample/front/0/1');
  // in step with the back: rows 51 and 52 are the fifth pair
  await page.locator('.before-row', { hasText: 'woad' }).waitFor();
  await atRow(page, knitter, 192);
  await knitter.pad.tap();
  await page.locator('.part-end .stripes').waitFor({ state: 'attached' });
  expect(await darkRows(page)).toBeGreaterThan(60);
  expect(phone.complaints).toEqual([]);
  await phone.close();
});
