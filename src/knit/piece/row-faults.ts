import { type Fault, fault } from '../fault.ts';

/** A whole number of stitches, at least one. */
export const isCount = (n: number): boolean => Number.isSafeInteger(n) && n > 0;

export const tooFew = (need: number, have: number): Fault =>
  fault('shaping needs more stitches', { needStitches: need, haveStitches: have });

export const mixed = (): Fault => fault('mixed shaping');

export const noCentre = (): Fault => fault('no centre stitch');
