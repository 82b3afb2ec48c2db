import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { violations } from './axe.ts';
import { phones, walkedOn } from './drive.ts';
import { shot } from './editor-hand.ts';
import { hostAndPhone } from './host-and-phone.ts';

const at = hostAndPhone();

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const link = (page: Page, name: string | RegExp) => page.getByRole('link', { name });

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });

/** Opens the sample's first sleeve with so many rows worked. */
async function openSleeve(rows: number, size: keyof typeof phones = 'common'): Promise<Page> {
  const phone = await at.open({ size });
  const { page } = phone;
  await page.goto(`${at.url}#/sample`);
  await button(page, 'Row done').waitFor();
  await page.goto(`${at.url}#/k/sample/sleeve/0/1?row=${rows + 1}`);
  if (rows > 0) await button(page, `Make row ${rows + 1} the next`).tap();
  await page
    .getByText(`Row ${rows + 1} of 139`)
    .first()
    .waitFor();
  await button(page, 'Row done').waitFor();
  return page;
}

async function openTool(page: Page, name: string): Promise<void> {
  await button(page, 'Tools').tap();
  await link(page, new RegExp(`^${name}`)).tap();
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

async function typeOnPad(page: Page, count: number): Promise<void> {
  for (const digit of String(count)) await page.locator('.key', { hasText: new RegExp(`^${digit}$`) }).tap();
  await button(page, 'Compare').tap();
}

/** As `fits`, and nothing that axe minds: for what no sight of every-screen shows. */
async function isSound(page: Page): Promise<void> {
  expect(await violations(page)).toEqual([]);
  await fits(page);
}

/** Nothing to scroll sideways, every target big enough for a thumb. */
async function fits(page: Page): Promise<void> {
  const width = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(width).toBeLessThanOrEqual(0);
  const small = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.count-page button, .count-page a, .count-page select')]
      .filter((one) => one.offsetParent !== null && one.getBoundingClientRect().height < 44)
      .map((one) => one.outerHTML.slice(0, 80)),
  );
  expect(small).toEqual([]);
}

