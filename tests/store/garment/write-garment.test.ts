import { describe, expect, it } from 'vitest';
import { storeNames } from '../../../src/store/box/schema.ts';
import { deleteGarment } from '../../../src/store/garment/garment-calls.ts';
import { addPhoto } from '../../../src/store/garment/photos.ts';
import { summaryOf } from '../../../src/store/garment/write-garment.ts';
import type { Store } from '../../../src/store/store.ts';
import { dot } from '../knitted-box.ts';
import { codesOf, freshStore, given, LONG, nextRow, planOf, scarf } from '../scenario.ts';

/** Everything that lies in the box of each kind. */
const lying = async (store: Store) =>
  given(
    await store.box.door.read(storeNames, async (tx) => {
      const all: Record<string, readonly unknown[]> = {};
      for (const name of storeNames) all[name] = await tx.objectStore(name).getAll();
      return all;
    }),
  );

const kept = async (store: Store, id: 'scarf' | 'scarf2') => {
  const { garment, plans } = scarf(id);
  given(await store.saveGarment(garment, plans));
  given(await nextRow(store, `${id}/long/0/1` as const));
  given(await addPhoto(store.box, id, dot()));
};

const planIds = async (store: Store) => ((await lying(store)).plans as { id: string }[]).map(({ id }) => id);

describe('a garment that is deleted', () => {
  it('leaves nothing of itself behind, and all of any other', async () => {
    const store = await freshStore({ keep: undefined });
    await kept(store, 'scarf2');
    const before = await lying(store);
    await kept(store, 'scarf');
    given(await deleteGarment(store.box, 'scarf'));
    expect(await lying(store)).toEqual(before);
    expect(codesOf(await deleteGarment(store.box, 'scarf'))).toEqual(['no-such-garment']);
    store.close();
  });
});

describe('plans that no make was begun on', () => {
  it('stay with a piece that is taken out, which comes back as it was', async () => {
    const store = await freshStore({ keep: undefined });
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    const without = (id: string) => garment.pieces.filter((piece) => piece.id !== id);
    given(await store.changeGarment('scarf', (was) => ({ ...was, pieces: without('cuff') })));
    expect(await planIds(store)).toContain(planOf('scarf', 'cuff', 12).id);
    given(await store.changeGarment('scarf', (was) => ({ ...was, pieces: garment.pieces })));
    expect(given(await store.place('scarf/cuff/0/1')).total).toBe(12);
    store.close();
  });

  it('go when a newer one stands, and stay where a make was begun on them', async () => {
    const store = await freshStore({ keep: undefined });
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    const longer = async (rows: number) =>
      given(
        await store.changeGarment('scarf', (was) => ({ ...was, pieces: [...was.pieces] }), [
          planOf('scarf', 'long', rows),
        ]),
      );
    await longer(40);
    expect((await planIds(store)).filter((id) => id.includes('/long/'))).toEqual([
      planOf('scarf', 'long', 40, 2).id,
    ]);
    given(await nextRow(store, LONG));
    await longer(50);
    expect((await planIds(store)).filter((id) => id.includes('/long/'))).toEqual([
      planOf('scarf', 'long', 40, 2).id,
      planOf('scarf', 'long', 50, 3).id,
    ]);
    expect(given(await store.place(LONG))).toMatchObject({ rows: 1, total: 40 });
    store.close();
  });
});

describe('the plan that a make was begun on', () => {
  it('stays also where its rows do not name it, as those of the first databases did not', async () => {
    const store = await freshStore({ keep: undefined });
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    given(await nextRow(store, LONG));
    given(
      await store.box.door.write(['log'], async (tx) => {
        const log = tx.objectStore('log');
        for (const { plan: _unnamed, ...entry } of await log.getAll()) await log.put(entry);
      }),
    );
    for (const rows of [40, 50])
      given(await store.changeGarment('scarf', (was) => ({ ...was }), [planOf('scarf', 'long', rows)]));
    expect((await planIds(store)).filter((id) => id.includes('/long/'))).toEqual([
      planOf('scarf', 'long', 30).id,
      planOf('scarf', 'long', 50, 3).id,
    ]);
    expect(given(await store.place(LONG))).toMatchObject({ rows: 1, total: 30 });
    store.close();
  });
});

describe('what a list shows of a garment', () => {
  it('is its pieces, its makes, and the rows of all of them', () => {
    const { garment } = scarf();
    const place = { total: 12 } as never;
    expect(summaryOf({ ...garment, changedAt: 1700 }, [place, place, { total: 30 } as never])).toEqual({
      id: 'scarf',
      name: 'Moorland scarf',
      createdAt: 1000,
      changedAt: 1700,
      pieces: 2,
      makes: 3,
      rows: 54,
    });
  });
});

describe('a rework to another row', () => {
  it('has as many rows worked as it says', async () => {
    const store = await freshStore({ keep: undefined });
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    for (let i = 0; i < 5; i += 1) given(await nextRow(store, LONG));
    const plan = planOf('scarf', 'long', 26);
    expect(given(await store.rework([{ key: LONG, plan, from: 5, rows: 3 }]))[0]).toMatchObject({
      rows: 3,
      total: 26,
    });
    // the same rework of what is so already is no change
    const again = given(await store.rework([{ key: LONG, plan, from: 3, rows: 3 }]))[0];
    expect(again).toEqual(given(await store.place(LONG)));
    expect(given(await store.entriesOf(LONG)).filter(({ kind }) => kind === 'rework')).toHaveLength(1);
    store.close();
  });
});

describe('a garment that is saved a second time', () => {
  it('as it is stored gives its places; as another it is refused, and stays', async () => {
    const store = await freshStore({ keep: undefined });
    const { garment, plans } = scarf();
    const places = given(await store.saveGarment(garment, plans));
    const stored = given(await store.garment('scarf'));
    const again = given(await store.saveGarment(stored, plans));
    expect(again.map(({ id }) => id).sort()).toEqual(places.map(({ id }) => id).sort());
    expect(codesOf(await store.saveGarment({ ...stored, name: 'Hat' }, plans))).toEqual(['garment-there']);
    expect(given(await store.garment('scarf'))).toEqual(stored);
    store.close();
  });
});
