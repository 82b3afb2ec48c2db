import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { violations } from './axe.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';
import { openSettings, wear } from './looks.ts';
import { atRow } from './sights.ts';
import { until } from './until.ts';

afterAll(removeProfiles);

/** With its last shoulder: what is done and what it took is the whole piece, 128 rows, 63 and 64. */
async function saysThatTheFrontIsDone(page: Page): Promise<void> {
  const end = page.locator('.part-end');
  await expect.poll(() => end.locator('.part-end-head').innerText()).toBe('Front is done');
  await end.getByText('255 rows · 1 sitting').waitFor();
}

/** The panel as it was knitted, and below it the way on, both in sight on a phone. */
async function showsWhatWasMade(page: Page): Promise<void> {
  const low = (selector: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((at) => at.getBoundingClientRect().bottom);
  await page.locator('.part-end .map-svg').waitFor();
  const foot = await page.locator('.screen-foot').evaluate((at) => at.getBoundingClientRect().top);
  await expect.poll(() => low('.part-end .button-main')).toBeLessThanOrEqual(foot);
  expect(await low('.part-end .map-svg')).toBeLessThan(await low('.part-end .button-main'));
}

it('a garment that is knitted to the last row says so, with what it took and whether it is made up, in both languages', async () => {
  const host = await plainHost();
  const phone = await openPhone({ reducedMotion: 'reduce', worker: false });
  const { page } = phone;
  const knitter = knitterAt(page, host.url);
  await knitter.openSample();
  const settings = await openSettings(page, host.url);
  await knitter.open('#/g/sample');
  const next = page.locator('.screen:has(.garment-lines) > .screen-foot a');
  // until its places are read anew the garment's page still leads to what was just knitted
  const nextAfter = (knitted: string) =>
    until(
      async () => (await next.getAttribute('href')) ?? '',
      (to) => to !== '' && to !== knitted,
    );
  let rows = 0;
  let make = await nextAfter('');
  for (let parts = 0; parts < 20 && !make.includes('making-up'); parts += 1) {
    expect(await page.locator('.all-done').count()).toBe(0);
    await knitter.open(make);
    await knitter.pad.waitFor();
    const { of } = await knitter.row();
    rows += of;
    await atRow(page, knitter, of, make);
    await knitter.pad.tap();
    await page.locator('.part-end').waitFor();
    if (parts === 0) await showsWhatWasMade(page);
    if (make.endsWith('/front/2/1')) await saysThatTheFrontIsDone(page);
    await knitter.open('#/g/sample');
    make = await nextAfter(make);
  }
  const done = page.locator('.all-done');
  await done.getByText(`${rows.toLocaleString('en')} rows · 1 sitting`).waitFor();
  await expect.poll(() => done.innerText()).toContain('Knitted to the last stitch');
  await expect.poll(() => done.innerText()).toContain('Not made up yet.');
  expect(await violations(page)).toEqual([]);
  await wear(page, settings, { name: 'German', width: 320, height: 640, language: 'Deutsch' });
  await done.getByText('Gestrickt bis zur letzten Masche').waitFor();
  await wear(page, settings, { name: 'English', width: 390, height: 844 });
  await knitter.open('#/g/sample/making-up');
  const tick = page.locator('.making-do .button-main');
  await tick.tap();
  await page
    .getByText(/^1 of \d+/)
    .first()
    .waitFor();
  await knitter.open('#/g/sample');
  await done.getByText(/^Making up: 1 of \d+\ssteps done\.$/).waitFor();
  await knitter.open('#/g/sample/making-up');
  const steps = page.locator('.making-step');
  await steps.first().waitFor();
  const all = await steps.count();
  for (let at = 1; at < all; at += 1) {
    await tick.tap();
    await page.getByText(new RegExp(`^${at + 1} of ${all}\\s`)).waitFor();
  }
  await knitter.open('#/g/sample');
  await done.getByText('Finished: knitted and made up').waitFor();
  if (process.env.LAP_SHOT) await page.screenshot({ path: process.env.LAP_SHOT });
  await phone.close();
});
