import { type PlanRecord, planId } from './records.ts';
import type { Tx } from './schema.ts';

type Write = Tx<'readwrite'>;

/** Plans of a garment by the part that they are for: the newest version of each. */
export type NewestPlans = ReadonlyMap<string, PlanRecord>;

const slot = (piece: string, part: number, mirror: boolean): string => `${piece}/${part}/${mirror ? 'm' : 's'}`;

export const newestOf = (newest: NewestPlans, piece: string, part: number, mirror: boolean): PlanRecord | undefined =>
  newest.get(slot(piece, part, mirror));

/** The newest version of each part's plan among the records. */
export function newestPlans(records: readonly PlanRecord[]): Map<string, PlanRecord> {
  const newest = new Map<string, PlanRecord>();
  for (const record of records) {
    const key = slot(record.piece, record.part, record.mirror);
    if ((newest.get(key)?.version ?? 0) < record.version) newest.set(key, record);
  }
  return newest;
}

/**
 * Stores a plan as a version of its own, unless it says the same as the newest one; rows under a place never change.
 * Returns the record as stored: its `version` and `id` are the store's to give.
 */
export async function writePlan(tx: Write, newest: Map<string, PlanRecord>, record: PlanRecord): Promise<PlanRecord> {
  const { garment, piece, part, mirror } = record;
  const known = newestOf(newest, piece, part, mirror);
  if (known !== undefined && JSON.stringify(known.plan) === JSON.stringify(record.plan)) return known;
  const version = (known?.version ?? 0) + 1;
  const stored = { ...record, version, id: planId(garment, piece, part, mirror, version) };
  newest.set(slot(piece, part, mirror), stored);
  await tx.objectStore('plans').put(stored);
  return stored;
}
