import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { knitterAt } from './knitter.ts';

afterAll(removeProfiles);

declare global {
  interface Window {
    letGo: () => void;
  }
}

/** Keeps what a tap writes to busy, as another window's long write does, until the page is let go. */
const keepBusy = (page: Page) =>
  page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('ridgeline');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const tx = db.transaction(['log', 'places'], 'readwrite');
    let isBusy = true;
    const askMore = () => {
      if (isBusy) tx.objectStore('places').count().onsuccess = askMore;
    };
    askMore();
    tx.oncomplete = () => db.close();
    window.letGo = () => {
      isBusy = false;
    };
  });

describe('while the disk is busy', () => {
  it('the next row can be read, and the row before it is not shown as done until it is on disk', async () => {
    const host = await serve({ root: dist });
    const phone = await openPhone();
    const { page } = phone;
    const knitter = knitterAt(page, host.url);
    await knitter.openSample();
    await knitter.knit(1);
    const words = page.locator('.row-card');
    const strip = page.getByRole('progressbar', { name: 'Back' });

    await keepBusy(page);
    await knitter.pad.tap();
    await words.and(page.getByLabel('Row 3 of 192')).waitFor();
    await page.locator('.pad-pressed').waitFor();
    await page.getByText('Row 3 · not saved yet: row 2').waitFor();
    expect((await knitter.row()).row).toBe(2);
    await knitter.pad.tap();
    await page.getByText('Row 4 · not saved yet: rows 2 to 3').waitFor();
    expect((await knitter.row()).row).toBe(2);
    await expect.poll(() => strip.getAttribute('aria-valuetext')).toBe('Row 1 of 192');

    await page.evaluate(() => window.letGo());
    await knitter.shows(4);
    await page.locator('.pad:not(.pad-pressed)').waitFor();
    await words.and(page.getByLabel('Row 4 of 192')).waitFor();
    await page.getByText('not saved yet').waitFor({ state: 'detached' });

    await keepBusy(page);
    await knitter.pad.tap();
    await words.and(page.getByLabel('Row 5 of 192')).waitFor();
    await phone.kill();
    const again = await openPhone({ profile: phone.profile });
    const back = knitterAt(again.page, host.url);
    await back.openSample();
    expect((await back.row()).row).toBe(4);
    await again.close();
    await host.close();
  });
});
