import { afterAll, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';

afterAll(removeProfiles);

/** What comes into the page together: an observer is told once for all that one task has drawn. */
const watchWhatComes = (parts: readonly string[]) => {
  const came: string[][] = [];
  const known = new Set<string>();
  Object.assign(globalThis, { came });
  new MutationObserver(() => {
    const fresh = parts.filter((part) => !known.has(part) && document.querySelector(part) !== null);
    for (const part of fresh) known.add(part);
    if (fresh.length > 0) came.push([...fresh]);
  }).observe(document, { subtree: true, childList: true });
};

const pages = {
  draft: [
    'h1',
    '.draft-steps details',
    '.draft-foot-row',
    '.draft-drawing',
    '.draft-folds details',
    '.draft-end',
  ],
  settings: [
    'h1',
    '.settings-group:nth-of-type(3)',
    '.settings-group:nth-of-type(4)',
    '.settings-group:nth-of-type(5)',
  ],
} as const;

/** What stands before that comes of which most is fetched: of the draft its folds too, empty. */
const frames: Readonly<Record<string, readonly string[]>> = {
  draft: pages.draft.slice(0, 2),
  settings: ['h1'],
};

it.each(Object.entries(pages))(
  '%s stands from its top on, and each part of it is drawn in a task of its own',
  async (screen, parts) => {
    const host = await serve({ root: dist });
    const { page, close } = await openPhone({ worker: false });
    await page.addInitScript(watchWhatComes, [...parts]);
    await page.goto(`${host.url}#/${screen}`);
    for (const part of parts) await page.locator(part).first().waitFor({ state: 'attached' });
    const came = await page.evaluate(() => (globalThis as unknown as { came: string[][] }).came);
    const [frame, ...rest] = came;
    expect(frame).toEqual(frames[screen]);
    expect(came.flat().sort()).toEqual([...parts].sort());
    for (const together of rest) expect(together).toHaveLength(1);
    await close();
    await host.close();
  },
);
