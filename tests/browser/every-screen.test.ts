import { afterAll, describe, expect, it } from 'vitest';
import { patterns } from '../../src/app/routes.ts';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { violations } from './axe.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { knitterAt } from './knitter.ts';
import { looks, looksToTry, movesSideways, openSettings, wear } from './looks.ts';
import { sights } from './sights.ts';

afterAll(removeProfiles);

describe('the list of sights', () => {
  it('has every screen that has an address', () => {
    expect([...new Set(sights.map(({ screen }) => screen))].sort()).toEqual(Object.keys(patterns).sort());
  });
});

describe('every screen and state', () => {
  it(
    'has no violation by day nor, small, by night; holds on its side, in large and in spaced letters, from right to left',
    async () => {
      const host = await serve({ root: dist });
      const phone = await openPhone({ reducedMotion: 'reduce', worker: false });
      const { page } = phone;
      const knitter = knitterAt(page, host.url);
      const settings = await openSettings(page, host.url);
      const found: string[] = [];
      for (const sight of sights) {
        await sight.come(page, knitter);
        for (const look of looksToTry()) {
          await wear(page, settings, look);
          const faults = [...(await movesSideways(page)), ...(look.audited ? await violations(page) : [])];
          found.push(...faults.map((what) => `${sight.name}, ${look.name}: ${what}`));
        }
        await wear(page, settings, looks[0]);
      }
      expect(found).toEqual([]);
      expect(phone.complaints).toEqual([]);
      expect(phone.strangers).toEqual([]);
      await phone.close();
      await host.close();
    },
    process.env.RIDGELINE_LOOKS === 'all' ? 900_000 : 300_000,
  );
});

describe('what is read while knitting', () => {
  it('is large enough for arm’s length: the count at least 64 px, the row at least 26 px, the pad for a thumb', async () => {
    const host = await serve({ root: dist });
    const phone = await openPhone();
    const knitter = knitterAt(phone.page, host.url);
    await knitter.openSample();
    const pixels = (selector: string) =>
      phone.page.locator(selector).evaluate((it) => Number.parseFloat(getComputedStyle(it).fontSize));
    expect(await pixels('.row-count')).toBeGreaterThanOrEqual(64);
    expect(await pixels('.row-work')).toBeGreaterThanOrEqual(26);
    const pad = await knitter.pad.boundingBox();
    expect(pad?.height).toBeGreaterThanOrEqual(96);
    expect((pad?.y ?? 0) + (pad?.height ?? 0)).toBeLessThanOrEqual(844);
    const small = await phone.page
      .locator('button:visible, a:visible')
      .evaluateAll((all) =>
        all
          .map((it) => ({ name: it.textContent, ...it.getBoundingClientRect().toJSON() }))
          .filter((box) => box.width < 44 || box.height < 44),
      );
    expect(small).toEqual([]);
    await phone.close();
    await host.close();
  });
});
