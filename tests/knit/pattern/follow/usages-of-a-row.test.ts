import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Counts that come out by one usage of the trade only: common practice, no published source. */
describe('what a row leaves to usage,', () => {
  it.each(
    annotatedIn(`
### the yarn is brought round a slipped stitch and makes none
Cast on 17 sts.
  > →17
Row 1: *K1, yf, sl 1, yb; rep from * to last st, k1.
  > 17 Piece/body 1 RS *k1, sl wyif; repeat from * to last st, k1
Row 2: *P1, yb, sl 1 purlwise, yf; rep from * to last st, p1.
  > 17 Piece/body 2 WS *p1, sl wyib; repeat from * to last st, p1
Row 3: K1, * wool to front, slip 1, wool to back, k1; rep from * to end.
  > 17 Piece/body 3 RS k1, *sl wyif, k1; repeat from * to end
Row 4: P1, * with yarn at back of work sl 1 st as to p, p1; rep from * to end.
  > 17 Piece/body 4 WS p1, *sl wyib, p1; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 17}, RS: 4 stocking 4 mm; hold

### a yarn forward before a slipped stitch that nothing takes back makes one
Cast on 9 sts.
  > →9
Row 1: K1, yf, sl 1, k2tog, psso, yf, k5.
  > 9 Piece/body 1 RS k1, yo, sk2p, yo, k5
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 9}, RS: 1 stocking 4 mm; hold

### a rib is turned by turns
Cast on 23 sts.
  > →23
Row 1: K 3 (for border), (p 1, k 1) alternately to end.
  > 23 Piece/body 1 RS k3, *p1, k1; repeat from * to end
Row 2: P1, k1 alternately across to within last 3 sts, k 3.
  > 23 Piece/body 2 WS *p1, k1; repeat from * to last 3 sts, k3
Row 3: K 3; p 1, k 1 across row.
  > 23 Piece/body 3 RS k3, *p1, k1; repeat from * to end
Row 4: (P1, k1) to last 3 sts, k3.
  > 23 Piece/body 4 WS *p1, k1; repeat from * to last 3 sts, k3
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 23}, RS: 4 rib in rib 1x1 matched 4 mm; hold

### a rib of an odd number ends where the row does
Cast on 23 sts.
  > →23
Row 1: K1, p1; repeat to end.
  > 23 Piece/body 1 RS *k1, p1; repeat from * to last st, k1
Row 2: P1, k1 across.
  > 23 Piece/body 2 WS *p1, k1; repeat from * to last st, p1
Row 3: *K2, p3; rep from * to end.
  > 23 asks the count Piece/body 3 RS work in pattern 'Row 3: *K2, p3; rep from * to end'
  > ✗ not enough stitches @4:1 needStitches 3, haveStitches 1
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 23}, RS: 2 rib in rib 1x1 matched 4 mm; 1 stocking 4 mm (own words 1); hold

### what does not come out as a rib is told
Cast on 23 sts.
  > →23
Row 1: *K2, yo, k2tog; rep from * to end.
  > 23 asks the count Piece/body 1 RS work in pattern 'Row 1: *K2, yo, k2tog; rep from * to end'
  > ✗ not enough stitches @2:1 needStitches 2, haveStitches 1
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 23}, RS: 1 stocking 4 mm (own words 1); hold

### a decrease and what stands before it are repeated across where they come out
Cast on 30 sts.
  > →30
Next row: K 3, k 2 tog across row. (24 sts)
  > 30→24 says 24 Piece/body 1 RS *k3, k2tog; repeat from * to end (24)
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; hold

### the stitch that is left by casting off is not counted by some
Cast on 50 sts.
  > →50
Row 1: K 12, cast off 3, k 18, cast off 3, k 12.
  > 50→44 Piece/body 1 RS k12, bind off 3 sts, k19, bind off 3 sts, k13 (44)
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 50}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 13, edge left}, WS: hold
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold
  > =   resting 2 from {part body, stitches 19, edge middle}, WS: hold

### and is by others
Cast on 52 sts.
  > →52
Row 1: K 12, cast off 3, k 20, cast off 3, k 14.
  > 52→46 Piece/body 1 RS k12, bind off 3 sts, k20, bind off 3 sts, k14 (46)
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 52}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 14, edge left}, WS: hold
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold
  > =   resting 2 from {part body, stitches 20, edge middle}, WS: hold

### one stitch too many is told where nothing is cast off
Cast on 50 sts.
  > →50
Row 1: K 12, p 25, k 12.
  > 50 asks the count Piece/body 1 RS work in pattern 'Row 1: K 12, p 25, k 12'
  > ✗ stitches left over @2:1 leftStitches 1, onNeedleStitches 50
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 50}, RS: 1 stocking 4 mm (own words 1); hold

### a gap is closed where it is
Cast on 40 sts.
  > →40
Next row: K 4, bind off 3 sts, k to end.
  > 40→37 Piece/body 1 RS k4, bind off 3 sts, knit to end (37)
Next row: P back, casting on 3 sts in place of those bound off.
  > 37→40 Piece/body 2 WS purl to last 4 sts, cast on 3 sts, purl to end (40)
Next row: K to last 8 sts, cast off 2, k 6.
  > 40→38 Piece/body 3 RS knit to last 8 sts, bind off 2 sts, k6 (38)
Next row: Purl to cast-off sts, cast on 2, p to end.
  > 38→40 Piece/body 4 WS purl to last 32 sts, cast on 2 sts, purl to end (40)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 40}, RS: 4 stocking 4 mm; hold

### two gaps are closed
Cast on 40 sts.
  > →40
Next row: K 4, bind off 3 sts, k until 10 sts are left, bind off 3 sts, k to end.
  > 40→34 Piece/body 1 RS k4, bind off 3 sts, knit to last 10 sts, bind off 3 sts, knit to end (34)
Next row: Purl, casting on 3 sts over those bound off.
  > 34→40 Piece/body 2 WS purl to last 27 sts, cast on 3 sts, purl to last 4 sts, cast on 3 sts, purl to end (40)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; hold

### no gap is there to be closed
Cast on 40 sts.
  > →40
Knit 2 rows.
  > 40 Piece/body 1 RS knit · WS knit
Next row: Purl back, casting on 3 sts over those bound off.
  > 40 asks the count Piece/body 3 RS work in pattern 'Next row: Purl back, casting on 3 sts over those bound off'
  > ✗ place not known @3:1
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 3 stocking 4 mm (own words 3); hold

### stitches are increased at intervals in a row
Cast on 43 sts.
  > →43
K 1 row, increasing in every 10th st. (47 sts)
  > 43→47 says 47 Piece/body 1 RS [k9, inc] 4 times, knit to end (47)
Next row: P, inc in every 6th st. (54 sts)
  > 47→54 says 54 Piece/body 2 WS [p5, inc] 7 times, purl to end (54)
Next row: K 1, (k twice in next st, k 3) 13 times, k 1. (67 sts)
  > 54→67 says 67 Piece/body 3 RS k1, [kfb, k3] 13 times, k1 (67)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 43}, RS: 3 stocking 4 mm; hold

### a row's own ends are shaped
Cast on 20 sts.
  > →20
Next row: K across, decreasing 1 st at end of row.
  > 20→19 Piece/body 1 RS knit to last 2 sts, dec (19)
Next row: P1, k1 across, increasing 1 st at each end of row.
  > 19→21 Piece/body 2 WS inc, *p1, k1; repeat from * to last 2 sts, p1, inc (21)
Purl 1 row, dec 1 st at each end.
  > 21→19 Piece/body 3 RS dec, purl to last 2 sts, dec (19)
Next row: K 6, dec 1 st at end, k 10.
  > own words 19 asks the count Piece/body 4 WS work in pattern 'Next row: K 6, dec 1 st at end, k 10'
  > ✗ stitch or repeat expected @5:25 column 25
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; 1 rib in rib 1x1 matched 4 mm; 1 reverse stocking 4 mm; 1 stocking 4 mm (own words 1); hold
    `),
  )('$title', expectAnnotated);
});
