/**
 * When to say that hands and wrists want a rest. A sitting goes on while rows follow each other within the
 * pause; 45 minutes and a pause of 5 are common advice for handwork, no published source.
 */
const SITTING_MS = 45 * 60_000;
const PAUSE_MS = 5 * 60_000;

export interface Sitting {
  /** when it began, ms */
  readonly since: number;
  /** the last row, ms */
  readonly last: number;
}

/** The sitting after a row finished at `now`. */
export const sat = (sitting: Sitting | undefined, now: number): Sitting =>
  sitting === undefined || now - sitting.last >= PAUSE_MS
    ? { since: now, last: now }
    : { ...sitting, last: now };

export const wantsRest = (sitting: Sitting): boolean => sitting.last - sitting.since >= SITTING_MS;

/** After the caution has been shown the count of minutes begins anew. */
export const rested = (sitting: Sitting): Sitting => ({ ...sitting, since: sitting.last });
