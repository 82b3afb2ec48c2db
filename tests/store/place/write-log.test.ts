import { describe, expect, it } from 'vitest';
import { takeBack } from '../../../src/store/backup/way-back.ts';
import { makesRange } from '../../../src/store/place/write-log.ts';
import type { NewEntry } from '../../../src/store/records.ts';
import type { Store, StoreOptions } from '../../../src/store/store.ts';
import { codesOf, freshStore, given, LONG, nextRow, planOf, scarf, undoLast } from '../scenario.ts';

const CUFF = 'scarf/cuff/0/1';

async function withScarf(options: StoreOptions = {}): Promise<Store> {
  const store = await freshStore({ keep: undefined, ...options });
  const { garment, plans } = scarf();
  given(await store.saveGarment(garment, plans));
  return store;
}

describe('what is logged', () => {
  it('has words that a backup can bring back, and counts that a needle can hold', async () => {
    const store = await withScarf();
    const codes = async (entry: NewEntry) => codesOf(await store.append(LONG, entry));
    expect(await codes({ kind: 'note', text: 'x'.repeat(20_000) })).toEqual([]);
    expect(await codes({ kind: 'note', text: 'x'.repeat(20_001) })).toEqual(['not-storable']);
    expect(await codes({ kind: 'check', count: 0 })).toEqual([]);
    expect(await codes({ kind: 'check', count: 100_000 })).toEqual([]);
    for (const count of [-1, 100_001, 1.5, Number.NaN])
      expect(await codes({ kind: 'check', count })).toEqual(['not-storable']);
    expect(given(await store.entriesOf(LONG)).map(({ kind }) => kind)).toEqual(['note', 'check', 'check']);
    store.close();
  });

  it('is a row that there is', async () => {
    const store = await withScarf();
    const to = async (rows: number) => codesOf(await store.goTo(LONG, rows, 'place'));
    for (const rows of [-1, 31, 2.5]) expect(await to(rows)).toEqual(['row-outside']);
    expect(await store.goTo(LONG, 31, 'place')).toMatchObject({
      faults: [{ figures: { row: 31, rows: 30 } }],
    });
    expect(await to(0)).toEqual([]);
    expect(await to(30)).toEqual([]);
    expect(await store.finishRow(LONG, 31)).toMatchObject({
      faults: [{ code: 'at-the-end', figures: { rows: 30 } }],
    });
    store.close();
  });

  it('says what it is, when, of which plan and in which order, and nothing else', async () => {
    const store = await withScarf({ now: () => 5000 });
    given(await nextRow(store, LONG));
    given(await store.append(LONG, { kind: 'check', count: 20 }));
    given(await store.append(LONG, { kind: 'note', text: 'soft' }));
    const plan = planOf('scarf', 'long', 30).id;
    const common = { make: LONG, at: 5000, row: 1, plan };
    expect(given(await store.entriesOf(LONG)).map(({ id: _id, ...entry }) => entry)).toEqual([
      { ...common, seq: 1, kind: 'row' },
      { ...common, seq: 2, kind: 'check', count: 20 },
      { ...common, seq: 3, kind: 'note', text: 'soft' },
    ]);
    store.close();
  });

  it('moves the time of the last row only where it belongs to the knitting, and never back', async () => {
    let at = 5000;
    const store = await withScarf({ now: () => at });
    given(await nextRow(store, LONG));
    at = 7000;
    given(await store.append(LONG, { kind: 'note', text: 'x' }));
    expect(given(await store.place(LONG))).toMatchObject({ at: 5000, touched: 7000, seq: 2 });
    at = 3000;
    given(await nextRow(store, LONG));
    expect(given(await store.place(LONG))).toMatchObject({ at: 5000, touched: 7001, seq: 3 });
    given(await nextRow(store, CUFF));
    expect(given(await store.place(CUFF))).toMatchObject({ at: 3000, touched: 7002 });
    at = 9000;
    given(await undoLast(store, CUFF));
    expect(given(await store.place(CUFF))).toMatchObject({ at: 9000, rows: 0 });
    store.close();
  });
});

describe('what is struck out', () => {
  it('is a note, a check or a lifeline of the same make', async () => {
    const store = await withScarf();
    given(await nextRow(store, LONG));
    given(await store.append(LONG, { kind: 'note', text: 'x' }));
    const [row, note] = given(await store.entriesOf(LONG));
    const strike = async (key: typeof LONG | typeof CUFF, undoes: string | undefined) =>
      codesOf(await store.append(key, { kind: 'strike', ...(undoes !== undefined && { undoes }) }));
    expect(await strike(LONG, row?.id)).toEqual(['no-such-entry']);
    expect(await strike(CUFF, note?.id)).toEqual(['no-such-entry']);
    expect(await strike(LONG, 'other')).toEqual(['no-such-entry']);
    expect(await strike(LONG, undefined)).toEqual(['no-such-entry']);
    expect(await strike(LONG, note?.id)).toEqual([]);
    expect(given(await store.entriesOf(LONG)).at(-1)).toMatchObject({
      kind: 'strike',
      undoes: note?.id,
      row: 1,
    });
    expect(given(await store.place(LONG)).rows).toBe(1);
    store.close();
  });
});

