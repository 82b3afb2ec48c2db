import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { openPhone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { type Knitter, knitterAt } from './knitter.ts';
import { until } from './until.ts';

afterAll(removeProfiles);

/** What the phone was asked to do; stands in for its motor, loudspeaker, voice and headset. */
interface Felt {
  readonly buzzes: number[][];
  readonly tones: number[];
  readonly said: string[];
  readonly headset: Record<string, (() => void) | null>;
  /** added to the clock, ms */
  later: number;
}

declare global {
  interface Window {
    felt: Felt;
  }
}

function standIns(): void {
  const felt: Felt = { buzzes: [], tones: [], said: [], headset: {}, later: 0 };
  window.felt = felt;
  const now = Date.now.bind(Date);
  Date.now = () => now() + felt.later;
  Object.defineProperty(navigator, 'vibrate', {
    value: (pattern: number[]) => felt.buzzes.push(pattern) > 0,
  });
  const param = (set: (value: number) => void) =>
    Object.defineProperty({ setValueAtTime() {}, exponentialRampToValueAtTime() {} }, 'value', { set });
  class Sound {
    readonly state = 'running';
    readonly currentTime = 0;
    readonly destination = {};
    createOscillator() {
      const voice = {
        frequency: param((hertz) => felt.tones.push(hertz)),
        connect: () => voice,
        start() {},
        stop() {},
      };
      return voice;
    }
    createGain() {
      return { gain: param(() => undefined), connect: () => ({}) };
    }
  }
  Object.defineProperty(window, 'AudioContext', { value: Sound });
  Object.defineProperty(window, 'speechSynthesis', {
    value: { cancel() {}, speak: ({ text }: SpeechSynthesisUtterance) => felt.said.push(text) },
  });
  if ('mediaSession' in navigator)
    navigator.mediaSession.setActionHandler = (action, turn) => {
      felt.headset[action] = turn as (() => void) | null;
    };
}

async function knitting(use: (page: Page, knitter: Knitter) => Promise<void>): Promise<void> {
  const host = await plainHost();
  const phone = await openPhone({ worker: false });
  await phone.page.addInitScript(standIns);
  const knitter = knitterAt(phone.page, host.url);
  await knitter.openSample();
  await use(phone.page, knitter);
  expect(phone.complaints).toEqual([]);
  await phone.close();
}

const felt = (page: Page) =>
  page.evaluate(() => ({ ...window.felt, headset: Object.keys(window.felt.headset) }));
const shown = (page: Page, row: number) => page.getByText(`Row ${row} of 192`).first().waitFor();
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

async function goTo(page: Page, knitter: Knitter, row: number): Promise<void> {
  await knitter.open(`#/k/sample/back/0/1?row=${row}`);
  await button(page, `Make row ${row} the next`).tap();
  await knitter.pad.waitFor();
}

/** The sample's stripes as they lie in the box: 'woad 2, weld 2'. */
const storedStripes = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise<string>((done) => {
        const opening = indexedDB.open(document.documentElement.dataset.box ?? '');
        opening.onsuccess = () => {
          const asked = opening.result.transaction('garments').objectStore('garments').get('sample');
          asked.onsuccess = () => {
            const stripes: { colour: string; rows: number }[] = asked.result?.stripes ?? [];
            done(stripes.map(({ colour, rows }) => `${colour} ${rows}`).join(', '));
            opening.result.close();
          };
        };
      }),
  );

/** Turns a switch of the tools sheet on. */
async function switchOn(page: Page, name: string): Promise<void> {
  await button(page, 'Tools').tap();
  await page.getByRole('switch', { name }).tap();
  await button(page, 'Close').tap();
}

