import { fault, ok, type Result, refuse } from '../../knit/fault.ts';
import type { GarmentId } from '../../progress/log.ts';
import type { Box } from '../box/box.ts';
import { storeNames, type Tx } from '../box/schema.ts';
import { nameOf, Refusal } from '../faults.ts';
import type { Wish } from '../place/write-log.ts';
import { type AskedOf, writeOnce } from '../place/write-once.ts';
import type { GarmentRecord, PlaceRecord, PlanRecord } from '../records.ts';
import { troubleIn, troubleInPlan, troubleInTurn } from '../shapes/check-record.ts';
import { type By, stampedChange } from '../uniting/stamped-change.ts';
import { type Rework, writeRework } from './rework.ts';
import {
  changedGarment,
  type GarmentChange,
  garmentStores,
  putGarment,
  removeGarment,
  writeGarment,
} from './write-garment.ts';

/** What changes whole garments; loaded when it is first asked for, since no tap needs it. */

/**
 * A garment that is new: one of its id that is there stays as it is. What is saved must come back out of a backup: its
 * shape is checked first.
 */
export async function saveGarment(
  box: Box,
  garment: GarmentRecord,
  plans: readonly PlanRecord[],
): Promise<Result<readonly PlaceRecord[]>> {
  const trouble = await troubleInTurn(garment, plans);
  if (trouble !== undefined) return refuse(trouble);
  return counted(box, garment.id, async (tx) => {
    const there = await tx.objectStore('garments').get(garment.id);
    if (there === undefined) return (await writeGarment(tx, garment, plans, undefined, byNow(box))).places;
    // saved the first time, although no answer came
    if (JSON.stringify(there) === JSON.stringify(garment))
      return tx.objectStore('places').index('garment').getAll(garment.id);
    throw new Refusal(fault('garment-there'));
  });
}

/**
 * Changes a garment as it now is, whichever window wrote it last: read and written in one transaction. `plans`: of the
 * pieces that the change brings with other rows. Gives the garment as stored.
 */
export async function changeGarment(
  box: Box,
  id: GarmentId,
  change: GarmentChange,
  plans: readonly PlanRecord[],
): Promise<Result<GarmentRecord>> {
  let last: string | undefined;
  const written = await box.door.write(garmentStores, async (tx, again) => {
    const { was, garment } = await changedGarment(tx, id, sure(change), box.now());
    // written the first time, although no answer came
    if (again && JSON.stringify(was) === last) return was;
    const trouble = troubleIn(garment, plans);
    if (trouble !== undefined) throw new Refusal(trouble);
    const samePieces = garment.pieces === was.pieces && plans.length === 0;
    const stored = samePieces
      ? await writeFields(tx, was, garment, byNow(box))
      : (await writeGarment(tx, garment, plans, was, byNow(box))).garment;
    last = JSON.stringify(stored);
    return stored;
  });
  if (written.ok) box.tell({ kind: 'garment', id });
  return written;
}

async function writeFields(tx: Tx<'readwrite'>, was: GarmentRecord, next: GarmentRecord, by: By) {
  const stored = stampedChange(was, next, by);
  await putGarment(tx, stored, await tx.objectStore('places').index('garment').getAll(was.id));
  return stored;
}

const byNow = ({ device, now }: Box): By => ({ device, at: now() });

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

export const deleteGarment = (box: Box, id: GarmentId): Promise<Result<void>> =>
  counted(box, id, (tx, again) => removeGarment(tx, id, again));

/** A write that may change how many garments there are; the sentinel learns the number. */
async function counted<T>(
  box: Box,
  id: GarmentId,
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

/** What of the garment itself changes with a rework of its makes: pieces that are not begun. */
export interface ChangeBeside {
  readonly id: GarmentId;
  readonly change: GarmentChange;
  readonly plans: readonly PlanRecord[];
}

export async function rework(
  box: Box,
  reworks: readonly Rework[],
  beside?: ChangeBeside,
): Promise<Result<readonly PlaceRecord[]>> {
  const trouble = reworks
    .map(({ plan, recipe }) => troubleInPlan(plan, recipe))
    .find((found) => found !== undefined);
  if (trouble !== undefined) return refuse(trouble);
  const written = await writeOnce(box, reworks, reworks.map(entryFor), (wishes, doubted) =>
    box.door.write(garmentStores, async (tx, again) => {
      const places: PlaceRecord[] = [];
      // first: it may refuse, where the garment is not as it was read
      if (beside) await writeBeside(tx, box, beside);
      for (const [i, { plan, recipe }] of reworks.entries()) {
        places.push(await writeRework(tx, wishes[i] as Wish, plan, recipe, again || doubted));
      }
      return places;
    }),
  );
  if (!written.ok) return written;
  const garments = new Set(written.value.map(({ garment }) => garment));
  for (const id of garments) box.tell({ kind: 'garment', id });
  return written;
}

async function writeBeside(
  tx: Tx<'readwrite'>,
  box: Box,
  { id, change, plans }: ChangeBeside,
): Promise<void> {
  const { was, garment } = await changedGarment(tx, id, sure(change), box.now());
  const trouble = troubleIn(garment, plans);
  if (trouble !== undefined) throw new Refusal(trouble);
  await writeGarment(tx, garment, plans, was, byNow(box));
}

const entryFor = ({ key, from, by, rows }: Rework): AskedOf => ({
  kind: 'rework',
  make: key,
  ...(from === undefined ? {} : { from }),
  ...(rows === undefined ? {} : { row: rows }),
  by,
});
