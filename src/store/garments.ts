import { fault } from '../knit/fault.ts';
import { foldPlace } from '../progress/fold.ts';
import { type LogEntry, makeKey } from '../progress/log.ts';
import { Refusal } from './faults.ts';
import { type NewestPlans, newestOf, newestPlans, writePlan } from './plan-versions.ts';
import { present } from './reads.ts';
import type { GarmentRecord, GarmentSummary, PlaceRecord, PlanRecord } from './records.ts';
import type { StoreName, Tx } from './schema.ts';
import { each, together } from './together.ts';
import { logOf, makesRange } from './write-log.ts';

type Write = Tx<'readwrite'>;

export const garmentStores: readonly StoreName[] = ['garments', 'summaries', 'plans', 'places', 'log'];

/**
 * Writes a garment with the plans of its parts, and a place for every part and make.
 * A make that was begun keeps its plan; only `rework` moves it to another.
 */
export async function writeGarment(
  tx: Write,
  garment: GarmentRecord,
  plans: readonly PlanRecord[],
): Promise<readonly PlaceRecord[]> {
  const known = await tx.objectStore('plans').index('garment').getAll(garment.id);
  const newest = newestPlans(known);
  for (const plan of plans) await writePlan(tx, newest, plan);
  const places = await writePlaces(tx, garment, newest);
  await dropUnusedPlans(tx, garment.id, known, newest, places);
  await putGarment(tx, garment, places);
  return places;
}

/** What a change makes of a garment: pure, since it may be asked for twice. */
export type GarmentChange = (garment: GarmentRecord) => GarmentRecord;

/** The garment as a change makes it, read in the transaction that will write it: its id and beginning are not to change. */
export async function changedGarment(
  tx: Write,
  id: string,
  change: GarmentChange,
  at: number,
): Promise<{ readonly was: GarmentRecord; readonly garment: GarmentRecord }> {
  const was = present(await tx.objectStore('garments').get(id), 'no-such-garment');
  const { createdAt, changedAt } = was;
  return { was, garment: { ...change(was), id, createdAt, changedAt: Math.max(at, changedAt + 1) } };
}

export const putGarment = (tx: Write, garment: GarmentRecord, places: readonly PlaceRecord[]) =>
  together(
    () => tx.objectStore('garments').put(garment),
    () => tx.objectStore('summaries').put(summaryOf(garment, places)),
  );

export const summaryOf = (garment: GarmentRecord, places: readonly PlaceRecord[]): GarmentSummary => ({
  id: garment.id,
  name: garment.name,
  createdAt: garment.createdAt,
  changedAt: garment.changedAt,
  pieces: garment.pieces.length,
  makes: places.length,
  rows: places.reduce((sum, place) => sum + place.total, 0),
});

/** The makes that a garment asks for, each with its plan. */
function* makesOf(garment: GarmentRecord, newest: NewestPlans) {
  for (const { id: piece, recipe } of garment.pieces) {
    for (let part = 0; part < recipe.parts.length; part += 1) {
      for (let make = 1; make <= recipe.makes; make += 1) {
        const plan = newestOf(newest, piece, part, recipe.mirrored === true && make % 2 === 0);
        if (plan === undefined) throw new Refusal(fault('plan-missing', { part: part + 1 }));
        yield { id: { garment: garment.id, piece, part, make }, plan };
      }
    }
  }
}

/** `refold`: also the places of begun makes are told anew from the log, which has got entries from elsewhere. */
export async function writePlaces(
  tx: Write,
  garment: GarmentRecord,
  newest: NewestPlans,
  refold = false,
): Promise<PlaceRecord[]> {
  const store = tx.objectStore('places');
  const old = new Map((await store.index('garment').getAll(garment.id)).map((place) => [place.id, place]));
  const places: PlaceRecord[] = [];
  for (const { id, plan } of makesOf(garment, newest)) {
    const key = makeKey(id);
    const begun = old.get(key);
    old.delete(key);
    if (!refold && begun !== undefined && begun.seq > 0) places.push(begun);
    else places.push(await writePlace(tx, { ...id, id: key }, plan, begun?.touched ?? 0));
  }
  // what the garment no longer asks for goes from view; its log stays and brings it back with the piece
  await each(old.keys(), (key) => store.delete(key));
  return places;
}

async function writePlace(
  tx: Write,
  id: Pick<PlaceRecord, 'id' | 'garment' | 'piece' | 'part' | 'make'>,
  newest: PlanRecord,
  touched: number,
): Promise<PlaceRecord> {
  const told = placeFrom(await logOf(tx, id.id), newest.id);
  const plan = told.plan === newest.id ? newest : ((await tx.objectStore('plans').get(told.plan)) ?? newest);
  const total = plan.plan.rows.length;
  const rows = Math.min(told.rows, total);
  const place = { ...id, ...told, plan: plan.id, rows, total, touched: Math.max(touched, told.at) };
  await tx.objectStore('places').put(place);
  return place;
}

/** The place of a make as its log tells it; `fallback` is the plan where the log names none. */
function placeFrom(entries: readonly LogEntry[], fallback: string) {
  const { rows, plan, seq, at } = foldPlace(entries);
  return { rows, plan: plan ?? fallback, seq, at };
}

/** A version that no make was ever begun on is of no use when a newer one stands. */
async function dropUnusedPlans(
  tx: Write,
  garment: string,
  known: readonly PlanRecord[],
  newest: NewestPlans,
  places: readonly PlaceRecord[],
): Promise<void> {
  const used = new Set([
    ...places.map((place) => place.plan),
    ...[...newest.values()].map((plan) => plan.id),
  ]);
  const idle = known.filter((plan) => !used.has(plan.id));
  if (idle.length === 0) return;
  const entries = await tx.objectStore('log').index('make').getAll(makesRange(garment));
  const begun = new Set(entries.map((entry) => entry.plan));
  await each(
    idle.filter((plan) => !begun.has(plan.id)),
    (plan) => tx.objectStore('plans').delete(plan.id),
  );
}

/** Everything of the garment in the stores that the transaction is over, log and photos included. */
export async function removeGarment(tx: Write, id: string, again: boolean): Promise<void> {
  if (!again && (await tx.objectStore('garments').count(id)) === 0)
    throw new Refusal(fault('no-such-garment'));
  const plans = await tx.objectStore('plans').index('garment').getAllKeys(id);
  const places = await tx.objectStore('places').index('garment').getAllKeys(id);
  const photos = await tx.objectStore('photos').index('garment').getAllKeys(id);
  const entries = await tx.objectStore('log').index('make').getAllKeys(makesRange(id));
  await together(
    () => tx.objectStore('garments').delete(id),
    () => tx.objectStore('summaries').delete(id),
    () => each(plans, (key) => tx.objectStore('plans').delete(key)),
    () => each(places, (key) => tx.objectStore('places').delete(key)),
    () => each(photos, (key) => tx.objectStore('photos').delete(key)),
    () => each(entries, (key) => tx.objectStore('log').delete(key)),
  );
}
