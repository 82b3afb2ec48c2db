import { ok, type Result } from '../../knit/fault.ts';
import type { Changes } from '../box/changes.ts';
import type { InHand } from './reads.ts';

/** The make that was read in the transaction that opened the box: an answer until anything changes. */
export interface ReadAtOpening {
  /** undefined where it has to be read */
  answers(key: string | undefined): Result<InHand> | undefined;
  forget(): void;
}

/** `key` as it was asked for: undefined is the make last knitted. */
export function readAtOpening(
  key: string | undefined,
  inHand: InHand | undefined,
  changes: Changes,
): ReadAtOpening {
  let known = inHand;
  const forget = () => {
    known = undefined;
  };
  changes.listen(forget);
  return {
    answers: (asked) =>
      known !== undefined && (asked === key || asked === known.place.id) ? ok(known) : undefined,
    forget,
  };
}
