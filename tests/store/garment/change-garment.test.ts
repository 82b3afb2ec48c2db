import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { GarmentRecord } from '../../../src/store/records.ts';
import { openStore, type Store } from '../../../src/store/store.ts';
import { codesOf, freshStore, given, nextName, planOf, scarf } from '../scenario.ts';

const WINDOWS = 3;

/** A change that leaves a mark of its own, and how that mark is found. */
interface Change {
  readonly name: string;
  readonly make: (store: Store, mark: string) => Promise<unknown>;
  readonly isIn: (garment: GarmentRecord, mark: string) => boolean;
}

const through =
  (change: (garment: GarmentRecord, mark: string) => GarmentRecord): Change['make'] =>
  async (store, mark) =>
    given(await store.changeGarment('scarf', (garment) => change(garment, mark)));

const changes: readonly Change[] = [
  {
    name: 'a tick',
    make: through((garment, mark) => ({ ...garment, ticked: [...(garment.ticked ?? []), mark] })),
    isIn: (garment, mark) => garment.ticked?.includes(mark) === true,
  },
  {
    name: 'a line of notes',
    make: through((garment, mark) => ({ ...garment, notes: `${garment.notes ?? ''}\n${mark}` })),
    isIn: (garment, mark) => garment.notes?.split('\n').includes(mark) === true,
  },
  {
    name: 'a weighed piece',
    make: through((garment, mark) => ({
      ...garment,
      taken: [...(garment.taken ?? []), { piece: mark, make: 1, grams: 50 }],
    })),
    isIn: (garment, mark) => garment.taken?.some(({ piece }) => piece === mark) === true,
  },
  {
    name: 'a stripe',
    make: through((garment, mark) => ({
      ...garment,
      stripes: [...(garment.stripes ?? []), { colour: mark, rows: 2 }],
    })),
    isIn: (garment, mark) => garment.stripes?.some(({ colour }) => colour === mark) === true,
  },
  {
    name: 'a new piece with its plan',
    make: async (store, mark) => {
      const plan = planOf('scarf', mark, 8);
      given(
        await store.changeGarment(
          'scarf',
          (garment) => {
            const [like] = garment.pieces;
            return like ? { ...garment, pieces: [...garment.pieces, { ...like, id: mark }] } : garment;
          },
          [plan],
        ),
      );
    },
    isIn: (garment, mark) => garment.pieces.some(({ id }) => id === mark),
  },
  {
    name: 'a rework with a new recipe',
    make: async (store, mark) => {
      const { garment } = scarf();
      const [cuff] = garment.pieces.slice(1);
      if (!cuff) return;
      const part = { ...planOf('scarf', 'cuff', 14).plan, name: mark };
      given(
        await store.rework([
          {
            key: 'scarf/cuff/0/1',
            plan: { ...planOf('scarf', 'cuff', 14), plan: part },
            recipe: { ...cuff.recipe, name: mark },
          },
        ]),
      );
    },
    // the next rework gives the piece another recipe: that is no loss
    isIn: () => true,
  },
];

const wish = fc.record({
  change: fc.nat(changes.length - 1),
  window: fc.nat(WINDOWS - 1),
  /** asked for before the answer to the one before it is there */
  overlaps: fc.boolean(),
});

/** RIDGELINE_HISTORIES=60 for the whole of it; a part of it in every run. */
const RUNS = Number(process.env.RIDGELINE_HISTORIES ?? 24);

describe('changes of a garment', () => {
  it('from any windows, in any order, at once or one after the other: none is lost', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(wish, { minLength: 2, maxLength: 24 }), async (wishes) => {
        const factory = new IDBFactory();
        const name = nextName();
        const windows: Store[] = [];
        for (let i = 0; i < WINDOWS; i += 1)
          windows.push(given(await openStore({ name, factory: () => factory, keep: undefined })));
        const [store] = windows as [Store];
        const { garment, plans } = scarf();
        given(await store.saveGarment(garment, plans));
        const going: Promise<unknown>[] = [];
        for (const [i, { change, window, overlaps }] of wishes.entries()) {
          if (!overlaps) await Promise.all(going);
          going.push((changes[change] as Change).make(windows[window] as Store, `mark${i}`));
        }
        await Promise.all(going);
        const stored = given(await store.garment('scarf'));
        const lost = wishes.flatMap(({ change }, i) => {
          const made = changes[change] as Change;
          return made.isIn(stored, `mark${i}`) ? [] : [`${made.name} ${i}`];
        });
        expect(lost).toEqual([]);
        expect(stored.createdAt).toBe(garment.createdAt);
        const [summary] = given(await store.list());
        expect(summary).toMatchObject({ pieces: stored.pieces.length, changedAt: stored.changedAt });
        for (const window of windows) window.close();
      }),
      { seed: 20260513, numRuns: RUNS },
    );
  }, 60_000);

  it('that make no sense change nothing: no such garment, what no backup could bring back, a change that fails', async () => {
    const store = await freshStore();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    expect(codesOf(await store.changeGarment('hat', (it) => it))).toEqual(['no-such-garment']);
    const odd = await store.changeGarment('scarf', (it) => ({ ...it, name: 7 as never }));
    expect(codesOf(odd)).toEqual(['not-storable']);
    const fails = await store.changeGarment('scarf', () => {
      throw new Error('a slip');
    });
    expect(codesOf(fails)).toEqual(['not-storable']);
    expect(given(await store.garment('scarf'))).toEqual(garment);
  });

  it('cannot give it another id or another beginning, and are always later than the one before', async () => {
    const store = await freshStore({ now: () => 500 });
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    const changed = given(
      await store.changeGarment('scarf', (it) => ({
        ...it,
        id: 'hat',
        createdAt: 1,
        changedAt: 1,
        name: 'Hat',
      })),
    );
    expect(changed).toMatchObject({ id: 'scarf', createdAt: 1000, changedAt: 1001, name: 'Hat' });
    expect(given(await store.garment('scarf'))).toEqual(changed);
  });
});
