import { afterEach, describe, expect, it } from 'vitest';
import { keepUp, keepUpAgain } from '../../../src/app/device/backup-file.ts';
import { keptFileLate } from '../../../src/app/kept-file-late.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { knittedBox } from '../../store/knitted-box.ts';
import { given } from '../../store/scenario.ts';
import { withKeptFile } from './kept-file.ts';

describe('a file that is kept up to date', () => {
  afterEach(() => {
    keptFileLate.value = undefined;
  });
  const late = () => keptFileLate.value?.code;

  it('has everything, and nothing is said', async () => {
    const [text = ''] = await withKeptFile(await knittedBox(), {}, keepUp);
    expect(given(readBackup(text)).garments).toHaveLength(1);
    expect(late()).toBeUndefined();
  });

  it('that the browser does not let be written any more stays as it was, and she is told; asked again, it is written', async () => {
    const store = await knittedBox();
    let allowed = 'prompt';
    const handle = {
      queryPermission: async () => allowed,
      requestPermission: async () => {
        allowed = 'granted';
      },
    };
    expect(await withKeptFile(store, handle, keepUp)).toEqual([]);
    expect(late()).toBe('backup-file-refused');
    expect(await withKeptFile(store, handle, keepUpAgain)).toHaveLength(1);
    expect(late()).toBeUndefined();
  });

  it('that cannot be written is told', async () => {
    const createWritable = () => Promise.reject(new DOMException('moved', 'NotFoundError'));
    await withKeptFile(await knittedBox(), { createWritable }, keepUp);
    expect(late()).toBe('backup-file-gone');
  });

  it('is not written over by one that would have less than all, and that is told', async () => {
    const store = await knittedBox();
    given(
      await store.box.door.write(['settings'], (tx) =>
        tx.objectStore('settings').put({ constructor: 1 }, 'of another time'),
      ),
    );
    expect(await withKeptFile(store, {}, keepUp)).toEqual([]);
    expect(late()).toBe('backup-without');
  });
});
