import { batch } from '@preact/signals';
import type { Fault } from '../../knit/fault.ts';
import { inHand, looking } from '../state.ts';
import { readOr, store } from '../store.ts';

/** There is no such thing, or not all of it: nothing to be tried again. */
const isNone = (fault: Fault | undefined): boolean =>
  fault?.code === 'no-such-make' || fault?.code === 'no-such-garment' || fault?.code === 'no-such-plan';

/** the key of the make opened last, whether there is such a make or not */
let asked: string | undefined;

/** Opens a make; without a key the one last knitted. Resolves with its key, or undefined where there is none. */
export async function openMake(key?: string): Promise<string | undefined> {
  asked = key;
  if (inHand.value?.make !== key) inHand.value = undefined;
  const before = inHand.value;
  const result = await (await store()).inHand(key);
  if (!result.ok && isNone(result.faults[0])) {
    inHand.value = null;
    return undefined;
  }
  const found = readOr(result);
  if (found === undefined) return undefined;
  const { place, plan, garment } = found;
  const now = inHand.value;
  // a row stored while this was being read is newer than what was read
  if (now !== before && now?.make === place.id && now.place.seq > place.seq) return place.id;
  // read a second time before anything has changed: what shows it is not gone through again
  if (now?.place === place && now.part === plan.plan && now.garment === garment) return place.id;
  batch(() => {
    if (now?.make !== place.id) looking.value = undefined;
    inHand.value = { make: place.id, part: plan.plan, place, garment };
  });
  return place.id;
}

/** Reads the make in hand as it is stored by now; one that was not there may have come back. */
export function rereadMake(): void {
  const make = inHand.value === null ? asked : inHand.value?.make;
  if (make !== undefined) void openMake(make);
}
