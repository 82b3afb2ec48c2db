import { describe, expect, it } from 'vitest';
import { violations } from './axe.ts';
import { openPhone } from './drive.ts';
import { hiddenAt } from './hidden-at.ts';
import { knitterAt } from './knitter.ts';
import { lookedAt, onItsSide, plain, small, tablet } from './looked-at.ts';
import { openSettings, wear } from './looks.ts';
import { settled } from './settled.ts';
import { sights } from './sights.ts';

const { page, knitter, url, come, toRow, look, boxes } = lookedAt();

describe('what the words mean, on the smallest phone', () => {
  it('takes the focus itself where it scrolls and holds nothing that does', async () => {
    await toRow(119);
    await come('meaning of the words');
    await look({ ...small, name: 'small and dark', colorScheme: 'dark' });
    const found = await violations(page(), 'look');
    await page().getByRole('button', { name: 'Close', exact: true }).tap();
    expect(found).toEqual([]);
  });
});

describe('a row that is only read', () => {
  it('says which row is in hand beside the key back to it, in the largest letters and on its side too', async () => {
    await toRow(119);
    await knitter().open('#/k/sample/back/0/1?row=40');
    await page().getByText('You are reading row 40').waitFor();
    const found: string[] = [];
    for (const language of ['English', 'Deutsch', 'Français'] as const)
      for (const at of [{ ...plain, text: 200 }, { ...small, text: 200 }, onItsSide, plain, small]) {
        const name = `${language}, ${at.width} × ${at.height}`;
        await look({ ...at, name, language });
        const [[told], [key]] = await Promise.all([
          boxes('.looking-bar > p'),
          boxes('.looking-bar .button-main'),
        ]);
        const said = await page().locator('.looking-bar > p').innerText();
        if (!told || told.bottom > (key?.top ?? 0) || !said.includes('119')) found.push(`${name}: ${said}`);
        if ((await boxes('.looking-keys > *')).some(({ bottom }) => bottom > at.height))
          found.push(`${name}: a key is cut`);
        found.push(...(await hiddenAt(page(), language === 'Deutsch' ? [100, 200] : [100])));
      }
    await look(plain);
    await page().getByRole('button', { name: 'Back to row 119' }).tap();
    expect(found).toEqual([]);
  });
});

describe('in the largest letters', () => {
  it('a row’s words, by how much it changes, and the numbers of the lap window keep their size beside the count', async () => {
    const sizes = () =>
      page().evaluate(() => {
        const px = (selector: string) => {
          const it = document.querySelector(selector);
          return it ? Number.parseFloat(getComputedStyle(it).fontSize) : 0;
        };
        const of = ['.row-work', '.row-change', '.lap-number'].map((one) => px(one) / px('.row-count'));
        return of.map((one) => Math.round(one * 100));
      });
    const found: string[] = [];
    for (const row of [118, 119, 120]) {
      await toRow(row);
      await page().locator('.lap-number').first().waitFor();
      for (const language of ['English', 'Deutsch', 'Français'] as const) {
        await look({ ...plain, name: language, language });
        const usual = await sizes();
        await look({ ...plain, name: `${language}, large`, text: 200, language });
        const large = await sizes();
        if (large.some((one, i) => one < 0.82 * (usual[i] ?? 0)))
          found.push(
            `${row}, ${language}: ${large.join(' ')} against ${usual.join(' ')} hundredths of the count`,
          );
        found.push(...(await hiddenAt(page(), [110, 120, 130, 140, 150, 170, 200])));
      }
    }
    expect(found).toEqual([]);
  });
});

describe('two sleeves beside each other', () => {
  it('have their names above them and keep their places, whichever is in hand', async () => {
    const named = async () => {
      const all = page().locator('.place-map .map-name');
      const texts = await all.allTextContents();
      const lefts = await all.evaluateAll((of) => of.map((it) => it.getBoundingClientRect().left));
      return texts
        .map((text, i) => ({ text, left: lefts[i] ?? 0 }))
        .sort((a, b) => a.left - b.left)
        .map(({ text }) => text.replace(/\s/g, ' '));
    };
    for (const make of ['1', '2']) {
      await knitter().open(`#/k/sample/sleeve/0/${make}`);
      await page().locator('.place-map .map-name').nth(1).waitFor({ state: 'attached' });
      await look(tablet);
      expect(await named(), make).toEqual(['Sleeve no. 1', 'Sleeve no. 2']);
      const [needle] = await boxes('.place-map .needle');
      const [outline] = await boxes('.place-map .map-other');
      expect((needle?.left ?? 0) < (outline?.left ?? 0), make).toBe(make === '1');
    }
  });
});