for (const size of walkedOn('common')) {
  describe(`on a phone ${phones[size].width} px wide`, () => {
    it('a count that agrees makes firm ground; one that does not is explained, looked at and accepted', async () => {
      const page = await openSleeve(48, size);
      await openTool(page, 'Check the count');
      await page.getByText('The plan has 72 stitches on the needle.').waitFor();
      await shot(page, 'count-check');
      await fits(page);
      await button(page, 'It agrees').tap();
      await page.getByText('72 is right. Row 48 is firm ground now.').waitFor();
      await link(page, 'Back to the row in hand').last().tap();
      for (let row = 49; row <= 61; row += 1) await button(page, 'Row done').tap();
      await page.getByText('Row 62 of 139').first().waitFor();
      await openTool(page, 'Check the count');
      await page.getByText('Firm ground: after row 48 the count was right.').waitFor();
      await typeOnPad(page, 77);
      await page.getByText('1 stitch too few').waitFor();
      await page.getByRole('heading', { name: 'One look tells more' }).waitFor();
      await shot(page, 'count-explained');
      await fits(page);
      await page.locator('.count-look button', { hasText: 'a ladder' }).tap();
      await page.getByText('Your answer has put them in this order.').waitFor();
      expect(await page.locator('.count-list h3').first().innerText()).toBe('A stitch was dropped');
      await shot(page, 'count-looked');
      await link(page, 'Keep the count and plan the rest anew').first().tap();
      await page.getByRole('heading', { level: 1, name: 'Plan the rest anew' }).waitFor();
      await page.getByText('is laid anew over the rows that are left').waitFor();
      await shot(page, 'count-rework');
      await isSound(page);
      await button(page, 'Knit by this plan').tap();
      await page.getByText('From here on by the new plan.').waitFor();
      await link(page, 'Back to the row in hand').last().tap();
      await page.getByText('Row 62 of 139').first().waitFor();
      await page.reload();
      await page.getByText('Row 62 of 139').first().waitFor();
      expect(at.phone?.complaints).toEqual([]);
    });

    it('a stitch that was dropped and hooked up again makes firm ground of the planned count', async () => {
      const page = await openSleeve(48, size);
      await openTool(page, 'Check the count');
      await typeOnPad(page, 71);
      await page.getByText('1 stitch too few').waitFor();
      await page.locator('.count-list summary', { hasText: 'A stitch was dropped' }).tap();
      await button(page, 'Mended: 72 on the needle now').tap();
      await page.getByText('72 is right. Row 48 is firm ground now.').waitFor();
    });

    it('a lost place is found from what is on the needle', async () => {
      const page = await openSleeve(20, size);
      await openTool(page, 'Find my place');
      await field(page, 'Stitches on the needle').fill('70');
      await page.getByRole('heading', { name: '4 rows fit' }).waitFor();
      await page.getByText('What tells them apart').waitFor();
      await shot(page, 'count-find');
      await isSound(page);
      await field(page, 'Rows above the last shaping at an edge').fill('2');
      await page.getByRole('heading', { name: '1 row fits' }).waitFor();
      await button(page, 'That is my place').tap();
      await page.getByText('The place is set: 45 rows are worked.').waitFor();
      await link(page, 'Back to the row in hand').first().tap();
      await page.getByText('Row 46 of 139').first().waitFor();
      expect(at.phone?.complaints).toEqual([]);
    });

    it('a lifeline is put in, rows are ripped back to it, and the place follows', async () => {
      const page = await openSleeve(50, size);
      await openTool(page, 'Notes and lifelines');
      await button(page, 'Put a lifeline through row 50').tap();
      await page.getByText('Lifeline in row 50').waitFor();
      await field(page, 'A note for row 51').fill('Tighter here <b>please</b>');
      await button(page, 'Keep the note').tap();
      await page.getByText('Tighter here <b>please</b>', { exact: true }).waitFor();
      await shot(page, 'count-notes');
      await isSound(page);
      await link(page, 'Back to the row in hand').first().tap();
      for (let row = 51; row <= 57; row += 1) await button(page, 'Row done').tap();
      await page.getByText('Row 58 of 139').first().waitFor();
      await openTool(page, 'Rip back');
      await page.getByText('Pull 7 rows.').waitFor();
      await page.getByText('Then 72 stitches are on the needle.').waitFor();
      await shot(page, 'count-rip');
      await isSound(page);
      await button(page, 'It is ripped back').tap();
      await page.getByText('Ripped back: 50 rows are worked, 72 stitches on the needle.').waitFor();
      await link(page, 'Back to the row in hand').last().tap();
      await page.getByText('Row 51 of 139').first().waitFor();
      await page.getByText('Tighter here <b>please</b>').last().waitFor();
      expect(at.phone?.complaints).toEqual([]);
    });

    it('rows not yet knitted are worked otherwise, on the drawing and with what it does to other pieces', async () => {
      const page = await openSleeve(60, size);
      await openTool(page, 'Plan the rest anew');
      await page.getByText('Another fabric, needle or rhythm from here', { exact: true }).tap();
      await page.getByLabel('Fabric', { exact: true }).selectOption('moss');
      await field(page, 'Needle, mm').fill('3.5');
      await page.getByRole('heading', { name: 'The new plan' }).waitFor();
      await page.locator('.count-card .map').waitFor();
      await shot(page, 'count-otherwise');
      await isSound(page);
      await page.getByText('I want a stretch longer or shorter', { exact: true }).tap();
      await field(page, 'Its length').fill('15');
      await page.getByText('The stretch has').first().waitFor();
      await page.getByText('Another fabric, needle or rhythm from here', { exact: true }).tap();
      await button(page, 'Knit by this plan').tap();
      await page.getByText('From here on by the new plan.').waitFor();
      await link(page, 'Back to the row in hand').last().tap();
      await page.locator('.before-row', { hasText: 'needle' }).waitFor();
      expect(at.phone?.complaints).toEqual([]);
    });

    it('what is no length, height, needle or row is told at its field with what is needed there, and nothing is planned by it', async () => {
      const page = await openSleeve(60, size);
      await openTool(page, 'Plan the rest anew');
      const wrong = (name: string) => page.locator('.field-wrong', { has: field(page, name) });
      const take = button(page, 'Knit by this plan');
      const isTold = async (name: string, typed: readonly string[], right: string) => {
        for (const text of typed) {
          await field(page, name).fill(right);
          await expect.poll(() => wrong(name).count(), { message: name }).toBe(0);
          await field(page, name).fill(text);
          await expect
            .poll(() => wrong(name).innerText(), { message: `${name}: ${text}` })
            .toMatch(/Type a number here, from .+ to .+\./);
          expect(await field(page, name).inputValue(), name).toBe(text);
          expect(await field(page, name).getAttribute('aria-invalid')).toBe('true');
          await expect.poll(() => take.count(), { message: `${name}: ${text}` }).toBe(0);
        }
      };
      await page.getByText('I want a stretch longer or shorter', { exact: true }).tap();
      // both are read first: the one has no figure beside the other's nonsense
      const [length, rows] = [
        await field(page, 'Its length').inputValue(),
        await field(page, 'Rows of it in all').inputValue(),
      ];
      await isTold('Its length', ['abc', '', '0', '-3', '99999'], length);
      await isTold('Rows of it in all', ['x', '', '0', '99999'], rows);
      await shot(page, 'count-no-length');
      await isSound(page);
      await page.getByText('It measures longer or shorter', { exact: true }).tap();
      await page.getByLabel('Counted from').selectOption({ index: 1 });
      await isTold('Height measured from there to the needle', ['abc', '', '0', '999'], '6.3');
      await page.getByText('Another fabric, needle or rhythm from here', { exact: true }).tap();
      await isTold('Needle, mm', ['four', '', '0', '99'], '3.5');
      await link(page, /^Back/).first().tap();
      await button(page, 'Row done').waitFor();
      await openTool(page, 'Rip back');
      for (const text of ['abc', '']) {
        await field(page, 'Rows that stay').fill('50');
        await page.getByText('Pull 10 rows.').waitFor();
        await field(page, 'Rows that stay').fill(text);
        await expect
          .poll(() => wrong('Rows that stay').innerText())
          .toContain('Type a number here, from 0 to 60.');
        expect(await button(page, 'It is ripped back').count()).toBe(0);
      }
      expect(at.phone?.complaints).toEqual([]);
    });

    it('a piece that measures longer is planned anew, and what no longer matches is said first', async () => {
      const page = await openSleeve(60, size);
      await openTool(page, 'Plan the rest anew');
      await page.getByText('It measures longer or shorter', { exact: true }).tap();
      await page.getByLabel('Counted from').selectOption({ index: 1 });
      await field(page, 'Height measured from there to the needle').fill('6.3');
      await page.getByRole('heading', { name: 'The new plan' }).waitFor();
      await page.getByText('Rows in all: 131 (before: 139)').waitFor();
      await page.getByText('What no longer matches').waitFor();
      await shot(page, 'count-measured');
      await isSound(page);
      await button(page, 'Knit by this plan').tap();
      await page.getByText('From here on by the new plan.').waitFor();
      await link(page, 'Back to the row in hand').last().tap();
      await page.getByText('Row 61 of 131').first().waitFor();
      await openTool(page, 'Plan the rest anew');
      await page.getByText('Plans so far').tap();
      await page.getByText('1: 139 rows').tap();
      await page.locator('details li').nth(138).waitFor();
      expect(at.phone?.complaints).toEqual([]);
    });

    it('two sleeves on one needle: one tap each in turn, or one for both', async () => {
      const page = await openSleeve(0, size);
      await openTool(page, 'Two on one needle');
      await button(page, 'Row done on both').waitFor();
      await shot(page, 'count-together');
      await fits(page);
      await button(page, 'Row done on both').tap();
      await page.getByText('This row: wrong side').waitFor();
      await button(page, /^Row 2 of Sleeve no\. 2 done$/).tap();
      await page.getByText('Sleeve no. 2 is a row ahead; now comes Sleeve no. 1.').waitFor();
      await button(page, /^Row 2 of Sleeve no\. 1 done$/).tap();
      await page.getByText('This row: right side').waitFor();
      await button(page, /^Undo on Sleeve no\. 2$/).tap();
      await page.getByText('Sleeve no. 1 is a row ahead; now comes Sleeve no. 2.').waitFor();
      // ripped further, it is told by its name, with the way to its row
      await button(page, /^Undo on Sleeve no\. 2$/).tap();
      await page.getByText('Sleeve no. 2 is 2 rows behind Sleeve no. 1.').waitFor();
      await fits(page);
      await link(page, 'To row 1 of Sleeve no. 2').tap();
      await page.getByText('Row 1 of 139').first().waitFor();
      expect(at.phone?.complaints).toEqual([]);
    });

    it('the pace is told from the log', async () => {
      const page = await openSleeve(0, size);
      for (let row = 1; row <= 5; row += 1) await button(page, 'Row done').tap();
      await page.getByText('Row 6 of 139').first().waitFor();
      await openTool(page, 'Pace and sittings');
      await page.getByText('Rows an hour').waitFor();
      await page.getByRole('img', { name: /^The last 1 sitting/ }).waitFor();
      await shot(page, 'count-pace');
      await isSound(page);
      expect(at.phone?.complaints).toEqual([]);
    });
  });
}

