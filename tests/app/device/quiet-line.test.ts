import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { offer } from '../../../src/app/device/installing.ts';
import { findQuietLine, NEWS, putOffQuietLine, quietLine } from '../../../src/app/device/quiet-line.ts';
import type { Store } from '../../../src/store/store.ts';
import { openApp } from '../open-app.ts';

/** A phone that was opened so, whose log is so long and in no backup. */
async function phone(opened: 'home' | 'iPhone' | 'browser', entries: number) {
  vi.stubGlobal('navigator', { language: 'en', ...(opened === 'iPhone' ? { standalone: false } : {}) });
  vi.stubGlobal('matchMedia', (asked: string) => ({
    matches: opened === 'home' && asked === '(display-mode: standalone)',
  }));
  const since = { garments: 1, entries, backupAt: 0, backupEntries: 0 };
  return openApp((store: Store) => ({ ...store, sinceBackup: () => since }));
}

describe('what is said by the way', () => {
  beforeEach(() => {
    quietLine.value = undefined;
    offer.value = undefined;
  });
  afterEach(() => vi.unstubAllGlobals());

  it('is nothing in a browser where little is knitted', async () => {
    await phone('browser', 10);
    await findQuietLine(false);
    expect(quietLine.value).toBeUndefined();
    await findQuietLine(true);
    expect(quietLine.value).toBeUndefined();
  });

  it('is the home screen on an iPhone before anything is made, and the way over where the home screen is empty', async () => {
    await phone('iPhone', 0);
    await findQuietLine(true);
    expect(quietLine.value).toBe('home first');
    await findQuietLine(false);
    expect(quietLine.value).toBeUndefined();
    await phone('home', 0);
    await findQuietLine(true);
    expect(quietLine.value).toBe('from browser');
  });

  it('is the browser’s own offer once she has knitted some rows, and none on the home screen', async () => {
    offer.value = {} as NonNullable<typeof offer.value>;
    await phone('browser', 19);
    await findQuietLine(false);
    expect(quietLine.value).toBeUndefined();
    await phone('browser', 20);
    await findQuietLine(false);
    expect(quietLine.value).toBe('install');
    await phone('home', 20);
    await findQuietLine(false);
    expect(quietLine.value).toBeUndefined();
  });

  it('is a backup before all else, one thing at a time, and gone for weeks when she puts it off', async () => {
    offer.value = {} as NonNullable<typeof offer.value>;
    const { store } = await phone('browser', 150);
    await findQuietLine(false);
    expect(quietLine.value).toBe('backup');
    await putOffQuietLine();
    expect(quietLine.value).toBeUndefined();
    const settings = await store.settings();
    expect(settings.ok && settings.value['put off backup']).toBeGreaterThan(0);
    await findQuietLine(false);
    expect(quietLine.value).toBe('install');
    await putOffQuietLine();
    await findQuietLine(false);
    expect(quietLine.value).toBeUndefined();
  });

  it('is what is new, once, where a version with news came after another; none where she began with it', async () => {
    const { store } = await phone('browser', 10);
    await findQuietLine(false);
    expect(quietLine.value).toBeUndefined();
    await findQuietLine(false);
    expect(quietLine.value).toBeUndefined();
    await store.setSetting('known news', 'of a version before');
    await findQuietLine(false);
    expect(quietLine.value).toBe('news');
    await putOffQuietLine();
    expect(quietLine.value).toBeUndefined();
    await findQuietLine(false);
    expect(quietLine.value).toBeUndefined();
  });

  it('is written anew for each version that brings something', () => {
    const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    expect(NEWS).toBe(`news of ${version.split('.', 2).join('.')}`);
  });
});
