import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('row, followed row by row,', () => {
  it.each(
    annotatedIn(`
### numbered rows, and those between them
Cast on 6 sts.
  > →6
Row 1: k.
  > 6 Piece/body 1 RS knit
Row 2 and every alt row: p.
  > 6 Piece/body 2 WS purl
Row 3: k2, k2tog, k2.
  > 6→5 Piece/body 3 RS k2, k2tog, k2 (5)
Row 5: k1, k2tog, k2.
  > 5→4 Piece/body 4 WS purl · RS k1, k2tog, k2 (4)
Row 7: k2tog, k2.
  > 4→3 Piece/body 6 WS purl · RS k2tog, k2 (3)
Row 8: p1, p2tog.
  > 3→2 Piece/body 8 WS p1, p2tog (2)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 6}, RS: 8 stocking 4 mm; hold

### rows in any order
Cast on 6 sts.
  > →6
Rows 1 and 3: k1, p5.
  > 6 Piece/body 1 RS k1, p5
Rows 2 and 4: k.
  > 6 Piece/body 2 WS knit · RS k1, p5 · WS knit
Row 5: as row 1.
  > 6 Piece/body 5 RS k1, p5
Row 6: as row 4.
  > 6 Piece/body 6 WS knit
Row 7: as row 12.
  > 6 asks the count Piece/body 7 RS work in pattern 'Row 7: as row 12'
  > ✗ row not known @6:1 rowName 12
Rows 8 and 9: as rows 1 and 2.
  > 6 Piece/body 8 WS k1, p5 · RS knit
Row 1: k2, p4.
  > 6 Piece/body 10 WS k2, p4
Row 2: p.
  > 6 Piece/body 11 RS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9
  > =   body from {castOn 6}, RS: 11 stocking 4 mm (own words 7); hold

### rows that are not told
Cast on 6 sts.
  > →6
Row 3: k.
  > 6 Piece/body 1 RS knit
Row 10: p.
  > 6 Piece/body 2 WS purl
Row 11: k.
  > 6 Piece/body 3 RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 6}, RS: 3 stocking 4 mm; hold

### a row like the even ones
Cast on 6 sts.
  > →6
Row 1: k.
  > 6 Piece/body 1 RS knit
Row 2 and every alt row: p.
  > 6 Piece/body 2 WS purl
Row 3: k1, p1, k4.
  > 6 Piece/body 3 RS k1, p1, k4
Row 5: as row 4.
  > 6 Piece/body 4 WS purl · RS purl
Row 6: as row 3.
  > 6 Piece/body 6 WS k1, p1, k4
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 6}, RS: 6 stocking 4 mm; hold

### next rows, and their sides
Cast on 6 sts.
  > →6
Next row (RS): k.
  > 6 Piece/body 1 RS knit
Next row (RS): k.
  > 6 Piece/body 2 WS knit
  > ✗ side differs @3:1 saidSide RS, foundSide WS
Next 3 rows: k3, p3.
  > 6 Piece/body 3 RS k3, p3 · WS k3, p3 · RS k3, p3
Next row (WS): p.
  > 6 Piece/body 6 WS purl
Next 2 rows (WS): p.
  > 6 Piece/body 7 RS purl · WS purl
  > ✗ side differs @6:1 saidSide WS, foundSide RS
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 6}, RS: 8 stocking 4 mm; hold

### the first row on the side that is said
Cast on 6 sts.
  > →6
Row 1 (WS): k1, p5.
  > 6 Piece/body 1 WS k1, p5
Row 2: k.
  > 6 Piece/body 2 RS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 6}, WS: 2 stocking 4 mm; hold

### named rows come again
Cast on 20 sts.
  > →20
Dec row: k2, k2tog, k to end.
  > 20→19 Piece/body 1 RS k2, k2tog, knit to end (19)
P 1 row.
  > 19 Piece/body 2 WS purl
Rep dec row every other row 3 times.
  > 19→16 Piece/body 3 RS k2, k2tog, knit to end (18) · WS purl · RS k2, k2tog, knit to end (17) · WS purl · RS k2, k2tog, knit to end (16)
Rep inc row every other row.
  > 16
  > ✗ row not known @5:1 rowName inc
Inc row (RS): k2, m1, k to end.
  > 16→17 Piece/body 8 WS k2, m1, knit to end (17)
  > ✗ side differs @6:1 saidSide RS, foundSide WS
Rep inc row every 4th row until there are 20 sts.
  > 17→20 Piece/body 9 RS knit · WS purl · RS k2, m1, knit to end (18) · WS purl · RS knit · WS purl · RS k2, m1, knit to end (19) · WS purl · RS knit · WS purl · RS k2, m1, knit to end (20)
Rep dec row every row twice.
  > 20→18 Piece/body 20 WS k2, k2tog, knit to end (19) · RS k2, k2tog, knit to end (18)
  > = Piece, other, 1 to make, lines 2 3 4 6 7 8
  > =   body from {castOn 20}, RS: 21 stocking 4 mm; hold

### a row that does not come out
Cast on 6 sts.
  > →6
Row 1: k10.
  > 6 asks the count Piece/body 1 RS work in pattern 'Row 1: k10'
  > ✗ not enough stitches @2:1 needStitches 10, haveStitches 6
Row 2: p.
  > 6 Piece/body 2 WS purl
Row 3: k4, k2tog, k4. (5 sts)
  > 6→5 says 5 Piece/body 3 RS dec, work in pattern to end 'Row 3: k4, k2tog, k4' (5)
  > ✗ not enough stitches @4:1 needStitches 4, haveStitches 0
Next row: k2, k2tog.
  > 5 asks the count Piece/body 4 WS work in pattern 'Next row: k2, k2tog'
  > ✗ stitches left over @5:1 leftStitches 1, onNeedleStitches 5
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 6}, RS: 4 stocking 4 mm (own words 1 3 4); hold

### more rows than a part has {}
Cast on 2 sts.
  > →2
Knit 4001 rows.
  > 2 Piece/body 1 RS knit · [WS knit · RS knit] ×1999 · WS knit
K 1 row.
  > 2
  > ✗ too long @3:1 mostRows 4000
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 2}, RS: 4000 stocking 4 mm; hold

### rows after all are bound off
BACK
  > heading
Cast on 6 sts.
  > →6
K 1 row.
  > 6 Back/body 1 RS knit
Bind off.
  > 6→0 Back/body 2 WS bind off all sts in pattern (0)
Row 1: k2.
  > →0
  > ✗ nothing on the needle @5:1
Work 2 rows in st st.
  > →0
  > ✗ nothing on the needle @6:1
Dec 1 st at each end of next row.
  > →0
  > ✗ nothing on the needle @7:1
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 6}, RS: 1 stocking 4 mm; bind off

### rows by number over a repeat
Cast on 6 sts.
  > →6
Row 1: k.
  > 6 Piece/body 1 RS knit
Row 2: p.
  > 6 Piece/body 2 WS purl
Rep rows 1 and 2 3 times.
  > 6 Piece/body 3 RS knit · [WS purl · RS knit] ×2 · WS purl
Row 9: k2tog, k4.
  > 6→5 Piece/body 9 RS k2tog, k4 (5)
Row 10: p.
  > 5 Piece/body 10 WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 6}, RS: 10 stocking 4 mm; hold

### a side wrong in a numbered row
Cast on 6 sts.
  > →6
Row 1 (RS): k.
  > 6 Piece/body 1 RS knit
Row 2 (RS): p.
  > 6 Piece/body 2 WS purl
  > ✗ side differs @3:1 saidSide RS, foundSide WS
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 6}, RS: 2 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
