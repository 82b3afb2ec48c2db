import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exportAll } from '../../../src/store/backup/export.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { DEVICES, deviceDeeds } from '../../arbitraries/devices.ts';
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

const law = (runs: number, holds: (devices: Devices) => Promise<void>) =>
  fc.assert(
    fc.asyncProperty(
      deviceDeeds(),
      fc.array(fc.nat(100), { minLength: 6, maxLength: 6 }),
      async (deeds, turns) => {
        const devices = await united([...deeds], turns);
        try {
          await holds(devices);
        } finally {
          for (const store of devices.stores) store.close();
        }
      },
    ),
    { numRuns: runs, endOnFailure: false },
  );

/** What each device holds, without what belongs to the device itself. */
const heldBy = async ({ stores }: Devices) =>
  Promise.all(
    stores.map(async (store) => {
      const { settings: _own, ...rest } = await everything(store);
      return { ...rest, places: await places(store) };
    }),
  );

describe('devices that rework, edit, add, delete, note, tick and set their clocks, united in any order', () => {
  it('hold the same in the end', async () => {
    await law(25, async (devices) => {
      const [first, ...others] = await heldBy(devices);
      for (const other of others) expect(other).toEqual(first);
    });
  }, 180_000);

  it('have lost no entry, no piece, no line of notes, no tick, no weight and no yarn', async () => {
    await law(25, async ({ stores: [store], kept }) => {
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
    });
  }, 180_000);

  it('show each make at a row of a plan at which one of them had it', async () => {
    await law(25, async ({ stores: [store], kept }) => {
      if (store === undefined) return;
      for (const place of given(await store.placesOf('scarf'))) {
        if (place.seq === 0) continue;
        expect(kept.knitted).toContain(shownAs(place));
        const { plan } = given(await store.plan(place.plan));
        expect(plan.rows).toHaveLength(place.total);
      }
    });
  }, 180_000);

  it('have a place for every make of which anything was logged', async () => {
    await law(25, async ({ stores: [store] }) => {
      if (store === undefined) return;
      const there = new Set(given(await store.placesOf('scarf')).map(({ id }) => id));
      const { entries } = await everything(store);
      expect([...new Set(entries.map(({ make }) => make))].filter((make) => !there.has(make))).toEqual([]);
    });
  }, 180_000);

  it('have every piece that nobody began on the plan of its recipe', async () => {
    await law(25, async ({ stores: [store] }) => {
      if (store === undefined) return;
      const { pieces } = given(await store.garment('scarf'));
      const recipes = new Map(pieces.map((piece) => [piece.id, rowsOfRecipe(piece)]));
      for (const place of given(await store.placesOf('scarf')))
        if (place.seq === 0) expect([place.id, place.total]).toEqual([place.id, recipes.get(place.piece)]);
    });
  }, 180_000);

  it('can each make a backup that is read back', async () => {
    await law(10, async ({ stores: [store] }) => {
      if (store === undefined) return;
      const backup = given(await exportAll(store.box));
      expect(given(readBackup(JSON.stringify(backup)))).toEqual(backup);
    });
  }, 180_000);
});
