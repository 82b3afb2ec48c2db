import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { changeGarment } from '../../src/app/garments/change-garment.ts';
import { openGarmentInHand } from '../../src/app/garments/open-garments.ts';
import { finishRows, logEntry, setPlace, undoOn } from '../../src/app/in-hand/count.ts';
import { finishRow, goToRow, openMake, undoRow } from '../../src/app/in-hand/knit.ts';
import { garmentInHand, inHand, readFault, tapFault } from '../../src/app/state.ts';
import { forgetStore, giveStore } from '../../src/app/store.ts';
import { openStore, type Store } from '../../src/store/store.ts';
import { codesOf, given, nextName, planOf, scarf } from '../store/scenario.ts';

/** This window hears of nothing that another one does, as where the browser allows no messages between windows. */

const LEFT = 'scarf/cuff/0/1' as const;
let here: Store;
let other: Store;

beforeEach(async () => {
  vi.stubGlobal('BroadcastChannel', undefined);
  const factory = new IDBFactory();
  const options = { factory: () => factory, name: nextName(), keep: undefined };
  here = given(await openStore(options));
  other = given(await openStore(options));
  forgetStore();
  giveStore(here);
  tapFault.value = undefined;
  const { garment, plans } = scarf();
  given(await here.saveGarment(garment, plans));
  await openMake(LEFT);
  await openGarmentInHand('scarf');
});
afterEach(() => {
  here.close();
  other.close();
  vi.unstubAllGlobals();
});

/** The other window plans the cuffs anew, which nobody has begun: other rows, the same number of them worked. */
const planAnew = async () =>
  given(
    await other.changeGarment('scarf', (was) => ({ ...was, pieces: [...was.pieces] }), [
      planOf('scarf', 'cuff', 20),
    ]),
  );

/** The other window takes the left cuff in hand to a plan of its own. */
const rework = async () => given(await other.rework([{ key: LEFT, plan: planOf('scarf', 'cuff', 24) }]));

const stored = async () => ({
  rows: given(await other.place(LEFT)).rows,
  entries: given(await other.entriesOf(LEFT)).filter(({ kind }) => kind !== 'rework').length,
});
const shown = () => [inHand.value?.place.rows, inHand.value?.part.rows.length, inHand.value?.place.total];
const cuffShown = () => {
  const place = garmentInHand.value?.pieces[1]?.makes[0]?.places[0];
  if (place === undefined) throw new Error('the cuff is not shown');
  return place;
};

describe('a window that hears no messages, after another one planned the piece anew', () => {
  const taps: readonly [string, () => Promise<unknown>][] = [
    ['a row', finishRow],
    ['a place', () => goToRow(5)],
    ['a place found', () => setPlace(5, 'place')],
    ['a count', () => logEntry({ kind: 'check', count: 20 })],
    ['a row on the page of two makes', () => finishRows([{ key: LEFT, row: 1, plan: cuffShown().plan }])],
  ];
  it.each(taps)(
    'does not write %s of the old plan, says so, and shows the rows that are stored',
    async (_, tap) => {
      await planAnew();
      await tap();
      expect(await stored()).toEqual({ rows: 0, entries: 0 });
      expect(tapFault.value?.code ?? readFault.value?.code).toBe('plan-moved');
      await vi.waitFor(() => expect(shown()).toEqual([0, 20, 20]));
      await finishRow();
      expect(await stored()).toEqual({ rows: 1, entries: 1 });
      expect(tapFault.value).toBeUndefined();
    },
  );

  it('writes none of the taps that waited behind such a one', async () => {
    await planAnew();
    await Promise.all([finishRow(), finishRow(), undoRow(), finishRow()]);
    expect(await stored()).toEqual({ rows: 0, entries: 0 });
    await vi.waitFor(() => expect(shown()).toEqual([0, 20, 20]));
  });

  it('does not write a row of a make that was begun and then taken to a plan of its own', async () => {
    await finishRow();
    await rework();
    await finishRow();
    expect((await stored()).rows).toBe(1);
    await vi.waitFor(() => expect(shown()).toEqual([1, 24, 24]));
    expect(await undoOn({ ...cuffShown(), rows: 1 })).toBe(false);
    expect((await stored()).rows).toBe(1);
  });

  it('takes back no change that it did not show, and shows the older rows where a new plan was taken back', async () => {
    await finishRow();
    await rework();
    await undoRow();
    expect(given(await other.place(LEFT)).total).toBe(24);
    await vi.waitFor(() => expect(shown()).toEqual([1, 24, 24]));
    await undoRow();
    expect(given(await other.place(LEFT)).total).toBe(12);
    await vi.waitFor(() => expect(shown()).toEqual([1, 12, 12]));
  });

  it('plans nothing anew from a place that another window has left', async () => {
    await finishRow();
    const { plan } = given(await here.place(LEFT));
    given(await other.finishRow(LEFT, 2));
    const own = { key: LEFT, plan: planOf('scarf', 'cuff', 30), from: 1, by: plan };
    expect(codesOf(await here.rework([own]))).toEqual(['place-moved']);
    await rework();
    expect(codesOf(await here.rework([{ ...own, from: 2 }]))).toEqual(['plan-moved']);
    expect(given(await other.place(LEFT)).total).toBe(24);
  });
});

describe('a window that hears no messages, after another one deleted the garment', () => {
  beforeEach(async () => given(await other.deleteGarment('scarf')));

  it('writes no row into it, says so, and shows that it is gone', async () => {
    await finishRow();
    expect(tapFault.value?.code).toBe('no-such-make');
    await vi.waitFor(() => expect(inHand.value).toBeNull());
    expect(codesOf(await other.place(LEFT))).toEqual(['no-such-make']);
    expect(given(await other.entriesOfGarment('scarf'))).toEqual([]);
  });

  it('writes no notes into it, and says so', async () => {
    expect(await changeGarment('scarf', (was) => ({ ...was, notes: 'blue' }))).toBe(false);
    expect(readFault.value?.code).toBe('no-such-garment');
    expect(given(await other.list())).toEqual([]);
  });
});
