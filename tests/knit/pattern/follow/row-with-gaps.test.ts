import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('a row that parts the stitches, followed row by row,', () => {
  it.each(
    annotatedIn(`
### bound off within a row
BACK
  > heading
Cast on 20 sts.
  > →20
Row 1: bo 3, k to end.
  > 20→17 Back/body 1 RS bind off 3 sts, knit to end (17)
Row 2: bo 3, p to end.
  > 17→14 Back/body 2 WS bind off 3 sts, purl to end (14)
Work 2 rows in st st.
  > 14 Back/body 3 RS knit · WS purl
Next row: k4, bo 2, k to end.
  > 14→12 Back/body 5 RS k4, bind off 2 sts, knit to end (12)
Next row: p to last 4 sts, co 2, p4.
  > 12→14 Back/body 6 WS purl to last 4 sts, cast on 2 sts, p4 (14)
Next row: k4, bo 6, k4.
  > 14→8 Back/body 7 RS k4, bind off 6 sts, k4 (8)
K 1 row.
  > 8→4 Back/left side 1 WS knit
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 9
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; split
  > =   left side from {part body, stitches 4, edge left}, WS: 1 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 4, edge right}, WS: hold

### gaps that part the stitches
BACK
  > heading
Cast on 20 sts.
  > →20
Row 1: k6, bo 8, k to end.
  > 20→12 Back/body 1 RS k6, bind off 8 sts, knit to end (12)
Row 2: p.
  > 12→6 Back/left side 1 WS purl
Rejoin yarn to rem 6 sts.
  > 6
K 1 row.
  > 6 Back/right side 1 WS knit
  > = Back, back, 1 to make, lines 3 4 6
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 6, edge left}, WS: 1 stocking 4 mm; hold
  > =   right side from {part body, stitches 6, edge right}, WS: 1 stocking 4 mm; hold

### both sides brought together again
BACK
  > heading
Cast on 20 sts.
  > →20
Next row: k6, bo 8, k to end.
  > 20→12 Back/body 1 RS k6, bind off 8 sts, knit to end (12)
P 1 row.
  > 12→6 Back/left side 1 WS purl
Rejoin yarn to rem sts.
  > 6
P 1 row.
  > 6 Back/right side 1 WS purl
Next row: k6, co 8, k6.
  > 6→20 Back/joined 1 RS k6, cast on 8 sts, k6 (20)
P 2 rows.
  > 20 Back/joined 2 WS purl · RS purl
  > = Back, back, 1 to make, lines 3 4 6 7 8
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 6, edge left}, WS: 1 stocking 4 mm; hold
  > =   right side from {part body, stitches 6, edge right}, WS: 1 stocking 4 mm; hold
  > =   joined from {pickUp [{along 'right side', stitches 6, held}; {along 'left side', stitches 6, held}]}, RS: 3 stocking 4 mm; hold

### numbers that go on, or start anew
Cast on 8 sts.
  > →8
Row 1: k.
  > 8 Piece/body 1 RS knit
Row 2: p.
  > 8 Piece/body 2 WS purl
Row 3: k2, p6.
  > 8 Piece/body 3 RS k2, p6
Row 4: p.
  > 8 Piece/body 4 WS purl
Row 6: k.
  > 8 Piece/body 5 RS knit
Row 5: k1, p7.
  > 8 Piece/body 6 WS k1, p7
Row 9: k.
  > 8 Piece/body 7 RS knit
Row 1: k4, p4.
  > 8 Piece/body 8 WS k4, p4
Row 4: p.
  > 8 Piece/body 9 RS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9 10
  > =   body from {castOn 8}, RS: 9 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
