import { describe, expect, it } from 'vitest';
import { openGarmentInHand } from '../../../src/app/garments/open-garments.ts';
import { keyInHand, makeInHand } from '../../../src/app/in-hand/make-in-hand.ts';
import { openMake } from '../../../src/app/in-hand/open-make.ts';
import { goBy, waysOf } from '../../../src/app/in-hand/ways.ts';
import { inHand, readFault, storedRows } from '../../../src/app/state.ts';
import { fault } from '../../../src/knit/fault.ts';
import { exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import type { PlanRecord } from '../../../src/store/records.ts';
import type { Store } from '../../../src/store/store.ts';
import { freshStore, given, LONG, nextRow, planOf, scarf } from '../../store/scenario.ts';
import { openApp } from '../open-app.ts';

/** A plan that is one make's own, whose rows have so many stitches. */
const own = (rows: number, after: number): PlanRecord => {
  const record = planOf('scarf', 'long', rows);
  const recipe = { name: 'Body', from: { castOn: 20 }, sections: [], end: 'bind off' as const };
  const plan = { ...record.plan, recipe, rows: record.plan.rows.map((row) => ({ ...row, after })) };
  return { ...record, plan };
};

const handOver = async (from: Store, to: Store) =>
  given(await importBackup(to.box, given(await exportAll(from.box)), 'merge'));
const knit = async (store: Store, rows: number) => {
  for (let i = 0; i < rows; i += 1) given(await nextRow(store, LONG));
};

/** Phone and tablet were at row 30 of 60, planned the rest anew each, and the app on the phone has both ways. */
async function twoWays(wrap: (store: Store) => Store = (store) => store): Promise<Store> {
  const { store: phone } = await openApp(wrap);
  const tablet = await freshStore();
  const { garment, plans } = scarf('scarf', 60);
  given(await phone.saveGarment(garment, plans));
  given(await phone.goTo(LONG, 30, 'place'));
  await handOver(phone, tablet);
  given(await phone.rework([{ key: LONG, plan: own(50, 24) }]));
  await knit(phone, 6);
  given(await tablet.rework([{ key: LONG, plan: own(80, 16) }]));
  await knit(tablet, 5);
  await handOver(tablet, phone);
  await openMake(LONG);
  return phone;
}

const now = () => {
  const make = inHand.value;
  if (!make) throw new Error('nothing in hand');
  return make;
};
const told = async () => {
  const ways = await waysOf(now().place);
  const short = (all: NonNullable<typeof ways>['open']) =>
    all.map(({ rows, total, stitches, isHere }) => ({ rows, total, stitches, isHere }));
  return ways && { open: short(ways.open), left: short(ways.left) };
};
const here = { rows: 36, total: 50, stitches: 24, isHere: true };
const there = { rows: 35, total: 80, stitches: 16, isHere: false };

describe('a make that went two ways', () => {
  it('tells both, the one shown first, each with its rows, its stitches and whose it is', async () => {
    await twoWays();
    expect(await told()).toEqual({ open: [here, there], left: [] });
  });

  it('goes on by the one that she chooses; the other is left, and can be taken up again', async () => {
    await twoWays();
    const before = storedRows.value;
    const ways = await waysOf(now().place);
    const other = ways?.open[1]?.way;
    if (other === undefined) throw new Error('no other way');
    await goBy(now(), other);
    expect(inHand.value?.place).toMatchObject({ rows: 35, total: 80 });
    expect(storedRows.value).toBe(before + 1);
    expect(await told()).toEqual({ open: [], left: [here] });
    const left = (await waysOf(now().place))?.left[0]?.way;
    if (left === undefined) throw new Error('nothing left');
    await goBy(now(), left);
    expect(inHand.value?.place).toMatchObject({ rows: 36, total: 50 });
    expect((await told())?.open).toEqual([]);
  });

  it('has but one way to tell where the plan of the other is not to be read, and none where the log is not', async () => {
    let lost = '';
    let isDeaf = false;
    const phone = await twoWays((store) => ({
      ...store,
      plan: async (id) => (id === lost ? { ok: false, faults: [fault('no-such-plan')] } : store.plan(id)),
      entriesOf: async (...asked) =>
        isDeaf ? { ok: false, faults: [fault('store-not-answering')] } : store.entriesOf(...asked),
    }));
    lost = (await waysOf(now().place))?.open[1]?.way.plan ?? '';
    expect(await told()).toEqual({ open: [here], left: [] });
    isDeaf = true;
    expect(await told()).toBeUndefined();
    expect(readFault.value?.code).toBe('store-not-answering');
    isDeaf = false;
    expect(await phone.entriesOf(LONG)).toMatchObject({ ok: true });
  });

  it('is none on one device: there is nothing to choose', async () => {
    const { back } = await openApp();
    await openMake(back);
    expect(await told()).toEqual({ open: [], left: [] });
  });

  it('before the first row has the stitches of its beginning', async () => {
    const { store: phone } = await openApp();
    const tablet = await freshStore();
    const { garment, plans } = scarf('scarf', 60);
    given(await phone.saveGarment(garment, plans));
    await handOver(phone, tablet);
    await knit(tablet, 3);
    given(await tablet.goTo(LONG, 0, 'place'));
    await knit(phone, 1);
    await handOver(tablet, phone);
    await openMake(LONG);
    const all = await told();
    const { start } = planOf('scarf', 'long', 60).plan;
    for (const way of all?.open.filter(({ rows }) => rows === 0) ?? []) expect(way.stitches).toBe(start);
  });
});

describe('the copy of the piece in hand', () => {
  it('is known once its garment is read, and is no other copy', async () => {
    const { back } = await openApp();
    expect(keyInHand.value).toBeUndefined();
    await openMake(back);
    expect(keyInHand.value).toBe(back);
    await openGarmentInHand('sample');
    expect(makeInHand()?.make).toBe(1);
    expect(makeInHand()?.places.map(({ id }) => id)).toContain(back);
    await openMake('sample/sleeve/0/2');
    expect(makeInHand()?.make).toBe(2);
    expect(makeInHand()?.places.every(({ id }) => id.startsWith('sample/sleeve/'))).toBe(true);
    const other = scarf('scarf', 20);
    const { store } = await openApp();
    given(await store.saveGarment(other.garment, other.plans));
    await openMake(LONG);
    expect(makeInHand()).toBeUndefined();
  });
});
