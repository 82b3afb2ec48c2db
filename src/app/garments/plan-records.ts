import { type Fault, ok, placed, type Result, refuse } from '../../knit/fault.ts';
import { plan } from '../../knit/piece/plan.ts';
import type { Plan, PlannedPart } from '../../knit/piece/planned.ts';
import type { GarmentId } from '../../progress/log.ts';
import { type GarmentRecord, type PieceRecord, type PlanRecord, planId } from '../../store/records.ts';

/**
 * Spells out every piece of a garment as the records that the store keeps (which gives the versions).
 * Faults: those of `plan`, each with its piece. Loaded only where something is planned: the planner is large.
 */
export function planRecords(garment: GarmentRecord): Result<PlanRecord[]> {
  const faults: Fault[] = [];
  const records: PlanRecord[] = [];
  for (const piece of garment.pieces) {
    const made = plan(piece.recipe);
    if (!made.ok) {
      faults.push(...made.faults.map((fault) => placed(fault, { piece: piece.recipe.name })));
      continue;
    }
    records.push(...recordsOf(garment.id, piece, made.value));
  }
  return faults.length > 0 ? refuse(...faults) : ok(records);
}

/** The records of a piece that is spelled out already. */
export const recordsOf = (
  garment: GarmentId,
  piece: PieceRecord,
  { parts, mirrorParts = [] }: Plan,
): PlanRecord[] => [
  ...partRecords(garment, piece, parts, false),
  ...partRecords(garment, piece, mirrorParts, true),
];

const partRecords = (
  garment: GarmentId,
  piece: PieceRecord,
  parts: readonly PlannedPart[],
  mirror: boolean,
): PlanRecord[] =>
  parts.map((part, index) => ({
    id: planId(garment, piece.id, index, mirror, 1),
    garment,
    piece: piece.id,
    part: index,
    mirror,
    version: 1,
    plan: part,
  }));
