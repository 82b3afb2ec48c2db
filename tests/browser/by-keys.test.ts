import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { liesInTheBox } from './backed-up.ts';
import { openPhone, type Phone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';
import { until } from './until.ts';

afterAll(removeProfiles);

async function withPhone(use: (phone: Phone, url: string) => Promise<void>): Promise<void> {
  const host = await plainHost();
  const phone = await openPhone({ worker: false });
  await use(phone, host.url);
  await phone.close();
}

/** Name of what has the focus, as a screen reader would say it; empty where nothing has it. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (at === document.body) return '';
    return at?.getAttribute('aria-label') ?? at?.textContent ?? '';
  });

async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let i = 0; i < 40; i += 1) {
    await page.keyboard.press('Tab');
    if (name.test(await focused(page))) return;
  }
  throw new Error(`Tab does not come to ${name}.`);
}

const liveText = (page: Page) => page.locator('.knitting [role="status"].spoken');

describe('with the keyboard alone', () => {
  it('goes from the workbasket to ten rows knitted, the focus led to each heading', () =>
    withPhone(async ({ page }, url) => {
      await page.goto(url);
      await page.getByRole('heading', { name: 'Workbasket' }).waitFor();
      await tabTo(page, /Open the sample/);
      await page.keyboard.press('Enter');
      const knitter = knitterAt(page, url);
      await knitter.pad.waitFor();
      expect(await focused(page)).toBe('Back');
      expect(await page.title()).toBe('Back · Harbour pullover – Ridgeline');
      await tabTo(page, /^Row done$/);
      for (let row = 1; row <= 5; row += 1) {
        await page.keyboard.press(row % 2 ? 'Enter' : 'Space');
        await knitter.shows(row + 1);
        expect(await focused(page)).toBe('Row done');
      }
      await page.evaluate(() => (document.activeElement as HTMLElement).blur());
      for (const [i, key] of ['Space', 'Enter', 'ArrowRight', 'PageDown', 'Space'].entries()) {
        await page.keyboard.press(key);
        await knitter.shows(i + 7);
      }
      for (const [i, key] of ['Backspace', 'ArrowLeft', 'PageUp'].entries()) {
        await page.keyboard.press(key);
        await knitter.shows(10 - i);
      }
    }));

  it('leaves the keys to an open sheet and to a held key, and to scrolling until the pad has had the focus or pedals are on', () =>
    withPhone(async ({ page }, url) => {
      const knitter = knitterAt(page, url);
      await knitter.openSample();
      await knitter.knit(3);
      await knitter.pad.focus();
      await page.getByRole('button', { name: 'Go back' }).click();
      await page.getByRole('heading', { name: 'Go back' }).waitFor();
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Escape');
      await page.evaluate(() => (document.activeElement as HTMLElement).blur());
      await page.keyboard.down('ArrowRight');
      await page.keyboard.down('ArrowRight');
      await page.keyboard.up('ArrowRight');
      await knitter.shows(5);
      await page.reload();
      await knitter.shows(5);
      for (const key of ['Space', 'PageDown', 'ArrowRight', 'PageUp']) await page.keyboard.press(key);
      // they scroll what is read, though the focus is at the top of the page
      const scrolled = () => page.locator('.screen-main').evaluate((main) => main.scrollTop);
      await until(
        () => page.keyboard.press('PageDown').then(scrolled),
        (px) => px > 300,
      );
      await tabTo(page, /^Row done$/);
      await expect.poll(scrolled).toBe(0);
      await page.reload();
      await knitter.shows(5);
      await knitter.knit(1);
      expect((await knitter.row()).row).toBe(6);
      await knitter.pad.focus();
      await page.keyboard.press('ArrowRight');
      await knitter.shows(7);
      await knitter.open('#/settings');
      await page.getByRole('switch', { name: 'Keys and page-turner pedals' }).press('Space');
      await liesInTheBox(page, '{"key":"keys","value":true}');
      await knitter.open('#/k/sample/back/0/1');
      await page.reload();
      await knitter.shows(7);
      // what hears the keys is a file of its own, there a moment after the row: she presses until one is heard
      const pressed = async () => {
        await page.keyboard.press('PageDown');
        return (await knitter.row()).row;
      };
      await until(pressed, (row) => row > 7);
    }));
});

describe('by the accessibility tree alone', () => {
  it('goes from the workbasket to ten rows knitted: each row is said with its side, its work and its count, a shaping row as one', () =>
    withPhone(async ({ page }, url) => {
      await page.goto(url);
      await page
        .getByRole('main')
        .getByRole('link', { name: /^Open the sample/ })
        .click();
      await page.getByRole('heading', { level: 1, name: 'Back' }).waitFor();
      const pad = page.getByRole('button', { name: 'Row done', exact: true });
      await liveText(page).getByText('Row 1 of 192, right side.').waitFor();
      const described = () =>
        pad.evaluate((it) =>
          (it.getAttribute('aria-describedby') ?? '')
            .split(' ')
            .map((id) => document.getElementById(id)?.textContent)
            .join(' '),
        );
      await until(described, (words) => words.includes('118'));
      for (let row = 2; row <= 11; row += 1) {
        await pad.click();
        const side = row % 2 ? 'right side' : 'wrong side';
        await liveText(page).getByText(`Row ${row} of 192, ${side}.`).waitFor();
        const sentence = (await liveText(page).textContent()) ?? '';
        expect(sentence).toMatch(row % 2 ? /knit 2, purl 2/ : /purl 2, knit 2/);
        expect(sentence).toMatch(/118\sstitches after it\.\s*$/);
        await expect.poll(() => page.getByRole('region', { name: `Row ${row} of 192` }).count()).toBe(1);
      }
      await expect
        .poll(() => page.getByRole('progressbar').getAttribute('aria-valuetext'))
        .toBe('Row 10 of 192');
      await page.goto(`${url}#/k/sample/back/0/1?row=118`);
      await page.getByRole('button', { name: 'Make row 118 the next' }).click();
      await liveText(page)
        .getByText(/Row 118 of 192, wrong side\. Shaping: bind off 6 at the start of the row\./)
        .waitFor();
      await pad.click();
      await liveText(page)
        .getByText(
          /^Row 119 of 192, right side\. Shaping: decrease at both edges\. .* 104\sstitches after it\./,
        )
        .waitFor();
    }));

  it('has a name for everything that is pressed', () =>
    withPhone(async ({ page }, url) => {
      const knitter = knitterAt(page, url);
      await knitter.openSample();
      await page.locator('.place-map svg').first().waitFor();
      const tree = await page.locator('body').ariaSnapshot();
      const pressed = tree.match(/- (?:button|link|slider|switch)\b[^\n]*/g) ?? [];
      expect(pressed.length).toBeGreaterThan(7);
      expect(pressed.filter((line) => !line.includes('"'))).toEqual([]);
    }));

  it('announces each row once the taps have settled, not each tap of a burst', () =>
    withPhone(async ({ page }, url) => {
      await knitterAt(page, url).openSample();
      await page.evaluate(() => {
        const said: string[] = [];
        Object.assign(window, { said });
        const live = document.querySelector('.knitting [role="status"].spoken');
        if (live)
          new MutationObserver(() => said.push(live.textContent ?? '')).observe(live, {
            childList: true,
            characterData: true,
            subtree: true,
          });
      });
      await page.getByRole('button', { name: 'Row done' }).evaluate((pad: HTMLElement) => {
        for (let i = 0; i < 6; i += 1) pad.click();
      });
      await liveText(page).getByText('Row 7 of 192').waitFor();
      const said = await page.evaluate(() => (window as unknown as { said: string[] }).said);
      expect(said.filter((text) => text !== '').length).toBeLessThanOrEqual(2);
    }));
});

