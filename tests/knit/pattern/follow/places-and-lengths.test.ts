import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('places and lengths of other pieces, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a sleeve's top as that of the back's armhole
BACK
  > heading
Cast on 30 sts.
  > →30
Work 4 rows in st st.
  > 30 Back/body 1 RS knit · WS purl · RS knit · WS purl
Shape armholes
  > heading 30
Bind off 3 sts at beg of next 2 rows.
  > 30→24 Back/body 5 RS bind off 3 sts, knit to end (27) · WS bind off 3 sts, purl to end (24)
Dec 1 st at each end of every other row twice.
  > 24→20 Back/body 7 RS dec, knit to last 2 sts, dec (22) · WS purl · RS dec, knit to last 2 sts, dec (20)
Work 3 rows.
  > 20 Back/body 10 WS purl · RS knit · WS purl
Bind off.
  > 20→0 Back/body 13 RS bind off all sts in pattern (0)
SLEEVE
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Sleeve/body 1 RS knit · WS purl
Shape armholes as for back.
  > 30→20 Sleeve/body 3 RS bind off 3 sts, knit to end (27) · WS bind off 3 sts, purl to end (24) · RS dec, knit to last 2 sts, dec (22) · WS purl · RS dec, knit to last 2 sts, dec (20)
Bind off.
  > 20→0 Sleeve/body 8 WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 5 6 7 8
  > =   body from {castOn 30}, RS: 4 stocking 4 mm; 8 'shape armholes' in stocking 4 mm; bind off
  > = Sleeve, sleeve, 1 to make, lines 11 12 13
  > =   body from {castOn 30}, RS: 7 stocking 4 mm; bind off


### one row more to the side that is asked for
Cast on 20 sts.
  > →20
Dec 1 st at each end of every row until 14 sts rem, ending with a WS row.
  > 20→14 Piece/body 1 RS dec, knit to last 2 sts, dec (18) · WS dec, purl to last 2 sts, dec (16) · RS dec, knit to last 2 sts, dec (14) · WS purl
Work 2 rows.
  > 14 Piece/body 5 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; hold


### a length from the place where the armhole began {"gauge": {"stitches": 20, "rows": 20}}
BACK
  > heading
Cast on 30 sts.
  > →30
Work in st st until piece measures 3 cm.
  > 30 long: 6 rows Back/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Shape armholes
  > heading 30
Bind off 3 sts at beg of next 2 rows.
  > 30→24 Back/body 7 RS bind off 3 sts, knit to end (27) · WS bind off 3 sts, purl to end (24)
Work even until armhole measures 3 cm.
  > 24 long: 4 rows Back/body 9 RS knit · WS purl · RS knit · WS purl
Work even until piece measures 7 cm.
  > 24 long: 2 rows Back/body 13 RS knit · WS purl
Bind off.
  > 24→0 Back/body 15 RS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back until armhole measures 2 cm.
  > →24 Front/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl · RS bind off 3 sts, knit to end (27) · WS bind off 3 sts, purl to end (24) · RS knit · WS purl
Next row: K8, turn.
  > 24→8 Front/right side 1 RS k8
Work 3 rows.
  > 8 Front/right side 2 WS purl · RS knit · WS purl
Bind off.
  > 8→0 Front/right side 5 RS bind off all sts in pattern (0)
Rejoin yarn, bind off 8 sts, k to end.
  > 16→8 Front/left side 1 RS bind off 8 sts, knit to end (8)
Work 3 rows.
  > 8 Front/left side 2 WS purl · RS knit · WS purl
Bind off.
  > 8→0 Front/left side 5 RS bind off all sts in pattern (0)
  > = gauge stitches 20, rows 20
  > = Back, back, 1 to make, lines 3 5 6 7 8
  > =   body from {castOn 30}, RS: 6 stocking 4 mm (length {id 'back/1', open false, mm 30, from start}); 2 'shape armholes' in stocking 4 mm; 4 'shape armholes' in stocking 4 mm (length {id 'back/2', open false, mm 30, from armhole}); 2 'shape armholes' in stocking 4 mm (length {id 'back/3', open false, mm 70, from start}); bind off
  > = Front, front, 1 to make, lines 10 11 12 13 14 15 16
  > =   body from {castOn 30}, RS: 8 stocking 4 mm; 2 stocking 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, RS: 4 stocking 4 mm; bind off
  > =   left side from {part body, stitches 16, edge left}, RS: 4 stocking 4 mm; bind off


### written decreases between rows that are named
LEFT FRONT
  > heading
Cast on 14 sts.
  > →14
Work 2 rows in st st.
  > 14 Left front/body 1 RS knit · WS purl
Dec row: K to last 3 sts, k2tog, k1.
  > 14→13 Left front/body 3 RS knit to last 3 sts, k2tog, k1 (13)
Work 3 rows.
  > 13 Left front/body 4 WS purl · RS knit · WS purl
Rep dec row every 4th row 2 times more, then every other row twice.
  > 13→9 Left front/body 7 RS knit to last 3 sts, k2tog, k1 (12) · WS purl · RS knit · WS purl · RS knit to last 3 sts, k2tog, k1 (11) · WS purl · RS knit to last 3 sts, k2tog, k1 (10) · WS purl · RS knit to last 3 sts, k2tog, k1 (9)
Work 1 row.
  > 9 Left front/body 16 WS purl
  > = Left front, left front, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 14}, RS: 16 stocking 4 mm; hold


