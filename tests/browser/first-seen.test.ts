import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openPhone, type Phone, phones, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { unseen as unseenOf } from './in-sight.ts';
import { type Knitter, knitterAt } from './knitter.ts';
import { illSet } from './set-well.ts';
import { settled } from './settled.ts';
import { atRow, sights } from './sights.ts';

let phone: Phone;
let page: Page;
let knitter: Knitter;

/** One window: what is looked at is where things lie, and that hangs on no screen before. */
beforeAll(async () => {
  const { url } = await plainHost();
  phone = await openPhone({ reducedMotion: 'reduce', worker: false });
  page = phone.page;
  knitter = knitterAt(page, url);
  await knitter.openSample();
});

beforeEach(() => asRead({}));

afterAll(async () => {
  await phone.close();
  removeProfiles();
});

interface Reading {
  readonly width?: number;
  readonly height?: number;
  /** root text size, per cent */
  readonly text?: number;
  readonly dir?: 'ltr' | 'rtl';
}

/** The window as someone has it, a phone's where nothing is said. */
async function asRead({ width, height, text = 100, dir = 'ltr' }: Reading): Promise<void> {
  await page.setViewportSize({
    width: width ?? phones.common.width,
    height: height ?? phones.common.height,
  });
  await page.evaluate(
    ([size, direction]) => {
      document.documentElement.style.fontSize = `${size}%`;
      document.documentElement.dir = direction;
    },
    [text, dir] as const,
  );
}

const come = (name: string) => sights.find((sight) => sight.name === name)?.come(page, knitter);

const unseen = (selector: string) => unseenOf(page, selector);

const boxesOf = (selector: string) =>
  page
    .locator(selector)
    .evaluateAll((all) =>
      all
        .map((it) => it.getBoundingClientRect())
        .map(({ left, right, top, bottom }) => ({ left, right, top, bottom })),
    );

describe('sizes side by side', () => {
  it('each switch stands nearest to its own size, and apart from the one below it in letters twice as large', async () => {
    await come('design opened');
    await come('in several sizes');
    await page.locator('.pass-on-ticks input').first().waitFor();
    for (const width of [320, 390, 820]) {
      await asRead({ width });
      const switches = await boxesOf('.pass-on-ticks input');
      const names = await boxesOf('.pass-on-ticks label > span');
      expect(switches.length).toBeGreaterThan(4);
      const away = (one: (typeof names)[number], other: (typeof names)[number]) =>
        Math.max(0, one.left - other.right, other.left - one.right) +
        Math.max(0, one.top - other.bottom, other.top - one.bottom);
      const mistaken = switches.filter((one, i) => {
        const far = names.map((name) => away(one, name));
        return far.indexOf(Math.min(...far)) !== i;
      });
      expect(mistaken, `${width}`).toEqual([]);
    }
    await asRead({ text: 200 });
    const large = await boxesOf('.pass-on-ticks input');
    const gaps = large.slice(1).map(({ top }, i) => top - (large[i]?.bottom ?? 0));
    expect(Math.min(...gaps)).toBeGreaterThan(3);
  });

  it('stand in sight as soon as they are worked out, on the smallest phone too, and a reader is brought to them', async () => {
    await come('design opened');
    await come('in several sizes');
    await asRead({ width: 320, height: 640 });
    await come('in several sizes worked out');
    await expect.poll(() => unseen('.size-table thead th:first-child')).toEqual([]);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
      'In several sizes',
    );
  });

  it('the numbers of the seams stand apart where the pieces are sewn', async () => {
    await come('design opened');
    await come('in several sizes');
    await come('in several sizes worked out');
    const near = await page.locator('.picture-whole .picture-number').evaluateAll((all) => {
      const at = all.map((it) => it.getBoundingClientRect());
      return at.flatMap((one, i) =>
        at
          .slice(0, i)
          .filter((other) => Math.hypot(one.x - other.x, one.y - other.y) < one.width)
          .map((other) => `${one.x.toFixed()} ${one.y.toFixed()}, ${other.x.toFixed()} ${other.y.toFixed()}`),
      );
    });
    expect(near).toEqual([]);
  });

  it('a table that goes on beyond the screen says so, until its end is reached, and no head of it is cut', async () => {
    await come('in several sizes worked out');
    for (const text of [100, 200]) {
      await asRead({ text });
      const seen = await page.locator('.size-scroll').evaluate((it) => ({
        goesOn: it.scrollWidth > it.clientWidth + 1,
        sign: getComputedStyle(it).backgroundAttachment,
        cut: [...it.querySelectorAll('[scope="rowgroup"] span')]
          .filter((head) => head.getBoundingClientRect().right > it.getBoundingClientRect().right)
          .map((head) => head.textContent),
      }));
      // what covers the sign scrolls with the table, so that it is seen until its end
      expect(seen, `${text} %`).toEqual({ goesOn: true, sign: 'local, scroll', cut: [] });
    }
  });
});

