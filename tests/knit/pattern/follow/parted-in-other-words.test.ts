import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Rows and counts are reckoned by hand: 40 stitches are 14 and 12 and 14. */
describe('a work that is parted in other words,', () => {
  it.each(
    annotatedIn(`
### a centre that is bound off alone lies in the middle of its row
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Bind off center 12 sts and work each side separately.
  > 40→14 Piece/body 3 RS knit to last 26 sts, bind off 12 sts, k14 (28)
Dec 1 st at neck edge on next 2 rows.
  > 14→12 Piece/left side 1 WS purl to last 2 sts, dec (13) · RS dec, knit to end (12)
Bind off.
  > 12→0 Piece/left side 3 WS bind off all sts in pattern (0)
Repeat for the other side.
  > →0 Piece/right side 1 RS knit to last 2 sts, dec (13) · WS dec, purl to end (12) · RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 14, edge left}, WS: 2 stocking 4 mm; bind off
  > =   right side from {part body, stitches 14, edge right}, RS: 2 stocking 4 mm; bind off

### a centre that lies in no middle is told
Cast on 41 sts.
  > →41
Work 2 rows in st st.
  > 41 Piece/body 1 RS knit · WS purl
Next row: bind off center 12 sts.
  > 41 asks the count Piece/body 3 RS work in pattern 'Next row: bind off center 12 sts'
  > ✗ centre not in the middle @3:1 stitches 41, centreStitches 12
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 41}, RS: 3 stocking 4 mm (own words 3); hold

### where both sides are on the needle a shoulder is bound off once in two rows on each
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Next row: k 14, join 2nd ball of yarn, bind off centre 12 sts, k to end.
  > 40→28 Piece/body 3 RS k14, bind off 12 sts, knit to end (28)
Working both sides at once, dec 1 st at each neck edge on next 2 rows.
  > 28→12 Piece/left side 1 WS purl to last 2 sts, dec (13) · RS dec, knit to end (12)
Bind off 5 sts at beg of next 2 rows, 7 sts at beg of foll 2 rows.
  > 12→0 Piece/left side 3 WS bind off 5 sts, purl to end (7) · RS knit · WS bind off all sts in pattern (0) · Piece/right side 1 RS knit to last 2 sts, dec (13) · WS dec, purl to end (12) · RS bind off 5 sts, knit to end (7) · WS purl · RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 14, edge left}, WS: 4 stocking 4 mm; bind off
  > =   right side from {part body, stitches 14, edge right}, RS: 4 stocking 4 mm; bind off

### the other side is taken up from where it lies
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Work over 20 sts only, and slip rem 20 sts on a holder to be worked later.
  > 40→20
Dec 1 st at neck edge on next row.
  > 20→19 Piece/right side 1 RS knit to last 2 sts, dec (19)
Bind off.
  > 19→0 Piece/right side 2 WS bind off all sts in pattern (0)
Connect yarn to other side of V neck and work this side to correspond.
  > 20→0 Piece/left side 1 RS dec, knit to end (19) · WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 4 5 6
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 20, edge right}, RS: 1 stocking 4 mm; bind off
  > =   left side from {part body, stitches 20, edge left}, RS: 1 stocking 4 mm; bind off

### while a side waits, words that nobody understands are told
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Next row: k 20, turn and leave rem sts on a holder.
  > 40→20 Piece/right side 1 RS k20
Bind off.
  > 20→0 Piece/right side 2 WS bind off all sts in pattern (0)
Now wobble back and work that one likewise in the end.
  > own words →0
  > ✗ stitch or repeat expected @5:5 column 5
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 20, edge right}, RS: 1 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 20, edge left}, RS: hold
    
### a row that only names the neck, the other edge told to be even, and the other side behind the bind-off
FRONT
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Front/body 1 RS knit · WS purl
Next row – shape neck. Work across 6 sts, bind off the next 8 sts and work across remaining sts. Work even at armhole and decrease 1 st at neck edge every row 2 times. Work 2 rows even. Bind off and work other side to correspond.
  > 20→0 Front/body 3 RS k6, bind off 8 sts, k6 (12) · Front/left side 1 WS p4, dec (5) · RS dec, knit to end (4) · WS purl · RS knit · WS bind off all sts in pattern (0) · Front/right side 1 RS k4, dec (5) · WS dec, purl to end (4) · RS knit · WS purl · RS bind off all sts in pattern (0)
Next row: shape neck as for back.
  > own words →0
  > ✗ stitch or repeat expected @5:11 column 11
  > = Front, front, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; 1 'shape neck' in stocking 4 mm; split
  > =   left side from {part body, stitches 6, edge left}, WS: 4 'shape neck' in stocking 4 mm; bind off
  > =   right side from {part body, stitches 6, edge right}, RS: 4 'shape neck' in stocking 4 mm; bind off
`),
  )('$title', expectAnnotated);
});
