import { beforeEach, describe, expect, it } from 'vitest';
import { coloursInHand } from '../../../src/app/in-hand/before-row.ts';
import { openCount } from '../../../src/app/in-hand/count.ts';
import { openMake } from '../../../src/app/in-hand/knit.ts';
import { besideFrom, stripesInForce, takeStripes } from '../../../src/app/in-hand/restripe.ts';
import { type GarmentView, garmentInHand, type InHand, inHand } from '../../../src/app/state.ts';
import { coloursOf } from '../../../src/knit/yarn/stripes.ts';
import type { MakeKey } from '../../../src/progress/log.ts';
import type { Store } from '../../../src/store/store.ts';
import { given } from '../../store/scenario.ts';
import { openApp } from '../open-app.ts';

let store: Store;
let back: MakeKey;

const now = (): InHand => inHand.value as InHand;
const view = (): GarmentView => garmentInHand.value as GarmentView;
const red = [
  { colour: 'red', rows: 2 },
  { colour: 'white', rows: 2 },
];

beforeEach(async () => {
  ({ store, back } = await openApp());
  await openMake(back);
  given(await store.goTo(back, 40, 'place', now().place.plan));
  await openMake(back);
  await openCount(back);
});

const colourOf = (piece: string, part: number, make: number, row: number) => {
  const { garment, pieces } = view();
  const parts = pieces.find(({ id }) => id === piece)?.makes.find((one) => one.make === make)?.parts ?? [];
  const of = parts[part];
  return of && coloursOf(garment, piece, parts, of, make)(row);
};

/** The front knitted so far. */
async function front(rows: number): Promise<void> {
  const place = view().pieces.find(({ id }) => id === 'front')?.makes[0]?.places[0];
  if (!place) throw new Error('The sample has no front.');
  given(await store.goTo(place.id, rows, 'place', place.plan));
  await openCount(back);
}

describe('other stripes for the rows to come', () => {
  it('lie beside the front, which is sewn to the back, and the sleeves, which meet it at the underarm', () => {
    const beside = besideFrom(view(), now(), 41);
    expect(beside.map(({ key }) => key)).toEqual(['front/1', 'sleeve/1', 'sleeve/2']);
    expect(beside.every(({ isOpen, knitted }) => isOpen && knitted === 0)).toBe(true);
    expect(beside[0]?.from).toBe(41);
  });

  it('are stored for all that go along; rows that are knitted have the colours that they had', async () => {
    expect(stripesInForce(now())).toEqual([]);
    expect(await takeStripes(now(), { stripes: red, row: 43, left: new Set(['sleeve/2']) })).toBe(true);
    const row = [40, 42, 43, 44, 45, 46, 47].map((n) => colourOf('back', 0, 1, n));
    expect(row).toEqual([undefined, undefined, 'red', 'red', 'white', 'white', 'red']);
    expect(colourOf('front', 0, 1, 43)).toBe('red');
    const stored = given(await store.garment(now().place.garment)).restriped;
    expect(stored?.map(({ piece, make }) => `${piece}/${make}`)).toEqual(['back/1', 'front/1', 'sleeve/1']);
    expect(stripesInForce(now())).toEqual(red);
    // the knitting screen says them, by the make in hand as the garment has it
    expect(coloursInHand(now().part)?.(45)).toBe('white');
  });

  it('of a front that is further begin where it is, in step with the back', async () => {
    await front(50);
    const [one] = besideFrom(view(), now(), 43);
    expect(one).toMatchObject({ key: 'front/1', from: 43, knitted: 8, isOpen: true });
    await takeStripes(now(), { stripes: red, row: 43, left: new Set() });
    expect([43, 50].map((n) => colourOf('front', 0, 1, n))).toEqual([undefined, undefined]);
    for (const n of [51, 52, 53, 54, 70]) expect(colourOf('front', 0, 1, n)).toBe(colourOf('back', 0, 1, n));
  });

  it('never reach below the needle, whatever row is asked for', async () => {
    await takeStripes(now(), { stripes: red, row: 1, left: new Set() });
    expect(colourOf('back', 0, 1, 40)).toBeUndefined();
    expect(colourOf('back', 0, 1, 41)).toBeDefined();
  });

  it('without any, from a further row on, are the garment’s own again', async () => {
    await takeStripes(now(), { stripes: red, row: 43, left: new Set() });
    await takeStripes(now(), { stripes: [], row: 45, left: new Set() });
    expect([43, 44, 45].map((n) => colourOf('back', 0, 1, n))).toEqual(['red', 'red', undefined]);
  });
});
