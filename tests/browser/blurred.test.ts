import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { hostAndPhone } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';
import { settled } from './settled.ts';
import { atRow } from './sights.ts';

const files = hostAndPhone();

/** px that the picture is blurred by, as a phone in a lap is seen without glasses. */
const BLUR_PX = 8;

type Box = readonly [x: number, y: number, width: number, height: number];

const boxOf = (page: Page, selector: string): Promise<Box> =>
  page
    .locator(selector)
    .first()
    .evaluate((at) => {
      const { x, y, width, height } = at.getBoundingClientRect();
      return [x, y, width, height] as const;
    });

/** Relative luminance (WCAG 2.2) of a blurred picture at every fourth px of a box, row by row. */
const greys = (table: Page, picture: Buffer, box: Box): Promise<number[]> =>
  table.evaluate(
    async ({ data, blur, at: [x, y, width, height] }) => {
      const image = new Image();
      image.src = `data:image/png;base64,${data}`;
      await image.decode();
      const scale = image.width / 390;
      const paper = new OffscreenCanvas(390, image.height / scale).getContext('2d');
      if (!paper) throw new Error('no canvas');
      paper.filter = `blur(${blur}px)`;
      paper.drawImage(image, 0, 0, 390, image.height / scale);
      const seen: number[] = [];
      const linear = (of: number) => (of <= 0.04045 ? of / 12.92 : ((of + 0.055) / 1.055) ** 2.4);
      for (let down = 2; down < height - 2; down += 4)
        for (let across = 2; across < width - 2; across += 4) {
          const [r = 0, g = 0, b = 0] = paper.getImageData(x + across, y + down, 1, 1).data;
          seen.push(0.2126 * linear(r / 255) + 0.7152 * linear(g / 255) + 0.0722 * linear(b / 255));
        }
      return seen;
    },
    { data: picture.toString('base64'), blur: BLUR_PX, at: box },
  );

const ratio = (a: number, b: number): number => (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
const contrast = (seen: readonly number[]): number => ratio(Math.max(...seen), Math.min(...seen));

describe.each(['light', 'dark'] as const)(
  'a picture of the knitting screen that is blurred, %s',
  (colorScheme) => {
    it('tells what is worked, the count, and in grey whether the row shapes', async () => {
      const phone = await files.open({ reducedMotion: 'reduce' });
      const { page } = phone;
      await page.emulateMedia({ colorScheme });
      const knitter = knitterAt(page, files.url);
      await knitter.openSample();
      const table = await phone.context.newPage();
      await table.setContent('<canvas></canvas>');
      await page.bringToFront();
      const seen: { readonly pad: number[]; readonly edge: number[] }[] = [];
      for (const row of [119, 120]) {
        await atRow(page, knitter, row);
        await settled(page);
        const picture = await page.screenshot();
        const greyAt = async (selector: string) => greys(table, picture, await boxOf(page, selector));
        expect(contrast(await greyAt('.row-count'))).toBeGreaterThan(3);
        expect(contrast(await greyAt('.row-work'))).toBeGreaterThan(1.8);
        const [x, y, width, height] = await boxOf(page, '.row-card');
        seen.push({
          pad: await greyAt('.pad'),
          edge: await greys(table, picture, [x + width - 24, y, 24, height]),
        });
      }
      const [shaping, plain] = seen;
      // the pad's notch, corner and hatch, and the dashes on the card's edge
      // of two plain rows it would be 1
      for (const [part, least] of [
        ['pad', 1.8],
        ['edge', 1.4],
      ] as const) {
        const apart = (shaping?.[part] ?? []).map((grey, i) => ratio(grey, plain?.[part][i] ?? grey));
        expect(apart.length).toBeGreaterThan(50);
        expect(Math.max(...apart), part).toBeGreaterThan(least);
      }
    });
  },
);
