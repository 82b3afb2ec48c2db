import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Common practice, no published source. Counts reckoned by hand. */
describe('further sayings of leaflets,', () => {
  it.each(
    annotatedIn(`
### a row that begins the shaping is another one in each size
BACK
  > heading
Cast on 40 (44, 50) sts. Work 2 rows in st st.
  > 40 Back/body 1 RS knit · WS purl
Inc 1 st at each end of next (next, 3rd) and every foll 4th row until there are 44 (48, 54) sts.
  > 40→44 Back/body 3 RS inc, knit to last st, inc (42) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (44)
  > = sizes 1, 2, 3: 1
  > = Back, back, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 7 stocking 4 mm; hold

### the third size {"size":2}
BACK
  > heading
Cast on 40 (44, 50) sts. Work 2 rows in st st.
  > 50 Back/body 1 RS knit · WS purl
Inc 1 st at each end of next (next, 3rd) and every foll 4th row until there are 44 (48, 54) sts.
  > 50→54 Back/body 3 RS knit · WS purl · RS inc, knit to last st, inc (52) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (54)
  > = sizes 1, 2, 3: 3
  > = Back, back, 1 to make, lines 2 3
  > =   body from {castOn 50}, RS: 9 stocking 4 mm; hold

### a side in brackets within the sentence
BACK
  > heading
Cast on 40 sts. Work 2 rows in st st.
  > 40 Back/body 1 RS knit · WS purl
Cast off 4 sts at beg of next (RS) row, then dec 1 st at neck edge of every row 3 times. 33 sts.
  > 40→33 says 33 Back/body 3 RS bind off 4 sts, knit to end (36) · WS dec, purl to end (35) · RS knit to last 2 sts, dec (34) · WS dec, purl to end (33)
  > = Back, back, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 6 stocking 4 mm; hold

### the rest of the row rests
LEFT FRONT
  > heading
Cast on 40 sts. Work 2 rows in st st.
  > 40 Left front/body 1 RS knit · WS purl
Next row (RS): Patt 30, turn, leaving rem 10 sts of row on holder.
  > 40→30 Left front/right side 1 RS knit
Work 3 rows in st st.
  > 30 Left front/right side 2 WS purl · RS knit · WS purl
  > = Left front, left front, 1 to make, lines 2 3 4
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 30, edge right}, RS: 4 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 10, edge left}, RS: hold

### two stars end a row that is one stitch said; rows again behind the stars
Cast on 20 sts.
  > →20
** Row 1: K.
  > 20 Piece/body 1 RS knit
Row 2: K2, p to last 2 sts, k2.
  > 20 Piece/body 2 WS k2, purl to last 2 sts, k2
Row 3: K. **
  > 20 Piece/body 3 RS knit
Rep from ** to ** twice, then rows 2-3 incl. once.
  > 20 Piece/body 4 WS knit · RS k2, purl to last 2 sts, k2 · WS knit · [RS knit · WS k2, purl to last 2 sts, k2] ×2 · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; 3 reverse stocking 4 mm; 5 stocking 4 mm; hold

### over the shoulder in one piece
BACK
  > heading
Cast on 66 sts. Work 10 rows in st st.
  > 66 Back/body 1 RS knit · [WS purl · RS knit] ×4 · WS purl
Next row: K 22, place these on a st holder, bind off 22 sts for back of neck and start front on remaining 22 sts. Work 4 rows even.
  > 66→22 Back/body 11 RS knit to last 44 sts, bind off 22 sts, k22 (44) · Back/left side 1 WS purl · RS knit · WS purl · RS knit
  > = Back, back, 1 to make, lines 2 3
  > =   body from {castOn 66}, RS: 11 stocking 4 mm; split
  > =   left side from {part body, stitches 22, edge left}, WS: 4 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 22, edge right}, WS: hold

### as it was shaped before, towards you, and a ribbing that goes on
Cast on 20 sts.
  > →20
*K1, P1; repeat from * across the row, to end. Repeat this ribbing for approximately 2 inches.
  > 20 as long as she likes: 3 rows Piece/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
K 1 row.
  > 20 Piece/body 5 RS knit
Dec 1 st at each arm edge in same manner as before every other row 3 times. 14 sts.
  > 20→14 says 14 Piece/body 6 WS *k1, p1; repeat from * to end · RS dec, *k1, p1; repeat from * to last 2 sts, dec (18) · WS *k1, p1; repeat from * to end · RS dec, *p1, k1; repeat from * to last 2 sts, dec (16) · WS *k1, p1; repeat from * to end · RS dec, *k1, p1; repeat from * to last 2 sts, dec (14)
With right side of work toward you, bind off 3 sts, k to end. K 1 row. Bind off all sts, loose.
  > 14→0 Piece/body 12 WS bind off 3 sts, knit to end (11) · RS knit · WS bind off all sts in pattern (0)
  > ✗ side differs @5:1 saidSide RS, foundSide WS
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 1 rib in rib 1x1 4 mm; 3 stocking 4 mm (length {id 'piece/1', open, mm 50.8, from here}); 9 pattern in stocking 4 mm; bind off
    `),
  )('$title', expectAnnotated);
});
