import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { serve } from '../run/serve.ts';
import { violations } from './axe.ts';
import { openPhone, phones, removeProfiles } from './drive.ts';
import { type Knitter, knitterAt } from './knitter.ts';

afterAll(removeProfiles);

interface Sight {
  readonly name: string;
  readonly come: (page: Page, knitter: Knitter) => Promise<unknown>;
}

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).tap();
/** Opens a sheet by its button, after the one that may be open was closed. */
async function sheet(page: Page, button: string): Promise<void> {
  if ((await page.locator('dialog[open]').count()) > 0) await press(page, 'Close');
  await press(page, button);
  await page.locator('dialog[open]').waitFor();
}

const atRow = async (page: Page, knitter: Knitter, row: number) => {
  await knitter.open(`#/k/sample/back/0/1?row=${row}`);
  await press(page, `Row ${row} is next`);
  await knitter.pad.waitFor();
};

/** Every screen and state, each coming from the one before. */
const sights: readonly Sight[] = [
  {
    name: 'the empty workbasket',
    come: (page, knitter) =>
      knitter.open('').then(() => page.getByRole('link', { name: /Open the sample/ }).waitFor()),
  },
  { name: 'row 1 with its set-up', come: (_, knitter) => knitter.openSample() },
  { name: 'a shaping row', come: (page, knitter) => atRow(page, knitter, 119) },
  { name: 'the rows to go back to', come: (page) => sheet(page, 'Go back') },
  { name: 'the tools', come: (page) => sheet(page, 'Tools') },
  {
    name: 'the meaning of the words',
    come: (page) =>
      sheet(page, 'What the words mean').then(() => page.locator('dialog[open] dd').first().waitFor()),
  },
  {
    name: 'the lock',
    come: async (page) => {
      await press(page, 'Close');
      await press(page, 'Lock');
      await page.getByText('Hold to unlock').waitFor();
    },
  },
  {
    name: 'a row that is only read',
    come: (page, knitter) =>
      knitter
        .open('#/k/sample/back/0/1?row=40')
        .then(() => page.getByText('You are reading row 40').waitFor()),
  },
  {
    name: 'the end of a part',
    come: async (page, knitter) => {
      await atRow(page, knitter, 192);
      await knitter.pad.tap();
      await page.getByRole('link', { name: 'Begin Front: Body' }).waitFor();
    },
  },
  {
    name: 'the workbasket',
    come: (page, knitter) =>
      knitter.open('#/').then(() => page.locator('.garment-drawing .thumb').first().waitFor()),
  },
  {
    name: 'the garment',
    come: (page, knitter) =>
      knitter.open('#/g/sample').then(() => page.getByRole('heading', { name: 'Neckband' }).waitFor()),
  },
  {
    name: 'the question before deleting',
    come: (page) => sheet(page, 'Delete this garment'),
  },
  {
    name: 'the print',
    come: (page, knitter) =>
      knitter.open('#/g/sample/print?piece=front').then(() => page.locator('.paper').waitFor()),
  },
  {
    name: 'the settings',
    come: (page, knitter) =>
      knitter.open('#/settings').then(() => page.getByRole('heading', { name: 'While knitting' }).waitFor()),
  },
  {
    name: 'an address that leads nowhere',
    come: (page, knitter) =>
      knitter.open('#/nowhere').then(() => page.getByText('There is no such page').waitFor()),
  },
  {
    name: 'a make that is not there',
    come: (page, knitter) =>
      knitter.open('#/k/none/none/0/1').then(() => page.getByText('There is nothing to knit').waitFor()),
  },
];

const fitsWidth = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);

const looks = [
  { size: 'common', colorScheme: 'light' },
  { size: 'small', colorScheme: 'dark' },
] as const;

describe.each(looks)('every screen and state, $size in $colorScheme', ({ size, colorScheme }) => {
  it('has no violation that axe can find, and nothing that sticks out sideways', async () => {
    const host = await serve({ root: 'dist' });
    const phone = await openPhone({ size, colorScheme, reducedMotion: 'reduce' });
    const knitter = knitterAt(phone.page, host.url);
    const found: string[] = [];
    for (const { name, come } of sights) {
      await come(phone.page, knitter);
      found.push(...(await violations(phone.page)).map((violation) => `${name}: ${violation}`));
      if (!(await fitsWidth(phone.page))) found.push(`${name}: wider than ${phones[size].width} px`);
    }
    expect(found).toEqual([]);
    expect(phone.strangers).toEqual([]);
    await phone.close();
    await host.close();
  }, 180_000);
});

describe('what is read while knitting', () => {
  it('is large enough for arm’s length: the count at least 64 px, the row at least 26 px, the pad for a thumb', async () => {
    const host = await serve({ root: 'dist' });
    const phone = await openPhone();
    const knitter = knitterAt(phone.page, host.url);
    await knitter.openSample();
    const pixels = (selector: string) =>
      phone.page.locator(selector).evaluate((it) => Number.parseFloat(getComputedStyle(it).fontSize));
    expect(await pixels('.row-count')).toBeGreaterThanOrEqual(64);
    expect(await pixels('.row-work')).toBeGreaterThanOrEqual(26);
    const pad = await knitter.pad.boundingBox();
    expect(pad?.height).toBeGreaterThanOrEqual(96);
    expect((pad?.y ?? 0) + (pad?.height ?? 0)).toBeLessThanOrEqual(844);
    const small = await phone.page
      .locator('button:visible, a:visible')
      .evaluateAll((all) =>
        all
          .map((it) => ({ name: it.textContent, ...it.getBoundingClientRect().toJSON() }))
          .filter((box) => box.width < 44 || box.height < 44),
      );
    expect(small).toEqual([]);
    await phone.close();
    await host.close();
  });
});
