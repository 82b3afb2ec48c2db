import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openPhone, type Phone, phones, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { type Knitter, knitterAt } from './knitter.ts';
import { openSettings, wear } from './looks.ts';
import { atRow, sights } from './sights.ts';

let url: string;
let phone: Phone | undefined;
let page: Page;
let knitter: Knitter;

async function newWindow(): Promise<void> {
  await phone?.close();
  phone = await openPhone({ reducedMotion: 'reduce', worker: false });
  page = phone.page;
  knitter = knitterAt(page, url);
  await knitter.openSample();
}

/** One window for most of the rooms: what is looked at is where things lie, and that hangs on no screen before. */
beforeAll(async () => {
  ({ url } = await plainHost());
  await newWindow();
});

beforeEach(() => page.setViewportSize(phones.common));

afterAll(async () => {
  await phone?.close();
  removeProfiles();
});

/** What of these lies outside the screen, or under its foot or a bar; nothing is scrolled for it. */
const outOfSight = (selectors: readonly string[]): Promise<string[]> =>
  page.evaluate((all) => {
    const found: string[] = [];
    for (const selector of all) {
      const shown = [...document.querySelectorAll(selector)].filter((it) => it.checkVisibility());
      if (shown.length === 0) found.push(`${selector} is not there`);
      for (const it of shown) {
        const { left, right, top, bottom } = it.getBoundingClientRect();
        const name = `${selector} “${(it.textContent ?? '').slice(0, 30)}”`;
        const at = [left, top, right, bottom].map(Math.round).join(' ');
        if (top < -0.5 || left < -0.5 || bottom > innerHeight + 0.5 || right > innerWidth + 0.5)
          found.push(`${name} at ${at} of ${innerWidth} × ${innerHeight}`);
        else {
          const seen = document.elementFromPoint((left + right) / 2, bottom - 3);
          if (!it.contains(seen) && !seen?.contains(it)) found.push(`${name} at ${at} is covered`);
        }
      }
    }
    return found;
  }, selectors);

/** That two stand side by side, and begin within the first screen; how much of the drawing is in sight. */
async function sideBySide(drawing: string, form: string): Promise<string[]> {
  await page.evaluate(() => scrollTo(0, 0));
  return page.evaluate(
    ([one, other]) => {
      const boxOf = (selector: string) => document.querySelector(selector)?.getBoundingClientRect();
      const [drawn, typed] = [boxOf(one ?? ''), boxOf(other ?? '')];
      if (!drawn || !typed) return [`${one} or ${other} is not there`];
      const said: string[] = [];
      if (typed.left < drawn.right && drawn.left < typed.right) said.push('not side by side');
      if (drawn.bottom > innerHeight) said.push(`drawing ends at ${Math.round(drawn.bottom)}`);
      if (drawn.top < 0) said.push(`drawing begins at ${Math.round(drawn.top)}`);
      if (typed.top > innerHeight / 2) said.push(`form begins at ${Math.round(typed.top)}`);
      if (drawn.height < innerHeight / 4) said.push(`drawing is ${Math.round(drawn.height)} high`);
      return said;
    },
    [drawing, form] as const,
  );
}

describe('a screen of 1280 × 800', () => {
  beforeEach(() => page.setViewportSize({ width: 1280, height: 800 }));

  it('has the drawing of a draft beside its measures', async () => {
    await knitter.open('#/draft');
    await page.locator('.draft-drawings svg').first().waitFor();
    expect(await sideBySide('.draft-drawings', '.draft-steps')).toEqual([]);
  });

  it('has the drawing of a piece beside its sections', async () => {
    await knitter.open('#/edit/sample?piece=front');
    await page.locator('.edit-sketch-svg').first().waitFor();
    expect(await sideBySide('.edit-in-sight', '.edit-bands')).toEqual([]);
  });

  it('has the table of a garment beside what is said of it', async () => {
    await knitter.open('#/g/sample');
    await page.locator('.table svg').first().waitFor();
    expect(await sideBySide('.table', '.table ~ *')).toEqual([]);
  });

  it('has the drawing of the making up beside the step in hand', async () => {
    await knitter.open('#/g/sample/making-up');
    await page.locator('.together svg').first().waitFor();
    expect(await sideBySide('.together', '.together ~ *')).toEqual([]);
  });
});

