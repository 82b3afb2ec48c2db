import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('stated, in all its wordings,', () => {
  it.each(
    table(`
      {(24 sts)|[24 sts]|There are 24 sts|24 sts remain|24 sts rem|24 sts left|24 sts now|24 sts on needle|24 sts on the needle|24 sts in all|24 sts total|24 sts altogether|24 sts are left|24 sts made|= 24 sts|24 sts|(24)|(= 24 sts)|(- 24)|Making 24 sts|Total of 24 sts|There should be 24 sts|Giving 24 sts|In all 24 sts|A total of 24 sts|Thus 24 sts|Leaves 24 sts|Makes 24 sts|Gives 24 sts|There are still 24 sts|There must be 24 sts|There is 24 sts} → stated: stitches 24 (24)
      - 24 sts → @3 stated: stitches 24 (24)
      {Now 24 sts|And 24 sts} → @5 stated: stitches 24 (24)
      Then 24 sts → @6 stated: stitches 24 (24)
      (24 sts{ each side|, 12 each side| on each needle| for back| on needle}) → stated: stitches 24 (24)
      24 sts remain {on needle|on each side|each side|in all|on each needle|now} → stated: stitches 24 (24)
      {(2 sts dec)|(2 sts decs)|(2 sts decreased)|(2 sts inc)|[2 sts incs]|(2 sts increased)|2 sts dec’d|2 sts dec d|2 sts increased} → note: about change
      2 sts decreased, turn → note: about change | @18 turn
      2 sts decreased; turn → note: about change | @18 turn
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Leaving 24 sts → ✗ stitch or repeat expected @1
      (24 sts dec on them) → ✗ stitch or repeat expected @2
      (24 sts {bound|cast} on) → ✗ stitch or repeat expected @2
      (24 sts in patt) → ✗ stitch or repeat expected @2
      (24 rows) → ✗ stitch or repeat expected @2
      24 sts remain to end → ✗ stitch or repeat expected @1
      24 sts over → ✗ stitch or repeat expected @1
      2 sts dec more → ✗ stitch or repeat expected @1
      (2½ sts) → ✗ stitch or repeat expected @2
    `),
  )('is not read for more than it says: $line', expectReading);
});
