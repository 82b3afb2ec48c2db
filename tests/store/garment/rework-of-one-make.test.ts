import { describe, expect, it } from 'vitest';
import { type PlanRecord, planIdOf } from '../../../src/store/records.ts';
import { codesOf, freshStore, given, nextRow, planOf, scarf, undoLast } from '../scenario.ts';

/** A plan that is one make's own: it says from which recipe. */
const own = (rows: number): PlanRecord => {
  const record = planOf('scarf', 'cuff', rows);
  const recipe = { name: 'Body', from: { castOn: 20 }, sections: [], end: 'bind off' as const };
  return { ...record, plan: { ...record.plan, recipe } };
};

describe('a rework of one make', () => {
  it('leaves the other makes on the plan that is for all, also when the garment is saved again', async () => {
    const store = await freshStore();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    given(await nextRow(store, 'scarf/cuff/0/1'));
    given(await store.rework([{ key: 'scarf/cuff/0/1', plan: own(14) }]));
    given(
      await store.changeGarment('scarf', (was) => ({
        ...was,
        notes: 'one is longer',
        pieces: [...was.pieces],
      })),
    );
    expect(given(await store.placesOf('scarf')).map((p) => [p.id, p.rows, p.total])).toEqual([
      ['scarf/cuff/0/1', 1, 14],
      ['scarf/cuff/0/2', 0, 12],
      ['scarf/long/0/1', 0, 30],
    ]);
  });

  it('is not taken for the newest plan when the same plan is saved once more', async () => {
    const store = await freshStore();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    given(await store.rework([{ key: 'scarf/cuff/0/1', plan: own(14) }]));
    given(await store.changeGarment('scarf', (was) => was, plans));
    const places = given(await store.placesOf('scarf'));
    expect(places.map((p) => p.plan)).toEqual([
      planIdOf({ ...own(14), version: 2 }),
      planOf('scarf', 'cuff', 12).id,
      planOf('scarf', 'long', 30).id,
    ]);
  });

  it('can be followed by another make, which can go back to the plan for all', async () => {
    const store = await freshStore();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    given(await store.rework([{ key: 'scarf/cuff/0/1', plan: own(14) }]));
    expect(given(await store.rework([{ key: 'scarf/cuff/0/2', plan: own(14) }]))[0]?.plan).toBe(
      planIdOf({ ...own(14), version: 2 }),
    );
    const back = given(await store.rework([{ key: 'scarf/cuff/0/2', plan: planOf('scarf', 'cuff', 12) }]))[0];
    expect(back).toMatchObject({ plan: planOf('scarf', 'cuff', 12).id, total: 12, rows: 0 });
  });

  it('is taken back where it is the first thing that was done with the make, and then there is nothing more', async () => {
    const CUFF = 'scarf/cuff/0/1';
    const store = await freshStore();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    const [reworked] = given(await store.rework([{ key: CUFF, plan: own(14), from: 0 }]));
    // the screen offers what can be taken back where anything was logged
    expect(reworked?.seq).toBeGreaterThan(0);
    given(await undoLast(store, CUFF));
    expect(given(await store.place(CUFF))).toMatchObject({
      plan: planOf('scarf', 'cuff', 12).id,
      rows: 0,
      total: 12,
    });
    expect(codesOf(await undoLast(store, CUFF))).toEqual(['nothing-to-undo']);
    given(await nextRow(store, CUFF));
    expect(given(await store.place(CUFF))).toMatchObject({ rows: 1, total: 12 });
  });

  it('is taken back with the rows that were knitted after it, one by one', async () => {
    const CUFF = 'scarf/cuff/0/1';
    const store = await freshStore();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    given(await store.rework([{ key: CUFF, plan: own(14), from: 0 }]));
    given(await nextRow(store, CUFF));
    given(await undoLast(store, CUFF));
    expect(given(await store.place(CUFF))).toMatchObject({ rows: 0, total: 14 });
    given(await undoLast(store, CUFF));
    expect(given(await store.place(CUFF))).toMatchObject({ rows: 0, total: 12 });
  });
});
