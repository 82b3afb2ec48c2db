import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('what is repeated from a star, in all its wordings,', () => {
  it.each(
    table(`
      Repeat from * 3 times → repeat from stars: stars 1, times 3
      Repeating from * 3 times → repeat from stars: stars 1, times 3
      Rep from the ** to ** twice → repeat from stars: stars 2, times 2
      Rep from * {to *|and *|- *|}{,|} 3 times{| more} → repeat from stars: stars 1, times 3
      Rep between * and * 3 times → repeat from stars: stars 1, times 3
      Rep from ** once → repeat from stars: stars 2, times 1
      Rep from * again → repeat from stars: stars 1, times 1
      Rep from * 3 times in all → repeat from stars: stars 1, times 2
      Rep from * 200 times → repeat from stars: stars 1, times 200
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Rep from * 201 times → ✗ nothing before the repeat @12
    `),
  )('is not read for more than it says: $line', expectReading);
});
