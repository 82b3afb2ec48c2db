import { batch } from '@preact/signals';
import type { Fault } from '../../knit/fault.ts';
import type { MakeKey } from '../../progress/log.ts';
import { type InHand, inHand, looking } from '../state.ts';
import { readOr, store } from '../store.ts';

/** There is no such thing, or not all of it: nothing to be tried again. */
const isNone = (fault: Fault | undefined): boolean =>
  fault?.code === 'no-such-make' || fault?.code === 'no-such-garment' || fault?.code === 'no-such-plan';

/** the key of the make opened last, whether there is such a make or not */
let asked: MakeKey | undefined;
/** reads are numbered as they are asked, since they may be answered in any order; that of the one shown, and what it showed */
let reads = 0;
let shownRead = 0;
let shownByRead: InHand | null | undefined;

function showRead(read: number, found: InHand | null | undefined): void {
  shownRead = read;
  shownByRead = found;
  inHand.value = found;
}

/** Opens a make; without a key the one last knitted. Resolves with its key, or undefined where there is none. */
export async function openMake(key?: MakeKey): Promise<MakeKey | undefined> {
  asked = key;
  reads += 1;
  const read = reads;
  if (inHand.value?.make !== key) inHand.value = undefined;
  const before = inHand.value;
  const result = await (await store()).inHand(key);
  // one that was asked later knows more, and another make is wanted by now
  const isLate = read < shownRead || (read < reads && asked !== key);
  if (!result.ok && isNone(result.faults[0])) {
    if (!isLate) showRead(read, null);
    return undefined;
  }
  const found = readOr(result);
  if (found === undefined) return undefined;
  const { place, plan, garment } = found;
  if (isLate) return place.id;
  const now = inHand.value;
  // a row was stored while this was being read: which of the two is newer only another read can tell
  if (now !== before && now !== shownByRead && now?.make === place.id) return openMake(key);
  // read a second time before anything has changed: what shows it is not gone through again
  if (now?.place === place && now.part === plan.plan && now.garment === garment) return place.id;
  batch(() => {
    if (now?.make !== place.id) looking.value = undefined;
    showRead(read, { make: place.id, part: plan.plan, place, garment });
  });
  return place.id;
}

/** Reads the make in hand as it is stored by now; one that was not there may have come back. */
export function rereadMake(): void {
  const make = inHand.value === null ? asked : inHand.value?.make;
  if (make !== undefined) void openMake(make);
}
