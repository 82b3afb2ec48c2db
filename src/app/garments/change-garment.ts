import type { GarmentId } from '../../progress/log.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { garmentShown } from '../state.ts';
import { readOr, store } from '../store.ts';

/**
 * Changes what belongs to a garment beside its plans (notes, yarn, ticks, weights), on the garment as it now is.
 * @returns whether it was stored; the fault of a store that failed is where the screens show it
 */
export async function changeGarment(
  id: GarmentId,
  change: (garment: GarmentRecord) => GarmentRecord,
): Promise<boolean> {
  const changed = readOr(await (await store()).changeGarment(id, change));
  if (changed === undefined) return false;
  const shown = garmentShown.value;
  if (shown?.garment.id === id) garmentShown.value = { ...shown, garment: changed };
  return true;
}
