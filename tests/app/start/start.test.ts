import type { MakeKey } from '../../../src/progress/log.ts';
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openSample } from '../../../src/app/garments/sample.ts';
import { openMake } from '../../../src/app/in-hand/open-make.ts';
import { changeSetting, changeSpeech } from '../../../src/app/settings/change-settings.ts';
import { readSettings, settings } from '../../../src/app/settings/settings.ts';
import { wearSettings } from '../../../src/app/settings/wear-settings.ts';
import { startStore } from '../../../src/app/start/start.ts';
import { inHand, missing, readFault, saving, tapFault } from '../../../src/app/state.ts';
import { forgetStore, store } from '../../../src/app/store.ts';
import { fault } from '../../../src/knit/fault.ts';
import { exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { openStore, type Store } from '../../../src/store/store.ts';
import { speak } from '../../../src/words/say.ts';
import { plainSpeech, speech } from '../../../src/words/settings.ts';
import { given } from '../../store/scenario.ts';
import { told } from '../../told.ts';

/** The app as it starts on a phone, over a database of its own. */

let page: EventTarget & { visibilityState: string; documentElement: { dataset: Record<string, string> } };

async function start(hash = '#/'): Promise<void> {
  vi.stubGlobal('location', { hash });
  forgetStore();
  inHand.value = undefined;
  await startStore();
}

/** Another window over the same box. */
async function otherWindow(): Promise<Store> {
  const opened = await openStore({ keep: undefined, spareFactory: async () => undefined, name: 'box' });
  if (!opened.ok) throw new Error(told(opened.faults));
  return opened.value;
}

async function withSample(): Promise<MakeKey> {
  const sample = await openSample('sample', 1_800_000_000_000);
  if (!sample.ok) throw new Error(told(sample.faults));
  await openMake(sample.value);
  return sample.value;
}

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
  page = Object.assign(new EventTarget(), {
    visibilityState: 'visible',
    documentElement: { dataset: { box: 'box' } },
  });
  vi.stubGlobal('document', page);
  vi.stubGlobal('navigator', { languages: ['en-US'] });
  readFault.value = undefined;
  saving.value = 'saved';
});
afterEach(async () => {
  (await store()).close();
  forgetStore();
  vi.unstubAllGlobals();
  settings.value = readSettings({});
  await speak(plainSpeech);
});

