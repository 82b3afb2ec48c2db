import { readdirSync, readFileSync } from 'node:fs';
import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import { BACKUP_VERSION } from '../../../src/store/backup/document.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { migrations, newestVersion } from '../../../src/store/box/schema.ts';
import { openStore, type Store } from '../../../src/store/store.ts';
import { everything } from '../knitted-box.ts';
import { codesOf, freshStore, given, LONG, nextName, nextRow, undoLast } from '../scenario.ts';
import { type RecordedDatabase, recordDatabase, restoreDatabase } from './recorded-database.ts';

const golden = new URL('../golden/', import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, golden), 'utf8');
const versionsOf = (kind: string): number[] =>
  readdirSync(golden)
    .flatMap((name) => name.match(new RegExp(`^${kind}-v(\\d+)\\.json$`))?.[1] ?? [])
    .map(Number)
    .sort((a, b) => a - b);

/** The knitting that every recorded file tells of. */
async function tellsTheScarf(store: Store): Promise<void> {
  const garment = given(await store.garment('scarf'));
  expect(garment).toMatchObject({ name: 'Moorland scarf', notes: 'for a windy beach', ticked: ['weave in'] });
  expect(given(await store.place(LONG))).toMatchObject({
    rows: 5,
    total: 26,
    seq: 13,
    // older ones bear a number only, newer ones also what they say
    plan: expect.stringMatching(/^scarf\/long\/0\/s\/2(-\w+)?$/),
  });
  expect(given(await store.place('scarf/cuff/0/2'))).toMatchObject({ rows: 1, total: 12 });
  expect(given(await store.place('scarf/cuff/0/1'))).toMatchObject({ rows: 0, seq: 0 });
  const kinds = given(await store.entriesOf(LONG)).map((entry) => entry.kind);
  expect(kinds.slice(5)).toEqual(['row', 'undo', 'check', 'note', 'lifeline', 'rip back', 'rework', 'row']);
  expect(given(await store.settings())).toMatchObject({ hand: 'left' });
  expect(given(await nextRow(store, LONG)).place.rows).toBe(6);
  expect(given(await undoLast(store, LONG)).place.rows).toBe(5);
}

describe('backups of every version', () => {
  it('are kept, one for each', () => {
    expect(versionsOf('backup')).toEqual(Array.from({ length: BACKUP_VERSION }, (_, i) => i + 1));
  });

  for (const version of versionsOf('backup')) {
    it(`version ${version} is read in as it was`, async () => {
      const store = await freshStore();
      given(await importBackup(store.box, given(readBackup(read(`backup-v${version}.json`))), 'replace'));
      await tellsTheScarf(store);
    });
  }
});

describe('databases of every version before this one', () => {
  it('are kept, one for each', () => {
    expect(versionsOf('database')).toEqual(
      Array.from({ length: newestVersion(migrations) - 1 }, (_, i) => i + 1),
    );
  });

  for (const version of versionsOf('database')) {
    const recorded = JSON.parse(read(`database-v${version}.json`)) as RecordedDatabase;

    it(`version ${version} opens with its garments, and knits on`, async () => {
      const factory = new IDBFactory();
      const name = nextName();
      await restoreDatabase(factory, name, recorded);
      await tellsTheScarf(given(await openStore({ name, factory: () => factory })));
    });

    it(`version ${version} is the same as before when bringing it up to date fails`, async () => {
      const factory = new IDBFactory();
      const name = nextName();
      await restoreDatabase(factory, name, recorded);
      const failing = [
        ...migrations,
        { to: migrations.length + 1, run: () => Promise.reject(new Error('planted')) },
      ];
      const opened = await openStore({ name, factory: () => factory, migrations: failing, pauseMs: 0 });
      expect(codesOf(opened)).toEqual(['migration-failed']);
      expect(await recordDatabase(factory, name)).toEqual(recorded);
      const mended = given(await openStore({ name, factory: () => factory }));
      await tellsTheScarf(mended);
      expect((await everything(mended)).garments).toHaveLength(1);
    });
  }

  it('are numbered without a gap', () => {
    const one = { to: 1, run: () => undefined };
    expect(newestVersion([one, { ...one, to: 2 }])).toBe(2);
    expect(() => newestVersion([one, { ...one, to: 3 }])).toThrow('version 3');
  });
});
