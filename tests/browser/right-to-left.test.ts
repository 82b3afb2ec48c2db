import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { type Served, serve } from '../run/serve.ts';
import { openPhone, type Phone, removeProfiles } from './drive.ts';
import { movesSideways } from './looks.ts';
import { speakPseudo } from './pseudo.ts';
import { illSet } from './set-well.ts';
import { settled } from './settled.ts';
import { unfold } from './unfolded.ts';

/** Addresses, and what stands there when the screen does. */
const sights: readonly (readonly [string, string])[] = [
  ['#/', '.ways a'],
  ['#/sample', '.pad'],
  ['#/k/sample/back/0/1?row=119', '.row-work'],
  ['#/k/sample/back/0/1', '.place-map svg'],
  ['#/k/sample/back/0/1/tools', 'h1'],
  ['#/k/sample/back/0/1/check', '.key'],
  ['#/g/sample', '.group'],
  ['#/g/sample/yarn', 'h1'],
  ['#/g/sample/making-up', 'svg'],
  ['#/g/sample/record', 'h1'],
  ['#/g/sample/pass-on', 'svg[role="img"]'],
  ['#/sample/cardigan', '.pad'],
  ['#/draft', '.draft-end'],
  ['#/read', 'textarea'],
  ['#/edit/sample?piece=front', '#edit-part-0'],
  ['#/backup', '.backup'],
  ['#/settings', '.settings-about, h1'],
];

/** Those with drawings of the work. */
const drawings = [
  '#/k/sample/back/0/1?row=119',
  '#/k/sample/back/0/1',
  '#/g/sample',
  '#/g/sample/making-up',
  '#/sample/cardigan',
  '#/draft',
  '#/edit/sample?piece=front',
];

let host: Served;
let phone: Phone;

beforeAll(async () => {
  host = await serve({ root: dist });
  phone = await openPhone({ worker: false, locale: 'fr-FR', reducedMotion: 'reduce' });
  await speakPseudo(phone.page);
});

afterAll(async () => {
  await phone.close();
  await host.close();
  removeProfiles();
});

const come = async (page: Page, [hash, there]: readonly [string, string]) => {
  await page.goto(`${host.url}${hash}`);
  await page.locator(there).first().waitFor();
  await settled(page);
};

/** Where each shape of each drawing lies, from the drawing's left edge, in hundredths of its width. */
const drawn = (page: Page, dir: 'ltr' | 'rtl') =>
  page.evaluate((direction) => {
    document.documentElement.dir = direction;
    return [...document.querySelectorAll('svg:not(.icon)')].flatMap((svg) => {
      const { left, width } = svg.getBoundingClientRect();
      const shapes = width === 0 ? [] : [...svg.querySelectorAll('path, rect, circle, line, text, use')];
      return shapes.flatMap((shape) => {
        const box = shape.getBoundingClientRect();
        const per = (x: number) => Math.round(((x - left) / width) * 100);
        const isSeen = box.width + box.height > 0 && !shape.closest('defs, clipPath, mask, pattern');
        return isSeen
          ? [`${svg.getAttribute('class')} ${shape.tagName} ${per(box.left)}–${per(box.right)}`]
          : [];
      });
    });
  }, dir);

const set = (page: Page, name: 'hand' | 'units', to: string) =>
  page.evaluate(
    async ([key, chosen]) => {
      const db = await new Promise<IDBDatabase>((resolve) => {
        const opening = indexedDB.open(document.documentElement.dataset.box ?? '');
        opening.onsuccess = () => resolve(opening.result);
      });
      const tx = db.transaction('settings', 'readwrite');
      tx.objectStore('settings').put(chosen, key);
      await new Promise((resolve) => {
        tx.oncomplete = resolve;
      });
      db.close();
    },
    [name, to] as const,
  );

/** What stands turned: a count and what becomes of it, a whole number and its fraction, in a line of its own or not. */
const turned = (page: Page) =>
  page.evaluate(() => {
    const found: string[] = [];
    let looked = 0;
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node; node = texts.nextNode()) {
      for (const { 0: run, index } of (node.nodeValue ?? '').matchAll(
        /\d+(?: → \d+)+|\d+(?:[¼½¾]|\s\d⁄8)/g,
      )) {
        const at = (from: number) => {
          const range = document.createRange();
          range.setStart(node as Node, from);
          range.setEnd(node as Node, from + 1);
          return range.getBoundingClientRect();
        };
        const [first, last] = [at(index), at(index + run.length - 1)];
        if (first.width === 0 || last.width === 0 || Math.abs(first.bottom - last.bottom) > last.height)
          continue;
        looked += 1;
        if (first.left >= last.left) found.push(`${run} in “${node.nodeValue?.slice(0, 60)}”`);
      }
    }
    return { found, looked };
  });

