import { describe, expect, it } from 'vitest';
import { openPhone } from './drive.ts';
import { hiddenAt } from './hidden-at.ts';
import { unseen } from './in-sight.ts';
import { knitterAt } from './knitter.ts';
import { germanLarge, lookedAt, onItsSide, plain, small, smallGermanLarge, tablet } from './looked-at.ts';
import { movesSideways, wear } from './looks.ts';
import { illSet } from './set-well.ts';
import { settled } from './settled.ts';
import { atRow, sights } from './sights.ts';

const large = { ...plain, name: 'large', text: 200 };

const { page, settings, knitter, url, come, toRow, look, boxes } = lookedAt();

/** Choices whose words have no room in their field, in as many lines as it has. */
const cutChoices = () =>
  page()
    .locator('select')
    .evaluateAll((all) =>
      (all as HTMLSelectElement[]).flatMap((it) => {
        const worn = getComputedStyle(it);
        const px = (name: 'paddingLeft' | 'paddingRight' | 'paddingTop' | 'paddingBottom') =>
          Number.parseFloat(worn[name]);
        const room = it.clientWidth - px('paddingLeft') - px('paddingRight');
        const high = it.clientHeight - px('paddingTop') - px('paddingBottom');
        const words = document.createElement('div');
        const { font, lineHeight, letterSpacing } = worn;
        const of = {
          position: 'absolute',
          overflowWrap: 'anywhere',
          width: `${room + 1}px`,
          font,
          lineHeight,
          letterSpacing,
        };
        Object.assign(words.style, of);
        words.textContent = it.selectedOptions[0]?.textContent ?? '';
        document.body.append(words);
        const isCut = words.scrollWidth > room + 2 || words.scrollHeight > high + 2;
        const found = `“${words.textContent}” ${words.scrollWidth} × ${words.scrollHeight} of ${room} × ${high}`;
        words.remove();
        return it.checkVisibility() && isCut ? [found] : [];
      }),
    );

describe('the key that keeps what came in a link', () => {
  it('is in sight, however long what it comes to is', async () => {
    await come('design opened', 'design in another size');
    for (const at of [tablet, plain]) {
      await look(at);
      // past what the garment is, on a phone: there the key comes with what is hers
      await page().getByLabel('Whose measures').scrollIntoViewIfNeeded();
      expect({ look: at.name, unseen: await unseen(page(), '.screen-main .button-main') }).toEqual({
        look: at.name,
        unseen: [],
      });
    }
  });
});

describe('in large letters and long words', () => {
  it('no key and no card that is pressed breaks a word, no number is parted from what it counts, and nothing moves sideways, on the smallest phone too', async () => {
    const found: string[] = [];
    for (const names of [
      ['garment', 'garment unfolded'],
      ['pattern copied'],
      ['draft', 'draft unfolded'],
      ['yarn', 'yarn unfolded'],
      ['edit garment'],
      ['edit piece'],
      ['count tools'],
      ['workbasket'],
    ]) {
      await come(...names);
      for (const at of [germanLarge, smallGermanLarge, large]) {
        await look(at);
        const { broken, parted } = await illSet(page());
        const pressed = broken.filter((one) => /in (button-text|card card-press|edit-|draft-tile)/.test(one));
        found.push(
          ...[...pressed, ...parted, ...(await movesSideways(page()))].map(
            (one) => `${names[0]}, ${at.name}: ${one}`,
          ),
        );
      }
    }
    expect(found).toEqual([]);
  });

  it('a pattern for others parts no number from what it counts, nor a row from its number', async () => {
    await come('design opened', 'in several sizes', 'in several sizes worked out');
    for (const at of [large, { ...small, name: 'small, large', text: 200 }]) {
      await look(at);
      expect(await page().locator('.written p').count()).toBeGreaterThan(100);
      expect({ look: at.name, parted: (await illSet(page())).parted }).toEqual({ look: at.name, parted: [] });
    }
  });

  it('what is chosen of many is read whole', async () => {
    const found: string[] = [];
    const read = async (where: string) => {
      for (const at of [plain, small, { ...plain, text: 130 }, germanLarge]) {
        await look(at);
        found.push(...(await cutChoices()).map((one) => `${where}, ${at.width} at ${at.text}: ${one}`));
      }
    };
    const piece = (name: RegExp) => page().getByRole('button', { name }).tap();
    await come('edit piece');
    await piece(/^Front · 1/);
    await read('piece');
    await wear(page(), settings(), plain);
    await piece(/^Front · 1/);
    for (const name of ['edit band', 'count find', 'pattern copied']) {
      await come(name);
      await read(name);
    }
    expect(found).toEqual([]);
  });
});

