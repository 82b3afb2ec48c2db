import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a change of fabric or yarn, in all its wordings,', () => {
  it.each(
    table(`
      {Change|Switch|Changing} to st st → even: fabric {named, name stocking}
      Change to moss st and work 6 rows → even: fabric {named, name moss} | @23 even: until {rows, n 6}
      Change to MC and k 2 rows → yarn: name MC | @18 rows: n 2, items 'k to {left 'what follows'}'
      Change to 2 strands of CC and k 2 rows → yarn: name '2 strands of CC' | @31 rows: n 2, items 'k to {left 'what follows'}'
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Change to 4 mm needles → needle: mm 4
      Change to 4 mm needles and st st → needle: mm 4 | @28 even: fabric {named, name stocking}
    `),
  )('is not read for more than it says: $line', expectReading);
});
