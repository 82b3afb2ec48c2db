import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('rows, in all its wordings,', () => {
  it.each(
    table(`
      {K|Knit|Knitting} {1|one} row → rows: n 1, items 'k to {left 'what follows'}'
      {P|Purl|Purling} 3 rows → rows: n 3, items 'p to {left 'what follows'}'
      K 3 rows {even|straight|plain|} → rows: n 3, items 'k to {left 'what follows'}'
      K 3 ridges → rows: n 6, items 'k to {left 'what follows'}'
      P 2 ridges → rows: n 4, items 'k to {left 'what follows'}'
      {K next row|K 1 row|K a row} → rows: n 1, items 'k to {left 'what follows'}'
      K 1 row, p 1 row → rows: n 1, items 'k to {left 'what follows'}' | @10 rows: n 1, items 'p to {left 'what follows'}'
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      K 3 → row: items 'k ×3'
      K row → row: items k
      K 3 sts → row: items 'k ×3'
    `),
  )('is not read for more than it says: $line', expectReading);
});