/** The back with 39 rows worked, which it may have from a test before. */
async function begun(): Promise<void> {
  await knitter.open('#/k/sample/back/0/1');
  await knitter.pad.waitFor();
  if ((await knitter.row()).row !== 40) await atRow(page, knitter, 40);
}

const onItsSide = [
  [844, 390],
  [740, 360],
] as const;

describe('a phone on its side', () => {
  it('shows the whole number pad where the needle is counted, with the key that compares', async () => {
    await begun();
    await knitter.open('#/k/sample/back/0/1/check');
    await page.locator('.keys').waitFor();
    for (const [width, height] of onItsSide) {
      await page.setViewportSize({ width, height });
      await page.evaluate(() => scrollTo(0, 0));
      expect(await outOfSight(['.key', '.keys-shown', '.count-thumb > .button'])).toEqual([]);
    }
  });

  it('has the drawings of the making up and of a draft beside what is read and typed', async () => {
    for (const [width, height] of onItsSide) {
      await page.setViewportSize({ width, height });
      await knitter.open('#/g/sample/making-up');
      await page.locator('.together svg').first().waitFor();
      expect(await sideBySide('.together', '.together ~ *')).toEqual([]);
      await knitter.open('#/draft');
      await page.locator('.draft-drawing svg, svg.draft-drawing').first().waitFor();
      const found = await sideBySide('.draft-drawing', '.draft-steps');
      expect(found.filter((one) => !one.startsWith('drawing ends'))).toEqual([]);
    }
  });

  it('shows what fits beside the figures from which the place is found', async () => {
    await begun();
    await knitter.open('#/k/sample/back/0/1/find');
    for (const [width, height] of onItsSide) {
      await page.setViewportSize({ width, height });
      await page.evaluate(() => scrollTo(0, 0));
      const count = page.getByLabel('Stitches on the needle', { exact: true });
      await count.fill('118');
      await page.locator('.count-bar').waitFor();
      expect(await outOfSight(['.count-bar', '.field:has(input:focus)'])).toEqual([]);
    }
  });
});

/** Each drawing's box, and its box in mm (the drawing's own units). */
const drawings = (selector: string) =>
  page.locator(selector).evaluateAll((all) =>
    all.map((it) => {
      const { width, bottom } = it.getBoundingClientRect();
      const [, , wideMm = 1] = (it.getAttribute('viewBox') ?? '').split(' ').map(Number);
      return { foot: Math.round(bottom), scale: width / wideMm };
    }),
  );

describe('pieces on a table', () => {
  it('lie to one scale, those side by side with their feet and their names on one line', async () => {
    // one that is begun, beside one that is not
    await begun();
    await knitter.open('#/g/sample');
    await page.locator('.tile-begun .thumb').waitFor();
    for (const [width, height] of [
      [390, 844],
      [320, 640],
      [820, 1180],
      [1180, 820],
    ] as const) {
      await page.setViewportSize({ width, height });
      const laid = await drawings('.tile .thumb');
      const scales = laid.map(({ scale }) => scale);
      expect(Math.max(...scales) / Math.min(...scales), `${width}`).toBeLessThan(1.03);
      const [back, front] = await page
        .locator('.tile strong')
        .evaluateAll((all) => all.map((it) => Math.round(it.getBoundingClientRect().top)));
      expect(back, `${width}`).toBe(front);
      expect(laid[0]?.foot, `${width}`).toBe(laid[1]?.foot);
    }
  });

  it('of a garment that came in a link lie to one scale and no larger than they are looked at, none as if it were knitted', async () => {
    await sights.find(({ name }) => name === 'link opened')?.come(page, knitter);
    await page.locator('.pass-on-pieces .thumb').first().waitFor();
    const scales = (await drawings('.pass-on-pieces .thumb')).map(({ scale }) => scale);
    expect(Math.max(...scales) / Math.min(...scales)).toBeLessThan(1.03);
    const list = await page.locator('.pass-on-pieces').boundingBox();
    expect(list?.height ?? 0).toBeLessThan(600);
    const knitted = await page
      .locator('.pass-on-pieces clipPath rect')
      .evaluateAll((all) => all.map((it) => Number(it.getAttribute('y'))));
    const highest = await page
      .locator('.pass-on-pieces .map-unworked')
      .evaluateAll((all) =>
        all.map((it) => (it as SVGGraphicsElement).getBBox()).map(({ y, height }) => y + height),
      );
    expect(knitted.filter((y, i) => y < (highest[i] ?? 0) - 0.5)).toEqual([]);
  });
});

