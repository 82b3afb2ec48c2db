import { ok, type Result } from '../../knit/fault.ts';
import { makeKey } from '../../progress/log.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { store } from '../store.ts';

const SAMPLE = 'sample';

/** The first make of the sample's first piece. */
const sampleBack = makeKey({ garment: SAMPLE, piece: 'back', part: 0, make: 1 });

/** Makes the sample garment where it is missing. Gives the key of the make to begin with. */
export async function openSample(now = Date.now()): Promise<Result<string>> {
  const open = await store();
  if ((await open.garment(SAMPLE)).ok) return ok(sampleBack);
  const [{ sampleGarment }, { planRecords }] = await Promise.all([
    import('../../knit/garment/sample.ts'),
    import('../plan-records.ts'),
  ]);
  const record: GarmentRecord = {
    ...sampleGarment,
    id: SAMPLE,
    createdAt: now,
    changedAt: now,
    pieces: sampleGarment.pieces.map((recipe) => ({ id: recipe.name.toLowerCase(), recipe })),
  };
  const plans = planRecords(record);
  if (!plans.ok) return plans;
  const saved = await open.saveGarment(record, plans.value);
  return saved.ok ? ok(sampleBack) : saved;
}
