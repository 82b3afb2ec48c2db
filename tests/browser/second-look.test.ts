import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPhone } from './drive.ts';
import { hiddenAt } from './hidden-at.ts';
import { knitterAt } from './knitter.ts';
import { lookedAt, onItsSide, plain, small, tablet } from './looked-at.ts';
import { openSettings, wear } from './looks.ts';
import { settled } from './settled.ts';
import { sights } from './sights.ts';

const { page, settings, knitter, url, come, toRow, look, boxes } = lookedAt();
const large = { ...plain, name: 'large', text: 200 };
const germanSide = { ...onItsSide, name: 'side, German', language: 'Deutsch' } as const;
const smallSide = { name: 'small side', width: 740, height: 360 };

const wordsPx = (on: Page) =>
  on
    .locator('.row-work > .row-chunk')
    .first()
    .evaluate((it) => Number.parseFloat(getComputedStyle(it).fontSize));

describe('what the words of a row mean, on a phone on its side', () => {
  it('lies beside those words', async () => {
    await toRow(119);
    await page().getByRole('button', { name: 'What the words mean', exact: true }).tap();
    await page().locator('dialog[open] dd').first().waitFor();
    const found: string[] = [];
    for (const at of [onItsSide, germanSide, smallSide, { ...onItsSide, name: 'side, large', text: 200 }]) {
      await look(at);
      const [[sheet], [words]] = await Promise.all([boxes('dialog[open]'), boxes('.row-work')]);
      if (!sheet || !words || sheet.left < words.right)
        found.push(`${at.name}: ${JSON.stringify(sheet)} over ${JSON.stringify(words)}`);
    }
    await wear(page(), settings(), plain);
    await page().getByRole('button', { name: 'Close', exact: true }).tap();
    expect(found).toEqual([]);
  });
});

describe('how far it is', () => {
  it('is said once where what comes next lies at the end of what is knitted', async () => {
    const told = async () =>
      (await page().locator('.lengths dt').allInnerTexts()).map((one) => one.replace(/\s/g, ' '));
    await toRow(40);
    await page().locator('.lengths').waitFor();
    await expect.poll(told).toEqual(['so far', 'to the end of body']);
    await toRow(119);
    await expect.poll(told).toEqual(['so far', 'to the end of armholes', 'to row 121']);
  });

  it('stands apart from what it is the length of, on one line or below it', async () => {
    await toRow(119);
    await page().locator('.lengths').waitFor();
    for (const at of [plain, small, onItsSide, smallSide, large]) {
      await look(at);
      const near = await page()
        .locator('.lengths > div')
        .evaluateAll((all) =>
          all.flatMap((it) => {
            const [what, mm] = [...it.children].map((one) => {
              const range = document.createRange();
              range.selectNodeContents(one);
              return range.getBoundingClientRect();
            });
            const isApart = what && mm && (mm.left >= what.right + 3 || mm.top >= what.bottom - 4);
            return !it.checkVisibility() || isApart ? [] : [it.textContent];
          }),
        );
      expect({ look: at.name, near }).toEqual({ look: at.name, near: [] });
    }
  });
});

describe('a word in an empty card', () => {
  it('is as large where two ways are asked about, on its side and on the smallest phone in German', async () => {
    // in a window of its own: what is written there would stand in the others
    const own = await openPhone({ reducedMotion: 'reduce', worker: false });
    const hers = knitterAt(own.page, url());
    await hers.openSample();
    const choices = await openSettings(own.page, url());
    await sights.find(({ name }) => name === 'two ways')?.come(own.page, hers);
    const sizes: number[] = [];
    for (const at of [onItsSide, { ...small, name: 'German', language: 'Deutsch' } as const]) {
      await wear(own.page, choices, at);
      await settled(own.page);
      sizes.push(await wordsPx(own.page));
      expect(await hiddenAt(own.page, [100, 130, 150, 200]), at.name).toEqual([]);
    }
    await own.close();
    await page().bringToFront();
    expect(Math.min(...sizes)).toBeGreaterThan(40);
  });
});

describe('a change of needle, on a phone on its side', () => {
  it('is said in letters no smaller than those of any text', async () => {
    await toRow(19);
    await page().locator('.before-row').waitFor();
    await look(onItsSide);
    const px = await page()
      .locator('.before-row')
      .evaluate((it) => Number.parseFloat(getComputedStyle(it).fontSize));
    expect(px).toBeGreaterThanOrEqual(16);
    expect(await hiddenAt(page(), [100, 130, 150, 200])).toEqual([]);
  });
});

describe('another make beside the one in hand', () => {
  it('is drawn as knitted as far as it is, in the dye and with a whole line', async () => {
    await toRow(119);
    await come('sleeve second make');
    await look(tablet);
    const worn = (selector: string) =>
      page()
        .locator(selector)
        .first()
        .evaluate((it) => {
          const { fill, stroke, strokeDasharray } = getComputedStyle(it);
          return { fill, isLined: stroke !== 'none' && strokeDasharray === 'none' };
        });
    await knitter().open('#/k/sample/sleeve/0/1');
    const dyed = await worn('.place-map .map-worked');
    await come('sleeve second make');
    await look(tablet);
    expect(await worn('.map-other .map-worked')).toEqual({ fill: dyed.fill, isLined: true });
  });
});