describe('a locked row', () => {
  it('is read whole above what unlocks it, as on any other day', async () => {
    await toRow(119);
    await page().getByRole('button', { name: 'Lock', exact: true }).tap();
    await page().locator('.hold').waitFor();
    const found: string[] = [];
    for (const language of ['English', 'Deutsch'] as const) {
      for (const { width, height } of [small, plain, onItsSide]) {
        await wear(page(), settings(), { name: 'locked', width, height, language });
        found.push(...(await hiddenAt(page(), [100, 130, 150, 200])).map((one) => `${language}: ${one}`));
      }
    }
    await wear(page(), settings(), plain);
    await page().getByRole('button', { name: 'Hold to unlock' }).press('Enter');
    await knitter().pad.waitFor();
    expect(found).toEqual([]);
  });
});

describe('a row that is only read', () => {
  it('is said to be so above its words, in the largest letters too', async () => {
    await toRow(119);
    await knitter().open('#/k/sample/back/0/1?row=40');
    await page().getByText('You are reading row 40').waitFor();
    const found: string[] = [];
    for (const at of [plain, small, onItsSide])
      for (const text of [100, 130, 150, 175, 200]) {
        await look({ ...at, name: `${at.name} at ${text} %`, text });
        const [said] = await boxes('.knitting-row span');
        const [card] = await boxes('.row-work');
        const isSaid = said && said.top >= 0 && said.bottom <= (card?.top ?? 0) && said.right <= at.width;
        if (!isSaid) found.push(`${at.name} at ${text} %: ${JSON.stringify(said)} above ${card?.top}`);
      }
    await wear(page(), settings(), plain);
    await page().getByRole('button', { name: 'Back to row 119' }).tap();
    await knitter().pad.waitFor();
    expect(found).toEqual([]);
  });
});

describe('other stripes from here', () => {
  it('are seen in their preview, of one colour too', async () => {
    await toRow(60);
    await come('count rework', 'stripes from here');
    const tones = await page()
      .locator('.stripes path')
      .evaluateAll((all) => all.map((it) => Number(it.getAttribute('fill-opacity'))));
    expect(Math.max(...tones)).toBeGreaterThan(0.3);
  });
});

describe('the end of a part', () => {
  it('says in words what its keys at the foot do, and keeps its own words in its frame', async () => {
    await come('end of a part');
    for (const at of [plain, small, onItsSide, tablet, germanLarge, smallGermanLarge]) {
      await look(at);
      const bare = await page()
        .locator('.end-row .icon-button')
        .evaluateAll((all) =>
          all.flatMap((it) => {
            const name = it.getAttribute('aria-label') ?? '';
            const said = getComputedStyle(it, '::after').content.replaceAll('"', '');
            const { width, height } = it.getBoundingClientRect();
            return said === name && width > 1.3 * height ? [] : [`${name}: ‘${said}’, ${width} × ${height}`];
          }),
        );
      expect({ look: at.name, bare }).toEqual({ look: at.name, bare: [] });
      const out = [...(await illSet(page())).cut, ...(await movesSideways(page()))];
      expect({ look: at.name, out }).toEqual({ look: at.name, out: [] });
    }
  });
});

describe('the keys at the end of a part', () => {
  it('are whole above the foot on a phone, in wide letters and in a language of long words on the smallest', async () => {
    await come('end of a part');
    const found: string[] = [];
    for (const at of [
      { ...plain, name: 'wide', spaced: true },
      small,
      { ...small, name: 'small German', language: 'Deutsch' } as const,
    ]) {
      await look(at);
      const [foot] = await boxes('.screen-foot');
      for (const { top, bottom } of await boxes('.part-end .button'))
        if (bottom > (foot?.top ?? 0)) found.push(`${at.name}: ${top} to ${bottom} of ${foot?.top}`);
    }
    expect(found).toEqual([]);
  });
});

