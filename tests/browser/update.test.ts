import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { NEWS } from '../../src/app/device/quiet-line.ts';
import { words as quiet } from '../../src/words/en/quiet.ts';
import { words as settings } from '../../src/words/en/settings.ts';
import { words } from '../../src/words/en/workbasket.ts';
import { brokenDeploys, copiedNext, deploy } from '../faults/deploys.ts';
import { dist } from '../run/built.ts';
import { type Served, type ServeOptions, serve } from '../run/serve.ts';
import { inTheBox } from './backed-up.ts';
import { withOtherWords } from './changed-words.ts';
import { openPhone, type Phone, removeProfiles, walkedInTurn } from './drive.ts';
import { settled as stands } from './settled.ts';
import { until } from './until.ts';
import {
  askForUpdate,
  awaitUpdate,
  cachedPaths,
  precacheList,
  runningVersion,
  settled,
  takeElsewhere,
  workerReady,
} from './worker.ts';

let next = '';
let nextVersion = '';

beforeAll(() => {
  ({ root: next, name: nextVersion } = copiedNext());
});

afterAll(removeProfiles);

/** A phone with the app of dist installed, and the host that it came from. */
async function installed({ once = true } = {}): Promise<{ phone: Phone; host: Served; version: string }> {
  const host = await serve({ root: dist });
  const phone = await openPhone({ once });
  await phone.page.goto(host.url);
  await workerReady(phone.page);
  await phone.page.reload();
  return { phone, host, version: (await runningVersion(phone.page)) ?? 'none' };
}

/** The news that the box of this device has down as known. */
const knownNews = async (page: Page): Promise<unknown> =>
  (await inTheBox(page, 'settings')).get('known news');

const mark = (phone: Phone) => phone.page.evaluate(() => Object.assign(window, { untouched: true }));
const untouched = (page: Phone['page']) => page.evaluate(() => 'untouched' in window);

describe('a newer version on the host', () => {
  it('is fetched and waits: no window reloads, and a reload still shows the old one, whole', async () => {
    const { phone, host, version } = await installed();
    const second = await phone.context.newPage();
    await second.goto(host.url);
    await mark(phone);
    await second.evaluate(() => Object.assign(window, { untouched: true }));
    const newer = await deploy(host, next);
    await awaitUpdate(phone.page);
    await phone.page.waitForTimeout(500);

    expect(await untouched(phone.page)).toBe(true);
    expect(await untouched(second)).toBe(true);
    await phone.page.reload();
    expect(await runningVersion(phone.page)).toBe(version);
    expect(phone.complaints).toEqual([]);
    await phone.close();
    await newer.close();
  });

  it('taken in another window, leaves this one running until it is reloaded', async () => {
    const { phone, host, version } = await installed();
    await mark(phone);
    const newer = await deploy(host, next);
    await awaitUpdate(phone.page);
    await takeElsewhere(phone.page);
    await phone.page.waitForTimeout(500);

    expect(await untouched(phone.page)).toBe(true);
    expect(await runningVersion(phone.page)).toBe(version);
    await newer.close();
    await phone.page.reload();
    expect(await runningVersion(phone.page)).toBe(nextVersion);
    expect(await cachedPaths(phone.page)).toEqual(precacheList(next));
    await phone.close();
  });

  it('is taken by a tap in one window, which alone reloads; the other is told and goes on, to other screens too', async () => {
    const { phone, host, version } = await installed();
    const second = await phone.context.newPage();
    await second.goto(host.url);
    await second.getByRole('heading', { level: 1 }).waitFor();
    await second.evaluate(() => Object.assign(window, { untouched: true }));
    const newer = await deploy(host, next);
    await awaitUpdate(phone.page);
    await phone.page.bringToFront();
    await phone.page.getByRole('button', { name: words.updateNow }).tap();
    await until(
      () => runningVersion(phone.page).catch(() => undefined),
      (running) => running === nextVersion,
    );
    await settled(phone.page);

    expect(await untouched(second)).toBe(true);
    expect(await runningVersion(second)).toBe(version);
    await second.bringToFront();
    await second.getByRole('button', { name: words.reload }).waitFor();
    await newer.close();
    await second.evaluate(() => {
      location.hash = '#/settings';
    });
    await second.getByRole('heading', { name: settings.title, level: 1 }).waitFor();
    expect(new URL(second.url()).hash).toBe('#/settings');
    await phone.close();
  });

  it('says in a few words what it brings, once, and nothing to whoever began with it', async () => {
    const newer = withOtherWords(next, `${next}-news`, NEWS, 'news of a later one');
    const { phone, host } = await installed();
    const { page } = phone;
    const news = page.getByText(quiet.news, { exact: true });
    await until(
      () => knownNews(page),
      (known) => known === NEWS,
    );
    expect(await news.count()).toBe(0);
    const deployed = await deploy(host, newer);
    await awaitUpdate(page);
    await page.getByRole('button', { name: words.updateNow }).tap();
    await news.waitFor();
    await page.getByText(quiet.newsHelp).waitFor();
    await page.getByRole('button', { name: quiet.newsRead }).tap();
    await news.waitFor({ state: 'detached' });
    await until(
      () => knownNews(page),
      (known) => known === 'news of a later one',
    );
    await page.reload();
    await page.getByRole('link', { name: /Open the sample/ }).waitFor();
    await stands(page);
    expect(await news.count()).toBe(0);
    expect(phone.complaints).toEqual([]);
    await phone.close();
    await deployed.close();
  });

  it('can be rolled back', async () => {
    const { phone, host, version } = await installed({ once: false });
    const newer = await deploy(host, next);
    await awaitUpdate(phone.page);
    const older = await deploy(newer, dist);
    await awaitUpdate(phone.page);
    await phone.close();
    await older.close();

    const again = await openPhone({ profile: phone.profile });
    await again.page.goto(host.url);
    expect(await runningVersion(again.page)).toBe(version);
    await again.close();
  });
});

