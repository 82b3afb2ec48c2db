import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('groups, followed row by row,', () => {
  it.each(
    annotatedIn(`
### bound off and cast on where rows begin
BACK
  > heading
Cast on 40 sts.
  > →40
Bind off 3 sts at beg of next 2 rows, then 2 sts at beg of foll 2 rows.
  > 40→30 Back/body 1 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · RS bind off 2 sts, knit to end (32) · WS bind off 2 sts, purl to end (30)
Cast on 4 sts at beg of next 2 rows.
  > 30→38 Back/body 5 RS cast on 4 sts, knit to end (34) · WS cast on 4 sts, purl to end (38)
Work 4 rows.
  > 38 Back/body 7 RS knit · WS purl · RS knit · WS purl
Bind off 5 sts at beg of next 4 rows.
  > 38→18 Back/body 11 RS bind off 5 sts, knit to end (33) · WS bind off 5 sts, purl to end (28) · RS bind off 5 sts, knit to end (23) · WS bind off 5 sts, purl to end (18)
Bind off rem sts.
  > 18→0 Back/body 15 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 40}, RS: 14 stocking 4 mm; bind off

### at one edge every other row
LEFT FRONT
  > heading
Cast on 30 sts.
  > →30
Bind off 3 sts at armhole edge once, 2 sts twice.
  > 30→23 Left front/body 1 RS bind off 3 sts, knit to end (27) · WS purl · RS bind off 2 sts, knit to end (25) · WS purl · RS bind off 2 sts, knit to end (23)
Dec 1 st at same edge of next row.
  > 23→22 Left front/body 6 WS purl to last 2 sts, dec (22)
Work 1 row.
  > 22 Left front/body 7 RS knit
Bind off 4 sts at neck edge every other row 2 times.
  > 22→14 Left front/body 8 WS bind off 4 sts, purl to end (18) · RS knit · WS bind off 4 sts, purl to end (14)
Bind off 2 sts at armhole edge every 4th row 2 times.
  > 14→10 Left front/body 11 RS bind off 2 sts, knit to end (12) · WS purl · RS knit · WS purl · RS bind off 2 sts, knit to end (10)
Cast on 3 sts at neck edge.
  > 10→13 Left front/body 16 WS cast on 3 sts, purl to end (13)
Bind off 2 sts at end of next row.
  > 13→11 Left front/body 17 RS knit to last 2 sts, bind off 2 sts (11)
  > = Left front, left front, 1 to make, lines 3 4 5 6 7 8 9
  > =   body from {castOn 30}, RS: 17 stocking 4 mm; hold

### on each side
BACK
  > heading
Cast on 40 sts.
  > →40
Bind off 3 sts at each side every other row 2 times.
  > 40→28 Back/body 1 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · RS bind off 3 sts, knit to end (31) · WS bind off 3 sts, purl to end (28)
Cast on 2 sts at each side.
  > 28→32 Back/body 5 RS cast on 2 sts, knit to end (30) · WS cast on 2 sts, purl to end (32)
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 40}, RS: 6 stocking 4 mm; hold

### on the side that is said
BACK
  > heading
Cast on 40 sts.
  > →40
Bind off 3 sts at neck edge on every RS row 2 times.
  > 40→34 Back/body 1 RS knit · WS bind off 3 sts, purl to end (37) · RS knit · WS purl · RS knit to last 3 sts, bind off 3 sts (34)
Bind off 3 sts at neck edge on every WS row 2 times.
  > 34→28 Back/body 6 WS bind off 3 sts, purl to end (31) · RS knit · WS bind off 3 sts, purl to end (28)
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 40}, RS: 8 stocking 4 mm; hold

### to a count
BACK
  > heading
Cast on 40 sts.
  > →40
Bind off 3 sts at beg of every row until 30 sts remain.
  > 40→28 Back/body 1 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · RS bind off 3 sts, knit to end (31) · WS bind off 3 sts, purl to end (28)
  > ✗ count contradicts @3:1 statedStitches 30, foundStitches 28
Bind off 3 sts at beg of every row until 24 sts remain.
  > 28→22 Back/body 5 RS bind off 3 sts, knit to end (25) · WS bind off 3 sts, purl to end (22)
  > ✗ count contradicts @4:1 statedStitches 24, foundStitches 22
Cast on 3 sts at beg of every row until there are 30 sts.
  > 22→31 Back/body 7 RS cast on 3 sts, knit to end (25) · WS cast on 3 sts, purl to end (28) · RS cast on 3 sts, knit to end (31)
  > ✗ count contradicts @5:1 statedStitches 30, foundStitches 31
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 40}, RS: 9 stocking 4 mm; hold

### more than there are
BACK
  > heading
Cast on 10 sts.
  > →10
Bind off 4 sts at beg of next 2 rows.
  > 10→2 Back/body 1 RS bind off 4 sts, knit to end (6) · WS bind off 4 sts, p2 (2)
Bind off 4 sts at beg of next 2 rows.
  > 2→0 Back/body 3 RS bind off all sts in pattern (0)
  > ✗ bound off too many @4:1 wantedStitches 4, haveStitches 2
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; bind off

### as many as there are
BACK
  > heading
Cast on 8 sts.
  > →8
Bind off 4 sts at beg of next 2 rows.
  > 8→0 Back/body 1 RS bind off 4 sts, knit to end (4) · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; bind off

### none, in this size {"size": 0}
Sizes: S (M)
  > talk
Cast on 20 (24) sts.
  > →20
Bind off 0 (2) sts at beg of next 2 rows.
  > 20
Work 2 rows.
  > 20 Piece/body 1 RS knit · WS purl
  > = sizes S, M: S
  > = Piece, other, 1 to make, lines 4
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### the other size {"size": 1}
Sizes: S (M)
  > talk
Cast on 20 (24) sts.
  > →24
Bind off 0 (2) sts at beg of next 2 rows.
  > 24→20 Piece/body 1 RS bind off 2 sts, knit to end (22) · WS bind off 2 sts, purl to end (20)
Work 2 rows.
  > 20 Piece/body 3 RS knit · WS purl
  > = sizes S, M: M
  > = Piece, other, 1 to make, lines 3 4
  > =   body from {castOn 24}, RS: 4 stocking 4 mm; hold

### places of armhole and shoulder
BACK
  > heading
Cast on 40 sts.
  > →40
Work 4 rows in st st.
  > 40 Back/body 1 RS knit · WS purl · RS knit · WS purl
Bind off 3 sts at beg of next 2 rows.
  > 40→34 Back/body 5 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34)
Bind off 2 sts at beg of next 2 rows.
  > 34→30 Back/body 7 RS bind off 2 sts, knit to end (32) · WS bind off 2 sts, purl to end (30)
Work 4 rows.
  > 30 Back/body 9 RS knit · WS purl · RS knit · WS purl
Bind off 5 sts at beg of next 2 rows.
  > 30→20 Back/body 13 RS bind off 5 sts, knit to end (25) · WS bind off 5 sts, purl to end (20)
FRONT
  > heading 20
Work as for back to shoulder.
  > 20→30 Front/body 1 RS knit · WS purl · RS knit · WS purl · RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · RS bind off 2 sts, knit to end (32) · WS bind off 2 sts, purl to end (30) · [RS knit · WS purl] ×2
SLEEVE
  > heading 30
Work as for back to armhole.
  > 30→40 Sleeve/body 1 RS knit · WS purl · RS knit · WS purl
Shape shoulder as for back.
  > 40→30 Sleeve/body 5 RS bind off 5 sts, knit to end (35) · WS bind off 5 sts, purl to end (30)
  > = Back, back, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 40}, RS: 14 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 9
  > =   body from {castOn 40}, RS: 12 stocking 4 mm; hold
  > = Sleeve, sleeve, 1 to make, lines 11 12
  > =   body from {castOn 40}, RS: 6 stocking 4 mm; hold

### on one side of a divided piece
BACK
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Back/body 1 RS knit · WS purl
Next row: k15, turn and leave rem 25 sts on a holder.
  > 40→15 Back/right side 1 RS k15
P 1 row.
  > 15 Back/right side 2 WS purl
Bind off 5 sts at each side of next 2 rows.
  > 15→10 Back/right side 3 RS bind off 5 sts, knit to end (10)
At each side bind off 5 sts every other row 2 times.
  > 10→0 Back/right side 4 WS purl · RS bind off 5 sts, knit to end (5) · WS purl · RS bind off all sts in pattern (0)
Rejoin yarn to rem 25 sts, bind off 10 sts, k to end.
  > 25→15 Back/left side 1 RS bind off 10 sts, knit to end (15)
Complete to match first side.
  > 15→0 Back/left side 2 WS purl · RS knit · WS bind off 5 sts, purl to end (10) · RS knit · WS bind off 5 sts, purl to end (5) · RS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back to shoulder.
  > →40
  > ✗ place not known @11:1
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 9
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 15, edge right}, RS: 6 stocking 4 mm; bind off
  > =   left side from {part body, stitches 25, edge left}, RS: 6 stocking 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
