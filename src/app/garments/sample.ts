import { ok, type Result } from '../../knit/fault.ts';
import type { DemoName } from '../../knit/garment/demo.ts';
import type { Garment } from '../../knit/piece/garment.ts';
import { nextTask } from '../../pace/next-task.ts';
import { type MakeKey, makeKey } from '../../progress/log.ts';
import type { GarmentRecord, PlanRecord } from '../../store/records.ts';
import { store } from '../store.ts';
import { putNew } from './save-new.ts';

/** The samples by the id that each garment is kept under. */
export type SampleName = 'sample' | DemoName;

export const isSampleName = (name: string): name is SampleName =>
  ['sample', 'cardigan', 'baby'].includes(name);

/** The first make of a sample's first piece. */
const firstMake = (id: SampleName): MakeKey => makeKey({ garment: id, piece: 'back', part: 0, make: 1 });

/** Makes a sample garment where it is missing. Gives the key of the make to begin with. */
export async function openSample(id: SampleName = 'sample', now = Date.now()): Promise<Result<MakeKey>> {
  const open = await store();
  if ((await open.garment(id)).ok) return ok(firstMake(id));
  const [sample] = await Promise.all([readSample(id), planner()]);
  if (!sample.ok) return sample;
  const pieces = sample.value.pieces.map((recipe) => ({
    id: recipe.name.toLowerCase().replaceAll(' ', '-'),
    recipe,
  }));
  // another window may have made it meanwhile
  const put = await putNew({ ...sample.value, pieces }, { id, now, plansOf: pieceByPiece });
  return put.ok ? ok(firstMake(id)) : put;
}

const planner = () => import('./plan-records.ts');

/** Spelled out with a task for each piece: a slow phone is not deaf while all of them are. */
async function pieceByPiece(garment: GarmentRecord): Promise<Result<PlanRecord[]>> {
  const { planRecords } = await planner();
  const records: PlanRecord[] = [];
  for (const piece of garment.pieces) {
    await nextTask();
    const made = planRecords({ ...garment, pieces: [piece] });
    if (!made.ok) return made;
    records.push(...made.value);
  }
  return ok(records);
}

async function readSample(id: SampleName): Promise<Result<Garment>> {
  if (id === 'sample') return ok((await import('../../knit/garment/sample.ts')).sampleGarment);
  return (await import('../../knit/garment/demo.ts')).demoGarment(id);
}
