import { afterAll, expect, it } from 'vitest';
import { openPhone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';
import { settled } from './settled.ts';
import { sights } from './sights.ts';

afterAll(removeProfiles);

/** Words, controls and height (px at 390 × 844) that these screens had when they were stacked, measured then. */
const stacked = {
  draft: { words: 428, controls: 113, height: 5010 },
  'edit piece': { words: 267, controls: 62, height: 3823 },
  'making up': { words: 264, controls: 11, height: 2986 },
  garment: { words: 200, controls: 17, height: 2799 },
  yarn: { words: 252, controls: 20, height: 2221 },
} as const;

/** Hundredths of that which a screen that is drawn may have. */
const MOST = 60;

it('a screen that is drawn has at most three fifths of the words, controls and height that it had as a stack', async () => {
  const host = await plainHost();
  const phone = await openPhone({ reducedMotion: 'reduce', worker: false });
  const { page } = phone;
  const knitter = knitterAt(page, host.url);
  await knitter.openSample();
  const over: string[] = [];
  for (const [name, before] of Object.entries(stacked)) {
    const sight = sights.find((one) => one.name === name);
    if (!sight) throw new Error(`no sight ${name}`);
    await sight.come(page, knitter);
    await settled(page);
    const now = await page.evaluate(() => ({
      words: document.body.innerText.split(/\s+/).filter((word) => /\w/.test(word)).length,
      controls: [...document.querySelectorAll('a[href], button, input, select, textarea, summary')].filter(
        (one) => one.checkVisibility(),
      ).length,
      height: document.documentElement.scrollHeight,
    }));
    console.log(name, JSON.stringify(now));
    for (const key of ['words', 'controls', 'height'] as const) {
      const most = Math.floor((MOST / 100) * before[key]);
      if (now[key] > most) over.push(`${name}: ${now[key]} ${key}, at most ${most}`);
    }
  }
  expect(over).toEqual([]);
  await phone.close();
});
