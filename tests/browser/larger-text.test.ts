import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { knitterAt } from './knitter.ts';
import { type Look, openSettings, wear } from './looks.ts';
import { atRow } from './sights.ts';

afterAll(removeProfiles);

const all = process.env.RIDGELINE_LOOKS === 'all';

/** Phones upright and on their sides, and a tablet, in CSS px. */
const screens = [
  [320, 640],
  [360, 740],
  [390, 664],
  [390, 844],
  [412, 915],
  [740, 360],
  [844, 390],
  [1180, 820],
] as const;

/** Root text sizes, per cent (WCAG 2.2, success criterion 1.4.4, asks for 200): in every run those that broke first. */
const texts = all ? [100, 110, 120, 130, 140, 150, 160, 170, 180, 190, 200] : [100, 130, 150, 200];

/** Rows of the sample's back: in rib, bound off at an edge, decreased at both. */
const rows = all ? [16, 118, 119] : [119];

/** How the letters are set: as they come, in German, wide. */
const settings: readonly Pick<Look, 'name' | 'language' | 'spaced'>[] = [
  { name: 'English' },
  { name: 'wide', spaced: true },
  { name: 'German', language: 'Deutsch' },
];

/** What of a row is not in sight above the pad, or is broken, at each size of text. */
const hiddenAt = (page: Page, sizes: readonly number[]): Promise<string[]> =>
  page.evaluate((percents) => {
    const box = (selector: string) => document.querySelector(selector)?.getBoundingClientRect();
    const lines = (selector: string): number => {
      const range = document.createRange();
      const at = document.querySelector(selector);
      if (at) range.selectNodeContents(at);
      return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size;
    };
    const found: string[] = [];
    for (const percent of percents) {
      document.documentElement.style.fontSize = `${percent}%`;
      const main = box('.screen-main');
      const foot = box('.screen-foot');
      if (main === undefined || foot === undefined) return ['nothing is there'];
      // upright the pad lies below what is read; on its side it lies beside it
      const isBeside = foot.left >= main.right - 1 || foot.right <= main.left + 1;
      const [top, bottom] = [Math.max(main.top, 0), isBeside ? innerHeight : Math.min(foot.top, innerHeight)];
      const at = `${innerWidth} × ${innerHeight} at ${percent} %`;
      if (lines('.row-count') !== 1) found.push(`${at}: the count stands on ${lines('.row-count')} lines`);
      const [words, count, after] = [box('.row-work'), box('.row-count'), box('.row-after')];
      if (words === undefined || count === undefined || after === undefined) return ['no row is there'];
      // the count stays while longer words are scrolled below it; on its side it stands beside them
      const under = after.left >= words.right - 1 ? bottom : Math.min(bottom, after.top);
      if (words.top < top - 1 || words.bottom > under + 1)
        found.push(`${at}: the words end at ${words.bottom.toFixed()} of ${under.toFixed()}`);
      if (count.top < top - 1 || count.bottom > bottom + 1)
        found.push(`${at}: the count ends at ${count.bottom.toFixed()} of ${bottom.toFixed()}`);
      if (count.height < 36) found.push(`${at}: the count is ${count.height.toFixed()} px high`);
    }
    document.documentElement.style.fontSize = '';
    return found;
  }, sizes);

describe('with larger text', () => {
  it('the words and the count of a row lie whole above the pad, the count on one line', async () => {
    const host = await serve({ root: dist });
    const phone = await openPhone({ reducedMotion: 'reduce', worker: false });
    const { page } = phone;
    const knitter = knitterAt(page, host.url);
    await knitter.openSample();
    const other = await openSettings(page, host.url);
    const found: string[] = [];
    for (const row of rows) {
      await atRow(page, knitter, row);
      for (const setting of settings) {
        await wear(page, other, { width: 390, height: 844, ...setting });
        for (const [width, height] of screens) {
          await page.setViewportSize({ width, height });
          found.push(...(await hiddenAt(page, texts)).map((what) => `row ${row}, ${setting.name}, ${what}`));
        }
      }
      await wear(page, other, { name: 'plain', width: 390, height: 844 });
    }
    expect(found).toEqual([]);
    await phone.close();
    await host.close();
  }, 300_000);
});