describe('a locked row', () => {
  it('shows no key that does nothing', async () => {
    await toRow(119);
    await page().getByRole('button', { name: 'Lock', exact: true }).tap();
    await page().locator('.hold').waitFor();
    const seen = await page()
      .locator('button')
      .evaluateAll((all) =>
        all.flatMap((it) => (it.checkVisibility({ visibilityProperty: true }) ? [it.className] : [])),
      );
    await page().getByRole('button', { name: 'Hold to unlock' }).press('Enter');
    await knitter().pad.waitFor();
    expect(seen.filter((one) => !/hold|lap|rung/.test(one))).toEqual([]);
  });
});

describe('the pieces on the table, on a phone on its side', () => {
  it('have their names and what is said of them above the foot or beside it', async () => {
    await come('garment');
    const found: string[] = [];
    for (const at of [onItsSide, smallSide]) {
      await look(at);
      const [foot] = await boxes('.screen-foot');
      if (!foot) throw new Error('no foot is there');
      for (const { left, right, bottom } of (await boxes('.tile')).slice(0, 4)) {
        const isOver = right > foot.left && left < foot.right && bottom > foot.top;
        if (isOver || bottom > at.height) found.push(`${at.name}: ends at ${bottom} of ${foot.top}`);
      }
    }
    expect(found).toEqual([]);
  });
});

describe('the end of a part in the largest letters', () => {
  it('keeps its drawing, with the keys whole above the foot', async () => {
    await come('end of a part');
    const found: string[] = [];
    for (const [width, height] of [
      [390, 844],
      [412, 915],
    ] as const)
      for (const language of ['English', 'Deutsch'] as const) {
        await look({ name: 'largest', width, height, text: 200, language });
        const [foot] = await boxes('.screen-foot');
        const [drawn] = await boxes('.part-end .map-svg');
        const high = (drawn?.bottom ?? 0) - (drawn?.top ?? 0);
        if (high < 90) found.push(`${width}, ${language}: the drawing is ${high} px high`);
        for (const { bottom } of await boxes('.part-end .button'))
          if (bottom > (foot?.top ?? 0))
            found.push(`${width}, ${language}: a key ends at ${bottom} of ${foot?.top}`);
      }
    expect(found).toEqual([]);
  });
});

describe('the editor of a piece in the largest letters', () => {
  it('leaves the piece two thirds of the screen between head and foot', async () => {
    await come('edit garment', 'edit piece');
    await look(large);
    const [[head], [foot]] = await Promise.all([boxes('.screen-head'), boxes('.screen-foot')]);
    expect((foot?.top ?? 0) - (head?.bottom ?? 9999)).toBeGreaterThan(0.62 * large.height);
  });
});

describe('a count that differs', () => {
  it('has the likeliest that explains it open and the others on a line or two each', async () => {
    await toRow(119);
    await come('count check', 'count that differs');
    const all = await boxes('.count-list > li');
    expect(all.length).toBeGreaterThan(3);
    const high = all.map(({ top, bottom }) => bottom - top);
    expect(Math.min(high[0] ?? 0, 130)).toBe(130);
    expect(Math.max(...high.slice(1))).toBeLessThan(100);
    // what is folded is opened by its name
    const second = page().locator('.count-list > li').nth(1);
    await second.locator('summary').tap();
    await second.locator('.button').first().waitFor();
  });
});

describe('that she does not know', () => {
  it('is no larger than what she may know', async () => {
    await come('count find');
    for (const at of [plain, small, onItsSide, { ...small, name: 'German', language: 'Deutsch' } as const]) {
      await look(at);
      for (const choice of await page().locator('.choice-row').all()) {
        const wide = await choice
          .locator('.choice-option')
          .evaluateAll((all) => all.map((it) => it.getBoundingClientRect().width));
        expect({ look: at.name, isLargest: (wide[2] ?? 0) > Math.max(...wide.slice(0, 2)) + 1 }).toEqual({
          look: at.name,
          isLargest: false,
        });
      }
    }
  });
});

describe('the pieces of a garment by its numbers', () => {
  it('are called finished where the table has them finished', async () => {
    await come('end of a part', 'garment');
    const finished = page().locator('.tile', { hasText: 'Finished' }).locator('strong');
    await expect.poll(() => finished.allInnerTexts()).toEqual(['Back']);
    await come('edit garment');
    const said = page().locator('.edit-piece', { hasText: 'Back' }).locator('.edit-right');
    expect(await said.innerText()).toContain('Finished');
  });
});

describe('a piece on paper', () => {
  it('has the width of its body beside that of its beginning', async () => {
    await come('print');
    await expect
      .poll(() => page().locator('.paper .schematic text').allTextContents())
      .toEqual(
        expect.arrayContaining([expect.stringMatching(/^22\sin$/), expect.stringMatching(/^19¼\sin$/)]),
      );
  });
});

describe('on a tablet', () => {
  it('the keys that count are a thumb’s size', async () => {
    await toRow(119);
    await come('count check');
    await look(tablet);
    const [[agrees], [keys]] = await Promise.all([
      boxes('.count-thumb > .button'),
      boxes('.count-thumb .keys'),
    ]);
    expect((agrees?.right ?? 0) - (agrees?.left ?? 0)).toBe((keys?.right ?? 0) - (keys?.left ?? 1));
  });
});
