import { IDBFactory } from 'fake-indexeddb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { openStore, type Store, type StoreOptions } from '../../../src/store/store.ts';
import { memoryKeep } from '../beside/memory-keep.ts';
import { codesOf, given, LONG, nextName, nextRow, scarf, undoLast } from '../scenario.ts';
import { FDBRequestLike } from './fake-inside.ts';
import { FaultyFactory, fuse, type Mishap } from './faulty-factory.ts';

/** A box with a scarf in it, whose storage can be told to fail at its next steps. */
async function box(more: StoreOptions = {}) {
  const wire = fuse();
  const keep = memoryKeep();
  const factory = new FaultyFactory(new IDBFactory(), wire);
  const store: Store = given(
    await openStore({
      name: nextName(),
      keep,
      pauseMs: 0,
      spareFactory: async () => undefined,
      factory: () => factory,
      ...more,
    }),
  );
  const { garment, plans } = scarf();
  given(await store.saveGarment(garment, plans));
  const failAt = (step: number, mishap: Mishap, lasting: boolean) =>
    Object.assign(wire, { at: wire.step + step, mishap, lasting, blown: 0 });
  return { store, keep, failAt, wire, heal: () => Object.assign(wire, { at: undefined }) };
}

describe('a change whose answer was lost', () => {
  it('is made once, wherever it was cut off', async () => {
    let [step, isCut] = [0, true];
    while (isCut) {
      step += 1;
      const { store, failAt, wire, heal } = await box();
      failAt(step, 'is closed by the browser', false);
      const changed = given(
        await store.changeGarment('scarf', (garment) => ({ ...garment, notes: `${garment.notes ?? ''}!` })),
      );
      isCut = wire.blown > 0;
      heal();
      expect(changed.notes, `step ${step}`).toBe('!');
      expect(given(await store.garment('scarf')).notes, `step ${step}`).toBe('!');
      store.close();
    }
    // begun, read, written and ended: each of its steps was cut off once
    expect(step).toBeGreaterThan(5);
  });
});

describe('a change that was written, and nobody was told', () => {
  it('is not made once more', async () => {
    const change = async (store: Store) =>
      given(
        await store.changeGarment('scarf', (garment) => ({ ...garment, notes: `${garment.notes ?? ''}!` })),
      ).notes;
    const sound = await box();
    const before = sound.wire.step;
    await change(sound.store);
    // its last step is the answer that it is written
    const steps = sound.wire.step - before;
    const { store, failAt, wire, heal } = await box({ patienceMs: 300 });
    failAt(steps, 'never answers', false);
    expect(await change(store)).toBe('!');
    expect(wire.blown).toBe(1);
    heal();
    expect(given(await store.garment('scarf')).notes).toBe('!');
  });
});

describe('a row of which nobody could say whether it was written', () => {
  it('is one with its retry, and another one when it is knitted again later', async () => {
    const { store, keep, failAt, heal } = await box();
    given(await nextRow(store, LONG));
    keep.full = true;
    failAt(1, 'throws', true);
    expect(codesOf(await store.finishRow(LONG, 2))).toEqual(['store-not-answering']);
    heal();
    expect(given(await store.finishRow(LONG, 2)).place.rows).toBe(2);
    expect(given(await undoLast(store, LONG)).place.rows).toBe(1);
    // knitted once more after it was taken back: a row of its own, not the retry of the first
    expect(given(await store.finishRow(LONG, 2)).place.rows).toBe(2);
    const entries = given(await store.entriesOf(LONG));
    expect(entries.map(({ kind, row }) => `${kind} ${row}`)).toEqual(['row 1', 'row 2', 'undo 1', 'row 2']);
    expect(new Set(entries.map(({ id }) => id)).size).toBe(4);
  });

  it('is not taken for one of another kind, or of another row', async () => {
    const { store, keep, failAt, heal } = await box();
    given(await nextRow(store, LONG));
    keep.full = true;
    failAt(1, 'throws', true);
    expect(codesOf(await store.goTo(LONG, 9, 'place'))).toEqual(['store-not-answering']);
    heal();
    expect(given(await store.goTo(LONG, 7, 'place')).place.rows).toBe(7);
    expect(given(await store.goTo(LONG, 9, 'place')).place.rows).toBe(9);
    expect(given(await store.entriesOf(LONG)).map(({ row }) => row)).toEqual([1, 7, 9]);
  });
});

describe('a box that gives no answer', () => {
  afterEach(() => {
    vi.useRealTimers();
  });

  it('is asked anew after eight seconds, four times in all', async () => {
    vi.useFakeTimers();
    let opened = 0;
    const dead = {
      open: () => {
        opened += 1;
        return FDBRequestLike();
      },
    } as unknown as IDBFactory;
    const going = openStore({
      name: nextName(),
      keep: undefined,
      pauseMs: 0,
      spareFactory: async () => undefined,
      factory: () => dead,
    });
    const after = async (ms: number) => {
      await vi.advanceTimersByTimeAsync(ms);
      return opened;
    };
    expect(await after(7999)).toBe(1);
    expect(await after(1)).toBe(2);
    expect(await after(7999)).toBe(2);
    expect(await after(1)).toBe(3);
    expect(await after(8000)).toBe(4);
    expect(await after(8000)).toBe(4);
    expect(codesOf(await going)).toEqual(['store-not-answering']);
  });
});
