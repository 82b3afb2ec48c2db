import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what a fabric, a band and a yarn go on in,', () => {
  it.each(
    annotatedIn(`
### a band of its own beside a pattern of rows
Basket pattern (multiple of 4)
Row 1 (RS): *k2, p2; rep from *.
Row 2: *k2, p2; rep from *.
Row 3: *p2, k2; rep from *.
Row 4: *p2, k2; rep from *.
LEFT FRONT
  > heading
Cast on 17 sts.
  > →17
Work in basket pattern, keeping 5 sts at front edge in moss st, for 4 rows.
  > 17 Left front/body 1 RS *k2, p2; repeat from * to last 5 sts, [k1, p1] 2 times, k1 · WS [k1, p1] 2 times, k3, *p2, k2; repeat from * to last 2 sts, p2 · RS *p2, k2; repeat from * to last 9 sts, p2, k3, [p1, k1] 2 times · WS [k1, p1] 2 times, k1, *p2, k2; repeat from * to end
  > ✗ not a multiple @8:1 name basket, ofStitches 4, plusStitches 0, stitches 17
  > = pattern basket of 4 plus 0 over 8: *k2, p2; repeat from * to end (8) · *k2, p2; repeat from * to end (8) · *p2, k2; repeat from * to end (8) · *p2, k2; repeat from * to end (8)
  > = Left front, left front, 1 to make, lines 8
  > =   body from {castOn 17}, RS: 4 basket in stocking 4 mm; hold

### borders at the same edge as before, at the armhole and at the end
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st, keeping 4 sts at armhole edge in garter st.
  > 20 Left front/body 1 RS knit · WS purl to last 4 sts, k4
Work 2 rows in st st, keeping last 5 sts in moss st.
  > 20 Left front/body 3 RS knit to last 4 sts, [p1, k1] 2 times · WS [k1, p1] 2 times, k1, purl to last 4 sts, k4
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; hold

### the rib of a piece before the last
BACK
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in k3, p2 rib.
  > 20 Back/body 1 RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end
Bind off.
  > 20→0 Back/body 3 RS bind off all sts in pattern (0)
POCKET
  > heading
Cast on 10 sts.
  > →10
Work 2 rows in garter st.
  > 10 Pocket/body 1 RS knit · WS knit
Bind off.
  > 10→0 Pocket/body 3 RS bind off all sts in pattern (0)
FRONT
  > heading
Cast on 20 sts.
  > →20
Work 4 rows in rib.
  > 20 Front/body 1 RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end · RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 2 rib in rib 2x2 4 mm; bind off
  > = Pocket, other, 1 to make, lines 7 8
  > =   body from {castOn 10}, RS: 2 garter 4 mm; bind off
  > = Front, front, 1 to make, lines 11
  > =   body from {castOn 20}, RS: 4 rib in rib 2x2 4 mm; hold

### knit and purl rows behind a border of numbered ones
Cast on 20 sts.
  > →20
Row 1 (RS): K.
  > 20 Piece/body 1 RS knit
Row 2: K.
  > 20 Piece/body 2 WS knit
Row 3: K1, *yo, k2tog; rep from * to last st, k1.
  > 20 Piece/body 3 RS k1, *yo, k2tog; repeat from * to last st, k1
Row 4: K.
  > 20 Piece/body 4 WS knit
K 1 row, p 1 row.
  > 20 Piece/body 5 RS knit · WS purl
Work 4 rows.
  > 20 Piece/body 7 RS knit · WS purl · RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 6 stocking 4 mm; hold

### stripes end where a yarn is named
Cast on 10 sts.
  > →10
Work in garter st: 2 rows A, 2 rows B.
  > 10 Piece/body 1 RS knit · WS knit · RS knit · WS knit
Work in stripes for 2 rows.
  > 10 Piece/body 5 RS knit · WS knit
With C, knit 3 rows.
  > 10 Piece/body 7 RS knit · WS knit · RS knit
Work 2 rows.
  > 10 Piece/body 10 WS knit · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 10}, RS: 2 'garter, A' in garter 4 mm; 2 'garter, B' in garter 4 mm; 2 'garter, A' in garter 4 mm; 5 'garter, C' in garter 4 mm; hold

### a section told in a rib, its rows left to it
Cast on 12 sts.
  > →12
Hem, in k1, p1 rib:
  > heading 12
Work 4 rows.
  > 12 Piece/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Dec 1 st at each end of next row.
  > 12→10 Piece/body 5 RS dec, *k1, p1; repeat from * to last 2 sts, dec (10)
Work 2 rows.
  > 10 Piece/body 6 WS *p1, k1; repeat from * to end · RS *p1, k1; repeat from * to end
  > = Piece, other, 1 to make, lines 3 4 5
  > =   body from {castOn 12}, RS: 7 hem in rib 1x1 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
