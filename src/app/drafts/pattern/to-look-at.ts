import type { ReadLine } from '../../../knit/pattern/read-pattern.ts';

/** Whether a line waits for her: what only follows from another one is mended with that. */
export const isToLookAt = ({ faults, follows, asksCount }: ReadLine): boolean =>
  (faults.length > 0 || asksCount) && follows === undefined;
