import type { Page } from 'playwright-core';
import { turn } from '../run/turn.ts';

/** A language by its own name, as it stands in the settings. */
type Language = 'English' | 'Deutsch' | 'Français';

/** One way in which every screen has to hold. */
export interface Look {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly colorScheme?: 'light' | 'dark';
  readonly forcedColors?: 'active';
  /** root text size in per cent */
  readonly text?: number;
  /** lines, words and letters set wide as WCAG 1.4.12 has it */
  readonly spaced?: boolean;
  readonly language?: Language;
  readonly dimmed?: boolean;
  readonly dir?: 'rtl';
  /** what a machine can find against WCAG and is looked for in it: all, or what hangs on colours and sizes */
  readonly audited?: 'all' | 'look';
}

const common = { width: 390, height: 844 } as const;
const small = { width: 320, height: 640 } as const;

/** The first is the plain one, which each sight is come to in. */
export const looks: readonly [Look, ...Look[]] = [
  { name: 'light-390', ...common, audited: 'all' },
  { name: 'dark-390', ...common, colorScheme: 'dark' },
  { name: 'dimmed-390', ...common, colorScheme: 'dark', dimmed: true },
  { name: 'dark-320', ...small, colorScheme: 'dark', audited: 'look' },
  { name: 'light-320', ...small },
  { name: 'light-820', width: 820, height: 1180 },
  { name: 'tablet-1180', width: 1180, height: 820 },
  { name: 'landscape-844', width: 844, height: 390 },
  { name: 'text-130', ...common, text: 130 },
  { name: 'text-150', ...common, text: 150 },
  { name: 'text-200', ...common, text: 200 },
  { name: 'spaced-390', ...common, spaced: true },
  { name: 'german-320', ...small, language: 'Deutsch' },
  { name: 'rtl-390', ...common, dir: 'rtl' },
  { name: 'forced-390', ...common, forcedColors: 'active' },
];

/** The looks that break a layout first. */
const hard = ['dark-320', 'landscape-844', 'text-200', 'spaced-390', 'german-320', 'rtl-390'];

const plain = looks[0];
const hardest = looks.filter(({ name }) => hard.includes(name));
const others = looks.filter((look) => look !== plain && !hardest.includes(look));
const inTurn = <T>(list: readonly T[], index: number): readonly T[] =>
  list.slice(index % list.length).slice(0, 1);

/** A look that a sight is tried in, and what a machine is asked to find against WCAG in it. */
interface Trial {
  readonly look: Look;
  readonly audited?: Look['audited'];
}

const audited = (look: Look): Trial => ({ look, audited: look.audited });

/**
 * What a sight is tried in: the plain look in every run, and by turns, one sight in three, one of the hardest or one of the
 * others, so that over all sights each is tried. An audit for all that a machine can see takes longer than all else of a
 * sight: one in nine has it. All looks, and all of them audited, with RIDGELINE_LOOKS=all.
 */
export const looksToTry = (sightIndex: number): readonly Trial[] => {
  if (process.env.RIDGELINE_LOOKS === 'all') return looks.map(audited);
  const at = sightIndex + turn;
  const first = at % 9 === 0 ? audited(plain) : { look: plain };
  if (at % 3 > 0) return [first];
  const once = Math.floor(at / 3);
  return [first, ...inTurn(once % 2 === 0 ? hardest : others, Math.floor(once / 2)).map(audited)];
};

/** WCAG 2.2, success criterion 1.4.12. */
const spacing =
  '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }' +
  'p { margin-block-end: 2em !important; }';

/** What a page was put into last: to ask a browser for what is so already has it lay out the page once more. */
const worn = new WeakMap<Page, Look>();

/** Puts a page into a look; the language goes by the settings, in a window of their own, as two windows do. */
export async function wear(page: Page, settings: Page, look: Look): Promise<void> {
  if (worn.get(page) !== look) {
    await page.setViewportSize({ width: look.width, height: look.height });
    await page.emulateMedia({
      colorScheme: look.colorScheme ?? 'light',
      forcedColors: look.forcedColors ?? 'none',
      reducedMotion: 'reduce',
    });
    await speak(page, settings, look.language ?? 'English');
    worn.set(page, look);
  }
  await page.evaluate(
    async ({ text, dir, dimmed, sheet }) => {
      const root = document.documentElement;
      root.style.fontSize = `${text}%`;
      root.dir = dir;
      root.dataset.dim = String(dimmed);
      // the page's own policy refuses a style element; a sheet made by script is let in; any at all costs a page its styles
      if (sheet !== '' || document.adoptedStyleSheets.length > 0) {
        const spaced = new CSSStyleSheet();
        spaced.replaceSync(sheet);
        document.adoptedStyleSheets = sheet === '' ? [] : [spaced];
      }
      for (const scrolled of [root, ...document.querySelectorAll('.screen-main')]) scrolled.scrollTop = 0;
      // a browser may leave out frames of a page that nothing changes on
      await new Promise((done) => {
        requestAnimationFrame(() => setTimeout(done, 30));
        setTimeout(done, 1000);
      });
    },
    {
      text: look.text ?? 100,
      dir: look.dir ?? 'ltr',
      dimmed: look.dimmed ?? false,
      sheet: look.spaced ? spacing : '',
    },
  );
}

const tags: Readonly<Record<Language, string>> = { English: 'en', Deutsch: 'de', Français: 'fr' };

async function speak(page: Page, settings: Page, language: Language): Promise<void> {
  const tag = tags[language];
  if ((await page.evaluate(() => document.documentElement.lang)) === tag) return;
  await settings.getByText(language, { exact: true }).first().click();
  await page.waitForFunction((wanted) => document.documentElement.lang === wanted, tag);
}

/** Opens the window in which `wear` changes the language. */
export async function openSettings(page: Page, url: string): Promise<Page> {
  const settings = await page.context().newPage();
  await settings.goto(`${url}#/settings`);
  await settings.getByRole('heading', { name: 'While knitting' }).waitFor();
  await page.bringToFront();
  return settings;
}

/** What can be moved sideways though it should not: the page, the screen's own scroller, an open sheet. */
export const movesSideways = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const boxes = [
      document.documentElement,
      ...document.querySelectorAll('.screen-main, dialog[open] .sheet-body'),
    ];
    const out = (box: Element): string => {
      const edges = box.getBoundingClientRect();
      const all = [...box.querySelectorAll('*')].filter((it) => {
        const { left, right, width } = it.getBoundingClientRect();
        return width > 0 && (right > edges.right + 1 || left < edges.left - 1);
      });
      return all
        .map((it) => it.getAttribute('class') ?? it.tagName)
        .slice(-3)
        .join(' / ');
    };
    return boxes
      .filter((box) => box.scrollWidth - box.clientWidth > 1)
      .map((box) => `${box.className || 'page'} by ${box.scrollWidth - box.clientWidth} px (${out(box)})`);
  });
