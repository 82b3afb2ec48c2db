import { describe, expect, it } from 'vitest';
import { codesOf, freshStore, given, LONG, nextRow, planOf, scarf } from '../scenario.ts';

describe('saving a garment', () => {
  it('makes a place for every part of every make', async () => {
    const store = await freshStore();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    expect(given(await store.placesOf('scarf')).map((p) => [p.id, p.rows, p.total])).toEqual([
      ['scarf/cuff/0/1', 0, 12],
      ['scarf/cuff/0/2', 0, 12],
      ['scarf/long/0/1', 0, 30],
    ]);
    expect(given(await store.list())).toEqual([
      {
        id: 'scarf',
        name: 'Moorland scarf',
        createdAt: 1000,
        changedAt: 1000,
        pieces: 2,
        makes: 3,
        rows: 54,
      },
    ]);
    expect(given(await store.garment('scarf'))).toEqual(garment);
  });

  it('writes nothing at all when one part has no plan', async () => {
    const store = await freshStore();
    const { garment, plans } = scarf();
    expect(codesOf(await store.saveGarment(garment, plans.slice(1)))).toEqual(['plan-missing']);
    expect(given(await store.list())).toEqual([]);
    expect(codesOf(await store.plan(planOf('scarf', 'cuff', 12).id))).toEqual(['no-such-plan']);
  });

  it('refuses ids that would not stand between slashes', async () => {
    const store = await freshStore();
    const { garment, plans } = scarf('a/b');
    expect(codesOf(await store.saveGarment(garment, plans))).toEqual(['not-storable']);
  });

  it('never changes the plan under a make that was begun, while the others move to the new one', async () => {
    const store = await freshStore();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    given(await nextRow(store, 'scarf/cuff/0/1'));
    given(
      await store.changeGarment('scarf', (was) => was, [
        planOf('scarf', 'long', 30),
        planOf('scarf', 'cuff', 16),
      ]),
    );
    expect(given(await store.placesOf('scarf')).map((p) => [p.id, p.plan, p.rows, p.total])).toEqual([
      ['scarf/cuff/0/1', planOf('scarf', 'cuff', 12).id, 1, 12],
      ['scarf/cuff/0/2', planOf('scarf', 'cuff', 16, 2).id, 0, 16],
      ['scarf/long/0/1', planOf('scarf', 'long', 30).id, 0, 30],
    ]);
    expect(given(await store.plan(planOf('scarf', 'cuff', 12).id)).plan.rows).toHaveLength(12);
  });

  it('keeps no version of a plan that nobody began', async () => {
    const store = await freshStore();
    const { garment } = scarf();
    given(await store.saveGarment(garment, [planOf('scarf', 'long', 30), planOf('scarf', 'cuff', 12)]));
    for (const rows of [32, 34])
      given(await store.changeGarment('scarf', (was) => was, [planOf('scarf', 'long', rows)]));
    expect(codesOf(await store.plan(planOf('scarf', 'long', 30).id))).toEqual(['no-such-plan']);
    expect(given(await store.plan(planOf('scarf', 'long', 34, 3).id)).plan.rows).toHaveLength(34);
  });

  it('brings the rows back when a piece that was taken out comes back', async () => {
    const store = await freshStore();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    for (let i = 0; i < 4; i += 1) given(await nextRow(store, LONG));
    const [long, cuff] = garment.pieces;
    given(await store.changeGarment('scarf', (was) => ({ ...was, pieces: cuff ? [cuff] : [] }), plans));
    expect(codesOf(await store.place(LONG))).toEqual(['no-such-make']);
    given(
      await store.changeGarment(
        'scarf',
        (was) => ({ ...was, pieces: long && cuff ? [long, cuff] : [] }),
        plans,
      ),
    );
    expect(given(await store.place(LONG))).toMatchObject({ rows: 4, seq: 4, total: 30 });
    expect(given(await nextRow(store, LONG)).place.rows).toBe(5);
  });
});

describe('deleting a garment', () => {
  it('takes everything of it and nothing of its neighbour', async () => {
    const store = await freshStore();
    for (const id of ['scarf', 'scarf2']) {
      const { garment, plans } = scarf(id);
      given(await store.saveGarment(garment, plans));
      given(await nextRow(store, `${id}/long/0/1` as const));
    }
    given(await store.deleteGarment('scarf'));
    expect(given(await store.list()).map((g) => g.id)).toEqual(['scarf2']);
    expect(given(await store.entriesOf(LONG))).toEqual([]);
    expect(given(await store.entriesOf('scarf2/long/0/1'))).toHaveLength(1);
    expect(given(await store.placesOf('scarf2'))).toHaveLength(3);
    expect(codesOf(await store.deleteGarment('scarf'))).toEqual(['no-such-garment']);
  });
});

describe('the row in hand', () => {
  it('is the make last tapped, also after the clock was set back', async () => {
    let now = 5_000_000;
    const store = await freshStore({ now: () => now });
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    given(await nextRow(store, LONG));
    now = 1_000_000;
    given(await nextRow(store, 'scarf/cuff/0/2'));
    expect(given(await store.latestPlaces(5)).map((p) => p.id)).toEqual(['scarf/cuff/0/2', LONG]);
    now = 9_000_000;
    given(await nextRow(store, LONG));
    const hand = given(await store.inHand());
    expect(hand.place.id).toBe(LONG);
    expect(hand.plan.plan.rows).toHaveLength(30);
    expect(hand.garment.name).toBe('Moorland scarf');
    expect(codesOf(await store.inHand('scarf/none/0/1'))).toEqual(['no-such-make']);
  });

  it('is nothing while nothing was begun', async () => {
    const store = await freshStore();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    expect(given(await store.latestPlaces(3))).toEqual([]);
    expect(codesOf(await store.inHand())).toEqual(['no-such-make']);
  });
});

describe('settings', () => {
  it('are kept by name', async () => {
    const store = await freshStore();
    given(await store.setSetting('hand', 'left'));
    expect(given(await store.settings())).toMatchObject({ hand: 'left' });
  });
});

describe('a list of many garments', () => {
  it('reads summaries alone', async () => {
    const store = await freshStore();
    for (let i = 0; i < 60; i += 1) {
      const { garment, plans } = scarf(`g${i}`, 2);
      given(await store.saveGarment(garment, plans));
    }
    const list = given(await store.list());
    expect(list).toHaveLength(60);
    expect(JSON.stringify(list).length).toBeLessThan(60 * 160);
  }, 30_000);
});
