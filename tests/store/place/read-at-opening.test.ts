import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import { journalIn } from '../../../src/store/place/journal.ts';
import { openStore, type Store, type StoreOptions } from '../../../src/store/store.ts';
import { memoryKeep } from '../beside/memory-keep.ts';
import { codesOf, given, LONG, nextName, nextRow, planOf, scarf } from '../scenario.ts';

/** A factory that counts the read transactions made over it. */
function countedFactory(sound: IDBFactory) {
  const made = { reads: 0 };
  const factory = new (class extends IDBFactory {
    override open(name: string, version?: number) {
      const request = sound.open(name, version);
      request.addEventListener('success', () => {
        const db = request.result;
        const real = db.transaction.bind(db);
        db.transaction = ((...args: Parameters<typeof real>) => {
          if (args[1] === 'readonly') made.reads += 1;
          return real(...args);
        }) as typeof db.transaction;
      });
      return request;
    }
  })();
  return { factory, made };
}

/** A box with a scarf in it, and the way to open it again as a window does that starts. */
async function phone() {
  const { factory, made } = countedFactory(new IDBFactory());
  const keep = memoryKeep();
  const name = nextName();
  const open = async (more: Partial<StoreOptions> = {}): Promise<Store> =>
    given(
      await openStore({ name, keep, factory: () => factory, spareFactory: async () => undefined, ...more }),
    );
  const store = await open();
  const { garment, plans } = scarf();
  given(await store.saveGarment(garment, plans));
  given(await nextRow(store, LONG));
  return { store, open, made, keep, name };
}

const second = 'scarf/cuff/0/2' as const;

describe('what a start asks for first', () => {
  it.each([
    ['by its key', LONG],
    ['as the last one knitted', undefined],
  ])('is read with the opening, %s', async (_, make) => {
    const { open, made } = await phone();
    const before = made.reads;
    const store = await open({ first: { make } });
    const found = given(await store.inHand(make));
    expect(found.place).toMatchObject({ id: LONG, rows: 1 });
    expect(found.plan.id).toBe(found.place.plan);
    expect(found.garment.id).toBe('scarf');
    expect(made.reads - before).toBe(1);
  });

  it('is the same whatever was seen last: the guess is never trusted', async () => {
    for (const seen of [LONG, second, 'gone/back/0/1'] as const) {
      const { open, store } = await phone();
      await store.inHand(seen);
      for (const make of [LONG, second]) {
        const asked = await open({ first: { make } });
        const anew = await open();
        expect(given(await asked.inHand(make))).toEqual(given(await anew.inHand(make)));
      }
    }
  });

  it('has the new plan of a make that was reworked in another window since it was seen', async () => {
    const { open, store } = await phone();
    given(await store.inHand(LONG));
    const other = await open();
    given(await other.rework([{ key: LONG, plan: planOf('scarf', 'long', 26) }]));
    const again = await open({ first: { make: LONG } });
    expect(given(await again.inHand(LONG)).plan.plan.rows).toHaveLength(26);
  });

  it('is read anew once anything has changed', async () => {
    const { open } = await phone();
    const store = await open({ first: { make: LONG } });
    given(await nextRow(store, LONG));
    expect(given(await store.inHand(LONG)).place.rows).toBe(2);
  });

  it('is read anew when the window has slept: another may have knitted', async () => {
    const { open, store: other } = await phone();
    const store = await open({ first: { make: LONG } });
    given(await nextRow(other, LONG));
    given(await store.probe());
    expect(given(await store.inHand(LONG)).place.rows).toBe(2);
  });

  it('has what was held outside the box worked in', async () => {
    const { open, store, keep, name } = await phone();
    const { place } = given(await store.inHand(LONG));
    const wish = { id: 'held-1', make: LONG, at: place.at + 1, kind: 'row' } as const;
    expect(journalIn(keep, name).hold(wish, place)).toMatchObject({ rows: 2 });
    const again = await open({ first: { make: LONG } });
    expect(given(await again.inHand(LONG)).place).toMatchObject({ rows: 2, seq: 2 });
  });

  it('says of a make that is not there what it always says, and opens all the same', async () => {
    const { open } = await phone();
    const store = await open({ first: { make: 'gone/back/0/1' } });
    expect(codesOf(await store.inHand('gone/back/0/1'))).toEqual(['no-such-make']);
    expect(given(await store.list())).toHaveLength(1);
    expect(store.missing()).toBeUndefined();
  });

  it('opens an empty box, and one whose garments are gone is still noticed', async () => {
    const keep = memoryKeep();
    const empty = async () =>
      given(
        await openStore({
          name: 'seldom',
          keep,
          first: {},
          factory: () => new IDBFactory(),
          spareFactory: async () => undefined,
        }),
      );
    const fresh = await empty();
    expect(codesOf(await fresh.inHand())).toEqual(['no-such-make']);
    expect(fresh.missing()).toBeUndefined();
    const { garment, plans } = scarf();
    given(await fresh.saveGarment(garment, plans));
    expect((await empty()).missing()).toMatchObject({ garments: 1 });
  });
});
