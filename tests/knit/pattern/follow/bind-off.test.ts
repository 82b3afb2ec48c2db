import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('bind off, followed row by row,', () => {
  it.each(
    annotatedIn(`
### all stitches
Cast on 10 sts.
  > →10
K 1 row.
  > 10 Piece/body 1 RS knit
Bind off.
  > 10→0 Piece/body 2 WS bind off all sts in pattern (0)
K 1 row.
  > →0
  > ✗ nothing on the needle @4:1
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 1 stocking 4 mm; bind off

### another number than there is
Cast on 10 sts.
  > →10
K 1 row.
  > 10 Piece/body 1 RS knit
Bind off rem 12 sts.
  > 10→0 Piece/body 2 WS bind off all sts in pattern (0)
  > ✗ count contradicts @3:1 statedStitches 12, foundStitches 10
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 1 stocking 4 mm; bind off

### the number that there is
Cast on 10 sts.
  > →10
K 1 row.
  > 10 Piece/body 1 RS knit
Bind off 10 sts.
  > 10→0 Piece/body 2 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 1 stocking 4 mm; bind off

### fewer than there are, then the row goes on
Cast on 10 sts.
  > →10
K 1 row.
  > 10 Piece/body 1 RS knit
Bind off 4 sts.
  > 10→6 Piece/body 2 WS bind off 4 sts, purl to end (6)
K 1 row.
  > 6 Piece/body 3 RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 10}, RS: 3 stocking 4 mm; hold

### more than there are
Cast on 10 sts.
  > →10
K 1 row.
  > 10 Piece/body 1 RS knit
Bind off 14 sts.
  > 10→0 Piece/body 2 WS bind off all sts in pattern (0)
  > ✗ count contradicts @3:1 statedStitches 14, foundStitches 10
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 1 stocking 4 mm; bind off

### after the shaping beside has come to its end
Left front
  > heading
Cast on 10 sts.
  > →10
Work 2 rows in st st, at the same time dec 1 st at neck edge every other row 3 times.
  > 10→9 Left front/body 1 RS knit to last 2 sts, dec (9) · WS purl
Bind off rem 7 sts.
  > 9→0 Left front/body 3 RS k7, dec (8) · WS purl · RS k6, dec (7) · WS bind off all sts in pattern (0)
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 10}, RS: 5 stocking 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
