import { describe, expect, it } from 'vitest';
import { shelfOf } from '../../../src/app/garments/basket.ts';
import { changeGarment } from '../../../src/app/garments/change-garment.ts';
import { drawings } from '../../../src/app/garments/drawings.ts';
import {
  deleteGarment,
  openBasket,
  openDrawing,
  openGarment,
  openGarmentInHand,
} from '../../../src/app/garments/open-garments.ts';
import { planRecords } from '../../../src/app/garments/plan-records.ts';
import { openSample } from '../../../src/app/garments/sample.ts';
import { finishRow, goToRow, openMake } from '../../../src/app/in-hand/knit.ts';
import { nextMake } from '../../../src/app/in-hand/next-make.ts';
import {
  basket,
  garmentInHand,
  garmentShown,
  inHand,
  lastKnitted,
  readFault,
} from '../../../src/app/state.ts';
import { type Fault, fault, refuse } from '../../../src/knit/fault.ts';
import type { MakeKey } from '../../../src/progress/log.ts';
import { given, scarf } from '../../store/scenario.ts';
import { openApp } from '../open-app.ts';

/** What is said of the last reading; asked anew each time. */
const saidOf = (): string | undefined => readFault.value?.code;

describe('the sample', () => {
  it('is made once; opening it again keeps what was knitted', async () => {
    const { back, store } = await openApp();
    await openMake(back);
    await finishRow();
    const again = await openSample();
    expect(again.ok && again.value).toBe(back);
    const place = await store.place(back);
    expect(place.ok && place.value.rows).toBe(1);
  });

  it('has a place for every part and every make', async () => {
    await openApp();
    await openGarment('sample');
    const shown = garmentShown.value;
    const parts = shown?.pieces.map((piece) => [piece.name, piece.makes.map((make) => make.places.length)]);
    expect(parts).toEqual([
      ['Back', [1]],
      ['Front', [3]],
      ['Sleeve', [1, 1]],
      ['Neckband', [1]],
    ]);
  });
});

describe('a garment opened while another is still being read', () => {
  it('is the one that is shown, whichever read ends last', async () => {
    let release = () => {};
    const held = new Promise<void>((resolve) => {
      release = resolve;
    });
    await openApp((store) => ({
      ...store,
      placesOf: async (id) => {
        if (id === 'gone') await held;
        return store.placesOf('sample');
      },
      garment: () => store.garment('sample'),
    }));
    const slow = openGarment('gone');
    await openGarment('sample');
    const shown = garmentShown.value;
    release();
    await slow;
    expect(garmentShown.value).toBe(shown);
    expect(shown?.garment.id).toBe('sample');
  });
});

describe('a garment whose id is a word of the language', () => {
  it.each(['constructor', '__proto__', 'toString'])(
    '%s has a drawing once it was read, and none before',
    async (id) => {
      const { store } = await openApp();
      const sample = given(await store.garment('sample'));
      const record = { ...sample, id };
      given(await store.saveGarment(record, given(planRecords(record))));
      expect(drawings.value.get(id)).toBeUndefined();
      await openDrawing(id);
      expect(drawings.value.get(id)?.garment.id).toBe(id);
      expect(drawings.value.get(id)?.pieces).toHaveLength(sample.pieces.length);
      expect(await deleteGarment(id)).toBe(true);
      expect(drawings.value.get(id)).toBeUndefined();
    },
  );
});

describe('the workbasket', () => {
  it('has the make in hand at its top and every garment with the rows worked', async () => {
    await openApp();
    await openMake('sample/sleeve/0/2');
    await finishRow();
    await openBasket();
    expect(lastKnitted.value?.make).toBe('sample/sleeve/0/2');
    expect(basket.value?.map((entry) => [entry.garment.name, entry.worked])).toEqual([
      ['Harbour pullover', 1],
    ]);
  });

  it('has no garment in hand that is done to its last end: the one knitted before it, or none, while it stands as finished', async () => {
    const { store } = await openApp();
    await openMake('sample/back/0/1');
    await finishRow();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    const places = given(await store.placesOf(garment.id));
    for (const { id, total } of places) {
      await openMake(id);
      await goToRow(total + 1);
    }
    const inHandNow = async () => {
      await openBasket();
      return lastKnitted.value?.place.garment;
    };
    // knitted, and not made up: it is sewn next
    expect(await inHandNow()).toBe(garment.id);
    await changeGarment(garment.id, (was) => ({ ...was, ticked: ['ends'] }));
    expect(await inHandNow()).toBe('sample');
    expect(lastKnitted.value).toMatchObject({
      make: 'sample/back/0/1',
      garment: { name: 'Harbour pullover' },
    });
    // an end that is not woven in after all
    await changeGarment(garment.id, (was) => ({ ...was, ticked: [] }));
    expect(await inHandNow()).toBe(garment.id);
    await changeGarment(garment.id, (was) => ({ ...was, ticked: ['ends'] }));
    expect(await deleteGarment('sample' as typeof garment.id)).toBe(true);
    expect(await inHandNow()).toBeUndefined();
    expect(basket.value?.map((entry) => [entry.garment.id, shelfOf(entry, Date.now())])).toEqual([
      [garment.id, 'finished'],
    ]);
  });

  it('is never shown as empty because it could not be read', async () => {
    const noAnswer = fault('store-not-answering');
    await openApp((store) => ({
      ...store,
      list: async () => refuse(noAnswer),
    }));
    basket.value = undefined;
    await openBasket();
    expect(basket.value).toBeUndefined();
    expect(readFault.value?.code).toBe('store-not-answering');
  });

  it('says so where the places of one garment could not be read, whichever of them it is', async () => {
    let failing = 0;
    const { store } = await openApp((open) => ({
      ...open,
      placesOf: async (id) =>
        id === (await open.list().then(given))[failing]?.id
          ? refuse(fault('store-not-answering'))
          : open.placesOf(id),
    }));
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    for (failing of [0, 1]) {
      basket.value = undefined;
      readFault.value = undefined;
      await openBasket();
      expect(basket.value, `${failing}`).toBeUndefined();
      expect(saidOf(), `${failing}`).toBe('store-not-answering');
    }
  });

  it('says so where only the make in hand could not be read; that there is none is no fault', async () => {
    let why: Fault = fault('store-not-answering');
    await openApp((store) => ({ ...store, inHand: async () => refuse(why) }));
    const said = async () => {
      readFault.value = undefined;
      lastKnitted.value = undefined;
      await openBasket();
      return saidOf();
    };
    expect(await said()).toBe('store-not-answering');
    expect(lastKnitted.value).toBeUndefined();
    why = fault('no-such-make');
    expect(await said()).toBeUndefined();
    expect(lastKnitted.value).toBeNull();
  });
});

