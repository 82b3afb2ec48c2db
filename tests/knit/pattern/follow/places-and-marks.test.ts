import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. The rows and stitches are counted by hand. */
describe('places and marks, followed row by row,', () => {
  it.each(
    annotatedIn(`
### the shoulder is where the first groups after the armhole are bound off, and stays there
BACK
  > heading
Cast on 40 sts.
  > →40
Work 4 rows in st st.
  > 40 Back/body 1 RS knit · WS purl · RS knit · WS purl
Bind off 3 sts at beg of next 2 rows.
  > 40→34 Back/body 5 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34)
Work 4 rows.
  > 34 Back/body 7 RS knit · WS purl · RS knit · WS purl
Bind off 5 sts at beg of next 2 rows.
  > 34→24 Back/body 11 RS bind off 5 sts, knit to end (29) · WS bind off 5 sts, purl to end (24)
Work 2 rows.
  > 24 Back/body 13 RS knit · WS purl
Bind off 4 sts at beg of next 2 rows.
  > 24→16 Back/body 15 RS bind off 4 sts, knit to end (20) · WS bind off 4 sts, purl to end (16)
FRONT
  > heading 16
Work as for back to shoulder.
  > 16→34 Front/body 1 RS knit · WS purl · RS knit · WS purl · RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · [RS knit · WS purl] ×2
  > = Back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 40}, RS: 16 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 10
  > =   body from {castOn 40}, RS: 10 stocking 4 mm; hold

### also where the armhole is a measure of rows worked again: 2 cm are 6 rows {"gauge": {"stitches": 20, "rows": 30}}
BACK
  > heading
Cast on 40 sts.
  > →40
Work 4 rows in st st.
  > 40 Back/body 1 RS knit · WS purl · RS knit · WS purl
Bind off 3 sts at beg of next 2 rows.
  > 40→34 Back/body 5 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34)
Next row: k.
  > 34 Back/body 7 RS knit
Next row: p.
  > 34 Back/body 8 WS purl
Rep last 2 rows until armhole measures 2 cm.
  > 34 long: 2 rows Back/body 9 RS knit · WS purl
Bind off 5 sts at beg of next 2 rows.
  > 34→24 Back/body 11 RS bind off 5 sts, knit to end (29) · WS bind off 5 sts, purl to end (24)
FRONT
  > heading 24
Work as for back to shoulder.
  > 24→34 Front/body 1 RS knit · WS purl · RS knit · WS purl · RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · [RS knit · WS purl] ×2
  > = gauge stitches 20, rows 30
  > = Back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 40}, RS: 8 stocking 4 mm; 2 stocking 4 mm (length {id 'back/1', open false, mm 20, from armhole}); 2 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 10
  > =   body from {castOn 40}, RS: 8 stocking 4 mm; 2 stocking 4 mm; hold

### a marker keeps its place in the fabric when the right edge is shaped, and when the left one is
Cast on 20 sts.
  > →20
Next row: k8, place marker, k12.
  > 20 Piece/body 1 RS k8, k12
Next row: p.
  > 20 Piece/body 2 WS purl
Bind off 2 sts at beg of next 2 rows.
  > 20→16 Piece/body 3 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16)
Next row: k to marker, k1, k to end.
  > 16 Piece/body 5 RS knit to last 10 sts, k1, knit to end
Dec 1 st at each end of next row.
  > 16→14 Piece/body 6 WS dec, purl to last 2 sts, dec (14)
Next row: k to marker, k1, k to end.
  > 14 Piece/body 7 RS knit to last 9 sts, k1, knit to end
Inc 1 st at each end of next row.
  > 14→16 Piece/body 8 WS inc, purl to last st, inc (16)
Next row: k to marker, k1, k to end.
  > 16 Piece/body 9 RS knit to last 10 sts, k1, knit to end
Bind off 5 sts at beg of next row.
  > 16→11 Piece/body 10 WS bind off 5 sts, purl to end (11)
P 1 row.
  > 11 Piece/body 11 RS purl
Next row: k to marker, k1, k to end.
  > 11 Piece/body 12 WS knit to last 6 sts, k1, knit to end
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9 10 11 12
  > =   body from {castOn 20}, RS: 10 stocking 4 mm; 2 reverse stocking 4 mm; hold

### the rib is that of the last piece that has one
BACK
  > heading
Cast on 20 sts.
  > →20
Work in k2, p2 rib for 2 rows.
  > 20 Back/body 1 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Bind off.
  > 20→0 Back/body 3 RS bind off all sts in pattern (0)
SLEEVE
  > heading
Cast on 12 sts.
  > →12
K 2 rows.
  > 12 Sleeve/body 1 RS knit · WS knit
Bind off.
  > 12→0 Sleeve/body 3 RS bind off all sts in pattern (0)
FRONT
  > heading
Cast on 20 sts.
  > →20
Work in rib for 2 rows.
  > 20 Front/body 1 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Bind off.
  > 20→0 Front/body 3 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 2 rib in rib 2x2 4 mm; bind off
  > = Sleeve, sleeve, 1 to make, lines 7 8
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 11 12
  > =   body from {castOn 20}, RS: 2 rib in rib 2x2 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
