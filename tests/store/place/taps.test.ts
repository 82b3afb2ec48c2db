import { describe, expect, it } from 'vitest';
import { codesOf, freshStore, given, LONG, nextRow, planOf, scarf, undoLast } from '../scenario.ts';

async function withScarf(rows = 30) {
  const store = await freshStore();
  const { garment, plans } = scarf('scarf', rows);
  given(await store.saveGarment(garment, plans));
  const rowsNow = async () => given(await store.place(LONG)).rows;
  return { store, garment, rowsNow };
}

describe('a tap', () => {
  it('finishes one row, and the log and the place say the same', async () => {
    const { store } = await withScarf();
    expect(given(await nextRow(store, LONG)).place).toMatchObject({ rows: 1, seq: 1, total: 30 });
    expect(given(await nextRow(store, LONG)).place).toMatchObject({ rows: 2, seq: 2 });
    expect(given(await store.entriesOf(LONG)).map((e) => [e.seq, e.kind, e.row])).toEqual([
      [1, 'row', 1],
      [2, 'row', 2],
    ]);
  });

  it('is kept with all that it says, and with nothing that it does not say', async () => {
    const { store } = await withScarf();
    await nextRow(store, LONG);
    await store.append(LONG, { kind: 'check', count: 20 });
    await store.append(LONG, { kind: 'note', text: 'blue' });
    const entries = given(await store.entriesOf(LONG));
    const said = entries.map((entry) =>
      Object.fromEntries(Object.entries(entry).filter(([name]) => !['id', 'at', 'plan'].includes(name))),
    );
    expect(said).toEqual([
      { make: LONG, seq: 1, kind: 'row', row: 1 },
      { make: LONG, seq: 2, kind: 'check', row: 1, count: 20 },
      { make: LONG, seq: 3, kind: 'note', row: 1, text: 'blue' },
    ]);
    expect(said.map((entry) => Object.keys(entry).sort().join(' '))).toEqual([
      'kind make row seq',
      'count kind make row seq',
      'kind make row seq text',
    ]);
    expect(new Set(entries.map(({ plan }) => plan))).toEqual(new Set([planOf('scarf', 'long', 30).id]));
  });

  it('is refused at the end of the part, and nothing is logged', async () => {
    const { store, rowsNow } = await withScarf(2);
    await nextRow(store, LONG);
    await nextRow(store, LONG);
    expect(codesOf(await nextRow(store, LONG))).toEqual(['at-the-end']);
    expect(await rowsNow()).toBe(2);
    expect(given(await store.entriesOf(LONG))).toHaveLength(2);
  });

  it('at once with others loses none and doubles none', async () => {
    const { store } = await withScarf();
    await Promise.all(Array.from({ length: 20 }, (_, i) => store.finishRow(LONG, i + 1)));
    const entries = given(await store.entriesOf(LONG));
    expect(entries.map((e) => e.row)).toEqual(Array.from({ length: 20 }, (_, i) => i + 1));
    expect(given(await store.place(LONG)).rows).toBe(20);
  });
});

describe('undo', () => {
  it('walks back through rows and places, one change at a time', async () => {
    const { store, rowsNow } = await withScarf();
    await nextRow(store, LONG);
    await nextRow(store, LONG);
    await store.goTo(LONG, 9, 'place');
    await nextRow(store, LONG);
    const seen: number[] = [];
    for (let i = 0; i < 4; i += 1) {
      given(await undoLast(store, LONG));
      seen.push(await rowsNow());
    }
    expect(seen).toEqual([9, 2, 1, 0]);
    expect(codesOf(await undoLast(store, LONG))).toEqual(['nothing-to-undo']);
  });

  it('is an entry, and a row finished after it can be taken back too', async () => {
    const { store, rowsNow } = await withScarf();
    await nextRow(store, LONG);
    await nextRow(store, LONG);
    await undoLast(store, LONG);
    await nextRow(store, LONG);
    expect(await rowsNow()).toBe(2);
    await undoLast(store, LONG);
    await undoLast(store, LONG);
    expect(await rowsNow()).toBe(0);
    expect(given(await store.entriesOf(LONG)).map((e) => e.kind)).toEqual([
      'row',
      'row',
      'undo',
      'row',
      'undo',
      'undo',
    ]);
  });

  it('finds the change before a long run of notes', async () => {
    const { store, rowsNow } = await withScarf();
    await nextRow(store, LONG);
    for (let i = 0; i < 50; i += 1) await store.append(LONG, { kind: 'note', text: `note ${i}` });
    given(await undoLast(store, LONG));
    expect(await rowsNow()).toBe(0);
  });
});

describe('notes, checks and lifelines', () => {
  it('leave the place alone and can be struck out', async () => {
    const { store, rowsNow } = await withScarf();
    await nextRow(store, LONG);
    await store.append(LONG, { kind: 'check', count: 20 });
    await store.append(LONG, { kind: 'note', text: 'blue marker at the edge' });
    expect(await rowsNow()).toBe(1);
    const note = given(await store.entriesOf(LONG, { lastN: 1 }))[0];
    given(await store.append(LONG, { kind: 'strike', undoes: note?.id ?? '' }));
    expect(given(await store.entriesOf(LONG)).at(-1)).toMatchObject({ kind: 'strike', undoes: note?.id });
    expect(codesOf(await store.append(LONG, { kind: 'strike', undoes: 'nowhere' }))).toEqual([
      'no-such-entry',
    ]);
  });
});

describe('a place set by hand', () => {
  it('must be a row of the part', async () => {
    const { store } = await withScarf();
    expect(codesOf(await store.goTo(LONG, 31, 'place'))).toEqual(['row-outside']);
    expect(codesOf(await store.goTo(LONG, -1, 'rip back'))).toEqual(['row-outside']);
    expect(codesOf(await store.goTo('scarf/nothing/0/1', 1, 'place'))).toEqual(['no-such-make']);
  });
});

describe('a rework', () => {
  it('changes plan, log and place together, and undo brings the old plan back', async () => {
    const { store } = await withScarf();
    for (let i = 0; i < 5; i += 1) await nextRow(store, LONG);
    const moved = given(await store.rework([{ key: LONG, plan: planOf('scarf', 'long', 44) }]))[0];
    expect(moved).toMatchObject({ rows: 5, total: 44, plan: planOf('scarf', 'long', 44, 2).id });
    await nextRow(store, LONG);
    await undoLast(store, LONG);
    expect(given(await undoLast(store, LONG)).place).toMatchObject({
      rows: 5,
      total: 30,
      plan: planOf('scarf', 'long', 30).id,
    });
    given(await undoLast(store, LONG));
    expect(given(await store.place(LONG))).toMatchObject({ rows: 4, total: 30 });
  });
});
