import { beforeEach, describe, expect, it } from 'vitest';
import { keepGarment } from '../../../src/app/garments/keep-garment.ts';
import {
  finishRows,
  logEntry,
  logInHand,
  openCount,
  openLog,
  plansBefore,
  setPlace,
  takePlans,
  undoOn,
} from '../../../src/app/in-hand/count.ts';
import { openMake } from '../../../src/app/in-hand/open-make.ts';
import { notesOf } from '../../../src/app/in-hand/row-notes.ts';
import { garmentInHand, inHand, looking, readFault, storedRows } from '../../../src/app/state.ts';
import { fault, refuse } from '../../../src/knit/fault.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { type MakeKey, makeKey } from '../../../src/progress/log.ts';
import type { PlaceRecord } from '../../../src/store/records.ts';
import { given } from '../../store/scenario.ts';
import { type OpenApp, openApp } from '../open-app.ts';

/** What she can do about a count and a place, over a real store. */

let app: OpenApp;
const place = (): PlaceRecord => {
  const now = inHand.value;
  if (!now) throw new Error('nothing is in hand');
  return now.place;
};
const kinds = () => logInHand.value?.entries.map(({ kind }) => kind);
const knit = async (rows: number) => {
  for (let row = 1; row <= rows; row += 1) await app.store.finishRow(app.back, row);
  await openCount(app.back);
};

beforeEach(async () => {
  app = await openApp();
  garmentInHand.value = undefined;
  logInHand.value = undefined;
  storedRows.value = 0;
  await openCount(app.back);
});

describe('the pages about count and place', () => {
  it('have the make, its log and the rest of its garment', async () => {
    await knit(2);
    expect(inHand.value?.make).toBe(app.back);
    expect(logInHand.value?.make).toBe(app.back);
    expect(kinds()?.slice(-2)).toEqual(['row', 'row']);
    expect(garmentInHand.value?.garment.id).toBe(place().garment);
  });

  it('never show the log of another make, not even for a moment', async () => {
    const reading = openLog('another/make/0/1');
    expect(logInHand.value).toBeUndefined();
    await reading;
    expect(logInHand.value).toEqual({ make: 'another/make/0/1', entries: [] });
    const again = openLog('another/make/0/1');
    expect(logInHand.value).toBeDefined();
    await again;
  });
});

describe('what she writes down at a row', () => {
  it('stands in the log once it is said to be stored, at the row that is shown', async () => {
    await knit(3);
    expect(await logEntry({ kind: 'check', count: 112 })).toBe(true);
    expect(await logEntry({ kind: 'note', text: 'a dropped stitch' })).toBe(true);
    expect(kinds()?.slice(-2)).toEqual(['check', 'note']);
    expect(logInHand.value?.entries.at(-1)).toMatchObject({ row: 3, text: 'a dropped stitch' });
    expect(logInHand.value?.entries.at(-2)).toMatchObject({ row: 3, count: 112 });
    expect(storedRows.value).toBe(0);
  });

  it('is not stored without a make in hand', async () => {
    inHand.value = null;
    expect(await logEntry({ kind: 'note', text: 'x' })).toBe(false);
    expect(await setPlace(2, 'place')).toBe(false);
    expect(await takePlans([])).toBe(false);
  });

  it('is found at the row that comes after it: notes of every make, lifelines of this one', async () => {
    await knit(2);
    await logEntry({ kind: 'note', text: 'blue from here' });
    await logEntry({ kind: 'lifeline' });
    const own = await notesOf(place());
    expect(own).toMatchObject([
      { kind: 'note', row: 3, text: 'blue from here', make: 1 },
      { kind: 'lifeline', row: 3, text: '', make: 1 },
    ]);
    const other = { ...place(), make: 2, id: makeKey({ ...place(), make: 2 }) };
    expect((await notesOf(other)).map(({ kind, make }) => [kind, make])).toEqual([['note', 1]]);
    const elsewhere = [
      { ...place(), part: place().part + 1 },
      { ...place(), piece: 'another' },
      { ...place(), garment: 'another' },
    ];
    for (const one of elsewhere) expect(await notesOf(one)).toEqual([]);
  });

  it('a lifeline that was ripped out is none any more, a note stays, and one struck out is gone', async () => {
    await knit(2);
    await logEntry({ kind: 'lifeline' });
    await knit(4);
    await logEntry({ kind: 'lifeline' });
    await logEntry({ kind: 'note', text: 'counted' });
    expect((await notesOf(place())).map(({ kind, row }) => [kind, row])).toEqual([
      ['note', 5],
      ['lifeline', 3],
      ['lifeline', 5],
    ]);
    await setPlace(2, 'rip back');
    expect((await notesOf(place())).map(({ kind, row }) => [kind, row])).toEqual([
      ['note', 5],
      ['lifeline', 3],
    ]);
    const [note] = await notesOf(place());
    expect(await logEntry({ kind: 'strike', undoes: note?.entry ?? '' })).toBe(true);
    expect((await notesOf(place())).map(({ kind }) => kind)).toEqual(['lifeline']);
  });

  it('is nothing where it cannot be read', async () => {
    await openApp((store) => ({ ...store, entriesOfGarment: async () => refuse(fault('storage-full')) }));
    await openMake(app.back);
    expect(await notesOf(place())).toEqual([]);
  });
});

