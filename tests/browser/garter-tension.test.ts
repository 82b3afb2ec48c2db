import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { garmentToLink } from '../../src/store/share/link.ts';
import { walkedOn } from './drive.ts';
import {
  addEmptyPiece,
  chooseNeedle,
  shot,
  toPieces,
  type,
  typeSection,
  typeStart,
  violationsUnrolled,
} from './editor-hand.ts';
import { hostAndPhone } from './host-and-phone.ts';
import { unfold } from './knitter.ts';

const at = hostAndPhone();

async function looked(page: Page, name: string): Promise<void> {
  await shot(page, name);
  expect(await violationsUnrolled(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
}

const strip = (name: string) =>
  ({
    name,
    makes: 1,
    gauge: { stitches: 22, rows: 40 },
    parts: [
      {
        name,
        from: { castOn: 114 },
        sections: [
          { name: 'rib', rows: 20, fabric: 'rib 2x2', needle: 3, shaping: [] },
          { name: 'body', rows: 212, fabric: 'garter', needle: 3.5, shaping: [] },
        ],
        end: 'bind off',
      },
    ],
  }) as const;

/** 114 / 22 × 4 in are 20.7 inches and 232 / 40 × 4 in are 23.2, to the quarter. */
const BLOCKED = /^20¾\sin at its widest, 23¼\sin high/;

describe('a tension counted in garter stitch', () => {
  for (const size of walkedOn('small')) {
    it(`is asked for with its fabric, and the making up blocks by it: ${size} phone`, async () => {
      const phone = await at.open({ size });
      const { page } = phone;
      await page.goto(`${at.url}#/new`);
      await page.getByLabel('Measured in').selectOption({ label: 'garter stitch' });
      await type(page, 'Name', 'Garter pullover');
      await chooseNeedle(page, '3.5');
      await type(page, 'Stitches in 4 in', '22');
      await type(page, 'Rows in 4 in', '40');
      for (const name of ['Back', 'Front']) {
        await addEmptyPiece(page, name);
        await typeStart(page, 0, '114');
        await typeSection(page, 0, 0, { name: 'Edge', rows: '20' });
        await typeSection(page, 0, 1, { name: 'Body', rows: '212' });
        await toPieces(page);
      }
      expect(await page.getByText(/guessed from/).count()).toBe(0);
      await addEmptyPiece(page, 'Collar');
      await typeStart(page, 0, '80');
      await typeSection(page, 0, 0, { name: 'Collar', rows: '20', fabric: 'rib, 2 by 2' });
      await toPieces(page);
      const guess = page.getByText('rib, 2 by 2: guessed from your gauge in garter stitch');
      await guess.waitFor();
      await looked(page, 'editor');
      await page.getByRole('button', { name: 'Save', exact: true }).tap();
      await page.getByRole('link', { name: 'Making up' }).tap();
      await page.getByRole('heading', { level: 1, name: 'Making up' }).waitFor();
      await page.getByText(BLOCKED).first().waitFor();
      await looked(page, 'blocked');
    });

    it(`that nobody named is asked about once, and the answer puts the measures right: ${size} phone`, async () => {
      const phone = await at.open({ size });
      const { page } = phone;
      const link = await garmentToLink({ name: 'Old pullover', pieces: [strip('Back'), strip('Front')] });
      await page.goto(`${at.url}#/open/${link}`);
      await page.getByRole('button', { name: 'Put it in the workbasket' }).tap();
      await page.getByText('Was this gauge measured in garter stitch?').waitFor();
      await page.getByText('rib, 2 by 2: guessed from your gauge in stockinette').waitFor();
      await looked(page, 'ask');
      await page.getByRole('button', { name: 'Yes, in garter stitch' }).tap();
      await page.getByText('rib, 2 by 2: guessed from your gauge in garter stitch').waitFor();
      await expect.poll(() => page.getByText('Was this gauge measured').count()).toBe(0);
      await looked(page, 'answered');
      for (const [name, title] of [
        ['Making up', 'Making up'],
        ['Yarn: how much, how far', 'Yarn'],
      ] as const) {
        await unfold(page);
        await page.getByRole('link', { name }).tap();
        await page.getByRole('heading', { level: 1, name: title }).waitFor();
        await page.getByText('rib, 2 by 2: guessed from your gauge in garter stitch').waitFor();
        await looked(page, title);
        await page.goBack();
      }
      await page.reload();
      await unfold(page);
      await page.getByRole('heading', { name: 'Front' }).waitFor();
      expect(await page.getByText('Was this gauge measured').count()).toBe(0);
    });
  }
});
