import { IDBFactory } from 'fake-indexeddb';
import { afterAll, describe, expect, it } from 'vitest';
import type { Result } from '../../../src/knit/fault.ts';
import { wayBackIn } from '../../../src/store/backup/own-settings.ts';
import { photosOf } from '../../../src/store/garment/photos.ts';
import type { Wish } from '../../../src/store/place/write-log.ts';
import { openStore, type Store } from '../../../src/store/store.ts';
import { memoryKeep } from '../beside/memory-keep.ts';
import { codesOf, given, LONG, nextName, nextRow, scarf } from '../scenario.ts';
import { FaultyFactory, fuse, type Mishap, mishaps } from './faulty-factory.ts';

import { type Path, paths, photosRead, WRITE_HELD } from './write-paths.ts';

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
      notes: given(await store.garment(id)).notes,
      photos: given(await photosOf(store.box, id)).map(({ caption }) => caption),
      // of two devices' entries of one seq the ids, which each run has of its own, tell which comes first
      entries: entries
        .map(({ kind, row, seq, make, text, plan }) => JSON.stringify([make, seq, kind, row, text, plan]))
        .sort(),
    });
  }
  const settings = given(await store.settings());
  const { mode, hidden } = wayBackIn(settings) ?? {};
  return { garments, hand: settings.hand, mode, hidden };
}

interface Bench {
  readonly store: Store;
  readonly fuse: ReturnType<typeof fuse>;
  readonly reopen: () => Promise<Store>;
}

/** A box with three rows knitted, opened through a factory that can fail. */
async function bench(path: Path, mishap: Mishap): Promise<Bench> {
  const sound = new IDBFactory();
  const name = nextName();
  const keep = memoryKeep();
  const wire = fuse();
  const options = { name, keep, pauseMs: 0, now: () => 1000, spareFactory: async () => undefined };
  const reopen = async () => given(await openStore({ ...options, factory: () => sound }));
  const before = await reopen();
  const { garment, plans } = scarf();
  given(await before.saveGarment(garment, plans));
  for (let i = 0; i < 3; i += 1) given(await nextRow(before, LONG));
  await path.before?.(before);
  const [photo] = given(await photosOf(before.box, 'scarf'));
  before.close();
  // impatient only while the storage is failing: the sound one may be slow on a busy machine
  const patience = () => (mishap === 'never answers' && wire.at !== undefined ? 40 : 60_000);
  const store = given(
    await openStore({
      ...options,
      factory: () => new FaultyFactory(sound, wire) as never,
      get patienceMs() {
        return patience();
      },
      get longPatienceMs() {
        return patience();
      },
    }),
  );
  await store.placesOf('scarf');
  if (photo) photosRead.set(store, photo.id);
  keep.full = path.alone === true;
  if (path === paths[WRITE_HELD]) {
    const wish: Wish = { id: 'held-1', make: LONG, at: 2000, kind: 'row' };
    keep.setItem(`${name}.held.held-1`, JSON.stringify({ n: 1, before: 3, after: 4, wish }));
  }
  return { store, fuse: wire, reopen };
}

/** A sound store may still be slow to answer on a busy machine. */
async function patiently<T>(ask: () => Promise<Result<T>>): Promise<T> {
  for (let asked = 0; asked < 20; asked += 1) {
    const answer = await ask();
    if (answer.ok) return answer.value;
    expect(codesOf(answer)).toEqual(['store-not-answering']);
  }
  return expect.unreachable('nothing was answered');
}

/** What a path does when nothing goes wrong. */
async function undisturbed(path: Path): Promise<{ before: unknown; after: unknown }> {
  const { store, reopen } = await bench(path, 'throws');
  const before = await contents(store);
  given(await path.go(store));
  store.close();
  const reader = await reopen();
  const after = await contents(reader);
  reader.close();
  return { before, after };
}