describe('the hand and the ear', () => {
  it('are told apart: a plain row comes, a shaping row comes, something is done before the row, the part ends', () =>
    knitting(async (page, knitter) => {
      await switchOn(page, 'Tick at each row');
      // the sample's back: another needle from row 19 on, shaping on rows 119 and 117 (with a measuring point), 192 rows
      for (const row of [2, 118, 18, 116, 192]) {
        await goTo(page, knitter, row);
        const before = (await felt(page)).buzzes.length;
        await knitter.pad.tap();
        await until(
          () => felt(page),
          ({ buzzes }) => buzzes.length > before,
        );
      }
      const { buzzes, tones } = await felt(page);
      expect(buzzes).toHaveLength(5);
      expect(new Set(buzzes.map(String)).size).toBe(5);
      const [plain = [], shaping = [], , , end = []] = buzzes;
      const length = (pattern: readonly number[]) => pattern.reduce((sum, ms) => sum + ms, 0);
      expect(length(plain)).toBeLessThan(length(shaping));
      expect(length(shaping)).toBeLessThan(length(end));
      expect(tones.length).toBeGreaterThan(4);
    }));

  it('hear each row that comes, once she asks for it', () =>
    knitting(async (page, knitter) => {
      await knitter.knit(1);
      expect((await felt(page)).said).toEqual([]);
      await switchOn(page, 'Read each row aloud');
      await knitter.knit(1);
      const { said } = await until(
        () => felt(page),
        (now) => now.said.length > 0,
      );
      expect(said.at(-1)).toMatch(/^Row 3 of 192, right side\. .* 118\sstitches after it\.$/);
    }));

  it('hear at the end of a part that it is done, when they ask', () =>
    knitting(async (page, knitter) => {
      await goTo(page, knitter, 192);
      await shown(page, 192);
      await knitter.pad.tap();
      await page.getByText('Back is done').first().waitFor();
      await button(page, 'Tools').tap();
      await button(page, 'Read aloud').tap();
      expect((await felt(page)).said).toEqual(['Back: last row done.']);
    }));

  it('are cautioned after a long sitting, and never again when she has said so', () =>
    knitting(async (page, knitter) => {
      const caution = page.getByText('Rest your hands a moment');
      const minutes = (count: number) =>
        page.evaluate((ms) => {
          window.felt.later += ms;
        }, count * 60_000);
      for (let i = 0; i < 14; i += 1) {
        await knitter.knit(1);
        await minutes(4);
      }
      await caution.waitFor();
      await button(page, 'Do not remind me').tap();
      await until(
        () => caution.count(),
        (count) => count === 0,
      );
      for (let i = 0; i < 14; i += 1) {
        await knitter.knit(1);
        await minutes(4);
      }
      expect(await caution.count()).toBe(0);
    }));
});

describe('a headset', () => {
  it('finishes a row with next and takes it back with previous', () =>
    knitting(async (page) => {
      await until(
        () => felt(page),
        ({ headset }) => headset.includes('nexttrack'),
      );
      await page.evaluate(() => window.felt.headset.nexttrack?.());
      await shown(page, 2);
      await page.evaluate(() => window.felt.headset.previoustrack?.());
      await shown(page, 1);
    }));
});

describe('a headset, the phone in a pocket', () => {
  it('is answered by the voice though no frame is painted', () =>
    knitting(async (page, knitter) => {
      await switchOn(page, 'Read each row aloud');
      await knitter.knit(1);
      const heard = (row: number) =>
        until(
          () => felt(page),
          ({ said }) => said.at(-1)?.startsWith(`Row ${row} of 192,`) === true,
        );
      await heard(2);
      await page.evaluate(() => {
        window.requestAnimationFrame = () => 0;
        window.felt.headset.nexttrack?.();
      });
      await heard(3);
    }));
});

describe('the lock', () => {
  it('takes no tap and no key until its button is held', () =>
    knitting(async (page, knitter) => {
      await button(page, 'Lock').tap();
      const hold = page.getByRole('button', { name: 'Hold to unlock' });
      await hold.waitFor();
      await expect.poll(() => knitter.pad.count()).toBe(0);
      await hold.tap();
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('PageDown');
      await page.touchscreen.tap(195, 300);
      await shown(page, 1);
      await hold.hover();
      await page.mouse.down();
      await knitter.pad.waitFor();
      await page.mouse.up();
      await shown(page, 1);
      await knitter.knit(1);
    }));
});

describe('the look', () => {
  it('is dark and warm in the evening, and the pad lies under the thumb that she chose', () =>
    knitting(async (page, knitter) => {
      const middle = async () => {
        const box = await knitter.pad.boundingBox();
        return (box?.x ?? 0) + (box?.width ?? 0) / 2;
      };
      await expect.poll(middle).toBeGreaterThan(195);
      await switchOn(page, 'Evening light');
      const [red = 0, , blue = 255] = await page.evaluate(
        () => getComputedStyle(document.documentElement).backgroundColor.match(/\d+/g)?.map(Number) ?? [],
      );
      expect(red).toBeLessThan(40);
      expect(blue).toBeLessThanOrEqual(red);
      await knitter.open('#/settings');
      await page.getByText('Left', { exact: true }).tap();
      await knitter.open('#/k/sample/back/0/1');
      await knitter.pad.waitFor();
      await expect.poll(middle).toBeLessThan(195);
    }));
});