### a gauge in rib, and lengths in it
Gauge: 24 sts and 20 rows = 10 cm in k1, p1 rib.
  > talk
Cast on 20 sts.
  > →20
Work in k1, p1 rib for 3 cm.
  > 20 long: 6 rows Piece/body 1 RS *k1, p1; repeat from * to end · [WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end] ×2 · WS *k1, p1; repeat from * to end
Work in st st until piece measures 6 cm.
  > 20 long: 6 rows Piece/body 7 RS knit · [WS purl · RS knit] ×2 · WS purl
  > = gauge stitches 24, rows 20, fabric 'rib 1x1'
  > = Piece, other, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 6 rib in rib 1x1 4 mm (length {id 'piece/1', open false, mm 30, from here}); 6 stocking 4 mm (length {id 'piece/2', open false, mm 60, from start}); hold


### shaping that waits for a length {"gauge": {"stitches": 20, "rows": 20}}
Cast on 20 sts.
  > →20
Work in st st until piece measures 6 cm. At the same time, when piece measures 2 cm, dec 1 st at each end every 4th row 2 times.
  > 20→16 long: 12 rows Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl · RS dec, knit to last 2 sts, dec (18) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (16) · WS purl
Bind off.
  > 16→0 Piece/body 13 RS bind off all sts in pattern (0)
  > = gauge stitches 20, rows 20
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 12 stocking 4 mm (length {id 'piece/2', open false, mm 60, from start}); bind off


### shaping that waits for a count
RIGHT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Right front/body 1 RS knit · WS purl
Dec 1 st at armhole edge every other row 4 times. At the same time, when 18 sts remain, dec 1 st at neck edge every row twice.
  > 20→14 Right front/body 3 RS knit to last 2 sts, dec (19) · WS purl · RS knit to last 2 sts, dec (18) · WS purl to last 2 sts, dec (17) · RS dec, knit to last 2 sts, dec (15) · WS purl · RS knit to last 2 sts, dec (14)
Work 2 rows.
  > 14 Right front/body 10 WS purl · RS knit
  > = Right front, right front, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: 11 stocking 4 mm; hold


### as another piece, its parts and their ends
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Back/body 1 RS knit · WS purl
Next row: K10, bind off 10 sts, k to end.
  > 30→20 Back/body 3 RS k10, bind off 10 sts, knit to end (20)
Work 3 rows.
  > 20→10 Back/left side 1 WS purl · RS knit · WS purl
Place these sts on a holder.
  > 10
Rejoin yarn to rem sts.
  > →10
Work 4 rows.
  > 10 Back/right side 1 WS purl · RS knit · WS purl · RS knit
