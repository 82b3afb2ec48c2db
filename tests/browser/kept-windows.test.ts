import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { openPhone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';

afterAll(removeProfiles);

/** The names of all that an address has stored. */
const storedBy = (page: Page) =>
  page.evaluate(async () => ({
    boxes: (await indexedDB.databases()).map(({ name }) => name),
    caches: await caches.keys(),
    small: [...Object.keys(localStorage), ...Object.keys(sessionStorage)],
    cookies: document.cookie,
  }));

const nothing = { boxes: [], caches: [], small: [], cookies: '' };

it('a window that tests have used begins as empty as a new one, with the size that is asked for', async () => {
  const { url } = await plainHost();
  // a picture: an address of the app at which nothing of it runs
  const still = `${url}icons/icon-192.png`;
  const options = { worker: false, colorScheme: 'dark' } as const;
  const first = await openPhone({ ...options, size: 'small' });
  await first.page.addInitScript(() => Object.assign(window, { left: true }));
  await first.page.goto(still);
  expect(await storedBy(first.page)).toEqual(nothing);
  await first.page.evaluate(async () => {
    localStorage.setItem('left', 'here');
    sessionStorage.setItem('left', 'here');
    await cookieStore.set('left', 'here');
    await (await caches.open('left')).put('/left', new Response('here'));
  });
  const knitter = knitterAt(first.page, url);
  await knitter.openSample();
  await knitter.knit(2);
  const { boxes } = await storedBy(first.page);
  expect(boxes.length).toBeGreaterThan(0);
  const second = await first.context.newPage();
  await second.goto('data:text/html,<script>console.error("a complaint")</script>');
  await first.close();
  expect(first.complaints).toContain('a complaint');

  const again = await openPhone(options);
  expect(again.context).toBe(first.context);
  await again.page.goto(still);
  expect(await storedBy(again.page)).toEqual(nothing);
  expect(await again.page.evaluate(() => 'left' in window)).toBe(false);
  expect(await again.page.evaluate(() => [innerWidth, history.length])).toEqual([390, 2]);
  await knitterAt(again.page, url).openSample();
  expect((await knitterAt(again.page, url).row()).row).toBe(1);
  expect(again.complaints).not.toContain('a complaint');
  const heard = first.complaints.length;
  await again.page.goto('data:text/html,<script>console.error("another")</script>');
  await again.close();
  expect(again.complaints).toContain('another');
  expect(first.complaints).toHaveLength(heard);
});
