import { fault } from '../../knit/fault.ts';
import { foldPlace } from '../../progress/fold.ts';
import { type LogEntry, makeKey, type PlanId } from '../../progress/log.ts';
import { toBeNamed } from '../../progress/log-chain.ts';
import { waysIn } from '../../progress/ways.ts';
import type { Tx } from '../box/schema.ts';
import { each } from '../box/together.ts';
import { Refusal } from '../faults.ts';
import { grouped } from '../grouped.ts';
import { logOf } from '../place/write-log.ts';
import type { GarmentRecord, PlaceRecord, PlanRecord } from '../records.ts';
import { type GarmentPlans, planForMakes, plansOfGarment } from './plan-versions.ts';

type Write = Tx<'readwrite'>;

/** The makes that a garment asks for, each with its plan. */
function* makesOf(garment: GarmentRecord, plans: GarmentPlans) {
  for (const one of garment.pieces) {
    const { id: piece, recipe } = one;
    for (let part = 0; part < recipe.parts.length; part += 1) {
      for (let make = 1; make <= recipe.makes; make += 1) {
        const plan = planForMakes(garment.id, one, part, recipe.mirrored === true && make % 2 === 0, plans);
        if (plan === undefined) throw new Refusal(fault('plan-missing', { part: part + 1 }));
        yield { id: { garment: garment.id, piece, part, make }, plan };
      }
    }
  }
}

export async function writePlaces(
  tx: Write,
  garment: GarmentRecord,
  plans: GarmentPlans,
): Promise<PlaceRecord[]> {
  const store = tx.objectStore('places');
  const old = new Map((await store.index('garment').getAll(garment.id)).map((place) => [place.id, place]));
  const places: PlaceRecord[] = [];
  for (const { id, plan } of makesOf(garment, plans)) {
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
  return [...makesOf(garment, plansOfGarment(plans))].map(({ id, plan: newest }) => {
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
function placeFrom(entries: readonly LogEntry[], fallback: PlanId) {
  const { rows, plan, seq, at } = foldPlace(entries);
  const after = toBeNamed(entries);
  const ways = waysIn(entries).open.length;
  const told = { rows, plan: plan ?? fallback, seq, at };
  return { ...told, ...(after !== undefined && { after }), ...(ways > 0 && { ways }) };
}