describe('the app that starts', () => {
  it('has the box that the page names, and what was stored in it', async () => {
    await start();
    const key = await withSample();
    (await store()).close();
    await start(`#/knitting/${key}`);
    expect(await openMake(key)).toBe(key);
    expect((await indexedDB.databases()).map(({ name }) => name)).toContain('box');
    expect(readFault.value).toBeUndefined();
  });

  it('speaks and looks as she chose, here and in every other window', async () => {
    await start();
    await changeSetting('hand', 'left');
    await changeSpeech('units', 'in');
    expect(settings.value.hand).toBe('left');
    (await store()).close();
    settings.value = { ...settings.value, hand: 'right' };
    await speak(plainSpeech);
    await start();
    expect(settings.value.hand).toBe('left');
    expect(speech.value.units).toBe('in');
    const other = await otherWindow();
    await other.setSetting('hand', 'right');
    await vi.waitFor(() => expect(settings.value.hand).toBe('right'));
    other.close();
  });

  it('follows the device in what she has not chosen, and takes no setting that there is not', async () => {
    await start();
    const open = await store();
    await open.setSetting('hand', 'third');
    await open.setSetting('units', 'ells');
    open.close();
    vi.stubGlobal('navigator', { languages: ['de-AT', 'en'] });
    await start();
    expect(settings.value.hand).toBe('right');
    expect(speech.value).toMatchObject({ language: 'de', units: 'cm' });
  });

  it('shows a row that another window wrote on the make in hand', async () => {
    await start();
    const key = await withSample();
    const other = await otherWindow();
    await other.finishRow(key, 1);
    await vi.waitFor(() => expect(inHand.value?.place.rows).toBe(1));
    other.close();
  });

  it('says that rows lie outside the box, and no more once they are in it', async () => {
    await start();
    await withSample();
    const open = await store();
    const held = { now: 1 };
    Object.assign(open, { held: () => held.now });
    const other = await otherWindow();
    given(await other.changeGarment('sample', (old) => ({ ...old, notes: 'soft' })));
    await vi.waitFor(() => expect(saving.value).toBe('held'), 30_000);
    tapFault.value = fault('storage-full');
    held.now = 0;
    given(await other.changeGarment('sample', (old) => ({ ...old, notes: 'warm' })));
    await vi.waitFor(() => expect(saving.value).toBe('saved'), 30_000);
    expect(tapFault.value).toBeUndefined();
    // a row that is under way is none that lies outside
    saving.value = 'saving';
    tapFault.value = fault('no-such-make');
    given(await other.changeGarment('sample', (old) => ({ ...old, notes: 'cold' })));
    await new Promise((resolve) => setTimeout(resolve, 30));
    expect([saving.value, tapFault.value?.code]).toEqual(['saving', 'no-such-make']);
    Object.assign(open, { dropped: () => fault('storage-full') });
    given(await other.changeGarment('sample', (old) => ({ ...old, notes: 'dry' })));
    await vi.waitFor(() => expect(tapFault.value?.code).toBe('storage-full'), 30_000);
    tapFault.value = undefined;
    other.close();
  });

  it('says what garments are missing, as it starts and when another window has changed something', async () => {
    await start();
    await withSample();
    expect(missing.value).toBeUndefined();
    const open = await store();
    const gone = { garments: 2, entries: 9, backupAt: 0, backupEntries: 0 };
    Object.assign(open, { missing: () => gone });
    const other = await otherWindow();
    given(await other.changeGarment('sample', (old) => ({ ...old, notes: 'soft' })));
    await vi.waitFor(() => expect(missing.value).toEqual(gone), 30_000);
    other.close();
    open.close();
    await start();
    expect(missing.value).toBeUndefined();
  });

  it('has a box of one name where the page names none', async () => {
    delete page.documentElement.dataset.box;
    await start();
    expect((await indexedDB.databases()).map(({ name }) => name)).toContain('ridgeline');
  });

  it('reads again when it is looked at again, not when it is laid away', async () => {
    await start();
    const key = await withSample();
    const read = vi.fn<() => void>();
    const open = await store();
    const probe = open.probe;
    Object.assign(open, {
      probe: () => {
        read();
        return probe();
      },
    });
    page.visibilityState = 'hidden';
    page.dispatchEvent(new Event('visibilitychange'));
    expect(read).not.toHaveBeenCalled();
    page.visibilityState = 'visible';
    page.dispatchEvent(new Event('visibilitychange'));
    await vi.waitFor(() => expect(read).toHaveBeenCalledTimes(1));
    await vi.waitFor(() => expect(inHand.value?.make).toBe(key));
  });
});

describe('the page itself', () => {
  it('wears language, theme and evening, and changes with them until it is let go', async () => {
    await start();
    const root = { lang: '', dir: '', dataset: {} as Record<string, string> };
    const stop = wearSettings(root as unknown as HTMLElement);
    expect(root).toEqual({ lang: 'en', dir: 'ltr', dataset: { theme: 'auto', dim: 'false' } });
    await changeSetting('theme', 'dark');
    await changeSetting('dim', true);
    expect(root.dataset).toEqual({ theme: 'dark', dim: 'true' });
    await changeSpeech('language', 'de');
    expect(root.lang).toBe('de');
    stop();
    await changeSetting('theme', 'light');
    expect(root.dataset).toMatchObject({ theme: 'dark' });
  });
});

describe('settings that come with a backup that takes the place of everything', () => {
  it('hold at once, in this window and in every other', async () => {
    await start();
    await changeSetting('hand', 'left');
    await changeSpeech('units', 'in');
    const other = await otherWindow();
    const backup = await exportAll(other.box);
    if (!backup.ok) throw new Error(told(backup.faults));
    await changeSetting('hand', 'right');
    await changeSpeech('units', 'cm');
    const here = (await store()).box;
    await importBackup(here, backup.value, 'replace');
    await vi.waitFor(() => expect([settings.value.hand, speech.value.units]).toEqual(['left', 'in']));
    await changeSetting('hand', 'right');
    await importBackup(other.box, backup.value, 'replace');
    await vi.waitFor(() => expect(settings.value.hand).toBe('left'));
    other.close();
  });
});