describe('what is taken back', () => {
  it('is the last move, named by its id, through a rework to the plan before it', async () => {
    const store = await withScarf();
    given(await nextRow(store, LONG));
    given(await nextRow(store, LONG));
    given(await store.rework([{ key: LONG, plan: planOf('scarf', 'long', 26) }]));
    const reworked = given(await store.entriesOf(LONG)).at(-1);
    given(await undoLast(store, LONG));
    expect(given(await store.place(LONG))).toMatchObject({
      rows: 2,
      total: 30,
      plan: planOf('scarf', 'long', 30).id,
    });
    expect(given(await store.entriesOf(LONG)).at(-1)).toMatchObject({
      kind: 'undo',
      undoes: reworked?.id,
      row: 2,
    });
    given(await undoLast(store, LONG));
    given(await undoLast(store, LONG));
    expect(given(await store.place(LONG)).rows).toBe(0);
    expect(codesOf(await undoLast(store, LONG))).toEqual(['nothing-to-undo']);
    store.close();
  });

  it('is many rows, one after the other, and what was noted between stays', async () => {
    const store = await withScarf();
    for (let i = 0; i < 5; i += 1) {
      given(await nextRow(store, LONG));
      given(await store.append(LONG, { kind: 'note', text: `${i}` }));
    }
    for (let i = 4; i >= 1; i -= 1) {
      given(await undoLast(store, LONG));
      expect(given(await store.place(LONG)).rows).toBe(i);
    }
    given(await nextRow(store, LONG));
    given(await undoLast(store, LONG));
    expect(given(await store.place(LONG)).rows).toBe(1);
    expect(given(await store.entriesOf(LONG)).filter(({ kind }) => kind === 'note')).toHaveLength(5);
    store.close();
  });
});

describe('what is taken back behind many notes', () => {
  it('is each move once: the one to the same row, and the row', async () => {
    const store = await withScarf();
    given(await nextRow(store, LONG));
    given(await nextRow(store, LONG));
    given(await store.goTo(LONG, 2, 'place'));
    for (let i = 0; i < 32; i += 1) given(await store.append(LONG, { kind: 'note', text: `${i}` }));
    given(await undoLast(store, LONG));
    expect(given(await store.place(LONG)).rows).toBe(1);
    const entries = given(await store.entriesOf(LONG));
    const undone = entries.flatMap(({ kind, undoes }) => (kind === 'undo' ? [undoes] : []));
    expect(undone).toEqual([entries[2]?.id, entries[1]?.id]);
    store.close();
  });
});

describe('what is read of a log', () => {
  it('is all of it or the newest, in order', async () => {
    const store = await withScarf();
    for (let i = 0; i < 4; i += 1) given(await nextRow(store, LONG));
    const rows = async (lastN?: number) =>
      given(await store.entriesOf(LONG, lastN === undefined ? {} : { lastN })).map(({ row }) => row);
    expect([await rows(), await rows(2), await rows(0), await rows(9)]).toEqual([
      [1, 2, 3, 4],
      [3, 4],
      [],
      [1, 2, 3, 4],
    ]);
    expect(given(await store.entriesOf('scarf/cuff/0/2', { lastN: 3 }))).toEqual([]);
    store.close();
  });

  it('is of its own garment only, whatever the others are called', async () => {
    const store = await withScarf();
    for (const id of ['scarf0', 'scarf-2', 'scar', 'Scarf']) {
      const { garment, plans } = scarf(id);
      given(await store.saveGarment(garment, plans));
      given(await nextRow(store, `${id}/long/0/1` as typeof LONG));
    }
    expect(given(await store.entriesOfGarment('scarf'))).toEqual([]);
    given(await nextRow(store, LONG));
    given(await nextRow(store, CUFF));
    expect(given(await store.entriesOfGarment('scarf')).map(({ make }) => make)).toEqual([CUFF, LONG]);
    const range = makesRange('scarf');
    expect([range.lower, range.upper, range.lowerOpen, range.upperOpen]).toEqual([
      ['scarf/'],
      ['scarf0'],
      false,
      true,
    ]);
    store.close();
  });

  it('tells which makes were knitted last', async () => {
    let at = 1000;
    const store = await withScarf({ now: () => (at += 1) });
    given(await nextRow(store, LONG));
    given(await nextRow(store, CUFF));
    const latest = async (n: number) => given(await store.latestPlaces(n)).map(({ id }) => id);
    expect([await latest(1), await latest(5), await latest(0)]).toEqual([[CUFF], [CUFF, LONG], []]);
    expect(given(await store.inHand()).place.id).toBe(CUFF);
    store.close();
  });
});

describe('rows of several makes at once', () => {
  it('are all written or none', async () => {
    const store = await withScarf();
    const done = given(
      await store.finishRows([
        { key: LONG, row: 1, plan: planOf('scarf', 'long', 30).id },
        { key: CUFF, row: 1 },
      ]),
    );
    expect(done.map(({ id, rows }) => [id, rows])).toEqual([
      [LONG, 1],
      [CUFF, 1],
    ]);
    const moved = await store.finishRows([
      { key: LONG, row: 2 },
      { key: CUFF, row: 1 },
    ]);
    expect(codesOf(moved)).toEqual(['place-moved']);
    const other = await store.finishRows([{ key: LONG, row: 2, plan: 'scarf/long/0/s/9' }]);
    expect(codesOf(other)).toEqual(['plan-moved']);
    expect(given(await store.place(LONG)).rows).toBe(1);
    store.close();
  });
});

describe('a backup that is taken back', () => {
  it('is one that was read in', async () => {
    const store = await withScarf();
    expect(codesOf(await takeBack(store.box))).toEqual(['no-way-back']);
    store.close();
  });
});
