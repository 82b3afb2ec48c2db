import type { Page } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { openPhone, removeProfiles, walkedBy } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';
import { openSettings } from './looks.ts';
import { sights } from './sights.ts';

afterAll(removeProfiles);

/** How the app is to speak, by the choices of the settings screen, and what it must then not say. */
const speeches = [
  {
    choose: ['UK', 'Centimetres', 'Old UK', 'In full words'],
    never:
      /\b(bind|binding|bound)[ -]off|gauge|stockinette|seed stitch|\bcolor\b|\bcenter\b|[\d½¼¾] in\b|\byd\b|\bUS \d|\bk2tog\b|\bssk\b|\bsts\b/i,
  },
  {
    choose: ['US', 'Inches', 'US', 'Abbreviated'],
    never:
      /\bcast off|casting off|tension|stocking stitch|moss stitch|colour|centre|\d cm\b|\d m\b|knit 2 together/i,
  },
] as const;

/** The settings name both; what she typed or pasted herself and a pattern to hand on stand as they were written. */
const speaksOtherwise = new Set([
  'settings',
  'meaning of the words',
  'pass on',
  'in several sizes worked out',
  'link opened',
  'pattern read',
  'damaged link',
]);

/** The last sights are only come to for what they say. */
const lastToRead = sights.findLastIndex(({ name }) => !speaksOtherwise.has(name));

/** All that is to be read or heard, without what she typed. */
const words = (page: Page) =>
  page.evaluate(() => {
    const labels = [...document.querySelectorAll('[aria-label], [title], [aria-valuetext]')].map((it) =>
      ['aria-label', 'title', 'aria-valuetext'].map((name) => it.getAttribute(name) ?? '').join(' '),
    );
    const read = `${document.body.innerText} ${labels.join(' ')}`;
    // what is said aloud is always in full words
    const aloud = [...document.querySelectorAll('[role="status"]')].map((it) => it.textContent ?? '');
    return aloud.reduce((text, said) => text.replaceAll(said.trim(), ''), read).replaceAll('\u00a0', ' ');
  });

async function choose(page: Page, settings: Page, choices: readonly string[]): Promise<void> {
  const groups = ['Knitting terms', 'Lengths', 'Needle sizes', 'Row instructions'];
  for (const [i, choice] of choices.entries()) {
    const radio = settings
      .getByRole('group', { name: groups[i] ?? '' })
      .getByRole('radio', { name: new RegExp(`^${choice}`) });
    // not `check`: it is chosen only once it is stored
    await radio.click({ force: true });
    await expect.poll(() => radio.isChecked()).toBe(true);
  }
  await page.waitForTimeout(100);
}

describe('terms, lengths, needles and wording', () => {
  // what is said by default stands in the trees of every-screen too: US terms and inches
  it.each(walkedBy(speeches, ({ choose: [terms] }) => terms === 'UK'))(
    'are $choose on every screen',
    async ({ choose: choices, never }) => {
      const host = await plainHost();
      const phone = await openPhone({ reducedMotion: 'reduce', worker: false });
      const knitter = knitterAt(phone.page, host.url);
      const settings = await openSettings(phone.page, host.url);
      await choose(phone.page, settings, choices);
      const found: string[] = [];
      for (const sight of sights.slice(0, lastToRead + 1)) {
        await sight.come(phone.page, knitter);
        const said = await words(phone.page);
        const wrong = speaksOtherwise.has(sight.name) ? null : never.exec(said);
        if (wrong)
          found.push(`${sight.name}: …${said.slice(Math.max(0, wrong.index - 40), wrong.index + 40)}…`);
      }
      expect(found).toEqual([]);
      await phone.close();
    },
    240_000,
  );
});
