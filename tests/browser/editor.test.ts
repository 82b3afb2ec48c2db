import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { phones } from './drive.ts';
import {
  addEmptyPiece,
  choose,
  countOf,
  openSection,
  partOf,
  pick,
  shot,
  showBranch,
  toPieces,
  type,
  typeEdge,
  typeGroups,
  typeSection,
  typeStart,
  violationsUnrolled,
} from './editor-hand.ts';
import { hostAndPhone } from './host-and-phone.ts';
import { until } from './until.ts';

const at = hostAndPhone();

const rib = { name: 'Rib', rows: '10', fabric: 'rib, 1 by 1', needle: '3.5' } as const;

async function openNew(size: keyof typeof phones): Promise<Page> {
  const phone = await at.open({ size });
  await phone.page.goto(`${at.url}#/new`);
  await phone.page.getByLabel('Stitches in 4 in').waitFor();
  return phone.page;
}

const nameOf = async (page: Page, part: number) =>
  (await openSection(page, part, 'start')).getByLabel('Name of the part').inputValue();

const kept = (page: Page) => page.getByText('Draft kept.', { exact: true }).waitFor();

describe('a garment by its numbers', () => {
  it('is typed whole, its counts in sight all the while, a fault mended, a reload survived, and is knitted', async () => {
    const page = await openNew('common');
    await type(page, 'Name', 'Small vest with sleeves');
    await type(page, 'Stitches in 4 in', '20');
    await type(page, 'Rows in 4 in', '28');

    // back
    await addEmptyPiece(page, 'Back');
    await typeStart(page, 0, '80');
    await typeSection(page, 0, 0, rib);
    await typeSection(page, 0, 1, { name: 'Body', rows: '40', fabric: 'stockinette' });
    const armholes = await typeSection(page, 0, 2, { name: 'Armholes', rows: '32' });
    await typeGroups(page, armholes, 'Both edges', '1', '4, 2');
    expect(await countOf(page, 0, 2)).toBe('80 → 68');

    // more shaping rows than the section has: said at the entry, and the way to mend it
    const edge = await typeEdge(page, armholes, {
      change: 'Decrease',
      edge: 'Both edges',
      first: '5',
      every: '4',
      times: '9',
    });
    await expect.poll(() => countOf(page, 0, 2)).toBe('80 → 50');
    const sentence =
      'This would shape row\u00a033, but the section has 32\u00a0rows. Give it more rows, or shape fewer times.';
    await expect.poll(() => edge.innerText()).toContain(sentence);
    await shot(page, 'fault');
    await type(edge, 'So many times', '3');
    await until(
      () => edge.innerText(),
      (text) => !text.includes('This would shape'),
    );
    await expect.poll(() => countOf(page, 0, 2)).toBe('80 → 62');
    await choose(await openSection(page, 0, 'end'), 'On a holder');
    await shot(page, 'back');

    // the page goes away in the middle of a word, and comes back
    await typeStart(page, 0, '8');
    await kept(page);
    await page.reload();
    await page.waitForSelector('#edit-part-0');
    const begins = await openSection(page, 0, 'start');
    await expect.poll(() => begins.getByLabel('Stitches', { exact: true }).inputValue()).toBe('8');
    await typeStart(page, 0, '80');
    await expect.poll(() => countOf(page, 0, 2)).toBe('80 → 62');
    await expect.poll(() => page.getByRole('button', { name: /to mend|to fill in/ }).count()).toBe(0);
    await toPieces(page);

    // front: 62 stitches split into two shoulders, the second one the mirror image of the first
    await addEmptyPiece(page, 'Front');
    await typeStart(page, 0, '80');
    await typeSection(page, 0, 0, rib);
    await typeSection(page, 0, 1, { name: 'Body', rows: '40', fabric: 'stockinette' });
    await typeGroups(
      page,
      await typeSection(page, 0, 2, { name: 'Armholes', rows: '8' }),
      'Both edges',
      '1',
      '4, 2',
    );
    await expect.poll(() => countOf(page, 0, 2)).toBe('80 → 68');
    await (await openSection(page, 0, 'end')).getByRole('button', { name: 'Split into two sides' }).tap();
    await shot(page, 'split');
    expect(await violationsUnrolled(page)).toEqual([]);
    await page.getByRole('dialog').getByRole('button', { name: 'Split', exact: true }).tap();
    const neck = await typeSection(page, 1, 0, { name: 'Neck', rows: '24' });
    await typeEdge(page, neck, {
      change: 'Decrease',
      edge: 'Neck edge (Left edge)',
      first: '1',
      every: '2',
      times: '12',
    });
    await expect.poll(() => countOf(page, 1, 0)).toBe('34 → 22');
    // the other shoulder is its mirror image, has followed, and is said to be
    await page.getByRole('button', { name: 'Right shoulder mirrored' }).tap();
    await expect.poll(() => countOf(page, 2, 0)).toBe('34 → 22');
    await pick(page, 'Right shoulder', 'Remove');
    await page.getByRole('button', { name: 'Undo', exact: true }).tap();
    await showBranch(page, 'Right shoulder');
    await expect.poll(() => nameOf(page, 2)).toBe('Right shoulder');
    await pick(page, 'Right shoulder', 'Remove');
    await pick(page, 'Left shoulder', 'Make the mirror image');
    await showBranch(page, 'Right shoulder');
    await expect.poll(() => nameOf(page, 2)).toBe('Right shoulder');
    await expect.poll(() => countOf(page, 2, 0)).toBe('34 → 22');
    // changed itself it goes its own way, and may be put right again
    const own = await openSection(page, 2, 0);
    await type(own, 'Rows', '26');
    await page.getByRole('button', { name: 'Right shoulder 34 stitches before, 22 after' }).waitFor();
    await type(own, 'Rows', '24');
    await page.getByRole('button', { name: 'Right shoulder mirrored' }).waitFor();
    await page.getByText('80 → 22 + 22').waitFor();
    await expect.poll(() => page.getByRole('button', { name: /to mend|to fill in/ }).count()).toBe(0);
    await shot(page, 'front');
    await toPieces(page);

    // sleeve, made twice
    await addEmptyPiece(page, 'Sleeve');
    await type(page.locator('#edit-piece'), 'How many to make', '2');
    await typeStart(page, 0, '40');
    await typeSection(page, 0, 0, { ...rib, rows: '8' });
    const sleeve = await typeSection(page, 0, 1, { name: 'Sleeve', rows: '30', fabric: 'stockinette' });
    await typeEdge(page, sleeve, {
      change: 'Increase',
      edge: 'Both edges',
      first: '3',
      every: '4',
      times: '6',
    });
    await expect.poll(() => countOf(page, 0, 1)).toBe('40 → 52');
    await toPieces(page);

    // neckband: an odd count is picked up where the rib wants an even one
    await addEmptyPiece(page, 'Neckband');
    await choose(await openSection(page, 0, 'start'), 'Stitches picked up');
    await type(partOf(page, 0), 'Along', 'Left front neck');
    await typeStart(page, 0, '25');
    for (const [i, [along, stitches]] of [
      ['Back neck', '24'],
      ['Right front neck', '24'],
    ].entries()) {
      await partOf(page, 0).getByRole('button', { name: 'Add an edge' }).tap();
      await type(partOf(page, 0), 'Along', along ?? '', i + 1);
      await type(partOf(page, 0), 'Stitches', stitches ?? '', i + 1);
    }
    const band = await typeSection(page, 0, 0, { ...rib, name: 'Band', rows: '6' });
    await expect
      .poll(() => band.innerText())
      .toContain('73\u00a0stitches do not come out even: take 72 or 74');
    await typeStart(page, 0, '24');
    await expect.poll(() => countOf(page, 0, 0)).toBe('72');
    await shot(page, 'neckband');
    await toPieces(page);

    await shot(page, 'pieces');
    await page.getByRole('button', { name: 'Save', exact: true }).tap();
    await page.getByRole('heading', { name: 'Small vest with sleeves', level: 1 }).waitFor();
    await shot(page, 'saved');

    await page.locator('a[href*="#/k/"]').first().tap();
    const pad = page.getByRole('button', { name: 'Row done' });
    await pad.waitFor();
    for (let row = 1; row <= 3; row += 1) {
      await page
        .getByText(new RegExp(`^Row ${row} of`))
        .first()
        .waitFor();
      await pad.tap();
    }
    await page
      .getByText(/^Row 4 of/)
      .first()
      .waitFor();
    expect(at.phone?.complaints).toEqual([]);
    expect(at.phone?.strangers).toEqual([]);
  }, 180_000);

  it('begun pieces keep their rows: only the name can be changed, and the place stays', async () => {
    const page = await openNew('common');
    await type(page, 'Name', 'Two squares');
    for (const name of ['First', 'Second']) {
      await addEmptyPiece(page, name);
      await typeStart(page, 0, '20');
      await typeSection(page, 0, 0, { name: 'All', rows: '12' });
      await toPieces(page);
    }
    await page.getByRole('button', { name: 'Save', exact: true }).tap();
    await page.locator('a[href*="#/k/"]').first().tap();
    const pad = page.getByRole('button', { name: 'Row done' });
    await pad.tap();
    await page
      .getByText(/^Row 2 of/)
      .first()
      .waitFor();
    const knitting = page.url();

    const garment = /#\/k\/([^/]+)/.exec(knitting)?.[1] ?? '';
    await page.goto(`${at.url}#/edit/${garment}`);
    await page.getByRole('link', { name: /First.*Begun/ }).tap();
    await page.getByText('This piece is on the needles').waitFor();
    expect(await page.getByLabel('Rows', { exact: true }).count()).toBe(0);
    await shot(page, 'begun');
    await expect
      .poll(() => page.getByRole('link', { name: 'First', exact: true }).getAttribute('href'))
      .toContain('/rework');
    await type(page, 'Name', 'Square one');
    await toPieces(page);
    await page.getByRole('button', { name: 'More for Square one' }).tap();
    await expect
      .poll(() => page.getByRole('dialog').getByRole('button', { name: 'Remove' }).isDisabled())
      .toBe(true);
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).tap();
    await page.getByRole('link', { name: /Second/ }).tap();
    const card = await openSection(page, 0, 0);
    await type(card, 'Rows', '16');
    await toPieces(page);
    await page.getByRole('button', { name: 'Save', exact: true }).tap();
    await page.getByRole('heading', { name: 'Two squares', level: 1 }).waitFor();
    await expect.poll(() => page.locator('main').innerText()).toContain('Square one');

    await page.goto(knitting);
    await page
      .getByText(/^Row 2 of 13/)
      .first()
      .waitFor();
  }, 90_000);

  it('what is not ready is kept: the rest is saved, and the draft goes on beside it', async () => {
    const page = await openNew('small');
    await type(page, 'Name', 'Half a vest');
    await type(page, 'Stitches in 4 in', '22');
    await type(page, 'Rows in 4 in', '30');
    await page.getByRole('button', { name: 'A back', exact: true }).tap();
    await addEmptyPiece(page, 'Pocket');
    await typeStart(page, 0, '30');
    await toPieces(page);
    await page.getByRole('button', { name: 'Save what is ready' }).tap();
    await page.getByText('Saved without Pocket: not ready yet. The draft keeps it.').waitFor();
    await page.getByRole('link', { name: /Pocket/ }).tap();
    const begins = await openSection(page, 0, 'start');
    await expect.poll(() => begins.getByLabel('Stitches', { exact: true }).inputValue()).toBe('30');
    // asked what is missing, it leads to the field
    await page.getByRole('button', { name: '1 still to fill in' }).tap();
    await page.getByRole('button', { name: 'Show where' }).first().tap();
    await until(
      () => page.evaluate(() => document.activeElement?.getAttribute('aria-invalid')),
      (invalid) => invalid === 'true',
    );
    await page.keyboard.type('14');
    await expect.poll(() => countOf(page, 0, 0)).toBe('30');
  }, 60_000);
});
