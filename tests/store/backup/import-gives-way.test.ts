import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import { clearAside } from '../../../src/store/backup/aside.ts';
import type { Backup } from '../../../src/store/backup/document.ts';
import { exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { mergeBackups } from '../../../src/store/backup/merge.ts';
import type { Box } from '../../../src/store/box/box.ts';
import { migrations } from '../../../src/store/box/schema.ts';
import { openStore, type Store } from '../../../src/store/store.ts';
import { recordDatabase, restoreDatabase } from '../box/recorded-database.ts';
import { knittedBox } from '../knitted-box.ts';
import { freshStore, given, LONG, nextName, nextRow, scarf } from '../scenario.ts';

/** A file of so many garments, each with some rows knitted. */
async function fileOf(garments: number): Promise<Backup> {
  const store = await freshStore();
  for (let n = 0; n < garments; n += 1) {
    const { garment, plans } = scarf(`shawl${n}`);
    given(await store.saveGarment(garment, plans));
    for (let i = 0; i < 4; i += 1) given(await nextRow(store, `shawl${n}/long/0/1` as const));
  }
  const file = given(await exportAll(store.box));
  store.close();
  return file;
}

/** The box, with something done as each of its writes is asked for; one that never answers is a page that was closed. */
const watched = (box: Box, asWritten: (n: number) => void, last = Number.POSITIVE_INFINITY): Box => {
  let n = 0;
  const write: Box['door']['write'] = (stores, work, pace) => {
    n += 1;
    const going = n > last ? new Promise<never>(() => {}) : box.door.write(stores, work, pace);
    asWritten(n);
    return going;
  };
  return { ...box, door: { ...box.door, write } };
};

const recorded = async ({ factory, name }: { factory: IDBFactory; name: string }) =>
  (await recordDatabase(factory, name)).stores;

async function boxLike(stores: Awaited<ReturnType<typeof recorded>>) {
  const factory = new IDBFactory();
  const name = nextName();
  await restoreDatabase(factory, name, { version: migrations.length, stores });
  return {
    ...given(await openStore({ factory: () => factory, name, now: () => 1_700_000_000_000 })),
    factory,
    name,
  };
}

async function reopened({ factory, name }: { factory: IDBFactory; name: string }): Promise<Store> {
  return given(await openStore({ factory: () => factory, name }));
}

describe('while a backup is read in', () => {
  it('a tap is answered before it ends, and what was knitted meanwhile stays', async () => {
    const file = await fileOf(40);
    for (const mode of ['merge', 'replace'] as const) {
      const store = await knittedBox();
      const mine = given(await exportAll(store.box));
      const all = mergeBackups(file, mine);
      const { rows } = given(await store.place(LONG));
      const ends: string[] = [];
      let tap: Promise<unknown> | undefined;
      const box = watched(store.box, () => {
        tap ??= store.finishRow(LONG, rows + 1).then((done) => ends.push(done.ok ? 'the tap' : 'refused'));
      });
      given(await importBackup(box, all, mode));
      ends.push('the import');
      await tap;
      expect(ends, mode).toEqual(['the tap', 'the import']);
      // united with the file, or as the file has it
      expect(given(await store.place(LONG)).rows).toBe(mode === 'merge' ? rows + 1 : rows);
      expect(given(await store.list())).toHaveLength(41);
      store.close();
    }
  });

  it('nothing of it is seen before its last write', async () => {
    const store = await knittedBox();
    const file = await fileOf(40);
    const seen: number[] = [];
    const saved: number[] = [];
    const looks: Promise<unknown>[] = [];
    const box = watched(store.box, () =>
      looks.push(
        store.list().then((list) => seen.push(given(list).length)),
        exportAll(store.box).then((all) => saved.push(given(all).garments.length)),
      ),
    );
    given(await importBackup(box, file, 'merge'));
    await Promise.all(looks);
    expect(new Set(saved)).toEqual(new Set([1, 41]));
    expect(new Set(seen.slice(0, -2))).toEqual(new Set([1]));
    expect(seen.length).toBeGreaterThan(4);
    store.close();
  });

  it('a page that is closed at any of its writes leaves the box as it was or as it would be, and nothing behind', async () => {
    const file = await fileOf(12);
    for (const mode of ['merge', 'replace'] as const) {
      const sound = await knittedBox();
      const before = await recorded(sound);
      let writes = 0;
      given(
        await importBackup(
          watched(sound.box, (n) => (writes = n)),
          file,
          mode,
        ),
      );
      const after = await recorded(sound);
      sound.close();
      expect(writes).toBeGreaterThan(2);
      for (let last = 0; last < writes; last += 1) {
        const cut = await boxLike(before);
        await new Promise<void>((resolve) => {
          const box = watched(cut.box, (n) => n > last && resolve(), last);
          void importBackup(box, file, mode);
        });
        cut.close();
        const next = await reopened(cut);
        given(await clearAside(next.box));
        expect([before, after]).toContainEqual(await recorded(cut));
        next.close();
      }
    }
  });
});
