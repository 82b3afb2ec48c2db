import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('counts that are said, sides that are parted and joined, and rows by their numbers,', () => {
  it.each(
    annotatedIn(`
### both sides at once, groups at both ends beside rows
BACK
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Back/body 1 RS knit · WS purl
Next row (RS): K14, bind off next 12 sts, k to end.
  > 40→28 Back/body 3 RS k14, bind off 12 sts, knit to end (28)
Work both sides at once with separate balls of yarn.
  > 28→14
Work 6 rows, at the same time bind off 5 sts at beg of next 4 rows.
  > 14→4 Back/left side 1 WS bind off 5 sts, purl to end (9) · RS knit · WS bind off 5 sts, p4 (4) · RS knit · WS purl · RS knit · Back/right side 1 RS bind off 5 sts, knit to end (9) · WS purl · RS bind off 5 sts, k4 (4) · WS purl · RS knit · WS purl
  > = Back, back, 1 to make, lines 3 4 6
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 14, edge left}, WS: 6 stocking 4 mm; hold
  > =   right side from {part body, stitches 14, edge right}, RS: 6 stocking 4 mm; hold

### a numbered row that nobody understands, worked again
Cast on 20 sts.
  > →20
Row 1 (RS): K.
  > 20 Piece/body 1 RS knit
Row 2: P.
  > 20 Piece/body 2 WS purl
Row 3: K5, wibble, k5.
  > own words 20 asks the count Piece/body 3 RS work in pattern 'Row 3: K5, wibble, k5'
  > ✗ stitch or repeat expected @4:12 column 12
Row 4: P.
  > 20 Piece/body 4 WS purl
Rep rows 1 to 4 once.
  > 20 Piece/body 5 RS knit · WS purl · RS work in pattern 'Row 3: K5, wibble, k5' · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 20}, RS: 3 stocking 4 mm (own words 3); 5 pattern in stocking 4 mm (own words 4); hold

### numbered rows that begin with one that nobody understands
Cast on 20 sts.
  > →20
K 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Row 1 (RS): K5, wibble, k5.
  > own words 20 asks the count Piece/body 3 RS work in pattern 'Row 1 (RS): K5, wibble, k5'
  > ✗ stitch or repeat expected @3:17 column 17
Row 2: P.
  > 20 Piece/body 4 WS purl
Rep rows 1 and 2 twice.
  > 20 Piece/body 5 RS work in pattern 'Row 1 (RS): K5, wibble, k5' · WS purl · RS work in pattern 'Row 1 (RS): K5, wibble, k5' · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 3 stocking 4 mm (own words 3); 5 pattern in stocking 4 mm (own words 2 4); hold

### a centre bound off that is in no middle
Cast on 21 sts.
  > →21
Knit 2 rows.
  > 21 Piece/body 1 RS knit · WS knit
Bind off centre 8 sts.
  > 21 asks the count Piece/body 3 RS work in pattern 'Bind off centre 8 sts'
  > ✗ centre not in the middle @3:1 stitches 21, centreStitches 8
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 21}, RS: 3 stocking 4 mm (own words 3); hold

### and one that is
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Bind off centre 8 sts.
  > 20→12 Piece/body 3 RS k6, bind off 8 sts, k6 (12)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 6, edge left}, WS: hold
  > =   resting 1 from {part body, stitches 6, edge right}, WS: hold

### sides brought together again
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Next row (RS): K6, bind off next 8 sts, k to end.
  > 20→12 Piece/body 3 RS k6, bind off 8 sts, knit to end (12)
Work 3 rows in garter st.
  > 12→6 Piece/left side 1 WS knit · RS knit · WS knit
Rejoin yarn to rem sts.
  > 6
Work 4 rows in garter st.
  > 6 Piece/right side 1 WS knit · RS knit · WS knit · RS knit
Next row: K6, cast on 8 sts, k6.
  > 6→20 Piece/joined 1 WS k6, cast on 8 sts, k6 (20)
Work 2 rows.
  > 20 Piece/joined 2 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2 3 4 6 7 8
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 6, edge left}, WS: 3 garter 4 mm; hold
  > =   right side from {part body, stitches 6, edge right}, WS: 4 garter 4 mm; hold
  > =   joined from {pickUp [{along 'left side', stitches 6, held}; {along 'right side', stitches 6, held}]}, WS: 3 garter 4 mm; hold

### a hole closed over what was bound off
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Next row: K8, bind off next 4 sts, k to end.
  > 20→16 Piece/body 3 RS k8, bind off 4 sts, knit to end (16)
Next row: cast on 4 sts over those bound off.
  > 16→20 Piece/body 4 WS purl to last 8 sts, cast on 4 sts, p8 (20)
Knit 2 rows.
  > 20 Piece/body 5 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; hold

### rows as others, by their numbers
Cast on 8 sts.
  > →8
Row 1 (RS): K.
  > 8 Piece/body 1 RS knit
Row 2: P.
  > 8 Piece/body 2 WS purl
Row 3: K2, p2, k2, p2.
  > 8 Piece/body 3 RS k2, p2, k2, p2
Row 4: P2, k2, p2, k2.
  > 8 Piece/body 4 WS p2, k2, p2, k2
Rows 5-10: as rows 1-4.
  > 8 Piece/body 5 RS knit · WS purl · RS k2, p2, k2, p2 · WS p2, k2, p2, k2 · RS knit · WS purl
Row 11: as row 3.
  > 8 Piece/body 11 RS k2, p2, k2, p2
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 8}, RS: 11 stocking 4 mm; hold

### by lengths, to a count
Gauge: 20 sts and 30 rows = 10 cm
  > talk
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Inc 1 st at each end of next row, then every 2 cm until there are 28 sts.
  > 20→28 Piece/body 3 RS inc, knit to last st, inc (22) · [WS purl · RS knit] ×2 · WS purl · RS inc, knit to last st, inc (24) · [WS purl · RS knit] ×2 · WS purl · RS inc, knit to last st, inc (26) · [WS purl · RS knit] ×2 · WS purl · RS inc, knit to last st, inc (28)
  > = gauge stitches 20, rows 30
  > = Piece, other, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 21 stocking 4 mm; hold

### buttonholes on next row and after a length
Gauge: 20 sts and 30 rows = 10 cm
  > talk
Cast on 20 sts.
  > →20
Work 20 rows in st st, making a buttonhole on next row and every 6th row.
  > 20 Piece/body 1 RS knit 'Work 20 rows in st st, making a buttonhole on next row and every 6th row' · [WS purl · RS knit] ×2 · WS purl · RS knit 'Work 20 rows in st st, making a buttonhole on next row and every 6th row' · [WS purl · RS knit] ×2 · WS purl · RS knit 'Work 20 rows in st st, making a buttonhole on next row and every 6th row' · [WS purl · RS knit] ×2 · WS purl · RS knit 'Work 20 rows in st st, making a buttonhole on next row and every 6th row' · WS purl
  > = gauge stitches 20, rows 30
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 20 stocking 4 mm (own words 1 7 13 19); hold

### a hold of the first and of the last
Cast on 20 sts.
  > →20
Work 2 rows in k3, p2 rib.
  > 20 Piece/body 1 RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end
Place first 6 sts on a holder.
  > 20→14
Cont in patt for 2 rows.
  > 14 Piece/left side 1 RS k2, *p2, k3; repeat from * to last 2 sts, p2 · WS *k2, p3; repeat from * to last 4 sts, k2, p2
Bind off.
  > 14→0 Piece/left side 3 RS bind off all sts in pattern (0)
Rejoin yarn to rem sts.
  > →6
Cont in patt for 2 rows.
  > 6 Piece/right side 1 RS k3, p2, k1 · WS p1, k2, purl to end
  > = Piece, other, 1 to make, lines 2 4 5 7
  > =   body from {castOn 20}, RS: 2 rib in rib 2x2 4 mm; split
  > =   left side from {part body, stitches 14, edge left}, RS: 2 rib in rib 2x2 4 mm; bind off
  > =   right side from {part body, stitches 6, edge right}, RS: 2 rib in rib 2x2 4 mm; hold

### a hold of more than there are
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Place 24 sts on a holder.
  > 20
  > ✗ count contradicts @3:1 statedStitches 24, foundStitches 20
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### a count that grows where it was to shrink
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Dec evenly across next row to 24 sts.
  > 20→16 Piece/body 3 RS k2, [k2tog, k3] 3 times, k2tog, k1 (16)
  > ✗ count contradicts @3:1 statedStitches 24, foundStitches 16
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold

### a count that shrinks where it was to grow
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Inc evenly across next row to 16 sts.
  > 20→24 Piece/body 3 RS k3, m1, [k5, m1] 3 times, k2 (24)
  > ✗ count contradicts @3:1 statedStitches 16, foundStitches 24
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold

### another count than so many more make
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Inc 6 sts evenly across next row to 24 sts.
  > 20→26 Piece/body 3 RS k2, m1, [k3, m1] 2 times, k4, m1, [k3, m1] 2 times, k2 (26)
  > ✗ count contradicts @3:1 statedStitches 24, foundStitches 26
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold

### a count that is reached
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Inc 4 sts evenly across next row to 24 sts.
  > 20→24 Piece/body 3 RS k3, m1, [k5, m1] 3 times, k2 (24)
Dec evenly across next row to 20 sts.
  > 24→20 Piece/body 4 WS p2, [p2tog, p4] 3 times, p2tog, p2 (20)
Dec to 16 sts evenly across next row.
  > 20→16 Piece/body 5 RS k2, [k2tog, k3] 3 times, k2tog, k1 (16)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 5 stocking 4 mm; hold

### a count over some of the stitches
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Inc 4 sts evenly over next 12 sts to 24 sts.
  > 20→24 Piece/body 3 RS k6, m1, [k3, m1] 3 times, k5 (24)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
