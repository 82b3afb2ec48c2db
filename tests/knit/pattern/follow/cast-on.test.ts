import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('cast on, followed row by row,', () => {
  it.each(
    annotatedIn(`
### so many stitches for a piece without a name
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### more than a needle holds
Cast on 2001 sts.
  > →2000
  > ✗ too many stitches @1:1 stitches 2001
Knit 1 row.
  > 2000 Piece/body 1 RS knit
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 2000}, RS: 1 stocking 4 mm; hold

### a piece that the heading names, and another below the same heading
BACK
  > heading
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Back/body 1 RS knit
Bind off.
  > 20→0 Back/body 2 WS bind off all sts in pattern (0)
Cast on 6 sts.
  > →6
K 1 row.
  > 6 Back/body 2 1 RS knit
Bind off.
  > 6→0 Back/body 2 2 WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 6 7
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; bind off
  > =   body 2 from {castOn 6}, RS: 1 stocking 4 mm; bind off

### a second cast-on while the first piece is on the needle
Cast on 20 sts.
  > →20
K 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
With yarn B, cast on 6 sts.
  > 20→6
K 1 row.
  > 6 Piece/body 2 1 RS knit
  > = Piece, other, 1 to make, lines 2 4
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold
  > =   body 2 from {castOn 6}, RS: 1 stocking 4 mm; hold

### a second cast-on at once
Cast on 20 sts.
  > →20
Cast on 6 sts.
  > 20→6
K 1 row.
  > 6 Piece/body 2 1 RS knit
  > = Piece, other, 1 to make, lines 3
  > =   body 2 from {castOn 6}, RS: 1 stocking 4 mm; hold

### a piece below a heading of its own after one that is done
BACK
  > heading
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Back/body 1 RS knit
Bind off.
  > 20→0 Back/body 2 WS bind off all sts in pattern (0)
Shape pocket
  > heading →0
Cast on 8 sts.
  > →8
K 1 row.
  > 8 Shape pocket/body 1 RS knit
Bind off.
  > 8→0 Shape pocket/body 2 WS bind off all sts in pattern (0)
Right pocket flap
  > heading
Cast on 4 sts.
  > →4
K 1 row.
  > 4 Right pocket flap/body 1 RS knit
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; bind off
  > = Shape pocket, other, 1 to make, lines 7 8
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; bind off
  > = Right pocket flap, other, 1 to make, lines 11
  > =   body from {castOn 4}, RS: 1 stocking 4 mm; hold

### two backs
BACK
  > heading
Cast on 4 sts.
  > →4
Bind off.
  > 4→0 Back/body 1 RS bind off all sts in pattern (0)
BACK
  > heading
Cast on 6 sts.
  > →6
Bind off.
  > 6→0 Back 2/body 1 RS bind off all sts in pattern (0)
LEFT BACK
  > heading
Cast on 6 sts.
  > →6
Bind off.
  > 6→0 Left back/body 1 RS bind off all sts in pattern (0)
LEFT
  > heading →0
Cast on 8 sts.
  > →8
Bind off.
  > 8→0 Left 2/body 1 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 4}, RS: bind off
  > = Back 2, back, 1 to make, lines 6
  > =   body from {castOn 6}, RS: bind off
  > = Left back, back, 1 to make, lines 9
  > =   body from {castOn 6}, RS: bind off
  > = Left 2, other, 1 to make, lines 12
  > =   body from {castOn 8}, RS: bind off

### what is cast on after a shaping beside has begun
Left front
  > heading
Cast on 20 sts.
  > →20
K 1 row, at the same time dec 1 st at neck edge every other row 5 times.
  > 20→19 Left front/body 1 RS knit to last 2 sts, dec (19)
With yarn B, cast on 10 sts.
  > 19→10
K 2 rows.
  > 10 Left front/body 2 1 RS knit · WS knit
  > = Left front, left front, 1 to make, lines 3 5
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; hold
  > =   body 2 from {castOn 10}, RS: 2 stocking 4 mm; hold

### after talk
FINISHING
  > heading
Sew seams. K 3 rows.
  > talk
Cast on 8 sts.
  > →8
K 1 row.
  > 8 Finishing/body 1 RS knit
  > = Finishing, other, 1 to make, lines 4
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; hold

### for the neck: at its edge, where the row ends, also behind other needles; for a sleeve something is begun
BACK
  > heading
Cast on 16 sts.
  > →16
Work 2 rows in st st.
  > 16 Back/body 1 RS knit · WS purl
Next row: k 4 and place on a holder, bind off 8 sts, k to end.
  > 16→8 Back/body 3 RS k4, bind off 8 sts, knit to end (8)
Work 2 rows even.
  > 8→4 Back/left side 1 WS purl · RS knit
Change to No. 5 needles. For front of neck, cast on 3 sts (7 sts on needle).
  > 4→7 says 7 Back/left side 3 WS p4, cast on 3 sts (7)
For underarm, cast on 2 sts.
  > 7→9 Back/left side 4 RS k7, cast on 2 sts (9)
For the sleeve, cast on 8 sts.
  > 9→8
K 1 row.
  > 8 Back/body 2 1 RS knit
  > = Back, back, 1 to make, lines 3 4 5 6 7 9
  > =   body from {castOn 16}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 4, edge left}, WS: 2 stocking 4 mm; 2 stocking 4 mm; hold
  > =   body 2 from {castOn 8}, RS: 1 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 4, edge right}, WS: hold
`),
  )('comes out as $title', expectAnnotated);
});
