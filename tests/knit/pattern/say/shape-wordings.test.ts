import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('shape, in all its wordings,', () => {
  it.each(
    table(`
      {Dec|Decrease|Decreasing|Decs} 1 st at each end of next row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Then dec 1 st at each end of next row → @6 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      And dec 1 st at each end of next row → @5 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Shape sides by dec 1 st at each end of next row → @16 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      {Inc|Increase|Increasing|Incs} {1 st|a st|a single st|1 more st} at each end of next row → shape: change 1, edge both, beats [{first 1, every 1, times 1}]
      Dec at each end of next row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Dec {2 sts at beg|2 sts at start} of next row → shape: change -2, edge beginning, beats [{first 1, every 1, times 1}]
      On next row, dec 1 st at each end → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      At each end of {next row|next row,|next row:} dec 1 st → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      At neck edge dec 1 st every other row 5 times → shape: change -1, edge neck, beats [{every 2, counted, times 5}]
      Every 4th row dec 1 st at each end{ 5 times|, 5 times} → shape: change -1, edge both, beats [{every 4, times 5, counted}]
      Every 4th row dec 1 st at each end 5 times more → shape: change -1, edge both, beats [{every 4, times 5, counted, further}]
      Every 4th row dec 1 st at each end 5 times, then every row twice → shape: change -1, edge both, beats [{every 4, times 5, counted}; {first 1, every 1, counted, times 2}]
      Dec 1 st at each end of last row → evenly: change -2, on last, edge both
      Dec 1 st at neck edge {of|on|in} {last row|the last row} → evenly: change -1, on last, edge neck
      Dec 1 st {2 sts in from edge|2 sts in|2 sts inside|2 sts from edge|2 sts inside edge|2 sts in from the edge|as before|inside edge st|inside edge sts|fully fashioned|as set|in patt} at each end of next row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Dec 1 st at each end {as before|as set|in patt} of next row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Dec 1 st at each end, every other row, 5 times → shape: change -1, edge both, beats [{every 2, counted, times 5}]
      Dec 1 st at neck edge only → shape: change -1, edge neck, beats []
      Dec 1 st at neck edge every row only → shape: change -1, edge neck, beats [{first 1, every 1}]
      Dec 1 st at neck edge every other row {until 17 sts remain|, until 17 sts remain|to 17 sts} → shape: change -1, edge neck, beats [{every 2, toCount 17}]
      Dec 1 st at neck edge every other row until piece measures 10 cm → shape: change -1, edge neck, beats [{every 2, until {length, mm 100, from start}}]
      Dec 1 st at each end of next 3 rows, until 17 sts remain → shape: change -1, edge both, beats [{first 1, every 1, times 3, toCount 17}]
      Dec 1 st at armhole edge every other row 5 times and 1 st at neck edge every 4th row 3 times → @54 shape: change -1, edge neck, beats [{every 4, counted, times 3}] | at the same time | shape: change -1, edge armhole, beats [{every 2, counted, times 5}]
      Inc 1 st at armhole edge every row, 2 sts at neck edge every 4th row 3 times → shape: change 1, edge armhole, beats [{first 1, every 1}] | @37 shape: change 2, edge neck, beats [{every 4, counted, times 3}]
      Dec 1 st at neck edge every 4th row, until 17 sts remain → shape: change -1, edge neck, beats [{every 4, toCount 17}]
      On next row and every 4th row dec 1 st at each end 5 times → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, times 5, counted}]
      On next row dec 1 st at each end, then every 4th row 5 times → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 5}]
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      On 3rd row dec 1 st at each end 5 times → ✗ stitch or repeat expected @33
      Dec 1 st at neck edge every other row for 6 rows → shape: change -1, edge neck, beats [{every 2, counted, times 3}]
      Dec 1 st → row: items dec
      Shape → heading: title {words shape, pattern shape, divides false}, sideOnly false, talk false, places []
      Dec 1 st at armhole edge every other row and 3 sts at neck edge → shape: change -1, edge armhole, beats [{every 2}] | ✗ stitch or repeat expected @46
      Work 2 decs → row: items 'patt ×2, dec'
    `),
  )('is not read for more than it says: $line', expectReading);
});
