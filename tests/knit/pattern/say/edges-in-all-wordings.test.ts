import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('where it is shaped, in all wordings,', () => {
  it.each(
    table(`
      Dec 1 st {at each end|at both ends|each end|each side|at each edge|at either side|on each side|at every end|each of both ends|at both edges|at each side edge|at each armhole edge|at each seam edge|at both underarm sides|at each arm side|at sides} every row 3 times → shape: change -1, edge both, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {in first and last st|in first st and last st} of every row 3 times → shape: change -1, edge both, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {at both neck and armhole edges|at neck edge and at side edge|at neck and at the armhole edge|at each armhole and neck edge} every row 3 times → shape: change -1, edge both, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {at beg and end|at beg and at end|at beg and end of row|at beg and end of the row} every row 3 times → shape: change -1, edge both, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {at beg of each armhole edge|at start of both arm side} every row 3 times → shape: change -1, edge both, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {at beg|at start|at the beg|at right hand end} every row 3 times → shape: change -1, edge beginning, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {at beg of the neck edge|at start of neck edge|at beg of row on neck side} every row 3 times → shape: change -1, edge neck, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {at beg of armhole edge|at beg of rows at armhole side} every row 3 times → shape: change -1, edge armhole, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {at neck edge|neck edge|at front edge|at inside edge|at inner edge|at centre edge|at the v edge|at opening edge|at neckline edge|at neck side|at front end|at neck opening edge|at centre front edge|at center back edge|at front neck edge|at v neck edge|at front and neck edge|at center opening|at both neck edges|at each front edge|at each v edge} every row 3 times → shape: change -1, edge neck, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {at armhole edge|at arm edge|at side edge|at seam edge|at underarm edge|at outer edge|at outside edge|at raglan edge|at shoulder edge|at sleeve edge|at armhole end|at side seam|at armhole seam edge|at raglan armhole edge|at sides seam|at armhole} every row 3 times → shape: change -1, edge armhole, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {at same edge|at this edge|at that edge|at same end|same side} every row 3 times → shape: change -1, edge same, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {at right edge|at right side|at right hand|at right end} every row 3 times → shape: change -1, edge right, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {at left edge|at left side|at left hand|at left end} every row 3 times → shape: change -1, edge left, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {at end|at the end|at ends} every row 3 times → shape: change -1, edge end, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {inside the front border|inside of the neck band|inside border} every row 3 times → shape: change -1, edge inside, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st at each end of {needle|the needle} every row 3 times → shape: change -1, edge both, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st at each end of {the work|piece|row} on every row 3 times → shape: change -1, edge both, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st at neck edge only every row 3 times → shape: change -1, edge neck, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st {2 sts in from edge|inside edge st|as before|in the same manner|in same way as before|fully fashioned|as set|in patt|inside a border of 3 sts,|within the border,|inside the 3 border sts|, inside each band,} at each end of every row 3 times → shape: change -1, edge both, beats [{first 1, every 1, counted, times 3}]
      {Dec 1 st at each end 2 sts in from edge every row 3 times|Dec 1 st at each end 2 sts inside edge every row 3 times|Dec 1 st at each end inside edge sts every row 3 times|Dec 1 st at each end as before every row 3 times|Dec 1 st at each end within each edging every row 3 times|Dec 1 st at each end inside a border of 3 sts every row 3 times|Dec 1 st at each end inside the 3 border sts every row 3 times} → shape: change -1, edge both, beats [{first 1, every 1, counted, times 3}]
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Dec 1 st at both lines every row 3 times → ✗ stitch or repeat expected @10
      Dec 1 st at hem every row 3 times → ✗ stitch or repeat expected @10
      Dec 1 st inside a border of 3 rows at each end of every row 3 times → ✗ stitch or repeat expected @10
      Dec 1 st at each end 2 in from edge every row 3 times → ✗ stitch or repeat expected @22
      Dec 1 st at each end inside the 3 sts every row 3 times → ✗ stitch or repeat expected @22
      Dec 1 st at beg of hem edge every row 3 times → ✗ stitch or repeat expected @20
    `),
  )('is not read for more than it says: $line', expectReading);
});
