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

const likes = [
  {
    locale: 'en-GB',
    size: 'small',
    name: 'Name',
    gauge: [/^Stitches in 10\scm/, /^Rows in 10\scm/],
    width: 'Width, cm',
    make: 'Make back, front and sleeves',
    save: 'Save',
    fold: 'Parts, notes, edit, pass on, print',
    another: /^Another in another size/,
    begin: 'Begin it',
    again: 'Garter, again',
    other: 'Another one is begun',
    replace: 'Put these in its place',
  },
  {
    locale: 'de',
    size: 'common',
    name: 'Name',
    gauge: [/^Maschen auf 10\scm/, /^Reihen auf 10\scm/],
    width: 'Breite, cm',
    make: 'Rückenteil, Vorderteil und Ärmel anlegen',
    save: 'Speichern',
    fold: 'Teilstücke, Notizen, ändern, weitergeben, drucken',
    another: /^Noch eins in anderer Größe/,
    begin: 'Anfangen',
    again: 'Garter, noch einmal',
    other: 'Ein anderes ist angefangen',
    replace: 'Diese an seine Stelle setzen',
  },
] as const;

it.each(walkedBy(likes, ({ size }) => size === 'small'))(
  'another of a garment made by its numbers begins with its figures, to be asked anew ($locale)',
  async (walk) => {
    const { page, complaints } = await host.open({ locale: walk.locale, size: walk.size });
    await page.goto(`${host.url}#/new`);
    const [stitches, rows] = walk.gauge;
    const width = page.getByLabel(walk.width, { exact: true });
    const button = (name: string | RegExp) => page.getByRole('button', { name });
    const toOther = async () => {
      await page
        .locator('summary', { has: page.getByRole('heading', { name: walk.fold, exact: true }) })
        .click();
      await button(walk.another).tap();
      expect(await violations(page)).toEqual([]);
      await button(walk.begin).tap();
    };
    await page.getByLabel(walk.name, { exact: true }).first().fill('Garter');
    await page.getByLabel(stitches).first().fill('20');
    await page.getByLabel(rows).first().fill('40');
    await width.fill('55');
    await button(walk.make).tap();
    await button(walk.save).tap();
    await page.getByRole('heading', { level: 1, name: 'Garter' }).waitFor();
    const first = page.url();
    await toOther();
    // the figure as she typed it, asked anew
    await expect.poll(() => width.inputValue()).toBe('55');
    await expect
      .poll(() => page.getByLabel(walk.name, { exact: true }).first().inputValue())
      .toBe(walk.again);
    await width.fill('60');
    await button(walk.make).tap();
    // not yet saved: it is kept, and a second one asks before it takes its place
    await page.goto(first);
    await toOther();
    await page.getByRole('heading', { name: walk.other }).waitFor();
    await button(walk.replace).tap();
    await expect.poll(() => width.inputValue()).toBe('55');
    await width.fill('61');
    await button(walk.make).tap();
    await button(walk.save).tap();
    await page.getByRole('heading', { level: 1, name: walk.again }).waitFor();
    expect(page.url()).not.toBe(first);
    // 61 cm at 20 to 10 cm
    await page.locator('.screen-foot a[href*="#/k/"]').tap();
    await page
      .getByText(/\b122\b/)
      .first()
      .waitFor();
    expect(complaints).toEqual([]);
  },
);