describe('a place that she sets', () => {
  it('is where she is, in the log by how she came there, and the row looked at is let go', async () => {
    await knit(4);
    looking.value = 2;
    expect(await setPlace(2, 'rip back')).toBe(true);
    expect(looking.value).toBeUndefined();
    expect(place().rows).toBe(2);
    expect(kinds()?.at(-1)).toBe('rip back');
    expect(storedRows.value).toBe(1);
    expect(await setPlace(7, 'place')).toBe(true);
    expect(kinds()?.at(-1)).toBe('place');
    expect((await app.store.inHand(app.back)).ok && place().rows).toBe(7);
  });

  it('that the part has not is refused, and said not to be reached', async () => {
    const total = place().total;
    expect(await setPlace(total + 1, 'place')).toBe(false);
    expect(place().rows).toBe(0);
  });
});

describe('rows of several makes on one needle', () => {
  const other = () => {
    const found = garmentInHand.value?.pieces.flatMap(({ makes }) => makes.flatMap(({ places }) => places));
    const one = found?.find(({ id }) => id !== app.back);
    if (one === undefined) throw new Error('the sample has one make only');
    return one;
  };
  const rowsOf = async (key: MakeKey) => {
    const found = await app.store.inHand(key);
    return found.ok ? found.value.place.rows : undefined;
  };

  it('are finished together, and the page shows what is stored', async () => {
    const [one, two] = [place(), other()];
    const meant = [one, two].map(({ id, plan }) => ({ key: id, row: 1, plan }));
    expect(await finishRows(meant)).toBe(true);
    expect(await rowsOf(one.id)).toBe(1);
    expect(await rowsOf(two.id)).toBe(1);
    expect(place().rows).toBe(1);
  });

  it('are finished all or none: a row that is not the next takes none of them', async () => {
    const [one, two] = [place(), other()];
    readFault.value = undefined;
    expect(
      await finishRows([
        { key: one.id, row: 1, plan: one.plan },
        { key: two.id, row: 5, plan: two.plan },
      ]),
    ).toBe(false);
    expect(await rowsOf(one.id)).toBe(0);
    expect(readFault.value).toBeDefined();
  });

  it('one alone is finished as any row, and taken back by what the page showed', async () => {
    const one = place();
    expect(await finishRows([{ key: one.id, row: 1, plan: one.plan }])).toBe(true);
    expect(place().rows).toBe(1);
    const shown = place();
    expect(await undoOn(shown)).toBe(true);
    expect(place().rows).toBe(0);
    // the page of another window that still shows one row takes nothing back
    expect(await undoOn(shown)).toBe(false);
    expect(place().rows).toBe(0);
  });
});

