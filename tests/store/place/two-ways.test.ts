import { describe, expect, it } from 'vitest';
import { waysIn } from '../../../src/progress/ways.ts';
import { exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { previewImport } from '../../../src/store/backup/preview.ts';
import { chooseWay } from '../../../src/store/place/choose-way.ts';
import type { PlanRecord } from '../../../src/store/records.ts';
import type { Store } from '../../../src/store/store.ts';
import { freshStore, given, LONG, nextRow, planOf, scarf, undoLast } from '../scenario.ts';

/** A plan that is one make's own: it says from which recipe. */
const own = (rows: number): PlanRecord => {
  const record = planOf('scarf', 'long', rows);
  const recipe = { name: 'Body', from: { castOn: 20 }, sections: [], end: 'bind off' as const };
  return { ...record, plan: { ...record.plan, recipe } };
};

const handOver = async (from: Store, to: Store) =>
  given(await importBackup(to.box, given(await exportAll(from.box)), 'merge'));

const knit = async (store: Store, rows: number) => {
  for (let i = 0; i < rows; i += 1) given(await nextRow(store, LONG));
};

const at = async (store: Store) => {
  const { rows, total, ways } = given(await store.place(LONG));
  return { rows, total, ways };
};

/** Phone and tablet with the same scarf at row 30 of 60. */
async function phoneAndTablet(): Promise<[Store, Store]> {
  const [phone, tablet] = [await freshStore(), await freshStore()];
  const { garment, plans } = scarf('scarf', 60);
  given(await phone.saveGarment(garment, plans));
  given(await phone.goTo(LONG, 30, 'place'));
  await handOver(phone, tablet);
  return [phone, tablet];
}

const waysOf = async (store: Store) => waysIn(given(await store.entriesOf(LONG)));

describe('a make that both devices planned anew', () => {
  const parted = async (): Promise<[Store, Store]> => {
    const [phone, tablet] = await phoneAndTablet();
    given(await phone.rework([{ key: LONG, plan: own(50) }]));
    await knit(phone, 6);
    given(await tablet.rework([{ key: LONG, plan: own(80) }]));
    await knit(tablet, 5);
    return [phone, tablet];
  };

  it('keeps both plans, shows the same on both, and says that there are two ways', async () => {
    const [phone, tablet] = await parted();
    await handOver(tablet, phone);
    await handOver(phone, tablet);
    expect(await at(phone)).toEqual({ rows: 36, total: 50, ways: 1 });
    expect(await at(tablet)).toEqual({ rows: 36, total: 50, ways: 1 });
    const { open } = await waysOf(phone);
    expect(open.map(({ rows }) => rows)).toEqual([35]);
    expect(given(await phone.plan(open[0]?.plan ?? 'no/plan/0/s/1')).plan.rows).toHaveLength(80);
  });

  it('is told beforehand as it will be', async () => {
    const [phone, tablet] = await parted();
    const { garments } = given(await previewImport(phone.box, given(await exportAll(tablet.box)), 'merge'));
    expect(garments[0]?.makes).toMatchObject([
      { here: 36, there: 35, after: 36, twoWays: { here: 50, there: 80 } },
    ]);
  });

  it('goes on by the one that she chooses, on both devices, and the other can be taken up again', async () => {
    const [phone, tablet] = await parted();
    await handOver(tablet, phone);
    const [other] = (await waysOf(phone)).open;
    if (other === undefined) throw new Error('one way only');
    given(await chooseWay(phone.box, LONG, other, given(await phone.place(LONG))));
    expect(await at(phone)).toEqual({ rows: 35, total: 80, ways: undefined });
    await handOver(phone, tablet);
    expect(await at(tablet)).toEqual({ rows: 35, total: 80, ways: undefined });
    const { open, left } = await waysOf(tablet);
    expect([open.length, left.map(({ rows }) => rows)]).toEqual([0, [36]]);
    await knit(tablet, 2);
    given(await chooseWay(tablet.box, LONG, left[0] ?? other, given(await tablet.place(LONG))));
    expect(await at(tablet)).toEqual({ rows: 36, total: 50, ways: undefined });
    await handOver(tablet, phone);
    expect(await at(phone)).toEqual({ rows: 36, total: 50, ways: undefined });
    expect((await waysOf(phone)).left.map(({ rows }) => rows)).toEqual([37]);
  });

  it('asks on while she knits on without choosing', async () => {
    const [phone, tablet] = await parted();
    await handOver(phone, tablet);
    await knit(tablet, 3);
    expect(await at(tablet)).toEqual({ rows: 39, total: 50, ways: 1 });
    await handOver(tablet, phone);
    expect(await at(phone)).toEqual({ rows: 39, total: 50, ways: 1 });
    expect((await waysOf(phone)).open.map(({ rows }) => rows)).toEqual([35]);
  });
});

describe('a choice', () => {
  it('that is taken back is asked again, and neither way is gone', async () => {
    const [phone, tablet] = await phoneAndTablet();
    given(await phone.rework([{ key: LONG, plan: own(50) }]));
    await knit(phone, 6);
    given(await tablet.rework([{ key: LONG, plan: own(80) }]));
    await knit(tablet, 5);
    await handOver(tablet, phone);
    const [other] = (await waysOf(phone)).open;
    if (other === undefined) throw new Error('one way only');
    given(await chooseWay(phone.box, LONG, other, given(await phone.place(LONG))));
    given(await undoLast(phone, LONG));
    expect(await at(phone)).toEqual({ rows: 36, total: 50, ways: 1 });
    await handOver(phone, tablet);
    for (const store of [phone, tablet]) {
      expect(await at(store)).toEqual({ rows: 36, total: 50, ways: 1 });
      const { open, left } = await waysOf(store);
      expect([open.map(({ rows }) => rows), left]).toEqual([[35], []]);
    }
    // a row more, taken back, and the choice made again
    await knit(phone, 1);
    given(await undoLast(phone, LONG));
    const [again] = (await waysOf(phone)).open;
    given(await chooseWay(phone.box, LONG, again ?? other, given(await phone.place(LONG))));
    expect(await at(phone)).toEqual({ rows: 35, total: 80, ways: undefined });
    expect((await waysOf(phone)).left.map(({ rows }) => rows)).toEqual([36]);
  });

  it('between two rows of one plan is taken back to the row that was shown', async () => {
    const [phone, tablet] = await phoneAndTablet();
    given(await phone.goTo(LONG, 10, 'rip back'));
    await knit(tablet, 8);
    await handOver(tablet, phone);
    const [other] = (await waysOf(phone)).open;
    if (other === undefined) throw new Error('one way only');
    given(await chooseWay(phone.box, LONG, other, given(await phone.place(LONG))));
    expect(await at(phone)).toEqual({ rows: 10, total: 60, ways: undefined });
    given(await undoLast(phone, LONG));
    expect(await at(phone)).toEqual({ rows: 38, total: 60, ways: 1 });
    expect((await waysOf(phone)).open.map(({ rows }) => rows)).toEqual([10]);
  });
});

describe('how many ways a place tells of', () => {
  const told = async (store: Store) => [(await at(store)).ways ?? 0, (await waysOf(store)).open.length];

  it('is what its log tells, after each thing that is done with the make', async () => {
    const [phone, tablet] = await phoneAndTablet();
    given(await phone.goTo(LONG, 10, 'rip back'));
    await knit(tablet, 8);
    await handOver(tablet, phone);
    expect(await told(phone)).toEqual([1, 1]);
    await knit(phone, 1);
    expect(await told(phone)).toEqual([1, 1]);
    given(await phone.append(LONG, { kind: 'note', text: 'a knot' }));
    expect(await told(phone)).toEqual([1, 1]);
    // now the row of the other lies on the way of this one
    given(await phone.goTo(LONG, 10, 'rip back'));
    expect(await told(phone)).toEqual([0, 0]);
    await knit(phone, 2);
    expect(await told(phone)).toEqual([0, 0]);
  });
});

describe('a make that is planned anew on one device and knitted on by the old plan on the other', () => {
  it('stands at a row of a plan by which it was knitted, and the other is a way of its own', async () => {
    const [phone, tablet] = await phoneAndTablet();
    given(await phone.rework([{ key: LONG, plan: own(44) }]));
    await knit(tablet, 5);
    await handOver(tablet, phone);
    expect(await at(phone)).toEqual({ rows: 35, total: 60, ways: 1 });
    expect((await waysOf(phone)).open.map(({ rows }) => rows)).toEqual([30]);
  });
});

describe('a device that is merely further', () => {
  it('asks nothing: the rows of the other lie on its way', async () => {
    const [phone, tablet] = await phoneAndTablet();
    await knit(phone, 3);
    await knit(tablet, 8);
    await handOver(tablet, phone);
    expect(await at(phone)).toEqual({ rows: 38, total: 60, ways: undefined });
  });

  it('but where the other was ripped back since, both are shown', async () => {
    const [phone, tablet] = await phoneAndTablet();
    given(await phone.goTo(LONG, 10, 'rip back'));
    await knit(tablet, 8);
    await handOver(tablet, phone);
    expect(await at(phone)).toEqual({ rows: 38, total: 60, ways: 1 });
  });
});
