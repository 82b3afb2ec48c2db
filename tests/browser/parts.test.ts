import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Served, serve } from '../run/serve.ts';
import { violations } from './axe.ts';
import { openPhone, type Phone, type PhoneOptions, phones, removeProfiles } from './drive.ts';
import { buildParts, partsRoot } from './parts/build-parts.ts';
import { until } from './until.ts';

let host: Served;
let phone: Phone;

beforeAll(async () => {
  await buildParts();
  host = await serve({ root: partsRoot });
  phone = await openPhone({ worker: false });
  phone.page.setDefaultTimeout(10_000);
});

afterEach(() => {
  const said = phone.complaints.splice(0);
  if (said.length > 0) throw new Error(`The page complained: ${said.join('; ')}`);
});

afterAll(async () => {
  await phone.close();
  await host.close();
  removeProfiles();
});

/** Opens a page of parts; a policy that they break would be among the phone's complaints. */
async function open(
  query: string,
  { size = 'common', colorScheme = 'light' }: PhoneOptions = {},
): Promise<Page> {
  const { page } = phone;
  await page.setViewportSize(phones[size]);
  await page.emulateMedia({ colorScheme });
  await page.goto(`${host.url}?${query}`);
  await page.waitForSelector('body[data-ready]');
  return page;
}

const enlarge = (page: Page) =>
  page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });

const sticksOut = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent ?? '');

describe('the parts of the look', () => {
  it('have no violation of WCAG 2.2 that a machine can see, by day, by night, dimmed', async () => {
    const page = await open('page=parts&theme=light');
    for (const [theme, dim] of [['light'], ['dark'], ['dark', 'true']]) {
      await page.evaluate(
        ([t, d]) => {
          document.documentElement.dataset.theme = t;
          document.documentElement.dataset.dim = d ?? 'false';
        },
        [theme, dim],
      );
      expect(await violations(page)).toEqual([]);
    }
    await page.getByRole('button', { name: 'Open sheet' }).tap();
    expect(await violations(page)).toEqual([]);
  });

  it('of the pad and the map have none either', async () => {
    const page = await open('page=pad');
    expect(await violations(page)).toEqual([]);
    await page.goto(`${host.url}?page=map`);
    await page.waitForSelector('body[data-ready]');
    expect(await violations(page)).toEqual([]);
  });

  it('stand within 320 px, also at twice the text size, also from right to left', async () => {
    const page = await open('page=parts', { size: 'small' });
    for (const query of [
      'page=parts',
      'page=pad',
      'page=map',
      'page=parts&dir=rtl',
      'page=pad&dir=rtl&hand=left',
    ]) {
      await page.goto(`${host.url}?${query}`);
      await page.waitForSelector('body[data-ready]');
      expect({ query, out: await sticksOut(page) }).toEqual({ query, out: 0 });
      await enlarge(page);
      expect({ query, enlarged: true, out: await sticksOut(page) }).toEqual({
        query,
        enlarged: true,
        out: 0,
      });
    }
  });

  it('are large enough for a thumb: every target is at least 44 px both ways', async () => {
    const page = await open('page=parts', { size: 'small' });
    const small: string[] = [];
    for (const query of ['page=parts', 'page=pad', 'page=map']) {
      await page.goto(`${host.url}?${query}`);
      await page.waitForSelector('body[data-ready]');
      small.push(...(await page.evaluate(tooSmall)));
    }
    expect(small.filter((name) => !name.includes('One more row'))).toEqual([]);
  });

  it('are drawn in our own type, and in the colours of the theme that is asked for', async () => {
    const page = await open('page=parts', { colorScheme: 'dark' });
    const ground = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    await expect.poll(ground).toBe('rgb(28, 33, 36)');
    await page.evaluate(() => {
      document.documentElement.dataset.theme = 'light';
    });
    await expect.poll(ground).toBe('rgb(241, 234, 219)');
    await page.evaluate(() => {
      document.documentElement.dataset.dim = 'true';
    });
    await expect.poll(ground).toBe('rgb(12, 10, 8)');
    expect(await page.evaluate(() => document.fonts.check('16px "Atkinson Hyperlegible Next"'))).toBe(true);
  });
});

