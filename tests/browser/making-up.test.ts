import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { violations } from './axe.ts';
import { openPhone, type Phone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';
import { atRow } from './sights.ts';

let host: Awaited<ReturnType<typeof plainHost>>;
let phone: Phone | undefined;

beforeAll(async () => {
  host = await plainHost();
});

afterEach(async () => {
  await phone?.close();
  phone = undefined;
});

afterAll(async () => {
  removeProfiles();
});

async function openMakingUp(): Promise<Page> {
  phone = await openPhone({ reducedMotion: 'reduce', worker: false });
  const { page } = phone;
  await page.goto(`${host.url}#/sample`);
  await page.getByRole('button', { name: 'Row done' }).waitFor();
  await page.goto(`${host.url}#/g/sample/making-up`);
  await page.locator('.together').waitFor();
  return page;
}

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).tap();
const inHand = (page: Page, name: string) => page.locator('.making-card h2', { hasText: name }).waitFor();
const counts = (page: Page) => page.locator('.together-count text').allTextContents();
const edges = (page: Page, state: string) => page.locator(`.together g > .together-${state}[d]`).count();
const drawingsHeight = (page: Page) =>
  page
    .locator('.together svg')
    .first()
    .evaluate((svg) => (svg as SVGSVGElement).viewBox.baseVal.height);

describe('the making up of a garment', () => {
  it('is one drawing that comes together: sewn, in hand and not yet sewn are told apart, with the counts of what is in hand', async () => {
    const page = await openMakingUp();
    await inHand(page, 'Block Back');
    expect((await counts(page)).join(' ')).toContain('↔ 22\u00a0in');
    const toSew = await edges(page, 'open');
    expect(toSew).toBeGreaterThan(10);
    for (const next of ['Block Front', 'Block Sleeve', 'Right shoulder seam']) {
      await press(page, 'Blocked');
      await inHand(page, next);
    }
    // 30 stitches on the back to 30 of the front, as the recipe of the sample has them
    await expect.poll(() => counts(page)).toEqual(['30', '30']);
    await expect.poll(async () => [await edges(page, 'hand'), await edges(page, 'sewn')]).toEqual([2, 0]);
    const before = await drawingsHeight(page);
    await press(page, 'Sewn');
    await inHand(page, 'Pick up the Neckband');
    await expect.poll(() => drawingsHeight(page)).toBeLessThan(before - 50);
    await expect.poll(() => edges(page, 'sewn')).toBe(2);
    await expect.poll(() => page.locator('.together g > .together-stitches').count()).toBe(2);
    // along the neck: 48, 1, 48 and 36 of the back, 133 in all
    for (const count of ['48', '36']) await expect.poll(() => counts(page)).toContain(count);
    expect(await violations(page)).toEqual([]);
    // what is done stays done, and can be taken back
    await page.reload();
    await inHand(page, 'Pick up the Neckband');
    await page.getByText('4 of 10 steps done').waitFor();
    await press(page, 'Another step');
    await press(page, 'Right shoulder seam');
    await press(page, 'Not done yet');
    await page.getByText('3 of 10 steps done').waitFor();
    await inHand(page, 'Right shoulder seam');
    await expect.poll(() => drawingsHeight(page)).toBe(before);
  });

  it('goes on by keys from the step that is taken up, the one before being gone', async () => {
    const page = await openMakingUp();
    const focused = () => page.evaluate(() => document.activeElement?.textContent);
    await inHand(page, 'Block Back');
    await page.getByRole('button', { name: 'Blocked', exact: true }).press('Enter');
    await expect.poll(focused).toBe('Block Front');
    await page.getByRole('button', { name: 'Another step', exact: true }).press('Enter');
    await page.getByRole('button', { name: 'Side seams', exact: true }).press('Enter');
    await expect.poll(focused).toBe('Side seams');
  });

  it('has what is to be knitted first within its card, in letters twice as large on a small phone too', async () => {
    const page = await openMakingUp();
    await page.setViewportSize({ width: 320, height: 640 });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    await page.locator('.making-card .notice').waitFor();
    const beyond = await page.locator('.making-card .notice').evaluate((notice) => {
      const edge = notice.getBoundingClientRect().right;
      return [...notice.querySelectorAll('p, a')].filter((it) => {
        const words = document.createRange();
        words.selectNodeContents(it);
        return Math.max(it.getBoundingClientRect().right, words.getBoundingClientRect().right) > edge;
      }).length;
    });
    expect(beyond).toBe(0);
  });

  it('offers what is knitted, and says of a piece that is not there yet that it has to be knitted first', async () => {
    const page = await openMakingUp();
    const knitter = knitterAt(page, host.url);
    const missing = page.locator('.making-card .notice-title');
    await inHand(page, 'Block Back');
    await expect.poll(() => missing.innerText()).toBe('Not knitted yet: Back.');
    // the front is knitted first
    for (const part of ['0', '1', '2']) {
      const make = `#/k/sample/front/${part}/1`;
      await knitter.open(make);
      await knitter.shows(1);
      const { of } = await knitter.row();
      await atRow(page, knitter, of, make);
      await knitter.shows(of);
      await knitter.knit(1);
    }
    await knitter.open('#/g/sample/making-up');
    await inHand(page, 'Block Front');
    await expect.poll(() => missing.count()).toBe(0);
    await press(page, 'Blocked');
    await inHand(page, 'Block Back');
    await page.getByRole('link', { name: 'Knit Back', exact: true }).tap();
    await knitter.shows(1);
  });

  it('takes up the step of an edge that is touched, which its thread names as the one in hand', async () => {
    const page = await openMakingUp();
    const side = page.locator('.together g > .together-open').first();
    await side.evaluate((path) =>
      path.parentElement?.dispatchEvent(new MouseEvent('click', { bubbles: true })),
    );
    await expect.poll(() => page.locator('.making-card h2').innerText()).not.toBe('Block Back');
    const title = await page.locator('.making-card h2').innerText();
    await expect.poll(() => page.locator('[aria-current="step"]').innerText()).toBe(title);
    await expect
      .poll(() => page.locator('.together [role="img"]').getAttribute('aria-label'))
      .toContain(title);
  });
});
