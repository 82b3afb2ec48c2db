import { fault } from '../knit/fault.ts';
import { foldPlace } from '../progress/fold.ts';
import { type LogEntry, makeKey } from '../progress/log.ts';
import { Refusal } from './faults.ts';
import { grouped } from './grouped.ts';
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

async function writePlaces(tx: Write, garment: GarmentRecord, newest: NewestPlans): Promise<PlaceRecord[]> {
  const store = tx.objectStore('places');
  const old = new Map((await store.index('garment').getAll(garment.id)).map((place) => [place.id, place]));
  const places: PlaceRecord[] = [];
  for (const { id, plan } of makesOf(garment, newest)) {
    const key = makeKey(id);
    const begun = old.get(key);
    old.delete(key);
    if (begun !== undefined && begun.seq > 0) places.push(begun);
    else places.push(await writePlace(tx, { ...id, id: key }, plan, begun?.touched ?? 0));
  }
  // what the garment no longer asks for goes from view; its log stays and brings it back with the piece
  await each(old.keys(), (key) => store.delete(key));
  return places;
}

type PlaceOf = Pick<PlaceRecord, 'id' | 'garment' | 'piece' | 'part' | 'make'>;

async function writePlace(tx: Write, id: PlaceOf, newest: PlanRecord, touched: number): Promise<PlaceRecord> {
  const told = placeFrom(await logOf(tx, id.id), newest.id);
  const plan = told.plan === newest.id ? newest : ((await tx.objectStore('plans').get(told.plan)) ?? newest);
  const place = placeOn(id, told, plan, touched);
  await tx.objectStore('places').put(place);
  return place;
}

/** The places of a garment as all of its log tells them; `old` are those that it had. */
export function toldPlaces(
  garment: GarmentRecord,
  plans: readonly PlanRecord[],
  entries: readonly LogEntry[],
  old: readonly PlaceRecord[],
): PlaceRecord[] {
  const byId = new Map(plans.map((plan) => [plan.id, plan]));
  const logs = grouped(entries, (entry) => entry.make);
  const touched = new Map(old.map((place) => [place.id, place.touched]));
  return [...makesOf(garment, newestPlans(plans))].map(({ id, plan: newest }) => {
    const key = makeKey(id);
    const told = placeFrom(logs.get(key) ?? [], newest.id);
    return placeOn({ ...id, id: key }, told, byId.get(told.plan) ?? newest, touched.get(key) ?? 0);
  });
}

function placeOn(
  id: PlaceOf,
  told: ReturnType<typeof placeFrom>,
  plan: PlanRecord,
  touched: number,
): PlaceRecord {
  const total = plan.plan.rows.length;
  const rows = Math.min(told.rows, total);
  return { ...id, ...told, plan: plan.id, rows, total, touched: Math.max(touched, told.at) };
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
