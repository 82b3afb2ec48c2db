import { computed, type ReadonlySignal } from '@preact/signals';
import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';
import { inHand, looking, rowNow, tapped } from '../state.ts';
import { rowAt } from './row-now.ts';

/** What is shown of the make in hand, each by itself: what a row does not change is not drawn anew with it. */

/** what was asked for is not there */
export const noSuchMake = computed(() => inHand.value === null);

export const partInHand = computed(() => inHand.value?.part);

/** of the make in hand */
export const summaryInHand = computed(() => inHand.value?.garment);

export const atStart = computed(() => inHand.value?.place.rows === 0);

/** no row is left in the part */
export const atEnd = computed(() => rowNow.value === undefined);

/** a row is read that is not the one in hand */
export const isLooking = computed(() => looking.value !== undefined);

/** A row and the part that it is of. */
export interface Reading {
  readonly part: PlannedPart;
  readonly row: PlannedRow;
}

/** The same object while the row stays the same: what shows it is not drawn anew. */
const readingOf = (of: ReadonlySignal<PlannedRow | undefined>) =>
  computed((): Reading | undefined => {
    const part = partInHand.value;
    const row = of.value;
    return part && row && { part, row };
  });

const rowRead = computed(() =>
  looking.value === undefined ? rowNow.value : partInHand.value?.rows[looking.value - 1],
);

/** The row that is read: the one looked at, or the one in hand; undefined at the part's end. */
export const reading = readingOf(rowRead);

const rowToWork = computed(() => {
  const now = inHand.value;
  if (!now || looking.value !== undefined) return rowRead.value;
  const { rows, total } = now.place;
  const ahead = tapped.value.make === now.make ? tapped.value.rows : 0;
  return rowAt(now.part, Math.max(rows, Math.min(rows + ahead, total - 1)));
});

/**
 * The row whose words are read: as `reading`, but with the tap, before that is on disk. That the row before it is done is
 * said elsewhere, and only when it is; and so is the part's end. (The price: after a tap that changes the page the browser
 * holds back what the database answers until that frame is painted.)
 */
export const toWork = readingOf(rowToWork);
