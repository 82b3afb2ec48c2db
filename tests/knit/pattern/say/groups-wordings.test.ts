import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('groups, in all its wordings,', () => {
  it.each(
    table(`
      {Bind off|Cast off|BO} 5 sts at beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
      Then bind off 5 sts at beg of next 2 rows → @6 groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
      {Cast on|CO} 5 sts at beg of next 2 rows → groups: work co, edge beginning, groups [{stitches 5, rows 2, every 1}]
      Bind off {5|5 more|5 new|the next 5|the first 5} sts {in patt|in rib|loosely|each|} at beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
      Bind off the rem 5 sts at beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
      Bind off 5 sts at beg of next 2 rows{, then 4 sts at beg of foll 2 rows| then 4 sts at beg of foll 2 rows| and 4 sts at beg of foll 2 rows| and then 4 sts at beg of foll 2 rows|; then bind off 4 sts at beg of foll 2 rows|, bind off 4 sts at beg of foll 2 rows} → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}; {stitches 4, rows 2, every 1}]
      Cast on 5 sts at beg of next 2 rows, then cast on 4 sts at beg of foll 2 rows → groups: work co, edge beginning, groups [{stitches 5, rows 2, every 1}; {stitches 4, rows 2, every 1}]
      Cast on 5 sts at beg of next 2 rows, then 4 sts at beg of foll 2 rows → groups: work co, edge beginning, groups [{stitches 5, rows 2, every 1}; {stitches 4, rows 2, every 1}]
      At beg of next 2 rows{, bind off|: bind off| bind off} 5 sts → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
      At beg of next 2 rows bind off 5 sts, 4 sts → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}; {stitches 4, rows 2, every 1}]
      At armhole edge bind off 5 sts once, 3 sts twice, 2 sts every other row 3 times → groups: work bo, edge armhole, groups [{stitches 5, rows 1, every 2}; {stitches 3, rows 2, every 2}; {stitches 2, rows 3, every 2}]
      At armhole edge bind off 5 sts every other row, 2 sts every alt row → groups: work bo, edge armhole, groups [{stitches 5, rows 1, every 2}; {stitches 2, rows 1, every 2}]
      Bind off 5 sts at armhole edge once, then 3 sts twice → groups: work bo, edge armhole, groups [{stitches 5, rows 1, every 2}; {stitches 3, rows 2, every 2}]
      Bind off 5 sts at armhole edge, then 3 sts at same edge on next row → groups: work bo, edge armhole, groups [{stitches 5, rows 1, every 2}; {stitches 3, rows 1, every 1}]
      Bind off 5 sts at armhole edge twice → groups: work bo, edge armhole, groups [{stitches 5, rows 2, every 2}]
      Bind off 5 sts each side → groups: work bo, edge both, groups [{stitches 5, rows 2, every 1}]
      Bind off 5 sts at neck edge every other row 3 times → groups: work bo, edge neck, groups [{stitches 5, rows 3, every 2}]
      Bind off 5 sts at neck edge every 4th row 3 times, → groups: work bo, edge neck, groups [{stitches 5, rows 3, every 4}]
      Bind off 5 sts at neck edge on every RS row 3 times → groups: work bo, edge neck, groups [{stitches 5, rows 3, every 2, side RS}]
      Bind off 5 sts at beg of every row until 20 sts remain → groups: work bo, edge beginning, groups [{stitches 5, rows 1, every 1, toCount 20}]
      Bind off 5 sts at beg of next row → groups: work bo, edge beginning, groups [{stitches 5, rows 1, every 1}]
      At neck edge, bind off 5 sts → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}]
      At each center edge bind off 5 sts 3 times → groups: work bo, edge neck, groups [{stitches 5, rows 3, every 2}]
      At neck edge every other row bind off 5 sts 3 times → groups: work bo, edge neck, groups [{stitches 5, rows 3, every 2}]
      At each side bind off 5 sts → groups: work bo, edge both, groups [{stitches 5, rows 2, every 1}]
      Bind off 5 sts at armhole edge once, 3 sts at armhole edge twice → groups: work bo, edge armhole, groups [{stitches 5, rows 1, every 2}; {stitches 3, rows 2, every 2}]
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Bind off 5 sts each side twice → groups: work bo, edge both, groups [{stitches 5, rows 4, every 1}]
      Bind off 5 sts each side of next 2 rows → groups: work bo, edge both, groups [{stitches 5, rows 2, every 1}]
      On next row bind off 5 sts at neck edge → ✗ stitch or repeat expected @1
      At armhole edge bind off 5 sts every 4th row → ✗ stitch or repeat expected @32
      Bind off 5 sts once → row: items 'bo ×5'
      Bind off 5 sts at neck edge, then 4 sts at armhole edge every other row → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}] | ✗ stitch or repeat expected @35
      Bind off 2½ sts at beg of next 2 rows → ✗ stitch or repeat expected @10
      At neck edge bind off → ✗ stitch or repeat expected @1
      Bind off 5 sts → bind off: stitches 5
      At armhole edge bind off 5 sts every 3 → ✗ stitch or repeat expected @32
    `),
  )('is not read for more than it says: $line', expectReading);
});
