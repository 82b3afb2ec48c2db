import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPhone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { type Knitter, knitterAt } from './knitter.ts';
import { openSettings } from './looks.ts';
import { settled } from './settled.ts';
import * as sights from './sights.ts';
import { until } from './until.ts';

let page: Page;
let host: Awaited<ReturnType<typeof plainHost>>;
let knitter: Knitter;
let end: () => Promise<unknown>;

beforeAll(async () => {
  host = await plainHost();
  const phone = await openPhone({ reducedMotion: 'reduce', worker: false });
  page = phone.page;
  knitter = knitterAt(page, host.url);
  await knitter.openSample();
  end = async () => {
    await phone.close();
    removeProfiles();
  };
}, 60_000);

afterAll(() => end());

const atRow = async (row: number) => {
  await sights.atRow(page, knitter, row);
  await knitter.shows(row);
};

const text = (selector: string) => page.locator(selector).innerText();

describe('a row that is only read', () => {
  it('stands in the heading, and is said to be only read; the place is told apart from it', async () => {
    await atRow(119);
    await knitter.open('#/k/sample/back/0/1?row=191');
    await page.getByText('You are reading row 191').waitFor();
    await expect.poll(() => text('.knitting-row')).toContain('Row 191 of 192');
    await expect.poll(() => text('.knitting-row')).toContain('only read');
    await page.getByRole('button', { name: 'Back to row 119' }).tap();
    await knitter.shows(119);
    await expect.poll(() => text('.knitting-row')).not.toContain('only read');
  });

  it('and was made the next is left behind with its address: a reload shows the row in hand', async () => {
    await atRow(50);
    await expect.poll(() => page.evaluate(() => location.hash)).toBe('#/k/sample/back/0/1');
    await knitter.knit(2);
    await page.reload();
    await knitter.shows(52);
  });
});

describe('the cloth below the needle', () => {
  it('ends with its window, however much is knitted: the lengths stand below it', async () => {
    await atRow(80);
    const cloth = page.locator('.lap-svg g[clip-path]').first();
    await cloth.waitFor();
    const below = () =>
      page.evaluate(() => {
        const svg = document.querySelector<SVGSVGElement>('.lap-svg');
        const cut = svg?.querySelector<SVGRectElement>('clipPath rect');
        return (
          (cut?.y.baseVal.value ?? 0) +
          (cut?.height.baseVal.value ?? 999) -
          (svg?.viewBox.baseVal.height ?? 0)
        );
      });
    await expect.poll(below).toBeLessThanOrEqual(0);
  });
});

describe('what changes before a row', () => {
  it('stands on a card before that row alone, with a mark in the rows ahead; the needle is said nowhere else', async () => {
    await atRow(17);
    const mark = page.locator('.rung', { hasText: '19' }).locator('.rung-marks');
    await mark.waitFor();
    await expect.poll(() => mark.innerText()).toContain('US\u00a06 (4\u00a0mm) needle');
    expect(await text('.row-place')).not.toContain('needle');
    await knitter.knit(2);
    const card = page.locator('.before-row');
    await card.waitFor();
    await expect
      .poll(() => card.innerText())
      .toBe('Before row\u00a019: change to the US\u00a06 (4\u00a0mm) needle');
    await until(
      () => page.locator('[role="status"].spoken').first().innerText(),
      (said) =>
        said.startsWith(
          'Before row\u00a019: change to the US\u00a06 (4\u00a0mm) needle. Row 19 of 192, right side.',
        ),
    );
    await knitter.knit(1);
    await card.waitFor({ state: 'detached' });
  });

  it('leaves the count where it is', async () => {
    const top = () => page.locator('.row-count').evaluate((it) => Math.round(it.getBoundingClientRect().top));
    await atRow(18);
    await page.locator('.ladder').waitFor();
    const before = await top();
    await knitter.knit(1);
    await page.locator('.before-row').waitFor();
    expect(await top()).toBe(before);
  });

  it('has a measuring point, and her own note', async () => {
    await atRow(117);
    await until(
      () => text('.before-row'),
      (said) => said === 'Before row\u00a0117: measure, 16¼\u00a0in as planned',
    );
    await knitter.open('#/k/sample/back/0/1/notes');
    await page.getByRole('textbox').first().fill('try it on');
    await page.getByRole('button', { name: 'Keep the note' }).tap();
    await knitter.open('#/k/sample/back/0/1');
    await until(
      () => text('.before-row'),
      (said) => said.includes('16¼\u00a0in as planned') && said.includes('try it on'),
    );
  });
});

