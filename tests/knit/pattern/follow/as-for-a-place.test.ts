import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('as for a place of another piece, followed row by row,', () => {
  it.each(
    annotatedIn(`
### the shaping of a place
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Back/body 1 RS knit · WS purl
Shape armholes
  > heading 30
Bind off 2 sts at beg of next 2 rows.
  > 30→26 Back/body 3 RS bind off 2 sts, knit to end (28) · WS bind off 2 sts, purl to end (26)
Dec 1 st at each end of next 2 rows.
  > 26→22 Back/body 5 RS dec, knit to last 2 sts, dec (24) · WS dec, purl to last 2 sts, dec (22)
Work 4 rows.
  > 22 Back/body 7 RS knit · WS purl · RS knit · WS purl
Shape shoulders
  > heading 22
Bind off 4 sts at beg of next 4 rows.
  > 22→6 Back/body 11 RS bind off 4 sts, knit to end (18) · WS bind off 4 sts, purl to end (14) · RS bind off 4 sts, knit to end (10) · WS bind off 4 sts, purl to end (6)
Bind off rem sts.
  > 6→0 Back/body 15 RS bind off all sts in pattern (0)
FRONT
  > heading
Cast on 30 sts.
  > →30
K 4 rows.
  > 30 Front/body 1 RS knit · WS knit · RS knit · WS knit
Shape armhole as for back.
  > 30→22 Front/body 5 RS bind off 2 sts, knit to end (28) · WS bind off 2 sts, purl to end (26) · RS dec, knit to last 2 sts, dec (24) · WS dec, purl to last 2 sts, dec (22)
Shape neck as for back.
  > 22
  > ✗ place not known @15:1
Work 2 rows.
  > 22 Front/body 9 RS knit · WS purl
Shape shoulders as for back.
  > 22→0 Front/body 11 RS bind off 4 sts, knit to end (18) · WS bind off 4 sts, purl to end (14) · RS bind off 4 sts, knit to end (10) · WS bind off 4 sts, purl to end (6) · RS bind off all sts in pattern (0)
LEFT SLEEVE
  > heading
Cast on 30 sts.
  > →30
K 1 row.
  > 30 Left sleeve/body 1 RS knit
Shape armhole as for back.
  > 30→22 Left sleeve/body 2 WS purl · RS bind off 2 sts, knit to end (28) · WS bind off 2 sts, purl to end (26) · RS dec, knit to last 2 sts, dec (24) · WS dec, purl to last 2 sts, dec (22)
  > = Back, back, 1 to make, lines 3 5 6 7 9 10
  > =   body from {castOn 30}, RS: 2 stocking 4 mm; 8 'shape armholes' in stocking 4 mm; 4 'shape shoulders' in stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 13 14 16 17
  > =   body from {castOn 30}, RS: 4 garter 4 mm; 10 stocking 4 mm; bind off
  > = Left sleeve, sleeve, 1 to make, lines 20 21
  > =   body from {castOn 30}, RS: 6 stocking 4 mm; hold

### the shoulder of one side
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Back/body 1 RS knit · WS purl
Shape armholes
  > heading 30
Bind off 2 sts at beg of next 2 rows.
  > 30→26 Back/body 3 RS bind off 2 sts, knit to end (28) · WS bind off 2 sts, purl to end (26)
Work 4 rows.
  > 26 Back/body 5 RS knit · WS purl · RS knit · WS purl
Shape shoulders
  > heading 26
Bind off 4 sts at beg of next 4 rows.
  > 26→10 Back/body 9 RS bind off 4 sts, knit to end (22) · WS bind off 4 sts, purl to end (18) · RS bind off 4 sts, knit to end (14) · WS bind off 4 sts, purl to end (10)
Bind off rem sts.
  > 10→0 Back/body 13 RS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back to armhole.
  > →30 Front/body 1 RS knit · WS purl
Shape armhole as for back.
  > 30→26 Front/body 3 RS bind off 2 sts, knit to end (28) · WS bind off 2 sts, purl to end (26)
Next row: k10, turn and leave rem 16 sts on a holder.
  > 26→10 Front/right side 1 RS k10
P 1 row.
  > 10 Front/right side 2 WS purl
Shape shoulder as for back.
  > 10→0 Front/right side 3 RS bind off 4 sts, knit to end (6) · WS purl · RS bind off 4 sts, k2 (2) · WS purl · RS bind off all sts in pattern (0)
Rejoin yarn to rem sts, bo 6, k to end.
  > 16→10 Front/left side 1 RS bind off 6 sts, knit to end (10)
Complete to match first side.
  > 10→0 Front/left side 2 WS purl · RS knit · WS bind off 4 sts, purl to end (6) · RS knit · WS bind off 4 sts, p2 (2) · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 5 6 8 9
  > =   body from {castOn 30}, RS: 2 stocking 4 mm; 6 'shape armholes' in stocking 4 mm; 4 'shape shoulders' in stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 11 12 13 14 15 16 17
  > =   body from {castOn 30}, RS: 4 stocking 4 mm; split
  > =   right side from {part body, stitches 10, edge right}, RS: 6 stocking 4 mm; bind off
  > =   left side from {part body, stitches 16, edge left}, RS: 6 stocking 4 mm; bind off

### with its divided sides
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Back/body 1 RS knit · WS purl
Next row: k10, bo 10, k to end.
  > 30→20 Back/body 3 RS k10, bind off 10 sts, knit to end (20)
Dec 1 st at neck edge of next 2 rows.
  > 20→8 Back/left side 1 WS purl to last 2 sts, dec (9) · RS dec, knit to end (8)
Bind off.
  > 8→0 Back/left side 3 WS bind off all sts in pattern (0)
Rejoin yarn to rem sts.
  > →10
Dec 1 st at neck edge of next 2 rows.
  > 10→8 Back/right side 1 WS dec, purl to end (9) · RS k7, dec (8)
Bind off.
  > 8→0 Back/right side 3 WS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back.
  > →0 Front/body 1 RS knit · WS purl · RS k10, bind off 10 sts, knit to end (20) · Front/left side 1 WS purl to last 2 sts, dec (9) · RS dec, knit to end (8) · WS bind off all sts in pattern (0) · Front/right side 1 WS dec, purl to end (9) · RS k7, dec (8) · WS bind off all sts in pattern (0)
SLEEVE
  > heading
Work as for back, reversing shaping.
  > →0 Sleeve/body 1 RS knit · WS purl · RS knit to last 20 sts, bind off 10 sts, k10 (20) · Sleeve/left side 1 WS purl to last 2 sts, dec (9) · RS dec, knit to end (8) · WS bind off all sts in pattern (0) · Sleeve/right side 1 WS dec, purl to end (9) · RS k7, dec (8) · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 8 9
  > =   body from {castOn 30}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 2 stocking 4 mm; bind off
  > =   right side from {part body, stitches 10, edge right}, WS: 2 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 11
  > =   body from {castOn 30}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 2 stocking 4 mm; bind off
  > =   right side from {part body, stitches 10, edge right}, WS: 2 stocking 4 mm; bind off
  > = Sleeve, sleeve, 1 to make, lines 13
  > =   body from {castOn 30}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 2 stocking 4 mm; bind off
  > =   right side from {part body, stitches 10, edge right}, WS: 2 stocking 4 mm; bind off

### a piece not yet there
FRONT
  > heading
Work as for back.
  > ✗ piece not known @2:1 pieceName back
BACK
  > heading
Cast on 10 sts.
  > →10
Work as for back.
  > 10
  > ✗ piece not known @5:1 pieceName back
`),
  )('comes out as $title', expectAnnotated);
});
