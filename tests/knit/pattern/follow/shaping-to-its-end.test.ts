import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('shaping to its end, and what is said where nothing is left,', () => {
  it.each(
    annotatedIn(`
### more decreases than stitches
Cast on 5 sts.
  > →5
Dec 1 st at each end of every row 3 times.
  > 5→3 Piece/body 1 RS dec, k1, dec (3)
  > ✗ not enough stitches @2:1 needStitches 4, haveStitches 3
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 5}, RS: 1 stocking 4 mm; hold

### the last shaped row, more often than stitches are there
Cast on 6 sts.
  > →6
Knit 1 row.
  > 6 Piece/body 1 RS knit
Dec 1 st at each end of next row.
  > 6→4 Piece/body 2 WS dec, p2, dec (4)
Rep last dec every row 5 times.
  > 4→2 Piece/body 3 RS [dec] 2 times (2)
  > ✗ not enough stitches @4:1 needStitches 4, haveStitches 2
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 6}, RS: 3 stocking 4 mm; hold

### a total of one is the row that was spelled
Cast on 40 sts.
  > →40
Dec row: k1, k2tog, k to last 3 sts, ssk, k1.
  > 40→38 Piece/body 1 RS k1, k2tog, knit to last 3 sts, ssk, k1 (38)
Rep dec row every other row a total of 1 time.
  > 38
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 40}, RS: 1 stocking 4 mm; hold

### a total of three has two more
Cast on 40 sts.
  > →40
Dec row: k1, k2tog, k to last 3 sts, ssk, k1.
  > 40→38 Piece/body 1 RS k1, k2tog, knit to last 3 sts, ssk, k1 (38)
Rep dec row every other row a total of 3 times.
  > 38→34 Piece/body 2 WS purl · RS k1, k2tog, knit to last 3 sts, ssk, k1 (36) · WS purl · RS k1, k2tog, knit to last 3 sts, ssk, k1 (34)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 5 stocking 4 mm; hold

### a row by its number, the rows between as those before them
Cast on 20 sts.
  > →20
Row 1 (RS): Knit.
  > 20 Piece/body 1 RS knit
Row 2: Purl.
  > 20 Piece/body 2 WS purl
Row 3: K1, k2tog, k to end.
  > 20→19 Piece/body 3 RS k1, k2tog, knit to end (19)
Row 4: Purl.
  > 19 Piece/body 4 WS purl
Rep row 3 on every foll 4th row to 17 sts.
  > 19→17 Piece/body 5 RS knit · WS purl · RS k1, k2tog, knit to end (18) · WS purl · RS knit · WS purl · RS k1, k2tog, knit to end (17)
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 20}, RS: 11 stocking 4 mm; hold

### a row by its number, on knit rows
Cast on 20 sts.
  > →20
Row 1 (RS): Knit.
  > 20 Piece/body 1 RS knit
Row 2: Knit.
  > 20 Piece/body 2 WS knit
Row 3: K1, k2tog, k to end.
  > 20→19 Piece/body 3 RS k1, k2tog, knit to end (19)
Row 4: Knit.
  > 19 Piece/body 4 WS knit
Rep row 3 on every foll 4th row to 17 sts.
  > 19→17 Piece/body 5 RS knit · WS knit · RS k1, k2tog, knit to end (18) · WS knit · RS knit · WS knit · RS k1, k2tog, knit to end (17)
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 2 stocking 4 mm; 1 garter 4 mm; 3 stocking 4 mm; 1 garter 4 mm; hold

### a rhythm that nobody ends, of every other row and of every row
LEFT FRONT
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Left front/body 1 RS knit · WS purl
Dec 1 st at neck edge every other row.
  > 40→39 Left front/body 3 RS knit to last 2 sts, dec (39)
  > ✗ place not known @4:1
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; hold

### the place where nobody says it, by the count behind it
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Dec 1 st every other row 6 times (28 sts).
  > 40→28 says 28 Piece/body 3 RS dec, knit to last 2 sts, dec (38) · WS purl · RS dec, knit to last 2 sts, dec (36) · WS purl · RS dec, knit to last 2 sts, dec (34) · WS purl · RS dec, knit to last 2 sts, dec (32) · WS purl · RS dec, knit to last 2 sts, dec (30) · WS purl · RS dec, knit to last 2 sts, dec (28)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 13 stocking 4 mm; hold

### and at one edge by the one before
LEFT FRONT
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Left front/body 1 RS knit · WS purl
Dec 1 st at neck edge of next row.
  > 40→39 Left front/body 3 RS knit to last 2 sts, dec (39)
Dec 1 st every other row 6 times (33 sts).
  > 39→33 says 33 Left front/body 4 WS purl · RS knit to last 2 sts, dec (38) · WS purl · RS knit to last 2 sts, dec (37) · WS purl · RS knit to last 2 sts, dec (36) · WS purl · RS knit to last 2 sts, dec (35) · WS purl · RS knit to last 2 sts, dec (34) · WS purl · RS knit to last 2 sts, dec (33)
  > = Left front, left front, 1 to make, lines 3 4 5
  > =   body from {castOn 40}, RS: 15 stocking 4 mm; hold

### and nowhere by a count that fits neither
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Dec 1 st every other row 6 times (30 sts).
  > 40→30 says 30 Piece/body 3 RS [dec] 10 times, work in pattern to end 'Dec 1 st every other row 6 times (30 sts)' (30)
  > ✗ place not known @3:1
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 3 stocking 4 mm (own words 3); hold

### groups beside rows, at the neck and every other row
LEFT FRONT
  > heading
Cast on 40 sts.
  > →40
Work 10 rows in st st, at the same time bind off at neck edge 4 sts once, 3 sts once, 2 sts twice.
  > 40→29 Left front/body 1 RS knit · WS bind off 4 sts, purl to end (36) · RS knit · WS bind off 3 sts, purl to end (33) · RS knit · WS bind off 2 sts, purl to end (31) · RS knit · WS bind off 2 sts, purl to end (29) · RS knit · WS purl
  > = Left front, left front, 1 to make, lines 3
  > =   body from {castOn 40}, RS: 10 stocking 4 mm; hold

### groups beside rows, at both ends
BACK
  > heading
Cast on 40 sts.
  > →40
Work 8 rows in st st, at the same time bind off 3 sts at each side every other row twice.
  > 40→28 Back/body 1 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · RS bind off 3 sts, knit to end (31) · WS bind off 3 sts, purl to end (28) · [RS knit · WS purl] ×2
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 40}, RS: 8 stocking 4 mm; hold

### groups beside rows, at the beginning of the next ones
BACK
  > heading
Cast on 40 sts.
  > →40
Work 8 rows in st st, at the same time bind off 4 sts at beg of next 2 rows, then 2 sts at beg of foll 4 rows.
  > 40→24 Back/body 1 RS bind off 4 sts, knit to end (36) · WS bind off 4 sts, purl to end (32) · RS bind off 2 sts, knit to end (30) · WS bind off 2 sts, purl to end (28) · RS bind off 2 sts, knit to end (26) · WS bind off 2 sts, purl to end (24) · RS knit · WS purl
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 40}, RS: 8 stocking 4 mm; hold

### groups beside rows to a count have none that is known
LEFT FRONT
  > heading
Cast on 40 sts.
  > →40
Work 10 rows in st st, at the same time bind off 3 sts at beg of every RS row until 31 sts remain.
  > 40→31 Left front/body 1 RS knit · [WS purl · RS knit] ×4 · WS purl · RS bind off 3 sts, knit to end (37) · WS purl · RS bind off 3 sts, knit to end (34) · WS purl · RS bind off 3 sts, knit to end (31)
  > ✗ place not known @3:24
  > = Left front, left front, 1 to make, lines 3
  > =   body from {castOn 40}, RS: 15 stocking 4 mm; hold

### a hold behind a hold
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Leave sts on a holder.
  > 20
Leave on a spare needle.
  > →20
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### even rows where nothing is on the needle
Cast on 20 sts.
  > →20
Bind off.
  > 20→0 Piece/body 1 RS bind off all sts in pattern (0)
Work in garter st.
  > →0
Work 2 rows in garter st.
  > →0
  > ✗ nothing on the needle @4:1
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: bind off

### slipped first stitches on two and on one
Slip the first st of every row.
Cast on 2 sts.
  > →2
Knit 2 rows.
  > 2 Piece/body 1 RS sl1, k1 · WS sl1, k1
K2tog.
  > 2→1 Piece/body 3 RS k2tog (1)
Knit 1 row.
  > 1 Piece/body 4 WS knit
  > = Piece, other, 1 to make, lines 3 4 5
  > =   body from {castOn 2}, RS: 4 stocking 4 mm; hold

### a name with a count that begins nothing
Trellis panel (35 sts)
  > talk

### borders that differ, beside a pattern of rows
Basket pattern (multiple of 4)
Row 1 (RS): *k2, p2; rep from *.
Row 2: *k2, p2; rep from *.
Row 3: *p2, k2; rep from *.
Row 4: *p2, k2; rep from *.
Cast on 20 sts.
  > →20
Work in basket pattern, keeping first 3 sts in garter st and last 5 sts in moss st, for 4 rows.
  > 20 Piece/body 1 RS k5, *p2, k2; repeat from * to last 7 sts, p2, [k1, p1] 2 times, k1 · WS [k1, p1] 2 times, k3, *p2, k2; repeat from * to last 5 sts, p2, k3 · RS k3, *p2, k2; repeat from * to last 9 sts, p2, k3, [p1, k1] 2 times · WS [k1, p1] 2 times, k1, *p2, k2; repeat from * to last 7 sts, p2, k5
  > = pattern basket of 4 plus 0 over 8: *k2, p2; repeat from * to end (8) · *k2, p2; repeat from * to end (8) · *p2, k2; repeat from * to end (8) · *p2, k2; repeat from * to end (8)
  > = Piece, other, 1 to make, lines 7
  > =   body from {castOn 20}, RS: 4 basket in stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
