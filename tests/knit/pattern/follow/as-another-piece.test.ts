import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts reckoned by hand. */
describe('a piece as another one, followed row by row,', () => {
  it.each(
    annotatedIn(`
### as the back, to a place that it has not, and to places that it has {"gauge":{"stitches":20,"rows":28}}
Back
  > heading
Cast on 40 sts.
  > →40
Work in st st until piece measures 5 cm.
  > 40 long: 14 rows Back/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl
Shape armhole: Bind off 3 sts at beg of next 2 rows.
  > 40→34 Back/body 15 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34)
Dec 1 st at each end of every other row 3 times.
  > 34→28 Back/body 17 RS dec, knit to last 2 sts, dec (32) · WS purl · RS dec, knit to last 2 sts, dec (30) · WS purl · RS dec, knit to last 2 sts, dec (28)
Work even until armhole measures 5 cm.
  > 28 long: 7 rows Back/body 22 WS purl · [RS knit · WS purl] ×3
Shape shoulder: Bind off 5 sts at beg of next 2 rows.
  > 28→18 Back/body 29 RS bind off 5 sts, knit to end (23) · WS bind off 5 sts, purl to end (18)
Bind off rem 18 sts.
  > 18→0 Back/body 31 RS bind off all sts in pattern (0)
Front
  > heading
Work as for back to neck.
  > →40
  > ✗ place not known @10:1
Work as for hood to armhole.
  > own words 40
  > ✗ stitch or repeat expected @11:1 column 1
Work as for back to armhole.
  > 40 Front/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl
Shape armhole as for back.
  > 40→28 Front/body 15 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · RS dec, knit to last 2 sts, dec (32) · WS purl · RS dec, knit to last 2 sts, dec (30) · WS purl · RS dec, knit to last 2 sts, dec (28)
Work as for back to shoulder.
  > 28 Front/body 22 WS purl · [RS knit · WS purl] ×3
Shape shoulder as for back.
  > 28→0 Front/body 29 RS bind off 5 sts, knit to end (23) · WS bind off 5 sts, purl to end (18) · RS bind off all sts in pattern (0)
Bind off.
  > →0
  > ✗ nothing on the needle @16:1
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 40}, RS: 14 stocking 4 mm (length {id 'back/1', open false, mm 50, from start}); 7 'shape armhole' in stocking 4 mm; 7 'shape armhole' in stocking 4 mm (length {id 'back/2', open false, mm 50, from armhole}); 2 'shape shoulder' in stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 12 13 14 15
  > =   body from {castOn 40}, RS: 21 stocking 4 mm; 9 stocking 4 mm; bind off

### as the back, to a length, to a count, to rows before and after {"gauge":{"stitches":20,"rows":28}}
Back
  > heading
Cast on 40 sts.
  > →40
Work in st st until piece measures 5 cm.
  > 40 long: 14 rows Back/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl
Shape armhole: Bind off 3 sts at beg of next 2 rows.
  > 40→34 Back/body 15 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34)
Dec 1 st at each end of every other row 3 times.
  > 34→28 Back/body 17 RS dec, knit to last 2 sts, dec (32) · WS purl · RS dec, knit to last 2 sts, dec (30) · WS purl · RS dec, knit to last 2 sts, dec (28)
Work even until armhole measures 5 cm.
  > 28 long: 7 rows Back/body 22 WS purl · [RS knit · WS purl] ×3
Bind off.
  > 28→0 Back/body 29 RS bind off all sts in pattern (0)
Front
  > heading
Work as for back until armhole measures 3 cm.
  > →28 Front/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl · RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · RS dec, knit to last 2 sts, dec (32) · WS purl · RS dec, knit to last 2 sts, dec (30) · WS purl · RS dec, knit to last 2 sts, dec (28) · WS purl · RS knit
Bind off.
  > 28→0 Front/body 24 WS bind off all sts in pattern (0)
Pocket
  > heading
Work as for back until 30 sts remain.
  > →30 Pocket/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl · RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · RS dec, knit to last 2 sts, dec (32) · WS purl · RS dec, knit to last 2 sts, dec (30)
Bind off.
  > 30→0 Pocket/body 20 WS bind off all sts in pattern (0)
Collar
  > heading
Work as for back until 2 rows less than back to armhole.
  > →40 Collar/body 1 RS knit · [WS purl · RS knit] ×5 · WS purl
Bind off.
  > 40→0 Collar/body 13 RS bind off all sts in pattern (0)
Hood
  > heading
Work as for back until 4 rows have been worked.
  > →40 Hood/body 1 RS knit · WS purl · RS knit · WS purl
Bind off.
  > 40→0 Hood/body 5 RS bind off all sts in pattern (0)
Cap
  > heading
Work as for back until piece measures 2 cm.
  > →40 Cap/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Bind off.
  > 40→0 Cap/body 7 RS bind off all sts in pattern (0)
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 40}, RS: 14 stocking 4 mm (length {id 'back/1', open false, mm 50, from start}); 7 'shape armhole' in stocking 4 mm; 7 'shape armhole' in stocking 4 mm (length {id 'back/2', open false, mm 50, from armhole}); bind off
  > = Front, front, 1 to make, lines 9 10
  > =   body from {castOn 40}, RS: 21 stocking 4 mm; 2 stocking 4 mm; bind off
  > = Pocket, other, 1 to make, lines 12 13
  > =   body from {castOn 40}, RS: 19 stocking 4 mm; bind off
  > = Collar, neckband, 1 to make, lines 15 16
  > =   body from {castOn 40}, RS: 12 stocking 4 mm; bind off
  > = Hood, other, 1 to make, lines 18 19
  > =   body from {castOn 40}, RS: 4 stocking 4 mm; bind off
  > = Cap, other, 1 to make, lines 21 22
  > =   body from {castOn 40}, RS: 6 stocking 4 mm; bind off

### to a length without a gauge
Back
  > heading
Cast on 40 sts.
  > →40
Work 14 rows in st st.
  > 40 Back/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl
Shape armhole: Bind off 3 sts at beg of next 2 rows.
  > 40→34 Back/body 15 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34)
Dec 1 st at each end of every other row 2 times.
  > 34→30 Back/body 17 RS dec, knit to last 2 sts, dec (32) · WS purl · RS dec, knit to last 2 sts, dec (30)
Work 6 rows.
  > 30 Back/body 20 WS purl · [RS knit · WS purl] ×2 · RS knit
Bind off.
  > 30→0 Back/body 26 WS bind off all sts in pattern (0)
Front
  > heading
Work as for back until armhole measures 3 cm.
  > →30 as long as she likes: 3 rows Front/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl · RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · RS dec, knit to last 2 sts, dec (32) · WS purl · RS dec, knit to last 2 sts, dec (30) · WS purl · RS knit · WS purl
Work 2 rows.
  > 30 Front/body 23 RS knit · WS purl
Bind off.
  > 30→0 Front/body 25 RS bind off all sts in pattern (0)
Pocket
  > heading
Work as for back until piece measures 3 cm.
  > →30 as long as she likes: 3 rows Pocket/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl · RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34) · RS dec, knit to last 2 sts, dec (32) · WS purl · RS dec, knit to last 2 sts, dec (30) · [WS purl · RS knit] ×4 · WS purl
Bind off.
  > 30→0 Pocket/body 29 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 40}, RS: 14 stocking 4 mm; 11 'shape armhole' in stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 9 10 11
  > =   body from {castOn 40}, RS: 19 stocking 4 mm; 3 stocking 4 mm (length {id 'front/1', open, mm 30, from armhole}); 2 stocking 4 mm; bind off
  > = Pocket, other, 1 to make, lines 13 14
  > =   body from {castOn 40}, RS: 25 stocking 4 mm; 3 stocking 4 mm (length {id 'pocket/1', open, mm 30, from start}); bind off

### to a length without a gauge, below the shoulders
Back
  > heading
Cast on 40 sts.
  > →40
Work 14 rows in st st.
  > 40 Back/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl
Shape shoulder: Bind off 8 sts at beg of next 2 rows.
  > 40→24 Back/body 15 RS bind off 8 sts, knit to end (32) · WS bind off 8 sts, purl to end (24)
Bind off.
  > 24→0 Back/body 17 RS bind off all sts in pattern (0)
Front
  > heading
Work as for back until piece measures 3 cm.
  > →40 as long as she likes: 2 rows Front/body 1 RS knit · [WS purl · RS knit] ×7 · WS purl
Bind off.
  > 40→0 Front/body 17 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 40}, RS: 14 stocking 4 mm; 2 'shape shoulder' in stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 7 8
  > =   body from {castOn 40}, RS: 14 stocking 4 mm; 2 stocking 4 mm (length {id 'front/1', open, mm 30, from start}); bind off

### a half as the whole, and its mirror image
Back
  > heading
Cast on 40 sts.
  > →40
Work 4 rows in st st.
  > 40 Back/body 1 RS knit · WS purl · RS knit · WS purl
Shape armhole: Bind off 3 sts at beg of next 2 rows.
  > 40→34 Back/body 5 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34)
Dec 1 st at each end of next row.
  > 34→32 Back/body 7 RS dec, knit to last 2 sts, dec (32)
Work 2 rows.
  > 32 Back/body 8 WS purl · RS knit
Shape shoulder: Bind off 5 sts at beg of next 2 rows.
  > 32→22 Back/body 10 WS bind off 5 sts, purl to end (27) · RS bind off 5 sts, knit to end (22)
Bind off.
  > 22→0 Back/body 12 WS bind off all sts in pattern (0)
Left Front
  > heading
Cast on 20 sts.
  > →20
Work as for back to armhole.
  > 20 Left front/body 1 RS knit · WS purl · RS knit · WS purl
Shape armhole as for back.
  > 20→16 Left front/body 5 RS bind off 3 sts, knit to end (17) · WS purl · RS dec, knit to end (16)
Work 2 rows.
  > 16 Left front/body 8 WS purl · RS knit
Shape shoulder as for back.
  > 16→0 Left front/body 10 WS purl · RS bind off 5 sts, knit to end (11) · WS bind off all sts in pattern (0)
Bind off.
  > →0
  > ✗ nothing on the needle @15:1
Right Front
  > heading
Work as for left front, reversing all shaping.
  > →0 Right front/body 1 RS knit · [WS purl · RS knit] ×2 · WS bind off 3 sts, purl to end (17) · RS knit to last 2 sts, dec (16) · [WS purl · RS knit] ×2 · WS bind off 5 sts, purl to end (11) · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 40}, RS: 4 stocking 4 mm; 5 'shape armhole' in stocking 4 mm; 2 'shape shoulder' in stocking 4 mm; bind off
  > = Left front, left front, 1 to make, lines 11 12 13 14
  > =   body from {castOn 20}, RS: 11 stocking 4 mm; bind off
  > = Right front, right front, 1 to make, lines 17
  > =   body from {castOn 20}, RS: 12 stocking 4 mm; bind off

### a parted piece again, and its mirror image
Left Back
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Left back/body 1 RS knit · WS purl
Next row: K10, bind off 6 sts, k to end.
  > 30→24 Left back/body 3 RS k10, bind off 6 sts, knit to end (24)
Work 3 rows in st st.
  > 24→14 Left back/left side 1 WS purl · RS knit · WS purl
Bind off.
  > 14→0 Left back/left side 4 RS bind off all sts in pattern (0)
Rejoin yarn to rem sts and work 2 rows in st st.
  > 10 Left back/right side 1 WS purl · RS knit
Bind off.
  > 10→0 Left back/right side 3 WS bind off all sts in pattern (0)
Right Back
  > heading
Work as for left back.
  > →0 Right back/body 1 RS knit · WS purl · RS k10, bind off 6 sts, knit to end (24) · Right back/left side 1 WS purl · RS knit · WS purl · RS bind off all sts in pattern (0) · Right back/right side 1 WS purl · RS knit · WS bind off all sts in pattern (0)
Front
  > heading
Work as for left back, reversing shaping.
  > →0 Front/body 1 RS knit · WS purl · RS knit to last 16 sts, bind off 6 sts, k10 (24) · Front/left side 1 WS purl · RS knit · WS bind off all sts in pattern (0) · Front/right side 1 WS purl · RS knit · WS purl · RS bind off all sts in pattern (0)
  > = Left back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 30}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 14, edge left}, WS: 3 stocking 4 mm; bind off
  > =   right side from {part body, stitches 10, edge right}, WS: 2 stocking 4 mm; bind off
  > = Right back, back, 1 to make, lines 10
  > =   body from {castOn 30}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 14, edge left}, WS: 3 stocking 4 mm; bind off
  > =   right side from {part body, stitches 10, edge right}, WS: 2 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 12
  > =   body from {castOn 30}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 2 stocking 4 mm; bind off
  > =   right side from {part body, stitches 14, edge right}, WS: 3 stocking 4 mm; bind off

### to the stars
Back
  > heading
Cast on 30 sts.
  > →30
Work 4 rows in garter st. **
  > 30 Back/body 1 RS knit · WS knit · RS knit · WS knit
Work 4 rows in st st.
  > 30 Back/body 5 RS knit · WS purl · RS knit · WS purl
Bind off.
  > 30→0 Back/body 9 RS bind off all sts in pattern (0)
Front
  > heading
Work as for back to **.
  > →30 Front/body 1 RS knit · WS knit · RS knit · WS knit
Work 2 rows in k1, p1 rib.
  > 30 Front/body 5 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Bind off.
  > 30→0 Front/body 7 RS bind off all sts in pattern (0)
Sleeve
  > heading
Work from ** to ** as for back.
  > →30 Sleeve/body 1 RS knit · WS knit · RS knit · WS knit
Bind off.
  > 30→0 Sleeve/body 5 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 30}, RS: 4 garter 4 mm; 4 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 7 8 9
  > =   body from {castOn 30}, RS: 4 garter 4 mm; 2 rib in rib 1x1 4 mm; bind off
  > = Sleeve, sleeve, 1 to make, lines 11 12
  > =   body from {castOn 30}, RS: 4 garter 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
