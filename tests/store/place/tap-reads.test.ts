import { IDBIndex, IDBObjectStore } from 'fake-indexeddb';
import { afterEach, expect, it, vi } from 'vitest';
import { freshStore, given, LONG, nextRow, scarf } from '../scenario.ts';

afterEach(() => vi.restoreAllMocks());

const asking = ['get', 'getAll', 'getAllKeys', 'count', 'openCursor', 'openKeyCursor'] as const;
const writing = ['add', 'put', 'delete'] as const;

/** What is asked of the box while something is done, and how many records are answered. */
async function asked(run: () => Promise<unknown>): Promise<{ requests: string[]; records: number }> {
  const requests: string[] = [];
  let records = 0;
  const watch = <Name extends string>(on: Readonly<Record<Name, unknown>>, name: Name) => {
    const real = on[name] as (...args: readonly unknown[]) => IDBRequest<unknown>;
    vi.spyOn(on as Record<string, (...args: readonly unknown[]) => unknown>, name).mockImplementation(
      function (this: IDBIndex, ...args: readonly unknown[]) {
        const request = real.apply(this, args as never);
        requests.push(`${name} ${this.name}`);
        request.addEventListener('success', () => {
          records += Array.isArray(request.result) ? request.result.length : 1;
        });
        return request;
      },
    );
  };
  for (const name of asking) {
    watch(IDBObjectStore.prototype, name);
    watch(IDBIndex.prototype, name);
  }
  for (const name of writing) watch(IDBObjectStore.prototype, name);
  await run();
  vi.restoreAllMocks();
  return { requests: requests.sort(), records };
}

it('a row asks for no more with a long log behind it than with a short one: an entry, the place and what was touched last', async () => {
  const store = await freshStore();
  const { garment, plans } = scarf('scarf', 700);
  given(await store.saveGarment(garment, plans));
  const knit = async (rows: number) => {
    for (let i = 0; i < rows; i += 1) given(await nextRow(store, LONG));
  };
  await knit(5);
  const early = await asked(() => knit(3));
  await knit(600);
  const late = await asked(() => knit(3));
  store.close();
  expect(late).toEqual(early);
  expect(early.requests.filter((request) => request === 'put log' || request === 'add log')).toHaveLength(3);
  expect(late.records).toBeLessThanOrEqual(3 * 4);
});
