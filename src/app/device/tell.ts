import type { PlannedPart } from '../../knit/piece/planned.ts';
import { settings } from '../settings.ts';
import { restDue } from '../state.ts';
import { feelsAt } from './feels.ts';
import { rested, type Sitting, sat, wantsRest } from './rest.ts';
import { buzz, tick } from './touch.ts';

let sitting: Sitting | undefined;

/** Tells hand and ear, as far as she wants it, of the row that comes after one was stored; minds the sitting. */
export function tellRow(part: PlannedPart, rows: number, now = Date.now()): void {
  const feels = feelsAt(part, rows);
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
