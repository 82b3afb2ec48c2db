import { expect, it } from 'vitest';
import { takeIn } from '../../../src/app/backup/backup.ts';
import { garmentBackup } from '../../../src/app/backup/one-garment.ts';
import { logEntry } from '../../../src/app/in-hand/count.ts';
import { openMake } from '../../../src/app/in-hand/open-make.ts';
import { notesOf } from '../../../src/app/in-hand/row-notes.ts';
import { makeRecord } from '../../../src/progress/make-record.ts';
import { given } from '../../store/scenario.ts';
import { openApp, openEmptyApp } from '../open-app.ts';

it('a note written now for a row ahead stands before that row, here and on another device, and nowhere else', async () => {
  const { store, back } = await openApp();
  given(await store.finishRow(back, 1));
  await openMake(back);
  expect(await logEntry({ kind: 'note', text: 'the blue marker', beforeRow: 60 })).toBe(true);
  expect(await logEntry({ kind: 'note', text: 'a knot' })).toBe(true);
  const notes = await notesOf(given(await store.place(back)));
  expect(notes.map(({ row, text }) => [row, text])).toEqual([
    [60, 'the blue marker'],
    [2, 'a knot'],
  ]);
  const { notes: told } = makeRecord(back, given(await store.entriesOf(back)));
  expect(told).toEqual([
    { row: 59, text: 'the blue marker' },
    { row: 1, text: 'a knot' },
  ]);
  // the place stays
  expect(given(await store.place(back)).rows).toBe(1);

  const away = given(await garmentBackup('sample'));
  const other = await openEmptyApp();
  given(await takeIn(away, 'merge'));
  expect(await notesOf(given(await other.place(back)))).toEqual(notes);
});

it('a note is for no row that there can never be', async () => {
  const { store, back } = await openApp();
  for (const beforeRow of [0, -1, 1.5, 100_001])
    expect(await store.append(back, { kind: 'note', text: 'x', beforeRow })).toMatchObject({
      faults: [{ code: 'not-storable' }],
    });
});
