import type { Fault } from '../knit/fault.ts';
import { sayIfKnown } from '../words/say.ts';

/** A fault of the store in the knitter's language; in plain English where the catalogue has no sentence for it. */
export const saysFault = (fault: Fault): string =>
  sayIfKnown('storeFaults', fault.code, fault.figures) ?? fault.sentence;
