import { describe, expect, it } from 'vitest';
import { exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { type GarmentRecord, type PlanRecord, planIdOf } from '../../../src/store/records.ts';
import type { Store } from '../../../src/store/store.ts';
import { freshStore, given, nextRow, planOf, scarf } from '../scenario.ts';

/** A make of which anything was knitted or noted is never taken out, whoever asks for fewer. */

const FOURTH = 'scarf/cuff/0/4';

const asking = (makes: number) => (was: GarmentRecord) => ({
  ...was,
  pieces: was.pieces.map((piece) =>
    piece.id === 'cuff' ? { ...piece, recipe: { ...piece.recipe, makes } } : piece,
  ),
});

const handOver = async (from: Store, to: Store) =>
  given(await importBackup(to.box, given(await exportAll(from.box)), 'merge'));

const makesOn = async (store: Store) =>
  given(await store.garment('scarf')).pieces.find(({ id }) => id === 'cuff')?.recipe.makes;

/** Two devices with the same scarf, whose cuff is to be made four times. */
async function withFourCuffs(): Promise<[Store, Store]> {
  const [phone, tablet] = [await freshStore({ keep: undefined }), await freshStore({ keep: undefined })];
  const { garment, plans } = scarf();
  given(await phone.saveGarment(asking(4)(garment), plans));
  await handOver(phone, tablet);
  return [phone, tablet];
}

describe('a make that one device began and the other has no more', () => {
  it('stays, with its row, on both; and so do as many makes as it is', async () => {
    const [phone, tablet] = await withFourCuffs();
    given(await nextRow(phone, FOURTH));
    given(await tablet.changeGarment('scarf', asking(2)));
    await handOver(tablet, phone);
    await handOver(phone, tablet);
    for (const store of [phone, tablet]) {
      expect(await makesOn(store)).toBe(4);
      expect(given(await store.place(FOURTH))).toMatchObject({ rows: 1, total: 12 });
      const backup = given(await exportAll(store.box));
      expect(given(readBackup(JSON.stringify(backup)))).toEqual(backup);
    }
  });

  it('is not asked for again where nobody began it', async () => {
    const [phone, tablet] = await withFourCuffs();
    given(await nextRow(phone, 'scarf/cuff/0/3'));
    given(await tablet.changeGarment('scarf', asking(2)));
    await handOver(phone, tablet);
    await handOver(tablet, phone);
    expect([await makesOn(phone), await makesOn(tablet)]).toEqual([3, 3]);
  });

  it('stays when only a note was made of it, and when a third device has neither', async () => {
    const [phone, tablet] = await withFourCuffs();
    const third = await freshStore({ keep: undefined });
    await handOver(phone, third);
    given(await phone.append(FOURTH, { kind: 'note', text: 'the blue yarn' }));
    given(await tablet.changeGarment('scarf', asking(1)));
    await handOver(tablet, third);
    await handOver(phone, third);
    expect(await makesOn(third)).toBe(4);
    await handOver(third, tablet);
    expect(given(await tablet.place(FOURTH)).rows).toBe(0);
    // saved once more on a device: nothing of it goes
    given(await tablet.changeGarment('scarf', (was) => ({ ...was, notes: 'dry flat' })));
    await handOver(tablet, phone);
    expect(await makesOn(phone)).toBe(4);
  });
});

describe('a part that one device began and the other has no more', () => {
  const withFlap = (was: GarmentRecord): GarmentRecord => ({
    ...was,
    pieces: was.pieces.map((piece) => {
      const [part] = piece.recipe.parts;
      if (piece.id !== 'long' || part === undefined) return piece;
      return { ...piece, recipe: { ...piece.recipe, parts: [part, { ...part, name: 'Flap' }] } };
    }),
  });
  const flapPlan = (): PlanRecord => {
    const plan = { ...planOf('scarf', 'long', 9), part: 1 };
    return { ...plan, id: planIdOf(plan) };
  };
  const FLAP = 'scarf/long/1/1';

  it('stays, and the piece is as it was when it was begun', async () => {
    const [phone, tablet] = [await freshStore({ keep: undefined }), await freshStore({ keep: undefined })];
    const { garment, plans } = scarf();
    given(await phone.saveGarment(withFlap(garment), [...plans, flapPlan()]));
    await handOver(phone, tablet);
    given(await nextRow(phone, FLAP));
    given(
      await tablet.changeGarment(
        'scarf',
        (was) => ({
          ...was,
          pieces: was.pieces.map((piece) => ({
            ...piece,
            recipe: { ...piece.recipe, parts: piece.recipe.parts.slice(0, 1) },
          })),
        }),
        [],
      ),
    );
    await handOver(tablet, phone);
    await handOver(phone, tablet);
    for (const store of [phone, tablet]) {
      expect(given(await store.place(FLAP))).toMatchObject({ rows: 1, total: 9 });
      given(await store.changeGarment('scarf', (was) => ({ ...was, notes: 'dry flat' })));
      expect(given(await store.place(FLAP))).toMatchObject({ rows: 1, total: 9 });
      const backup = given(await exportAll(store.box));
      expect(given(readBackup(JSON.stringify(backup)))).toEqual(backup);
    }
  });
});

describe('a piece that was begun in another window while this one saves it with fewer makes', () => {
  it('stays as it was', async () => {
    const store = await freshStore({ keep: undefined });
    const { garment, plans } = scarf();
    given(await store.saveGarment(asking(4)(garment), plans));
    given(await nextRow(store, FOURTH));
    given(await store.changeGarment('scarf', asking(2), [planOf('scarf', 'cuff', 8)]));
    expect(await makesOn(store)).toBe(4);
    expect(given(await store.place(FOURTH))).toMatchObject({ rows: 1, total: 12 });
    expect(given(await store.place('scarf/cuff/0/1'))).toMatchObject({ rows: 0, total: 12 });
  });
});
