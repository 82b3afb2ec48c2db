import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('turn, in all its wordings,', () => {
  it.each(
    table(`
      {Turn|Turning} → turn
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Turn work over → turn | @6 row: items 'patt to {left 'what follows'}'
    `),
  )('is not read for more than it says: $line', expectReading);
});
