import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { parseRoute, patterns, type ScreenName } from '../../src/app/routes.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';

afterAll(removeProfiles);

/** Addresses that are opened from outside, or that lead on by themselves. */
const notTapped: readonly ScreenName[] = ['openLink', 'continue', 'sample'];

/** Addresses of the links that can be tapped on the page as it stands. */
const linksOn = (page: Page) =>
  page
    .locator('a[href*="#/"]:visible')
    .evaluateAll((all) => [...new Set(all.map((link) => new URL((link as HTMLAnchorElement).href).hash))]);

/** What one more tap, on what is folded, lays open. */
async function unfolded(page: Page): Promise<readonly string[]> {
  await page.locator('details > summary:visible').evaluateAll((all) => {
    for (const summary of all) (summary.parentElement as HTMLDetailsElement).open = true;
  });
  return linksOn(page);
}

async function opened(page: Page, url: string, hash: string): Promise<void> {
  await page.goto(`${url}${hash}`);
  await page.getByRole('heading', { level: 1 }).first().waitFor();
  // late parts come after the heading: no link has joined the others for a while
  let links = await linksOn(page);
  for (let same = 0; same < 4; ) {
    await page.waitForTimeout(150);
    const now = await linksOn(page);
    same = now.length === links.length ? same + 1 : 0;
    links = now;
  }
}

describe('from the workbasket', () => {
  it('every screen is at most three taps away', async () => {
    const host = await plainHost();
    const phone = await openPhone({ worker: false });
    const { page } = phone;
    const knitter = knitterAt(page, host.url);
    await knitter.openSample();
    await knitter.knit(1);
    const taps = new Map<ScreenName, number>([['workbasket', 0]]);
    let here = ['#/'];
    for (let tap = 1; tap <= 3; tap += 1) {
      const next: string[] = [];
      const reach = (hashes: readonly string[], after: number) => {
        for (const hash of hashes) {
          const screen = parseRoute(hash)?.screen;
          if (screen === undefined || taps.has(screen)) continue;
          taps.set(screen, after);
          if (after === tap) next.push(hash);
        }
      };
      for (const hash of here) {
        await opened(page, host.url, hash);
        reach(await linksOn(page), tap);
        if (tap < 3) reach(await unfolded(page), tap + 1);
        const tools = page.getByRole('button', { name: 'Tools', exact: true });
        if ((await tools.count()) === 0 || tap === 3) continue;
        await tools.tap();
        await page.getByRole('link', { name: /^Check the count/ }).waitFor();
        reach(await linksOn(page), tap + 1);
      }
      here = next;
    }
    const far = (Object.keys(patterns) as ScreenName[]).filter(
      (screen) => !taps.has(screen) && !notTapped.includes(screen),
    );
    expect(far).toEqual([]);
    expect(Math.max(...taps.values())).toBeLessThanOrEqual(3);
    await phone.close();
  }, 180_000);
});