/** Names of targets under 44 px; a label belongs to the input within it. */
function tooSmall(): string[] {
  const targets = [
    ...document.querySelectorAll<HTMLElement>('button, a[href], input, select, textarea, [role=slider]'),
  ];
  return targets
    .filter((target) => target.tabIndex >= 0 || target.matches('.number-step'))
    .map((target) => target.closest('label') ?? target)
    .filter((target) => target.getBoundingClientRect().width > 0)
    .filter(
      (target) =>
        Math.min(target.getBoundingClientRect().width, target.getBoundingClientRect().height) < 43.5,
    )
    .map((target) => target.outerHTML.slice(0, 80) + (target.textContent ?? ''));
}

describe('a field', () => {
  it('ties hint and error to its input, and loses the error when it is mended', async () => {
    const page = await open('page=parts');
    const input = page.getByLabel('Cast on', { exact: true });
    await expect.poll(() => input.getAttribute('aria-invalid')).toBe('true');
    const told = await input.evaluate(
      (element) => document.getElementById(element.getAttribute('aria-describedby') ?? '')?.textContent,
    );
    expect(told).toBe('Take 116 or 120 for this rib.');
    await input.fill('116');
    await expect.poll(() => input.getAttribute('aria-invalid')).toBeNull();
    await page.getByRole('button', { name: 'One more: Cast on' }).tap();
    await expect.poll(() => input.inputValue()).toBe('117');
    await input.press('ArrowUp');
    await expect.poll(() => input.inputValue()).toBe('118');
  });

  it('keeps what is typed faster than the screen is painted', async () => {
    const page = await open('page=parts');
    const values = await page.getByLabel('Cast on', { exact: true }).evaluate(async (element) => {
      const input = element as HTMLInputElement;
      const seen: string[] = [];
      for (const text of ['1', '12', '124']) {
        input.value = text;
        input.dispatchEvent(new InputEvent('input', { bubbles: true }));
        // drawn, and not painted yet
        for (let n = 0; n < 20; n += 1) await Promise.resolve();
        seen.push(input.value);
      }
      return seen;
    });
    expect(values).toEqual(['1', '12', '124']);
  });
});

describe('a sheet', () => {
  it('keeps the focus inside, closes by Escape, and gives the focus back', async () => {
    const page = await open('page=parts');
    await page.getByRole('button', { name: 'Open sheet' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('dialog', { name: 'Stitches' }).waitFor();
    const inside: boolean[] = [];
    for (let i = 0; i < 30; i += 1) {
      await page.keyboard.press('Tab');
      inside.push(
        await page.evaluate(
          () =>
            document.activeElement === document.body || document.activeElement?.closest('dialog') !== null,
        ),
      );
    }
    expect(inside.every(Boolean)).toBe(true);
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await expect.poll(() => focused(page)).toBe('Open sheet');
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').waitFor();
  });

  it('takes digits from its keys and from a keyboard', async () => {
    const page = await open('page=parts');
    await page.getByRole('button', { name: 'Open sheet' }).tap();
    for (let i = 0; i < 3; i += 1) await page.getByRole('button', { name: 'Delete last digit' }).tap();
    await page.getByRole('button', { name: '9', exact: true }).tap();
    await page.keyboard.press('6');
    await expect.poll(() => page.locator('output').textContent()).toBe('96 sts');
    await page.getByRole('button', { name: 'Check' }).tap();
    await expect.poll(() => page.getByLabel('Cast on', { exact: true }).inputValue()).toBe('96');
  });
});

/** Real fingers on the middle of the pad, and how many clicks the page has heard of. */
async function fingersOn(page: Page) {
  const cdp = await page.context().newCDPSession(page);
  const box = await page.locator('.pad').boundingBox();
  const x = (box?.x ?? 0) + (box?.width ?? 0) / 2;
  const y = (box?.y ?? 0) + (box?.height ?? 0) / 2;
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', fingers: number, up = 0) =>
    cdp.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: Array.from({ length: fingers }, (_, id) => ({ x: x + 30 * id, y: y - up, id })),
    });
  await page.evaluate(() => {
    document.body.dataset.clicks = '0';
    addEventListener('click', () => {
      document.body.dataset.clicks = `${Number(document.body.dataset.clicks) + 1}`;
    });
  });
  const press = (fingers = 1) => touch('touchStart', fingers);
  const lift = () => touch('touchEnd', 0);
  return {
    press,
    lift,
    move: (up: number) => touch('touchMove', 1, up),
    async tap() {
      await press();
      await lift();
    },
    clicks: () => page.evaluate(() => Number(document.body.dataset.clicks)),
  };
}

