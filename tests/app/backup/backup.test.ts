import { expect, it } from 'vitest';
import { makeBackup, openFile, takeIn } from '../../../src/app/backup/backup.ts';
import { exportAll } from '../../../src/store/backup/export.ts';
import { given } from '../../store/scenario.ts';
import { openApp } from '../open-app.ts';
import '../tasks-here.ts';

/** A file of so many bytes; only its beginning can be read, and reading all of it would be a mistake. */
function fileOf(beginning: string, size: number): Blob & { wholeReads: number } {
  const file = {
    size,
    wholeReads: 0,
    slice: (from: number, to: number) => new Blob([beginning]).slice(from, to),
    text: () => {
      file.wholeReads += 1;
      return Promise.resolve(beginning);
    },
  };
  return file as unknown as Blob & { wholeReads: number };
}

const codeOf = async (file: Blob) => {
  const read = await openFile(file);
  return read === undefined || read.ok ? undefined : read.faults[0]?.code;
};

it.each([
  ['of zeros', '\0'.repeat(2000), 'backup-not-json'],
  ['of the digit 0', '0'.repeat(2000), 'backup-not-json'],
  ['that is a picture', '\u0089PNG\r\n', 'backup-not-json'],
  ['that is a page', '<!doctype html>', 'backup-not-json'],
  ['that is a list', ' [0,0,0,0', 'backup-not-ours'],
])('a file of 120 million bytes %s is refused by its first ones', async (_, beginning, code) => {
  const file = fileOf(beginning, 120_000_000);
  expect(await codeOf(file)).toBe(code);
  expect(file.wholeReads).toBe(0);
});

it('a file that begins as a backup does is read whole, with a mark before its text too', async () => {
  const file = fileOf('\uFEFF\n {"format":"something else","version":1}', 1000);
  expect(await codeOf(file)).toBe('backup-not-ours');
  expect(file.wholeReads).toBe(1);
});

it('a file larger than any is refused before it is read, with its millions of bytes', async () => {
  const file = fileOf('{', 500_500_001);
  expect(await openFile(file)).toMatchObject({
    faults: [{ code: 'backup-too-large', figures: { sizeMillions: 501, mostMillions: 500 } }],
  });
  expect(file.wholeReads).toBe(0);
});

it('a backup of several garments is read whole, says what either way would change, and comes in', async () => {
  const { store, back } = await openApp();
  given(await store.finishRow(back, 1));
  const { text } = given(await makeBackup());
  const all = given(await exportAll(store.box));
  const { store: other } = await openApp();
  const opened = await openFile(new Blob([text]));
  if (!opened?.ok) throw new Error('not read');
  const { backup, merge, replace } = opened.value;
  expect(backup).toEqual({ ...all, madeAt: backup.madeAt });
  expect([merge, replace].map((way) => JSON.stringify(way).includes('sample'))).toEqual([true, true]);
  given(await takeIn(backup, 'replace'));
  expect(given(await other.place(back)).rows).toBe(1);
});

it('the reading of a file can be stopped', async () => {
  const { text } = given(await makeBackup());
  expect(await openFile(new Blob([text]), (stop) => stop())).toBeUndefined();
});
