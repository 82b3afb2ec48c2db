import { describe, expect, it } from 'vitest';
import { type MakeKey, makeKey } from '../../../src/progress/log.ts';
import { openStore, type StoreOptions } from '../../../src/store/store.ts';
import { memoryKeep } from '../beside/memory-keep.ts';
import { codesOf, freshStore, given, LONG, nextRow, scarf } from '../scenario.ts';

const LEFT = makeKey({ garment: 'scarf', piece: 'cuff', part: 0, make: 1 });
const RIGHT = makeKey({ garment: 'scarf', piece: 'cuff', part: 0, make: 2 });

async function withScarf(options: StoreOptions = {}) {
  const store = await freshStore(options);
  const { garment, plans } = scarf();
  given(await store.saveGarment(garment, plans));
  const rowsOf = async (key: MakeKey) => given(await store.place(key)).rows;
  return { store, rowsOf };
}

describe('a tap means the row that the screen shows', () => {
  it('a row that does not come next is refused, and so is an undo and a note of another row', async () => {
    const { store, rowsOf } = await withScarf();
    given(await store.finishRow(LONG, 1));
    for (const row of [1, 3, 0]) expect(codesOf(await store.finishRow(LONG, row))).toEqual(['place-moved']);
    expect(codesOf(await store.undo(LONG, 0))).toEqual(['place-moved']);
    expect(codesOf(await store.append(LONG, { kind: 'check', count: 20, from: 2 }))).toEqual(['place-moved']);
    expect(await rowsOf(LONG)).toBe(1);
    expect(given(await store.entriesOf(LONG))).toHaveLength(1);
  });

  it('a row after the last one is refused as one too many', async () => {
    const { store } = await withScarf();
    given(await store.goTo(LONG, 30, 'place'));
    expect(codesOf(await store.finishRow(LONG, 31))).toEqual(['at-the-end']);
  });
});

describe('two makes on one needle', () => {
  const pair = (left: number, right: number) => [
    { key: LEFT, row: left },
    { key: RIGHT, row: right },
  ];

  it('get their rows together', async () => {
    const { store, rowsOf } = await withScarf();
    expect(given(await store.finishRows(pair(1, 1))).map(({ rows }) => rows)).toEqual([1, 1]);
    expect([await rowsOf(LEFT), await rowsOf(RIGHT)]).toEqual([1, 1]);
    given(await nextRow(store, LEFT));
  });

  it('are as many rows more in no backup', async () => {
    const { store } = await withScarf({ keep: memoryKeep() });
    const since = () => store.sinceBackup().entries;
    given(await store.finishRow(LONG, 1));
    const before = since();
    given(await store.finishRows(pair(1, 1)));
    expect(since()).toBe(before + 2);
  });

  it('get none where one of them is at another row than the one shown', async () => {
    const { store, rowsOf } = await withScarf();
    given(await store.finishRow(RIGHT, 1));
    expect(codesOf(await store.finishRows(pair(1, 1)))).toEqual(['place-moved']);
    expect([await rowsOf(LEFT), await rowsOf(RIGHT)]).toEqual([0, 1]);
    expect(given(await store.entriesOf(LEFT))).toEqual([]);
  });

  it('are heard of in another window', async () => {
    const { store } = await withScarf();
    const other = given(await openStore({ factory: () => store.factory, name: store.name }));
    const heard = new Set<string>();
    const both = new Promise<void>((resolve) => {
      other.onChange((change) => {
        if (change.kind === 'place') heard.add(change.key);
        if (heard.size === 2) resolve();
      });
    });
    given(await store.finishRows(pair(1, 1)));
    await both;
    expect([...heard]).toEqual([LEFT, RIGHT]);
    other.close();
  });
});
