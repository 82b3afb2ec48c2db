import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { openPhone, type Phone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { unseen } from './in-sight.ts';
import { type Knitter, knitterAt } from './knitter.ts';
import { type Look, openSettings, wear } from './looks.ts';
import { illSet } from './set-well.ts';
import { atRow, sights } from './sights.ts';

let phone: Phone;
let page: Page;
let settings: Page;
let knitter: Knitter;

beforeAll(async () => {
  const { url } = await plainHost();
  phone = await openPhone({ reducedMotion: 'reduce', worker: false });
  page = phone.page;
  knitter = knitterAt(page, url);
  await knitter.openSample();
  settings = await openSettings(page, url);
});

afterAll(async () => {
  await phone.close();
  removeProfiles();
});

const plain: Look = { name: 'plain', width: 390, height: 844 };
const twiceAsLarge: Look = { ...plain, name: 'large', text: 200 };
const smallInGerman: Look = { name: 'German', width: 320, height: 640, language: 'Deutsch' };
const onItsSide: Look = { name: 'side', width: 844, height: 390 };

afterEach(() => wear(page, settings, plain));

/** Comes to an address in plain letters, and puts the page into a look. */
async function see(hash: string, there: string, look: Look): Promise<void> {
  await wear(page, settings, plain);
  await knitter.open(hash);
  await page.locator(there).first().waitFor();
  await wear(page, settings, look);
}

/** Words that reach out of a box that they stand in. */
const runOut = (scope: string) =>
  page.evaluate((selector) => {
    const found: string[] = [];
    const walker = document.createTreeWalker(
      document.querySelector(selector) ?? document.body,
      NodeFilter.SHOW_TEXT,
    );
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const range = document.createRange();
      range.selectNodeContents(node);
      const { width, left, right } = range.getBoundingClientRect();
      if (width === 0 || !node.parentElement?.checkVisibility()) continue;
      for (let box: Element | null = node.parentElement; box; box = box.parentElement) {
        if (getComputedStyle(box).display.startsWith('inline')) continue;
        const edges = box.getBoundingClientRect();
        if (edges.width < 2 || (right <= edges.right + 1 && left >= edges.left - 1)) continue;
        found.push(`“${node.nodeValue?.slice(0, 30)}” out of ${box.className || box.tagName}`);
        break;
      }
    }
    return found;
  }, scope);

/** Signs that lie more than a letter's height away from the word that they stand before. */
const farFromTheirWords = (selector: string) =>
  page.locator(selector).evaluateAll((all) =>
    all.flatMap((it) => {
      const icon = it.querySelector('.icon');
      const walker = document.createTreeWalker(it, NodeFilter.SHOW_TEXT);
      let word = walker.nextNode();
      while (word && !word.nodeValue?.trim()) word = walker.nextNode();
      if (!icon || !word || !it.checkVisibility() || !icon.checkVisibility()) return [];
      const range = document.createRange();
      range.selectNodeContents(word);
      const away = (range.getClientRects()[0]?.left ?? 0) - icon.getBoundingClientRect().right;
      const letter = Number.parseFloat(getComputedStyle(it).fontSize);
      return away > letter || away < 0 ? [`“${it.textContent}” ${Math.round(away)} px away`] : [];
    }),
  );

describe('in narrow columns', () => {
  it('the words of a form stay in them', async () => {
    await see('#/new', '#edit-add', smallInGerman);
    expect(await runOut('.screen-main')).toEqual([]);
  });

  it('the heads of printed rows stay on the paper, and boxes stay in tens', async () => {
    await see('#/g/sample/print?piece=front', '.paper-ten', twiceAsLarge);
    expect(await runOut('.paper')).toEqual([]);
    const broken = await page
      .locator('.paper-ten')
      .evaluateAll(
        (tens) =>
          tens.filter(
            (ten) => new Set([...ten.children].map((box) => (box as HTMLElement).offsetTop)).size > 1,
          ).length,
      );
    expect(broken).toBe(0);
  });

  it('a sign stands before the first word of its key', async () => {
    for (const [hash, there] of [
      ['#/g/sample/record', '.button .icon'],
      ['#/g/sample/pass-on', '.button .icon'],
      ['#/settings', '.button .icon'],
      ['#/new', '#edit-add'],
    ] as const)
      for (const look of [twiceAsLarge, smallInGerman]) {
        await see(hash, there, look);
        expect({ hash, look: look.name, far: await farFromTheirWords('.button') }).toEqual({
          hash,
          look: look.name,
          far: [],
        });
      }
  });

  it('the pad says what is done on one line on a row that shapes', async () => {
    await atRow(page, knitter, 119);
    for (const look of [twiceAsLarge, smallInGerman]) {
      await wear(page, settings, look);
      expect(await farFromTheirWords('.pad-label')).toEqual([]);
      const lines = await page.locator('.pad-label').evaluate((it) => {
        const range = document.createRange();
        range.selectNodeContents(it.lastChild as Node);
        return range.getClientRects().length;
      });
      expect({ look: look.name, lines }).toEqual({ look: look.name, lines: 1 });
    }
  });

  it('what is switched on and off is said in two lines at most', async () => {
    await see('#/settings', '.toggle-label', twiceAsLarge);
    const long = await page.locator('.toggle-label > span').evaluateAll((all) =>
      all.flatMap((it) => {
        const range = document.createRange();
        range.selectNodeContents(it);
        return range.getClientRects().length > 2 ? [it.textContent] : [];
      }),
    );
    expect(long).toEqual([]);
  });
});

