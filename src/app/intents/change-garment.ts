import type { GarmentRecord } from '../../store/records.ts';
import { garmentShown } from '../state.ts';
import { readOr, store } from '../store.ts';

/**
 * Changes what belongs to a garment beside its plans (yarn, ticks, weights). The garment is read anew first, so that
 * what another window has written stays.
 * @returns whether it was stored; the fault of a store that failed is where the screens show it
 */
export function changeGarment(
  id: string,
  change: (garment: GarmentRecord) => GarmentRecord,
  now = Date.now(),
): Promise<boolean> {
  const done = last.then(() => changeOnce(id, change, now));
  last = done;
  return done;
}

/** One change after the other: a figure typed fast must not be overtaken by the one before it. */
let last: Promise<unknown> = Promise.resolve();

async function changeOnce(
  id: string,
  change: (garment: GarmentRecord) => GarmentRecord,
  now: number,
): Promise<boolean> {
  const open = await store();
  const garment = readOr(await open.garment(id));
  if (garment === undefined) return false;
  const changed = { ...change(garment), changedAt: now };
  if (readOr(await open.saveGarment(changed, [])) === undefined) return false;
  const shown = garmentShown.value;
  if (shown?.garment.id === id) garmentShown.value = { ...shown, garment: changed };
  return true;
}
