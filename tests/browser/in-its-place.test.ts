import { describe, expect, it } from 'vitest';
import { openPhone } from './drive.ts';
import { unseen } from './in-sight.ts';
import { knitterAt } from './knitter.ts';
import { germanLarge, lookedAt, onItsSide, plain, small, tablet } from './looked-at.ts';
import { wear } from './looks.ts';
import { illSet } from './set-well.ts';
import { settled } from './settled.ts';
import { atRow, sights } from './sights.ts';

const { page, settings, knitter, url, come, toRow, look, boxes, cutLengths } = lookedAt();

describe('a garment that came in a link', () => {
  it('is drawn and measured in the size that she chooses, not in the one that it was planned in', async () => {
    await come('design opened');
    const wide = () => page().locator('.pass-on-pieces > li').first().textContent();
    const planned = await wide();
    await come('design in another size');
    await expect.poll(wide).not.toBe(planned);
    // what the table says round the chest is front and back of what is drawn, seams taken off
    const [chest = 0] = await inches('.size-table tbody td');
    const [back = 0] = await inches('.pass-on-pieces > li p');
    expect(Math.abs(2 * back - chest)).toBeLessThan(2);
  });
});

const inches = (selector: string) =>
  page()
    .locator(selector)
    .evaluateAll((all) =>
      all.map((it) => {
        const [, whole = '0', part = ''] = /(\d+)([¼½¾]?)/.exec(it.textContent ?? '') ?? [];
        return Number(whole) + (['', '¼', '½', '¾'].indexOf(part) * 1) / 4;
      }),
    );

describe('in large letters and long words', () => {
  it('what no longer matches, and what a pattern’s text says wrong, stays within its box', async () => {
    await come('edit piece', 'edit piece that others go by');
    await look(germanLarge);
    expect((await illSet(page())).cut).toEqual([]);
    await come('pattern copied', 'pattern read');
    await look(germanLarge);
    expect((await illSet(page())).cut).toEqual([]);
  });

  it('a notice’s words have its whole width, below its sign where there is no room beside it', async () => {
    await come('backup looked at', 'file handed over');
    await look(germanLarge);
    const narrow = await page()
      .locator('.notice')
      .evaluateAll((all) =>
        all.flatMap((it) => {
          const [has, of] = [it.querySelector('.notice-words'), it];
          const wide = has?.getBoundingClientRect().width ?? 0;
          const room = of.getBoundingClientRect().width;
          return wide < 0.7 * room ? [`${Math.round(wide)} of ${Math.round(room)}`] : [];
        }),
      );
    expect(narrow).toEqual([]);
  });

  it('the sign of what folds stands beside the first line of its name', async () => {
    for (const hash of ['#/g/sample/yarn', '#/g/sample', '#/draft']) {
      await wear(page(), settings(), plain);
      await knitter().open(hash);
      await page().locator('.group > summary').first().waitFor();
      await look(germanLarge);
      const below = await page()
        .locator('.group > summary')
        .evaluateAll((all) =>
          all.flatMap((it) => {
            const name = it.querySelector('h2');
            const gap = (name?.getBoundingClientRect().top ?? 0) - it.getBoundingClientRect().top;
            return name && gap > 1.2 * Number.parseFloat(getComputedStyle(it).fontSize)
              ? [`${it.textContent} ${Math.round(gap)} px`]
              : [];
          }),
        );
      expect({ hash, below }).toEqual({ hash, below: [] });
    }
  });

  it('the figures of one size are in sight beside what they measure', async () => {
    await come('design opened', 'design in another size');
    await look(germanLarge);
    const [table] = await boxes('.size-scroll');
    const beyond = await page()
      .locator('.size-table td')
      .evaluateAll(
        (all, end) =>
          all.flatMap((it) => {
            const range = document.createRange();
            range.selectNodeContents(it);
            const { left, right } = range.getBoundingClientRect();
            return right > end
              ? [`${it.textContent} at ${Math.round(left)} to ${Math.round(right)} of ${end}`]
              : [];
          }),
        table?.right ?? 0,
      );
    expect(beyond).toEqual([]);
    expect((await illSet(page())).broken.filter((one) => one.includes('size-'))).toEqual([]);
  });

  it('the number that is typed stays in sight while its keys are pressed', async () => {
    await atRow(page(), knitter(), 119);
    await knitter().open('#/k/sample/back/0/1/check');
    await page().locator('.keys').waitFor();
    await look({ ...small, name: 'small, large letters', text: 200 });
    await page().locator('.key').last().scrollIntoViewIfNeeded();
    await page().evaluate(() => scrollBy(0, 2000));
    expect(await unseen(page(), '.keys-shown')).toEqual([]);
  });
});

describe('two pieces on one needle', () => {
  it('have their words and counts in sight on a phone on its side, above the key for both', async () => {
    await come('count together');
    await look(onItsSide);
    await page().evaluate(() => scrollTo(0, 0));
    expect(await unseen(page(), '.count-big')).toEqual([]);
    expect(await unseen(page(), '.count-after')).toEqual([]);
    expect(await unseen(page(), '.count-bar > .button')).toEqual([]);
  });
});

