import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('the side of what comes next, in all its wordings,', () => {
  it.each(
    table(`
      (RS) K 1 row → next side: side RS | @6 rows: n 1, items 'k to {left 'what follows'}'
      Knit 5 rows, noting first row is WS → @14 next side: side WS | rows: n 5, items 'k to {left 'what follows'}'
      Knit 5 rows, noting 1st row is WS → @14 next side: side WS | rows: n 5, items 'k to {left 'what follows'}'
      Knit 5 rows, noting that first row is a RS row → @14 next side: side RS | rows: n 5, items 'k to {left 'what follows'}'
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      K 1 row (RS) → @9 next side: side RS | rows: n 1, items 'k to {left 'what follows'}'
    `),
  )('is not read for more than it says: $line', expectReading);
});
