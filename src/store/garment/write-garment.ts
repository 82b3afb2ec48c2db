import { fault } from '../../knit/fault.ts';
import type { GarmentId, PieceId, PlanId } from '../../progress/log.ts';
import type { StoreName, Tx } from '../box/schema.ts';
import { each, together } from '../box/together.ts';
import { Refusal } from '../faults.ts';
import { present } from '../place/reads.ts';
import { makesRange } from '../place/write-log.ts';
import type { GarmentRecord, GarmentSummary, PieceRecord, PlaceRecord, PlanRecord } from '../records.ts';
import { begunIn, hasParts } from '../uniting/begun.ts';
import { type By, stampedChange } from '../uniting/stamped-change.ts';
import { writePlaces } from './places.ts';
import { type GarmentPlans, planNamesOf, plansNamedBy, plansOfGarment, writePlan } from './plan-versions.ts';

type Write = Tx<'readwrite'>;

export const garmentStores: readonly StoreName[] = ['garments', 'summaries', 'plans', 'places', 'log'];

export interface WrittenGarment {
  readonly garment: GarmentRecord;
  readonly places: readonly PlaceRecord[];
}

/**
 * Writes a garment with the plans of its parts, and a place for every part and make.
 * A make that was begun keeps its plan; only `rework` moves it to another.
 * @param was the garment as it is stored; undefined where it is new
 */
export async function writeGarment(
  tx: Write,
  given: GarmentRecord,
  newPlans: readonly PlanRecord[],
  was: GarmentRecord | undefined,
  by: By,
): Promise<WrittenGarment> {
  const known = await tx.objectStore('plans').index('garment').getAll(given.id);
  const plans = plansOfGarment(known);
  const kept = was ? await keptPieces(tx, given, was) : new Map<PieceId, PieceRecord>();
  const pieces = given.pieces.map((piece) => kept.get(piece.id) ?? piece);
  const names = new Set<PlanId>();
  for (const plan of newPlans) if (!kept.has(plan.piece)) names.add((await writePlan(tx, plans, plan)).id);
  const garment = stored({ ...given, pieces }, was, by, (piece) =>
    withPlans(given.id, piece, was, plans, names),
  );
  const places = await writePlaces(tx, garment, plans);
  await dropUnusedPlans(tx, garment, known, plans, places);
  await putGarment(tx, garment, places);
  return { garment, places };
}

/** Pieces that would lose a make or a part that was begun, in another window say: each stays as it is. */
async function keptPieces(
  tx: Write,
  given: GarmentRecord,
  was: GarmentRecord,
): Promise<ReadonlyMap<PieceId, PieceRecord>> {
  const places = await tx.objectStore('places').index('garment').getAll(was.id);
  const begun = begunIn(places.filter(({ seq }) => seq > 0).map(({ id }) => ({ make: id })));
  const next = new Map(given.pieces.map((piece) => [piece.id, piece]));
  const kept = was.pieces.filter((piece) => {
    const [needed, after] = [begun.get(`${was.id}/${piece.id}`), next.get(piece.id)];
    return needed && after && !(after.recipe.makes >= needed.makes && hasParts(after, needed));
  });
  return new Map(kept.map((piece) => [piece.id, piece]));
}

/** As it goes into the box: a new one bears no marks, a changed one those of the change. */
function stored(
  { marks: _theirs, ...given }: GarmentRecord,
  was: GarmentRecord | undefined,
  by: By,
  piece: (piece: PieceRecord) => PieceRecord,
): GarmentRecord {
  if (was !== undefined) return stampedChange(was, { ...given, pieces: given.pieces.map(piece) }, by);
  return { ...given, pieces: given.pieces.map(({ id, recipe }) => ({ id, recipe })) };
}

/** A piece with the names of its plans: of those that came with it, and for the other parts of those that it had. */
function withPlans(
  garment: GarmentId,
  { id, recipe }: PieceRecord,
  was: GarmentRecord | undefined,
  plans: GarmentPlans,
  names: ReadonlySet<PlanId>,
): PieceRecord {
  const before = was?.pieces.find((piece) => piece.id === id);
  const had =
    before && planNamesOf(garment, { id, recipe, ...(before.plans && { plans: before.plans }) }, plans);
  const came = [...names].filter((name) => name.startsWith(`${garment}/${id}/`));
  const now = planNamesOf(garment, { id, recipe, plans: [...came, ...(had ?? [])] }, plans);
  // nothing is said anew where nothing is another: an unchanged piece stays as it was, to the letter
  const said = before !== undefined && JSON.stringify(now) === JSON.stringify(had) ? before.plans : now;
  return { id, recipe, ...(said && { plans: said }) };
}

/** What a change makes of a garment: pure, since it may be asked for twice. */
export type GarmentChange = (garment: GarmentRecord) => GarmentRecord;

/** The garment as a change makes it, read in the transaction that will write it: its id and beginning are not to change. */
export async function changedGarment(
  tx: Write,
  id: GarmentId,
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

/** A version that no make was ever begun on is of no use when a newer one stands. */
async function dropUnusedPlans(
  tx: Write,
  garment: GarmentRecord,
  known: readonly PlanRecord[],
  { newest }: GarmentPlans,
  places: readonly PlaceRecord[],
): Promise<void> {
  const used = new Set([
    ...places.map((place) => place.plan),
    ...[...newest.values()].map((plan) => plan.id),
    ...plansNamedBy(garment),
  ]);
  const idle = known.filter((plan) => !used.has(plan.id));
  if (idle.length === 0) return;
  const entries = await tx.objectStore('log').index('make').getAll(makesRange(garment.id));
  const begun = new Set(entries.map((entry) => entry.plan));
  await each(
    idle.filter((plan) => !begun.has(plan.id)),
    (plan) => tx.objectStore('plans').delete(plan.id),
  );
}

/** Everything of the garment in the stores that the transaction is over, log and photos included. */
export async function removeGarment(tx: Write, id: GarmentId, again: boolean): Promise<void> {
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
