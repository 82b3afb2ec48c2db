import { keyInHand } from '../../app/in-hand/make-in-hand.ts';
import type { Reading } from '../../app/in-hand/reading.ts';
import { nextShaping } from '../../app/in-hand/row-now.ts';
import { looking, storedRows } from '../../app/state.ts';
import type { PlannedRow } from '../../knit/piece/planned.ts';
import { saysShaping } from '../../words/craft.ts';
import { say } from '../../words/say.ts';
import { saysBefore } from './before-row.tsx';
import { saysAround } from './says-place.ts';

/** So many rows before it the next shaping is said with each row: an ear cannot look ahead, and is not told for ever. */
const HEARD_AHEAD = 10;

// a voice and a reader's own say it too, as soon as it is known here
saysAround.value = (read, row) =>
  [isTakenBack(read) ? say('lap.takenBack') : '', saysBefore(read), row, saysSoon(read)]
    .filter((sentence) => sentence !== '')
    .join(' ');

function saysSoon({ part, row }: Reading): string {
  const next = nextShaping(part, row.n - 1);
  return next === undefined || next.n - row.n > HEARD_AHEAD ? '' : `${saysShapingIn(row, next)}.`;
}

/** 'Shaping in 4 rows, row 123: decrease at both edges'. */
export const saysShapingIn = (row: PlannedRow, next: PlannedRow): string =>
  say('lap.nextShaping', { count: next.n - row.n, row: next.n, shaping: saysShaping(next) });

interface Heard {
  readonly make: string | undefined;
  readonly row: number;
  /** how often the place was written down in this visit */
  readonly stored: number;
  readonly isBack: boolean;
}

let heard: Heard = { make: undefined, row: 0, stored: 0, isBack: false };

/** The place went back since the row before was said; asked again at the same place the answer stays. */
function isTakenBack({ row }: Reading): boolean {
  const [make, stored] = [keyInHand.value, storedRows.value];
  if (looking.value !== undefined) return false;
  if (stored !== heard.stored || make !== heard.make)
    heard = { make, stored, row: row.n, isBack: make === heard.make && row.n < heard.row };
  return heard.isBack;
}
