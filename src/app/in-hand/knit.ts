import type { PlaceRecord } from '../../store/records.ts';
import { phone } from '../device/phone.ts';
import { inHand, locked, looking, storedRows } from '../state.ts';
import { tap } from './taps.ts';

export { openMake } from './open-make.ts';

/** What she can do on the knitting screen. */

/** One tap, one row. Resolves when it is stored, or when it is known that it cannot be. */
export async function finishRow(): Promise<void> {
  const now = inHand.value;
  if (!now || locked.value || looking.value !== undefined) return;
  await tap(now, {
    write: (open, make, rows, plan) => open.finishRow(make, rows + 1, plan),
    isRow: true,
    stored: rowStored,
  });
}

/** Takes the last change of place back. */
export async function undoRow(): Promise<void> {
  const now = inHand.value;
  if (!now || locked.value) return;
  await tap(now, { write: (open, make, rows, plan) => open.undo(make, rows, plan), stored: moved });
}

/** Sets the place so that the given row (from 1) comes next. */
export async function goToRow(row: number): Promise<void> {
  const now = inHand.value;
  if (!now || locked.value) return;
  looking.value = undefined;
  await tap(now, {
    write: (open, make, _rows, plan) => open.goTo(make, row - 1, 'place', plan),
    stored: moved,
  });
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
