import { writeFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { readPattern } from '../../src/knit/pattern/read-pattern.ts';
import { violations } from './axe.ts';
import { liesInTheBox } from './backed-up.ts';
import { walkedBy } from './drive.ts';
import { hostAndPhone } from './host-and-phone.ts';
import { foldsMade, unfold } from './unfolded.ts';
import { until } from './until.ts';

const at = hostAndPhone();

const words = {
  'en-GB': {
    name: 'Name of the garment',
    make: 'Make it',
    inSizes: 'In several sizes',
    passOn: 'Pass it on',
    work: 'Work out the sizes',
    save: 'Save the text',
    both: 'cm and inches',
    chest: 'Round the chest',
    looked: '19 points looked at; to mend:',
    size: 'Size',
    figure: 'What it shall be',
    change: 'Change it',
    back: 'Back to the rules: Length, M',
    sizes: 'Sizes: XS (S, M, L, XL)',
    writtenIn: 'Language and terms',
  },
  'de-DE': {
    name: 'Name des Strickstücks',
    make: 'Anlegen',
    inSizes: 'In mehreren Größen',
    passOn: 'Weitergeben',
    work: 'Größen berechnen',
    save: 'Text speichern',
    both: 'cm und Zoll',
    chest: 'Um die Brust',
    looked: '19 Punkte angesehen; zu verbessern:',
    size: 'Größe',
    figure: 'Was sie sein soll',
    change: 'Ändern',
    back: 'Zurück zur Regel: Länge, M',
    sizes: 'Größen: XS (S, M, L, XL)',
    writtenIn: 'Sprache und Begriffe',
  },
} as const;

/** mm: ISO 216 (A4); ANSI/ASME Y14.1, size A, 8.5 by 11 in (Letter). */
const papers = [
  ['A4', 210, 297],
  ['Letter', 215.9, 279.4],
] as const;
const POINTS_PER_MM = 72 / 25.4;

it.each(walkedBy(['en-GB', 'de-DE'] as const, (language) => language === 'de-DE'))(
  'from a draft to its pattern in five sizes, read back, at 390 px: %s',
  async (language) => {
    const { page, complaints, strangers } = await at.open({ size: 'common' });
    const say = words[language];
    await page.addInitScript(
      (tag) => Object.defineProperty(navigator, 'languages', { get: () => [tag] }),
      language,
    );
    await page.goto(`${at.url}#/draft`);
    await foldsMade(page);
    await unfold(page);
    await page.getByLabel(say.name).fill('Fen');
    await liesInTheBox(page, 'Fen');
    await page.getByRole('button', { name: say.make, exact: true }).tap();
    await page.getByRole('heading', { level: 1, name: 'Fen' }).waitFor();
    const id = await until(
      () => page.evaluate(() => /#\/g\/([^/?]+)/.exec(location.hash)?.[1]),
      (found) => found !== undefined,
    );
    await page.goto(`${at.url}#/g/${id}/pass-on`);
    await page.getByRole('link', { name: say.inSizes }).tap();
    await page.getByRole('heading', { level: 1, name: say.inSizes }).waitFor();
    // women's M is hers: two sizes to either side
    await expect.poll(() => page.getByRole('switch', { checked: true }).count()).toBe(5);
    await page.getByRole('button', { name: say.work }).tap();
    const row = page.getByRole('row', { name: new RegExp(`^${say.chest}`) });
    await expect.poll(() => row.getByRole('cell').count(), { timeout: 60_000 }).toBe(5);
    const written = page.locator('.written');
    // in her own language, until she chooses that of her followers
    await expect.poll(() => written.innerText()).toContain(say.sizes);
    await page.getByLabel(say.writtenIn).selectOption('UK');
    await expect.poll(() => written.innerText()).toContain('Sizes: XS (S, M, L, XL)');
    // of what nobody has told yet she is asked: who made it, its yarn, its licence
    await expect.poll(() => page.getByText(say.looked).count()).toBe(1);
    await expect.poll(() => page.locator('.pass-on li').count()).toBe(3);
    await page.getByText(say.both, { exact: true }).tap();
    // 37 in of the body table, 94 cm
    await expect
      .poll(() => written.innerText())
      .toMatch(/Body, round the chest: .* 94, .*\scm \/ 29 \(33, 37, 41, 45\)\sin/);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);

    expect(await violations(page)).toEqual([]);
    const folder = process.env.RIDGELINE_SHOTS;
    if (folder) await page.screenshot({ path: `${folder}/in-sizes-${language}.png`, fullPage: true });
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: say.save }).tap(),
    ]);
    expect(download.suggestedFilename()).toBe('Fen.txt');
    const text = await readFile((await download.path()) ?? '', 'utf8');
    for (const size of [0, 4]) {
      const read = readPattern(text, { size });
      expect(read.lines.flatMap(({ faults }) => faults)).toEqual([]);
      expect(read.pieces.map(({ plan }) => plan.ok)).toEqual([true, true, true, true]);
    }

    // on paper the pattern alone, black on white
    await page.emulateMedia({ media: 'print' });
    await expect.poll(() => written.isVisible()).toBe(true);
    await expect.poll(() => page.getByRole('table').isVisible()).toBe(false);
    for (const [format, width, height] of papers) {
      const pdf = (await page.pdf({ format })).toString('latin1');
      const boxes = [...pdf.matchAll(/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)];
      expect(boxes.length, format).toBeGreaterThan(3);
      for (const [, w, h] of boxes) {
        expect(Math.abs(Number(w) - width * POINTS_PER_MM), format).toBeLessThan(2);
        expect(Math.abs(Number(h) - height * POINTS_PER_MM), format).toBeLessThan(2);
      }
    }
    await page.emulateMedia({ media: 'screen' });

    // a figure of one size set by hand stays with the garment, and is given back
    await page.getByLabel(say.size, { exact: true }).last().selectOption('M');
    await page.getByLabel(say.figure, { exact: true }).fill('70');
    // while it is worked out, the text of before can neither be kept nor printed
    expect(await locksText(page, say.change, say.save)).toBe(true);
    await page.getByRole('button', { name: say.back }).waitFor();
    await page.getByRole('button', { name: say.save }).waitFor();
    await liesInTheBox(page, '"adjusted":[{"path":"lengthMm","mm":700,"size":"M"}]');
    await page.reload();
    await page.getByRole('button', { name: say.work }).tap();
    await page.getByRole('button', { name: say.back }).tap();
    await liesInTheBox(page, '"adjusted":[]');
    expect(complaints).toEqual([]);
    expect(strangers).toEqual([]);
  },
);

