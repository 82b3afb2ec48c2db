import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backupFile, exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { previewImport } from '../../../src/store/backup/preview.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { takeBack } from '../../../src/store/backup/way-back.ts';
import { photosOf } from '../../../src/store/garment/photos.ts';
import { everything, knittedBox, places } from '../knitted-box.ts';
import { knittableGarment, spelledOut } from '../knitted-garment.ts';
import { codesOf, freshStore, given, LONG, nextRow, scarf, undoLast } from '../scenario.ts';

const schema = JSON.parse(
  readFileSync(new URL('../../../public/backup.schema.json', import.meta.url), 'utf8'),
);
const asSchemaSays = new Ajv2020({ strict: true, strictTypes: false }).compile(schema);

describe('a backup', () => {
  it('brings everything back into an empty box', async () => {
    const store = await knittedBox();
    const { text, garments, entries } = given(await backupFile(store.box));
    expect([garments, entries]).toEqual([1, 14]);
    const other = await freshStore();
    given(await importBackup(other.box, given(readBackup(text)), 'replace'));
    expect(await everything(other)).toEqual(await everything(store));
    expect(await places(other)).toEqual(await places(store));
    expect(given(await other.list())).toEqual(given(await store.list()));
    expect(given(await other.inHand(LONG)).place).toMatchObject({ rows: 5, total: 26 });
  });

  it('brings the pictures back byte for byte', async () => {
    const store = await knittedBox();
    const other = await freshStore();
    given(await importBackup(other.box, given(await exportAll(store.box)), 'merge'));
    const [was] = given(await photosOf(store.box, 'scarf'));
    const [is] = given(await photosOf(other.box, 'scarf'));
    expect(is).toMatchObject({ id: was?.id, caption: 'the first hand of rows' });
    expect(is?.image.type).toBe('image/png');
    expect(await is?.image.arrayBuffer()).toEqual(await was?.image.arrayBuffer());
  });

  it('is as the published schema says', async () => {
    const store = await knittedBox();
    const { text } = given(await backupFile(store.box));
    expect(asSchemaSays(JSON.parse(text)), JSON.stringify(asSchemaSays.errors)).toBe(true);
    expect(asSchemaSays({ ...JSON.parse(text), version: 3 })).toBe(false);
    expect(asSchemaSays({ ...JSON.parse(text), more: 1 })).toBe(false);
  });

  it('too large to be made in one go has every entry once', async () => {
    const store = await freshStore();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    // 40 notes of 19,000 letters: more than two goes of 300,000
    const texts = Array.from({ length: 40 }, (_, i) => `${i} ${'m'.repeat(19_000)}`);
    for (const text of texts) given(await store.append(LONG, { kind: 'note', text }));
    const { entries } = JSON.parse(given(await backupFile(store.box)).text);
    const inOrder = entries.sort((a: { seq: number }, b: { seq: number }) => a.seq - b.seq);
    expect(inOrder.map(({ text }: { text: string }) => text)).toEqual(texts);
  });

  it('of any garment that can be knitted reads back the same, and is as the schema says', async () => {
    await fc.assert(
      fc.asyncProperty(knittableGarment(), async (any) => {
        const store = await freshStore({ now: () => 5000 });
        const { garment, plans } = spelledOut('any', any);
        given(await store.saveGarment(garment, plans));
        const { text } = given(await backupFile(store.box));
        expect(asSchemaSays(JSON.parse(text)), JSON.stringify(asSchemaSays.errors)).toBe(true);
        expect(given(readBackup(text))).toEqual(given(await exportAll(store.box)));
        store.close();
      }),
      { numRuns: 20, endOnFailure: true },
    );
  }, 90_000);

  it('dates itself only once it was put away', async () => {
    const store = await knittedBox();
    const file = given(await backupFile(store.box));
    expect(file.name).toBe('backup-2023-11-14.ridgeline.json');
    file.kept();
    // where the browser keeps nothing small, there is nothing to date
    expect(store.sinceBackup().backupAt).toBe(0);
  });
});

describe('reading a backup in', () => {
  it('by merging adds what is missing and takes nothing away', async () => {
    const store = await knittedBox();
    const file = given(await exportAll(store.box));
    for (let i = 0; i < 3; i += 1) given(await nextRow(store, LONG));
    const before = await everything(store);
    const { garment, plans } = scarf('shawl');
    const other = await freshStore();
    given(await other.saveGarment(garment, plans));
    given(await importBackup(store.box, file, 'merge'));
    expect(await everything(store)).toEqual(before);
    given(await importBackup(store.box, given(await exportAll(other.box)), 'merge'));
    expect(
      given(await store.list())
        .map((one) => one.id)
        .sort(),
    ).toEqual(['scarf', 'shawl']);
    expect(given(await store.place(LONG)).rows).toBe(8);
  });

  it('by replacing leaves what the file holds and nothing else, and can be taken back', async () => {
    const store = await knittedBox();
    const before = await everything(store);
    const other = await freshStore();
    const { garment, plans } = scarf('shawl');
    given(await other.saveGarment(garment, plans));
    given(await importBackup(store.box, given(await exportAll(other.box)), 'replace'));
    expect(await everything(store)).toEqual(await everything(other));
    expect(codesOf(await store.place(LONG))).toEqual(['no-such-make']);
    given(await takeBack(store.box));
    expect(await everything(store)).toEqual(before);
    expect(given(await store.place(LONG)).rows).toBe(5);
  });

  it('goes on counting where the log ends, so that a tap afterwards is the newest', async () => {
    const store = await knittedBox();
    const other = await freshStore();
    given(await importBackup(other.box, given(await exportAll(store.box)), 'merge'));
    const seq = given(await other.place(LONG)).seq;
    expect(given(await nextRow(other, LONG)).place).toMatchObject({ rows: 6, seq: seq + 1 });
    expect(given(await undoLast(other, LONG)).place.rows).toBe(5);
    expect(given(await undoLast(other, LONG)).place.rows).toBe(4);
  });

  it('tells beforehand what would change, and changes nothing by telling', async () => {
    const tablet = await knittedBox();
    const phone = await freshStore();
    given(await importBackup(phone.box, given(await exportAll(tablet.box)), 'merge'));
    for (let i = 0; i < 6; i += 1) given(await nextRow(tablet, LONG));
    const before = await everything(phone);
    const told = given(await previewImport(phone.box, given(await exportAll(tablet.box)), 'merge'));
    expect(told).toEqual({
      garments: [
        {
          id: 'scarf',
          name: 'Moorland scarf',
          kind: 'changed',
          entriesIn: 6,
          entriesOut: 0,
          recipe: false,
          makes: [
            { key: LONG, piece: 'Scarf', part: 'Body', make: 1, makes: 1, here: 5, there: 11, after: 11 },
          ],
        },
      ],
      same: 0,
      photos: 0,
    });
    expect(await everything(phone)).toEqual(before);
    const imported = given(await importBackup(phone.box, given(await exportAll(tablet.box)), 'merge'));
    expect(imported.changed).toEqual(told);
    expect(given(await phone.place(LONG)).rows).toBe(11);
  });
});