describe('a pattern that was copied', () => {
  it('is read in whole words in letters twice as large, each sign as large as the words beside it', async () => {
    await come('pattern copied');
    await come('pattern read');
    await asRead({ text: 200 });
    expect((await illSet(page)).broken).toEqual([]);
    const [letter, sign] = await page.evaluate(() => {
      const fault = document.querySelector('.pattern-check .pattern-fault');
      return [
        Number.parseFloat(getComputedStyle(fault ?? document.body).fontSize),
        fault?.querySelector('.icon')?.getBoundingClientRect().height ?? 0,
      ] as const;
    });
    expect(sign).toBeLessThan(1.5 * letter);
  });
});

describe('two on one needle', () => {
  it('have the key for both in sight, whatever is read in', async () => {
    await come('count together');
    for (const reading of [{}, { width: 320, height: 640 }, { text: 150 }, { width: 844, height: 390 }]) {
      await asRead(reading);
      expect(await unseen('.count-page .button-main')).toEqual([]);
    }
  });

  it('lie side by side where there is room, what is worked first at the right end of the needle', async () => {
    await come('count together');
    for (const dir of ['ltr', 'rtl'] as const)
      for (const [width, height] of [
        [844, 390],
        [1180, 820],
      ] as const) {
        await asRead({ width, height, dir });
        const [first, second] = await boxesOf('.count-page .card');
        expect(second?.right ?? 0).toBeLessThan(first?.left ?? 0);
        expect(
          await page
            .locator('.count-card')
            .first()
            .evaluate((it) => getComputedStyle(it).direction),
        ).toBe(dir);
      }
  });
});

describe('what is told', () => {
  it('of a link that is damaged has its hatch where a line begins, and a way on', async () => {
    await come('damaged link');
    const hatch = () =>
      page.locator('.notice-fault').evaluate((it) => getComputedStyle(it).backgroundPositionX.split(',')[0]);
    expect(await hatch()).toBe('0%');
    await asRead({ dir: 'rtl' });
    expect(await hatch()).toBe('100%');
    expect(await unseen('.screen-main .button-main')).toEqual([]);
  });

  it('of a file that was handed over is in sight, with its keys', async () => {
    await come('file handed over');
    await expect
      .poll(() => unseen('.backup .notice:has(.button-main) :is(.notice-title, .button)'))
      .toEqual([]);
  });

  it('of a file has the one main key of its page', async () => {
    const main = page.locator('.button-main');
    await come('file handed over');
    await expect.poll(() => main.allInnerTexts()).toEqual(['Look at it']);
    await come('backup looked at');
    await expect.poll(() => main.allInnerTexts()).toEqual(['Unite']);
  });
});

describe('what explains a count', () => {
  it('is the likeliest where nothing is likelier, and so is what is as likely', async () => {
    await atRow(page, knitter, 119);
    await come('count check');
    await come('count that differs');
    const said = await page.locator('.count-list h3 + .count-soft').allInnerTexts();
    const first = said[0]?.split(', ')[1] ?? '';
    expect(said[0]).toBe(`most likely, ${first}`);
    expect(said.filter((one) => one === first)).toEqual([]);
  });
});

