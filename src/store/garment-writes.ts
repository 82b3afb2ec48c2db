import { fault, ok, type Result, refuse } from '../knit/fault.ts';
import type { Recipe } from '../knit/piece/recipe.ts';
import { nameOf, Refusal } from './faults.ts';
import {
  changedGarment,
  type GarmentChange,
  garmentStores,
  putGarment,
  removeGarment,
  writeGarment,
} from './garments.ts';
import { entryId } from './ids.ts';
import type { GarmentRecord, PlaceRecord, PlanRecord } from './records.ts';
import { writeRework } from './rework.ts';
import { storeNames, type Tx } from './schema.ts';
import { troubleIn } from './shapes/check-record.ts';
import type { Box } from './store.ts';
import type { Tapped } from './taps.ts';
import type { Wish } from './write-log.ts';

/** What changes whole garments; loaded when it is first asked for, since no tap needs it. */

/** A garment that is new, or whole anew. What is saved must come back out of a backup: its shape is checked first. */
export function saveGarment(
  box: Box,
  garment: GarmentRecord,
  plans: readonly PlanRecord[],
): Promise<Result<readonly PlaceRecord[]>> {
  const detail = troubleIn(garment, plans);
  if (detail !== undefined) return Promise.resolve(refuse(fault('not-storable', { detailText: detail })));
  return counted(box, garment.id, (tx) => writeGarment(tx, garment, plans));
}

/**
 * Changes a garment as it now is, whichever window wrote it last: read and written in one transaction. `plans`: of the
 * pieces that the change brings with other rows. Gives the garment as stored.
 */
export async function changeGarment(
  box: Box,
  id: string,
  change: GarmentChange,
  plans: readonly PlanRecord[],
): Promise<Result<GarmentRecord>> {
  let last: string | undefined;
  const written = await box.door.write(garmentStores, async (tx, again) => {
    const { was, garment } = await changedGarment(tx, id, sure(change), box.now());
    // written the first time, although no answer came
    if (again && JSON.stringify(was) === last) return was;
    const detail = troubleIn(garment, plans);
    if (detail !== undefined) throw new Refusal(fault('not-storable', { detailText: detail }));
    last = JSON.stringify(garment);
    const samePieces = garment.pieces === was.pieces && plans.length === 0;
    if (!samePieces) await writeGarment(tx, garment, plans);
    else await putGarment(tx, garment, await tx.objectStore('places').index('garment').getAll(id));
    return garment;
  });
  if (written.ok) box.tell({ kind: 'garment', id });
  return written;
}

/** A change that throws is at fault itself: no other connection would mend it. */
const sure =
  (change: GarmentChange): GarmentChange =>
  (garment) => {
    try {
      return change(garment);
    } catch (error) {
      throw new Refusal(fault('not-storable', { detailText: nameOf(error) }));
    }
  };

export const deleteGarment = (box: Box, id: string): Promise<Result<void>> =>
  counted(box, id, (tx, again) => removeGarment(tx, id, again));

/** A write that may change how many garments there are; the sentinel learns the number. */
async function counted<T>(
  box: Box,
  id: string,
  work: (tx: Tx<'readwrite'>, again: boolean) => Promise<T>,
): Promise<Result<T>> {
  const written = await box.door.write(storeNames, async (tx, again) => {
    const value = await work(tx, again);
    return { value, garments: await tx.objectStore('summaries').count() };
  });
  if (!written.ok) return written;
  box.sentinel.change(() => ({ garments: written.value.garments }));
  box.tell({ kind: 'garment', id });
  return ok(written.value.value);
}

export async function rework(
  box: Box,
  key: string,
  plan: PlanRecord,
  { recipe, rows }: { readonly recipe?: Recipe; readonly rows?: number },
): Promise<Result<Tapped>> {
  const row = rows === undefined ? {} : { row: rows };
  const wish: Wish = { kind: 'rework', ...row, id: entryId(box.device), make: key, at: box.now() };
  const written = await box.door.write(garmentStores, async (tx, again) => ({
    place: await writeRework(tx, wish, plan, recipe, again),
  }));
  if (written.ok) box.tell({ kind: 'garment', id: plan.garment });
  return written;
}
