import type { Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { openPhone, type Phone, removeProfiles } from './drive.ts';
import { shot, violationsUnrolled } from './editor-hand.ts';
import { plainHost } from './host-and-phone.ts';

let host: Awaited<ReturnType<typeof plainHost>>;
let phone: Phone | undefined;
beforeAll(async () => {
  host = await plainHost();
});
afterEach(async () => {
  await phone?.close();
  phone = undefined;
});
afterAll(async () => {
  removeProfiles();
});

/**
 * A knitter whose taps and scrolls are counted: going into a field is a tap, typing in it none; each stroke of her thumb
 * moves what she reads by half a screen, until what she wants lies on it with nothing over it.
 */
function hand(page: Page) {
  let taps = 0;
  let scrolls = 0;
  const reach = async (wanted: Locator) => {
    for (let strokes = 0; strokes < 20; strokes += 1) {
      const way = await wanted.evaluate(wayTo);
      if (way === 0) return;
      scrolls += 1;
      await page.evaluate(stroke, way);
    }
  };
  return {
    taps: () => taps,
    scrolls: () => scrolls,
    type: async (label: string, text: string) => {
      const field = page.getByLabel(label, { exact: true });
      await reach(field);
      await field.tap();
      taps += 1;
      await field.fill(text);
    },
    press: async (name: string | RegExp, role: 'button' | 'link' | 'radio' = 'button') => {
      const found = page.getByRole(role, { name, exact: true }).first();
      const wanted = role === 'radio' ? page.getByText(String(name), { exact: true }) : found;
      await reach(wanted);
      await wanted.tap();
      taps += 1;
    },
  };
}

/** 1 where it lies further down than what is seen, −1 further up, 0 where a finger meets it. */
function wayTo(wanted: Element): number {
  const { left, top, width, height } = wanted.getBoundingClientRect();
  const on = document.elementFromPoint(left + width / 2, top + height / 2);
  if (on && (wanted.contains(on) || on.contains(wanted) || on.closest('label')?.contains(wanted))) return 0;
  return top + height / 2 > innerHeight / 2 ? 1 : -1;
}

function stroke(way: number): void {
  const main = document.querySelector('.screen-main');
  const scroller = main && main.scrollHeight > main.clientHeight ? main : document.documentElement;
  scroller.scrollBy({ top: (way * innerHeight) / 2, behavior: 'instant' });
}

async function openNew(size: 'small' | 'common' = 'common'): Promise<Page> {
  phone = await openPhone({ size, worker: false });
  await phone.page.goto(`${host.url}#/new`);
  await phone.page.getByLabel('Stitches in 4 in').waitFor();
  return phone.page;
}

describe('a garment of straight panels by its numbers', () => {
  it('its back is on the needles within ten taps', async () => {
    const page = await openNew();
    const her = hand(page);
    await her.type('Name', 'Boat neck');
    await her.type('Stitches in 4 in', '20');
    await her.type('Rows in 4 in', '28');
    await her.type('Width, in', '20');
    await her.press('Make back, front and sleeves');
    await her.press('Save');
    await page.getByRole('heading', { name: 'Boat neck', level: 1 }).waitFor();
    // two panels of 100 stitches, one of each edge in the seams, five to the inch: 39.2 in
    await page.getByText(/^39¼\sin round · /).waitFor();
    await page.locator('a[href*="#/k/"]').first().tap();
    await page.getByRole('button', { name: 'Row done' }).waitFor();
    // 20 in at 20 stitches to 4 in
    await page.getByText('Cast on 100').first().waitFor();
    expect(her.taps() + 1).toBeLessThanOrEqual(10);
    expect(her.scrolls()).toBeLessThanOrEqual(6);
    console.log(`a back on the needles: ${her.taps() + 1} taps, ${her.scrolls()} strokes`);
    expect(phone?.complaints).toEqual([]);
  });

  it('the whole of it within thirty, with a V, every figure hers; the drawing stays in sight and the other figure follows', async () => {
    const page = await openNew('small');
    const her = hand(page);
    await her.type('Name', 'V neck');
    await her.type('Stitches in 4 in', '20');
    await her.type('Rows in 4 in', '28');
    await her.press('V neck', 'radio');
    await her.type('Width, stitches', '125');
    // 125 stitches, 5 to the inch
    await expect.poll(() => page.getByLabel('Width, in', { exact: true }).inputValue()).toBe('25');
    await her.type('Width, stitches', '110');
    await her.type('Length, in', '25');
    // 25 in are 175 rows, made even
    await expect.poll(() => page.getByLabel('Length, rows', { exact: true }).inputValue()).toBe('174');
    await her.type('Border, rows', '12');
    await her.type('Neck width, stitches', '43');
    await her.type('Neck depth, in', '8');
    await page.getByText('Each shoulder has 33 stitches, the neck 44.').waitFor();
    await her.type('Cuff, stitches', '46');
    await her.type('Sleeve top, in', '16');
    await her.type('Sleeve, in', '17');
    const drawing = page.locator('.edit-sketch-svg').first();
    const box = await drawing.boundingBox();
    const screen = page.viewportSize();
    expect(box && screen && box.y >= 0 && box.y + box.height <= screen.height).toBe(true);
    await shot(page, 'straight');
    expect(await violationsUnrolled(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    await her.press('Make back, front and sleeves');
    await her.press('Save');
    await page.getByRole('heading', { name: 'V neck', level: 1 }).waitFor();
    expect(her.taps()).toBeLessThanOrEqual(30);
    expect(her.scrolls()).toBeLessThanOrEqual(12);
    console.log(`a whole garment at 320 px: ${her.taps()} taps, ${her.scrolls()} strokes`);
    await page.getByRole('link', { name: 'Making up' }).tap();
    await page.getByRole('heading', { level: 1, name: 'Making up' }).waitFor();
    await shot(page, 'straight-making-up');
    expect(phone?.complaints).toEqual([]);
  });

  it('says why figures do not go together, and goes on with what was typed after a reload', async () => {
    const page = await openNew('small');
    const her = hand(page);
    await her.type('Stitches in 4 in', '20');
    await her.type('Rows in 4 in', '28');
    await her.press('V neck', 'radio');
    await her.type('Width, stitches', '111');
    await page
      .getByText('A V begins between two stitches: give the width an even number of stitches.')
      .waitFor();
    const make = page.getByRole('button', { name: 'Make back, front and sleeves' });
    await expect.poll(() => make.isDisabled()).toBe(true);
    // right below the figure that it speaks of, and read with the key that waits for it
    const said = await page.locator('#edit-straight-verdict').boundingBox();
    const field = await page.getByLabel('Width, stitches', { exact: true }).boundingBox();
    expect((said?.y ?? 0) - (field?.y ?? 0) - (field?.height ?? 0)).toBeLessThan(40);
    expect(await make.getAttribute('aria-describedby')).toBe('edit-straight-verdict');
    await page.getByText('Draft kept on this device as you type.').waitFor();
    await page.reload();
    await page.getByLabel('Width, stitches', { exact: true }).waitFor();
    await expect.poll(() => page.getByLabel('Width, stitches', { exact: true }).inputValue()).toBe('111');
  });
});