describe('the pieces that can be added', () => {
  it('lie two by two with their words whole, however wide it is', async () => {
    await come('edit garment');
    for (const width of [390, 820, 1180]) {
      await asRead({ width });
      const tops = (await boxesOf('.edit-starters > .button')).map(({ top }) => Math.round(top));
      expect(tops[0], `${width}`).toBe(tops[1]);
      expect(tops[2], `${width}`).toBe(tops[3]);
      expect((await illSet(page)).broken).toEqual([]);
    }
  });
});

describe('the editor of a piece', () => {
  it('has room for the thread around the word in focus, and its sum on one line in large letters', async () => {
    await knitter.open('#/edit/sample?piece=front');
    await page.getByRole('button', { name: /^2\. shoulder/ }).tap();
    const field = page.getByLabel('First on row', { exact: true });
    await field.focus();
    const tight = await page.locator('.said').evaluateAll((all) =>
      all.flatMap((said) => {
        const input = said.querySelector('.said-input');
        const { outlineWidth, outlineOffset } = getComputedStyle(document.activeElement ?? said);
        const thread = Number.parseFloat(outlineWidth) + Number.parseFloat(outlineOffset);
        const own = input?.getBoundingClientRect() ?? new DOMRect();
        return [...said.querySelectorAll(':scope > span')].flatMap((word) => {
          const { left, right, top, bottom } = word.getBoundingClientRect();
          const away = Math.max(own.left - right, left - own.right);
          const isBeside = top < own.bottom && bottom > own.top;
          return isBeside && away < thread ? [`${word.textContent} ${away} of ${thread}`] : [];
        });
      }),
    );
    expect(tight).toEqual([]);
    await asRead({ text: 150 });
    const lines = await page.locator('.edit-works-out strong').evaluate((it) => {
      const range = document.createRange();
      range.selectNodeContents(it);
      return new Set([...range.getClientRects()].map(({ bottom }) => Math.round(bottom / 20))).size;
    });
    expect(lines).toBe(1);
  });

  it('leaves the head of the knitting screen in its order, in letters twice as large too', async () => {
    await knitter.open('#/edit/sample?piece=front');
    await page.locator('.edit-bands').waitFor();
    await knitter.open('#/k/sample/back/0/1');
    await knitter.pad.waitFor();
    await asRead({ text: 200 });
    const [title] = await boxesOf('.screen-head > .screen-title');
    const keys = await boxesOf('.screen-head > .icon-button');
    expect(keys.filter(({ left }) => left >= (title?.right ?? 0)).length).toBe(2);
  });
});

describe('the row that is knitted', () => {
  it('has no figure cut by the pad', async () => {
    const found: string[] = [];
    // a row of one word, one with a shaping, one that more is told of
    for (const row of [60, 118, 1]) {
      await asRead({});
      await atRow(page, knitter, row);
      // figures and drawings come after the row
      await settled(page);
      for (const [width, height] of [
        [320, 640],
        [360, 640],
        [390, 664],
        [360, 740],
        [390, 844],
      ] as const) {
        await asRead({ width, height });
        const cut = await page.locator('.lengths > div').evaluateAll((all) => {
          const foot = document.querySelector('.screen-foot')?.getBoundingClientRect().top ?? 0;
          return all
            .map((it) => ({ text: it.textContent, ...it.getBoundingClientRect().toJSON() }))
            .filter(({ top, bottom }) => top < foot - 1 && bottom > foot - 1)
            .map(({ text, bottom }) => `${text} ends at ${bottom} of ${foot}`);
        });
        found.push(...cut.map((what) => `row ${row}, ${width} × ${height}: ${what}`));
      }
    }
    expect(found).toEqual([]);
  });

  it('has its needle whole on a tablet at its first row, beside the foot', async () => {
    await asRead({ width: 1180, height: 820 });
    // whichever row was in hand
    await atRow(page, knitter, 90);
    await atRow(page, knitter, 1);
    const below = () =>
      page.evaluate(() => {
        const needle = document.querySelector('.place-map .needle')?.getBoundingClientRect().bottom ?? 1e4;
        return needle - innerHeight;
      });
    // what it lies on is drawn late
    await settled(page);
    await expect.poll(below).toBeLessThan(-18);
  });
});
