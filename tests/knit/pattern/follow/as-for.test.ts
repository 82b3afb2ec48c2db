import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('as for, followed row by row,', () => {
  it.each(
    annotatedIn(`
### the whole of another piece
BACK
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in k1, p1 rib.
  > 20 Back/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Row 1: k1, k2tog, k to end.
  > 20→19 Back/body 3 RS k1, k2tog, knit to end (19)
Row 2: p.
  > 19 Back/body 4 WS purl
Bind off 2 sts at beg of next 2 rows.
  > 19→15 Back/body 5 RS bind off 2 sts, *p1, k1; repeat from * to last st, p1 (17) · WS bind off 2 sts, *k1, p1; repeat from * to last st, k1 (15)
Inc 2 sts evenly across next row.
  > 15→17 Back/body 7 RS [p1, k1] 2 times, m1p, *p1, k1; repeat from * to last 5 sts, p1, m1, [k1, p1] 2 times (17)
Next row: wibble 3 k sts (16 sts).
  > own words 17→16 says 16 Back/body 8 WS dec, work in pattern to end 'Next row: wibble 3 k sts (16 sts)' (16)
  > ✗ stitch or repeat expected @8:11 column 11
Bind off.
  > 16→0 Back/body 9 RS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back.
  > →0 Front/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS k1, k2tog, knit to end (19) · WS purl · RS bind off 2 sts, *p1, k1; repeat from * to last st, p1 (17) · WS bind off 2 sts, *k1, p1; repeat from * to last st, k1 (15) · RS [p1, k1] 2 times, m1p, *p1, k1; repeat from * to last 5 sts, p1, m1, [k1, p1] 2 times (17) · WS dec, work in pattern to end 'Next row: wibble 3 k sts (16 sts)' (16) · RS bind off all sts in pattern (0)
SECOND BACK
  > heading
Work as for back, reversing shaping.
  > →0 Second back/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS knit to last 3 sts, ssk, k1 (19) · WS purl · RS *k1, p1; repeat from * to last st, k1 · WS bind off 2 sts, *p1, k1; repeat from * to last st, p1 (17) · RS bind off 2 sts, *k1, p1; repeat from * to last st, k1 (15) · WS [p1, k1] 2 times, m1p, *p1, k1; repeat from * to last 5 sts, p1, m1, [k1, p1] 2 times (17) · RS dec, work in pattern to end 'Next row: wibble 3 k sts (16 sts)' (16) · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 9
  > =   body from {castOn 20}, RS: 8 rib in rib 1x1 4 mm (own words 8); bind off
  > = Front, front, 1 to make, lines 11
  > =   body from {castOn 20}, RS: 8 rib in rib 1x1 4 mm (own words 8); bind off
  > = Second back, back, 1 to make, lines 13
  > =   body from {castOn 20}, RS: 9 rib in rib 1x1 4 mm (own words 9); bind off

### to a place, a count, rows before, a length {"gauge": {"stitches": 20, "rows": 28}}
BACK
  > heading
Cast on 20 sts.
  > →20
Work 6 rows in st st.
  > 20 Back/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Bind off 2 sts at beg of next 2 rows.
  > 20→16 Back/body 7 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16)
Dec 1 st at each end of next 2 rows.
  > 16→12 Back/body 9 RS dec, knit to last 2 sts, dec (14) · WS dec, purl to last 2 sts, dec (12)
Work 4 rows.
  > 12 Back/body 11 RS knit · WS purl · RS knit · WS purl
Bind off.
  > 12→0 Back/body 15 RS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back to armhole.
  > →20 Front/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
K 1 row.
  > 20 Front/body 7 RS knit
SLEEVE
  > heading 20
Work as for back until 14 sts remain.
  > 20→14 Sleeve/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl · RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16) · RS dec, knit to last 2 sts, dec (14)
K 1 row.
  > 14 Sleeve/body 10 WS knit
HOOD
  > heading 14
Work as for back until 2 rows less than back to armhole.
  > 14→20 Hood/body 1 RS knit · WS purl · RS knit · WS purl
K 1 row.
  > 20 Hood/body 5 RS knit
COLLAR
  > heading 20
Work as for back until piece measures 1 cm.
  > 20 Collar/body 1 RS knit · WS purl · RS knit
K 1 row.
  > 20 Collar/body 4 WS knit
CAP
  > heading 20
Work as for back until armhole measures 1 cm.
  > 20→14 Cap/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl · RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16) · RS dec, knit to last 2 sts, dec (14)
K 1 row.
  > 14 Cap/body 10 WS knit
POCKET
  > heading 14
Work as for back to neck.
  > 14→20
  > ✗ place not known @24:1
Work as for jacket.
  > own words 20
  > ✗ stitch or repeat expected @25:1 column 1
BELT
  > heading 20
Work as for back until 2 rows less than back.
  > 20
  > ✗ place not known @27:1
Work as for back until 2 rows less than back to neck.
  > 20
  > ✗ place not known @28:1
Work as for back until 99 sts remain.
  > 20→0 Belt/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl · RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16) · RS dec, knit to last 2 sts, dec (14) · WS dec, purl to last 2 sts, dec (12) · [RS knit · WS purl] ×2 · RS bind off all sts in pattern (0)
  > ✗ count contradicts @29:1 statedStitches 99, foundStitches 0
BODICE
  > heading
Work as for back until piece measures 90 cm.
  > →0 Bodice/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl · RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16) · RS dec, knit to last 2 sts, dec (14) · WS dec, purl to last 2 sts, dec (12) · [RS knit · WS purl] ×2 · RS bind off all sts in pattern (0)
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 20}, RS: 14 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 9 10
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; hold
  > = Sleeve, sleeve, 1 to make, lines 12 13
  > =   body from {castOn 20}, RS: 10 stocking 4 mm; hold
  > = Hood, other, 1 to make, lines 15 16
  > =   body from {castOn 20}, RS: 5 stocking 4 mm; hold
  > = Collar, neckband, 1 to make, lines 18 19
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; hold
  > = Cap, other, 1 to make, lines 21 22
  > =   body from {castOn 20}, RS: 10 stocking 4 mm; hold
  > = Belt, other, 1 to make, lines 29
  > =   body from {castOn 20}, RS: 14 stocking 4 mm; bind off
  > = Bodice, other, 1 to make, lines 31
  > =   body from {castOn 20}, RS: 14 stocking 4 mm; bind off

### to a length without a gauge
BACK
  > heading
Cast on 20 sts.
  > →20
Work 6 rows in st st.
  > 20 Back/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Bind off 2 sts at beg of next 2 rows.
  > 20→16 Back/body 7 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16)
Dec 1 st at each end of next 2 rows.
  > 16→12 Back/body 9 RS dec, knit to last 2 sts, dec (14) · WS dec, purl to last 2 sts, dec (12)
Work 4 rows.
  > 12 Back/body 11 RS knit · WS purl · RS knit · WS purl
FRONT
  > heading 12
Work as for back until armhole measures 10 cm.
  > 12 as long as she likes: 2 rows Front/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl · RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16) · RS dec, knit to last 2 sts, dec (14) · WS dec, purl to last 2 sts, dec (12) · RS knit · WS purl
SLEEVE
  > heading 12
Work as for back until piece measures 10 cm.
  > 12 as long as she likes: 2 rows Sleeve/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl · RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16) · RS dec, knit to last 2 sts, dec (14) · WS dec, purl to last 2 sts, dec (12) · [RS knit · WS purl] ×3
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 14 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 8
  > =   body from {castOn 20}, RS: 10 stocking 4 mm; 2 stocking 4 mm (length {id 'front/1', open, mm 100, from armhole}); hold
  > = Sleeve, sleeve, 1 to make, lines 10
  > =   body from {castOn 20}, RS: 14 stocking 4 mm; 2 stocking 4 mm (length {id 'sleeve/1', open, mm 100, from start}); hold

### a half of it
BACK
  > heading
Cast on 21 sts.
  > →21
Work 2 rows in st st.
  > 21 Back/body 1 RS knit · WS purl
Bind off 2 sts at beg of next 2 rows.
  > 21→17 Back/body 3 RS bind off 2 sts, knit to end (19) · WS bind off 2 sts, purl to end (17)
Dec 1 st at each end of next 2 rows.
  > 17→13 Back/body 5 RS dec, knit to last 2 sts, dec (15) · WS dec, purl to last 2 sts, dec (13)
Bind off.
  > 13→0 Back/body 7 RS bind off all sts in pattern (0)
LEFT FRONT
  > heading
Work as for back to armhole.
  > →11 Left front/body 1 RS knit · WS purl
Shape armhole as for back.
  > 11→7 Left front/body 3 RS bind off 2 sts, knit to end (9) · WS purl · RS dec, knit to end (8) · WS p6, dec (7)
RIGHT FRONT
  > heading 7
Work as for left front, reversing shaping.
  > 7 Right front/body 1 RS knit · WS purl · RS knit · WS bind off 2 sts, purl to end (9) · RS k7, dec (8) · WS dec, purl to end (7)
FRONTS
  > heading 7
Work as for back.
  > 7→0 Fronts/body 1 RS knit · WS purl · RS bind off 2 sts, knit to end (9) · WS purl · RS dec, knit to end (8) · WS p6, dec (7) · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 21}, RS: 6 stocking 4 mm; bind off
  > = Left front, left front, 1 to make, lines 8 9
  > =   body from {castOn 11}, RS: 6 stocking 4 mm; hold
  > = Right front, right front, 1 to make, lines 11
  > =   body from {castOn 11}, RS: 6 stocking 4 mm; hold
  > = Fronts, front, 2 to make, lines 13
  > =   body from {castOn 11}, RS: 6 stocking 4 mm; bind off

### a piece that no heading names, where it is said what it is worked as
Cast on 16 sts. Work 4 rows in st st. Bind off 2 sts at beg of next 2 rows. Work 4 rows. Bind off.
  > 16→0 Piece/body 1 RS knit · WS purl · RS knit · WS purl · RS bind off 2 sts, knit to end (14) · WS bind off 2 sts, purl to end (12) · [RS knit · WS purl] ×2 · RS bind off all sts in pattern (0)
Work Front as Back until 12 sts are left. Work 2 rows. Bind off.
  > 12→0 Front/body 1 RS knit · WS purl · RS knit · WS purl · RS bind off 2 sts, knit to end (14) · WS bind off 2 sts, purl to end (12) · RS knit · WS purl · RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 1
  > =   body from {castOn 16}, RS: 10 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 2
  > =   body from {castOn 16}, RS: 8 stocking 4 mm; bind off

### one that its heading has named is no other
LEFT FRONT
  > heading
Cast on 8 sts. Work 2 rows in st st. Bind off.
  > 8→0 Left front/body 1 RS knit · WS purl · RS bind off all sts in pattern (0)
RIGHT FRONT
  > heading
Work right front as for left front, reversing shaping.
  > →0 Right front/body 1 RS knit · WS purl · RS bind off all sts in pattern (0)
  > = Left front, left front, 1 to make, lines 2
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; bind off
  > = Right front, right front, 1 to make, lines 4
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
