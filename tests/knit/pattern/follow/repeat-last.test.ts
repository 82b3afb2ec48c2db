import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('a shaping that is repeated without a name, followed row by row,', () => {
  it.each(
    annotatedIn(`
### is the last row that changed the count
Cast on 20 sts.
  > →20
Dec 1 st at each end of next row. Repeat on each right side row 2 more times. 14 sts.
  > 20→14 says 14 Piece/body 1 RS dec, knit to last 2 sts, dec (18) · WS purl · RS dec, knit to last 2 sts, dec (16) · WS purl · RS dec, knit to last 2 sts, dec (14)
Next row: p.
  > 14 Piece/body 6 WS purl
On next row, k2, k2tog, k to end.
  > 14→13 Piece/body 7 RS k2, k2tog, knit to end (13)
Repeat this row every right side row 2 more times.
  > 13→11 Piece/body 8 WS purl · RS k2, k2tog, knit to end (12) · WS purl · RS k2, k2tog, knit to end (11)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 11 stocking 4 mm; hold

### k2tog at the edges is a decrease there, in its rhythm
Cast on 20 sts.
  > →20
K 2 tog. each side every other row 2 times.
  > 20→16 Piece/body 1 RS dec, knit to last 2 sts, dec (18) · WS purl · RS dec, knit to last 2 sts, dec (16)
Bind off 2 sts at the beginning of each row 2 times each side.
  > 16→8 Piece/body 4 WS bind off 2 sts, purl to end (14) · RS bind off 2 sts, knit to end (12) · WS bind off 2 sts, purl to end (10) · RS bind off 2 sts, knit to end (8)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; hold

### nothing was shaped, or nobody understood it
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Piece/body 1 RS knit
Repeat on each right side row 2 more times.
  > 20
  > ✗ no rows to repeat @3:1
Wobble 3 sts of the next row (17 sts).
  > own words 20→17 says 17 Piece/body 2 WS [dec] 3 times, work in pattern to end 'Wobble 3 sts of the next row (17 sts)' (17)
  > ✗ stitch or repeat expected @4:1 column 1
Repeat on each right side row 2 more times.
  > 17
  > ✗ no rows to repeat @5:1
  > = Piece, other, 1 to make, lines 2 4
  > =   body from {castOn 20}, RS: 2 stocking 4 mm (own words 2); hold

### a shaping goes on until the count that is said behind it
Cast on 10 sts.
  > →10
Inc 1 st at each end of every 4th row. When there are 14 sts, work 2 rows even.
  > 10→14 Piece/body 1 RS knit · WS purl · RS inc, knit to last st, inc (12) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (14) · WS purl · RS knit
When there are 20 sts, work 2 rows even.
  > 14 Piece/body 10 WS purl · RS knit
  > ✗ count contradicts @3:1 statedStitches 20, foundStitches 14
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 11 stocking 4 mm; hold
`),
  )('$title', expectAnnotated);
});
