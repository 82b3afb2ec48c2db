import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { inTheBox, liesInTheBox } from './backed-up.ts';
import { walkedOn } from './drive.ts';
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

/** Choices of a field that are longer than the room that it has for the chosen one. */
const cutIn = (field: Locator) =>
  field.evaluate((select: HTMLSelectElement) => {
    const { font, letterSpacing, paddingInlineStart, paddingInlineEnd } = getComputedStyle(select);
    const room = select.clientWidth - parseFloat(paddingInlineStart) - parseFloat(paddingInlineEnd);
    const text = Object.assign(document.createElement('span'), {
      style: 'position: fixed; white-space: pre',
    });
    Object.assign(text.style, { font, letterSpacing });
    document.body.append(text);
    const wide = [...select.options].map(({ label }) => {
      text.textContent = label;
      return { label, width: text.getBoundingClientRect().width };
    });
    text.remove();
    return wide.filter(({ width }) => width > room).map(({ label }) => label);
  });

describe('needles by their US numbers', () => {
  it.each(walkedOn('common'))(
    'stand whole in the field of a swatch on the %s phone, from US 5/0 to US 50, the millimetres with them',
    async (size) => {
      const { page } = await at.open({ size });
      await openDraft(page);
      const needle = page.getByLabel('Needle', { exact: true }).first();
      const sizes = await needle.locator('option').allTextContents();
      expect(sizes[0]).toBe('US\u00a05/0 (1\u00a0mm)');
      expect(sizes.at(-1)).toBe('US\u00a050 (25\u00a0mm)');
      expect(await cutIn(needle)).toEqual([]);
    },
  );
});

describe('a design in inches', () => {
  it('has every length that is worked out in the eighths of a tape, what she typed as she typed it, and is stored as it was when units are changed', async () => {
    const { page } = await at.open();
    await openDraft(page);
    const fresh = await lengths(page);
    expect(fresh.length).toBeGreaterThan(20);
    expect(fresh.filter((value) => !/^−?\d*\s?(?:[¼½¾]|[1357]⁄8)?$/.test(value))).toEqual([]);

    // worked out in millimetres: 55 are 2 1⁄8 in the field, and so are they asked for
    await unfold(page);
    for (const [field, measure] of [
      ['hem.heightMm', 'Height of the hem'],
      ['shoulderDropMm', 'Slope of the shoulder'],
    ] as const) {
      const typed = await page.locator(`[data-field="${field}"] input`).inputValue();
      const row = page.locator('.draft-table tr', {
        has: page.getByRole('rowheader', { name: measure, exact: true }),
      });
      expect(await row.locator('td').first().innerText(), measure).toBe(`${typed}\u00a0in`);
    }

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