describe('the screen', () => {
  it('is kept awake on the knitting screen, again after it was hidden, and nowhere else', () =>
    withPhone(async ({ page }, url) => {
      await page.addInitScript(() => {
        const locks = { asked: 0, held: 0 };
        Object.assign(window, { locks });
        let last: EventTarget & { release(): Promise<void> };
        const request = async () => {
          locks.asked += 1;
          locks.held += 1;
          last = Object.assign(new EventTarget(), {
            release: async () => {
              locks.held -= 1;
              last.dispatchEvent(new Event('release'));
            },
          });
          return last;
        };
        Object.defineProperty(navigator, 'wakeLock', { value: { request } });
        Object.assign(window, { hide: () => last.release() });
      });
      const locks = () =>
        page.evaluate(() => ({ ...(window as unknown as { locks: { asked: number; held: number } }).locks }));
      await knitterAt(page, url).openSample();
      await page.waitForFunction(() => (window as unknown as { locks: { held: number } }).locks.held === 1);
      // the browser lets go when the page is hidden, and tells the page when it is seen again
      await page.evaluate(async () => {
        await (window as unknown as { hide: () => Promise<void> }).hide();
        document.dispatchEvent(new Event('visibilitychange'));
      });
      await page.waitForFunction(() => (window as unknown as { locks: { held: number } }).locks.held === 1);
      expect((await locks()).asked).toBe(2);
      await page.getByRole('link', { name: 'Back to Harbour pullover' }).click();
      await page.waitForFunction(() => (window as unknown as { locks: { held: number } }).locks.held === 0);
    }));
});
