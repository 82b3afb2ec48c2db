import { dropKey, readJson, smallKeep, writeJson } from '../../store/beside/small-keep.ts';
import { locked } from '../state.ts';

const KEY = 'ridgeline.locked';

/** A page that was put away while locked (a pocket presses Back too) is locked when it comes again. */
export function lockAsLeft(): void {
  if (readJson(smallKeep(), KEY) === true) locked.value = true;
}

export function keepLocked(on: boolean): void {
  if (on) writeJson(smallKeep(), KEY, true);
  else dropKey(smallKeep(), KEY);
}
