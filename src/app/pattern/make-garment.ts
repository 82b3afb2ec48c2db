import { fault, ok, type Result, refuse } from '../../knit/fault.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { newGarmentId } from '../editor/ids.ts';
import { plansOf } from '../plans-of.ts';
import { store } from '../store.ts';
import { type ReadDesign, textsOf } from './read-garment.ts';
import { forgetPattern, options, pattern, read, settle } from './reader.ts';

/** Makes an ordinary garment of what was read, with its text and how it was read. Gives its id. */
export async function makeGarment(fallbackName: string, now = Date.now()): Promise<Result<string>> {
  await settle();
  const from = pattern.peek();
  const found = read.peek();
  if (!from || !found || found.pieces.length === 0) {
    return refuse(fault('nothing to save'));
  }
  const id = newGarmentId();
  const design: ReadDesign = { kind: 'read', version: 1, options: options.peek() };
  const record: GarmentRecord = {
    id,
    name: from.name.trim() || fallbackName,
    createdAt: now,
    changedAt: now,
    pieces: found.pieces.map(({ recipe }, i) => ({ id: `piece${i + 1}`, recipe })),
    texts: textsOf(from.text),
    design,
  };
  const plans = await plansOf(record);
  if (!plans.ok) return plans;
  const saved = await (await store()).saveGarment(record, plans.value);
  if (!saved.ok) return saved;
  await forgetPattern();
  return ok(id);
}
