import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { inTheBox, liesInTheBox } from './backed-up.ts';
import { hostAndPhone } from './host-and-phone.ts';
import { foldsMade, unfold } from './unfolded.ts';

const at = hostAndPhone();

async function openDraft(page: Page): Promise<void> {
  await page.goto(`${at.url}#/draft`);
  await foldsMade(page);
  await unfold(page);
}

/** Every length of the design, as it stands in its field. */
const lengths = (page: Page) =>
  page
    .locator('.draft-field input')
    .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value).filter((value) => value !== ''));

/** As it lies in the box. */
const design = async (page: Page) =>
  [...(await inTheBox(page, 'settings')).values()].filter((one) =>
    JSON.stringify(one).includes('neck.widthMm'),
  );

async function measureIn(page: Page, units: 'Centimetres' | 'Inches'): Promise<void> {
  await page.goto(`${at.url}#/settings`);
  await page.getByText(units, { exact: true }).tap();
  await expect.poll(() => page.getByRole('radio', { name: units }).isChecked()).toBe(true);
}

describe('a design in inches', () => {
  it('has every length that is worked out in the eighths of a tape, what she typed as she typed it, and is stored as it was when units are changed', async () => {
    const { page } = await at.open();
    await openDraft(page);
    const fresh = await lengths(page);
    expect(fresh.length).toBeGreaterThan(20);
    expect(fresh.filter((value) => !/^−?\d*\s?(?:[¼½¾]|[1357]⁄8)?$/.test(value))).toEqual([]);

    const neck = page.getByLabel('Neck width', { exact: true });
    await neck.fill('7.2');
    await neck.blur();
    await liesInTheBox(page, '182.88');
    expect(await neck.inputValue()).toBe('7.2');
    const stored = await design(page);
    expect(stored).toHaveLength(1);

    await measureIn(page, 'Centimetres');
    await openDraft(page);
    expect(await neck.inputValue()).toBe('18.3');
    await measureIn(page, 'Inches');
    await openDraft(page);
    expect(await neck.inputValue()).toBe('7.2');
    expect((await lengths(page)).filter((value) => value.includes('.'))).toEqual(['7.2']);
    expect(await design(page)).toEqual(stored);
  });
});