/** Asks again, as she would. */
const retry = (path: Path, store: Store): Promise<unknown> =>
  patiently(async () => {
    const answer = await path.go(store);
    // done the first time, although no answer came: it says so
    const isDone = ['no-such-garment', 'no-way-back'].includes(codesOf(answer)[0] ?? '');
    return isDone ? { ok: true, value: undefined } : answer;
  });

/** Runs a path with its k-th step failing; false when the path has no k-th step. */
async function failAt(
  path: Path,
  k: number,
  mishap: Mishap,
  lasting: boolean,
  ends: Awaited<ReturnType<typeof undisturbed>>,
) {
  const { store, fuse: wire, reopen } = await bench(path, mishap);
  Object.assign(wire, { at: wire.step + k, mishap, lasting });
  const answer = await path.go(store);
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
  expect(await contents(after), `${mishap} at step ${k}, answered ${JSON.stringify(answer)}`).toEqual(
    ends.after,
  );
  after.close();
  return blown > 0;
}

let injected = 0;
afterAll(() => console.log(`faults injected into writes: ${injected}; done but not stored: 0`));

/**
 * The ordinary run fails one step in so many, of a backup or a garment fewer; each mishap, and what lasts, begins at another
 * one, so that together they come to all of them. The long one fails each by each.
 */
const stride: Readonly<Record<string, number>> = {
  'merge a backup': 59,
  'replace by a backup': 59,
  'save a garment': 19,
  'delete a garment': 11,
  'plan two parts anew': 43,
  'change the rows of a garment': 19,
  'take a backup back': 47,
  'change a setting': 1,
  'forget the way back': 2,
  'delete a photo': 1,
  'go on by the other way': 17,
  'let a backup stay': 2,
};
const isWhole = process.env.RIDGELINE_FAULTS === 'all';
const strideOf = (name: string): number => (isWhole ? 1 : (stride[name] ?? 11));
/** Half of the mishaps for what fails once, the other half for what lasts; the other way round for the next path. */
const tried = (turn: number): readonly Mishap[] => mishaps.filter((_, i) => isWhole || (i + turn) % 2 === 0);

for (const lasting of [false, true]) {
  describe(lasting ? 'a store that fails from some step on' : 'a store that fails once', () => {
    for (const [at, [name, path]] of Object.entries(paths).entries()) {
      it(`to ${name}: what is answered as done is stored, and a retry does it exactly once`, async () => {
        const ends = await undisturbed(path);
        // a path that does nothing would pass every comparison
        expect(ends.after).not.toEqual(ends.before);
        let faults = 0;
        const some = tried(at + Number(lasting));
        for (const [turn, mishap] of some.entries()) {
          const others = lasting ? Math.floor(strideOf(name) / 2) : 0;
          let k = 1 + ((others + turn) % strideOf(name));
          for (; await failAt(path, k, mishap, lasting, ends); k += strideOf(name)) faults += 1;
        }
        injected += faults;
        expect((faults * strideOf(name) * mishaps.length) / some.length).toBeGreaterThanOrEqual(15);
      }, 300_000);
    }
  });
}

it('to open it for the first time: it opens or says why not, and the next start opens it whole', async () => {
  for (const mishap of mishaps) {
    for (let k = 1; ; k += 1) {
      const sound = new IDBFactory();
      const wire = Object.assign(fuse(), { at: k, mishap });
      const options = {
        name: nextName(),
        keep: memoryKeep(),
        pauseMs: 0,
        spareFactory: async () => undefined,
      };
      const opened = await openStore({
        ...options,
        patienceMs: mishap === 'never answers' ? 40 : 60_000,
        factory: () => new FaultyFactory(sound, wire) as never,
      });
      if (opened.ok) opened.value.close();
      const first = given(await openStore({ ...options, factory: () => sound }));
      if (opened.ok) expect(first.box.device).toBe(opened.value.box.device);
      given(await first.saveGarment(scarf().garment, scarf().plans));
      first.close();
      if (wire.blown === 0) break;
    }
  }
});
