import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { garmentToLink } from '../../src/store/share/link.ts';
import { violations } from './axe.ts';
import { phones } from './drive.ts';
import { shot } from './editor-hand.ts';
import { hostAndPhone } from './host-and-phone.ts';

const at = hostAndPhone();

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });

const square = (name: string) => ({
  name,
  makes: 1,
  role: 'other' as const,
  gauge: { stitches: 20, rows: 28 },
  parts: [
    {
      name,
      from: { castOn: 20 },
      sections: [{ name: 'square', rows: 28, fabric: 'garter' as const, needle: 4, shaping: [] }],
      end: 'bind off' as const,
    },
  ],
});

async function openBlanket(size: keyof typeof phones): Promise<Page> {
  const phone = await at.open({ size });
  const { page } = phone;
  const link = await garmentToLink({ name: 'Blanket', pieces: [square('Sea'), square('Sand')] });
  await page.goto(`${at.url}#/open/${link}`);
  await button(page, 'Put it in the workbasket').tap();
  await page.getByRole('link', { name: 'Making up' }).first().waitFor();
  await page.getByRole('link', { name: 'Making up' }).first().tap();
  await page.getByRole('heading', { level: 1, name: 'Making up' }).waitFor();
  return page;
}

describe('edges that nothing is joined to', () => {
  for (const size of ['common', 'small'] as const) {
    it(`are joined by their names, stay joined, and are taken apart again (${phones[size].width} px)`, async () => {
      const page = await openBlanket(size);
      await page.getByText('Join two edges', { exact: true }).tap();
      await page.getByText('Join them', { exact: true }).tap();
      await page.getByText('Choose two edges first.').waitFor();
      await page.getByRole('checkbox', { name: /^Sea: .*right edge, 28 rows/ }).check();
      await page.getByRole('checkbox', { name: /^Sand: .*left edge, 28 rows/ }).check();
      await shot(page, 'join');
      expect(await violations(page)).toEqual([]);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      await button(page, 'Join them').tap();
      const step = page.getByRole('listitem').filter({ hasText: /^Join Sea: .* to Sand: .*/ });
      await step.waitFor();
      await page.reload();
      await step.waitFor();
      await page.getByText('Join two edges', { exact: true }).tap();
      await expect.poll(() => page.getByRole('checkbox', { name: /right edge, 28 rows/ }).count()).toBe(1);
      await button(page, 'Another step').tap();
      await button(page, /^Join Sea: .* to Sand: .*/).tap();
      await page.getByText('28 rows on the one edge, 28 on the other.').waitFor();
      await shot(page, 'joined');
      await button(page, 'Take it apart').tap();
      await step.waitFor({ state: 'detached' });
    });
  }

  it('are chosen on the drawings by touch too', async () => {
    const page = await openBlanket('common');
    await page.getByText('Join two edges', { exact: true }).tap();
    const edges = page.locator('.join-touch');
    await edges.first().waitFor({ state: 'attached' });
    await edges.nth(0).dispatchEvent('click');
    await edges.nth(5).dispatchEvent('click');
    await expect.poll(() => page.locator('.join-list input:checked').count()).toBe(2);
    await edges.nth(0).dispatchEvent('click');
    await expect.poll(() => page.locator('.join-list input:checked').count()).toBe(1);
  });
});
