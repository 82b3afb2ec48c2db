import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { garmentToLink } from '../../src/store/share/link.ts';
import { violations } from './axe.ts';
import { shot } from './editor-hand.ts';
import { hostAndPhone } from './host-and-phone.ts';
import { unfold } from './knitter.ts';

const at = hostAndPhone();

const scarf = await garmentToLink({
  name: 'Scarf',
  pieces: [
    {
      name: 'Scarf',
      makes: 1,
      gauge: { stitches: 20, rows: 40, fabric: 'garter' },
      parts: [
        {
          name: 'Scarf',
          from: { castOn: 30 },
          sections: [{ name: 'Body', rows: 60, fabric: 'garter', needle: 4, shaping: [] }],
          end: 'bind off',
        },
      ],
    },
  ],
});

/** Looked at, sound, and not wider than the phone. */
async function looked(page: Page, name: string): Promise<void> {
  await shot(page, name);
  expect(await violations(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
}

describe('where the fabric is garter stitch', () => {
  it('ridges stand beside rows: on the row, where the place is looked for, ripped back, noted and printed', async () => {
    const phone = await at.open({ size: 'small' });
    const { page } = phone;
    await page.goto(`${at.url}#/open/${scarf}`);
    await page.getByRole('button', { name: 'Put it in the workbasket' }).tap();
    await unfold(page);
    const make = await page.locator('a[href*="#/k/"]').first().getAttribute('href');
    await page.goto(`${at.url}${make}?row=35`);
    await page.getByRole('button', { name: 'Make row 35 the next', exact: true }).tap();
    await page.locator('.row-ridge', { hasText: 'ridge 18' }).waitFor();
    await looked(page, 'ridges-row');

    await page.goto(`${at.url}${make}/find`);
    const labels = page.locator('.count-page label');
    await labels.filter({ hasText: 'Ridges above it' }).waitFor();
    const names = await labels.allInnerTexts();
    expect(names.findIndex((name) => name.includes('Ridges above it'))).toBeLessThan(
      names.findIndex((name) => name.includes('Stitches on the needle')),
    );
    // nothing of it is shaped
    expect(names.filter((name) => name.includes('shaping'))).toEqual([]);
    await page.getByRole('textbox', { name: 'Ridges above it' }).fill('10');
    await page.getByRole('heading', { name: '4 rows fit' }).waitFor();
    await page.getByText('Row 20 (ridge 10) is worked, row 21 is next').waitFor();
    await looked(page, 'ridges-find');

    await page.goto(`${at.url}${make}/rip`);
    await page.getByRole('textbox', { name: 'or ridges that stay' }).fill('12');
    await page.getByText('Pull 10 rows (5 ridges).').waitFor();
    await looked(page, 'ridges-rip');

    await page.goto(`${at.url}${make}/notes`);
    await page.getByRole('button', { name: 'Put a lifeline through row 34 (ridge 17)' }).waitFor();
  });
});