describe('what comes next', () => {
  const nextAfter = async (make: MakeKey, rows: number) => {
    await openMake(make);
    await goToRow(rows);
    await finishRow();
    await openGarment('sample');
    const view = garmentShown.value;
    const place = view?.pieces.flatMap((p) => p.makes.flatMap((m) => m.places)).find(({ id }) => id === make);
    return view && place && nextMake(view, place)?.place.id;
  };

  it('is the other part of the same piece, then the other make, then the other pieces', async () => {
    await openApp();
    expect(await nextAfter('sample/front/0/1', 128)).toBe('sample/front/1/1');
    expect(await nextAfter('sample/front/1/1', 63)).toBe('sample/front/2/1');
    expect(await nextAfter('sample/sleeve/0/1', 139)).toBe('sample/sleeve/0/2');
    expect(await nextAfter('sample/front/2/1', 64)).toBe('sample/back/0/1');
  });

  it('is nothing when every row of every piece is worked', async () => {
    await openApp();
    await nextAfter('sample/front/0/1', 128);
    await nextAfter('sample/front/1/1', 63);
    await nextAfter('sample/front/2/1', 64);
    await nextAfter('sample/sleeve/0/1', 139);
    await nextAfter('sample/sleeve/0/2', 139);
    await nextAfter('sample/neckband/0/1', 9);
    expect(await nextAfter('sample/back/0/1', 192)).toBeUndefined();
  });
});

const saveNotes = (notes: string) => changeGarment('sample', (garment) => ({ ...garment, notes }));

describe('a garment', () => {
  it('keeps her notes without touching places or plans', async () => {
    const { back, store } = await openApp();
    await openMake(back);
    await finishRow();
    await openGarment('sample');
    expect(await saveNotes('Sleeves two ridges longer.')).toBe(true);
    const garment = await store.garment('sample');
    expect(garment.ok && garment.value.notes).toBe('Sleeves two ridges longer.');
    const place = await store.place(back);
    expect(place.ok && place.value.rows).toBe(1);
  });

  it('keeps notes and a tick that are made at once, and shows both', async () => {
    const { store } = await openApp();
    await openGarment('sample');
    const done = await Promise.all([
      saveNotes('Sleeves two ridges longer.'),
      changeGarment('sample', (garment) => ({ ...garment, ticked: ['ends'] })),
      saveNotes('Sleeves three ridges longer.'),
    ]);
    expect(done).toEqual([true, true, true]);
    const both = { notes: 'Sleeves three ridges longer.', ticked: ['ends'] };
    const garment = await store.garment('sample');
    expect(garment.ok && garment.value).toMatchObject(both);
    expect(garmentShown.value?.garment).toMatchObject(both);
  });

  it('takes with it what was shown of it, and leaves what is shown of others', async () => {
    const { store, back } = await openApp();
    const other = scarf('scarf', 20);
    given(await store.saveGarment(other.garment, other.plans));
    await openMake(back);
    await openBasket();
    await openGarment('sample');
    await openGarmentInHand('sample');
    await openDrawing('sample');
    await openDrawing('scarf');
    lastKnitted.value = inHand.value;
    expect(await deleteGarment('scarf')).toBe(true);
    expect([...drawings.value.keys()]).toEqual(['sample']);
    expect(basket.value?.map(({ garment }) => garment.id)).toEqual(['sample']);
    expect(lastKnitted.value?.garment.id).toBe('sample');
    expect(await deleteGarment('sample')).toBe(true);
    expect(lastKnitted.value).toBeUndefined();
    expect([garmentShown.value, garmentInHand.value]).toEqual([undefined, undefined]);
    expect([drawings.value.size, basket.value]).toEqual([0, []]);
    await openGarment('sample');
    expect(garmentShown.value).toBeNull();
    expect(readFault.value).toBeUndefined();
  });

  it('is gone when it is deleted, and another one of that name is not', async () => {
    const { store } = await openApp();
    await openBasket();
    expect(await deleteGarment('sample')).toBe(true);
    expect(await deleteGarment('sample')).toBe(false);
    const list = await store.list();
    expect(list.ok && list.value).toEqual([]);
    expect(basket.value).toEqual([]);
  });
});
