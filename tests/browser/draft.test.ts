import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { liesInTheBox } from './backed-up.ts';
import { type Phone, type phones, walkedOn } from './drive.ts';
import { hostAndPhone } from './host-and-phone.ts';
import { foldsMade, unfold } from './unfolded.ts';
import { until } from './until.ts';

const at = hostAndPhone();

/** A phone set to British English measures in centimetres. */
async function openDraft(size: keyof typeof phones, units: 'cm' | 'in' = 'cm'): Promise<Page> {
  const phone = await at.open({ size });
  if (units === 'cm')
    await phone.page.addInitScript(() =>
      Object.defineProperty(navigator, 'languages', { get: () => ['en-GB'] }),
    );
  await phone.page.goto(`${at.url}#/draft`);
  await foldsMade(phone.page);
  return phone.page;
}

/** Pictures to look at, where a folder for them is named. */
async function shot(page: Page, name: string): Promise<void> {
  const folder = process.env.RIDGELINE_SHOTS;
  if (folder === undefined) return;
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: `${folder}/draft-${name}.png`, fullPage: true });
}

async function openAll(page: Page): Promise<void> {
  if (page.url().endsWith('#/draft')) await foldsMade(page);
  await unfold(page);
}

const choose = (page: Page, legend: string, option: string) =>
  page.getByRole('group', { name: legend, exact: true }).getByText(option, { exact: true }).tap();

const group = (page: Page, title: string) =>
  page.locator('.group').filter({ has: page.getByRole('heading', { name: title, exact: true }) });

/** Whether the page can be moved sideways, and what sticks out. */
const stickingOut = (page: Page) =>
  page.evaluate(() => {
    const wide = document.documentElement.scrollWidth > document.documentElement.clientWidth;
    return wide ? document.documentElement.scrollWidth : 0;
  });

/** All that is drawn of the garment. */
const drawing = (page: Page) =>
  page
    .locator('.draft-drawing .draft-made')
    .evaluateAll((paths) => paths.map((path) => path.getAttribute('d')).join(' '));

/** Heights of the names of the draft's first steps, in lines of their letters. */
const linesOfSteps = (page: Page) =>
  page
    .locator('.draft-steps h2')
    .evaluateAll((all) =>
      all.map((one) => Math.round(one.clientHeight / parseFloat(getComputedStyle(one).lineHeight))),
    );

