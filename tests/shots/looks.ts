import type { Page } from 'playwright-core';

/** One way in which every screen has to hold. */
export interface Look {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly colorScheme?: 'light' | 'dark';
  readonly forcedColors?: 'active';
  /** root text size in per cent */
  readonly text?: number;
  readonly language?: 'Deutsch';
  readonly dimmed?: boolean;
  readonly dir?: 'rtl';
}

const common = { width: 390, height: 844 } as const;
const small = { width: 320, height: 640 } as const;

/** The first is the plain one, which each sight is come to in. */
export const looks: readonly [Look, ...Look[]] = [
  { name: 'light-390', ...common },
  { name: 'dark-390', ...common, colorScheme: 'dark' },
  { name: 'dimmed-390', ...common, colorScheme: 'dark', dimmed: true },
  { name: 'light-320', ...small },
  { name: 'light-820', width: 820, height: 1180 },
  { name: 'landscape-844', width: 844, height: 390 },
  { name: 'text-200', ...common, text: 200 },
  { name: 'german-320', ...small, language: 'Deutsch' },
  { name: 'rtl-390', ...common, dir: 'rtl' },
  { name: 'forced-390', ...common, forcedColors: 'active' },
];

/** Puts a page into a look; language and dimming go by the settings, in a window of their own, as two windows do. */
export async function wear(page: Page, settings: Page, look: Look): Promise<void> {
  await page.setViewportSize({ width: look.width, height: look.height });
  await page.emulateMedia({
    colorScheme: look.colorScheme ?? 'light',
    forcedColors: look.forcedColors ?? 'none',
    reducedMotion: 'reduce',
  });
  await speaks(page, settings, look.language ?? 'English');
  await page.evaluate(
    ({ text, dir, dimmed }) => {
      const root = document.documentElement;
      root.style.fontSize = `${text}%`;
      root.dir = dir;
      root.dataset.dim = String(dimmed);
      for (const scrolled of [root, ...document.querySelectorAll('.screen-main')]) scrolled.scrollTop = 0;
    },
    { text: look.text ?? 100, dir: look.dir ?? 'ltr', dimmed: look.dimmed ?? false },
  );
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 60))));
}

async function speaks(page: Page, settings: Page, language: 'English' | 'Deutsch'): Promise<void> {
  const tag = language === 'English' ? 'en' : 'de';
  if ((await page.evaluate(() => document.documentElement.lang)) === tag) return;
  await settings.getByText(language, { exact: true }).first().click();
  await page.waitForFunction((wanted) => document.documentElement.lang === wanted, tag);
}
