import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** What is left on a holder, worked again or as on another piece. How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what is left and worked again, row by row:', () => {
  it.each(
    annotatedIn(`
### the last stitches on a holder
Cast on 12 sts.
  > →12
Knit 2 rows.
  > 12 Piece/body 1 RS knit · WS knit
Place last 5 sts on a holder.
  > 12→7
Knit 2 rows.
  > 7 Piece/right side 1 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2 4
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 7, edge right}, RS: 2 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 5, edge left}, RS: hold

### all on a holder
Cast on 12 sts.
  > →12
Knit 2 rows.
  > 12 Piece/body 1 RS knit · WS knit
Place 12 sts on a holder.
  > 12
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; hold

### what rests already is said to rest
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Next row: k8, turn.
  > 20→8 Piece/right side 1 RS k8
Leave rem 12 sts on a holder.
  > 8
Knit 2 rows.
  > 8 Piece/right side 2 WS knit · RS knit
Bind off.
  > 8→0 Piece/right side 4 WS bind off all sts in pattern (0)
Rejoin yarn to rem 12 sts.
  > →12
Knit 2 rows.
  > 12 Piece/left side 1 RS knit · WS knit
Bind off.
  > 12→0 Piece/left side 3 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 5 6 8 9
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, RS: 3 stocking 4 mm; bind off
  > =   left side from {part body, stitches 12, edge left}, RS: 2 stocking 4 mm; bind off

### rows again until a count, and not beyond it
Cast on 20 sts.
  > →20
Row 1: k2tog, knit to end.
  > 20→19 Piece/body 1 RS k2tog, knit to end (19)
Row 2: purl.
  > 19 Piece/body 2 WS purl
Rep rows 1 and 2 until 15 sts rem.
  > 19→15 Piece/body 3 RS k2tog, knit to end (18) · WS purl · RS k2tog, knit to end (17) · WS purl · RS k2tog, knit to end (16) · WS purl · RS k2tog, knit to end (15)
Purl 1 row.
  > 15 Piece/body 10 WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 10 stocking 4 mm; hold

### until a count that they step over
Cast on 20 sts.
  > →20
Row 1: k2tog, knit to last 2 sts, k2tog.
  > 20→18 Piece/body 1 RS k2tog, knit to last 2 sts, k2tog (18)
Row 2: purl.
  > 18 Piece/body 2 WS purl
Rep rows 1 and 2 until 15 sts rem.
  > 18→16 Piece/body 3 RS k2tog, knit to last 2 sts, k2tog (16) · WS purl
  > ✗ count contradicts @4:1 statedStitches 15, foundStitches 16
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; hold

### until a count that they never come to
Cast on 20 sts.
  > →20
Row 1: knit.
  > 20 Piece/body 1 RS knit
Row 2: purl.
  > 20 Piece/body 2 WS purl
Rep rows 1 and 2 until 15 sts rem.
  > 20 Piece/body 3 RS knit · WS purl
  > ✗ count contradicts @4:1 statedStitches 15, foundStitches 20
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; hold

### increased until a count
Cast on 10 sts.
  > →10
Row 1: k1, m1, knit to end.
  > 10→11 Piece/body 1 RS k1, m1, knit to end (11)
Row 2: purl.
  > 11 Piece/body 2 WS purl
Rep rows 1 and 2 until there are 13 sts.
  > 11→13 Piece/body 3 RS k1, m1, knit to end (12) · WS purl · RS k1, m1, knit to end (13)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 10}, RS: 5 stocking 4 mm; hold

### a pattern’s further rows without numbers
Moss pattern:
Row 1: k1, p1.
Next row: p1, k1.
Cast on 8 sts.
  > →8
Work in moss pattern for 4 rows.
  > 8 Piece/body 1 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end
  > = pattern piece of 0 plus 2 over 2: k1, p1 (2) · p1, k1 (2)
  > = Piece, other, 1 to make, lines 5
  > =   body from {castOn 8}, RS: 4 moss 4 mm; hold

### a mirrored front in stocking stitch with its group a row later
RIGHT FRONT
  > heading
Cast on 12 sts.
  > →12
Work 2 rows in st st.
  > 12 Right front/body 1 RS knit · WS purl
Bind off 3 sts at beg of next row.
  > 12→9 Right front/body 3 RS bind off 3 sts, knit to end (9)
Work 3 rows in st st.
  > 9 Right front/body 4 WS purl · RS knit · WS purl
Bind off.
  > 9→0 Right front/body 7 RS bind off all sts in pattern (0)
LEFT FRONT
  > heading
Work as for right front, reversing shaping.
  > →0 Left front/body 1 RS knit · WS purl · RS knit · WS bind off 3 sts, purl to end (9) · RS knit · WS purl · RS bind off all sts in pattern (0)
  > = Right front, right front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 12}, RS: 6 stocking 4 mm; bind off
  > = Left front, left front, 1 to make, lines 8
  > =   body from {castOn 12}, RS: 6 stocking 4 mm; bind off

### a front of half the stitches keeps only the armhole of the back
BACK
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Back/body 1 RS knit · WS purl
Dec 1 st at each end of next row.
  > 20→18 Back/body 3 RS dec, knit to last 2 sts, dec (18)
Purl 1 row.
  > 18 Back/body 4 WS purl
Bind off.
  > 18→0 Back/body 5 RS bind off all sts in pattern (0)
LEFT FRONT
  > heading
Cast on 10 sts.
  > →10
Work as for back.
  > 10→0 Left front/body 1 RS knit · WS purl · RS dec, knit to end (9) · WS purl · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; bind off
  > = Left front, left front, 1 to make, lines 9
  > =   body from {castOn 10}, RS: 4 stocking 4 mm; bind off

### ribs that were never said to be repeated
Cast on 12 sts.
  > →12
Work in k1, p1 rib for 3 rows.
  > 12 Piece/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end
Change to st st and work 2 rows.
  > 12 Piece/body 4 WS purl · RS knit
Work 2 rows in rib.
  > 12 Piece/body 6 WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 3 rib in rib 1x1 4 mm; 2 stocking 4 mm; 2 rib in rib 1x1 4 mm; hold

### where short of a row
Cast on 12 sts.
  > →12
Row 1: k5, turn.
  > 12 Piece/body 1 RS k5, turn
Row 2: p5.
  > 12 Piece/body 2 WS leave 7 sts unworked, p5
Row 3: knit.
  > 12 Piece/body 3 RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 3 stocking 4 mm; hold
`),
  )('$title', expectAnnotated);
});