describe('a garment from measures and a swatch', () => {
  it('breaks no long word of its first steps, in German either', async () => {
    const { page } = await at.open({ locale: 'de-DE' });
    await page.goto(`${at.url}#/draft`);
    await page.getByRole('heading', { name: 'Maschenprobe', exact: true }).waitFor();
    expect(await linesOfSteps(page)).toEqual([1, 1]);
  });

  it('is shown to scale while a figure changes, warns at the field, is overruled, survives a reload and is made', async () => {
    const page = await openDraft('common');
    await openAll(page);
    const before = await drawing(page);
    const length = page.getByLabel('Length', { exact: true });
    await length.fill('72');
    await until(
      () => drawing(page),
      (now) => now !== before,
    );

    // each rounding is stated
    const row = page.getByRole('row', { name: /^Length 72 cm/ });
    await expect.poll(() => row.innerText()).toMatch(/72\scm\s+7[12](\.\d)?\scm/);

    // a table's title is as wide as its table, not a word a line
    const titles = page.locator('.draft-table caption');
    await expect
      .poll(() =>
        titles.evaluateAll((all) =>
          all.map(({ clientWidth: wide, parentElement: table }) => wide > 0.9 * (table?.clientWidth ?? 0)),
        ),
      )
      .toEqual([true, true]);

    // a head that does not pass: said at the neck, then overruled
    await page.getByLabel('Neck width', { exact: true }).fill('9');
    await page.getByLabel('Neck depth in front', { exact: true }).fill('2');
    const caution = page.locator('[data-field="neck.widthMm"] .draft-caution');
    await expect.poll(() => caution.innerText()).toContain('less than the head');
    await shot(page, 'caution');
    await caution.getByRole('button', { name: 'Keep it so' }).tap();
    await expect.poll(() => caution.innerText()).toContain('You keep it so.');

    // what cannot be is said at its field and stops the making
    await page.getByLabel('Neck width', { exact: true }).fill('60');
    const make = page.getByRole('button', { name: 'Make it', exact: true });
    await expect.poll(() => make.isDisabled()).toBe(true);
    await expect
      .poll(() => page.locator('[data-field="neck.widthMm"]').innerText())
      .toContain('leaves too little');
    await page.getByLabel('Neck width', { exact: true }).fill('18');
    await expect.poll(() => make.isDisabled()).toBe(false);

    await page.getByLabel('Name of the garment').fill('Grey pullover');
    await liesInTheBox(page, 'Grey pullover');
    await page.reload();
    await page.locator('.group').first().waitFor();
    await openAll(page);
    await expect.poll(() => page.getByLabel('Length', { exact: true }).inputValue()).toBe('72');
    await make.tap();
    await page.getByRole('heading', { level: 1, name: 'Grey pullover' }).waitFor();
    for (const piece of ['Back', 'Front', 'Sleeve', 'Neckband']) {
      await expect.poll(() => page.getByText(piece, { exact: true }).count()).toBeGreaterThan(0);
    }
    expect(at.phone?.complaints).toEqual([]);
    expect(at.phone?.strangers).toEqual([]);

    // from what was knitted back to the figures that it was drafted from
    await openAll(page);
    await page.getByRole('link', { name: 'As it was knitted' }).tap();
    await page.getByRole('button', { name: 'Design another from its figures' }).tap();
    await page.locator('.group').first().waitFor();
    await openAll(page);
    await expect.poll(() => page.getByLabel('Length', { exact: true }).inputValue()).toBe('72');
  });

  it('keeps several people, takes a size of the tables, and measures in inches on a phone that does', async () => {
    const page = await openDraft('common');
    await openAll(page);
    await page.getByLabel('Whose measures').selectOption({ label: 'Children (years), 8' });
    const chest = page.getByLabel('Chest', { exact: true }).first();
    await until(
      () => chest.inputValue(),
      (value) => value === '67.31',
    );
    await page.getByLabel('Chest', { exact: true }).first().fill('70');
    const people = group(page, 'Measures');
    for (const name of ['Ida', 'Tom']) {
      await people.getByLabel('Name', { exact: true }).fill(name);
      await people.getByRole('button', { name: 'Keep these measures' }).tap();
      await page.getByText(`Measures of ${name} kept.`).waitFor();
    }
    await page.getByLabel('Whose measures').selectOption({ label: 'Women, L' });
    await page.getByLabel('Whose measures').selectOption({ label: 'Ida' });
    await until(
      () => chest.inputValue(),
      (value) => value === '70',
    );
    await liesInTheBox(page, '"person":{"name":"Ida"}');
    await page.close();
    const inInches = await (at.phone as Phone).context.newPage();
    await inInches.goto(`${at.url}#/draft`);
    await inInches.locator('.group').first().waitFor();
    // 70 cm to the sixteenth of an inch that a tape shows
    await expect.poll(() => inInches.getByLabel('Chest', { exact: true }).first().inputValue()).toBe('27½');
    // 21 stitches and 28 rows to 10 cm are as many 1.016 times to four inches of 25.4 mm
    await openAll(inInches);
    const swatch = inInches.locator('.draft-swatch p').first();
    await expect.poll(() => swatch.innerText()).toMatch(/^21\.3\sstitches and 28\.4\srows in 4\sin\./);
  });

  it('shows sizes side by side, and a cardigan with bands and button holes', async () => {
    const page = await openDraft('common');
    await openAll(page);
    await choose(page, 'Garment', 'Cardigan');
    await choose(page, 'Armhole', 'Raglan');
    await choose(page, 'Neck', 'V');
    await group(page, 'In several sizes').getByRole('button', { name: 'Work out the sizes' }).tap();
    const table = page.locator('.size-table');
    await table.waitFor();
    await expect
      .poll(() => table.getByRole('columnheader').allInnerTexts())
      .toEqual(expect.arrayContaining(['XS', 'S', 'M', 'L', 'XL']));
    await expect.poll(() => table.innerText()).toContain('Front band');
    await shot(page, 'sizes');
    await page.getByRole('button', { name: 'Make it', exact: true }).tap();
    await page.getByRole('heading', { level: 1, name: 'New garment' }).waitFor();
  });

  it.each(walkedOn('small'))('stands on a %s phone without sideways scrolling', async (size) => {
    const page = await openDraft(size);
    await shot(page, `${size}-folded`);
    await openAll(page);
    await shot(page, `${size}-open`);
    expect(await stickingOut(page)).toBe(0);
  });

  it('is a drawing to touch: an edge opens its tiles, a figure leads to its own field, a measure of the body to the list', async () => {
    const page = await openDraft('common');
    const fieldInHand = () =>
      page.evaluate(() => document.activeElement?.closest('[data-field]')?.getAttribute('data-field'));
    const touchEdge = async (edge: string) => {
      const at = await page
        .locator(`[data-edge-line="${edge}"]`)
        .first()
        .evaluate((path) => {
          const line = path as SVGPathElement;
          const { left, top } = (line.ownerSVGElement as SVGElement).getBoundingClientRect();
          // where no figure lies on it
          const shares = [0.5, 0.6, 0.4, 0.7, 0.3, 0.8, 0.2, 0.9, 0.1];
          const points = shares.map((share) => line.getPointAtLength(line.getTotalLength() * share));
          const all = points.map(({ x, y }) => ({ x: left + x, y: top + y }));
          return all.find(({ x, y }) => document.elementFromPoint(x, y)?.closest('.draft-drawing'));
        });
      if (!at) throw new Error(`${edge} is covered`);
      await page.touchscreen.tap(at.x, at.y);
    };
    await page.evaluate(() => scrollTo(0, 0));
    for (const [edge, choice] of [
      ['neck', 'Boat'],
      ['armhole', 'Drop shoulder'],
      ['side', 'Tapered'],
      ['sleeve', 'Straight'],
    ] as const) {
      await page.evaluate(() => scrollTo(0, 0));
      await touchEdge(edge);
      const own = page.locator(`[data-edge="${edge}"]`);
      await own.getByRole('radio', { name: choice }).waitFor();
      // the other edges are folded, and the place is at this one's name
      expect(await page.locator('[data-edge] > details[open]').count()).toBe(1);
      await expect
        .poll(() =>
          page.evaluate(() => document.activeElement?.closest('[data-edge]')?.getAttribute('data-edge')),
        )
        .toBe(edge);
      await page.locator(`.draft-edge-open[data-edge-line="${edge}"]`).first().waitFor({ state: 'attached' });
      const before = await drawing(page);
      await own.getByText(choice, { exact: true }).tap();
      await until(
        () => drawing(page),
        (now) => now !== before,
      );
      await own.locator('summary').first().getByText(choice).waitFor();
    }
    for (const field of ['neck.widthMm', 'sleeve.lengthMm', 'ease.chest']) {
      await page.locator(`.draft-figure[data-to="${field}"]`).first().tap();
      await until(fieldInHand, (at) => at === field);
    }
    const measures = group(page, 'Measures');
    await measures.locator('summary').first().tap();
    await page.getByText('Each measure').tap();
    await page.locator('.draft-body [data-to="body.waist"]').tap();
    await until(fieldInHand, (at) => at === 'body.waist');
    await choose(page, 'Fit', 'Oversized');
    expect(await page.getByRole('radio', { name: 'Oversized' }).isChecked()).toBe(true);
  });

  it('has each edge and figure of its drawing by keyboard too, named, in the order of the form', async () => {
    const page = await openDraft('common');
    await page.locator('.draft-figure').first().focus();
    const seen: string[] = [];
    while (seen.length < 40 && seen.at(-1) !== 'hem') {
      seen.push(
        await page.evaluate(() => {
          const at = document.activeElement;
          return (at?.getAttribute('data-to') ?? at?.closest('[data-edge]')?.getAttribute('data-edge')) || '';
        }),
      );
      await page.keyboard.press('Tab');
    }
    const figures = await page
      .locator('.draft-figure')
      .evaluateAll((all) => all.map((one) => one.getAttribute('data-to') ?? ''));
    expect(figures.length).toBeGreaterThan(5);
    expect(seen).toEqual([...figures, 'neck', 'armhole', 'side', 'sleeve', 'hem']);
    const edges = await page
      .locator('.draft-drawing [data-edge-line]')
      .evaluateAll((all) => [...new Set(all.map((one) => one.getAttribute('data-edge-line')))]);
    expect(edges.sort()).toEqual(['armhole', 'hem', 'neck', 'side', 'sleeve']);
    await page.getByRole('button', { name: /^Neck width .*(cm|in)/ }).press('Enter');
    await page.getByLabel('Neck width', { exact: true }).waitFor();
  });

  it('says at a swatch’s own field what it needs, and leads there', async () => {
    const page = await openDraft('common');
    await openAll(page);
    const stitches = page.getByLabel('Stitches', { exact: true }).first();
    for (const typed of ['', '0', '2100']) {
      await stitches.fill(typed);
      await until(
        () => stitches.getAttribute('aria-invalid'),
        (invalid) => invalid === 'true',
      );
    }
    await page.getByLabel('Name of the garment').focus();
    await page.locator('.draft-goto').tap();
    await until(
      () => stitches.evaluate((field) => field === document.activeElement),
      (isThere) => isThere,
    );
    await stitches.fill('22');
    await until(
      () => stitches.getAttribute('aria-invalid'),
      (invalid) => invalid !== 'true',
    );
  });

  it('works by keyboard: groups open with Enter, choices move with the arrows', async () => {
    const page = await openDraft('common');
    const summary = group(page, 'Hem').locator('summary').first();
    await summary.focus();
    await page.keyboard.press('Enter');
    await page.getByLabel('Hem: height', { exact: true }).waitFor();
    await page.getByRole('radio', { name: 'Pullover' }).focus();
    await page.keyboard.press('ArrowRight');
    await until(
      () => page.getByRole('radio', { name: 'Cardigan' }).isChecked(),
      (checked) => checked,
    );
    await group(page, 'Front bands').locator('summary').first().focus();
    await page.keyboard.press('Enter');
    await page.getByLabel('Buttons', { exact: true }).waitFor();
    // one edge at a time
    expect(await page.getByLabel('Hem: height', { exact: true }).isVisible()).toBe(false);
  });
});
