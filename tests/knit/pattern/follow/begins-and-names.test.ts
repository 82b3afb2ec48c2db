import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('how rows begin, and what pieces are called,', () => {
  it.each(
    annotatedIn(`
### a row is worked from one needle on to the other
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Bind off 3 sts at beg of each needle until 8 sts remain.
  > 20→8 Piece/body 3 RS bind off 3 sts, knit to end (17) · WS bind off 3 sts, purl to end (14) · RS bind off 3 sts, knit to end (11) · WS bind off 3 sts, purl to end (8)
Inc 1 st at beg of every needle 4 times. (12 sts)
  > 8→12 says 12 Piece/body 7 RS inc, knit to end (9) · WS inc, purl to end (10) · RS inc, knit to end (11) · WS inc, purl to end (12)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 10 stocking 4 mm; hold

### a comma before the place
Cast on 20 sts.
  > →20
Bind off 4 sts, at the beginning of the next 2 rows. (12 sts)
  > 20→12 says 12 Piece/body 1 RS bind off 4 sts, knit to end (16) · WS bind off 4 sts, purl to end (12)
Dec 1 st ea side every 2nd row twice. (8 sts)
  > 12→8 says 8 Piece/body 3 RS dec, knit to last 2 sts, dec (10) · WS purl · RS dec, k6, dec (8)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 5 stocking 4 mm; hold

### begun with a row, and shaped in the way that was shown
Cast on 20 sts. Beg k row, st-st 4 rows.
  > 20 Piece/body 1 RS knit · WS purl · RS knit · WS purl
Dec row (RS) K3, k2tog, k to last 5 sts, skpo, k3.
  > 20→18 Piece/body 5 RS k3, k2tog, knit to last 5 sts, skp, k3 (18)
Cont in st-st, dec in this way at each end of 2 foll 4th rows. (14 sts) St-st 3 rows.
  > 18→14 says 14 Piece/body 6 WS purl · RS knit · WS purl · RS k3, k2tog, knit to last 5 sts, skp, k3 (16) · WS purl · RS knit · WS purl · RS k3, k2tog, knit to last 5 sts, skp, k3 (14) · WS purl · RS knit · WS purl
Inc row (RS): K2, kfb, k to last 4 sts, kfb, k3. (16 sts)
  > 14→16 says 16 Piece/body 17 RS k2, kfb, knit to last 4 sts, kfb, k3 (16)
Cont in st-st, inc in this way at each end of next 2 RS rows. (20 sts)
  > 16→20 says 20 Piece/body 18 WS purl · RS k2, kfb, knit to last 4 sts, kfb, k3 (18) · WS purl · RS k2, kfb, knit to last 4 sts, kfb, k3 (20)
  > = Piece, other, 1 to make, lines 1 2 3 4 5
  > =   body from {castOn 20}, RS: 21 stocking 4 mm; hold

### where no row has shown it nobody knows
Cast on 20 sts. Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Next row: K3, k2tog, k to last 5 sts, skpo, k3.
  > 20→18 Piece/body 3 RS k3, k2tog, knit to last 5 sts, skp, k3 (18)
Inc in this way at each end of every 4th row twice.
  > 18
  > ✗ no rows to repeat @3:1
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold

### the way that is spelled behind it is that row
Cast on 10 sts.
  > →10
Dec 1 st at each end of next row in this way: k1, k2tog, k to last 3 sts, ssk, k1. (8 sts)
  > 10→8 says 8 Piece/body 1 RS k1, k2tog, knit to last 3 sts, ssk, k1 (8)
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 10}, RS: 1 stocking 4 mm; hold

### so many evenly within a row
Cast on 20 sts.
  > →20
Row 1: Knit, increasing evenly by 4 so there are 24 sts.
  > 20→24 says 24 Piece/body 1 RS k3, m1, [k5, m1] 3 times, k2 (24)
Row 2: Purl, decrease evenly by 2 so you have 22 sts.
  > 24→22 says 22 Piece/body 2 WS p5, p2tog, purl to last 7 sts, p2tog, p5 (22)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### rows of before are known by their numbers
Cast on 10 sts.
  > →10
Row 1: Knit.
  > 10 Piece/body 1 RS knit
Row 2: K1, p to last st, k1.
  > 10 Piece/body 2 WS k1, purl to last st, k1
Repeat these last 2 rows once more.
  > 10 Piece/body 3 RS knit · WS k1, purl to last st, k1
Row 5: Repeat row 1.
  > 10 Piece/body 5 RS knit
Row 6: Repeat row 2.
  > 10 Piece/body 6 WS k1, purl to last st, k1
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 10}, RS: 4 stocking 4 mm; 2 pattern in stocking 4 mm; hold

### the first stitch is always knitted
Always k the first st.
BACK
  > heading
Cast on 8 sts.
  > →8
Work 4 rows in st st.
  > 8 Back/body 1 RS knit · WS k1, purl to end · RS knit · WS k1, purl to end
Next row: K2tog, k to end.
  > 8→7 Back/body 5 RS k2tog, knit to end (7)
  > = Back, back, 1 to make, lines 4 5
  > =   body from {castOn 8}, RS: 5 stocking 4 mm; hold

### of two stitches it is a border, and nothing is there to have one
Always k the first 2 sts of every row.
  > ✗ nothing on the needle @1:1
Cast on 8 sts.
  > →8
Work 2 rows in st st.
  > 8 Piece/body 1 RS knit · WS purl
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; hold

### a piece is called as its heading has it, whatever is told of it
BACK
  > heading
Cast on 6 sts.
  > →6
K 1 row.
  > 6 Back/body 1 RS knit
Bind off.
  > 6→0 Back/body 2 WS bind off all sts in pattern (0)
LEFT FRONT
  > heading
NOTE: For boys work buttonholes in left front border.
  > heading
For girls work buttonholes in right front border.
  > talk
Cast on 10 sts.
  > →10
Knit 2 rows.
  > 10 Left front/body 1 RS knit · WS knit
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 6}, RS: 1 stocking 4 mm; bind off
  > = Left front, left front, 1 to make, lines 9
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; hold

### what a heading begins with
Begin with the sleeves (work 2)
  > heading
Cast on 10 sts.
  > →10
Knit 2 rows.
  > 10 Sleeves/body 1 RS knit · WS knit
Knit the upper back
  > heading 10
Cast on 8 sts.
  > 10→8
Knit the first 4 sts, purl to end.
  > 8 Upper back/body 1 RS k4, purl to end
Instructions for front
  > heading 8
Cast on 6 sts.
  > 8→6
K 2 rows.
  > 6 Front/body 1 RS knit · WS knit
  > = Sleeves, sleeve, 2 to make, lines 3
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; hold
  > = Upper back, back, 1 to make, lines 6
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 9
  > =   body from {castOn 6}, RS: 2 stocking 4 mm; hold

### what is meant by a word is no order
K – knit
  > talk
P – purl
  > talk
sl1 – slip 1 st knitwise
pat – pattern
  > talk lines 3 to 4
Cast on 10 sts.
  > →10
Row 1 – knit
  > 10 Piece/body 1 RS knit
Next row – p.
  > 10 Piece/body 2 WS purl
K – knit to end.
  > 10 Piece/body 3 RS k1, knit to end
  > = Piece, other, 1 to make, lines 5 6 7
  > =   body from {castOn 10}, RS: 3 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
