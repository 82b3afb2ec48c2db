import { describe, expect, it } from 'vitest';
import { writeHeld } from '../../../src/store/beside/write-held.ts';
import { journalIn } from '../../../src/store/place/journal.ts';
import type { Wish } from '../../../src/store/place/write-log.ts';
import { freshStore, given, LONG, nextRow, planOf, scarf } from '../scenario.ts';
import { memoryKeep } from './memory-keep.ts';

/** Taps that were kept outside the box are written into a real one. */

const CUFF = 'scarf/cuff/0/1' as const;
const PLAN = planOf('scarf', 'long', 30).id;
const wish = (id: string, of: Partial<Wish> = {}): Wish => ({ id, make: LONG, at: 200, kind: 'row', ...of });

async function boxWith(wishes: readonly Wish[], worked = 0) {
  const store = await freshStore({ keep: undefined });
  const { garment, plans } = scarf();
  given(await store.saveGarment(garment, plans));
  const before = [given(await store.place(LONG)), given(await store.place(CUFF))];
  const journal = journalIn(memoryKeep(), 'box');
  for (const one of wishes)
    journal.hold(one, before.find(({ id }) => id === one.make) ?? (before[0] as never));
  for (let i = 0; i < worked; i += 1) given(await nextRow(store, LONG));
  return { store, journal };
}

describe('taps kept outside, written into the box', () => {
  it('are counted, each make moved is named once as it stands, and nothing is held any more', async () => {
    const { store, journal } = await boxWith([
      wish('a', { from: 0, by: PLAN }),
      wish('b', { from: 1, by: PLAN }),
      wish('c', { make: CUFF, from: 0 }),
    ]);
    const written = given(await writeHeld(store.box.door, journal));
    expect(written).toMatchObject({ entries: 3, refused: undefined });
    expect(written?.places.map(({ id, rows }) => [id, rows])).toEqual([
      [LONG, 2],
      [CUFF, 1],
    ]);
    expect(journal.taps()).toEqual([]);
    expect(given(await store.place(LONG)).rows).toBe(2);
    store.close();
  });

  it('are none where the make has moved since: the first of them is refused, and what follows it', async () => {
    const { store, journal } = await boxWith(
      [wish('a', { from: 0 }), wish('b', { from: 1 }), wish('c', { make: CUFF, from: 0 })],
      1,
    );
    // the second would fit by chance
    const written = given(await writeHeld(store.box.door, journal));
    expect(written).toMatchObject({ entries: 1, refused: { code: 'place-moved', figures: { row: 1 } } });
    expect(given(await store.place(LONG)).rows).toBe(1);
    expect(given(await store.place(CUFF)).rows).toBe(1);
    expect(journal.taps()).toEqual([]);
    store.close();
  });

  it('keep a note, wherever the place is by now', async () => {
    const { store, journal } = await boxWith(
      [wish('n', { kind: 'note', text: 'red', from: 0, by: PLAN })],
      3,
    );
    expect(given(await writeHeld(store.box.door, journal))).toMatchObject({ entries: 1, refused: undefined });
    expect(given(await store.entriesOf(LONG)).at(-1)).toMatchObject({ kind: 'note', text: 'red', row: 3 });
    store.close();
  });

  it('are written once, however often they are offered', async () => {
    const { store, journal } = await boxWith([wish('a', { from: 0 })]);
    const held = journal.taps();
    given(await writeHeld(store.box.door, journal));
    const stillThere = { ...journal, taps: () => held };
    expect(given(await writeHeld(store.box.door, stillThere))?.refused).toBeUndefined();
    expect(given(await store.entriesOf(LONG))).toHaveLength(1);
    store.close();
  });

  it('wait in a box that has lost its garments', async () => {
    const { store, journal } = await boxWith([wish('a', { from: 0 })]);
    given(await store.deleteGarment('scarf'));
    expect(given(await writeHeld(store.box.door, journal))).toBeUndefined();
    expect(journal.taps()).toHaveLength(1);
    store.close();
  });
});
