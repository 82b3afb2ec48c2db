import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('two stars, in all its wordings,', () => {
  it.each(
    table(`
      Work 6 rows. ** → even: until {rows, n 6} | @15 stars
      Work from ** to ** as given for left front → as for: piece {words 'left front', name 'left front'}, reversing false, to {place, place stars}
      Work as for back to ** → as for: piece {words back, name back}, reversing false, to {place, place stars}
      Work as given for back from ** to ** → as for: piece {words back, name back}, reversing false, to {place, place stars}
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      *K2, p2; rep from * to end → row: items '(k ×2, p ×2) to {left 0}'
    `),
  )('is not read for more than it says: $line', expectReading);
});
