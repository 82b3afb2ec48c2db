import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('what lies beside, between and before, followed row by row,', () => {
  it.each(
    annotatedIn(`
### short rows in the fabric
Cast on 12 sts.
  > →12
Work 2 rows in k2, p2 rib.
  > 12 Piece/body 1 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Next row: k8, turn.
  > 12 Piece/body 3 RS k8, turn
Work 1 row.
  > 12 Piece/body 4 WS leave 4 sts unworked, *k2, p2; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 4 rib in rib 2x2 4 mm; hold

### a half that a line of its own names
My right front
  > talk
Cast on 12 sts.
  > →12
Dec 1 st at neck edge of next row.
  > 12→11 My right front/body 1 RS dec, knit to end (11)
  > = My right front, right front, 1 to make, lines 3
  > =   body from {castOn 12}, RS: 1 stocking 4 mm; hold

### one shaping beside spelled rows, to its end
LEFT FRONT
  > heading
Cast on 12 sts.
  > →12
K 1 row, at the same time dec 1 st at neck edge every row 2 times.
  > 12→11 Left front/body 1 RS knit to last 2 sts, dec (11)
Next row: p.
  > 11→10 Left front/body 2 WS dec, purl to end (10)
Next row: k.
  > 10 Left front/body 3 RS knit
Next row: p.
  > 10 Left front/body 4 WS purl
  > = Left front, left front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 12}, RS: 4 stocking 4 mm; hold

### groups at the end of every fourth row
BACK
  > heading
Cast on 20 sts.
  > →20
Bind off 2 sts at end of every 4th row 2 times.
  > 20→16 Back/body 1 RS knit to last 2 sts, bind off 2 sts (18) · WS purl · RS knit · WS purl · RS knit to last 2 sts, bind off 2 sts (16)
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 5 stocking 4 mm; hold

### a band before any piece
Pick up 10 sts along neck.
  > →10
K 1 row.
  > 10 Band/body 1 WS knit
  > = Band, other, 1 to make, lines 2
  > =   body from {pickUp [{stitches 10, along neck}]}, WS: 1 stocking 4 mm; hold

### sets by their number
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k5, bo 6, k7, bo 6, k6.
  > 30→18 Back/body 1 RS k5, bind off 6 sts, k7, bind off 6 sts, k6 (18)
P 1 row.
  > 18→6 Back/left side 1 WS purl
Rejoin yarn to 7 sts.
  > 6→7
P 1 row.
  > 7 Back/middle 1 WS purl
Rejoin yarn to 5 sts.
  > 7→5
P 1 row.
  > 5 Back/right side 1 WS purl
  > = Back, back, 1 to make, lines 3 4 6 8
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 6, edge left}, WS: 1 stocking 4 mm; hold
  > =   middle from {part body, stitches 7, edge middle}, WS: 1 stocking 4 mm; hold
  > =   right side from {part body, stitches 5, edge right}, WS: 1 stocking 4 mm; hold

### talk between pieces
BACK
  > heading
Cast on 6 sts.
  > →6
Bind off.
  > 6→0 Back/body 1 RS bind off all sts in pattern (0)
FINISHING
  > heading →0
Lovely little thing
  > talk →0
Cast on 4 sts.
  > →4
K 1 row.
  > 4 Finishing/body 1 RS knit
Bind off.
  > 4→0 Finishing/body 2 WS bind off all sts in pattern (0)
(green)
  > talk →0
Cast on 4 sts.
  > →4
K 1 row.
  > 4 Finishing/body 2 1 RS knit
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 6}, RS: bind off
  > = Finishing, other, 1 to make, lines 7 8 11
  > =   body from {castOn 4}, RS: 1 stocking 4 mm; bind off
  > =   body 2 from {castOn 4}, RS: 1 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
