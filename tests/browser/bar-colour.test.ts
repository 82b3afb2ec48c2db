import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { openPhone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';

afterAll(removeProfiles);

/** Which colour the system's bar is told, and the page's own ground. */
const colours = (page: Page) =>
  page.evaluate(() => {
    const bar = [...document.querySelectorAll<HTMLMetaElement>('meta[name=theme-color]')].find(
      ({ media }) => media === '' || matchMedia(media).matches,
    );
    return { bar: bar?.content, ground: getComputedStyle(document.documentElement).backgroundColor };
  });

it("the system's bar has the ground of the look she chose, not of the one the system has", async () => {
  const host = await plainHost();
  const phone = await openPhone({ worker: false, colorScheme: 'light' });
  const { page } = phone;
  await page.goto(`${host.url}#/settings`);
  const grounds = new Set<string>();
  for (const [name, theme] of [
    ['Slate', 'dark'],
    ['Linen', 'light'],
  ] as const) {
    await page.getByText(name, { exact: true }).first().click();
    await page.waitForFunction((wanted) => document.documentElement.dataset.theme === wanted, theme);
    await expect.poll(async () => (await colours(page)).bar).toBe((await colours(page)).ground);
    grounds.add((await colours(page)).ground);
  }
  expect(grounds.size).toBe(2);
  await phone.close();
});