describe('new plans for what is on the needles', () => {
  it('are those of the make in hand, and the one before is still to be had', async () => {
    await knit(2);
    const before = place().plan;
    const part = inHand.value?.part;
    if (part === undefined) throw new Error('nothing is in hand');
    const renamed = { ...part, name: 'back, longer' };
    const taken = await takePlans([{ index: place().part, part: renamed }]);
    expect(readFault.value).toBeUndefined();
    expect(taken).toBe(true);
    expect(inHand.value?.part.name).toBe('back, longer');
    expect(place().plan).not.toBe(before);
    expect(place().rows).toBe(2);
    expect(kinds()?.at(-1)).toBe('rework');
    expect(readFault.value).toBeUndefined();
    const entries = logInHand.value?.entries ?? [];
    const olds = await plansBefore(entries, place().plan);
    expect(olds.map(({ id }) => id)).toEqual([before]);
    expect(await plansBefore(entries, before)).toMatchObject([{ id: place().plan }]);
  });

  it('of a copy that is knitted from the mirror image are kept as such, of any other not', async () => {
    const part = inHand.value?.part;
    if (part === undefined) throw new Error('nothing is in hand');
    const mirrorOf = async () => {
      const plan = await app.store.plan(place().plan);
      return plan.ok ? plan.value.mirror : undefined;
    };
    await takePlans([{ index: place().part, part }]);
    expect(await mirrorOf()).toBe(false);
    // of a mirrored piece every second copy; of one that is not, none
    const copies = async (mirrored: boolean) => {
      const { pieces } = sampleGarment;
      const sleeve = pieces.find(({ name }) => name === 'Sleeve') as Recipe;
      const id = given(
        await keepGarment({ name: 'Sleeves', pieces: [{ ...sleeve, makes: 3, mirrored }] }, 2_000_000),
      );
      const found: (boolean | undefined)[] = [];
      for (const { id: key } of given(await app.store.placesOf(id))) {
        await openCount(key);
        const own = inHand.value?.part;
        if (own === undefined) throw new Error('no sleeve');
        expect(await takePlans([{ index: 0, part: own }])).toBe(true);
        found.push(await mirrorOf());
      }
      return found;
    };
    expect(await copies(true)).toEqual([false, true, false]);
    expect(await copies(false)).toEqual([false, false, false]);
  });

  it('may be of other parts of the copy as well, each from its own place on', async () => {
    await openCount('sample/front/0/1');
    const view = garmentInHand.value?.pieces.find(({ id }) => id === 'front')?.makes[0];
    const parts = view?.parts ?? [];
    expect(parts.length).toBeGreaterThan(1);
    const other = view?.places[1]?.id as MakeKey;
    await app.store.finishRow(other, 1);
    // the page has not seen that row of the other part: nothing of it is taken
    const plans = parts
      .slice(0, 2)
      .map((part, index) => ({ index, part: { ...part, name: `${part.name} anew` } }));
    expect(await takePlans(plans)).toBe(false);
    await openCount('sample/front/0/1');
    expect(await takePlans(plans)).toBe(true);
    expect(given(await app.store.place(other)).rows).toBe(1);
  });

  it('that the store refuses change nothing, and why is said', async () => {
    const full = fault('storage-full');
    const refusing = await openApp((store) => ({ ...store, rework: async () => refuse(full) }));
    await openCount(refusing.back);
    const part = inHand.value?.part;
    if (part === undefined) throw new Error('nothing is in hand');
    const before = place().plan;
    expect(await takePlans([{ index: place().part, part }])).toBe(false);
    expect(place().plan).toBe(before);
    expect(readFault.value).toEqual(full);
  });
});
