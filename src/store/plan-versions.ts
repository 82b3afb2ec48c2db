import { type PlanRecord, planId } from './records.ts';
import type { Tx } from './schema.ts';

type Write = Tx<'readwrite'>;

/** Plans of a garment by the part that they are for: the newest version of each, and the newest that any make may take. */
export type NewestPlans = ReadonlyMap<string, PlanRecord>;

const slot = (piece: string, part: number, mirror: boolean): string =>
  `${piece}/${part}/${mirror ? 'm' : 's'}`;
const shared = (key: string): string => `${key}/shared`;

/** The newest plan of a part for makes not yet begun: a rework of one make is that make's alone. */
export const newestOf = (
  newest: NewestPlans,
  piece: string,
  part: number,
  mirror: boolean,
): PlanRecord | undefined => {
  const key = slot(piece, part, mirror);
  return newest.get(shared(key)) ?? newest.get(key);
};

/** The newest versions of each part's plan among the records. */
export function newestPlans(records: readonly PlanRecord[]): Map<string, PlanRecord> {
  const newest = new Map<string, PlanRecord>();
  for (const record of records) note(newest, record);
  return newest;
}

function note(newest: Map<string, PlanRecord>, record: PlanRecord): void {
  const key = slot(record.piece, record.part, record.mirror);
  for (const at of record.plan.recipe === undefined ? [key, shared(key)] : [key]) {
    if ((newest.get(at)?.version ?? 0) < record.version) newest.set(at, record);
  }
}

/**
 * Stores a plan as a version of its own, unless it says the same as the newest one of its
 * kind (for one make, for any); rows under a place never change.
 * Returns the record as stored: its `version` and `id` are the store's to give.
 */
export async function writePlan(
  tx: Write,
  newest: Map<string, PlanRecord>,
  record: PlanRecord,
): Promise<PlanRecord> {
  const { garment, piece, part, mirror } = record;
  const last = newest.get(slot(piece, part, mirror));
  const known = record.plan.recipe === undefined ? newestOf(newest, piece, part, mirror) : last;
  if (known !== undefined && JSON.stringify(known.plan) === JSON.stringify(record.plan)) return known;
  const version = (last?.version ?? 0) + 1;
  const stored = { ...record, version, id: planId(garment, piece, part, mirror, version) };
  note(newest, stored);
  await tx.objectStore('plans').put(stored);
  return stored;
}
