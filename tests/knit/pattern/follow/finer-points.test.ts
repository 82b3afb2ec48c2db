import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as was reckoned by hand. */
describe('finer points of patterns, followed row by row,', () => {
  it.each(
    annotatedIn(`
### one stitch made or taken in a row
Cast on 10 sts.
  > →10
Work in st st for 2 rows.
  > 10 Piece/body 1 RS knit · WS purl
Next row: inc 1 st evenly across row.
  > 10→11 Piece/body 3 RS k5, m1, knit to end (11)
Next row: dec 1 st evenly across row.
  > 11→10 Piece/body 4 WS p5, p2tog, p4 (10)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 10}, RS: 4 stocking 4 mm; hold

### a knit row asked for where a purl row is due
Cast on 10 sts.
  > →10
Beg with a k row, work 3 rows in st st.
  > 10 Piece/body 1 RS knit · WS purl · RS knit
Beg with a k row, work 2 rows in st st.
  > 10 Piece/body 4 WS knit · RS purl
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 3 stocking 4 mm; 2 reverse stocking 4 mm; hold

### a row that has a name, again where it is due
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Dec row: k1, k2tog, k to last 3 sts, k2tog, k1.
  > 20→18 Piece/body 3 RS k1, k2tog, knit to last 3 sts, k2tog, k1 (18)
Next row: purl.
  > 18 Piece/body 4 WS purl
Rep dec row every other row 2 times more.
  > 18→14 Piece/body 5 RS k1, k2tog, knit to last 3 sts, k2tog, k1 (16) · WS purl · RS k1, k2tog, knit to last 3 sts, k2tog, k1 (14)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; hold

### a row of a name that no row has
Cast on 20 sts.
  > →20
Rep dec row every other row 2 times more.
  > 20
  > ✗ row not known @2:1 rowName dec

### a stitch pattern called as one before
Lace pattern
  > talk
Row 1: k2.
Row 1: k3.
Lace pattern
  > talk
Row 1: k4.
  > = pattern lace of 0 plus 2 over 2: k2 (2)
  > = pattern 'lace 2' of 0 plus 3 over 3: k3 (3)
  > = pattern 'lace 3' of 0 plus 4 over 4: k4 (4)

### any count will do where no multiple is stated
Lace pattern
  > talk
Row 1: *k1, p1; rep from * to last st, k1.
Row 2: *k1, p1; rep from * to last st, k1.
Cast on 5 sts.
  > →5
Work in lace pattern for 2 rows.
  > 5 Lace pattern/body 1 RS *k1, p1; repeat from * to last st, k1 · WS *k1, p1; repeat from * to last st, k1
  > = pattern lace of 2 plus 1 over 5: *k1, p1; repeat from * to last st, k1 (5) · *k1, p1; repeat from * to last st, k1 (5)
  > = Lace pattern, other, 1 to make, lines 5
  > =   body from {castOn 5}, RS: 2 lace in stocking 4 mm; hold

### reverse stocking stitch goes on as it is
Cast on 10 sts.
  > →10
Work 2 rows in rev st st.
  > 10 Piece/body 1 RS purl · WS knit
Beg with a k row, work 2 rows in rev st st.
  > 10 Piece/body 3 RS purl · WS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 4 reverse stocking 4 mm; hold

### a needle within brackets within brackets
Cast on 10 sts.
  > →10
Change to larger needles (US 7 (4.5 mm)) and work 2 rows in st st.
  > 10 Piece/body 1 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 10}, RS: 2 stocking 4.5 mm; hold

### as for the back, in three goes
Back
  > heading
Cast on 20 sts.
  > →20
Work 4 rows in st st.
  > 20 Back/body 1 RS knit · WS purl · RS knit · WS purl
Shape armholes: BO 2 sts at beg of next 2 rows.
  > 20→16 Back/body 5 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16)
Work 4 rows.
  > 16 Back/body 7 RS knit · WS purl · RS knit · WS purl
BO.
  > 16→0 Back/body 11 RS bind off all sts in pattern (0)
Front
  > heading
Work as for back to armhole.
  > →20 Front/body 1 RS knit · WS purl · RS knit · WS purl
Work as for back until 16 sts remain.
  > 20→16 Front/body 5 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16)
Work as for back.
  > 16→0 Front/body 7 RS knit · WS purl · RS knit · WS purl · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; 6 'shape armholes' in stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 8 9 10
  > =   body from {castOn 20}, RS: 10 stocking 4 mm; bind off

### stitches left that are others than the text says
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Next row: k8, leave rem 11 sts on a holder.
  > 20→8 Piece/right side 1 RS k8
  > ✗ count contradicts @3:1 statedStitches 11, foundStitches 12
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, RS: 1 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 12, edge left}, RS: hold

### stitches left behind a turn
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Next row: k8, turn, leave rem 12 sts on a holder.
  > 20→8 Piece/right side 1 RS k8
Dec 1 st at neck edge on next row.
  > 8→7 Piece/right side 2 WS dec, purl to end (7)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, RS: 2 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 12, edge left}, RS: hold
`),
  )('$title', expectAnnotated);
});
