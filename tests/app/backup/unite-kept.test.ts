import { afterEach, describe, expect, it } from 'vitest';
import { makeBackup } from '../../../src/app/backup/backup.ts';
import { keepUp, lookNow } from '../../../src/app/backup/backup-file.ts';
import { keptFileLate, keptNews } from '../../../src/app/backup/kept-file-late.ts';
import { forgetStore, giveStore } from '../../../src/app/store.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import type { Store } from '../../../src/store/store.ts';
import { given } from '../../store/scenario.ts';
import { openApp, openEmptyApp } from '../open-app.ts';
import { withKeptFile } from './kept-file.ts';

const BACK = 'sample/back/0/1';
const rowsOf = async (store: Store) => given(await store.place(BACK)).rows;

async function knit(store: Store, rows: number) {
  for (let n = 0; n < rows; n += 1) given(await store.finishRow(BACK, (await rowsOf(store)) + 1));
}

/** The file as another device has left it. */
async function fileOf(store: Store) {
  forgetStore();
  giveStore(store);
  const { text } = given(await makeBackup());
  return text;
}

let at = 100;
const holding = (text: string) => {
  at += 1;
  const file = new File([text], 'kept.json', { lastModified: at });
  return { getFile: async () => file };
};

afterEach(() => {
  keptFileLate.value = undefined;
  keptNews.value = undefined;
});

describe('a file that two devices keep up to date', () => {
  it('has the rows of both after either wrote it, and what came in is told row by row', async () => {
    const { store: phone } = await openApp();
    await knit(phone, 3);
    const tablet = await openEmptyApp();
    const [first = ''] = await withKeptFile(tablet, holding(await fileOf(phone)), keepUp);
    expect(await rowsOf(tablet)).toBe(3);
    expect(given(readBackup(first)).entries).toHaveLength(3);

    await knit(tablet, 2);
    await withKeptFile(phone, holding(await fileOf(tablet)), keepUp);
    expect(await rowsOf(phone)).toBe(5);
    expect(keptNews.value).toMatchObject({
      name: 'kept.json',
      took: { garments: [{ makes: [{ piece: 'Back', here: 3, after: 5 }] }] },
    });
  });

  it('is never written over by a device that could not read it', async () => {
    const { store } = await openApp();
    const text = await fileOf(store);
    for (const [what, code] of [
      [text.slice(0, 900), 'backup-not-json'],
      ['her shopping list', 'backup-not-json'],
      ['{"format":"something else"}', 'backup-not-ours'],
    ] as const) {
      expect(await withKeptFile(store, holding(what), keepUp), what).toEqual([]);
      expect(keptFileLate.value?.code, what).toBe(code);
    }
    const gone = { getFile: () => Promise.reject(new DOMException('moved', 'NotFoundError')) };
    expect(await withKeptFile(store, gone, keepUp)).toEqual([]);
    expect(keptFileLate.value?.code).toBe('backup-file-gone');
  });

  it('that holds nothing new, or nothing at all, is written and nothing is told', async () => {
    const { store } = await openApp();
    const text = await fileOf(store);
    expect(await withKeptFile(store, holding(text), keepUp)).toHaveLength(1);
    expect(await withKeptFile(store, holding(''), keepUp)).toHaveLength(1);
    expect(keptNews.value).toBeUndefined();
  });

  it('that the browser asks about first comes in once she has allowed it', async () => {
    const { store: phone } = await openApp();
    await knit(phone, 3);
    const tablet = await openEmptyApp();
    let allowed = 'prompt';
    const handle = {
      ...holding(await fileOf(phone)),
      queryPermission: async () => allowed,
      requestPermission: async () => {
        allowed = 'granted';
      },
    };
    await withKeptFile(tablet, handle, keepUp);
    expect(keptFileLate.value?.code).toBe('backup-file-refused');
    await withKeptFile(tablet, handle, lookNow);
    expect(await rowsOf(tablet)).toBe(3);
    expect(keptFileLate.value).toBeUndefined();
  });
});