describe('the row in hand on a small phone', () => {
  it('stands whole above the key that goes on with it, also where little of the screen is left', async () => {
    await begun();
    await knitter.open('#/');
    await page.locator('.in-hand-drawing .thumb').waitFor();
    await page.setViewportSize({ width: 320, height: 360 });
    expect(await outOfSight(['.in-hand-words > p', '.in-hand-card > .button'])).toEqual([]);
  });
});

describe('the box for a pattern’s text', () => {
  it('has room for lines before anything is typed', async () => {
    await knitter.open('#/read');
    const box = page.locator('textarea').first();
    await box.waitFor();
    expect((await box.boundingBox())?.height ?? 0).toBeGreaterThan(150);
  });
});

describe('in letters twice as large', () => {
  it('the way to make what is drafted stays on the screen', async () => {
    await newWindow();
    await knitter.open('#/draft');
    await page.locator('.draft-foot').waitFor();
    const settings = await openSettings(page, url);
    for (const [width, height] of [
      [390, 844],
      [320, 640],
    ] as const)
      for (const language of ['English', 'Deutsch', 'Français'] as const) {
        await wear(page, settings, { name: 'large', width, height, text: 200, language });
        const found = await outOfSight(['.draft-foot', '.draft-foot .button']);
        expect({ width, language, found }).toEqual({ width, language, found: [] });
      }
  });
});

describe('what acts on a thing', () => {
  it('takes a stripe away from the end of its own line', async () => {
    await newWindow();
    await knitter.open('#/g/sample/yarn');
    await page.locator('.group > summary', { hasText: 'Stripes' }).tap();
    await page.getByRole('button', { name: /^Add a colou?r$/ }).tap();
    const entry = page.locator('.stripe-entry').first();
    await entry.waitFor();
    for (const [width, height] of [
      [390, 844],
      [320, 640],
    ] as const) {
      await page.setViewportSize({ width, height });
      const [rows, bin] = [
        await entry.locator('input').last().boundingBox(),
        await entry.locator('.icon-button').boundingBox(),
      ];
      expect(bin?.x, `${width}`).toBeGreaterThan((rows?.x ?? 0) + (rows?.width ?? 0));
      expect(bin?.y, `${width}`).toBeLessThan((rows?.y ?? 0) + (rows?.height ?? 0));
      expect(bin?.y, `${width}`).toBeGreaterThan((rows?.y ?? 0) - (bin?.height ?? 0));
    }
  });

  it('takes back what was typed from beside the way back, in letters twice as large too', async () => {
    await knitter.open('#/edit/sample?piece=front');
    await page.locator('.edit-bands').waitFor();
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    const keys = page.locator('.screen-head > .icon-button');
    const tops = () => keys.evaluateAll((all) => all.map((it) => Math.round(it.getBoundingClientRect().top)));
    const [wayBack, undo] = await tops();
    expect(undo).toBe(wayBack);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '';
    });
  });
});

describe('a screen of 1280 × 800, once something is typed', () => {
  it('has the drawing of straight panels beside their figures, and it stays while they scroll', async () => {
    await newWindow();
    await page.setViewportSize({ width: 1280, height: 800 });
    await knitter.open('#/new');
    await page.getByLabel('Stitches in 4 in').fill('20');
    await page.getByLabel('Rows in 4 in').fill('28');
    const width = page.getByLabel('Width, in', { exact: true });
    await width.fill('20');
    await page.locator('.edit-sketch-svg').first().waitFor();
    await width.scrollIntoViewIfNeeded();
    const drawn = await page.locator('.edit-in-sight').first().boundingBox();
    const typed = await width.boundingBox();
    expect((drawn?.x ?? 0) + (drawn?.width ?? 0)).toBeLessThanOrEqual(typed?.x ?? 0);
    await page.getByLabel('Sleeve, in', { exact: true }).focus();
    const after = await page.locator('.edit-in-sight').first().boundingBox();
    expect(after && after.y >= 0 && after.y + after.height <= 800).toBe(true);
  });
});
