import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import type { Result } from '../../src/knit/fault.ts';
import { openStore, type Store } from '../../src/store/store.ts';
import { FaultyFactory, fuse, type Mishap, mishaps } from './faulty-factory.ts';
import { codesOf, given, LONG, nextName, planOf, scarf } from './scenario.ts';
import { memoryKeep } from './memory-keep.ts';

type Path = (store: Store) => Promise<Result<unknown>>;

const paths: Record<string, Path> = {
  'finish a row': (store) => store.finishRow(LONG),
  undo: (store) => store.undo(LONG),
  'go to a row': (store) => store.goTo(LONG, 7, 'place'),
  'note something': (store) => store.append(LONG, { kind: 'note', text: 'green thread' }),
  rework: (store) => store.rework(LONG, planOf('scarf', 'long', 50)),
  'save a garment': (store) => {
    const { garment, plans } = scarf('hat');
    return store.saveGarment(garment, plans);
  },
  'delete a garment': (store) => store.deleteGarment('scarf'),
  'change a setting': (store) => store.setSetting('hand', 'left'),
};

/** Everything in the box, without the times and ids that each run has of its own. */
async function contents(store: Store): Promise<unknown> {
  const list = given(await store.list());
  const garments = [];
  for (const { id } of [...list].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    const entries = given(await store.entriesOfGarment(id));
    const places = given(await store.placesOf(id));
    garments.push({
      garment: given(await store.garment(id)).pieces,
      places: places.map(({ at: _at, touched: _touched, ...place }) => place),
      entries: entries.map(({ kind, row, seq, make, text, plan }) => ({ kind, row, seq, make, text, plan })),
    });
  }
  return { garments, hand: given(await store.settings())['hand'] };
}

interface Bench {
  readonly store: Store;
  readonly fuse: ReturnType<typeof fuse>;
  readonly reopen: () => Promise<Store>;
}

/** A box with three rows knitted, opened through a factory that can fail. */
async function bench(): Promise<Bench> {
  const sound = new IDBFactory();
  const name = nextName();
  const keep = memoryKeep();
  const wire = fuse();
  const options = { name, keep, patienceMs: 25, pauseMs: 0, now: () => 1000, spareFactory: async () => undefined };
  const faulty = new FaultyFactory(sound, wire);
  const store = given(await openStore({ ...options, factory: () => faulty as never }));
  const { garment, plans } = scarf();
  given(await store.saveGarment(garment, plans));
  for (let i = 0; i < 3; i += 1) given(await store.finishRow(LONG));
  const reopen = async () => given(await openStore({ ...options, factory: () => sound, patienceMs: 1000 }));
  return { store, fuse: wire, reopen };
}

/** What a path does when nothing goes wrong. */
async function undisturbed(path: Path): Promise<{ before: unknown; after: unknown }> {
  const { store } = await bench();
  const before = await contents(store);
  given(await path(store));
  const after = await contents(store);
  store.close();
  return { before, after };
}

/** Asks again, as she would: the sound store may still be slow to answer on a busy machine. */
async function retry(path: Path, store: Store): Promise<void> {
  for (let asked = 0; asked < 20; asked += 1) {
    const [code] = codesOf(await path(store));
    // deleted the first time, although no answer came
    if (code === undefined || code === 'no-such-garment') return;
    expect(code).toBe('store-not-answering');
  }
  expect.unreachable('no retry was answered');
}

/** Runs a path with its k-th step failing; false when the path has no k-th step. */
async function failAt(path: Path, k: number, mishap: Mishap, lasting: boolean, ends: Awaited<ReturnType<typeof undisturbed>>) {
  const { store, fuse: wire, reopen } = await bench();
  Object.assign(wire, { at: wire.step + k, mishap, lasting });
  const answer = await path(store);
  const { blown } = wire;
  wire.at = undefined;
  if (!answer.ok) {
    const reader = await reopen();
    expect([ends.before, ends.after]).toContainEqual(await contents(reader));
    reader.close();
    await retry(path, store);
  }
  store.close();
  const after = await reopen();
  expect(await contents(after), `${mishap} at step ${k}, answered ${JSON.stringify(answer)}`).toEqual(ends.after);
  after.close();
  return blown > 0;
}

for (const lasting of [false, true]) {
  describe(lasting ? 'a store that fails from some step on' : 'a store that fails once', () => {
    for (const [name, path] of Object.entries(paths)) {
      it(`to ${name}: what is answered as done is stored, and a retry does it exactly once`, async () => {
        const ends = await undisturbed(path);
        let faults = 0;
        for (const mishap of mishaps) {
          let k = 1;
          while (await failAt(path, k, mishap, lasting, ends)) k += 1;
          faults += k - 1;
        }
        expect(faults).toBeGreaterThanOrEqual(15);
      }, 60_000);
    }
  });
}
