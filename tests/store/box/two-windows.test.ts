import { type IDBPDatabase, wrap } from 'idb';
import { describe, expect, it, vi } from 'vitest';
import { type MakeKey, makeKey } from '../../../src/progress/log.ts';
import type { PlaceRecord } from '../../../src/store/records.ts';
import { openStore, type Store, type StoreOptions } from '../../../src/store/store.ts';
import { codesOf, freshStore, given, LONG, nextRow, scarf } from '../scenario.ts';

const CUFF = makeKey({ garment: 'scarf', piece: 'cuff', part: 0, make: 1 });

/** One database, open in two windows. */
async function twoWindows(options: StoreOptions = {}) {
  const one = await freshStore(options);
  const other = given(await openStore({ ...options, factory: () => one.factory, name: one.name }));
  const { garment, plans } = scarf();
  given(await one.saveGarment(garment, plans));
  return { one, other };
}

const rowsOf = async (store: Store, make: MakeKey) =>
  given(await store.entriesOf(make)).map(({ seq, row }) => [seq, row]);

describe('a row finished in one window and the next in another', () => {
  it('follow one another, whichever window knew less', async () => {
    const { one, other } = await twoWindows();
    for (const window of [one, one, other, one, other, other]) given(await nextRow(window, LONG));
    expect(await rowsOf(one, LONG)).toEqual([1, 2, 3, 4, 5, 6].map((n) => [n, n]));
    expect(given(await one.place(LONG))).toMatchObject({ rows: 6, seq: 6 });
  });

  it('at once, each window on its way through the rows, lose none and double none', async () => {
    const { one, other } = await twoWindows();
    given(await nextRow(one, LONG));
    given(await nextRow(other, LONG));
    // one transaction follows the other in the order asked for
    const taps = Array.from({ length: 20 }, (_, i) => (i % 2 === 0 ? one : other).finishRow(LONG, i + 3));
    for (const tap of await Promise.all(taps)) given(tap);
    expect((await rowsOf(one, LONG)).map(([, row]) => row)).toEqual(
      Array.from({ length: 22 }, (_, i) => i + 1),
    );
  });

  it('are the same row in both: one is written, and the other is told which row comes', async () => {
    const { one, other } = await twoWindows();
    const [first, second] = await Promise.all([one.finishRow(LONG, 1), other.finishRow(LONG, 1)]);
    expect([...codesOf(first), ...codesOf(second)]).toEqual(['place-moved']);
    const refused = [first, second].find(({ ok }) => !ok);
    expect(refused?.ok === false && refused.faults[0]?.figures).toEqual({ row: 1, nextRow: 2 });
    expect(await rowsOf(one, LONG)).toEqual([[1, 1]]);
  });

  it('stop at the end of the part, also for the window that has seen less', async () => {
    const { one, other } = await twoWindows();
    given(await one.goTo(LONG, 28, 'place'));
    given(await nextRow(one, LONG));
    given(await nextRow(other, LONG));
    expect(codesOf(await nextRow(one, LONG))).toEqual(['at-the-end']);
    expect(given(await other.place(LONG)).rows).toBe(30);
  });
});

describe('what was touched last', () => {
  it('is the make of the last row, however the windows take turns, and after the clock was set back', async () => {
    let now = 1_700_000_000_000;
    const { one, other } = await twoWindows({ now: () => now });
    const touches: number[] = [];
    for (const [window, make] of [
      [one, LONG],
      [other, CUFF],
      [one, LONG],
      [one, LONG],
      [other, CUFF],
      [one, CUFF],
    ] as const) {
      now -= 60_000;
      touches.push(given(await nextRow(window, make)).place.touched);
      expect(given(await other.inHand()).place.id).toBe(make);
    }
    expect(touches).toEqual([...new Set(touches)].sort((a, b) => a - b));
  });
});

describe('a garment that another window deleted', () => {
  it('does not come back with the next tap', async () => {
    const { one, other } = await twoWindows();
    given(await nextRow(one, LONG));
    given(await other.deleteGarment('scarf'));
    expect(codesOf(await nextRow(one, LONG))).toEqual(['no-such-make']);
    expect(codesOf(await other.place(LONG))).toEqual(['no-such-make']);
    expect(codesOf(await one.garment('scarf'))).toEqual(['no-such-garment']);
  });
});

describe('a place that is older than this window knew it', () => {
  it('is seen in another transaction of the same connection: nothing is closed and opened again', async () => {
    const { one } = await twoWindows();
    given(await one.finishRow(LONG, 1));
    const db = (await wrap(one.factory.open(one.name))) as unknown as IDBPDatabase;
    const place = (await db.get('places', LONG)) as PlaceRecord;
    await db.put('places', { ...place, touched: place.touched - 1 } satisfies PlaceRecord);
    db.close();
    const states: string[] = [];
    one.onChange((change) => change.kind === 'state' && states.push(one.state()));
    const opens = vi.spyOn(one.factory, 'open');
    expect(given(await one.finishRow(LONG, 2)).place.rows).toBe(2);
    expect(opens).not.toHaveBeenCalled();
    expect(states).toEqual([]);
    expect(await rowsOf(one, LONG)).toEqual([
      [1, 1],
      [2, 2],
    ]);
  });

  it('is gone on from as it now is', async () => {
    const { one } = await twoWindows();
    const before = given(await one.place(LONG));
    given(await nextRow(one, LONG));
    given(await nextRow(one, LONG));
    const db = (await wrap(one.factory.open(one.name))) as unknown as IDBPDatabase;
    await db.put('places', { ...before, rows: 7 } satisfies PlaceRecord);
    await db.clear('log');
    db.close();
    expect(given(await nextRow(one, LONG)).place).toMatchObject({ rows: 8, seq: 1 });
    expect(await rowsOf(one, LONG)).toEqual([[1, 8]]);
  });
});