describe('the pad', () => {
  it('keeps its name on every row, and on a shaping row changes sign, shape and pattern', async () => {
    const page = await open('page=pad');
    const pad = page.getByRole('button', { name: 'Row done', exact: true });
    const shape = () => page.locator('.pad-cloth').evaluate((cloth) => getComputedStyle(cloth).clipPath);
    const pattern = () =>
      page.locator('.pad-cloth').evaluate((cloth) => getComputedStyle(cloth).backgroundImage);
    const sign = () => pad.locator('.pad-label').innerHTML();
    const plain = await sign();
    expect([await shape(), await pattern()]).toEqual(['none', 'none']);
    await pad.tap();
    await pad.tap();
    await expect.poll(() => page.locator('[data-row="3"]').count()).toBe(1);
    await expect.poll(sign).not.toBe(plain);
    await expect.poll(shape).toContain('polygon');
    await expect.poll(pattern).toContain('repeating-linear-gradient');
  });

  it('counts a finger as it is lifted, and once; what may mean something else is left to the browser', async () => {
    const page = await open('page=pad');
    const hand = await fingersOn(page);
    const row = async () => Number(await page.locator('[data-row]').getAttribute('data-row'));
    await hand.press();
    await expect.poll(row).toBe(1);
    await hand.lift();
    await expect.poll(row).toBe(2);
    for (let n = 0; n < 5; n += 1) await hand.tap();
    expect({ row: await row(), clicks: await hand.clicks() }).toEqual({ row: 7, clicks: 0 });
    // one that moves away
    await hand.press();
    await hand.move(40);
    await hand.lift();
    // two at once
    await hand.press(2);
    await hand.lift();
    // one that rests
    await hand.press();
    await page.waitForTimeout(900);
    await hand.lift();
    // one that only stops a page that scrolls by itself: it cannot be taken over
    await page.locator('.pad').evaluate((pad) => {
      const touches = [new Touch({ identifier: 1, target: pad, clientX: 9, clientY: 9 })];
      pad.dispatchEvent(new TouchEvent('touchstart', { touches, changedTouches: touches }));
      pad.dispatchEvent(new TouchEvent('touchend', { changedTouches: touches, cancelable: true }));
    });
    // whether there is a click after a long rest is for the browser to say: it alone counts then
    const left = await hand.clicks();
    expect({ row: await row(), atMost: left <= 1 }).toEqual({ row: 7 + left, atMost: true });
    // a mouse, a key, and a screen reader, which clicks
    const pad = page.getByRole('button', { name: 'Row done', exact: true });
    await pad.click();
    await pad.press('Enter');
    await pad.dispatchEvent('click');
    expect({ row: await row(), clicks: await hand.clicks() }).toEqual({ row: 10 + left, clicks: 3 + left });
  });

  it('lies under the thumb of the hand that is chosen', async () => {
    const page = await open('page=pad');
    const side = async () => {
      const [pad, undo] = await Promise.all([
        page.locator('.pad').boundingBox(),
        page.getByLabel('Undo').boundingBox(),
      ]);
      return (pad?.x ?? 0) > (undo?.x ?? 0) ? 'right' : 'left';
    };
    for (const [query, hand] of [
      ['', 'right'],
      ['&hand=left', 'left'],
      ['&dir=rtl', 'right'],
      ['&dir=rtl&hand=left', 'left'],
    ]) {
      await page.goto(`${host.url}?page=pad${query}`);
      await page.waitForSelector('body[data-ready]');
      expect({ query, hand: await side() }).toEqual({ query, hand });
    }
  });

  it('is covered by a lock that a touch does not open, a held finger does, and a key does at once', async () => {
    const page = await open('page=pad');
    const lock = async () => {
      await page.getByRole('button', { name: 'Lock' }).tap();
      await page.getByRole('button', { name: 'Hold to unlock' }).waitFor();
    };
    await lock();
    await page.getByRole('button', { name: 'Hold to unlock' }).tap();
    await expect.poll(() => page.locator('.pad').count()).toBe(0);
    const box = await page.getByRole('button', { name: 'Hold to unlock' }).boundingBox();
    await page.mouse.move((box?.x ?? 0) + 40, (box?.y ?? 0) + 40);
    await page.mouse.down();
    await page.locator('.pad').waitFor();
    await page.mouse.up();
    await lock();
    await page.getByRole('button', { name: 'Hold to unlock' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.pad').count()).toBe(1);
  });

  it('is followed by one announcement for a burst of taps, and a message that goes by itself', async () => {
    const page = await open('page=pad');
    const live = page.locator('.spoken[role=status]');
    await until(
      () => live.textContent(),
      (said) => said === 'Row 1 of 40',
    );
    const said = page.evaluate(
      () =>
        new Promise<string[]>((resolve) => {
          const heard: string[] = [];
          const region = document.querySelector('.spoken[role=status]');
          if (region) {
            new MutationObserver(() => heard.push(region.textContent ?? '')).observe(region, {
              childList: true,
              characterData: true,
              subtree: true,
            });
          }
          setTimeout(() => resolve(heard), 1500);
        }),
    );
    const pad = page.getByRole('button', { name: 'Row done', exact: true });
    for (let i = 0; i < 3; i += 1) await pad.dispatchEvent('click');
    expect([...new Set(await said)]).toEqual(['Row 4 of 40']);
    await until(
      () => page.locator('.toast').count(),
      (count) => count === 0,
    );
  });
});

describe('the panel map', () => {
  it('reads a row by a tap, and walks the rows by keys, each with its name', async () => {
    const page = await open('page=map');
    const map = page.getByRole('slider', { name: 'Drawing of Scarf' });
    await page.locator('.map-svg').tap();
    const tapped = Number(await page.locator('[data-looked]').getAttribute('data-looked'));
    expect(tapped).toBeGreaterThan(10);
    await map.press('Home');
    await expect.poll(() => map.getAttribute('aria-valuetext')).toBe('Scarf, row 1: 60 stitches');
    for (let i = 0; i < 12; i += 1) await map.press('ArrowUp');
    await expect
      .poll(() => map.getAttribute('aria-valuetext'))
      .toBe('Scarf, row 13, decrease at both edges: 58 stitches');
    await map.press('End');
    await expect.poll(() => map.getAttribute('aria-valuenow')).toBe('40');
    await map.press('ArrowUp');
    await expect.poll(() => map.getAttribute('aria-valuenow')).toBe('40');
  });

  it('has as few elements for 2,000 rows as for 40, and finishing a row changes the needle and the clip alone, and turns it over', async () => {
    const page = await open('page=map');
    const elements = () => page.evaluate(() => document.querySelectorAll('.map-svg *').length);
    const few = await elements();
    await open('page=map&rows=2000');
    expect(await elements()).toBe(few);
    const touched = await page.evaluate(async () => {
      const svg = document.querySelector('.map-svg');
      const changed = new Set<Node>();
      const watch = new MutationObserver((records) => {
        for (const { target } of records) changed.add(target);
      });
      if (svg) watch.observe(svg, { attributes: true, childList: true, subtree: true });
      const button = [...document.querySelectorAll('button')].find((b) => b.textContent === 'One more row');
      for (let i = 0; i < 20; i += 1) {
        button?.click();
        await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
      }
      return [...changed].map((node) => (node as Element).tagName).sort();
    });
    // the needle with its line, its knob, the yarn and the arrow of the next row, the clip that ends at the place, and the
    // piece, which is turned over with each row
    expect(touched).toEqual(['circle', 'g', 'g', 'path', 'path', 'path', 'rect']);
  });
});
