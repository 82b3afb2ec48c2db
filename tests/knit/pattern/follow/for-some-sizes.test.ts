import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what is for some sizes only,', () => {
  it.each(
    annotatedIn(`
### a line that is nothing but sizes is for those below it, to the next of its kind {"size":0}
BACK
  > heading
Cast on 20 (24: 28: 32) sts.
  > →20
For 1st size only
  > talk
Next row: K2tog, k to end. 19 sts.
  > 20→19 says 19 Back/body 1 RS k2tog, knit to end (19)
For 2nd, 3rd and 4th sizes only
  > talk
Next row: K[3:4:5], k2tog, k to end. [23:27:31] sts.
  > talk
Next row: Purl.
  > talk
For all 4 sizes
  > talk
Work 2 rows in st st.
  > 19 Back/body 2 WS purl · RS knit
  > = sizes 1, 2, 3, 4: 1
  > = Back, back, 1 to make, lines 4 9
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold

### and for no other {"size":2}
BACK
  > heading
Cast on 20 (24: 28: 32) sts.
  > →28
For 1st size only
  > talk
Next row: K2tog, k to end. 19 sts.
  > talk
For 2nd, 3rd and 4th sizes only
  > talk
Next row: K[3:4:5], k2tog, k to end. [23:27:31] sts.
  > 28→27 says 27 Back/body 1 RS k4, k2tog, knit to end (27)
Next row: Purl.
  > 27 Back/body 2 WS purl
For all 4 sizes
  > talk
Work 2 rows in st st.
  > 27 Back/body 3 RS knit · WS purl
Sizes 1, 2 and 3 only
  > talk
Next row: K1, k2tog, k to end. 18 (22: 26) sts.
  > 27→26 says 26 Back/body 5 RS k1, k2tog, knit to end (26)
All sizes
  > talk
Work 1 row.
  > 26 Back/body 6 WS purl
Third and fourth sizes only: dec 1 st at beg of next row. 25 (30) sts.
  > 26→25 says 25 Back/body 7 RS dec, knit to end (25)
Work 1 row.
  > 25 Back/body 8 WS purl
  > = sizes 1, 2, 3, 4: 3
  > = Back, back, 1 to make, lines 6 7 9 11 13 14 15
  > =   body from {castOn 28}, RS: 8 stocking 4 mm; hold

### without 'all sizes' only the next line is {"size":1}
Cast on 20 (24: 28) sts.
  > →24
Size 1 only
  > talk
K 1 row.
  > talk
K 2 rows.
  > 24 Piece/body 1 RS knit · WS knit
  > = sizes 1, 2, 3: 2
  > = Piece, other, 1 to make, lines 4
  > =   body from {castOn 24}, RS: 2 stocking 4 mm; hold

### a piece is for all sizes {"size":1}
BACK
  > heading
Cast on 20 (24: 28) sts.
  > →24
Size 1 only
  > talk
K 1 row.
  > talk
FRONT
  > heading 24
Cast on 20 (24: 28) sts.
  > 24
Size 3 only
  > talk
SHAPE ARMHOLES
  > talk
Bind off 2 sts at beg of next 2 rows.
  > talk
All sizes
  > talk
K 2 rows.
  > 24 Front/body 1 RS knit · WS knit
  > = sizes 1, 2, 3: 2
  > = Front, front, 1 to make, lines 11
  > =   body from {castOn 24}, RS: 2 stocking 4 mm; hold

### in brackets behind an order {"size":1}
Cast on 20 (24) sts. Work 3 rows in k1, p1 rib. (For size 1: inc 4 sts evenly across last row). (For size 2: inc 1 st at each end of next row). Work 2 rows in rib.
  > 24→26 Piece/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS inc, *p1, k1; repeat from * to last st, inc (26) · RS *p1, k1; repeat from * to end · WS *p1, k1; repeat from * to end
  > = sizes 1, 2: 2
  > = Piece, other, 1 to make, lines 1
  > =   body from {castOn 24}, RS: 6 rib in rib 1x1 4 mm; hold

### on some sizes {"size":2}
Sizes 34 (36, 38)
  > talk
Cast on 20 (24, 28) sts.
  > →28
On sizes 36 and 38 only: dec 1 st at each end of next row. 22 (26) sts.
  > 28→26 says 26 Piece/body 1 RS dec, knit to last 2 sts, dec (26)
On all sizes: K 2 rows.
  > 26 Piece/body 2 WS knit · RS knit
  > = sizes 34, 36, 38: 38
  > = Piece, other, 1 to make, lines 3 4
  > =   body from {castOn 28}, RS: 3 stocking 4 mm; hold

### until others are named {"size":2}
Cast on 20 (24: 28) sts.
  > →28
First and second sizes only
  > talk
Work 4 (6: -) rows in st st.
  > talk
Cast off.
  > talk
Third size only
  > talk
Work 2 rows in garter st.
  > 28 Piece/body 1 RS knit · WS knit
Cast off.
  > 28→0 Piece/body 3 RS bind off all sts in pattern (0)
  > = sizes 1, 2, 3: 3
  > = Piece, other, 1 to make, lines 6 7
  > =   body from {castOn 28}, RS: 2 garter 4 mm; bind off

### an order in brackets ends with them, and a count behind an order for some is of those {"size":1}
Size 2 years
  > talk
Sizes 4 and 6 years in parentheses
  > talk
Cast on 20 (24-28) sts.
  > →24
Work 2 rows. (For size 4 only: K 1 row.) Work 3 rows. On sizes 4 and 6 only: dec 1 st at each end of next row. 22 (26) sts.
  > 24→22 says 22 Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl · RS dec, knit to last 2 sts, dec (22)
  > = sizes 2, 4, 6: 4
  > = Piece, other, 1 to make, lines 4
  > =   body from {castOn 24}, RS: 7 stocking 4 mm; hold

### nor is any of it for another {"size":0}
Size 2 years
  > talk
Sizes 4 and 6 years in parentheses
  > talk
Cast on 20 (24-28) sts.
  > →20
Work 2 rows. (For size 4 only: K 1 row.) Work 3 rows. On sizes 4 and 6 only: dec 1 st at each end of next row. 22 (26) sts.
  > 20 Piece/body 1 RS knit · [WS purl · RS knit] ×2
  > = sizes 2, 4, 6: 2
  > = Piece, other, 1 to make, lines 4
  > =   body from {castOn 20}, RS: 5 stocking 4 mm; hold

### each further size by its age in brackets {"size":1}
Cast on 14 sts. (10 yrs.—18 sts.) (12 yrs.—22 sts.).
  > →18
Work 5 rows (10 yrs.—6 rows) (12 yrs.—7 rows) in k1, p1 rib.
  > 18 Piece/body 1 RS *k1, p1; repeat from * to end · [WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end] ×2 · WS *k1, p1; repeat from * to end
Bind off 4 sts at beg of next 2 rows. 6 sts (10 yrs.—10 sts) (12 yrs.—14 sts).
  > 18→10 says 10 Piece/body 7 RS bind off 4 sts, *k1, p1; repeat from * to end (14) · WS bind off 4 sts, *k1, p1; repeat from * to end (10)
  > = sizes 1, 2, 3: 2
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 18}, RS: 8 rib in rib 1x1 4 mm; hold

### what is no age names no size
Cast on 14 sts (hem - 14 sts).
  > own words 14 asks the count Piece/body 1 RS work in pattern '(hem - 14 sts)'
  > ✗ stitch or repeat expected @1:17 column 17
K 2 rows.
  > 14 Piece/body 2 WS knit · RS knit
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 14}, RS: 1 stocking 4 mm (own words 1); 2 pattern in stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