describe('the lengths of a row', () => {
  it('are whole above the foot where the phone is locked', async () => {
    await toRow(119);
    await page().getByRole('button', { name: 'Lock', exact: true }).tap();
    await look(plain);
    await page().locator('.hold').waitFor();
    const locked = await cutLengths();
    await look(onItsSide);
    const [hold] = await boxes('.hold');
    expect((hold?.bottom ?? 0) - (hold?.top ?? 0)).toBeGreaterThan(200);
    await page().getByRole('button', { name: 'Hold to unlock' }).press('Enter');
    await knitter().pad.waitFor();
    expect(locked).toEqual([]);
  });

  it('are whole above the pad on the smallest phone, in centimetres and in German', async () => {
    for (const at of [small, { ...small, name: 'small, German', language: 'Deutsch' }] as const) {
      await toRow(60);
      await look(at);
      const [foot] = await boxes('.screen-foot');
      const told = await boxes('.lengths > div');
      // the one in the middle makes way for the lap window
      expect(told.length, at.name).toBe(2);
      expect(
        told.filter(({ top, bottom }) => top <= 0 || bottom > (foot?.top ?? 0)),
        at.name,
      ).toEqual([]);
    }
  });

  it('come before the drawing where a card stands over the row, and are whole above the pad', async () => {
    await toRow(19);
    await look(plain);
    await page().locator('.before-row').waitFor();
    const [foot] = await boxes('.screen-foot');
    const [lap] = await boxes('.lap-svg');
    const told = await boxes('.lengths dt, .lengths dd');
    expect(told.length).toBeGreaterThanOrEqual(4);
    expect(told.filter(({ bottom }) => bottom > Math.min(foot?.top ?? 0, lap?.top ?? 0) + 1)).toEqual([]);
  });

  it('are scrolled to in large letters, below the rows ahead and no wider than the screen', async () => {
    await toRow(119);
    await look(germanLarge);
    const [ladder] = await boxes('.ahead .ladder');
    const told = await boxes('.lengths > div');
    expect(told.length).toBe(3);
    for (const { top, bottom, left, right } of told) {
      expect(bottom - top).toBeGreaterThan(20);
      expect(top).toBeGreaterThan(ladder?.top ?? 1e4);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(390);
    }
  });

  it('are whole above the foot where two ways are to be chosen from', async () => {
    await toRow(60);
    await come('two ways');
    await look(plain);
    expect(await cutLengths()).toEqual([]);
  });
});

describe('the map of a piece', () => {
  it('has the arrow of its first row apart from its scale', async () => {
    await come('another sample');
    await look(tablet);
    await page().locator('.place-map .map-scale').scrollIntoViewIfNeeded();
    const [[arrow], [scale]] = await Promise.all([
      boxes('.place-map .needle-way'),
      boxes('.place-map .map-scale'),
    ]);
    expect(arrow?.bottom ?? 9999).toBeLessThan(scale?.top ?? 0);
  });
});

describe('what comes out of a draft', () => {
  it('has each figure apart from the one beside it, and the seams below their head', async () => {
    await come('draft', 'draft unfolded');
    for (const at of [plain, tablet]) {
      await look(at);
      const tight = await page()
        .locator('.draft-table tr')
        .evaluateAll((all) =>
          all.flatMap((row) => {
            const ends = [...row.querySelectorAll('td')].map((cell) => {
              const range = document.createRange();
              range.selectNodeContents(cell);
              return range.getBoundingClientRect();
            });
            const [one, other] = ends;
            return one && other && other.width > 0 && other.left - one.right < 8 ? [row.textContent] : [];
          }),
        );
      expect({ look: at.name, tight }).toEqual({ look: at.name, tight: [] });
    }
    const [head] = await boxes('.draft-stack:has(> .draft-seams) > h3');
    const [list] = await boxes('.draft-seams');
    expect(list?.top ?? 0).toBeGreaterThanOrEqual(head?.bottom ?? 9999);
  });
});

describe('on a tablet', () => {
  it('the sizes of a garment stand beside the table of what they come to', async () => {
    await come('design opened', 'in several sizes', 'in several sizes worked out');
    await look(tablet);
    const [table] = await boxes('.size-scroll');
    const [chosen] = await boxes('.pass-on-ticks');
    expect(table?.left ?? 0).toBeGreaterThan(chosen?.right ?? 9999);
    expect((table?.right ?? 0) - (chosen?.left ?? 0)).toBeGreaterThan(0.75 * tablet.width);
  });

  it('what is told above the pad stands over the pad, not over the drawing of the piece', async () => {
    // in a window of its own: what another device knitted would be asked about first
    const own = await openPhone({ reducedMotion: 'reduce', worker: false });
    const hers = knitterAt(own.page, url());
    await hers.openSample();
    await sights.find(({ name }) => name === 'row done elsewhere')?.come(own.page, hers);
    await own.page.setViewportSize(tablet);
    await settled(own.page);
    const left = (selector: string) =>
      own.page.locator(selector).evaluate((it) => Math.round(it.getBoundingClientRect().left));
    expect(await left('.screen-foot > .notice')).toBe(await left('.pad-row'));
    await own.close();
  });
});

describe('cards side by side', () => {
  it('are as high as each other', async () => {
    await come('samples');
    await look({ ...tablet, width: 600 });
    const uneven: string[] = [];
    for (const hash of ['#/samples', '#/']) {
      await knitter().open(hash);
      await page().locator('.ways .card').first().waitFor();
      const all = await boxes('.ways .card');
      for (const one of all)
        if (all.some(({ top, bottom }) => top === one.top && bottom !== one.bottom)) uneven.push(hash);
    }
    expect(uneven).toEqual([]);
  });
});
