import { IDBIndex } from 'fake-indexeddb';
import fc from 'fast-check';
import { afterEach, expect, it, vi } from 'vitest';
import { foldPlace } from '../../../src/progress/fold.ts';
import type { LogEntry, PlanId } from '../../../src/progress/log.ts';
import { sorted } from '../../../src/progress/standing.ts';
import { takeBack } from '../../../src/progress/take-back.ts';
import type { Tx } from '../../../src/store/box/schema.ts';
import { takeBackNear } from '../../../src/store/place/take-back-near.ts';
import { knittingLog, partedLogs } from '../../arbitraries/knitting-log.ts';
import { codesOf, freshStore, given, LONG, nextRow, scarf, undoLast } from '../scenario.ts';

afterEach(() => vi.restoreAllMocks());

/** How many entries of a log are read while something is done. */
async function entriesRead(run: () => Promise<unknown>): Promise<number> {
  let read = 0;
  const { getAll } = IDBIndex.prototype;
  const spy = vi.spyOn(IDBIndex.prototype, 'getAll').mockImplementation(function (
    this: IDBIndex,
    ...args: Parameters<IDBIndex['getAll']>
  ) {
    const request = getAll.apply(this, args);
    request.addEventListener('success', () => {
      read += (request.result as unknown[]).length;
    });
    return request;
  });
  await run();
  spy.mockRestore();
  return read;
}

const knitted = async (rows: number) => {
  const store = await freshStore();
  const { garment, plans } = scarf('scarf', rows + 10);
  given(await store.saveGarment(garment, plans));
  for (let i = 0; i < rows; i += 1) given(await nextRow(store, LONG));
  return store;
};

it('the last of many undos reads no more entries than the tenth, and each takes back one row', async () => {
  const store = await knitted(150);
  const reads: number[] = [];
  for (let i = 1; i <= 100; i += 1) {
    reads.push(await entriesRead(async () => given(await undoLast(store, LONG))));
    expect(given(await store.place(LONG)).rows).toBe(150 - i);
  }
  expect(reads[9]).toBeGreaterThan(0);
  expect(Math.max(...reads.slice(10))).toBeLessThanOrEqual(2 * (reads[9] ?? 0));
  store.close();
});

it('a row knitted after many undos is taken back with as few reads, and what was noted between stays', async () => {
  const store = await knitted(120);
  for (let i = 0; i < 60; i += 1) given(await undoLast(store, LONG));
  given(await store.append(LONG, { kind: 'note', text: 'a knot' }));
  given(await nextRow(store, LONG));
  expect(await entriesRead(async () => given(await undoLast(store, LONG)))).toBeLessThanOrEqual(80);
  expect(given(await store.place(LONG)).rows).toBe(60);
  given(await undoLast(store, LONG));
  expect(given(await store.place(LONG)).rows).toBe(59);
  store.close();
});

it('all rows can be taken back, to the first one, and then there is nothing', async () => {
  const store = await knitted(40);
  for (let i = 39; i >= 0; i -= 1) {
    given(await undoLast(store, LONG));
    expect(given(await store.place(LONG)).rows).toBe(i);
  }
  expect(codesOf(await undoLast(store, LONG))).toEqual(['nothing-to-undo']);
  store.close();
});

/** A transaction over these entries, as far as an undo asks it. */
function over(entries: readonly LogEntry[]): Tx<'readwrite'> {
  const within = (range: IDBKeyRange) =>
    sorted(entries).filter((entry) => range.includes([entry.make, entry.seq]));
  const index = {
    getAll: (range: IDBKeyRange) => Promise.resolve(within(range)),
    count: (range: IDBKeyRange) => Promise.resolve(within(range).length),
  };
  const log = {
    get: (id: string) => Promise.resolve(entries.find((entry) => entry.id === id)),
    index: () => index,
  };
  return { objectStore: () => log } as unknown as Tx<'readwrite'>;
}

it('what is told by the newest entries is what the whole log tells, also of merged ones and after any run of undos', async () => {
  const logs = fc.oneof(
    knittingLog().map(({ entries }) => entries),
    partedLogs().map((logs) => [...new Map(logs.flat().map((entry) => [entry.id, entry])).values()]),
  );
  let told = 0;
  await fc.assert(
    fc.asyncProperty(logs, fc.array(fc.boolean(), { maxLength: 40 }), async (entries, undone) => {
      const log = [...entries];
      for (const [i, undo] of undone.entries()) {
        const now = foldPlace(log);
        const whole = takeBack(log, now);
        const near = await takeBackNear(over(log), 'g/p/0/1', now);
        if (near !== undefined) {
          told += 1;
          expect(near).toEqual(whole);
        }
        const next = { make: 'g/p/0/1' as const, at: 0 };
        if (undo && whole !== undefined)
          whole.undoes.forEach((undoes, j) => {
            const last = j === whole.undoes.length - 1;
            const row = last ? whole.rows : now.rows;
            const plan = (last ? whole.plan : now.plan) as PlanId;
            log.push({ ...next, id: `u${i}.${j}`, seq: now.seq + 1 + j, kind: 'undo', row, undoes, plan });
          });
        else
          log.push({
            ...next,
            id: `r${i}`,
            seq: now.seq + 1,
            kind: 'row',
            row: now.rows + 1,
            plan: 'g/p/0/s/1',
          });
      }
    }),
  );
  expect(told).toBeGreaterThan(100);
});
