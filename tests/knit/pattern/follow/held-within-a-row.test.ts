import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('stitches that a row works and leaves on a holder, followed row by row,', () => {
  it.each(
    annotatedIn(`
### in sentences of their own, before the neck is bound off
Cast on 20 sts.
  > →20
Work over 7 sts. Place on st.-holder. Bind off 6 sts. for back of neck.
  > 20→14 Piece/body 1 RS k7, bind off 6 sts, knit to end (14)
K 2 rows.
  > 14→7 Piece/left side 1 WS knit · RS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 7, edge left}, WS: 2 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 7, edge right}, WS: hold

### and slip them to a holder: the rest is worked on
Cast on 20 sts.
  > →20
Work across 10 sts. and slip them to a holder to be worked later. Work on rem. 10 sts. for 2 rows.
  > 20→10 Piece/body 1 RS knit · Piece/left side 1 WS purl · RS knit
  > ✗ stitches wait @2:67 stitches 10
Bind off.
  > 10→0 Piece/left side 3 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 2 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 10, edge right}, WS: hold

### each front and the back in one row
Cast on 20 sts.
  > →20
Next row: k5 and place these sts on holder for left front; k10 and place these sts on holder for back, k rem 5 sts.
  > 20 Piece/body 1 RS k5, k10, k5
Work 2 rows.
  > 20→5 Piece/left side 1 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 5, edge left}, WS: 2 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 5, edge right}, WS: hold
  > =   resting 2 from {part body, stitches 10, edge middle}, WS: hold

### by themselves they are all that is on the needle
Cast on 8 sts.
  > →8
K 1 row.
  > 8 Piece/body 1 RS knit
Leave on a spare needle.
  > 8
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; hold

### a count that is only named parts nothing
Cast on 20 sts.
  > →20
Work even on 12 sts for 2 rows.
  > 20 Piece/body 1 RS knit · WS purl
  > ✗ count contradicts @2:1 statedStitches 12, foundStitches 20
With 20 sts, work even for 2 rows.
  > 20 says 20 Piece/body 3 RS knit · WS purl
With 16 sts, work even for 2 rows.
  > 20 says 16 Piece/body 5 RS knit · WS purl
  > ✗ count contradicts @4:1 statedStitches 16, foundStitches 20
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; hold

### what was bound off is cast on again
Cast on 10 sts.
  > →10
Work buttonhole as follows: k 2 sts, bind off next 3 sts, work across row.
  > 10→7 Piece/body 1 RS k2, bind off 3 sts, knit to end (7)
Next row: cast on 3 sts over bound off sts.
  > 7→10 Piece/body 2 WS p5, cast on 3 sts, p2 (10)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; hold

### a row that stops before its end goes on behind the stop
Cast on 10 sts.
  > →10
Next row: k to last 4 sts. K2tog, yo, k2.
  > 10 Piece/body 1 RS knit to last 4 sts, k2tog, yo, k2
K to last 4 sts. K 2 rows.
  > 10 asks the count Piece/body 2 WS work in pattern 'K to last 4 sts' · RS knit · WS knit
  > ✗ stitches left over @3:1 leftStitches 4, onNeedleStitches 10
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 4 stocking 4 mm (own words 2); hold
`),
  )('$title', expectAnnotated);
});
