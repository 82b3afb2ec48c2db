import { batch } from '@preact/signals';
import type { Fault, Result } from '../../knit/fault.ts';
import { nextTask } from '../../pace/next-task.ts';
import { FELT_MS, SLOW_MS } from '../../pace/order.ts';
import type { MakeKey, PlanId } from '../../progress/log.ts';
import { inVain } from '../../store/faults.ts';
import type { PlaceRecord } from '../../store/records.ts';
import type { Store, Tapped } from '../../store/store.ts';
import { type InHand, inHand, noRows, type RowsTapped, saving, tapFault, tapped, waiting } from '../state.ts';
import { store } from '../store.ts';
import { rereadMake } from './open-make.ts';

/**
 * Every change of a place stands in one line, in the order of the taps: a tap that waits is not lost, and a row is shown
 * as done only when the store has answered that it is on disk. What comes after it may be read meanwhile.
 */
export interface Tap {
  /** `rows` of a `plan` worked, as the screen shows them, or will when the taps before it are stored; else it is refused */
  readonly write: (store: Store, make: MakeKey, rows: number, plan: PlanId) => Promise<Result<Tapped>>;
  /** the next row, and nothing else */
  readonly isRow?: true;
  /** called once it is stored and shown */
  readonly stored?: (place: PlaceRecord) => void;
}

interface Waiting extends Tap {
  /** the make and its place as shown */
  place: PlaceRecord;
}

const line: Waiting[] = [];
let running: Promise<void> | undefined;
/** why a tap of the line was refused for good, or is kept outside the database */
let told: Fault | undefined;

/** Puts a tap on the make in hand at the end of the line; resolves when that is empty or stands still at a fault. */
export function tap({ place }: InHand, next: Tap): Promise<void> {
  line.push({ ...next, place });
  tellLine();
  return tryAgain();
}

/** Goes on with the line, after a fault too. */
export function tryAgain(): Promise<void> {
  if (line.length === 0) return Promise.resolve();
  running ??= workLine().finally(() => {
    running = undefined;
  });
  return running;
}

async function workLine(): Promise<void> {
  const open = await store();
  let fault: Fault | undefined;
  told = undefined;
  while (line.length > 0 && fault === undefined) fault = await workHead(line[0] as Waiting, open);
  tapFault.value = fault ?? told;
  // what could not be stored is not read over: the row in hand is the one that is on disk
  if (fault !== undefined) tapped.value = noRows;
  saving.value = fault !== undefined ? 'failed' : open.held() > 0 ? 'held' : 'saved';
}

async function workHead(head: Waiting, open: Store): Promise<Fault | undefined> {
  saving.value = 'saving';
  let timer = setTimeout(() => {
    saving.value = 'felt';
    timer = setTimeout(() => {
      saving.value = 'slow';
    }, SLOW_MS - FELT_MS);
  }, FELT_MS);
  // the words first: one task with both would hold up the frame that shows them
  await nextTask();
  const { id, rows, plan } = head.place;
  const result = await head.write(open, id, rows, plan);
  clearTimeout(timer);
  const fault = result.ok ? undefined : result.faults[0];
  const isLost = fault && inVain[fault.code];
  if (fault && isLost === undefined) return fault;
  batch(() => {
    line.shift();
    // a tap means the place that the tap before it makes: after one that was refused it is refused too
    const next = line.find(({ place }) => place.id === id);
    if (next) next.place = result.ok ? result.value.place : head.place;
    tellLine();
    if (result.ok) show(head, result.value.place);
  });
  if (isLost) told = fault;
  else if (result.ok) told ??= result.value.held;
  // taken back to another plan, or moved elsewhere: other rows are to be shown
  if (inHand.value?.place.plan !== plan || fault) rereadMake();
  return undefined;
}

function tellLine(): void {
  waiting.value = line.length;
  tapped.value = rowsAtHead();
}

/** Rows with nothing else before or between them: only after those is it known which row comes. */
function rowsAtHead(): RowsTapped {
  const make = line[0]?.place.id ?? '';
  const other = line.findIndex((tap) => !tap.isRow || tap.place.id !== make);
  return { make, rows: other < 0 ? line.length : other };
}

function show(done: Tap, place: PlaceRecord): void {
  const now = inHand.value;
  if (now?.make !== place.id) return;
  inHand.value = { ...now, place };
  done.stored?.(place);
}
