import { describe, expect, it } from 'vitest';
import { exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import type { GarmentRecord } from '../../../src/store/records.ts';
import type { Store } from '../../../src/store/store.ts';
import { nextStamp, stampBefore } from '../../../src/store/uniting/stamp.ts';
import { uniteGarments } from '../../../src/store/uniting/unite-garments.ts';
import { freshStore, given, scarf } from '../scenario.ts';

const YEAR_MS = 365 * 86_400_000;

const withClock = async (aheadMs: number) => {
  let at = 1_700_000_000_000 + aheadMs;
  const now = () => {
    at += 1000;
    return at;
  };
  return freshStore({ now, keep: undefined });
};

const handOver = async (from: Store, to: Store) =>
  given(await importBackup(to.box, given(await exportAll(from.box)), 'merge'));

const rename = async (store: Store, name: string) =>
  given(await store.changeGarment('scarf', (was) => ({ ...was, name })));

const nameOn = async (store: Store) => given(await store.garment('scarf')).name;

// Kulkarni et al. 2014, 'Logical Physical Clocks', section 3: what happened before has the lower stamp, and the time
// in it is never behind the highest clock seen
describe('stamps of changes', () => {
  it('lie above every stamp seen, whatever the own clock says', () => {
    const ahead = nextStamp(undefined, 1_800_000_000_000, 'bb');
    const next = nextStamp(ahead, 1_700_000_000_000, 'aa');
    expect(next > ahead).toBe(true);
    expect(nextStamp(next, 1_700_000_000_000, 'bb') > next).toBe(true);
    expect(nextStamp(next, 1_900_000_000_000, 'aa') > next).toBe(true);
  });

  it('lie above what was written before there were stamps, and of two such the later is above', () => {
    expect(nextStamp(undefined, 1, 'aa') > stampBefore(9_000_000_000_000, 'zz')).toBe(true);
    expect(stampBefore(2000, 'a') > stampBefore(1000, 'b')).toBe(true);
  });

  it('go on when the counter is full', () => {
    const full = nextStamp(undefined, 1000, 'aa').replace('.00000.', '.zzzzz.');
    const next = nextStamp(full, 5, 'bb');
    expect(next > full).toBe(true);
    expect(nextStamp(next, 5, 'aa') > next).toBe(true);
  });
});

describe('a device with a clock a year ahead', () => {
  it('does not win for a year: who has seen its change can change it again', async () => {
    const [phone, tablet] = [await withClock(0), await withClock(YEAR_MS)];
    const { garment, plans } = scarf();
    given(await phone.saveGarment(garment, plans));
    await handOver(phone, tablet);
    await rename(tablet, 'From next year');
    await handOver(tablet, phone);
    await rename(phone, 'Of today');
    await handOver(phone, tablet);
    await handOver(tablet, phone);
    expect([await nameOn(phone), await nameOn(tablet)]).toEqual(['Of today', 'Of today']);
  });
});

describe('a piece added and begun on one device', () => {
  it('stays when the other one ticks a step later', async () => {
    const [phone, tablet] = [await withClock(0), await withClock(60_000)];
    const { garment, plans } = scarf();
    const [long, cuff] = garment.pieces;
    given(await phone.saveGarment({ ...garment, pieces: long ? [long] : [] }, plans.slice(0, 1)));
    await handOver(phone, tablet);
    given(
      await phone.changeGarment(
        'scarf',
        (was) => ({ ...was, pieces: [...was.pieces, ...(cuff ? [cuff] : [])] }),
        plans.slice(1),
      ),
    );
    given(await phone.finishRow('scarf/cuff/0/1', 1));
    given(await tablet.changeGarment('scarf', (was) => ({ ...was, ticked: ['weave in'] })));
    await handOver(tablet, phone);
    await handOver(phone, tablet);
    for (const store of [phone, tablet]) {
      const stored = given(await store.garment('scarf'));
      expect(stored.pieces.map(({ id }) => id)).toEqual(['long', 'cuff']);
      expect(stored.ticked).toEqual(['weave in']);
      expect(given(await store.place('scarf/cuff/0/1')).rows).toBe(1);
    }
  });

  it('stays also where a file has heard of it and says nothing of it', () => {
    const { garment } = scarf();
    const seen = ['0loyw3v28.00000.aaaaaaaa'];
    const marks = { base: seen[0] ?? '', seen };
    const odd: GarmentRecord = { ...garment, pieces: garment.pieces.slice(0, 1), marks };
    const united = uniteGarments({ ...garment, marks }, odd, (piece) =>
      piece === 'cuff' ? { makes: 1, parts: 1 } : undefined,
    );
    expect(united.pieces.map(({ id }) => id)).toEqual(['long', 'cuff']);
  });
});

describe('notes written on two devices', () => {
  it('are both kept, the line that both had once, and what is written over both replaces both', async () => {
    const [phone, tablet] = [await withClock(0), await withClock(0)];
    const { garment, plans } = scarf();
    given(await phone.saveGarment({ ...garment, notes: 'Cast on loosely' }, plans));
    await handOver(phone, tablet);
    const add = async (store: Store, line: string) =>
      given(await store.changeGarment('scarf', (was) => ({ ...was, notes: `${was.notes}\n${line}` })));
    await add(phone, 'blue marker');
    await add(tablet, 'red marker');
    await handOver(tablet, phone);
    await handOver(phone, tablet);
    const lines = given(await phone.garment('scarf')).notes?.split('\n');
    expect(lines?.sort()).toEqual(['Cast on loosely', 'blue marker', 'red marker']);
    given(await tablet.changeGarment('scarf', (was) => ({ ...was, notes: 'done' })));
    await handOver(tablet, phone);
    expect(given(await phone.garment('scarf')).notes).toBe('done');
  });
});