describe('in a language that is written from right to left, with long words', () => {
  it('nothing is cut and nothing moves sideways, on any main screen', async () => {
    const { page } = phone;
    const found: string[] = [];
    for (const sight of sights) {
      await come(page, sight);
      expect(await page.evaluate(() => document.documentElement.dir)).toBe('rtl');
      expect(await page.locator('#app').textContent(), sight[0]).toMatch(/[א-ת]{5}/);
      const { cut } = await illSet(page);
      found.push(...[...cut, ...(await movesSideways(page))].map((what) => `${sight[0]}: ${what}`));
    }
    expect(found).toEqual([]);
    expect(phone.complaints).toEqual([]);
  });

  it('no drawing is mirrored: the right edge of the work lies right', async () => {
    const { page } = phone;
    for (const sight of sights.filter(([hash]) => drawings.includes(hash))) {
      await come(page, sight);
      const turned = await drawn(page, 'rtl');
      expect(turned.length, sight[0]).toBeGreaterThan(3);
      expect(turned, sight[0]).toEqual(await drawn(page, 'ltr'));
      // what does mirror it is noticed
      await page.evaluate(() => {
        const sheet = new CSSStyleSheet();
        sheet.replaceSync('[dir=rtl] svg { transform: scaleX(-1); }');
        document.adoptedStyleSheets = [sheet];
      });
      expect(await drawn(page, 'rtl'), sight[0]).not.toEqual(turned);
      await page.evaluate(() => {
        document.adoptedStyleSheets = [];
      });
    }
  });

  it('the finder’s left end stands left of its right end', async () => {
    const { page } = phone;
    const usual = page.viewportSize() ?? { width: 390, height: 844 };
    // where both have room on one line
    await page.setViewportSize({ width: 1180, height: 820 });
    await come(page, ['#/k/sample/back/0/1/find', 'input[value="left"]']);
    const [left, right] = await Promise.all(
      ['left', 'right'].map((end) => page.locator(`label:has(input[value="${end}"])`).boundingBox()),
    );
    await page.setViewportSize(usual);
    expect(left?.x).toBeLessThan(right?.x ?? 0);
  });

  it('the pad lies in the corner of the hand that is chosen', async () => {
    const { page } = phone;
    for (const hand of ['left', 'right'] as const) {
      await come(page, ['#/sample', '.pad']);
      await set(page, 'hand', hand);
      await page.reload();
      await come(page, ['#/sample', '.pad']);
      const side = await page.evaluate(() => {
        const [pad, row] = ['.pad', '.pad-row'].map((at) =>
          document.querySelector(at)?.getBoundingClientRect(),
        );
        return pad && row && (pad.left - row.left > row.right - pad.right ? 'right' : 'left');
      });
      expect(side).toBe(hand);
    }
  });

  it('a count and what becomes of it, a fraction behind its whole, and words of another language run from left to right', async () => {
    const { page } = phone;
    // the sample garment is there from then on
    await come(page, ['#/sample', '.pad']);
    await set(page, 'units', 'in');
    await page.reload();
    let looked = 0;
    const found: string[] = [];
    for (const [hash, there] of [
      ['#/edit/sample?piece=front', '.edit-count'],
      ['#/draft', '.draft-end'],
      ['#/g/sample', '.group'],
      ['#/g/sample/making-up', 'svg'],
    ] as const) {
      await come(page, [hash, there]);
      await unfold(page);
      const now = await turned(page);
      looked += now.looked;
      found.push(...now.found.map((what) => `${hash}: ${what}`));
    }
    await come(page, ['#/read', 'textarea']);
    await page.locator('textarea').fill('SCARF\nCast on 20 sts.\nRow 1: K2tog, k to end.\nBind off.');
    await page.locator('.pattern-check h3').waitFor();
    const read = await turned(page);
    expect([...found, ...read.found]).toEqual([]);
    // a count that changes on both screens that tell of it, and lengths of the draft
    expect(read.looked).toBeGreaterThan(1);
    expect(looked).toBeGreaterThan(10);
    const says = (at: string) =>
      page
        .locator(at)
        .first()
        .evaluate((one) => getComputedStyle(one).direction);
    expect(await says('textarea')).toBe('ltr');
    expect(await says('.pattern-said blockquote')).toBe('ltr');
    // the app's own words of a row run as its language does
    expect(await says('.pattern-row-work')).toBe('rtl');
    await set(page, 'units', 'cm');
  });
});
