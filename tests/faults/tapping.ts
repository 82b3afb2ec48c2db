import type { Page } from 'playwright-core';
import { until } from '../browser/until.ts';
import type { Machine } from './engine.ts';
import { storedOf } from './stored.ts';

/** A make of the sample garment that has many rows. */
export const sampleBack = 'sample/back/0/1';

/** Rows that the app has shown as done so far: what it told its user is safe. */
export interface Shown {
  rows: number;
}

const watched = 'ridgeline-shown ';

export const padOf = (page: Page) => page.getByRole('button', { name: 'Row done', exact: true });

/** Number of the row in hand and of rows in all, as the screen has them. */
export async function rowInHand(page: Page): Promise<{ readonly row: number; readonly of: number }> {
  const text = await page.locator('.knitting-row strong').textContent();
  const [row = 0, of = 0] = (text ?? '').match(/\d+/g)?.map(Number) ?? [];
  return { row, of };
}

/** Waits until the row is in hand. */
export const rowShown = (page: Page, row: number, timeout = 30_000): Promise<void> =>
  page
    .locator('.knitting-row strong')
    .filter({ hasText: `Row ${row} of` })
    .waitFor({ timeout });

/** Hears every row that the screen shows as done, from now on; what is shown already counts. */
export async function watchRows(page: Page): Promise<Shown> {
  const shown = { rows: (await rowInHand(page)).row - 1 };
  page.on('console', (message) => {
    const text = message.text();
    if (text.startsWith(watched)) shown.rows = Math.max(shown.rows, Number(text.slice(watched.length)));
  });
  await page.evaluate((mark) => {
    const tell = () => {
      const row = /\d+/.exec(document.querySelector('.knitting-row strong')?.textContent ?? '')?.[0];
      if (row !== undefined) console.info(mark + (Number(row) - 1));
    };
    const app = document.getElementById('app');
    if (app) new MutationObserver(tell).observe(app, { subtree: true, childList: true, characterData: true });
  }, watched);
  return shown;
}

/** Where a thumb taps: the pad's lower edge stays where it is, whatever the row above it asks for. */
export async function thumbOn(page: Page): Promise<{ readonly x: number; readonly y: number }> {
  const box = await padOf(page).boundingBox();
  if (box === null) throw new Error('There is no pad to tap.');
  return { x: box.x + box.width / 2, y: box.y + box.height - 24 };
}

/**
 * Sets the place so that row 1 is in hand again. Row 1 is shown before it is in hand, since it is looked at; then the row
 * that was in hand comes back until the move is on disk: what the screen shows says nothing before that.
 */
export async function backToRowOne({ page }: Pick<Machine, 'page'>, url: string): Promise<void> {
  await come(page, url, `#/k/${sampleBack}?row=1`);
  await page.getByRole('button', { name: 'Make row 1 the next' }).click();
  await until(
    async () => (await storedOf(page, sampleBack)).place?.rows,
    (rows) => rows === 0,
    30_000,
  );
  await rowShown(page, 1);
}

/** Opens the sample's back at the row in hand, made where it is missing. */
export async function openBack(page: Page, url: string): Promise<void> {
  await come(page, url, '#/sample');
  await padOf(page).waitFor();
}

/** A window that shows the app already only changes its address: not every driver can wait for that as for a page. */
async function come(page: Page, url: string, hash: string): Promise<void> {
  if (!page.url().startsWith(url)) await page.goto(url + hash);
  else
    await page.evaluate((to) => {
      location.hash = to;
    }, hash);
}