describe('the count', () => {
  it('is on paper too where she prints the screen itself', () =>
    knitting(async (page) => {
      await page.emulateMedia({ media: 'print' });
      const scrolled = await page
        .locator('.screen-main')
        .evaluate((it) => it.clientHeight > 0 && it.scrollHeight - it.clientHeight);
      expect(scrolled).toBe(0);
      await expect.poll(() => page.locator('.row-count').isVisible()).toBe(true);
    }));
});

describe('what is done before row 1', () => {
  it('stands over that row, goes once it is done, and is back when it is undone', () =>
    knitting(async (page, knitter) => {
      const before = page.locator('.set-up-work');
      await before.filter({ hasText: 'Cast on 118' }).waitFor();
      await knitter.knit(1);
      await before.waitFor({ state: 'detached' });
      await button(page, 'Undo').tap();
      await before.waitFor();
      await knitter.open('#/k/sample/back/0/1?row=40');
      await before.waitFor({ state: 'detached' });
    }));
});

describe('the words of a row', () => {
  it('are explained when they are touched', () =>
    knitting(async (page, knitter) => {
      await goTo(page, knitter, 119);
      await page.locator('.row-work').tap();
      const sheet = page.getByRole('dialog', { name: 'What the words mean' });
      await sheet.getByText('slip, slip, knit').waitFor();
      await sheet.getByText('right side', { exact: false }).first().waitFor();
    }));
});

describe('stripes', () => {
  it('a colour that is being typed stays while another window keeps what draws the page anew', () =>
    knitting(async (page, knitter) => {
      await knitter.open('#/g/sample/yarn');
      await page.locator('summary', { hasText: 'Stripes' }).click();
      const add = page.getByRole('button', { name: /^Add a colou?r$/ });
      await add.tap();
      await add.tap();
      await until(
        () => storedStripes(page),
        (kept) => kept === 'Color 1 2, Color 2 2',
      );
      await page.getByLabel(/^Colou?r 2$/).fill('weld');
      // what it needs is said under the name that is typed, before its field is left
      await page.locator('.yarn-lines li', { hasText: /^weld/ }).waitFor();
      const other = await page.context().newPage();
      await knitterAt(other, new URL('.', page.url()).href).open('#/g/sample/yarn');
      await other.locator('summary', { hasText: 'Stripes' }).click();
      await other.getByLabel(/^Rows of colou?r 1$/).fill('6');
      await until(
        () => page.getByLabel(/^Rows of colou?r 1$/).inputValue(),
        (rows) => rows === '6',
      );
      await page.bringToFront();
      await page.keyboard.press('Tab');
      await until(
        () => storedStripes(page),
        (kept) => kept === 'Color 1 6, weld 2',
      );
    }));

  it('are said with the row: the colour that it has, and the change where a new one begins', () =>
    knitting(async (page, knitter) => {
      await knitter.open('#/g/sample/yarn');
      await page.locator('summary', { hasText: 'Stripes' }).click();
      const add = page.getByRole('button', { name: /^Add a colou?r$/ });
      for (const n of [1, 2]) {
        await add.tap();
        await page.getByLabel(new RegExp(`^Colou?r ${n}$`)).fill(n === 1 ? 'woad' : 'weld');
        await page.getByLabel(new RegExp(`^Rows of colou?r ${n}$`)).fill('2');
      }
      await page.keyboard.press('Tab');
      await until(
        () => storedStripes(page),
        (kept) => kept === 'woad 2, weld 2',
      );
      await knitter.open('#/k/sample/back/0/1');
      await page.getByText('in woad').waitFor();
      // the first colour up to the rib's end, and then two rows of each
      await goTo(page, knitter, 19);
      await page.locator('.ladder .rung-marks', { hasText: 'weld' }).first().waitFor();
      await knitter.knit(2);
      await page.locator('.before-row', { hasText: 'Before row 21: change to weld' }).waitFor();
    }));
});
