import type { GarmentRecord } from '../records.ts';
import type { BegunIn } from './begun.ts';
import { recordOf } from './record-of-state.ts';
import { stateOf, unitedStates } from './state.ts';

/**
 * The same garment of two devices as one: each piece, note, tick, weight, yarn and field by itself. The same in
 * whichever order and however often it is done. `begun`: what the logs of both have of a piece; such a piece stays,
 * whoever took it out, with all of its makes and parts that were begun, whoever wants fewer.
 */
export function uniteGarments(a: GarmentRecord, b: GarmentRecord, begun: BegunIn): GarmentRecord {
  const [first] = [a, b].map(({ name }) => name).sort();
  const common = {
    id: a.id,
    createdAt: Math.min(a.createdAt, b.createdAt),
    changedAt: Math.max(a.changedAt, b.changedAt),
    name: first ?? '',
  };
  return recordOf(unitedStates(stateOf(a), stateOf(b), begun), common, begun);
}
