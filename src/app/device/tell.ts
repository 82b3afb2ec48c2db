import type { PlannedPart } from '../../knit/piece/planned.ts';
import { nextTask } from '../../pace/next-task.ts';
import { beforeRow } from '../in-hand/before-row.ts';
import { rowAt } from '../in-hand/row-now.ts';
import { settings } from '../settings/settings.ts';
import { inHand, restDue } from '../state.ts';
import { feelsAt } from './feels.ts';
import { rested, type Sitting, sat, wantsRest } from './rest.ts';
import { askToKeep } from './room.ts';
import { buzz, tick } from './touch.ts';
import { stirred } from './wake-lock.ts';

let sitting: Sitting | undefined;

/** A row that was stored. */
export interface Stored {
  readonly part: PlannedPart;
  /** worked with it */
  readonly rows: number;
  /** ms */
  readonly now: number;
  /** of this visit */
  readonly isFirst: boolean;
}

/**
 * Tells hand and ear, as far as she wants it, of the row that comes after one was stored; minds the sitting, and
 * with the first row asks the browser to keep it. Not in the task that shows the row as done: that has enough to do.
 */
export async function tellStored({ part, rows, now, isFirst }: Stored): Promise<void> {
  await nextTask();
  // there is something worth keeping now; a browser that asks her asks but once
  if (isFirst) void askToKeep();
  stirred();
  const row = part === inHand.value?.part ? rowAt(part, rows) : undefined;
  const feels = feelsAt(part, rows, row !== undefined && beforeRow({ part, row }).length > 0);
  if (settings.value.buzz) buzz(feels);
  if (settings.value.tick) tick(feels);
  sitting = sat(sitting, now);
  if (settings.value.rest && wantsRest(sitting)) restDue.value = true;
}

/** She has seen the caution: the minutes are counted anew. */
export function takeRest(): void {
  restDue.value = false;
  if (sitting !== undefined) sitting = rested(sitting);
}
