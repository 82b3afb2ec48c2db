import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('sides, holders and counts, followed row by row,', () => {
  it.each(
    annotatedIn(`
### groups at both ends, each where its row begins
FRONT
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Front/body 1 RS knit · WS purl
Bind off 3 sts at beg of next 2 rows, then 2 sts at beg of next 4 rows.
  > 40→26 Front/body 3 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · RS bind off 2 sts, knit to end (32) · WS bind off 2 sts, purl to end (30) · RS bind off 2 sts, knit to end (28) · WS bind off 2 sts, purl to end (26)
Work 2 rows.
  > 26 Front/body 9 RS knit · WS purl
  > = Front, front, 1 to make, lines 3 4 5
  > =   body from {castOn 40}, RS: 10 stocking 4 mm; hold


### groups in rows of one side, beside a neck
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 3 rows in st st.
  > 20 Left front/body 1 RS knit · WS purl · RS knit
Dec 1 st at neck edge every other row 3 times. At the same time, bind off 3 sts at beg of every RS row twice.
  > 20→11 Left front/body 4 WS purl · RS bind off 3 sts, knit to last 2 sts, dec (16) · WS purl · RS bind off 3 sts, knit to last 2 sts, dec (12) · WS purl · RS knit to last 2 sts, dec (11)
Work 2 rows.
  > 11 Left front/body 10 WS purl · RS knit
  > = Left front, left front, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: 11 stocking 4 mm; hold


### a border in moss stitch begun on the wrong side
Cast on 20 sts.
  > →20
Work 3 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl · RS knit
Work in st st, keeping 3 sts at each end in moss st, for 4 rows.
  > 20 Piece/body 4 WS k1, p1, k1, purl to last 3 sts, k1, p1, k1 · RS k1, p1, knit to last 2 sts, p1, k1 · WS k1, p1, k1, purl to last 3 sts, k1, p1, k1 · RS k1, p1, knit to last 2 sts, p1, k1
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; hold


### a rest on a holder, and then another piece
FRONT
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Front/body 1 RS knit · WS purl
Next row: K8, turn.
  > 20→8 Front/right side 1 RS k8
Work 3 rows.
  > 8 Front/right side 2 WS purl · RS knit · WS purl
Bind off.
  > 8→0 Front/right side 5 RS bind off all sts in pattern (0)
Place rem sts on a holder.
  > →0
BACK
  > heading →0
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Back/body 1 RS knit · WS knit
Place rem 20 sts on a holder.
  > 20
  > = Front, front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, RS: 4 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge left}, RS: hold
  > = Back, back, 1 to make, lines 10
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold


### the rest where something else is said
BACK
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Back/body 1 RS knit · WS purl
Place rem 18 sts on a holder.
  > 20
  > ✗ count contradicts @4:1 statedStitches 18, foundStitches 20
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold


### work on as many as there are, or more
Cast on 16 sts.
  > →16
Knit 2 rows.
  > 16 Piece/body 1 RS knit · WS knit
Work on these 16 sts only for 2 rows.
  > 16 Piece/body 3 RS knit · WS purl
Work on these 18 sts only for 2 rows.
  > 16 Piece/body 5 RS knit · WS purl
  > ✗ count contradicts @4:1 statedStitches 18, foundStitches 16
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 16}, RS: 6 stocking 4 mm; hold


### a centre that waits while one side is worked
FRONT
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Front/body 1 RS knit · WS purl
Next row: K10, turn.
  > 30→10 Front/right side 1 RS k10
Work 3 rows.
  > 10 Front/right side 2 WS purl · RS knit · WS purl
Bind off.
  > 10→0 Front/right side 5 RS bind off all sts in pattern (0)
Slip centre 10 sts onto a holder.
  > →0
Rejoin yarn to rem 10 sts.
  > →10
Work 4 rows.
  > 10 Front/left side 1 RS knit · WS purl · RS knit · WS purl
Bind off.
  > 10→0 Front/left side 5 RS bind off all sts in pattern (0)
  > = Front, front, 1 to make, lines 3 4 5 6 9 10
  > =   body from {castOn 30}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 10, edge right}, RS: 4 stocking 4 mm; bind off
  > =   middle from {part body, stitches 10, edge middle}, RS: hold
  > =   left side from {part body, stitches 10, edge left}, RS: 4 stocking 4 mm; bind off


### both sides of short rows, by their numbers
Cast on 20 sts.
  > →20
Row 1: K9, turn.
  > 20 Piece/body 1 RS k9, turn
Row 2: K to end.
  > 20 Piece/body 2 WS leave 11 sts unworked, knit to end
Row 3: K15, turn.
  > 20 Piece/body 3 RS k15, turn
Row 4: K to end.
  > 20 Piece/body 4 WS leave 5 sts unworked, knit to end
Row 5: K across all sts.
  > 20 Piece/body 5 RS knit
Row 6: P.
  > 20 Piece/body 6 WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 2 stocking 4 mm; hold


### in pattern before any is told
BACK
  > heading
Cast on 20 sts.
  > →20
Work in pattern for 4 rows.
  > 20 Back/body 1 RS work in pattern · WS work in pattern · RS work in pattern · WS work in pattern
  > ✗ fabric not known @3:1 name pattern
Work 2 rows in st st.
  > 20 Back/body 5 RS knit · WS purl
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 4 pattern in stocking 4 mm; 2 stocking 4 mm; hold


### stripes that are listed one by one
Stripe sequence:
2 rows A
4 rows B
  > lines 2 to 3
BACK
  > heading
Cast on 10 sts.
  > →10
Work in stripe sequence for 8 rows.
  > 10 Back/body 1 RS knit · [WS purl · RS knit] ×3 · WS purl
Bind off.
  > 10→0 Back/body 9 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 5 6
  > =   body from {castOn 10}, RS: 2 'stocking, A' in stocking 4 mm; 4 'stocking, B' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm; bind off


### a count further on tells that of a row not understood
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Next row: K2, frumple the fringe, knit to end.
  > own words 20→24 Piece/body 3 RS work in pattern to end, [m1] 4 times 'Next row: K2, frumple the fringe, knit to end' (24)
  > ✗ stitch or repeat expected @3:15 column 15
Work 2 rows in st st.
  > 24 Piece/body 4 WS purl · RS knit
Next row: K2tog, k to end. 23 sts.
  > 24→23 says 23 Piece/body 6 WS k2tog, knit to end (23)
Knit 1 row.
  > 23 Piece/body 7 RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 20}, RS: 3 stocking 4 mm (own words 3); 4 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
