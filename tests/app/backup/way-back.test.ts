import { expect, it } from 'vitest';
import { makeBackup, openFile, takeIn } from '../../../src/app/backup/backup.ts';
import { endWayBack, leaveItSo, readWayBack, takeItBack, wayBack } from '../../../src/app/backup/way-back.ts';
import { codesOf, given, LONG, nextRow, scarf } from '../../store/scenario.ts';
import { openEmptyApp } from '../open-app.ts';

/** A box with a scarf, into which a backup of another with two rows of it was read. */
async function readIn() {
  const { garment, plans } = scarf();
  const other = await openEmptyApp();
  given(await other.saveGarment(garment, plans));
  given(await nextRow(other, LONG));
  given(await nextRow(other, LONG));
  const { text } = given(await makeBackup());
  const store = await openEmptyApp();
  given(await store.saveGarment(garment, plans));
  wayBack.value = undefined;
  const read = await openFile(new Blob([text]));
  if (!read?.ok) throw new Error('not read');
  given(await takeIn(read.value.backup, 'merge'));
  await readWayBack();
  return store;
}

it('a backup that was taken in can be taken back, once', async () => {
  const store = await readIn();
  expect(wayBack.value).toMatchObject({ mode: 'merge', hidden: false });
  expect(given(await store.place(LONG)).rows).toBe(2);
  given(await takeItBack());
  expect(given(await store.place(LONG)).rows).toBe(0);
  expect(wayBack.value).toBeUndefined();
  expect(codesOf(await takeItBack())).toEqual(['no-way-back']);
});

it('that she leaves so can still be taken back where backups are; a newer backup ends that', async () => {
  await readIn();
  await leaveItSo();
  expect(wayBack.value).toMatchObject({ mode: 'merge', hidden: true });
  await endWayBack();
  expect(wayBack.value).toBeUndefined();
  expect(codesOf(await takeItBack())).toEqual(['no-way-back']);
});
