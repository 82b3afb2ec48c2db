import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('when, in all its wordings,', () => {
  it.each(
    table(`
      When piece measures 10 cm, k 1 row → even: until {length, mm 100, from start} | @28 rows: n 1, items 'k to {left 'what follows'}'
      When there are 29 sts, k 1 row → even: until {count, stitches 29} | @24 rows: n 1, items 'k to {left 'what follows'}'
      When piece measures same as back to armhole, k 1 row → even: until {same length, piece {words back, name back}, to armhole} | @46 rows: n 1, items 'k to {left 'what follows'}'
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      When knitting, relax → note: about 'making up'
      When you like it, k 1 row → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
