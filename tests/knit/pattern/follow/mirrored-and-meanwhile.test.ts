import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** What is worked as on another side, at the same time, evenly, and by its name. How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what is worked in a mirror and meanwhile, row by row:', () => {
  it.each(
    annotatedIn(`
### a mirrored front in moss stitch, its group a row later
RIGHT FRONT
  > heading
Cast on 8 sts.
  > →8
Work 2 rows in moss st.
  > 8 Right front/body 1 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end
Bind off 2 sts at beg of next row.
  > 8→6 Right front/body 3 RS bind off 2 sts, *k1, p1; repeat from * to end (6)
Work 3 rows in moss st.
  > 6 Right front/body 4 WS *p1, k1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end
Bind off.
  > 6→0 Right front/body 7 RS bind off all sts in pattern (0)
LEFT FRONT
  > heading
Work as for right front, reversing shaping.
  > →0 Left front/body 1 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end · RS *k1, p1; repeat from * to end · WS bind off 2 sts, *p1, k1; repeat from * to end (6) · RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end · RS bind off all sts in pattern (0)
  > = Right front, right front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 8}, RS: 6 moss 4 mm; bind off
  > = Left front, left front, 1 to make, lines 8
  > =   body from {castOn 8}, RS: 6 moss 4 mm; bind off

### half a front keeps the border of its armhole, not that of the neck
BACK
  > heading
Cast on 16 sts.
  > →16
Work 4 rows in st st, keeping 2 sts at each end in garter st.
  > 16 Back/body 1 RS knit · WS k2, purl to last 2 sts, k2 · RS knit · WS k2, purl to last 2 sts, k2
Bind off.
  > 16→0 Back/body 5 RS bind off all sts in pattern (0)
LEFT FRONT
  > heading
Cast on 8 sts.
  > →8
Work as for back.
  > 8→0 Left front/body 1 RS knit · WS p6, k2 · RS knit · WS p6, k2 · RS bind off all sts in pattern (0)
RIGHT FRONT
  > heading
Cast on 8 sts.
  > →8
Work as for back.
  > 8→0 Right front/body 1 RS knit · WS k2, purl to end · RS knit · WS k2, purl to end · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 16}, RS: 4 stocking 4 mm; bind off
  > = Left front, left front, 1 to make, lines 7
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; bind off
  > = Right front, right front, 1 to make, lines 10
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; bind off

### a mirror image has its border at the other edge
RIGHT FRONT
  > heading
Cast on 8 sts.
  > →8
Work 4 rows in st st, keeping 2 sts at front edge in garter st.
  > 8 Right front/body 1 RS knit · WS p6, k2 · RS knit · WS p6, k2
Bind off.
  > 8→0 Right front/body 5 RS bind off all sts in pattern (0)
LEFT FRONT
  > heading
Work as for right front, reversing shaping.
  > →0 Left front/body 1 RS knit · WS k2, purl to end · RS knit · WS k2, purl to end · RS bind off all sts in pattern (0)
  > = Right front, right front, 1 to make, lines 3 4
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; bind off
  > = Left front, left front, 1 to make, lines 6
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; bind off

### the second side as the first, its shaping at the other edge
BACK
  > heading
Cast on 16 sts.
  > →16
Knit 2 rows.
  > 16 Back/body 1 RS knit · WS knit
Next row: k6, turn.
  > 16→6 Back/right side 1 RS k6
Dec 1 st at neck edge on next row.
  > 6→5 Back/right side 2 WS dec, purl to end (5)
Knit 1 row.
  > 5 Back/right side 3 RS knit
Bind off.
  > 5→0 Back/right side 4 WS bind off all sts in pattern (0)
Rejoin yarn to rem 10 sts, bind off 4 sts, knit to end.
  > 10→6 Back/left side 1 RS bind off 4 sts, knit to end (6)
Work to correspond with first side.
  > 6→0 Back/left side 2 WS p4, dec (5) · RS knit · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 9
  > =   body from {castOn 16}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 6, edge right}, RS: 3 stocking 4 mm; bind off
  > =   left side from {part body, stitches 10, edge left}, RS: 3 stocking 4 mm; bind off

### stripes that go on where the piece is parted
Cast on 12 sts.
  > →12
Work in st st in stripes of 2 rows A, 1 row B.
  > 12
Work 4 rows.
  > 12 Piece/body 1 RS knit · WS purl · RS knit · WS purl
Next row: k6, turn.
  > 12→6 Piece/right side 1 RS k6
Work 3 rows.
  > 6 Piece/right side 2 WS purl · RS knit · WS purl
  > = Piece, other, 1 to make, lines 3 4 5
  > =   body from {castOn 12}, RS: 2 'stocking, A' in stocking 4 mm; 1 'stocking, B' in stocking 4 mm; 1 'stocking, A' in stocking 4 mm; split
  > =   right side from {part body, stitches 6, edge right}, RS: 1 'stocking, A' in stocking 4 mm; 1 'stocking, B' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 6, edge left}, RS: hold

### a buttonhole where it is spelled, worked in the rows asked for
RIGHT FRONT
  > heading
Cast on 10 sts.
  > →10
Work 2 rows in st st.
  > 10 Right front/body 1 RS knit · WS purl
Buttonhole row (RS): k2, yo, k2tog, knit to end.
  > 10 Right front/body 3 RS k2, yo, k2tog, knit to end
Work 3 rows in st st.
  > 10 Right front/body 4 WS purl · RS knit · WS purl
Rep buttonhole row on next row.
  > 10 Right front/body 7 RS k2, yo, k2tog, knit to end
Work 3 rows in st st.
  > 10 Right front/body 8 WS purl · RS knit · WS purl
  > = Right front, right front, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 10}, RS: 10 stocking 4 mm; hold

### buttonholes every so many rows, three of them
RIGHT FRONT
  > heading
Cast on 10 sts.
  > →10
Work 2 rows in st st.
  > 10 Right front/body 1 RS knit · WS purl
Make 3 buttonholes every 4th row: k2, yo, k2tog, knit to end.
  > 10
Work 16 rows in st st.
  > 10 Right front/body 3 RS knit · WS purl · RS k2, yo, k2tog, knit to end · WS purl · RS knit · WS purl · RS k2, yo, k2tog, knit to end · WS purl · RS knit · WS purl · RS k2, yo, k2tog, knit to end · [WS purl · RS knit] ×2 · WS purl
  > = Right front, right front, 1 to make, lines 3 5
  > =   body from {castOn 10}, RS: 18 stocking 4 mm; hold

### two shapings at once, the longer one has the rows
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Left front/body 1 RS knit · WS purl
Dec 1 st at armhole edge on next 3 rows and at neck edge on every 4th row 3 times.
  > 20→14 Left front/body 3 RS dec, knit to end (19) · WS purl to last 2 sts, dec (18) · RS dec, knit to last 2 sts, dec (16) · WS purl · RS knit · WS purl · RS knit to last 2 sts, dec (15) · WS purl · RS knit · WS purl · RS knit to last 2 sts, dec (14)
Bind off.
  > 14→0 Left front/body 14 WS bind off all sts in pattern (0)
  > = Left front, left front, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: 13 stocking 4 mm; bind off

### at the same time, when so much is done
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Dec 1 st at neck edge on every RS row 5 times, at the same time, when 16 sts rem, bind off 3 sts at armhole edge once.
  > 20→12 Left front/body 1 RS knit to last 2 sts, dec (19) · WS purl · RS knit to last 2 sts, dec (18) · WS purl · RS knit to last 2 sts, dec (17) · WS purl · RS knit to last 2 sts, dec (16) · WS purl · RS bind off 3 sts, knit to last 2 sts, dec (12)
  > = Left front, left front, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 9 stocking 4 mm; hold

### evenly across, to a count that the text has otherwise
Cast on 20 sts.
  > →20
Inc 4 sts evenly across next row to 25 sts.
  > 20→24 Piece/body 1 RS k3, m1, [k5, m1] 3 times, k2 (24)
  > ✗ count contradicts @2:1 statedStitches 25, foundStitches 24
Knit 1 row.
  > 24 Piece/body 2 WS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### evenly over a row in rib
Cast on 20 sts.
  > →20
Work 2 rows in k1, p1 rib, dec 4 sts evenly across last row. (16 sts)
  > 20→16 says 16 Piece/body 1 RS *k1, p1; repeat from * to end · WS [k1, p1, k2tog, k1, p1, k1, p2tog, p1] 2 times (16)
Work 2 rows in st st.
  > 16 Piece/body 3 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 2 rib in rib 1x1 4 mm; 2 stocking 4 mm; hold

### more times than stitches allow
Cast on 6 sts.
  > →6
Dec 1 st at each end of every row 4 times.
  > 6→2 Piece/body 1 RS dec, k2, dec (4) · WS [dec] 2 times (2)
  > ✗ not enough stitches @2:1 needStitches 4, haveStitches 2
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 6}, RS: 2 stocking 4 mm; hold

### cast on behind a row
Cast on 6 sts.
  > →6
Knit 2 rows.
  > 6 Piece/body 1 RS knit · WS knit
Cast on 3 sts at beg of next 2 rows.
  > 6→12 Piece/body 3 RS cast on 3 sts, knit to end (9) · WS cast on 3 sts, purl to end (12)
Knit 1 row.
  > 12 Piece/body 5 RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 6}, RS: 5 stocking 4 mm; hold

### rows by name
Cast on 10 sts.
  > →10
Dec row: k2tog, knit to last 2 sts, k2tog.
  > 10→8 Piece/body 1 RS k2tog, knit to last 2 sts, k2tog (8)
Purl 1 row.
  > 8 Piece/body 2 WS purl
Rep dec row on next row.
  > 8→6 Piece/body 3 RS k2tog, knit to last 2 sts, k2tog (6)
Rep dec row every 2nd row 2 times.
  > 6→2 Piece/body 4 WS purl · RS k2tog, knit to last 2 sts, k2tog (4) · WS purl · RS k2tog, knit to last 2 sts, k2tog (2)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 10}, RS: 7 stocking 4 mm; hold
`),
  )('$title', expectAnnotated);
});