Bind off.
  > 10→0 Back/right side 5 WS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back.
  > →0 Front/body 1 RS knit · WS purl · RS k10, bind off 10 sts, knit to end (20) · Front/left side 1 WS purl · RS knit · WS purl · Front/right side 1 WS purl · RS knit · WS purl · RS knit · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 8 9
  > =   body from {castOn 30}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 3 stocking 4 mm; hold
  > =   right side from {part body, stitches 10, edge right}, WS: 4 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 11
  > =   body from {castOn 30}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 3 stocking 4 mm; hold
  > =   right side from {part body, stitches 10, edge right}, WS: 4 stocking 4 mm; bind off


### as another piece up to its neck, and half as wide
BACK
  > heading
Cast on 30 sts.
  > →30
Work 4 rows in st st.
  > 30 Back/body 1 RS knit · WS purl · RS knit · WS purl
Shape armholes
  > heading 30
Bind off 3 sts at beg of next 2 rows.
  > 30→24 Back/body 5 RS bind off 3 sts, knit to end (27) · WS bind off 3 sts, purl to end (24)
Dec 1 st at each end of next row.
  > 24→22 Back/body 7 RS dec, knit to last 2 sts, dec (22)
Work 3 rows.
  > 22 Back/body 8 WS purl · RS knit · WS purl
Bind off.
  > 22→0 Back/body 11 RS bind off all sts in pattern (0)
LEFT FRONT
  > heading
Cast on 14 sts.
  > →14
Work as for back to armhole.
  > 14 Left front/body 1 RS knit · WS purl · RS knit · WS purl
Shape armhole as for back.
  > 14→10 Left front/body 5 RS bind off 3 sts, knit to end (11) · WS purl · RS dec, knit to end (10)
Bind off.
  > 10→0 Left front/body 8 WS bind off all sts in pattern (0)
RIGHT FRONT
  > heading
Work as for left front, reversing shaping.
  > →0 Right front/body 1 RS knit · [WS purl · RS knit] ×2 · WS bind off 3 sts, purl to end (11) · RS knit to last 2 sts, dec (10) · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 5 6 7 8
  > =   body from {castOn 30}, RS: 4 stocking 4 mm; 6 'shape armholes' in stocking 4 mm; bind off
  > = Left front, left front, 1 to make, lines 11 12 13
  > =   body from {castOn 14}, RS: 7 stocking 4 mm; bind off
  > = Right front, right front, 1 to make, lines 15
  > =   body from {castOn 14}, RS: 7 stocking 4 mm; bind off


### rib over what was parted
Cast on 20 sts.
  > →20
Work 4 rows in k2, p2 rib.
  > 20 Piece/body 1 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end · RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Next row: Rib 8, turn.
  > 20→8 Piece/right side 1 RS *k2, p2; repeat from * to end
Rib 3 rows.
  > 8 Piece/right side 2 WS *k2, p2; repeat from * to end · RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Bind off in rib.
  > 8→0 Piece/right side 5 RS bind off all sts in pattern (0)
Rejoin yarn to rem sts and rib 4 rows.
  > 12 Piece/left side 1 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end · RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Bind off in rib.
  > 12→0 Piece/left side 5 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 20}, RS: 4 rib in rib 2x2 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, RS: 4 rib in rib 2x2 4 mm; bind off
  > =   left side from {part body, stitches 12, edge left}, RS: 4 rib in rib 2x2 4 mm; bind off


### repeated to a count that is never met exactly
Cast on 17 sts.
  > →17
Row 1: K1, k2tog, k to last 3 sts, k2tog, k1.
  > 17→15 Piece/body 1 RS k1, k2tog, knit to last 3 sts, k2tog, k1 (15)
Row 2: P.
  > 15 Piece/body 2 WS purl
Rep rows 1 and 2 until 8 sts rem.
  > 15→9 Piece/body 3 RS k1, k2tog, knit to last 3 sts, k2tog, k1 (13) · WS purl · RS k1, k2tog, knit to last 3 sts, k2tog, k1 (11) · WS purl · RS k1, k2tog, knit to last 3 sts, k2tog, k1 (9) · WS purl
  > ✗ count contradicts @4:1 statedStitches 8, foundStitches 9
Work 1 row.
  > 9 Piece/body 9 RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 17}, RS: 9 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
