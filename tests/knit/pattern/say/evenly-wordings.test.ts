import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('evenly, in all its wordings,', () => {
  it.each(
    table(`
      Inc 6 sts {evenly|evenly spaced|spaced evenly|as evenly as possible|at even intervals|at equal intervals|evenly as possible|even} across next row → evenly: change 6, on next
      Inc 6 sts evenly → evenly: change 6, on unsaid
      Dec 6 sts {evenly across row|evenly on this row|evenly in the row|evenly to this row} → evenly: change -6, on unsaid
      Inc 6 sts evenly {across|in|on|over|along|during} {last|final|previous} row → evenly: change 6, on last
      Inc 6 sts evenly {across next|on first|in foll|along the 1st} row → evenly: change 6, on next
      Inc 6 sts evenly in last {WS|RS|p|k} row → evenly: change 6, on last
      Inc 6 sts evenly in last row {of rib|of border|of garter|of band|of welt|of cuff|of the rib|of the border|of rib patt|of garter st} → evenly: change 6, on last
      Inc 6 sts {across|in} last row → evenly: change 6, on last
      Inc 6 sts {on|over|along} next row → evenly: change 6, on next
      Inc 6 sts evenly {across|over|along|on} {the next|the center|front|back|} 40 sts → evenly: change 6, on unsaid, over 40
      Dec 6 sts over 40 sts → evenly: change -6, on unsaid, over 40
      Inc 6 sts evenly across next row {to 60 sts|, to 60 sts|- to 60 sts|until there are 60 sts} → evenly: change 6, on next, toCount 60
      Inc 6 sts evenly across next row (60 sts) → evenly: change 6, on next (60)
      Dec evenly across next row to 60 sts → evenly: change -1, on next, toCount 60, all
      {Inc|Increase} to 60 sts evenly {across|on} next row → evenly: change 1, on next, toCount 60, all
      Dec to 40 sts evenly across next row → evenly: change -1, on next, toCount 40, all
      Dec 6 sts evenly over 40 sts on next row → evenly: change -6, on next, over 40
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Inc 6 sts evenly across next row, for 6 rows → evenly: change 6, on next | ✗ stitch or repeat expected @35
      Inc 6 sts → row: items 'inc ×6'
      On next row, inc 6 sts at each end → shape: change 6, edge both, beats [{first 1, every 1, times 1}]
      On next row inc 6 sts in last row → ✗ stitch or repeat expected @1
      Inc 6 sts over next row of them → ✗ stitch or repeat expected @28
      Inc 1 st at each end of next row → shape: change 1, edge both, beats [{first 1, every 1, times 1}]
    `),
  )('is not read for more than it says: $line', expectReading);
});
