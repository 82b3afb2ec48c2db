import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('edges, buttonholes, rows of no one and rows by their numbers,', () => {
  it.each(
    annotatedIn(`
### the other side of a neck, in rib
BACK
  > heading
Cast on 21 sts.
  > →21
Work 2 rows in k2, p1 rib.
  > 21 Back/body 1 RS *k2, p1; repeat from * to end · WS *k1, p2; repeat from * to end
Next row (RS): Rib 8, turn and work on these 8 sts only.
  > 21→8 Back/right side 1 RS *k2, p1; repeat from * to last 2 sts, k2
Dec 1 st at neck edge of next 2 rows.
  > 8→6 Back/right side 2 WS dec, *k1, p2; repeat from * to end (7) · RS k2, p1, k2, dec (6)
Cont in patt for 2 rows.
  > 6 Back/right side 4 WS *k1, p2; repeat from * to end · RS *k2, p1; repeat from * to end
Bind off.
  > 6→0 Back/right side 6 WS bind off all sts in pattern (0)
Slip next 5 sts onto a holder.
  > →0
Rejoin yarn to rem 8 sts and work to correspond.
  > 8→0 Back/left side 1 RS *k2, p1; repeat from * to last 2 sts, k2 · WS *k1, p2; repeat from * to last 2 sts, dec (7) · RS dec, k1, p1, k2, p1 (6) · WS *k1, p2; repeat from * to end · RS *k2, p1; repeat from * to end · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 9
  > =   body from {castOn 21}, RS: 2 rib in rib 2x2 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, RS: 5 rib in rib 2x2 4 mm; bind off
  > =   middle from {part body, stitches 5, edge middle}, RS: hold
  > =   left side from {part body, stitches 8, edge left}, RS: 5 rib in rib 2x2 4 mm; bind off

### a shoulder behind a heading, and where stitches were bound off at once
BACK
  > heading
Cast on 40 sts.
  > →40
Work 4 rows in st st.
  > 40 Back/body 1 RS knit · WS purl · RS knit · WS purl
Shape armholes
  > heading 40
Bind off 4 sts at beg of next 2 rows.
  > 40→32 Back/body 5 RS bind off 4 sts, knit to end (36) · WS bind off 4 sts, purl to end (32)
Work 4 rows.
  > 32 Back/body 7 RS knit · WS purl · RS knit · WS purl
Shape shoulders
  > heading 32
Bind off 5 sts at beg of next 4 rows.
  > 32→12 Back/body 11 RS bind off 5 sts, knit to end (27) · WS bind off 5 sts, purl to end (22) · RS bind off 5 sts, knit to end (17) · WS bind off 5 sts, purl to end (12)
Bind off.
  > 12→0 Back/body 15 RS bind off all sts in pattern (0)
POCKET FLAP
  > heading
Cast on 40 sts.
  > →40
Shape shoulders as for back.
  > 40→0 Pocket flap/body 1 RS bind off 5 sts, knit to end (35) · WS bind off 5 sts, purl to end (30) · RS bind off 5 sts, knit to end (25) · WS bind off 5 sts, purl to end (20) · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 5 6 8 9
  > =   body from {castOn 40}, RS: 4 stocking 4 mm; 6 'shape armholes' in stocking 4 mm; 4 'shape shoulders' in stocking 4 mm; bind off
  > = Pocket flap, other, 1 to make, lines 12
  > =   body from {castOn 40}, RS: 4 stocking 4 mm; bind off

### divided, and nobody says who is worked
BACK
  > heading
Cast on 40 sts.
  > →40
Work 4 rows in st st.
  > 40 Back/body 1 RS knit · WS purl · RS knit · WS purl
Divide for fronts and back.
  > talk 40
  > ✗ stitch or repeat expected @4:1 column 1
Work 4 rows in st st.
  > 40 Back/body 5 RS knit · WS purl · RS knit · WS purl
  > = Back, back, 1 to make, lines 3 5
  > =   body from {castOn 40}, RS: 8 stocking 4 mm; hold

### a row of stripes listed below their title
Stripe pattern
With A, work 2 rows.
With B, work 4 rows.
Cast on 10 sts.
  > →10
Work in stripe pattern for 8 rows.
  > 10 Piece/body 1 RS knit · [WS purl · RS knit] ×3 · WS purl
  > = Piece, other, 1 to make, lines 5
  > =   body from {castOn 10}, RS: 2 'stocking, A' in stocking 4 mm; 4 'stocking, B' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm; hold

### a row that turns at its very end, and one before
Cast on 20 sts.
  > →20
Knit 1 row.
  > 20 Piece/body 1 RS knit
Next row: k20, turn.
  > 20 Piece/body 2 WS k20
Next row: k12, turn and work on these 12 sts only.
  > 20→12 Piece/right side 1 RS k12
Knit 2 rows.
  > 12 Piece/right side 2 WS knit · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 12, edge right}, RS: 3 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 8, edge left}, RS: hold

### buttonholes counted from the last one
RIGHT FRONT
  > heading
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Right front/body 1 RS knit · WS knit
Buttonhole row: k2, yo, k2tog, k to end.
  > 20 Right front/body 3 RS k2, yo, k2tog, knit to end
Knit 3 rows.
  > 20 Right front/body 4 WS knit · RS knit · WS knit
Knit 12 rows, making a buttonhole every 6th row.
  > 20 Right front/body 7 RS knit · WS knit · RS knit 'Knit 12 rows, making a buttonhole every 6th row' · [WS knit · RS knit] ×2 · WS knit · RS knit 'Knit 12 rows, making a buttonhole every 6th row' · WS knit · RS knit · WS knit
  > = Right front, right front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 6 garter 4 mm; 12 garter 4 mm (own words 3 9); hold

### one more every 2 cm, and every row to a count
Gauge: 20 sts and 30 rows = 10 cm
  > talk
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Piece/body 1 RS knit · WS purl
Dec 1 st at each end every 2 cm twice, then every row until 20 sts remain.
  > 30→20 Piece/body 3 RS knit · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (28) · [WS purl · RS knit] ×2 · WS purl · RS dec, knit to last 2 sts, dec (26) · WS dec, purl to last 2 sts, dec (24) · RS dec, knit to last 2 sts, dec (22) · WS dec, purl to last 2 sts, dec (20)
  > = gauge stitches 20, rows 30
  > = Piece, other, 1 to make, lines 3 4
  > =   body from {castOn 30}, RS: 16 stocking 4 mm; hold

### numbered rows not understood, of a pattern that began before
Cast on 12 sts.
  > →12
Row 1 (RS): K.
  > 12 Piece/body 1 RS knit
Row 2: P.
  > 12 Piece/body 2 WS purl
Rows 3 and 4: K5, wibble, k5.
  > own words 12 asks the count Piece/body 3 RS work in pattern 'Rows 3 and 4: K5, wibble, k5' · WS work in pattern 'Rows 3 and 4: K5, wibble, k5'
  > ✗ stitch or repeat expected @4:19 column 19
Rep rows 1 to 4 once.
  > 12 Piece/body 5 RS knit · WS purl · RS work in pattern 'Rows 3 and 4: K5, wibble, k5' · WS work in pattern 'Rows 3 and 4: K5, wibble, k5'
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 12}, RS: 4 stocking 4 mm (own words 3 4); 4 pattern in stocking 4 mm (own words 3 4); hold

### numbered rows that begin with the third
Cast on 12 sts.
  > →12
K 2 rows.
  > 12 Piece/body 1 RS knit · WS knit
Row 3 (RS): K5, wibble, k5.
  > own words 12 asks the count Piece/body 3 RS work in pattern 'Row 3 (RS): K5, wibble, k5'
  > ✗ stitch or repeat expected @3:17 column 17
Row 4: P.
  > 12 Piece/body 4 WS purl
Rep rows 3 and 4 once.
  > 12 Piece/body 5 RS work in pattern 'Row 3 (RS): K5, wibble, k5' · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 12}, RS: 3 stocking 4 mm (own words 3); 3 pattern in stocking 4 mm (own words 2); hold

### rows as others, beginning with the first
Cast on 8 sts.
  > →8
Row 1 (RS): K2, p2, k2, p2.
  > 8 Piece/body 1 RS k2, p2, k2, p2
Row 2: P2, k2, p2, k2.
  > 8 Piece/body 2 WS p2, k2, p2, k2
Row 3: K.
  > 8 Piece/body 3 RS knit
Rows 4-6: as rows 1-3.
  > 8 Piece/body 4 WS k2, p2, k2, p2 · RS p2, k2, p2, k2 · WS knit
Rows 7 and 8: as row 2.
  > 8 Piece/body 7 RS p2, k2, p2, k2 · WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 8}, RS: 8 stocking 4 mm; hold

### a border at the same edge
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Left front/body 1 RS knit · WS purl
Dec 1 st at neck edge of next row.
  > 20→19 Left front/body 3 RS knit to last 2 sts, dec (19)
Work 2 rows in st st, keeping 4 sts at same edge in garter st.
  > 19 Left front/body 4 WS k4, purl to end · RS knit
Dec 1 st at each end of next row.
  > 19→17 Left front/body 6 WS k4, dec, purl to last 2 sts, dec (17)
Work 2 rows in st st, keeping 3 sts at same edge in moss st.
  > 17 Left front/body 7 RS k1, p1, knit to last 2 sts, p1, k1 · WS k1, p1, k1, purl to last 3 sts, k1, p1, k1
  > = Left front, left front, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 20}, RS: 8 stocking 4 mm; hold

### a border at an edge that nobody named
BACK
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st, keeping 4 sts at same edge in garter st.
  > 20 Back/body 1 RS knit · WS purl
  > ✗ place not known @3:23
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### rows begun on the wrong side
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Knit 1 row.
  > 20 Left front/body 1 RS knit
Work in st st, keeping first 4 sts in garter st, for 3 rows.
  > 20 Left front/body 2 WS k4, purl to end · RS knit · WS k4, purl to end
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
