import type { Kept } from '../../store/box/persist.ts';

/** What a reminder to take a backup goes by. */
export interface Known {
  /** whether the browser has promised to keep what is stored */
  readonly kept: Kept;
  /** entries of the log that are in no backup */
  readonly unsaved: number;
  /** whether a file is kept up to date by itself */
  readonly hasKeptFile: boolean;
  /** when she said 'not now', ms since 1970; 0 when never */
  readonly putOff: number;
  readonly now: number;
}

/** Some evenings of knitting: what she would be sorry to lose. Our own choice, no published source. */
const MANY = 150;
/** A storage that is promised is lost with the phone all the same. Our own choice, no published source. */
const MANY_WHERE_KEPT = 1500;
const PUT_OFF_MS = 21 * 24 * 3_600_000;

/** Whether 'not now', said then, still holds; both ms since 1970. A clock that was set back does not make it hold for ever. */
export const isPutOff = (then: number, now: number): boolean => then <= now && now - then < PUT_OFF_MS;

/** Whether one line shall ask for a backup: never twice within three weeks, and never where a file is kept by itself. */
export function wantsBackup({ kept, unsaved, hasKeptFile, putOff, now }: Known): boolean {
  if (hasKeptFile || isPutOff(putOff, now)) return false;
  return unsaved >= (kept === 'kept' ? MANY_WHERE_KEPT : MANY);
}
