import { batch } from '@preact/signals';
import type { PlaceRecord } from '../../store/records.ts';
import { phone } from '../device/phone.ts';
import { inHand, locked, looking, storedRows } from '../state.ts';
import { readOr, store } from '../store.ts';
import { tap } from './taps.ts';

/** What she can do on the knitting screen. */

/** Opens a make; without a key the one last knitted. Resolves with its key, or undefined where there is none. */
export async function openMake(key?: string): Promise<string | undefined> {
  if (inHand.value?.make !== key) inHand.value = undefined;
  const result = await (await store()).inHand(key);
  if (!result.ok && result.faults[0]?.code.startsWith('no-such')) {
    inHand.value = null;
    return undefined;
  }
  const found = readOr(result);
  if (found === undefined) return undefined;
  const { place, plan, garment } = found;
  const now = inHand.value;
  // a row stored while this was being read is newer than what was read
  if (now?.make === place.id && now.place.seq > place.seq) return place.id;
  // read a second time before anything has changed: what shows it is not gone through again
  if (now?.place === place && now.part === plan.plan && now.garment === garment) return place.id;
  batch(() => {
    if (now?.make !== place.id) looking.value = undefined;
    inHand.value = { make: place.id, part: plan.plan, place, garment };
  });
  return place.id;
}

/** One tap, one row. Resolves when it is stored, or when it is known that it cannot be. */
export async function finishRow(): Promise<void> {
  const now = inHand.value;
  if (!now || locked.value || looking.value !== undefined) return;
  await tap({ make: now.make, write: (open, make) => open.finishRow(make), isRow: true, stored: rowStored });
}

/** Takes the last change of place back. */
export async function undoRow(): Promise<void> {
  const now = inHand.value;
  if (!now || locked.value) return;
  await tap({ make: now.make, write: (open, make) => open.undo(make), stored: moved });
}

/** Sets the place so that the given row (from 1) comes next. */
export async function goToRow(row: number): Promise<void> {
  const now = inHand.value;
  if (!now || locked.value) return;
  looking.value = undefined;
  await tap({ make: now.make, write: (open, make) => open.goTo(make, row - 1, 'place'), stored: moved });
}

/** Reads a row of the part (from 1) without moving the place; the row in hand is not a look aside. */
export function lookAtRow(row: number | undefined): void {
  const now = inHand.value;
  const inPart = now && row !== undefined && row >= 1 && row <= now.part.rows.length;
  looking.value = inPart && row !== now.place.rows + 1 ? row : undefined;
}

function rowStored(place: PlaceRecord): void {
  storedRows.value += 1;
  const isFirst = storedRows.value === 1;
  const part = inHand.value?.part;
  // the sitting counts from the row, not from when this file has come
  const now = Date.now();
  if (part) void phone().then(({ tellStored }) => tellStored({ part, rows: place.rows, now, isFirst }));
}

function moved(): void {
  storedRows.value += 1;
}