describe('by keyboard alone', () => {
  it('a count is typed, explained, and the place is set from the explanation', async () => {
    const page = await openSleeve(59);
    const tabTo = async (name: RegExp) => {
      for (let i = 0; i < 60; i += 1) {
        await page.keyboard.press('Tab');
        const said = await page.evaluate(() => {
          const at = document.activeElement;
          return `${at?.getAttribute('aria-label') ?? ''} ${at?.textContent ?? ''}`.trim();
        });
        if (name.test(said)) return;
      }
      throw new Error(`${name} cannot be reached by Tab`);
    };
    await page.locator('h1').focus();
    await tabTo(/^Tools/);
    await page.keyboard.press('Enter');
    await tabTo(/^Check the count/);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Check the count' }).waitFor();
    await page.getByText('The plan has 78 stitches on the needle.').waitFor();
    await tabTo(/^1$/);
    await page.keyboard.type('76');
    await tabTo(/^Compare/);
    await page.keyboard.press('Enter');
    await page.getByText('2 stitches too few').waitFor();
    await tabTo(/^Set the place: 58\srows are worked/);
    await page.keyboard.press('Enter');
    await page.getByText('Row 59 of 139').first().waitFor();
    expect(at.phone?.complaints).toEqual([]);
  });
});

describe('the second sleeve', () => {
  it('is offered to be knitted as the first really was, once that was planned anew', async () => {
    const page = await openSleeve(60);
    await openTool(page, 'Plan the rest anew');
    await page.getByText('The count stays as it is', { exact: true }).tap();
    await field(page, 'Stitches really on the needle').fill('76');
    await button(page, 'Knit by this plan').tap();
    await page.getByText('From here on by the new plan.').waitFor();
    const second = page.url().replace(/\/1\/rework.*$/, '/2/rework');
    await page.goto(second);
    await page.getByText('As the other one was really knitted', { exact: true }).tap();
    await page.getByText('Row by row as the other one.').waitFor();
    await shot(page, 'count-second');
    await button(page, 'Knit by this plan').tap();
    await page.getByText('From here on by the new plan.').waitFor();
    await page.goto(second.replace('/rework', ''));
    await page.getByText('Row 1 of 139').first().waitFor();
    expect(at.phone?.complaints).toEqual([]);
  });
});

describe('the count that is compared', () => {
  it('is in sight with its pad on the smallest phone, nothing scrolled', async () => {
    const page = await openSleeve(20, 'small');
    await openTool(page, 'Check the count');
    const compare = button(page, 'Compare');
    await compare.waitFor();
    const seen = await compare.evaluate((one) => one.getBoundingClientRect().bottom - innerHeight);
    expect(seen).toBeLessThanOrEqual(0);
    expect(await page.evaluate(() => scrollY)).toBe(0);
  });
});
