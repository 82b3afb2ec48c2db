import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { openPhone, removeProfiles } from './drive.ts';
import { cutNoticeAt, hiddenAt } from './hidden-at.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';
import { type Look, openSettings, wear } from './looks.ts';
import { atRow, sights } from './sights.ts';

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

/** In plain letters nothing of it is cut where a phone stands upright: the lap window yields to it. */
const cut = (page: Page) =>
  page
    .locator('.screen-foot > .notice')
    .evaluateAll((all) =>
      all.flatMap((it) =>
        it.scrollHeight > it.clientHeight + 1
          ? [`${it.clientHeight} of ${it.scrollHeight} px are shown`]
          : [],
      ),
    );

const wordsPx = (page: Page) =>
  page.locator('.row-work').evaluate((it) => Number.parseFloat(getComputedStyle(it).fontSize));

describe('with larger text', () => {
  it('the words and the count of a row lie whole above the pad, the count on one line', async () => {
    const host = await plainHost();
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
  }, 300_000);

  it('they lie whole above what is told of the storage too, whose title is whole and whose rest is scrolled to by a sign', async () => {
    const host = await plainHost();
    const phone = await openPhone({ reducedMotion: 'reduce', worker: false });
    const { page } = phone;
    const knitter = knitterAt(page, host.url);
    await knitter.openSample();
    const other = await openSettings(page, host.url);
    await sights.find(({ name }) => name === 'row kept aside')?.come(page, knitter);
    const found: string[] = [];
    for (const setting of [{ name: 'English' }, { name: 'German', language: 'Deutsch' }] as const) {
      await wear(page, other, { width: 390, height: 844, ...setting });
      for (const [width, height] of screens) {
        await page.setViewportSize({ width, height });
        const [plain, larger] = [
          await hiddenAt(page, [100, 130, 150]),
          await cutNoticeAt(page, [100, 150, 200]),
        ];
        found.push(...[...plain, ...larger].map((what) => `${setting.name}, ${what}`));
        if (height > width)
          found.push(...(await cut(page)).map((what) => `${setting.name}, ${width}: ${what}`));
      }
    }
    expect(found).toEqual([]);
    await phone.close();
  });

  it('the words of a row with a card over it are no smaller at 200 % than at 130 %, and short ones fill their card in wide letters', async () => {
    const host = await plainHost();
    const phone = await openPhone({ reducedMotion: 'reduce', worker: false });
    const { page } = phone;
    const knitter = knitterAt(page, host.url);
    await knitter.openSample();
    const other = await openSettings(page, host.url);
    const upright = { name: 'upright', width: 390, height: 844 };
    await atRow(page, knitter, 117);
    await wear(page, other, { ...upright, name: 'larger', text: 130 });
    const larger = await wordsPx(page);
    await wear(page, other, { ...upright, name: 'largest', text: 200 });
    expect(await wordsPx(page)).toBeGreaterThanOrEqual(larger);
    await wear(page, other, upright);
    await atRow(page, knitter, 20);
    await wear(page, other, { ...upright, name: 'wide', spaced: true });
    expect(await wordsPx(page)).toBeGreaterThan(40);
    expect(await hiddenAt(page, [100, 130, 150, 200])).toEqual([]);
    await phone.close();
  });
});
