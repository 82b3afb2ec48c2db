import { answers } from '../../../src/knit/making-up/mends.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';

/** A garment before and after a change of one of its pieces. */
export interface Changing {
  readonly piece: string;
  readonly before: StandingGarment;
  readonly after: StandingGarment;
}

/** Takes the first mend of the first break that has one, until none is left. */
export function allMended({ before, after, piece }: Changing): StandingGarment {
  let now = after;
  for (let taken = 0; taken < 8; taken += 1) {
    const mend = [...answers({ before, after: now, inHand: piece })].find(({ mends }) => mends.length > 0)
      ?.mends[0];
    if (!mend) return now;
    now = mend.garment;
  }
  return now;
}
