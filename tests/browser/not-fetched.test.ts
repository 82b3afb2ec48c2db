import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { type Served, serve } from '../run/serve.ts';
import { liesInTheBox } from './backed-up.ts';
import { openPhone, type Phone, removeProfiles } from './drive.ts';
import { foldsMade, unfold } from './unfolded.ts';
import { until } from './until.ts';

/** What drafts, of which the draft's page paints its frame first (`src/build/chunks.ts`). */
const PLANNER = /^\/assets\/plan-/;

/** How the host answers for that file alone; 'cut': it breaks off. */
let answers: 'whole' | 404 | 503 | 'cut' = 'whole';
let host: Served;
let phone: Phone;

beforeAll(async () => {
  host = await serve({
    root: dist,
    instead(path, response) {
      if (!PLANNER.test(path)) return false;
      if (answers === 'cut') response.destroy();
      // one that the browser keeps from before would never be asked for
      else if (answers === 'whole')
        response
          .writeHead(200, { 'Content-Type': 'text/javascript', 'Cache-Control': 'no-store' })
          .end(readFileSync(join(dist, path)));
      else response.writeHead(answers, { 'Content-Type': 'text/html' }).end('<h1>No such file</h1>');
      return true;
    },
  });
});

beforeEach(async () => {
  answers = 'whole';
  phone = await openPhone({ worker: false, locale: 'en-GB' });
});

afterEach(async () => {
  await phone.context.setOffline(false);
  await phone.close();
});

afterAll(async () => {
  await host.close();
  removeProfiles();
});

const said = (page: Page) => page.getByText(/Nothing of yours is lost\. Load the page again/);
const again = (page: Page) => page.getByRole('button', { name: 'Load again' });
const asked = () => host.asked.filter((path) => PLANNER.test(path)).length;
const length = (page: Page) => page.getByLabel('Length', { exact: true });

/** What she typed at an earlier visit, in the box. */
async function typedBefore(page: Page): Promise<void> {
  await page.goto(`${host.url}#/draft`);
  await foldsMade(page);
  await unfold(page);
  await length(page).fill('72.3');
  await length(page).blur();
  await liesInTheBox(page, '723');
}

describe('the draft whose planner cannot be fetched', () => {
  it.each([404, 503, 'cut'] as const)(
    'says so, leads back, tries again and has what was typed before: %s',
    async (how) => {
      const { page } = phone;
      await typedBefore(page);
      answers = how;
      await page.reload();
      await said(page).waitFor();
      // the page is named still, and the reader's place is at its beginning
      expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('From measures and a swatch');

      const before = asked();
      await again(page).tap();
      // where the page stands, and when that is in vain with a page that is loaded anew
      await until(
        async () => asked() - before,
        // what breaks off is asked for once more by the browser itself
        (times) => times >= 2,
      );
      await said(page).waitFor();
      answers = 'whole';
      await again(page).tap();
      await foldsMade(page);
      expect(await length(page).inputValue()).toBe('72.3');
    },
  );

  it('says so without a network, and what stands goes on standing until there is one', async () => {
    const { page } = phone;
    await page.goto(host.url);
    await page.getByRole('link', { name: 'Settings' }).tap();
    await page.getByRole('heading', { name: 'Settings' }).waitFor();
    await page.goBack();
    await phone.context.setOffline(true);
    await page.evaluate(() => {
      location.hash = '#/draft';
    });
    await said(page).waitFor();
    await again(page).tap();
    await said(page).waitFor();
    await page.goBack();
    await page.getByRole('link', { name: 'Settings' }).waitFor();

    await phone.context.setOffline(false);
    await page.evaluate(() => {
      location.hash = '#/draft';
    });
    await foldsMade(page);
  });
});
