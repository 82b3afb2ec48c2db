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
      Row 1: k2, p2{ - 24 sts now| - 24 sts in all| - 24 sts on needles| - 24 sts remaining| - 24 sts made| - 24 sts left| - 24 sts remains} → row: label {rows [1]}, items 'k ×2, p ×2' (24)
      Row 1: k2, p2{ making 24 sts| now 24 sts| giving 24 sts| total 24 sts| have 24 sts| making a total of 24 sts} → row: label {rows [1]}, items 'k ×2, p ×2' (24)
      Row 1: k2, p2{ (24 sts)| (24)| [24 sts]| (= 24 sts)| (- 24 sts)| (now 24 sts)| (still 24 sts)| (you must have 24 sts)}. → row: label {rows [1]}, items 'k ×2, p ×2' (24)
      Row 1: k2 (5 sts dec) → row: label {rows [1]}, items 'k ×2'
      Row 1: k2tog, k to end = 24 sts → row: label {rows [1]}, items 'k2tog, k to {left 0}' (24)
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      K 1 row, leaving 24 sts → rows: n 1, items 'k to {left 'what follows'}' | ✗ stitch or repeat expected @10
      Row 1: k to 24 sts → ✗ stitch or repeat expected @13
      Row 1: k2tog, k to end (2 sts dec) (24 sts) → ✗ stitch or repeat expected @25
      Row 1: (k2, p2) 24 sts → ✗ stitch or repeat expected @17
      Row 1: k2 (5 sts bound off) → ✗ stitch or repeat expected @12
      Row 1: k 24 sts → row: label {rows [1]}, items 'k ×24'
      Row 1: k2, p 24 sts → row: label {rows [1]}, items 'k ×2, p ×24'
      Row 1: k (2½ sts) → ✗ stitch or repeat expected @11
      (24 sts → ✗ stitch or repeat expected @2
      Row 1: k2, sts dec → row: label {rows [1]}, items 'k ×2, dec'
      Row 1: k2, 5 dec → ✗ stitch or repeat expected @12
      Row 1: k2 - 5 rows dec → ✗ stitch or repeat expected @13
      Row 1: (2 sts dec) → ✗ stitch or repeat expected @9
      Row 1: k2 2 sts dec → ✗ stitch or repeat expected @11
      Row 1: k2, k to 24 sts left → row: label {rows [1]}, items 'k ×2, k to {left 24}'
      Row 1: (24 sts) → ✗ stitch or repeat expected @9
      (24 sts in all of it and so on and so on and more and so on and yet more) → ✗ stitch or repeat expected @2
      (now you will have there are in all still 24 sts) → stated: stitches 24 (24)
      Row 1: k2, p to 24 sts → ✗ stitch or repeat expected @17
    `),
  )('is not read for more than it says: $line', expectReading);
});
