import type { GarmentId, PlanId } from '../../progress/log.ts';
import type { Tx } from '../box/schema.ts';
import {
  type GarmentRecord,
  type NewPlan,
  type PieceRecord,
  type PlanRecord,
  planIdOf,
  planSlot,
} from '../records.ts';

type Write = Tx<'readwrite'>;

/** The plans of a garment: all by id, and by the part that they are for the newest of each, and the newest that any make may take. */
export interface GarmentPlans {
  readonly byId: Map<PlanId, PlanRecord>;
  readonly newest: Map<string, PlanRecord>;
}

const shared = (slot: string): string => `${slot}shared`;

export function plansOfGarment(records: readonly PlanRecord[]): GarmentPlans {
  const plans: GarmentPlans = { byId: new Map(), newest: new Map() };
  for (const record of records) note(plans, record);
  return plans;
}

function note({ byId, newest }: GarmentPlans, record: PlanRecord): void {
  byId.set(record.id, record);
  const slot = slotOf(record);
  for (const at of record.plan.recipe === undefined ? [slot, shared(slot)] : [slot]) {
    const known = newest.get(at);
    if (known === undefined || isAfter(record, known)) newest.set(at, record);
  }
}

/** Where devices gave two the same number, the same one on each device. */
const isAfter = (a: PlanRecord, b: PlanRecord): boolean =>
  a.version > b.version || (a.version === b.version && a.id > b.id);

const slotOf = ({ garment, piece, part, mirror }: NewPlan): string => planSlot(garment, piece, part, mirror);

/** The plan of a part for makes not yet begun: the one that the piece names; else the newest that is not one make's own. */
export function planForMakes(
  garment: GarmentId,
  { id, plans: names = [] }: Pick<PieceRecord, 'id' | 'plans'>,
  part: number,
  mirror: boolean,
  plans: GarmentPlans,
): PlanRecord | undefined {
  const slot = planSlot(garment, id, part, mirror);
  const name = names.find((one) => one.startsWith(slot));
  const named = name === undefined ? undefined : plans.byId.get(name);
  return named ?? plans.newest.get(shared(slot)) ?? plans.newest.get(slot);
}

/** The names of a piece's plans, as far as they are there. */
export const planNamesOf = (garment: GarmentId, piece: PieceRecord, plans: GarmentPlans): readonly PlanId[] =>
  slotsOf(piece).flatMap(({ part, mirror }) => {
    const plan = planForMakes(garment, piece, part, mirror, plans);
    return plan === undefined ? [] : [plan.id];
  });

export const slotsOf = ({ recipe }: PieceRecord) =>
  recipe.parts.flatMap((_, part) =>
    (recipe.mirrored === true && recipe.makes > 1 ? [false, true] : [false]).map((mirror) => ({
      part,
      mirror,
    })),
  );

/** By its pieces, those that were taken out, and versions that other devices made. */
export const plansNamedBy = (garment: GarmentRecord): PlanId[] =>
  [...garment.pieces, ...piecesUnseen(garment)].flatMap(({ plans = [] }) => plans);

/** Pieces that are kept and not shown, but may be again. */
export const piecesUnseen = ({ marks }: GarmentRecord): PieceRecord[] => [
  ...(marks?.gone ?? []).map(({ piece }) => piece),
  ...(marks?.also ?? []).flatMap(({ of }) => of?.pieces ?? []),
];

/**
 * Stores a plan as a version of its own, unless it says the same as the newest one of its
 * kind (for one make, for any); rows under a place never change.
 * Returns the record as stored: its `version` and `id` are the store's to give.
 */
export async function writePlan(tx: Write, plans: GarmentPlans, record: NewPlan): Promise<PlanRecord> {
  const slot = slotOf(record);
  const last = plans.newest.get(slot);
  const known = record.plan.recipe === undefined ? (plans.newest.get(shared(slot)) ?? last) : last;
  if (known !== undefined && JSON.stringify(known.plan) === JSON.stringify(record.plan)) return known;
  const next = { ...record, version: (last?.version ?? 0) + 1 };
  const stored = { ...next, id: planIdOf(next) };
  note(plans, stored);
  await tx.objectStore('plans').put(stored);
  return stored;
}
