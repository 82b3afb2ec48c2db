import { expect, it } from 'vitest';
import { violations } from './axe.ts';
import { walkedBy } from './drive.ts';
import { hostAndPhone } from './host-and-phone.ts';

const host = hostAndPhone();

const walks = [
  {
    locale: 'en',
    size: 'small',
    make: 'Make it',
    fold: 'Parts, notes, edit, pass on, print',
    another: /^Another in another size/,
    whose: 'Whose measures',
    begin: 'Draft it',
    name: /, again$/,
  },
  {
    locale: 'de',
    size: 'common',
    make: 'Anlegen',
    fold: 'Teilstücke, Notizen, ändern, weitergeben, drucken',
    another: /^Noch eins in anderer Größe/,
    whose: 'Wessen Maße',
    begin: 'Entwerfen',
    name: /, noch einmal$/,
  },
] as const;

it.each(walkedBy(walks, ({ size }) => size === 'small'))(
  'another garment in another size begins from the page of one ($locale)',
  async (walk) => {
    const { page, complaints } = await host.open({ locale: walk.locale, size: walk.size });
    await page.goto(`${host.url}#/draft`);
    await page.getByRole('button', { name: walk.make }).tap();
    const fold = page.locator('summary', {
      has: page.getByRole('heading', { name: walk.fold, exact: true }),
    });
    await fold.click();
    const first = page.url();
    await page.getByRole('button', { name: walk.another }).tap();
    const begin = page.getByRole('button', { name: walk.begin, exact: true });
    // none is chosen for her
    expect(await begin.isDisabled()).toBe(true);
    await page.getByLabel(walk.whose).selectOption('women L');
    expect(await violations(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    await begin.tap();
    const name = page.getByLabel(/^(Name of the garment|Name des Strickstücks)$/);
    await expect.poll(() => name.inputValue()).toMatch(walk.name);
    await page.getByRole('button', { name: walk.make }).tap();
    await fold.waitFor();
    expect(page.url()).not.toBe(first);
    expect(complaints).toEqual([]);
  },
);
