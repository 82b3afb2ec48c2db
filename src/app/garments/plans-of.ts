import { fault, type Result, refuse } from '../../knit/fault.ts';
import type { GarmentRecord, PlanRecord } from '../../store/records.ts';
import { ask, only } from '../off-thread/ask.ts';

/** Spells a garment out (`planRecords`) beside the page: one that someone else made may have any number of rows. */
export async function plansOf(garment: GarmentRecord): Promise<Result<PlanRecord[]>> {
  const answer = await only(ask('plans', garment));
  if (answer === undefined) return refuse(fault('not stored'));
  return answer.ok ? answer.value : answer;
}
