import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exportAll } from '../../../src/store/backup/export.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { DEVICES, deviceDeeds } from '../../arbitraries/devices.ts';
import { share } from '../../by-turns.ts';
import { seed } from '../../seed.ts';
import { everything, places } from '../knitted-box.ts';
import { given } from '../scenario.ts';
import { type Devices, devicesWith, doOn, rowsOfRecipe, shownAs, uniteAll } from './devices-model.ts';

/** A while with three devices that ends with every device having read the files of all others. */
async function united(deeds: Parameters<typeof doOn>[1][], turns: readonly number[]): Promise<Devices> {
  const devices = await devicesWith(DEVICES);
  for (const deed of deeds) await doOn(devices, deed);
  await uniteAll(devices, turns);
  return devices;
}

/** Whiles of three devices: each law is asked of all of them, since none changes what lies in a box. */
const WHILES = share(60);
const anyWhile = fc.tuple(deviceDeeds(), fc.array(fc.nat(100), { minLength: 6, maxLength: 6 }));
const whiles = fc.sample(anyWhile, { numRuns: WHILES, seed });
const all: Devices[] = [];

beforeAll(async () => {
  for (const [deeds, turns] of whiles) all.push(await united([...deeds], turns));
}, 180_000);

afterAll(() => {
  for (const { stores } of all.splice(0)) for (const store of stores) store.close();
});

/** A law that does not hold says after which deeds. */
const law = (says: string, holds: (devices: Devices) => Promise<void>) =>
  it(says, async () => {
    expect(all).toHaveLength(WHILES);
    for (const [at, devices] of all.entries())
      await holds(devices).catch((cause: unknown) => {
        throw new Error(`after ${JSON.stringify(whiles[at])}`, { cause });
      });
  }, 180_000);

/** What each device holds, without what belongs to the device itself. */
const heldBy = async ({ stores }: Devices) =>
  Promise.all(
    stores.map(async (store) => {
      const { settings: _own, ...rest } = await everything(store);
      return { ...rest, places: await places(store) };
    }),
  );

describe('devices that rework, edit, add, delete, note, tick and set their clocks, united in any order', () => {
  law('hold the same in the end', async (devices) => {
    const [first, ...others] = await heldBy(devices);
    for (const other of others) expect(other).toEqual(first);
  });

  law(
    'have lost no entry, no piece, no line of notes, no tick, no weight and no yarn',
    async ({ stores: [store], kept }) => {
      if (store === undefined) return;
      const { garments, entries } = await everything(store);
      const [garment] = garments;
      const found = new Set(entries.map(({ id }) => id));
      expect([...kept.entries].filter((id) => !found.has(id))).toEqual([]);
      const pieces = new Set(garment?.pieces.map(({ id }) => id));
      const begun = new Set(entries.map(({ make }) => make.split('/')[1]));
      expect(
        [...kept.pieces].filter((id) => !pieces.has(id) && (begun.has(id) || !kept.deleted.has(id))),
      ).toEqual([]);
      const lines = new Set(garment?.notes?.split('\n'));
      expect([...kept.notes].filter((line) => !lines.has(line))).toEqual([]);
      const ticked = new Set(garment?.ticked);
      expect([...kept.ticked].filter((tick) => !ticked.has(tick) && !kept.unticked.has(tick))).toEqual([]);
      const weighed = new Set(garment?.taken?.map(({ piece }) => piece));
      expect([...kept.weighed].filter((piece) => !weighed.has(piece))).toEqual([]);
      const yarns = new Set(garment?.yarns?.map(({ name }) => name));
      expect([...kept.yarns].filter((name) => !yarns.has(name))).toEqual([]);
    },
  );

  law('show each make at a row of a plan at which one of them had it', async ({ stores: [store], kept }) => {
    if (store === undefined) return;
    for (const place of given(await store.placesOf('scarf'))) {
      if (place.seq === 0) continue;
      expect(kept.knitted).toContain(shownAs(place));
      const { plan } = given(await store.plan(place.plan));
      expect(plan.rows).toHaveLength(place.total);
    }
  });

  law('have a place for every make of which anything was logged', async ({ stores: [store] }) => {
    if (store === undefined) return;
    const there = new Set(given(await store.placesOf('scarf')).map(({ id }) => id));
    const { entries } = await everything(store);
    expect([...new Set(entries.map(({ make }) => make))].filter((make) => !there.has(make))).toEqual([]);
  });

  law('have every piece that nobody began on the plan of its recipe', async ({ stores: [store] }) => {
    if (store === undefined) return;
    const { pieces } = given(await store.garment('scarf'));
    const recipes = new Map(pieces.map((piece) => [piece.id, rowsOfRecipe(piece)]));
    for (const place of given(await store.placesOf('scarf')))
      if (place.seq === 0) expect([place.id, place.total]).toEqual([place.id, recipes.get(place.piece)]);
  });

  law('can each make a backup that is read back', async ({ stores: [store] }) => {
    if (store === undefined) return;
    const backup = given(await exportAll(store.box));
    expect(given(readBackup(JSON.stringify(backup)))).toEqual(backup);
  });
});