describe('the lap window', () => {
  it('tells the side that faces her and the next shaping, and a touch goes down to the map', async () => {
    await atRow(120);
    const lap = page.locator('.lap');
    const name = () => lap.locator('.spoken').textContent();
    expect(await until(name, (said) => said?.includes('as the wrong side faces you') ?? false)).toBe(
      'Where you are, as the wrong side faces you. Next row is a shaping row: decrease at both edges',
    );
    await expect.poll(() => lap.locator('.lap-mark').getAttribute('d')).toBe('');
    await knitter.knit(1);
    await until(name, (said) => said?.includes('as the right side faces you') ?? false);
    await expect.poll(() => lap.locator('.lap-mark').getAttribute('d')).toMatch(/^M.+M/);
    await page.locator('.place-map svg').first().waitFor();
    // the knob where the row ends, the yarn and the arrow where it begins
    const needle = page.locator('.lap-svg .needle');
    expect(await needle.locator('.needle-yarn, .needle-way, circle').count()).toBe(3);
    const [knob, yarn] = await Promise.all(
      ['circle', '.needle-yarn'].map((part) =>
        needle.locator(part).evaluate((at) => at.getBoundingClientRect().x),
      ),
    );
    expect(knob ?? 0).toBeLessThan(yarn ?? 0);
    await lap.tap();
    await until(
      () => page.locator('.place-map').evaluate((it) => it.getBoundingClientRect().top),
      (top) => top < 400,
    );
  });
});

describe('the lap window and what lies below it', () => {
  it('do not lie over each other: what is below looks the same without it', async () => {
    await atRow(123);
    await page.locator('.lap-svg .map-worked').first().waitFor();
    const lengths = page.locator('.lengths');
    await lengths.waitFor();
    await settled(page);
    const withIt = await lengths.screenshot();
    await page.locator('.lap').evaluate((it) => {
      it.style.visibility = 'hidden';
    });
    expect((await lengths.screenshot()).equals(withIt)).toBe(true);
    await page.locator('.lap').evaluate((it) => {
      it.style.visibility = '';
    });
  });
});

describe('the count', () => {
  it('says beside it by how much a shaping row changes it, and nothing beside a plain one', async () => {
    await atRow(119);
    await expect.poll(() => text('.row-after')).toMatch(/104\s+stitches after this row\s+2 fewer/);
    await knitter.knit(1);
    await expect.poll(() => text('.row-after')).not.toMatch(/fewer|more/);
  });
});

describe('lengths beside the rows', () => {
  it('are what is knitted, to the end of the section, to what comes next: rows by hand', async () => {
    // 18 rows of rib of 30 to 100 mm and 80 of 28 to 100 mm: 345.7 mm; 18 more of these to row 117: 64.3 mm
    await atRow(99);
    const lengths = page.locator('.lengths');
    await until(
      () => lengths.innerText(),
      // row 117, which comes next, is as far as that: it is said once
      (said) => /^so far\s+13½\sin\s+to the end of body\s+2½\sin$/.test(said.trim()),
    );
    // 18 rows of rib and 100 of these: 417.1 mm; two to row 121: 7.1 mm
    await atRow(119);
    await until(
      () => lengths.innerText(),
      (said) => /so far\s+16½\sin\s+to the end of armholes\s+9½\sin\s+to row\s121\s+¼\sin/.test(said),
    );
  });
});

describe('the first row on a small phone', () => {
  it('has its words, its count and what is counted whole above the pad', async () => {
    await page.setViewportSize({ width: 320, height: 640 });
    await knitter.open('#/k/sample/front/0/1');
    await page.getByText('Before row 1').waitFor();
    const foot = (await page.locator('.screen-foot').boundingBox())?.y ?? 0;
    const label = await page.locator('.row-count-words').boundingBox();
    expect((label?.y ?? 0) + (label?.height ?? 0)).toBeLessThanOrEqual(foot);
    expect(label?.y ?? 0).toBeGreaterThan(0);
  });
});

describe('what the words of a row mean', () => {
  it('says which edge of the piece its start is, for a row that is worked turned over', async () => {
    await atRow(118);
    expect(await text('.row-shaping')).toBe('bind off 6 at the start of the row');
    await page.getByRole('button', { name: 'What the words mean', exact: true }).tap();
    await page.getByText('Seen from the right side of the piece, that is at the left edge.').waitFor();
    await page.getByRole('button', { name: 'Close', exact: true }).tap();
  });
});

describe('a row that stands while the language changes', () => {
  it('is said anew, with all that is drawn around it', async () => {
    await atRow(122);
    const labels = () =>
      page.evaluate(() =>
        [
          ...document.querySelectorAll(
            '.lap .spoken, .ladder, .lengths, .before-row, [aria-label], [aria-valuetext]',
          ),
        ]
          .map(
            (at) =>
              `${at.getAttribute('aria-label') ?? ''} ${at.getAttribute('aria-valuetext') ?? ''} ${at.textContent}`,
          )
          .join(' '),
      );
    await until(labels, (said) => said.includes('as the wrong side faces you'));
    const settings = await openSettings(page, host.url);
    await settings.getByText('Deutsch', { exact: true }).first().click();
    await page.waitForFunction(() => document.documentElement.lang === 'de');
    await until(
      labels,
      (said) => /in der R\u00fcckreihe vor dir/.test(said) && /abnehmen an beiden R\u00e4ndern/.test(said),
    );
    await expect
      .poll(labels)
      .not.toMatch(/\b(row|right side|wrong side|faces you|decrease|bind off|so far|to the end)\b/);
    await settings.getByText('English', { exact: true }).first().click();
    await page.waitForFunction(() => document.documentElement.lang === 'en');
    await settings.close();
  });
});