describe('on its side', () => {
  it('no foot lies over the drawing of a draft or of a piece', async () => {
    const found: string[] = [];
    for (const [names, drawings] of [
      [['draft'], ['.draft-drawing']],
      [
        ['edit garment', 'edit piece'],
        ['.edit-sketch-svg', '.edit-branch'],
      ],
    ] as const) {
      await come(...names);
      await look(onItsSide);
      for (const scrolled of [0, 150]) {
        await page().evaluate((y) => scrollTo(0, y), scrolled);
        await settled(page());
        const [foot] = await boxes('.screen-foot');
        if (!foot) throw new Error('no foot is there');
        for (const drawing of drawings)
          for (const { left, right, top, bottom } of await boxes(drawing)) {
            const isOver = right > foot.left && left < foot.right && bottom > foot.top && top < foot.bottom;
            const isWhole = drawing === '.edit-branch' || bottom <= onItsSide.height;
            if (isOver || !isWhole)
              found.push(`${drawing} at ${scrolled}: ${left}–${right}, ${top}–${bottom}`);
          }
      }
    }
    expect(found).toEqual([]);
  });
});

describe('the row in hand on the workbasket', () => {
  it('stands before what is told, and its key lies over none of its words', async () => {
    // in a window of its own: what is taken in there would stand in the others
    const own = await openPhone({ reducedMotion: 'reduce', worker: false });
    const hers = knitterAt(own.page, url());
    await hers.openSample();
    await atRow(own.page, hers, 40);
    await sights.find(({ name }) => name === 'way back on the workbasket')?.come(own.page, hers);
    for (const at of [plain, small, onItsSide]) {
      await own.page.setViewportSize(at);
      await settled(own.page);
      const [words, key, told] = await Promise.all(
        ['.in-hand-words', '.in-hand-card > .button', '.screen-main > .notice'].map((selector) =>
          own.page.locator(selector).first().boundingBox(),
        ),
      );
      expect(key?.y ?? 0, at.name).toBeGreaterThanOrEqual((words?.y ?? 9999) + (words?.height ?? 0));
      expect(told?.y ?? 0, at.name).toBeGreaterThan(key?.y ?? 9999);
      expect((key?.y ?? 9999) + (key?.height ?? 0), at.name).toBeLessThanOrEqual(at.height);
    }
    await own.close();
    // a page that lies behind another is painted no more
    await page().bringToFront();
  });
});

describe('on a tablet, beside the row', () => {
  it('the drawing of the piece lies as it lies in her lap: turned over on wrong-side rows, and what is touched is the same row', async () => {
    const ends = async () => {
      const [[knob], [yarn], [cloth]] = await Promise.all([
        boxes('.place-map .needle circle'),
        boxes('.place-map .needle-yarn'),
        boxes('.place-map .map-svg'),
      ]);
      return { knob, yarn, cloth };
    };
    for (const row of [118, 119]) {
      await toRow(row);
      await look(tablet);
      const { knob, yarn, cloth } = await ends();
      // the yarn at the right, where a row begins
      expect(knob?.left ?? 9999, `row ${row}`).toBeLessThan(yarn?.left ?? 0);
      expect(knob?.left ?? 0, `row ${row}`).toBeGreaterThanOrEqual((cloth?.left ?? 0) - 1);
      expect(yarn?.right ?? 9999, `row ${row}`).toBeLessThanOrEqual((cloth?.right ?? 0) + 1);
    }
    await toRow(118);
    await look(tablet);
    const { cloth, knob } = await ends();
    if (!cloth || !knob) throw new Error('no drawing is there');
    await page().touchscreen.tap((cloth.left + cloth.right) / 2, knob.top + 100);
    await page()
      .getByText(/^You are reading row\s\d+/)
      .waitFor();
    await page().getByRole('button', { name: 'Back to row 118' }).tap();
    await knitter().pad.waitFor();
  });

  it('the drawing of the piece is whole beside the foot, for a left hand above it, from the needle of its first row to its scale', async () => {
    const hold = (isLeft: boolean) =>
      page()
        .locator('.knitting')
        .evaluate((it, left) => it.classList.toggle('knitting-left', left), isLeft);
    for (const row of [2, 119, 190]) {
      await toRow(row);
      for (const hand of ['left', 'right']) {
        await hold(hand === 'left');
        await look(tablet);
        const [[cloth], [needle], [scale], [foot]] = await Promise.all([
          boxes('.place-map .map-svg'),
          boxes('.place-map .needle-way'),
          boxes('.place-map .map-scale'),
          boxes('.screen-foot'),
        ]);
        const end = hand === 'left' ? (foot?.top ?? 0) : tablet.height;
        if (hand === 'right') expect(cloth?.right ?? 9999).toBeLessThanOrEqual(foot?.left ?? 0);
        expect(needle?.bottom ?? 9999, `row ${row}, ${hand}`).toBeLessThan(end);
        expect(scale?.bottom ?? 9999, `row ${row}, ${hand}`).toBeLessThanOrEqual(end);
      }
    }
  });

  it('the rows ahead are whole above the foot once they are scrolled to', async () => {
    await toRow(119);
    await look(tablet);
    await page()
      .locator('.screen-main')
      .evaluate((it) => it.scrollTo(0, it.scrollHeight));
    const last = (await boxes('.ladder > li')).at(-1);
    const [foot] = await boxes('.screen-foot');
    expect(last?.bottom ?? 9999).toBeLessThanOrEqual(foot?.top ?? 0);
  });
});

