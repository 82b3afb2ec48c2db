import { fault } from '../../knit/fault.ts';
import type { GarmentId, LogEntry, MakeKey, PlanId } from '../../progress/log.ts';
import type { StoreName, Tx } from '../box/schema.ts';
import { together } from '../box/together.ts';
import { Refusal } from '../faults.ts';
import type { GarmentSummary, PlaceRecord, PlanRecord } from '../records.ts';
import { logOf } from './write-log.ts';

type Read = Tx<'readonly'>;

export type Settings = Readonly<Record<string, unknown>>;

/** What the knitting screen paints first, from one transaction of few reads. */
export interface InHand {
  readonly place: PlaceRecord;
  readonly plan: PlanRecord;
  readonly garment: GarmentSummary;
}

/** Ids of the make that was last opened in this browser, of its plan and of its garment. */
export interface Seen {
  readonly make: MakeKey;
  readonly plan: PlanId;
  readonly garment: GarmentId;
}

export const inHandStores: readonly StoreName[] = ['places', 'plans', 'summaries'];

/** `guess`: what was last seen is read beside the place, and taken where the place is really of it. */
export async function readInHand(tx: Read, key: MakeKey | undefined, guess?: Seen): Promise<InHand> {
  const fits = key === undefined || key === guess?.make ? guess : undefined;
  const [found, guessed, near] = await together(
    async () => (key === undefined ? (await latest(tx, 1))[0] : tx.objectStore('places').get(key)),
    async () => fits && tx.objectStore('plans').get(fits.plan),
    async () => fits && tx.objectStore('summaries').get(fits.garment),
  );
  const place = present(found, 'no-such-make');
  const [plan, garment] = await together(
    async () => (guessed?.id === place.plan ? guessed : tx.objectStore('plans').get(place.plan)),
    async () => (near?.id === place.garment ? near : tx.objectStore('summaries').get(place.garment)),
  );
  return {
    place,
    plan: present(plan, 'no-such-plan'),
    garment: present(garment, 'no-such-garment'),
  };
}

/** Makes that were begun, the last one touched first. */
export async function latest(tx: Read, n: number): Promise<PlaceRecord[]> {
  const places: PlaceRecord[] = [];
  let cursor = await tx.objectStore('places').index('touched').openCursor(IDBKeyRange.lowerBound(1), 'prev');
  while (cursor !== null && places.length < n) {
    places.push(cursor.value);
    cursor = places.length < n ? await cursor.continue() : null;
  }
  return places;
}

export async function readSettings(tx: Read): Promise<Settings> {
  const store = tx.objectStore('settings');
  const [names, values] = await together(
    () => store.getAllKeys(),
    () => store.getAll(),
  );
  return Object.fromEntries(names.map((name, i) => [name, values[i]]));
}

/** The newest `lastN` entries of a make, or all of them, in order. */
export async function readEntries(tx: Read, key: MakeKey, lastN: number | undefined): Promise<LogEntry[]> {
  if (lastN === undefined) return logOf(tx, key);
  const place = await tx.objectStore('places').get(key);
  // after a merge two entries may share a seq: never fewer than lastN lie above this one
  const entries = await logOf(tx, key, (place?.seq ?? 0) - lastN + 1);
  return lastN === 0 ? [] : entries.slice(-lastN);
}

export function present<T>(
  value: T | undefined,
  code: 'no-such-garment' | 'no-such-make' | 'no-such-plan',
): T {
  if (value === undefined) throw new Refusal(fault(code));
  return value;
}
