import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Rows in which shapings lie, and stitches that part. The rows are counted by hand. */
describe('rows that are shaped, and stitches that part,', () => {
  it.each(
    annotatedIn(`
### a shaping lies in the rows just said and ends with them
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Work 4 rows, decreasing 1 st at each end of every alt row. (16 sts)
  > 20→16 says 16 Piece/body 3 RS dec, knit to last 2 sts, dec (18) · WS purl · RS dec, knit to last 2 sts, dec (16) · WS purl
Inc 1 st at each end of 2nd, 3rd and 6th rows. (22 sts)
  > 16→22 says 22 Piece/body 7 RS knit · WS inc, purl to last st, inc (18) · RS inc, knit to last st, inc (20) · WS purl · RS knit · WS inc, purl to last st, inc (22)
Bind off 3 sts at each side of next 2 rows. (16 sts)
  > 22→16 says 16 Piece/body 13 RS bind off 3 sts, knit to end (19) · WS bind off 3 sts, purl to end (16)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 14 stocking 4 mm; hold

### every so many cm are rows of the gauge, and without one it is told
Gauge: 20 sts and 30 rows = 10 cm.
  > talk
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Inc 1 st at each end every 2 cm twice. (24 sts)
  > 20→24 says 24 Piece/body 3 RS knit · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (22) · [WS purl · RS knit] ×2 · WS purl · RS inc, knit to last st, inc (24)
  > = gauge stitches 20, rows 30
  > = Piece, other, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 13 stocking 4 mm; hold

### a row that holds stitches stays on one needle where the count says so
Cast on 15 sts.
  > →15
Work 2 rows in st st.
  > 15 Piece/body 1 RS knit · WS purl
K6, place next 3 sts on a holder, k6. 12 sts.
  > 15→12 says 12 Piece/body 3 RS k6, place 3 sts on holder, k6 (12)
Work 2 rows in st st.
  > 12 Piece/body 4 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 15}, RS: 5 stocking 4 mm; hold

### it parts them where no count says so
Cast on 15 sts.
  > →15
Work 2 rows in st st.
  > 15 Piece/body 1 RS knit · WS purl
K6, place next 3 sts on a holder, k6.
  > 15→12 Piece/body 3 RS k6, place 3 sts on holder, k6 (12)
Work 2 rows in st st.
  > 12→6 Piece/left side 1 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 15}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 6, edge left}, WS: 2 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 6, edge right}, WS: hold

### turned, one side goes on alone
Cast on 15 sts.
  > →15
Work 2 rows in st st.
  > 15 Piece/body 1 RS knit · WS purl
Divide for neck as follows: k5, turn and work on these 5 sts only.
  > 15→5 Piece/right side 1 RS k5
P 1 row.
  > 5 Piece/right side 2 WS purl
Bind off.
  > 5→0 Piece/right side 3 RS bind off all sts in pattern (0)
Join 2nd ball of yarn and bind off centre 5 sts, k to end.
  > 10→5 Piece/left side 1 RS bind off 5 sts, knit to end (5)
P 1 row.
  > 5 Piece/left side 2 WS purl
Bind off.
  > 5→0 Piece/left side 3 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8
  > =   body from {castOn 15}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 5, edge right}, RS: 2 'divide for neck' in stocking 4 mm; bind off
  > =   left side from {part body, stitches 10, edge left}, RS: 2 'divide for neck' in stocking 4 mm; bind off

### what is held and what goes on say the count of a row that nobody understood
Cast on 20 sts.
  > →20
Next row: wibble 5, k to wobble.
  > own words 20 asks the count Piece/body 1 RS [dec] 4 times, work in pattern to end 'Next row: wibble 5, k to wobble' (16)
  > ✗ stitch or repeat expected @2:11 column 11
Leave rem 7 sts on a holder.
  > 20→9
Continue on these 9 sts.
  > 9
Work 2 rows in garter st.
  > 9 Piece/left side 1 WS knit · RS knit
  > = Piece, other, 1 to make, lines 2 5
  > =   body from {castOn 20}, RS: 1 stocking 4 mm (own words 1); split
  > =   left side from {part body, stitches 9, edge left}, WS: 2 garter 4 mm; hold
  > =   resting 1 from {part body, stitches 7, edge right}, WS: hold

### another count of what goes on is told
Cast on 20 sts.
  > →20
Next row: k8, turn, leave rem sts on a holder.
  > 20→8 Piece/right side 1 RS k8
Continue on these 6 sts.
  > 8
  > ✗ count contradicts @3:1 statedStitches 6, foundStitches 8
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: split
  > =   right side from {part body, stitches 8, edge right}, RS: 1 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 12, edge left}, RS: hold

### a row of the pattern, or an odd number of rows, ends a length
Gauge: 20 sts and 30 rows = 10 cm.
  > talk
Cast on 12 sts.
  > →12
Row 1: k.
  > 12 Piece/body 1 RS knit
Row 2: p.
  > 12 Piece/body 2 WS purl
Row 3: k3, p6, k3.
  > 12 Piece/body 3 RS k3, p6, k3
Row 4: k.
  > 12 Piece/body 4 WS knit
Rep rows 1 to 4 until piece measures 5 cm, ending with row 2 of pattern.
  > 12 long: 10 rows Piece/body 5 RS knit · WS purl · RS k3, p6, k3 · WS knit · RS knit · WS purl · RS k3, p6, k3 · WS knit · RS knit · WS purl
Work in garter st until piece measures 7 cm, working an odd number of rows.
  > 12 long: 9 rows Piece/body 15 RS knit · [WS knit · RS knit] ×4
  > = gauge stitches 20, rows 30
  > = Piece, other, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; 2 reverse stocking 4 mm; 10 stocking 4 mm (length {id 'piece/1', open false, mm 50, from start}); 9 garter 4 mm (length {id 'piece/2', open false, mm 70, endSide RS, from start}); hold

### the rest at the end of a piece is all that is left
BACK
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Back/body 1 RS knit · WS purl
Leave rem 18 sts on a holder.
  > 20
  > ✗ count contradicts @4:1 statedStitches 18, foundStitches 20
FRONT
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Front/body 1 RS knit · WS purl
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 7
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### rows that are passed over are worked, though a row before them had no number
Cast on 8 sts.
  > →8
Knit 1 row.
  > 8 Piece/body 1 RS knit
Row 1: k.
  > 8 Piece/body 2 WS knit
Row 2 and all even rows: p.
  > 8 Piece/body 3 RS purl
Row 3: k4, p4.
  > 8 Piece/body 4 WS k4, p4
Row 5: k2, p6.
  > 8 Piece/body 5 RS purl · WS k2, p6
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 8}, RS: 6 stocking 4 mm; hold
`),
  )('comes out as $name', expectAnnotated);
});
