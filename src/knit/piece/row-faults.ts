import { type Fault, fault } from '../fault.ts';

/** A whole number of stitches, at least one. */
export const isCount = (n: number): boolean => Number.isSafeInteger(n) && n > 0;

export const tooFew = (need: number, have: number): Fault =>
  fault(
    'not enough stitches',
    'This row needs {need} stitches for its shaping and {have} are on the needle; shape less often or cast on more.',
    { need, have },
  );

export const mixed = (): Fault =>
  fault(
    'mixed shaping',
    'Stitches spread across a row, and groups at its edges, each need a row of their own.',
  );

export const noCentre = (): Fault =>
  fault(
    'no centre stitch',
    'The decrease at the middle needs a centre stitch with at least one stitch on either side of it.',
  );
