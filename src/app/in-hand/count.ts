import { signal } from '@preact/signals';
import type { Result } from '../../knit/fault.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { type LogEntry, type MakeKey, makeKey, type PieceId } from '../../progress/log.ts';
import type { Rework } from '../../store/garment/rework.ts';
import type { NewEntry, PlaceRecord, PlanRecord } from '../../store/records.ts';
import type { RowMeant } from '../../store/store.ts';
import type { MendWrites } from '../garments/mending.ts';
import { openGarmentInHand } from '../garments/open-garments.ts';
import { garmentInHand, inHand, looking, readFault, storedRows } from '../state.ts';
import { readOr, store } from '../store.ts';
import { openMake } from './open-make.ts';
import { tap } from './taps.ts';

/** What she can do about a count, a place and a plan. */

/** the log of the make in hand; undefined until read */
export const logInHand = signal<
  { readonly make: MakeKey; readonly entries: readonly LogEntry[] } | undefined
>(undefined);

/** Reads the log of the make in hand, and the rest of its garment. */
export async function openLog(make: MakeKey): Promise<void> {
  if (logInHand.value?.make !== make) logInHand.value = undefined;
  const entries = readOr(await (await store()).entriesOf(make));
  if (entries !== undefined) logInHand.value = { make, entries };
}

/** Opens a make with its log and its garment, for the pages about count and place. */
export async function openCount(make: MakeKey): Promise<void> {
  await Promise.all([openMake(make), openLog(make)]);
  const now = inHand.value;
  if (now) await openGarmentInHand(now.place.garment);
}

/** Logs a check, a note, a lifeline, or strikes one out; true once it is stored. */
export async function logEntry(entry: NewEntry): Promise<boolean> {
  const now = inHand.value;
  if (!now) return false;
  let isStored = false;
  await tap(now, {
    write: (open, make, from, by) => open.append(make, { ...entry, from, by }),
    stored: () => {
      isStored = true;
    },
  });
  await openLog(now.make);
  return isStored;
}

/** So many rows are worked: found again, or ripped back to. */
export async function setPlace(rows: number, kind: 'place' | 'rip back'): Promise<boolean> {
  const now = inHand.value;
  if (!now) return false;
  looking.value = undefined;
  let isStored = false;
  await tap(now, {
    write: (open, make, _rows, plan) => open.goTo(make, rows, kind, plan),
    stored: () => {
      isStored = true;
      storedRows.value += 1;
    },
  });
  await openLog(now.make);
  return isStored && inHand.value?.place.rows === rows;
}

/**
 * Moves makes of the piece in hand to new plans: the part in hand, and others that the change reaches into.
 * @param more what mends other pieces, written with it or not at all
 */
export async function takePlans(
  plans: readonly { readonly index: number; readonly part: PlannedPart }[],
  more: MendWrites = { reworks: [] },
): Promise<boolean> {
  const now = inHand.value;
  if (!now) return false;
  const open = await store();
  const { garment, piece, make } = now.place;
  const mirror = isMirrored(piece, make);
  const places = garmentInHand.value?.pieces.find(({ id }) => id === piece)?.makes[make - 1]?.places;
  const reworks = plans.map(({ index, part }): Rework => {
    const key = makeKey({ garment, piece, part: index, make });
    const shown = key === now.make ? now.place : places?.find(({ id }) => id === key);
    const record = { id: '', garment, piece, part: index, mirror, version: 0, plan: part };
    return { key, plan: record, ...(shown && { from: shown.rows, by: shown.plan }) };
  });
  const taken = readOr(await open.rework([...reworks, ...more.reworks], more.beside)) !== undefined;
  const fault = readFault.value;
  await Promise.all([openMake(now.make), openLog(now.make), openGarmentInHand(garment)]);
  // said after what was read since: that has gone well
  if (!taken) readFault.value = fault;
  return taken;
}

/** Whether the make is knitted from the mirror image of its piece. */
function isMirrored(piece: PieceId, make: number): boolean {
  const found = garmentInHand.value?.garment.pieces.find(({ id }) => id === piece);
  return found?.recipe.mirrored === true && make % 2 === 0;
}

/** Finishes the rows shown of makes on one needle: all of them or none, and then the page shows what is stored. */
export async function finishRows(rows: readonly RowMeant[]): Promise<boolean> {
  const open = await store();
  const [only, ...others] = rows;
  const done =
    only && others.length === 0
      ? await open.finishRow(only.key, only.row, only.plan)
      : await open.finishRows(rows);
  return shownAgain(done);
}

/** Takes the last change back of a make of which the page shows so many rows as worked. */
export const undoOn = async ({ id, rows, plan }: PlaceRecord): Promise<boolean> =>
  shownAgain(await (await store()).undo(id, rows, plan));

async function shownAgain(done: Result<unknown>): Promise<boolean> {
  const now = inHand.value;
  if (now) await Promise.all([openMake(now.make), openGarmentInHand(now.place.garment)]);
  // said after what was read since: that has gone well
  return readOr(done) !== undefined;
}

/** The plans that the make was knitted by before, the newest first, by their ids in the log. */
export async function plansBefore(
  entries: readonly LogEntry[],
  current: string,
): Promise<readonly PlanRecord[]> {
  const open = await store();
  const ids = [...new Set(entries.flatMap((entry) => (entry.plan === undefined ? [] : [entry.plan])))];
  const found = await Promise.all(ids.filter((id) => id !== current).map((id) => open.plan(id)));
  return found.flatMap((result) => (result.ok ? [result.value] : [])).reverse();
}
