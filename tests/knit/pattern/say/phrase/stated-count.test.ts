import { describe, it } from 'vitest';
import { table } from '../../table.ts';
import { expectReading } from '../said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a count that is stated, in all its wordings,', () => {
  it.each(
    table(`
      K 1 row{ (24 sts)| [24 sts]|, 24 sts remain|: 24 sts| - 24 sts|; 24 sts|. 24 sts|, there are 24 sts|, now 24 sts| (24)|, making 24 sts in all|, 24 sts on needle} → rows: n 1, items 'k to {left 'what follows'}' (24)
      Row 1: k{ (24 sts)| [24 sts]|, 24 sts remain|: 24 sts| - 24 sts|; 24 sts|, there are 24 sts|, leaving 24 sts| (24)|, 24 sts on needle|, 24 sts now on needle|, 24 sts in all|, now have 24 sts|, making a total of 24 sts|, giving 24 sts|, you will have 24 sts|, there should be 24 sts| (there are now 24 sts)| (24 sts, 12 each side)|, 24 sts rem| (24 sts.)|, 24 sts.|, 24 sts; } → row: label {rows [1]}, items 'k to {left 'what follows'}' (24)
      Row 1: k{, 24 sts remain at each side|, 24 sts altogether| - 24 sts for the row|, 24 sts total|, 24 sts each side} → row: label {rows [1]}, items 'k to {left 'what follows'}' (24)
      Row 1: k to last 24 sts → row: label {rows [1]}, items 'k to {left 24}'
      Row 1: k2 (24 sts dec) → row: label {rows [1]}, items 'k ×2'
      Row 1: k2tog, k to end (2 sts dec) → row: label {rows [1]}, items 'k2tog, k to {left 0}'
      Row 1: k2tog, k to end, 2 sts dec’d → row: label {rows [1]}, items 'k2tog, k to {left 0}'
      Row 1: k2tog, k to end - 2 sts decreased → row: label {rows [1]}, items 'k2tog, k to {left 0}'
      Row 1: k2tog, k to end [2 sts increased] → row: label {rows [1]}, items 'k2tog, k to {left 0}'
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      K 1 row, leaving 24 sts → rows: n 1, items 'k to {left 'what follows'}' | ✗ stitch or repeat expected @10
      Row 1: k to 24 sts → ✗ stitch or repeat expected @13
      Row 1: k2tog, k to end (2 sts dec) (24 sts) → ✗ stitch or repeat expected @25
      Row 1: (k2, p2) 24 sts → ✗ stitch or repeat expected @17
      Row 1: k 24 sts → row: label {rows [1]}, items 'k ×24'
      Row 1: k2, p 24 sts → row: label {rows [1]}, items 'k ×2, p ×24'
      Row 1: k (2½ sts) → ✗ stitch or repeat expected @11
      (24 sts → ✗ stitch or repeat expected @2
    `),
  )('is not read for more than it says: $line', expectReading);
});
