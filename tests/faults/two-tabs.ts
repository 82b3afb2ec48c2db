import type { Page } from 'playwright-core';
import { until } from '../browser/until.ts';
import type { Served } from '../run/serve.ts';
import type { Engine } from './engine.ts';
import type { Figure } from './figure.ts';
import { layScarf, scarfMake } from './scarf.ts';
import { corruptionsOf, storedOf } from './stored.ts';
import { openBack, padOf } from './tapping.ts';

/**
 * Two windows on one make, each tapped so often, both at once and faster than the rows can be stored. A tap means the row
 * that its window showed: where the other one has written that already it is refused, so that no row is ever counted twice.
 */
export async function tapInTwoTabs(engine: Engine, host: Served, taps: number): Promise<Figure> {
  const machine = await engine.open();
  const { page } = machine;
  if (machine.newPage === undefined) throw new Error(`${engine.name} has no second window.`);
  await openBack(page, host.url);
  await layScarf(page, 2 * taps + 10);
  const pages = [page, await machine.newPage()];
  for (const one of pages) {
    await one.goto(`${host.url}#/k/${scarfMake}`);
    await one.locator('.knitting-row strong').filter({ hasText: 'Row 1 of' }).waitFor();
  }
  await Promise.all(pages.map((one) => tapFast(one, taps)));
  const rowsOf = async () => (await storedOf(page, scarfMake)).place?.rows ?? 0;
  let before = -1;
  /** also when nothing came for a while: taps of which many still wait would be counted half-way */
  const bothShow = async () => {
    const rows = await rowsOf();
    const still = rows === before;
    before = rows;
    if (!still) {
      await page.waitForTimeout(STILL_MS);
      return false;
    }
    const last = `Row ${(rows + 1).toLocaleString('en')} of`;
    const heads = await Promise.all(pages.map((one) => one.locator('.knitting-row strong').innerText()));
    return heads.every((head) => head.includes(last));
  };
  const shown = await until(bothShow, (so) => so, 180_000).then(
    () => 'both windows show them',
    async () => `the windows show ${(await Promise.all(pages.map(screenOf))).join(' and ')}`,
  );
  const rows = await rowsOf();
  const stored = await storedOf(page, scarfMake);
  const corrupted = corruptionsOf(stored);
  await machine.close();
  // a tap that is refused takes those that wait behind it along: how many are left hangs on the machine
  const least = Math.ceil(taps / 3);
  const entries = stored.entries.filter(({ kind }) => kind === 'row').length;
  return {
    name: `${engine.name}: two windows, ${taps} taps each at once`,
    measured: `${rows} rows, ${entries} entries, corrupted ${corrupted.length}, ${shown}`,
    bar: `each row once, ${least} at the least`,
    met:
      rows >= least &&
      rows <= 2 * taps &&
      entries === rows &&
      corrupted.length === 0 &&
      shown.startsWith('both'),
  };
}

const STILL_MS = 2000;

const screenOf = async (page: Page): Promise<string> =>
  (await page.locator('main').innerText({ timeout: 5000 })).replace(/\s+/g, ' ').slice(0, 160);

const tapFast = (page: Page, taps: number): Promise<void> =>
  padOf(page).evaluate(async (pad: HTMLElement, times) => {
    for (let i = 0; i < times; i += 1) {
      if (!pad.isConnected) throw new Error('The pad was taken away between two taps.');
      pad.click();
      await new Promise((resolve) => setTimeout(resolve, Math.random() * 4));
    }
  }, taps);
