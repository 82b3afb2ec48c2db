import { describe, it } from 'vitest';
import { table } from '../../table.ts';
import { expectReading } from '../said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('the side that faces, in all its wordings,', () => {
  it.each(
    table(`
      With RS facing k 1 row → next side: side RS | @16 rows: n 1, items 'k to {left 'what follows'}'
      {With the RS facing|With RS facing you} k 1 row → next side: side RS | @20 rows: n 1, items 'k to {left 'what follows'}'
      With right side of work facing k 1 row → next side: side RS | @32 rows: n 1, items 'k to {left 'what follows'}'
      On right side of work k 1 row → note: about facing | @23 rows: n 1, items 'k to {left 'what follows'}'
      From right side of piece k 1 row → note: about facing | @26 rows: n 1, items 'k to {left 'what follows'}'
      With RS side facing k 1 row → next side: side RS | @21 rows: n 1, items 'k to {left 'what follows'}'
      On RS k 1 row → note: about facing | @7 rows: n 1, items 'k to {left 'what follows'}'
      With RS facing, k 1 row → next side: side RS | @17 rows: n 1, items 'k to {left 'what follows'}'
      With RS of work facing you, k 1 row → next side: side RS | @29 rows: n 1, items 'k to {left 'what follows'}'
      With WS facing k 1 row → next side: side WS | @16 rows: n 1, items 'k to {left 'what follows'}'
      With wrong side of work facing k 1 row → next side: side WS | @32 rows: n 1, items 'k to {left 'what follows'}'
      With WS of piece k 1 row → note: about facing | @18 rows: n 1, items 'k to {left 'what follows'}'
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      With facing RS → ✗ stitch or repeat expected @6
      With it facing → ✗ stitch or repeat expected @6
    `),
  )('is not read for more than it says: $line', expectReading);
});