describe('the yarn of a garment', () => {
  it('says what is needed and what is at hand in balls, and each look of the drawn balls beside its word', async () => {
    await come('yarn');
    const card = page().locator('.card', { hasText: 'What the garment needs' });
    const said = (await card.innerText()).replace(/\s+/g, ' ');
    expect(said).toMatch(/10\.1 balls: 509 g, 1,335 yd in all/);
    expect(said).toMatch(/You have 13 balls\./);
    const looks = await page()
      .locator('.yarn-key li:has(svg)')
      .evaluateAll((all) => all.map((it) => it.querySelector('rect')?.getAttribute('class')));
    expect(looks).toEqual(['ball-used', 'ball-left', 'ball-reserve']);
  });
});

describe('the making up of a garment that is half knitted', () => {
  it('draws what is not knitted otherwise than what is not sewn, says what has to be knitted first, and names each seam', async () => {
    await come('end of a part', 'making up');
    const worn = (selector: string) =>
      page()
        .locator(selector)
        .first()
        .evaluate((it) => {
          const { fill, strokeDasharray } = getComputedStyle(it);
          return { fill, isDashed: strokeDasharray !== 'none' };
        });
    const cloth = await worn('.together-cloth:not(.together-unknit)');
    // as on the garment's own page: empty, in a whole line; only what is there is dashed where it is not sewn
    const unknit = await worn('.together-unknit');
    expect(unknit.isDashed).toBe(false);
    expect(cloth.fill).not.toBe(unknit.fill);
    expect((await worn('.together-key .together-unknit')).isDashed).toBe(false);
    expect((await worn('.together-key .together-open')).isDashed).toBe(true);
    expect(await page().locator('.together g > .together-open').count()).toBeGreaterThan(0);
    expect(await page().locator('.together-key').innerText()).toContain('Not knitted yet');
    const steps = await page().locator('.making-step').allInnerTexts();
    const said = steps.map((one) => one.replace(/\s+/g, ' '));
    // what a child's garment asks is no word for one of 43½ in
    expect(await page().locator('.notice-warning').count()).toBe(0);
    expect(said).toContain('Right shoulder seam knit Front first');
    expect(said.some((one) => one.startsWith('Left shoulder seam and ends of the Neckband'))).toBe(true);
  });
});

describe('what is told above the pad in the largest letters', () => {
  it('is whole where so little would be cut that its sign lies on its end', async () => {
    // in a window of its own: what is written there would stand in the others
    const own = await openPhone({ reducedMotion: 'reduce', worker: false });
    const hers = knitterAt(own.page, url());
    await hers.openSample();
    const choices = await openSettings(own.page, url());
    await sights.find(({ name }) => name === 'row kept aside')?.come(own.page, hers);
    const over: number[] = [];
    for (const language of ['English', 'Deutsch', 'Français'] as const) {
      await wear(own.page, choices, { ...plain, name: language, text: 200, language });
      await settled(own.page);
      over.push(
        await own.page.locator('.screen-foot .notice').evaluate((it) => it.scrollHeight - it.clientHeight),
      );
    }
    await own.close();
    await page().bringToFront();
    expect(over).toEqual([0, 0, 0]);
  });
});

describe('what stands beside a section’s name', () => {
  it('counts that section’s rows, the part’s being told by the row’s own number', async () => {
    await toRow(19);
    const told = async () => (await page().locator('.knitting-row span').innerText()).replace(/\s/g, ' ');
    await expect.poll(told).toBe('body · 97 rows to go');
    await toRow(116);
    await expect.poll(told).toBe('body · last row');
  });
});

describe('a garment that a child may wear', () => {
  it('says at its making up what its neck asks', async () => {
    await knitter().open('#/sample/baby');
    await page().waitForURL(/#\/k\/(?!sample\/)/);
    const garment = page()
      .url()
      .match(/#\/k\/([^/]+)/)?.[1];
    await knitter().open(`#/g/${garment}/making-up`);
    await page().locator('.notice-warning', { hasText: 'no cords' }).waitFor();
  });
});

describe('a neckband that is picked up across a shoulder', () => {
  it('is told before its first row what has to be sewn, until that is sewn; words and count stay in sight', async () => {
    const told = page().locator('.before-row', { hasText: 'sew the seams that it crosses' });
    const found: string[] = [];
    await knitter().open('#/k/sample/neckband/0/1');
    await told.waitFor();
    for (const language of ['English', 'Deutsch', 'Français'] as const)
      for (const at of [plain, small, onItsSide]) {
        await look({ ...at, name: `${language}, ${at.width}`, language });
        found.push(...(await hiddenAt(page(), [100])));
      }
    await look(plain);
    expect(found).toEqual([]);
    await told.getByRole('link').tap();
    await page().getByRole('heading', { level: 1, name: 'Making up' }).waitFor();
    await page().getByRole('button', { name: 'Another step' }).tap();
    await page().getByRole('button', { name: 'Right shoulder seam' }).tap();
    await page().getByRole('button', { name: 'Sewn', exact: true }).tap();
    await page()
      .getByText(/^1 of 10/)
      .first()
      .waitFor();
    await knitter().open('#/k/sample/neckband/0/1');
    await page().locator('.place-map svg').first().waitFor();
    await told.waitFor({ state: 'detached' });
  });
});
