import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('shoulders, bands and lengths, followed row by row,', () => {
  it.each(
    annotatedIn(`
### what is told of increases is no row
Cast on 10 sts.
  > →10
Knit 2 rows.
  > 10 Piece/body 1 RS knit · WS knit
Increases on the lower edge are worked every 4th row.
  > own words 10
  > ✗ stitch or repeat expected @3:11 column 11
Decreases at the neck edge continue.
  > own words 10
  > ✗ stitch or repeat expected @4:28 column 28
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; hold


### a shoulder bound off at one side, and where the next one begins
BACK
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Back/body 1 RS knit · WS purl
Shape armholes
  > heading 40
Bind off 4 sts at beg of next 2 rows.
  > 40→32 Back/body 3 RS bind off 4 sts, knit to end (36) · WS bind off 4 sts, purl to end (32)
Work 4 rows.
  > 32 Back/body 5 RS knit · WS purl · RS knit · WS purl
Bind off 6 sts at beg of next 4 rows.
  > 32→8 Back/body 9 RS bind off 6 sts, knit to end (26) · WS bind off 6 sts, purl to end (20) · RS bind off 6 sts, knit to end (14) · WS bind off 6 sts, purl to end (8)
Bind off.
  > 8→0 Back/body 13 RS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back to shoulder.
  > →32 Front/body 1 RS knit · WS purl · RS bind off 4 sts, knit to end (36) · WS bind off 4 sts, purl to end (32) · [RS knit · WS purl] ×2
Bind off.
  > 32→0 Front/body 9 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 5 6 7 8
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; 10 'shape armholes' in stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 10 11
  > =   body from {castOn 40}, RS: 8 stocking 4 mm; bind off


### a front whose shoulder is as the back's
BACK
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Back/body 1 RS knit · WS purl
Bind off 4 sts at beg of next 2 rows.
  > 40→32 Back/body 3 RS bind off 4 sts, knit to end (36) · WS bind off 4 sts, purl to end (32)
Work 4 rows.
  > 32 Back/body 5 RS knit · WS purl · RS knit · WS purl
Bind off 6 sts at beg of next 4 rows.
  > 32→8 Back/body 9 RS bind off 6 sts, knit to end (26) · WS bind off 6 sts, purl to end (20) · RS bind off 6 sts, knit to end (14) · WS bind off 6 sts, purl to end (8)
Bind off rem 8 sts.
  > 8→0 Back/body 13 RS bind off all sts in pattern (0)
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Left front/body 1 RS knit · WS purl
Bind off 4 sts at beg of next row.
  > 20→16 Left front/body 3 RS bind off 4 sts, knit to end (16)
Work until same length as back to shoulder.
  > 16 Left front/body 4 WS purl · [RS knit · WS purl] ×2
Bind off 6 sts at armhole edge twice.
  > 16→4 Left front/body 9 RS bind off 6 sts, knit to end (10) · WS purl · RS bind off 6 sts, k4 (4)
  > = Back, back, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 40}, RS: 12 stocking 4 mm; bind off
  > = Left front, left front, 1 to make, lines 10 11 12 13
  > =   body from {castOn 20}, RS: 11 stocking 4 mm; hold


### rows and a shaping from a star, three times
Cast on 20 sts.
  > →20
*Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Dec 1 st at each end of next row. Work 1 row. Rep from * twice more. 14 sts.
  > 20→14 says 14 Piece/body 3 RS dec, knit to last 2 sts, dec (18) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (16) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (14) · WS purl
Work 2 rows.
  > 14 Piece/body 13 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 14 stocking 4 mm; hold


### the third row not understood
Cast on 20 sts.
  > →20
Row 1: Knit.
  > 20 Piece/body 1 RS knit
Row 2: Purl.
  > 20 Piece/body 2 WS purl
Row 3: frumple the fringe, k2, yo to end. 22 sts.
  > own words 20→22 says 22 Piece/body 3 RS work in pattern to end, [m1] 2 times 'Row 3: frumple the fringe, k2, yo to end' (22)
  > ✗ stitch or repeat expected @4:8 column 8
Row 4: Purl.
  > 22 Piece/body 4 WS purl
Rep rows 3 and 4 once.
  > 22→24 Piece/body 5 RS work in pattern to end, [m1] 2 times 'Row 3: frumple the fringe, k2, yo to end' (24) · WS purl
Row 7: Knit.
  > 24 Piece/body 7 RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 20}, RS: 3 stocking 4 mm (own words 3); 4 pattern in stocking 4 mm (own words 2); hold


### a fabric that nobody knows, until she has her length
Cast on 20 sts.
  > →20
Work in frumple stitch until piece measures 5 cm.
  > 20 as long as she likes: 2 rows Piece/body 1 RS work in pattern · WS work in pattern
  > ✗ fabric not known @2:1 name frumple
Next row: frumple the fringe, k2, yo to end until piece measures 8 cm.
  > own words 20 asks the count as long as she likes: 1 rows Piece/body 3 RS work in pattern 'Next row: frumple the fringe, k2, yo to end until piece measures 8 cm'
  > ✗ stitch or repeat expected @3:11 column 11
Work 2 rows in st st.
  > 20 Piece/body 4 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 2 frumple in stocking 4 mm (length {id 'piece/1', open, mm 50, from start}); 1 frumple in stocking 4 mm (own words 1, length {id 'piece/2', open, from here}); 2 stocking 4 mm; hold


### one row of knit and purl, and then straight
Cast on 13 sts.
  > →13
Next row: K1, *p1, k1; rep from * to end.
  > 13 Piece/body 1 RS k1, *p1, k1; repeat from * to end
Work 4 rows.
  > 13 Piece/body 2 WS work in pattern · RS work in pattern · WS work in pattern · RS work in pattern
Dec 1 st at each end of next row.
  > 13→11 Piece/body 6 WS dec, work in pattern to last 2 sts, dec (11)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 13}, RS: 1 rib in rib 1x1 matched 4 mm; 5 pattern in stocking 4 mm; hold


### bands in garter stitch by a written row
Cast on 16 sts.
  > →16
Knit 4 rows.
  > 16 Piece/body 1 RS knit · WS knit · RS knit · WS knit
Next row: K4, p to last 4 sts, k4.
  > 16 Piece/body 5 RS k4, purl to last 4 sts, k4
Work 5 rows.
  > 16 Piece/body 6 WS knit · [RS k4, purl to last 4 sts, k4 · WS knit] ×2
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 16}, RS: 4 garter 4 mm; 1 garter 4 mm; 5 pattern in stocking 4 mm; hold


### bands in garter stitch by a written row and a knit one
Cast on 16 sts.
  > →16
Next row: Knit.
  > 16 Piece/body 1 RS knit
Next row: K4, p8, k4.
  > 16 Piece/body 2 WS k4, p8, k4
Next row: Knit.
  > 16 Piece/body 3 RS knit
Work 3 rows even.
  > 16 Piece/body 4 WS k4, p8, k4 · RS knit · WS k4, p8, k4
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 16}, RS: 3 stocking 4 mm; 3 pattern in stocking 4 mm; hold


### slipped first stitches of one piece only
BACK
  > heading
Cast on 10 sts.
  > →10
Slip the first stitch of every row.
  > 10
Work 3 rows in st st.
  > 10 Back/body 1 RS sl1, knit to end · WS sl1, purl to end · RS sl1, knit to end
Dec 1 st at each end of next row.
  > 10→8 Back/body 4 WS dec, p6, dec (8)
Bind off.
  > 8→0 Back/body 5 RS bind off all sts in pattern (0)
FRONT
  > heading
Cast on 10 sts.
  > →10
Work 2 rows in st st.
  > 10 Front/body 1 RS knit · WS purl
  > = Back, back, 1 to make, lines 4 5 6
  > =   body from {castOn 10}, RS: 4 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 9
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; hold


### a piece whose shaping counts by its rows {"gauge": {"stitches": 20, "rows": 20}}
SLEEVE
  > heading
Cast on 20 sts.
  > →20
Inc 1 st at each end every 2 cm until there are 26 sts.
  > 20→26 Sleeve/body 1 RS knit · WS purl · RS inc, knit to last st, inc (22) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (24) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (26)
Work until sleeve measures 10 cm.
  > 26 long: 9 rows Sleeve/body 12 WS purl · [RS knit · WS purl] ×4
Bind off.
  > 26→0 Sleeve/body 21 RS bind off all sts in pattern (0)
  > = gauge stitches 20, rows 20
  > = Sleeve, sleeve, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: 11 stocking 4 mm; 9 stocking 4 mm (length {id 'sleeve/1', open false, mm 100, from start}); bind off


### decreases every few rows until a length {"gauge": {"stitches": 20, "rows": 20}}
Cast on 30 sts.
  > →30
Work in st st for 2 cm.
  > 30 long: 4 rows Piece/body 1 RS knit · WS purl · RS knit · WS purl
Dec 1 st at each end every 4th row until piece measures 8 cm.
  > 30→24 Piece/body 5 RS knit · WS purl · RS dec, knit to last 2 sts, dec (28) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (26) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (24) · WS purl
Work 2 rows.
  > 24 Piece/body 17 RS knit · WS purl
  > = gauge stitches 20, rows 20
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 30}, RS: 4 stocking 4 mm (length {id 'piece/1', open false, mm 20, from here}); 14 stocking 4 mm; hold


### sides of a divided neck, each with its count
FRONT
  > heading
Cast on 24 sts.
  > →24
Work 2 rows in st st.
  > 24 Front/body 1 RS knit · WS purl
DIVIDE FOR NECK
  > heading 24
Next row: K9, place next 6 sts on a holder, k9.
  > 24→18 Front/body 3 RS k9, place 6 sts on holder, k9 (18)
Work on last 9 sts only: dec 1 st at neck edge every other row twice. 7 sts.
  > 18→7 says 7 Front/left side 1 WS purl · RS dec, knit to end (8) · WS purl · RS dec, knit to end (7)
Bind off.
  > 7→0 Front/left side 5 WS bind off all sts in pattern (0)
With WS facing, rejoin yarn to rem 9 sts.
  > →9
Dec 1 st at neck edge every other row twice. 7 sts.
  > 9→7 says 7 Front/right side 1 WS purl · RS k7, dec (8) · WS purl · RS k6, dec (7)
Bind off.
  > 7→0 Front/right side 5 WS bind off all sts in pattern (0)
  > = Front, front, 1 to make, lines 3 5 6 7 9 10
  > =   body from {castOn 24}, RS: 2 stocking 4 mm; 1 'divide for neck' in stocking 4 mm; split
  > =   left side from {part body, stitches 9, edge left}, WS: 4 'divide for neck' in stocking 4 mm; bind off
  > =   right side from {part body, stitches 9, edge right}, WS: 4 'divide for neck' in stocking 4 mm; bind off


### a yarn named in the middle of a piece
Cast on 10 sts.
  > →10
Knit 2 rows.
  > 10 Piece/body 1 RS knit · WS knit
With B, knit 2 rows.
  > 10 Piece/body 3 RS knit · WS knit
Next row: With A, k5, with B, k5.
  > 10 Piece/body 5 RS k5, k5 'Next row: With A, k5, with B, k5'
Work 2 rows with A.
  > 10 Piece/body 6 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 10}, RS: 2 garter 4 mm; 2 'stocking, B' in garter 4 mm; 3 'stocking, A' in stocking 4 mm (own words 1); hold
`),
  )('comes out as $title', expectAnnotated);
});
