import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts reckoned by hand. */
describe('groups bound off, and what rests, followed row by row,', () => {
  it.each(
    annotatedIn(`
### groups where rows begin
Cast on 60 sts.
  > →60
Work 2 rows in st st.
  > 60 Piece/body 1 RS knit · WS purl
Bind off 3 sts at beg of next 2 rows, then 2 sts at beg of foll 2 rows.
  > 60→50 Piece/body 3 RS bind off 3 sts, knit to end (57) · WS bind off 3 sts, purl to end (54) · RS bind off 2 sts, knit to end (52) · WS bind off 2 sts, purl to end (50)
Bind off 2 sts at beg of next 4 rows.
  > 50→42 Piece/body 7 RS bind off 2 sts, knit to end (48) · WS bind off 2 sts, purl to end (46) · RS bind off 2 sts, knit to end (44) · WS bind off 2 sts, purl to end (42)
Bind off 3 sts at beg of next row and 2 sts at beg of foll alt row.
  > 42→37 Piece/body 11 RS bind off 3 sts, knit to end (39) · WS purl · RS bind off 2 sts, knit to end (37)
Bind off 2 sts at neck edge.
  > 37→35 Piece/body 14 WS bind off 2 sts, purl to end (35)
Bind off 2 sts at each side.
  > 35→31 Piece/body 15 RS bind off 2 sts, knit to end (33) · WS bind off 2 sts, purl to end (31)
Bind off 2 sts at end of next row.
  > 31→29 Piece/body 17 RS knit to last 2 sts, bind off 2 sts (29)
Cast on 4 sts at beg of next 2 rows.
  > 29→37 Piece/body 18 WS cast on 4 sts, purl to end (33) · RS cast on 4 sts, knit to end (37)
Cast on 2 sts at each side.
  > 37→41 Piece/body 20 WS cast on 2 sts, purl to end (39) · RS cast on 2 sts, knit to end (41)
Bind off 0 sts at beg of next 2 rows.
  > 41
Bind off 2 sts at beg of next 2 rows until 30 sts remain.
  > 41→29 Piece/body 22 WS bind off 2 sts, purl to end (39) · RS bind off 2 sts, knit to end (37) · WS bind off 2 sts, purl to end (35) · RS bind off 2 sts, knit to end (33) · WS bind off 2 sts, purl to end (31) · RS bind off 2 sts, knit to end (29)
  > ✗ count contradicts @12:1 statedStitches 30, foundStitches 29
Bind off 50 sts at beg of next row.
  > 29→0 Piece/body 28 WS bind off all sts in pattern (0)
  > ✗ bound off too many @13:1 wantedStitches 50, haveStitches 29
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9 10 12 13
  > =   body from {castOn 60}, RS: 27 stocking 4 mm; bind off

### groups on one side of what is parted
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Next row: K15, bind off 10 sts, k to end.
  > 40→30 Piece/body 3 RS k15, bind off 10 sts, knit to end (30)
Bind off 3 sts at neck edge, then 2 sts at neck edge.
  > 30→10 Piece/left side 1 WS purl · RS bind off 3 sts, knit to end (12) · WS purl · RS bind off 2 sts, knit to end (10)
Bind off 4 sts at each side.
  > 10→6 Piece/left side 5 WS bind off 4 sts, purl to end (6)
Bind off 3 sts at armhole edge.
  > 6→3 Piece/left side 6 RS knit · WS bind off 3 sts, purl to end (3)
Bind off.
  > 3→0 Piece/left side 8 RS bind off all sts in pattern (0)
Rejoin yarn to rem sts.
  > →15
Bind off 3 sts at neck edge.
  > 15→12 Piece/right side 1 WS bind off 3 sts, purl to end (12)
Work 2 rows.
  > 12 Piece/right side 2 RS knit · WS purl
Bind off.
  > 12→0 Piece/right side 4 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 9 10 11
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 15, edge left}, WS: 7 stocking 4 mm; bind off
  > =   right side from {part body, stitches 15, edge right}, WS: 3 stocking 4 mm; bind off

### what rests on a holder
Cast on 41 sts.
  > →41
Work 2 rows in st st.
  > 41 Piece/body 1 RS knit · WS purl
Place center 11 sts on holder.
  > 41→15
Work 2 rows in st st.
  > 15 Piece/right side 1 RS knit · WS purl
Place rem sts on holder.
  > 15
Rejoin yarn to rem sts and work 2 rows.
  > 15 Piece/left side 1 RS knit · WS purl
Place rem 14 sts on holder.
  > 15
  > ✗ count contradicts @7:1 statedStitches 14, foundStitches 15
  > = Piece, other, 1 to make, lines 2 4 6
  > =   body from {castOn 41}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 15, edge right}, RS: 2 stocking 4 mm; hold
  > =   middle from {part body, stitches 11, edge middle}, RS: hold
  > =   left side from {part body, stitches 15, edge left}, RS: 2 stocking 4 mm; hold

### what cannot rest
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Place center 11 sts on holder.
  > 40
  > ✗ centre not in the middle @3:1 stitches 40, centreStitches 11
Place next 50 sts on holder.
  > 40
  > ✗ count contradicts @4:1 statedStitches 50, foundStitches 40
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; hold

### the first ones, and the rest
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Place first 12 sts on holder.
  > 40→28
  > ✗ stitches wait @3:1 stitches 12
Work 2 rows in st st.
  > 28 Piece/left side 1 RS knit · WS purl
Bind off.
  > 28→0 Piece/left side 3 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 4 5
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   left side from {part body, stitches 28, edge left}, RS: 2 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge right}, RS: hold

### the last ones of a row
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Leave rem 12 sts on holder.
  > 40→28
  > ✗ stitches wait @3:1 stitches 12
Work 2 rows in st st.
  > 28 Piece/right side 1 RS knit · WS purl
Bind off.
  > 28→0 Piece/right side 3 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 4 5
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 28, edge right}, RS: 2 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge left}, RS: hold

### the rest at the end of a piece
Back
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Back/body 1 RS knit · WS purl
Leave rem 38 sts on holder.
  > 40
  > ✗ count contradicts @4:1 statedStitches 38, foundStitches 40
Front
  > heading
Cast on 40 sts.
  > →40
Place all 40 sts on holder.
  > 40
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 
  > =   body from {castOn 40}, RS: hold

### the middle of what rests
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Next row: K15, turn.
  > 40→15 Piece/right side 1 RS k15
Work 3 rows in st st.
  > 15 Piece/right side 2 WS purl · RS knit · WS purl
Bind off.
  > 15→0 Piece/right side 5 RS bind off all sts in pattern (0)
Sl center 10 sts onto a holder.
  > →0
Rejoin yarn to rem sts and k 2 rows.
  > 15 Piece/left side 1 RS knit · WS knit
Bind off.
  > 15→0 Piece/left side 3 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 7 8
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 15, edge right}, RS: 4 stocking 4 mm; bind off
  > =   middle from {part body, stitches 10, edge middle}, RS: hold
  > =   left side from {part body, stitches 15, edge left}, RS: 2 stocking 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