describe('a broken newer version on the host', () => {
  it('leaves the installed one working, in whichever way it is broken', async () => {
    const { phone, host, version } = await installed({ once: false });
    let at = host;
    for (const [name, instead] of walkedInTurn(brokenDeploys(next), 3)) {
      at = await deploy(at, next, instead);
      await askForUpdate(phone.page);
      await settled(phone.page);
      await phone.page.reload();
      await phone.page.waitForSelector('#app > *');

      expect(await runningVersion(phone.page), name).toBe(version);
      expect(await cachedPaths(phone.page), name).toEqual(expect.arrayContaining(precacheList(dist)));
    }
    await phone.kill();

    // A version that waits is taken when the last window closes: the start from cold shows that none did.
    const again = await openPhone({ profile: phone.profile });
    await again.page.goto(at.url);
    await again.page.waitForSelector('#app > *');
    expect(await runningVersion(again.page)).toBe(version);
    await again.close();
    await at.close();
  });
});

describe('a first visit that is cut off', () => {
  it('is made good by the next one', async () => {
    // Only the worker asks for a screen that is not shown; from there on nothing comes through.
    let cut = false;
    const cutOff: ServeOptions['instead'] = (path, response) => {
      cut ||= path.startsWith('/assets/editor-');
      if (!cut) return false;
      response.destroy();
      return true;
    };
    const host = await serve({ root: dist, instead: cutOff });
    const phone = await openPhone();
    await phone.page.goto(host.url);
    await until(
      async () => host.asked,
      (paths) => paths.some((path) => path.startsWith('/assets/editor-')),
      30_000,
    );
    await phone.page.waitForTimeout(500);
    expect(
      await phone.page.evaluate(
        async () => (await navigator.serviceWorker.getRegistration())?.active ?? null,
      ),
    ).toBeNull();
    await phone.close();

    const whole = await deploy(host, dist);
    const again = await openPhone({ profile: phone.profile });
    await again.page.goto(whole.url);
    await workerReady(again.page);
    expect(await cachedPaths(again.page)).toEqual(precacheList(dist));
    await again.close();
    await whole.close();
  });
});
