import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { FirstFiles } from '../../src/pace/ask-early.ts';
import { words } from '../../src/words/en/knitting.ts';
import { languages } from '../../src/words/languages.ts';
import { buildBare, built } from '../bench/build.ts';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { cannotRunAlone, initialScripts, totalGzipBytes } from '../run/sizes.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { precacheList } from './worker.ts';

afterAll(removeProfiles);

const kb = 1024;
const report = (what: string, bytes: number) => console.log(`${what}: ${(bytes / kb).toFixed(1)} KB gzip`);

/** The knitting screen and its words; its drawing and its sheets come when the row is shown already. */
const rowInHand = () => initialScripts(dist);

const others = languages.filter((one) => one !== 'en');

/** The files of a language, which are kept when it is chosen. */
const wordsOf = (language: string): string[] =>
  readdirSync(join(dist, 'assets'))
    .filter((name) => name.includes(`words-${language}-`) && name.endsWith('.js'))
    .map((name) => `assets/${name}`);

describe('what has to be fetched', () => {
  it('is at most 35 KB of script for the knitting screen, words included', () => {
    const scripts = rowInHand();
    const bytes = totalGzipBytes(dist, scripts);
    report(`knitting screen, ${scripts.length} scripts`, bytes);
    expect(bytes).toBeGreaterThan(10 * kb);
    expect(bytes).toBeLessThanOrEqual(35 * kb);
  });

  it('is at most three times what a bare page with the same libraries is', () => {
    buildBare();
    const bare = totalGzipBytes(built.bare, initialScripts(built.bare));
    report('bare page', bare);
    expect(totalGzipBytes(dist, rowInHand())).toBeLessThanOrEqual(3 * bare);
  });

  it('is named in the page for a first visit: nothing waits for a file that names another', async () => {
    const host = await serve({ root: dist });
    const { page, close } = await openPhone({ worker: false });
    const named = readFileSync(join(dist, 'index.html'), 'utf8');
    let refused = 0;
    const unused: string[] = [];
    page.on('console', (message) => {
      if (message.text().includes('preload')) unused.push(message.text());
    });
    await page.route(/\.(js|css)$/, (route) => {
      if (named.includes(new URL(route.request().url()).pathname.slice(1))) return route.continue();
      refused += 1;
      return route.abort();
    });
    await page.goto(host.url);
    await page.locator('.empty').waitFor();
    await page.locator('.ways a').first().waitFor();
    // what comes later was asked for, so that the refusing is not for nothing
    await expect.poll(() => refused).toBeGreaterThan(0);
    // said by the browser where a file that was named is fetched a second time
    expect(unused.filter((text) => text.includes('is not used'))).toEqual([]);
    await close();
    await host.close();
  });

  it('is named whole for each screen that a visit may begin with, and what its words need', () => {
    const page = readFileSync(join(dist, 'index.html'), 'utf8');
    const {
      files,
      screens,
      words: said,
    } = JSON.parse(/\((\{"files".*\})\)/.exec(page)?.[1] ?? '') as FirstFiles;
    expect(Object.keys(screens)).toContain('settings');
    // nobody waits for what another screen is for: a row and the settings plan nothing, a text is read without the designer
    const asks = (screen: string, ...parts: readonly string[]) =>
      screens[screen]
        ?.map((i) => files[i])
        .filter((file) => parts.some((part) => file?.includes(`/${part}-`)));
    const typed = ['draft', 'editor', 'typing'];
    for (const screen of ['', 'sample', 'samples', 'settings'])
      expect(asks(screen, 'plan', ...typed), screen).toEqual([]);
    for (const screen of ['settings', 'samples', 'read']) expect(asks(screen, 'beside'), screen).toEqual([]);
    expect(asks('read', 'plan', ...typed)).toEqual([]);
    expect(asks('draft', 'editor')).toEqual([]);
    for (const [address, needed] of Object.entries(screens))
      for (const [first, rest] of Object.values(said)) {
        const asked = [...needed.map((i) => files[i] ?? ''), first, ...(address === '' ? [] : [rest])];
        expect(cannotRunAlone(dist, [...rowInHand(), ...asked]), address).toEqual([]);
      }
  });

  it('is no more than that: with every other script refused, the row is shown and finished', async () => {
    const host = await serve({ root: dist });
    const phone = await openPhone({ worker: false });
    const done = phone.page.getByRole('button', { name: words.done, exact: true });
    const row = (n: number) => phone.page.getByRole('region', { name: new RegExp(`^Row ${n} of `) });
    await phone.page.goto(`${host.url}#/sample`);
    await done.waitFor();
    const address = phone.page.url();
    await phone.page.goto('about:blank');
    const scripts = rowInHand();
    await phone.page.route(/\.js$/, (route) =>
      scripts.includes(new URL(route.request().url()).pathname.slice(1)) ? route.continue() : route.abort(),
    );
    await phone.page.goto(address);
    await row(1).waitFor();
    await done.tap();
    await row(2).waitFor();
    await phone.close();
    await host.close();
  });

  it('is at most 470 KB in all for a garment with no network, the reader of patterns among them, and 35 KB more for another language than English', () => {
    const files = precacheList(dist);
    const bytes = totalGzipBytes(dist, files);
    report(`all ${files.length} files`, bytes);
    expect(files.length).toBeGreaterThan(10);
    expect(bytes).toBeLessThanOrEqual(470 * kb);
    for (const language of others) {
      const words = wordsOf(language);
      const more = totalGzipBytes(dist, words);
      report(`${language}, ${words.length} files`, more);
      expect(words.length).toBe(2);
      expect(more).toBeLessThanOrEqual(35 * kb);
    }
  });

  it('is whole: no script of these needs one that is not among them, nor do the words of a language', () => {
    expect(cannotRunAlone(dist, precacheList(dist))).toEqual([]);
    for (const language of others)
      expect(cannotRunAlone(dist, [...precacheList(dist), ...wordsOf(language)])).toEqual([]);
  });

  it('is at most 45 KB of fonts', () => {
    const fonts = readdirSync(dist, { recursive: true, encoding: 'utf8' }).filter((path) =>
      path.endsWith('.woff2'),
    );
    const bytes = totalGzipBytes(dist, fonts);
    report(`${fonts.length} fonts`, bytes);
    expect(bytes).toBeLessThanOrEqual(45 * kb);
  });
});
