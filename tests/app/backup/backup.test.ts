import { expect, it } from 'vitest';
import { openFile } from '../../../src/app/backup/backup.ts';

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
