import type { MakeKey } from '../../src/progress/log.ts';
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { openStore, type Store } from '../../src/store/store.ts';
import { given, nextName, scarf } from '../store/scenario.ts';

/** Two windows on one box, in each of them a knitting screen and the page of two makes on one needle. */

const LEFT = 'scarf/cuff/0/1';
const RIGHT = 'scarf/cuff/0/2';
const ROWS = 12;
const cuffs = [LEFT, RIGHT] as const;

/** The app's own modules, once more for each window. */
async function load() {
  vi.resetModules();
  const [knit, count, fresh, state, appStore] = await Promise.all([
    import('../../src/app/in-hand/knit.ts'),
    import('../../src/app/in-hand/count.ts'),
    import('../../src/app/fresh.ts'),
    import('../../src/app/state.ts'),
    import('../../src/app/store.ts'),
  ]);
  return { knit, count, fresh, state, appStore };
}

type Loaded = Awaited<ReturnType<typeof load>>;

interface Window extends Loaded {
  readonly store: Store;
  readonly close: () => void;
}

/** What a screen showed when it was tapped, for each entry that was then written. */
interface Written {
  readonly shown: number;
  readonly row: number;
}

const loaded: Loaded[] = [await load(), await load()];
const open: Window[] = [];
afterAll(() => {
  for (const window of open) window.close();
});

async function openWindow(modules: Loaded, factory: IDBFactory, name: string, written: Written[]) {
  const store = given(await openStore({ factory: () => factory, name, keep: undefined }));
  const { fresh, count, appStore, state } = modules;
  appStore.forgetStore();
  state.inHand.value = undefined;
  state.garmentInHand.value = undefined;
  const told: Store = {
    ...store,
    finishRow: async (key, row) => {
      const done = await store.finishRow(key, row);
      if (done.ok) written.push({ shown: row, row: done.value.place.rows });
      return done;
    },
    finishRows: async (rows) => {
      const done = await store.finishRows(rows);
      if (done.ok)
        for (const [i, { row }] of rows.entries())
          written.push({ shown: row, row: done.value[i]?.rows ?? 0 });
      return done;
    },
  };
  appStore.giveStore(told);
  const stop = fresh.keepFresh(() => count.openCount(LEFT), 'scarf');
  const window: Window = {
    ...modules,
    store,
    close: () => {
      stop();
      store.close();
    },
  };
  open.push(window);
  return window;
}

/** The rows worked of both cuffs, as the page of two on one needle has them. */
const onNeedle = ({ state }: Loaded): readonly number[] | undefined =>
  state.garmentInHand.value?.pieces
    .find(({ id }) => id === 'cuff')
    ?.makes.map(({ places }) => places[0]?.rows ?? Number.NaN);

interface Model {
  deeds: number;
}

class Deed implements fc.AsyncCommand<Model, readonly Window[]> {
  constructor(
    readonly name: string,
    readonly where: number,
    readonly act: (window: Window) => Promise<unknown>,
    readonly shown: (window: Window) => readonly (number | undefined)[] | undefined,
  ) {}
  check = () => true;
  async run(model: Model, windows: readonly Window[]): Promise<void> {
    model.deeds += 1;
    const window = windows[this.where] as Window;
    const before = await placesIn(window.store);
    const shown = this.shown(window) ?? [];
    await this.act(window);
    const after = await placesIn(window.store);
    // nothing moves that the screen did not show, by more than what was tapped on it
    for (const i of [0, 1]) if (after[i] !== before[i]) expect(before[i]).toBe(shown[i]);
  }
  toString = () => `${this.name} in window ${this.where}`;
}

const placesIn = async (store: Store): Promise<readonly number[]> =>
  Promise.all(cuffs.map(async (key) => given(await store.place(key)).rows));

/** A finish or an undo on the page of two on one needle. */
const onPage = (window: Window, keys: readonly MakeKey[]) => {
  const shown = onNeedle(window);
  if (!shown) return Promise.resolve();
  const rows = keys.map((key) => ({ key, row: (shown[cuffs.indexOf(key as typeof LEFT)] ?? 0) + 1 }));
  return rows.some(({ row }) => row > ROWS) ? Promise.resolve() : window.count.finishRows(rows);
};

/** As the knitting screen has it: of the left cuff alone. */
const inHandOf = ({ state }: Loaded) => [state.inHand.value?.place.rows];

const deeds: Readonly<Record<string, (window: Window) => Promise<unknown>>> = {
  'row done on both': (window) => onPage(window, cuffs),
  'row done on the left': (window) => onPage(window, [LEFT]),
  'row done on the right': (window) => onPage(window, [RIGHT]),
  'row done on the knitting screen': ({ knit }) => knit.finishRow(),
  'undo on the knitting screen': ({ knit }) => knit.undoRow(),
  'everything heard of': () => new Promise((resolve) => setTimeout(resolve, 5)),
};

const command = fc
  .tuple(fc.constantFrom(...Object.keys(deeds)), fc.nat(1))
  .map(
    ([name, where]) =>
      new Deed(
        name,
        where,
        deeds[name] as (window: Window) => Promise<unknown>,
        name.endsWith('knitting screen') ? inHandOf : onNeedle,
      ),
  );

/** RIDGELINE_HISTORIES=25 for the whole of it; a part of it in every run. */
const RUNS = Number(process.env.RIDGELINE_HISTORIES ?? 8);

describe('two screens in each of two windows', () => {
  it('never write a row that they did not show, and show what is stored as soon as they have heard of it', async () => {
    await fc.assert(
      fc.asyncProperty(fc.commands([command], { maxCommands: 40 }), async (list) => {
        const factory = new IDBFactory();
        const name = nextName();
        const written: Written[] = [];
        const windows: Window[] = [];
        for (const modules of loaded) windows.push(await openWindow(modules, factory, name, written));
        const { garment, plans } = scarf();
        const [{ store }] = windows as [Window];
        given(await store.saveGarment(garment, plans));
        await vi.waitFor(() =>
          expect(windows.map(onNeedle)).toEqual([
            [0, 0],
            [0, 0],
          ]),
        );
        await fc.asyncModelRun(() => ({ model: { deeds: 0 }, real: windows }), list);
        for (const { shown, row } of written) expect(row).toBe(shown);
        const stored = await placesIn(store);
        await vi.waitFor(() => {
          expect(windows.map(onNeedle)).toEqual([stored, stored]);
          expect(windows.map(({ state }) => state.inHand.value?.place.rows)).toEqual([stored[0], stored[0]]);
        });
        for (const window of windows) window.close();
      }),
      { seed: 20260512, numRuns: RUNS },
    );
  }, 120_000);
});
