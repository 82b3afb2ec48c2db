import type { MakeKey } from '../../src/progress/log.ts';
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import type { Result } from '../../src/knit/fault.ts';
import type { PlannedPart, PlannedRow } from '../../src/knit/piece/planned.ts';
import type { PartRecipe } from '../../src/knit/piece/recipe.ts';
import { type GarmentRecord, type PlanRecord, planIdOf } from '../../src/store/records.ts';
import { openStore, type Store, type StoreOptions } from '../../src/store/store.ts';
import { told } from '../told.ts';

/** A garment box of its own for a test, with a clock that the test may set. */
export async function freshStore(
  options: StoreOptions = {},
): Promise<Store & { factory: IDBFactory; name: string }> {
  const factory = new IDBFactory();
  const name = options.name ?? nextName();
  const store = given(await openStore({ factory: () => factory, ...options, name }));
  return { ...store, factory, name };
}

let count = 0;
export const nextName = (): string => {
  count += 1;
  return `box ${process.pid} ${count}`;
};

/** The value of a result that must be ok. */
export function given<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(told(result.faults));
  return result.value;
}

export const codesOf = (result: Result<unknown>): readonly string[] =>
  result.ok ? [] : result.faults.map((f) => f.code);

/** A plain part of so many rows on 20 stitches: enough for a store, which never looks into a row. */
export function plainPart(rows: number, name = 'Body', piece = 'Scarf'): PlannedPart {
  const row = (n: number): PlannedRow => ({
    n,
    side: n % 2 === 1 ? 'RS' : 'WS',
    section: 0,
    needle: 4,
    steps: [{ work: 'k', until: { left: 0 } }],
    before: 20,
    after: 20,
    shaping: [],
    height: n * 2.5,
  });
  return {
    piece,
    name,
    from: { castOn: 20 },
    end: 'bind off',
    setUp: [{ work: 'co', times: 20 }],
    sections: [{ name: 'Garter', fabric: 'garter', needle: 4, first: 1, last: rows }],
    rows: Array.from({ length: rows }, (_, i) => row(i + 1)),
    start: 20,
    left: 20,
    base: 0,
    offset: 0,
    cells: [{ width: 5, height: 2.5 }],
  };
}

const partRecipe = (name: string, rows: number): PartRecipe => ({
  name,
  from: { castOn: 20 },
  sections: [{ name: 'Garter', rows, fabric: 'garter', needle: 4, shaping: [] }],
  end: 'bind off',
});

/** A scarf in one part and mittens' cuffs in two makes, with their plans. */
export function scarf(id = 'scarf', rows = 30): { garment: GarmentRecord; plans: PlanRecord[] } {
  const garment: GarmentRecord = {
    id,
    name: 'Moorland scarf',
    createdAt: 1000,
    changedAt: 1000,
    pieces: [
      { id: 'long', recipe: { name: 'Scarf', makes: 1, parts: [partRecipe('Body', rows)] } },
      { id: 'cuff', recipe: { name: 'Cuff', makes: 2, parts: [partRecipe('Body', 12)] } },
    ],
  };
  return { garment, plans: [planOf(id, 'long', rows), planOf(id, 'cuff', 12)] };
}

/** As the store keeps it: named by what it says. */
export function planOf(garment: string, piece: string, rows: number, version = 1): PlanRecord {
  const plan = { garment, piece, part: 0, mirror: false, version, plan: plainPart(rows) };
  return { ...plan, id: planIdOf(plan) };
}

export const LONG = 'scarf/long/0/1' as const;

/** Finishes the row that comes next, as a screen does that has just read the place. */
export const nextRow = async (store: Store, key: MakeKey) => {
  const place = await store.place(key);
  return place.ok ? store.finishRow(key, place.value.rows + 1) : place;
};

/** Takes back the last change, as a screen does that has just read the place. */
export const undoLast = async (store: Store, key: MakeKey) => {
  const place = await store.place(key);
  return place.ok ? store.undo(key, place.value.rows) : place;
};
