import { afterAll, describe, expect, it } from 'vitest';
import { patterns } from '../../src/app/routes.ts';
import { violations } from './axe.ts';
import { whatNoBackupHas } from './backed-up.ts';
import { openPhone, removeProfiles, walkedInTurn } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';
import { looks, looksToTry, movesSideways, openSettings, wear } from './looks.ts';
import { illSet } from './set-well.ts';
import { sights } from './sights.ts';
import { otherTree } from './tree.ts';
import { within } from './until.ts';

afterAll(removeProfiles);

const [plain] = looks;

/** What a sight leaves in the box is there at those after it too: of these a backup is made. */
const backedUp = new Set(walkedInTurn(sights, 9));

describe('the list of sights', () => {
  it('has every screen that has an address', () => {
    expect([...new Set(sights.map(({ screen }) => screen))].sort()).toEqual(Object.keys(patterns).sort());
  });
});

describe('every screen and state', () => {
  it(
    'has no violation by day nor, small, by night; holds on its side, in large and in spaced letters, in German, from right to left, no word broken or cut, no number parted from its unit, nothing too small for a finger; is told to a reader as before; and can be backed up',
    async () => {
      const host = await plainHost();
      const phone = await openPhone({ reducedMotion: 'reduce', worker: false });
      const { page } = phone;
      const knitter = knitterAt(page, host.url);
      const settings = await openSettings(page, host.url);
      const found: string[] = [];
      const tried = new Set<string>();
      const answers = <T>(what: string, answer: Promise<T>) => within(40_000, what, answer);
      for (const [index, sight] of sights.entries()) {
        await answers(`coming to ${sight.name}`, sight.come(page, knitter));
        found.push(...(await answers(`the tree of ${sight.name}`, otherTree(page, sight))));
        if (backedUp.has(sight)) {
          const notSaved = await answers(`a backup of ${sight.name}`, whatNoBackupHas(page, tried));
          found.push(...notSaved.map((what) => `${sight.name}, backed up: ${what}`));
        }
        const trials = looksToTry(index);
        for (const { look, audited } of trials) {
          const at = `${sight.name}, ${look.name}`;
          // it is come to in the plain one
          if (look !== plain) await answers(`${at}, put on`, wear(page, settings, look));
          const faults = await answers(`${at}, moved sideways`, movesSideways(page));
          const ill = await answers(`${at}, set`, illSet(page));
          faults.push(
            ...Object.entries<readonly string[]>({ ...ill }).flatMap(([kind, all]) =>
              all.map((one) => `${kind}: ${one}`),
            ),
          );
          if (audited) faults.push(...(await answers(`${at}, audited`, violations(page, audited))));
          found.push(...faults.map((what) => `${at}: ${what}`));
        }
        if (trials.length > 1) await answers(`${sight.name}, plain again`, wear(page, settings, plain));
      }
      // named whole: a list is cut where it is compared
      expect(found, found.join('\n')).toEqual([]);
      expect(phone.complaints).toEqual([]);
      expect(phone.strangers).toEqual([]);
      await answers('closing the phone', phone.close());
    },
    process.env.RIDGELINE_LOOKS === 'all' ? 1_800_000 : 600_000,
  );
});

describe('what is read while knitting', () => {
  it('is large enough for arm’s length: the count at least 64 px, the row at least 26 px, the pad for a thumb', async () => {
    const host = await plainHost();
    const phone = await openPhone({ worker: false });
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
  });
});
