import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { words as germanSettings } from '../../src/words/de/settings.ts';
import { words as german } from '../../src/words/de/workbasket.ts';
import { words as english } from '../../src/words/en/settings.ts';
import { words as englishBasket } from '../../src/words/en/workbasket.ts';
import { words as french } from '../../src/words/fr/settings.ts';
import { words as frenchBasket } from '../../src/words/fr/workbasket.ts';
import { copiedNext, deploy } from '../faults/deploys.ts';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { withOtherWords } from './changed-words.ts';
import { openPhone, type Phone, removeProfiles } from './drive.ts';
import { until } from './until.ts';
import { awaitUpdate, runningVersion, workerReady } from './worker.ts';

let next = '';
let nextVersion = '';

beforeAll(() => {
  ({ root: next, name: nextVersion } = copiedNext());
});

afterAll(removeProfiles);

const heading = (page: Page, name: string) => page.getByRole('heading', { name, level: 1, exact: true });

/** Chooses a language on the settings screen, and waits until the screen speaks it. */
async function choose(page: Page, url: string, name: string, title: string): Promise<void> {
  await page.goto(`${url}#/settings`);
  // not `check`: it is chosen only once its words are there
  await page.getByRole('radio', { name, exact: true }).click({ force: true });
  await heading(page, title).waitFor();
}

/** What the browser keeps for itself of what it fetched goes: nothing is left but what the app keeps. */
const forget = async ({ context, page }: Phone): Promise<void> => {
  await (await context.newCDPSession(page)).send('Network.clearBrowserCache');
};

/** Languages of which every file is kept. */
const languagesKept = (page: Page) =>
  page.evaluate(async () => {
    const names = (await caches.keys()).filter((name) => name.startsWith('wanted-'));
    const keys = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    const kept = keys.flat().map(({ url }) => /\/(?:first-)?words-(\w+)-/.exec(url)?.[1] ?? '?');
    return [...new Set(kept)].filter((one) => kept.filter((other) => other === one).length === 2).sort();
  });

it('a language that was chosen starts without a network, from cold, on every screen; it alone was fetched', async () => {
  const host = await serve({ root: dist });
  const first = await openPhone();
  await first.page.goto(host.url);
  await workerReady(first.page);
  await first.page.reload();
  expect(await languagesKept(first.page)).toEqual([]);
  expect(host.asked.filter((path) => /words-(de|fr)-/.test(path))).toEqual([]);
  await choose(first.page, host.url, 'Deutsch', germanSettings.title);
  await until(
    () => languagesKept(first.page),
    (kept) => kept.join() === 'de',
  );
  await first.kill();
  await host.close();

  const again = await openPhone({ profile: first.profile });
  await forget(again);
  await again.page.goto(host.url);
  await heading(again.page, german.title).waitFor();
  await again.page.goto(`${host.url}#/settings`);
  await heading(again.page, germanSettings.title).waitFor();
  expect(await again.page.evaluate(() => document.documentElement.lang)).toBe('de');
  expect(again.complaints).toEqual([]);
  await again.kill();
});

it('what a device asks for at its first visit is kept, though no worker saw it fetched', async () => {
  const host = await serve({ root: dist });
  const first = await openPhone({ locale: 'fr-FR' });
  await first.page.goto(host.url);
  await heading(first.page, frenchBasket.title).waitFor();
  await until(
    () => languagesKept(first.page),
    (kept) => kept.join() === 'fr',
  );
  await first.kill();
  await host.close();

  const again = await openPhone({ profile: first.profile, locale: 'fr-FR' });
  await forget(again);
  await again.page.goto(`${host.url}#/settings`);
  await heading(again.page, french.title).waitFor();
  await again.page.getByText(french.offlineYes).waitFor();
  expect(again.complaints).toEqual([]);
  await again.kill();
});

it('a newer version brings its own words of the language along: taken without a network, it speaks it', async () => {
  const told = 'So geht es los:';
  const newer = withOtherWords(next, `${next}-words`, german.emptyHow, told);
  const host = await serve({ root: dist });
  const phone = await openPhone();
  await phone.page.goto(host.url);
  await workerReady(phone.page);
  await phone.page.reload();
  await choose(phone.page, host.url, 'Deutsch', germanSettings.title);
  await phone.page.goto(host.url);
  await heading(phone.page, german.title).waitFor();
  const deployed = await deploy(host, newer);
  await awaitUpdate(phone.page);
  await deployed.close();

  await phone.page.getByRole('button', { name: german.updateNow }).tap();
  await phone.page.getByText(told).waitFor();
  expect(await runningVersion(phone.page)).toBe(nextVersion);
  await phone.kill();
  const again = await openPhone({ profile: phone.profile });
  await again.page.goto(host.url);
  await again.page.getByText(told).waitFor();
  await again.page.goto(`${host.url}#/settings`);
  await heading(again.page, germanSettings.title).waitFor();
  expect(again.complaints).toEqual([]);
  await again.kill();
});

it('one that is not there says so without a network, and the old one stays; with a network it comes', async () => {
  const host = await serve({ root: dist });
  const phone = await openPhone();
  const { page } = phone;
  await page.goto(host.url);
  await workerReady(page);
  await page.reload();
  await heading(page, englishBasket.title).waitFor();
  await host.close();
  await page.goto(`${host.url}#/settings`);
  const radio = (name: string) => page.getByRole('radio', { name, exact: true });
  await radio('Français').click({ force: true });
  await page.getByText(english.languageAway.replace('{language}', 'Français')).waitFor();
  await heading(page, english.title).waitFor();
  expect(await radio('English').isChecked()).toBe(true);
  expect(await page.evaluate(() => document.documentElement.lang)).toBe('en');

  const back = await serve({ root: dist, port: host.port });
  await radio('Français').click({ force: true });
  await heading(page, french.title).waitFor();
  expect(await page.getByText(french.languageAwayHelp).count()).toBe(0);
  await back.close();
  await page.goto(host.url);
  await heading(page, frenchBasket.title).waitFor();
  await phone.close();
});
