import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of leaflets, reckoned by hand: common practice, no published source. */
describe('borders whose rows are told with them', () => {
  it.each(
    annotatedIn(`
### by either side, and kept beside a rib
LEFT FRONT
  > heading
Cast on 30 sts.
  > →30
Work 4 rows in st st, except for 6 sts of front border which are knitted on right side of work, and on wrong side are worked k 2, p 2, k 2.
  > 30 Left front/body 1 RS knit · WS k2, p2, k2, purl to end · RS knit · WS k2, p2, k2, purl to end
Still keeping 6 sts in pattern for front border, work in ribbing of k 1, p 1, over remaining sts for 2 rows.
  > 30 Left front/body 5 RS *k1, p1; repeat from * to last 6 sts, k6 · WS k2, p2, k3, *p1, k1; repeat from * to last st, p1
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 30}, RS: 4 stocking 4 mm; 2 rib in rib 1x1 4 mm; hold

### by the right side, the other being its back
RIGHT FRONT
  > heading
Cast on 30 sts.
  > →30
Then keeping the first 7 sts worked in pattern of P 2, K 3, P 2, on the right side, and remaining sts in stockinette st, work 4 rows.
  > 30 Right front/body 1 RS p2, k3, p2, knit to end · WS purl to last 7 sts, k2, p3, k2 · RS p2, k3, p2, knit to end · WS purl to last 7 sts, k2, p3, k2
  > = Right front, right front, 1 to make, lines 3
  > =   body from {castOn 30}, RS: 4 stocking 4 mm; hold

### a knitted border at either side
BACK
  > heading
Cast on 30 sts.
  > →30
Work 4 rows in st st, having 5 sts each side in knitted border.
  > 30 Back/body 1 RS knit · WS k5, purl to last 5 sts, k5 · RS knit · WS k5, purl to last 5 sts, k5
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 30}, RS: 4 stocking 4 mm; hold

### one that is not the same from either end, or of other stitches, is told
LEFT FRONT
  > heading
Cast on 30 sts.
  > →30
Keep 6 sts of front border worked in pattern of k 3, p 1, k 2 on right side.
  > own words 30 asks the count Left front/body 1 RS work in pattern 'Keep 6 sts of front border worked in pattern of k 3, p 1, k 2 on right side'
  > ✗ stitch or repeat expected @3:1 column 1
Keep 6 sts of front border worked in pattern of k 2, p 3, k 2 on right side.
  > own words 30 asks the count Left front/body 2 WS work in pattern 'Keep 6 sts of front border worked in pattern of k 2, p 3, k 2 on right side'
  > ✗ stitch or repeat expected @4:1 column 1
Still keeping 6 sts in pattern for front border, work 2 rows in st st.
  > 30 Left front/body 3 RS knit · WS purl
  > ✗ place not known @5:1
  > = Left front, left front, 1 to make, lines 3 4 5
  > =   body from {castOn 30}, RS: 1 stocking 4 mm (own words 1); 1 pattern in stocking 4 mm (own words 1); 2 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
