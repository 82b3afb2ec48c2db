import { mkdirSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { violations } from './axe.ts';

/** Of a phone from the US, where needles go by their numbers; `mm` as a list's own value has it: '3.5'. */
export const chooseNeedle = (within: Page | Locator, mm: string) =>
  within.getByLabel('Needle', { exact: true }).selectOption(mm);

/** What a knitter's hand does on the screens where a garment is made by its numbers. */

const button = (place: Page | Locator, name: string | RegExp) =>
  place.getByRole('button', { name, exact: true });

/** A part of the piece on the screen, from 0. */
export const partOf = (page: Page, part: number): Locator => page.locator(`#edit-part-${part}`);

/** A section's band, both numbers from 0. */
export const sectionOf = (page: Page, part: number, section: number): Locator =>
  page.locator(`#edit-section-${part}-${section}`);

/** Stitches before and after a section as its band shows them: '80 → 68', '80' where they stay. */
export const countOf = (page: Page, part: number, section: number): Promise<string> =>
  sectionOf(page, part, section)
    .locator('.edit-count > [aria-hidden]')
    .innerText()
    // kept apart from a text that runs the other way
    .then((text) => text.replaceAll(/[\u2066\u2069]/g, ''));

export async function type(place: Page | Locator, label: string, text: string, nth = 0): Promise<void> {
  await place.getByLabel(label, { exact: true }).nth(nth).fill(text);
}

export interface SectionTyped {
  readonly name: string;
  readonly rows: string;
  readonly fabric?: string;
  readonly needle?: string;
}

/** Opens a band of a part that is shown: a section, or where the part begins or ends. */
export async function openSection(
  page: Page,
  part: number,
  section: number | 'start' | 'end',
): Promise<Locator> {
  const band = page.locator(`#edit-section-${part}-${section}`);
  await unfold(band);
  return band;
}

async function unfold(fold: Locator): Promise<void> {
  const line = fold.locator('.edit-fold-button').first();
  if ((await line.getAttribute('aria-expanded')) !== 'true') await line.tap();
}

/** How many stitches a part begins with, typed into the field of its first band. */
export async function typeStart(page: Page, part: number, stitches: string, nth = 0): Promise<void> {
  await type(await openSection(page, part, 'start'), 'Stitches', stitches, nth);
}

/** Of the branches above a split shows the one of this name. */
export const showBranch = (page: Page, name: string): Promise<void> =>
  page.locator('.edit-branch').filter({ hasText: name }).tap();

/** Opens what the piece itself is: its name, what it is in the garment, how many are made. */
export const openPiece = (page: Page): Promise<void> => unfold(page.locator('#edit-piece'));

/** Fills a section in; `section` may be the next one, which is then added. */
export async function typeSection(
  page: Page,
  part: number,
  section: number,
  typed: SectionTyped,
): Promise<Locator> {
  if ((await sectionOf(page, part, section).count()) === 0)
    await button(partOf(page, part), 'Add a section').tap();
  const card = await openSection(page, part, section);
  await type(card, 'Name', typed.name);
  await type(card, 'Rows', typed.rows);
  if (typed.needle) await chooseNeedle(card, typed.needle);
  if (typed.fabric) await card.getByLabel('Fabric', { exact: true }).selectOption({ label: typed.fabric });
  return card;
}

export async function addShaping(page: Page, card: Locator, kind: string): Promise<Locator> {
  await button(card, 'Add shaping').tap();
  await page.getByRole('dialog').getByText(kind, { exact: true }).tap();
  return card.locator('.edit-shaping').last();
}

export interface EdgeTyped {
  readonly change: 'Decrease' | 'Increase';
  readonly edge: 'Right edge' | 'Left edge' | 'Both edges' | 'Neck edge (Left edge)';
  readonly first: string;
  readonly every: string;
  readonly times: string;
}

export async function typeEdge(page: Page, card: Locator, typed: EdgeTyped): Promise<Locator> {
  const entry = await addShaping(page, card, 'At an edge, again and again');
  await entry.getByLabel('Do what').selectOption({ label: typed.change });
  await entry.getByLabel('Where').selectOption({ label: typed.edge });
  await type(entry, 'First on row', typed.first);
  await type(entry, 'Every … rows', typed.every);
  await type(entry, 'So many times', typed.times);
  return entry;
}

export async function typeGroups(
  page: Page,
  card: Locator,
  edge: string,
  first: string,
  groups: string,
): Promise<Locator> {
  const entry = await addShaping(page, card, 'Bind off at an edge');
  await entry.getByLabel('Where').selectOption({ label: edge });
  await type(entry, 'Stitches, one group after the other', groups);
  await type(entry, 'First on row', first);
  return entry;
}

/** From the list of pieces to a new, empty one; it has one part with one blank section. */
export async function addEmptyPiece(page: Page, name: string): Promise<void> {
  await button(page, 'An empty piece').tap();
  await page.waitForSelector('#edit-part-0');
  await openPiece(page);
  await type(page.locator('#edit-piece'), 'Name', name);
}

export async function choose(place: Page | Locator, option: string): Promise<void> {
  await place.getByText(option, { exact: true }).first().tap();
}

/** Opens the menu of a piece, part or section and picks from it. */
export async function pick(page: Page, name: string, entry: string): Promise<void> {
  await button(page, `More for ${name}`).tap();
  await button(page.getByRole('dialog'), entry).tap();
}

export const toPieces = async (page: Page): Promise<void> => {
  await page.getByRole('link', { name: /^Back to/ }).tap();
  await page.waitForSelector('#edit-add');
};

/** Where SHOTS names a folder, the whole page as a picture to look at. */
export async function shot(page: Page, name: string): Promise<void> {
  const folder = process.env.SHOTS;
  if (folder === undefined) return;
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: `${folder}/${name}-${page.viewportSize()?.width}.png`, fullPage: true });
}

/** Violations of the whole page unrolled: what the foot happens to cover is scrolled to, not too small. */
export async function violationsUnrolled(page: Page): Promise<string[]> {
  const size = page.viewportSize();
  if (size === null) throw new Error('A phone has a size.');
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width: size.width, height: Math.max(height, size.height) });
  const found = await violations(page);
  await page.setViewportSize(size);
  return found;
}