describe('on a tablet', () => {
  it('a garment by its numbers uses the width: its pieces stand beside what holds for all of them', async () => {
    for (const sight of ['new garment', 'edit garment']) {
      await come(sight);
      await look(tablet);
      const [[name], [add]] = await Promise.all([
        boxes('.screen-main input[type="text"], .screen-main .field-input'),
        boxes('.edit-starters'),
      ]);
      expect(add?.left ?? 0, sight).toBeGreaterThan(name?.right ?? 9999);
      expect((add?.right ?? 0) - (name?.left ?? 0), sight).toBeGreaterThan(0.75 * tablet.width);
    }
  });

  it('the key at the foot is as wide as a key has to be, not as the window', async () => {
    for (const [sight, key] of [
      ['pattern copied', '.pattern-foot > .button'],
      ['pattern read', '.pattern-foot > .button'],
      ['new garment', '.edit-foot > .button'],
      ['edit garment', '.edit-foot > .button'],
      ['draft', '.draft-foot .button'],
      ['garment', '.screen-foot > .button'],
    ] as const) {
      await come(sight);
      await look(tablet);
      const [box] = await boxes(key);
      expect((box?.right ?? 9999) - (box?.left ?? 0), sight).toBeLessThan(0.45 * tablet.width);
    }
  });
});

describe('on the smallest phone', () => {
  const german = { ...small, name: 'small German', language: 'Deutsch' } as const;

  it('the lap window is whole above the pad below its lengths, on both sides of the work, in German and where the row shapes', async () => {
    const found: string[] = [];
    const read = async (row: string) => {
      for (const at of [small, german]) {
        await look(at);
        const [lap] = await boxes('.lap');
        const [foot] = await boxes('.screen-foot');
        const [needle] = await boxes('.lap-svg .needle circle');
        if (!lap || !needle || Math.max(lap.bottom, needle.bottom) > (foot?.top ?? 0))
          found.push(`row ${row}, ${at.name}: ${lap?.bottom}, ${needle?.bottom} of ${foot?.top}`);
      }
    };
    // where no card stands over the row and its words are on one line
    for (const row of [20, 61]) {
      await toRow(row);
      await read(`${row}`);
    }
    for (const row of [19, 118, 119]) {
      await wear(page(), settings(), plain);
      await atRow(page(), knitter(), row, '#/k/sample/front/0/1');
      await page().locator('.lap-svg .needle-way').waitFor();
      await read(`${row} of the front`);
    }
    expect(found).toEqual([]);
  });

  it('a lap window that has no room below the row’s words stands below the rows ahead, none is cut by the pad', async () => {
    const found: string[] = [];
    let yielded = 0;
    for (const row of [117, 121]) {
      await wear(page(), settings(), plain);
      await atRow(page(), knitter(), row, '#/k/sample/front/0/1');
      await page().locator('.lap-svg .needle-way').waitFor();
      for (const at of [small, german, { ...small, name: 'small, 150 %', text: 150 }, plain]) {
        await look(at);
        const [[lap], [foot], [ladder]] = await Promise.all([
          boxes('.lap'),
          boxes('.screen-foot'),
          boxes('.ladder'),
        ]);
        const [top, end] = [lap?.top ?? 0, foot?.top ?? 0];
        if (top < end && (lap?.bottom ?? 9999) > end) found.push(`${row}, ${at.name}: ${top} of ${end}`);
        if (top > (ladder?.top ?? 0)) yielded += 1;
      }
    }
    expect(found).toEqual([]);
    expect(yielded).toBeGreaterThan(0);
  });
});
