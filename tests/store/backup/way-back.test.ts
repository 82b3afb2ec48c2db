import { describe, expect, it } from 'vitest';
import type { Backup } from '../../../src/store/backup/document.ts';
import { exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { wayBackIn } from '../../../src/store/backup/own-settings.ts';
import { forgetWayBack, takeBack } from '../../../src/store/backup/way-back.ts';
import type { PieceRecord } from '../../../src/store/records.ts';
import { openStore, type Store } from '../../../src/store/store.ts';
import { everything, knittedBox, places } from '../knitted-box.ts';
import { codesOf, freshStore, given, LONG, nextRow, planOf, scarf } from '../scenario.ts';

const CUFF = 'scarf/cuff/0/1';

/** A file with other rows, another garment, other notes and another setting; made from a box that went its own way. */
async function file(): Promise<Backup> {
  const store = await freshStore();
  const { garment, plans } = scarf();
  given(await store.saveGarment({ ...garment, notes: 'of the file' }, plans));
  for (let i = 0; i < 2; i += 1) given(await nextRow(store, LONG));
  const hat = scarf('hat');
  given(await store.saveGarment(hat.garment, hat.plans));
  given(await nextRow(store, 'hat/long/0/1'));
  given(await store.setSetting('hand', 'right'));
  return given(await exportAll(store.box));
}

const again = async ({ factory, name }: Awaited<ReturnType<typeof knittedBox>>): Promise<Store> =>
  given(await openStore({ factory: () => factory, name }));

const shown = async (store: Store) => wayBackIn(given(await store.settings()));

describe.each(['replace', 'merge'] as const)('the way back after a backup was read in with %s', (mode) => {
  it('gives the box as it was, also after a restart and from another window, once', async () => {
    const store = await knittedBox();
    const before = await everything(store);
    const rows = await places(store);
    given(await importBackup(store.box, await file(), mode));
    expect(await everything(store)).not.toEqual(before);
    store.close();
    const other = await again(store);
    // it is offered of itself until she says that it is not wanted
    expect(await shown(other)).toMatchObject({ mode, hidden: false });
    given(await takeBack(other.box));
    expect(await everything(other)).toEqual(before);
    expect(await places(other)).toEqual(rows);
    expect(await shown(other)).toBeUndefined();
    expect(codesOf(await takeBack(other.box))).toEqual(['no-way-back']);
    other.close();
  });

  it('leaves what was knitted, noted and made since, in any window', async () => {
    const store = await knittedBox();
    given(await importBackup(store.box, await file(), mode));
    const other = await again(store);
    const cuffBefore = given(await other.place(CUFF)).rows;
    given(await nextRow(other, CUFF));
    given(await other.append(CUFF, { kind: 'note', text: 'red since' }));
    // knitted on the garment that the file brought: it stays, with its rows
    given(await nextRow(other, 'hat/long/0/1'));
    const sock = scarf('sock');
    given(await store.saveGarment(sock.garment, sock.plans));
    given(await store.changeGarment('scarf', (was) => ({ ...was, ticked: ['blocked'] })));
    given(await store.setSetting('theme', 'dark'));
    const { kept } = given(await takeBack(store.box));
    expect(kept).toEqual(['Moorland scarf']);
    expect(given(await store.place(CUFF)).rows).toBe(cuffBefore + 1);
    expect(given(await store.entriesOf(CUFF)).map(({ text }) => text)).toContain('red since');
    expect(given(await store.place('hat/long/0/1')).rows).toBe(2);
    expect(given(await store.garment('sock')).name).toBe('Moorland scarf');
    const back = given(await store.garment('scarf'));
    expect(back.notes).toBe('for a windy beach');
    expect(back.ticked).toEqual(['blocked']);
    expect(given(await store.settings())).toMatchObject({ hand: 'left', theme: 'dark' });
    other.close();
  });

  it('does not bring back what she deleted since', async () => {
    const store = await knittedBox();
    given(await importBackup(store.box, await file(), mode));
    given(await store.deleteGarment('scarf'));
    given(await takeBack(store.box));
    expect(given(await store.list())).toEqual([]);
    expect(given(await store.entriesOf(LONG))).toEqual([]);
  });
});

describe('a garment that was replaced away', () => {
  it('comes back with its rows and photos, united with what was made under its name since', async () => {
    const store = await knittedBox();
    const rows = given(await store.place(LONG)).rows;
    const { garments: _, plans: __, entries: ___, photos: ____, ...rest } = await file();
    given(
      await importBackup(store.box, { ...rest, garments: [], plans: [], entries: [], photos: [] }, 'replace'),
    );
    expect(given(await store.list())).toEqual([]);
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    given(await nextRow(store, CUFF));
    given(await takeBack(store.box));
    expect(given(await store.place(LONG)).rows).toBe(rows);
    expect(given(await store.place(CUFF)).rows).toBe(1);
    expect(given(await exportAll(store.box)).photos).toHaveLength(1);
  });
});

describe('a piece that a backup brought', () => {
  it('stays when it was begun since, and goes when not', async () => {
    const store = await freshStore();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    const from = await freshStore();
    const [long] = garment.pieces as [PieceRecord];
    const hood = (id: string) => ({ id, recipe: { ...long.recipe, name: id } });
    given(
      await from.saveGarment(
        { ...garment, changedAt: 9000, pieces: [...garment.pieces, hood('hood'), hood('flap')] },
        [...plans, planOf('scarf', 'hood', 8), planOf('scarf', 'flap', 8)],
      ),
    );
    given(await importBackup(store.box, given(await exportAll(from.box)), 'merge'));
    given(await nextRow(store, 'scarf/hood/0/1'));
    given(await takeBack(store.box));
    expect(given(await store.garment('scarf')).pieces.map(({ id }) => id)).toEqual(['long', 'cuff', 'hood']);
    expect(given(await store.place('scarf/hood/0/1')).rows).toBe(1);
    expect(codesOf(await store.place('scarf/flap/0/1'))).toEqual(['no-such-make']);
  });
});

describe('the way back', () => {
  it('is kept until the next backup is read in, or until it is forgotten, and is in no backup', async () => {
    const store = await knittedBox();
    given(await importBackup(store.box, await file(), 'replace'));
    const first = await shown(store);
    expect(JSON.stringify(await everything(store))).not.toContain('way back');
    given(await importBackup(store.box, await file(), 'merge'));
    expect(await shown(store)).not.toEqual(first);
    given(await forgetWayBack(store.box));
    expect(await shown(store)).toBeUndefined();
  });
});
