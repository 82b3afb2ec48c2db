import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('evenly, followed row by row,', () => {
  it.each(
    annotatedIn(`
### increases and decreases in stocking stitch, right and wrong side
Cast on 20 sts.
  > →20
Inc 4 sts evenly across next row.
  > 20→24 Piece/body 1 RS k3, m1, [k5, m1] 3 times, k2 (24)
Inc 4 sts evenly across next row.
  > 24→28 Piece/body 2 WS p3, m1p, [p6, m1p] 3 times, p3 (28)
Dec 4 sts evenly across next row.
  > 28→24 Piece/body 3 RS k3, [k2tog, k5] 3 times, k2tog, k2 (24)
Dec 4 sts evenly across next row.
  > 24→20 Piece/body 4 WS p2, [p2tog, p4] 3 times, p2tog, p2 (20)
Dec 3 sts evenly across next row to 14 sts.
  > 20→17 Piece/body 5 RS k2, [k2tog, k5] 2 times, k2tog, k2 (17)
  > ✗ count contradicts @6:1 statedStitches 14, foundStitches 17
Inc evenly across next row to 20 sts.
  > 17→20 Piece/body 6 WS p3, m1p, p6, m1p, p5, m1p, p3 (20)
Dec 1 st evenly across next row.
  > 20→19 Piece/body 7 RS knit to last 11 sts, k2tog, k9 (19)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; hold

### in the last row of rib
Cast on 20 sts.
  > →20
Work 4 rows in k1, p1 rib, inc 4 sts evenly in last row.
  > 20→24 Piece/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS [k1, p1, k1, m1p, p1, k1, p1, k1, p1, m1, k1, p1] 2 times (24)
Work 2 rows in st st, inc 2 sts evenly.
  > 24→26 Piece/body 5 RS knit
Inc 2 sts evenly in last row of rib.
  > 26 Piece/body 6 WS p6, m1p, purl to last 6 sts, m1p, p6 (26)
Inc 2 sts evenly.
  > 26→28 Piece/body 7 RS k7, m1, knit to last 6 sts, m1, k6 (28)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 4 rib in rib 1x1 4 mm; 3 stocking 4 mm; hold

### over the middle
Cast on 20 sts.
  > →20
Inc 4 sts evenly over center 10 sts.
  > 20→24 Piece/body 1 RS k6, m1, k3, m1, k2, m1, k3, m1, knit to end (24)
Dec 2 sts evenly over next 30 sts.
  > 24→22 Piece/body 2 WS p5, p2tog, purl to last 7 sts, p2tog, p5 (22)
Dec 2 sts evenly over center 10 sts to 20 sts.
  > 22→20 Piece/body 3 RS knit to last 14 sts, k2tog, k3, k2tog, k7 (20)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold

### a count that is not the change
Cast on 20 sts.
  > →20
Inc 4 sts evenly across next row to 26 sts.
  > 20→24 Piece/body 1 RS k3, m1, [k5, m1] 3 times, k2 (24)
  > ✗ count contradicts @2:1 statedStitches 26, foundStitches 24
Dec 4 sts evenly across next row to 20 sts. (20 sts)
  > 24→20 says 20 Piece/body 2 WS p2, [p2tog, p4] 3 times, p2tog, p2 (20)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### more than there is room for
Cast on 6 sts.
  > →6
Inc 6 sts evenly across next row.
  > 6→12 Piece/body 1 RS [kfb] 6 times (12)
Inc 12 sts evenly across next row.
  > 12→24 Piece/body 2 WS [pfb] 12 times (24)
Inc 30 sts evenly across next row.
  > 24
  > ✗ too many for one row @4:1 stitches 24, times 30, mostTimes 23
Dec 20 sts evenly across next row.
  > 24
  > ✗ too many for one row @5:1 stitches 24, times 20, mostTimes 12
Inc 25 sts evenly across next row.
  > 24
  > ✗ too many for one row @6:1 stitches 24, times 25, mostTimes 23
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 6}, RS: 2 stocking 4 mm; hold

### in a labelled row that says the work
Cast on 20 sts.
  > →20
Next row: knit, inc 4 sts evenly.
  > 20→24 Piece/body 1 RS k3, m1, [k5, m1] 3 times, k2 (24)
Next row: purl, inc 4 sts evenly.
  > 24→28 Piece/body 2 WS p3, m1p, [p6, m1p] 3 times, p3 (28)
Next row (RS): purl, dec 4 sts evenly across row.
  > 28→24 Piece/body 3 RS p3, [p2tog, p5] 3 times, p2tog, p2 (24)
Next row: work in pattern, dec 4 sts evenly.
  > 24→20
Inc 2 sts evenly in last row.
  > 20→26 Piece/body 4 WS p6, m1p, purl to last 6 sts, m1p, p6 (26)
  > = Piece, other, 1 to make, lines 2 3 4 6
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; hold

### in purl and knit of ribs
Cast on 24 sts.
  > →24
Work 2 rows in k2, p2 rib.
  > 24 Piece/body 1 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Inc 6 sts evenly across next row.
  > 24→30 Piece/body 3 RS [k2, m1p, p2] 6 times (30)
Work 1 row in k2, p2 rib.
  > 30 Piece/body 4 WS *p2, k2; repeat from * to last 2 sts, p2
Dec 6 sts evenly across next row.
  > 30→24 Piece/body 5 RS k2, p2tog, k2, p1, p2tog, k1, p2, k2tog, p2, k1, k2tog, p1, k2, p2tog, k2, p1, p2tog, k1 (24)
Inc 24 sts evenly across next row.
  > 24→48 Piece/body 6 WS [[kfb] 2 times, [pfb] 2 times] 6 times (48)
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 24}, RS: 6 rib in rib 2x2 4 mm; hold

### the last row of a wrong side is purled again
Cast on 10 sts.
  > →10
K 1 row, p 1 row, inc 2 sts evenly.
  > 10→12 Piece/body 1 RS knit · WS p3, m1p, p5, m1p, p2 (12)
K 1 row, inc 2 sts evenly across last row.
  > 12→14 Piece/body 3 RS k3, m1, k6, m1, k3 (14)
P 1 row.
  > 14 Piece/body 4 WS purl
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 10}, RS: 4 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