describe('a row that is only read', () => {
  it('has keys that are wider than high on a phone on its side, and a way back in letters as large as the others', async () => {
    await see('#/k/sample/back/0/1?row=40', '.looking-keys', onItsSide);
    const next = await page.locator('.looking-keys > .button-plain').boundingBox();
    expect(next?.width ?? 0).toBeGreaterThan(next?.height ?? 0);
    await wear(page, settings, twiceAsLarge);
    const size = (selector: string) =>
      page.locator(selector).evaluate((it) => Number.parseFloat(getComputedStyle(it).fontSize));
    expect(await size('.looking-keys > .button-main')).toBeGreaterThan(24);
  });
});

describe('from right to left', () => {
  const rightToLeft: Look = { ...plain, name: 'rtl', dir: 'rtl' };

  it('a length stands beside the line that it measures, and its half after its whole', async () => {
    await see('#/g/sample/print?piece=front', '.schematic text', rightToLeft);
    const crossing = await page.locator('.schematic g').evaluateAll((all) =>
      all.flatMap((it) => {
        const [text, line] = [it.querySelector('text'), it.querySelector('.schematic-measure')];
        if (!text || !line) return [];
        const [said, drawn] = [text.getBoundingClientRect(), line.getBoundingClientRect()];
        const upright = drawn.height > drawn.width;
        return upright && said.right > drawn.right ? [text.textContent] : [];
      }),
    );
    expect(crossing).toEqual([]);
    expect(
      await page
        .locator('.schematic text')
        .first()
        .evaluate((it) => getComputedStyle(it).direction),
    ).toBe('ltr');
    await knitter.open('#/new');
    const typed = page.locator('.number-input').first();
    await typed.waitFor();
    expect(await typed.evaluate((it) => getComputedStyle(it).direction)).toBe('ltr');
  });

  it('the hatch of a warning is at the side where its sign is', async () => {
    await see('#/samples', '.notice-warning', rightToLeft);
    const at = await page
      .locator('.notice-warning')
      .evaluate((it) => getComputedStyle(it).backgroundPositionX);
    expect(at.split(', ')[0]).toBe('100%');
  });
});

describe('in large letters and long words', () => {
  const germanLarge: Look = { ...twiceAsLarge, name: 'German, large', language: 'Deutsch' };

  it('the way on at the end of a part is in sight', async () => {
    await sights.find(({ name }) => name === 'end of a part')?.come(page, knitter);
    for (const look of [
      twiceAsLarge,
      germanLarge,
      { ...smallInGerman, name: 'small German at 150 %', text: 150 },
      { ...smallInGerman, name: 'small at 150 %', text: 150, language: 'English' as const },
      { ...onItsSide, name: 'side at 150 %', text: 150 },
    ]) {
      await wear(page, settings, look);
      expect({ look: look.name, unseen: await unseen(page, '.part-end .button-main') }).toEqual({
        look: look.name,
        unseen: [],
      });
    }
  });

  it('no title and no key is broken within a word', async () => {
    for (const [hash, there] of [
      ['#/g/sample/making-up', '.screen-title h1'],
      ['#/g/sample', '.group > summary'],
    ] as const) {
      await see(hash, there, germanLarge);
      expect((await illSet(page)).broken).toEqual([]);
    }
  });
});

describe('on a tablet', () => {
  const tablet: Look = { name: 'tablet', width: 1180, height: 820 };

  it('what belongs side by side lies so and uses the width, in lines that are read with ease', async () => {
    await wear(page, settings, tablet);
    for (const [hash, there] of [
      ['#/settings', '.settings-about'],
      ['#/backup', '.backup .card'],
      ['#/g/sample/pass-on', '.pass-on .qr'],
      ['#/g/sample/record', '.record .card'],
    ] as const) {
      await knitter.open(hash);
      await page.locator(there).first().waitFor();
      const { used, columns, longest } = await page.evaluate(() => {
        const all = [...document.querySelectorAll('.settings-group, .backup > *, .pass-on > *, .record > *')]
          .map((it) => it.getBoundingClientRect())
          .filter(({ width, height }) => width > 0 && height > 0);
        const lefts = new Set(all.map(({ left }) => Math.round(left)));
        const em = Number.parseFloat(getComputedStyle(document.body).fontSize);
        const lines = [...document.querySelectorAll('.screen-main p')].map((it) => {
          const range = document.createRange();
          range.selectNodeContents(it);
          return Math.max(0, ...[...range.getClientRects()].map(({ width }) => width)) / em;
        });
        return {
          used: Math.max(...all.map(({ right }) => right)) - Math.min(...all.map(({ left }) => left)),
          columns: lefts.size,
          longest: Math.max(...lines),
        };
      });
      expect({ hash, columns }).toEqual({ hash, columns: 2 });
      expect(used, hash).toBeGreaterThan(0.75 * tablet.width);
      // some 75 letters of half an em each
      expect(longest, hash).toBeLessThan(38);
    }
  });
});