/** Whether the key that keeps the text is out of reach, and the text off the paper, in the frame after the other key was pressed. */
const locksText = (page: Page, pressed: string, kept: string): Promise<boolean> =>
  page.evaluate(
    async ([press, keep]) => {
      const key = (name: string | undefined) =>
        [...document.querySelectorAll('button')].find((one) => one.textContent?.trim() === name);
      key(press)?.click();
      await new Promise(requestAnimationFrame);
      await new Promise(requestAnimationFrame);
      return key(keep)?.closest('[inert].no-print') instanceof HTMLElement;
    },
    [pressed, kept],
  );

/** The name of what has the focus, as it is read or heard. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement as HTMLInputElement | null;
    const text = at === document.body ? '' : at?.getAttribute('aria-label') || at?.labels?.[0]?.textContent;
    return (text || at?.textContent || '').trim();
  });

/** Most stops of the Tab key on a screen of this walk. */
const MOST_STOPS = 250;

async function tabTo(page: Page, name: RegExp): Promise<void> {
  const seen: string[] = [];
  for (let i = 0; i < MOST_STOPS; i += 1) {
    await page.keyboard.press('Tab');
    const at = await focused(page);
    if (name.test(at)) return;
    seen.push(at);
  }
  throw new Error(`Tab does not come to ${name}: ${seen.slice(-40).join(' | ')}`);
}

it('from a draft to its paper in five sizes at 320 px by the keyboard alone', async () => {
  const { page, complaints, strangers } = await at.open({ size: 'small', locale: 'en-GB' });
  const press = async (name: RegExp) => {
    await tabTo(page, name);
    await page.keyboard.press('Enter');
  };
  await page.goto(`${at.url}#/draft`);
  await page.locator('.draft-end').waitFor();
  await press(/^Make it$/);
  await page.getByRole('heading', { level: 1 }).waitFor();
  const folded = page.locator('summary', { hasText: 'pass on' });
  await folded.waitFor();
  await tabTo(page, /pass on/);
  await page.keyboard.press('Enter');
  await press(/^Pass it on$/);
  await press(/^In several sizes$/);
  await page.getByRole('heading', { level: 1, name: 'In several sizes' }).waitFor();
  await expect.poll(() => focused(page)).toBe('In several sizes');
  // a size off and on again
  await tabTo(page, /^XL$/);
  await page.keyboard.press('Space');
  await expect.poll(() => page.getByRole('switch', { checked: true }).count()).toBe(4);
  await page.keyboard.press('Space');
  await expect.poll(() => page.getByRole('switch', { checked: true }).count()).toBe(5);
  await press(/^Work out the sizes$/);
  const written = page.locator('.written');
  await expect.poll(() => written.innerText(), { timeout: 60_000 }).toContain('Sizes: XS (S, M, L, XL)');
  // a table wider than the phone is moved by the keys, not by a finger alone
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  expect(await violations(page)).toEqual([]);
  const folder = process.env.RIDGELINE_SHOTS;
  if (folder) await page.screenshot({ path: `${folder}/in-sizes-320.png`, fullPage: true });
  // a figure set and given back: the focus stays where it was, or goes to the head of what its key was in
  await tabTo(page, /^What it shall be$/);
  await page.keyboard.type('70');
  await press(/^Change it$/);
  const givenBack = page.getByRole('button', { name: /^Back to the rules/ });
  const column = page.getByRole('row', { name: /^Back, top to lower edge/ });
  await expect.poll(() => column.innerText()).toMatch(/70(?:\.\d)?\scm/);
  expect(await focused(page)).toBe('Change it');
  await press(/^Back to the rules/);
  await givenBack.waitFor({ state: 'detached' });
  await expect.poll(() => column.innerText()).not.toMatch(/70(?:\.\d)?\scm/);
  expect(await focused(page)).toBe('Change a figure');
  await tabTo(page, /^Save the text$/);
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  expect(download.suggestedFilename()).toMatch(/\.txt$/);
  await page.evaluate(() => {
    (window as { printed?: number }).printed = 0;
    window.print = () => {
      (window as { printed?: number }).printed = 1;
    };
  });
  await press(/^Print/);
  await expect.poll(() => page.evaluate(() => (window as { printed?: number }).printed)).toBe(1);
  const pdf = await page.pdf({ format: 'A4' });
  if (folder) writeFileSync(`${folder}/in-sizes.pdf`, pdf);
  expect(pdf.toString('latin1').match(/MediaBox/g)?.length).toBeGreaterThan(3);
  expect(complaints).toEqual([]);
  expect(strangers).toEqual([]);
});
