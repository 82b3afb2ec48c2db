import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('cast on, in all its wordings,', () => {
  it.each(
    table(`
      {Cast on|CO|Cast-on|Loosely cast on|Cast on loosely|Cast on a total of} 92 sts → cast on: stitches 92
      Cast on 92 → cast on: stitches 92
      Cast on 92 sts {loosely|for back|for front|for sleeve|for border|for body|for lower edge|for hem|for hem edge|edge|for back loosely} → cast on: stitches 92
      Using 4 mm needles, cast on 92 sts → needle: mm 4 | @21 cast on: stitches 92
      Cast on 92 sts {using your preferred method|by the long-tail method|for rib} → cast on: stitches 92
      Cast on 92 sts and k 1 row → cast on: stitches 92 | @20 rows: n 1, items 'k to {left 'what follows'}'
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Cast on 5 more sts → row: items 'co ×5'
      Cast on 5 additional sts → ✗ stitch or repeat expected @11
      Cast on 5 sts at beg of next 2 rows → groups: work co, edge beginning, groups [{stitches 5, rows 2, every 1}]
      Cast on 5 sts over bound-off sts → row: items 'co ×5'
      Cast on 2½ sts → ✗ stitch or repeat expected @1
      Cast on sts → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
