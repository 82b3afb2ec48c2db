import { describe, expect, it } from 'vitest';
import { openPhone } from './drive.ts';
import { knitterAt } from './knitter.ts';
import { lookedAt, onItsSide, plain, small, tablet } from './looked-at.ts';
import { openSettings, wear } from './looks.ts';
import { settled } from './settled.ts';
import { sights } from './sights.ts';

const { page, settings, knitter, come, toRow, look, boxes, url } = lookedAt();
const large = { ...plain, name: 'large', text: 200 };
const german = { ...small, name: 'small German', language: 'Deutsch' } as const;

const text = (selector: string) => page().locator(selector).first().innerText();

/** Row 119 is in hand, another one is read. */
async function toRead(row: number): Promise<void> {
  await toRow(119);
  await knitter().open(`#/k/sample/back/0/1?row=${row}`);
  await page().getByText(`You are reading row ${row}`).waitFor();
  await page().locator('.lengths').waitFor();
}

async function backToRow(): Promise<void> {
  await wear(page(), settings(), plain);
  await page().getByRole('button', { name: 'Back to row 119' }).tap();
  await knitter().pad.waitFor();
}

/** Knob left of the yarn as in her lap, the side named, and the line that the tiles of stocking stitch draw. */
const asSeen = async (map: string) => ({
  caption: (await page().locator(`${map} .map-caption`).first().innerText()).split(' · ')[1],
  isTurned: await page()
    .locator(map)
    .first()
    .evaluate((it) => {
      const [knob, yarn] = ['circle', '.needle-yarn'].map((part) =>
        it.querySelector(`.needle ${part}`)?.getBoundingClientRect(),
      );
      return (knob?.left ?? 9999) < (yarn?.left ?? 0);
    }),
  tile: (await page().locator(`${map} .map-loop-worked`).last().getAttribute('d'))?.replace(/[^A-Za-z]/g, ''),
});
const purlSide = { caption: 'wrong side', isTurned: true, tile: 'MhMh' };
const knitSide = { caption: undefined, isTurned: true, tile: 'MLL' };

describe('a row that is only read', () => {
  it('is compared with the count before it, and its height is not called what is knitted, in each language', async () => {
    await toRead(191);
    for (const [language, fewer, here, now] of [
      ['English', '10 fewer', 'at this row', /now|so far/],
      ['Deutsch', '10 weniger', 'bei dieser Reihe', /jetzt|bis hier/],
      ['Français', '10 de moins', 'à ce rang', /présent|jusqu’ici/],
    ] as const) {
      await look({ ...plain, name: language, language });
      await expect.poll(() => text('.row-change')).toBe(fewer);
      await expect.poll(() => text('.lengths dt')).toBe(here);
      expect(`${await text('.row-after')} ${await text('.lengths')}`).not.toMatch(now);
    }
    await backToRow();
    await expect.poll(() => text('.lengths dt')).toBe('so far');
  });

  it('turns no drawing over on a tablet: that goes by the row in hand, whose yarn and arrow it shows', async () => {
    await toRead(40);
    await look(tablet);
    await page().locator('.map-looked').waitFor();
    expect(await page().locator('.place-map .map-caption').innerText()).not.toContain('wrong side');
    await backToRow();
  });
});

describe('the drawing of the piece', () => {
  it('shows the side that faces her, with yarn and arrow as in the lap window, in every width', async () => {
    for (const [row, seen] of [
      [118, purlSide],
      [119, knitSide],
    ] as const) {
      await toRow(row);
      await page().locator('.place-map .needle').waitFor({ state: 'attached' });
      for (const at of [plain, small, onItsSide, large, tablet]) {
        await look(at);
        expect(await asSeen('.place-map'), `${row}, ${at.name}`).toEqual(seen);
      }
    }
  });
});

describe('what is said above the pad when a row was done elsewhere', () => {
  it('is whole, in large letters, on its side and in a language of long words', async () => {
    // in a window of its own: what is written there would stand in the others
    const own = await openPhone({ reducedMotion: 'reduce', worker: false });
    const hers = knitterAt(own.page, url());
    await hers.openSample();
    const choices = await openSettings(own.page, url());
    await sights.find(({ name }) => name === 'row done elsewhere')?.come(own.page, hers);
    const notice = own.page.locator('.screen-foot .notice');
    const found: string[] = [];
    for (const at of [plain, large, onItsSide, german]) {
      await wear(own.page, choices, at);
      await settled(own.page);
      const over = await notice.evaluate((it) => it.scrollHeight - it.clientHeight);
      if (over > 1) found.push(`${at.name}: ${over} px of ‘${await notice.innerText()}’`);
    }
    await own.close();
    await page().bringToFront();
    expect(found).toEqual([]);
  });
});

describe('two on one needle', () => {
  /** Words and counts of the cards, of these so many, that do not lie whole above the key for both. */
  async function hidden(cards: number): Promise<string[]> {
    const [bar] = await boxes('.count-bar');
    const of = await Promise.all(['.count-big', '.count-after'].map((it) => boxes(`.count-pair ${it}`)));
    return of.flatMap((all) =>
      all
        .slice(0, cards)
        .flatMap(({ bottom }) => (bottom > (bar?.top ?? 0) ? [`${bottom} of ${bar?.top}`] : [])),
    );
  }

  it('show the words and the count of the first above the key for both in the largest letters, those of both on the smallest phone in German', async () => {
    await come('count together');
    await page().locator('.count-bar').waitFor();
    await look(large);
    expect(await hidden(1)).toEqual([]);
    await look(german);
    expect(await hidden(2)).toEqual([]);
  });
});

describe('what the words of a row mean', () => {
  it('begins with those words, and on a tablet lies beside them, over the drawing', async () => {
    await toRow(119);
    await page().getByRole('button', { name: 'What the words mean', exact: true }).tap();
    await page().locator('dialog[open] dd').first().waitFor();
    const said = (await text('.row-work')).replace(/\s+/g, ' ');
    expect((await text('dialog[open] .sheet-body > *')).replace(/\s+/g, ' ')).toBe(said);
    await look(tablet);
    const [[sheet], [card]] = await Promise.all([boxes('dialog[open]'), boxes('.row-card')]);
    expect(sheet?.right ?? 9999).toBeLessThanOrEqual(card?.left ?? 0);
    expect(sheet?.left ?? -1).toBeGreaterThanOrEqual(0);
    await wear(page(), settings(), plain);
    await page().getByRole('button', { name: 'Close', exact: true }).tap();
  });
});

describe('a shaping row on the smallest phone in German', () => {
  it('has its words larger and what is counted out of sight, which a reader still hears', async () => {
    await toRow(119);
    await look(german);
    const size = await page()
      .locator('.row-work')
      .evaluate((it) => Number.parseFloat(getComputedStyle(it).fontSize));
    expect(size).toBeGreaterThanOrEqual(19);
    const [word] = await boxes('.row-count-word');
    expect((word?.bottom ?? 9999) - (word?.top ?? 0)).toBeLessThanOrEqual(1);
    expect(await page().locator('.row-after').ariaSnapshot()).toContain('Maschen nach dieser Reihe');
  });
});

describe('the drawing of a piece', () => {
  it('is on the garment’s own page as it is beside the row', async () => {
    await come('sleeve in work', 'garment', 'garment unfolded');
    expect(await asSeen('.piece:has(h4) .piece-make:has(.needle-yarn)')).toEqual(purlSide);
  });
});
