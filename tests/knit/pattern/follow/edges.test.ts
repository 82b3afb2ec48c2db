import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('shaping at edges that a place names, followed row by row,', () => {
  it.each(
    annotatedIn(`
### counts that are looked at when what goes on beside has ended
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st, at the same time dec 1 st at neck edge every row 6 times.
  > 20→18 Left front/body 1 RS knit to last 2 sts, dec (19) · WS dec, purl to end (18)
Work 1 row. (14 sts)
  > 18→17 says 14 Left front/body 3 RS knit to last 2 sts, dec (17)
Work 1 row. (15 sts)
  > 17→16 says 15 Left front/body 4 WS dec, purl to end (16)
  > ✗ count contradicts @5:13 statedStitches 15, foundStitches 14
Work 6 rows.
  > 16→14 Left front/body 5 RS knit to last 2 sts, dec (15) · WS dec, purl to end (14) · [RS knit · WS purl] ×2
Work 1 row. (13 sts)
  > 14 says 13 Left front/body 11 RS knit
  > ✗ count contradicts @7:13 statedStitches 13, foundStitches 14
  > = Left front, left front, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 20}, RS: 11 stocking 4 mm; hold

### a count that ends a shaping in the same sentence
Cast on 30 sts.
  > →30
Dec 1 st at each end every other row (24 sts).
  > 30→24 says 24 Piece/body 1 RS dec, knit to last 2 sts, dec (28) · WS purl · RS dec, knit to last 2 sts, dec (26) · WS purl · RS dec, knit to last 2 sts, dec (24)
Dec 1 st at each end every other row 2 times, then every row (16 sts).
  > 24→16 says 16 Piece/body 6 WS purl · RS dec, knit to last 2 sts, dec (22) · WS purl · RS dec, knit to last 2 sts, dec (20) · WS dec, purl to last 2 sts, dec (18) · RS dec, knit to last 2 sts, dec (16)
Inc 1 st at each end every row (20 sts).
  > 16→20 says 20 Piece/body 12 WS inc, purl to last st, inc (18) · RS inc, knit to last st, inc (20)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 30}, RS: 13 stocking 4 mm; hold

### groups that come exactly to a count
BACK
  > heading
Cast on 40 sts.
  > →40
Bind off 5 sts at beg of every row until 30 sts remain.
  > 40→30 Back/body 1 RS bind off 5 sts, knit to end (35) · WS bind off 5 sts, purl to end (30)
Cast on 5 sts at beg of every row until there are 40 sts.
  > 30→40 Back/body 3 RS cast on 5 sts, knit to end (35) · WS cast on 5 sts, purl to end (40)
Bind off 3 sts at armhole edge on next row, 2 sts at same edge every 4th row 2 times.
  > 40→33 Back/body 5 RS bind off 3 sts, knit to end (37) · WS purl · RS knit · WS purl · RS bind off 2 sts, knit to end (35) · WS purl · RS knit · WS purl · RS bind off 2 sts, knit to end (33)
Bind off 3 sts at end of next row.
  > 33→30 Back/body 14 WS purl to last 3 sts, bind off 3 sts (30)
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 40}, RS: 14 stocking 4 mm; hold

### what is cast on begins no armhole {"gauge": {"stitches": 20, "rows": 28}}
BACK
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Back/body 1 RS knit · WS purl
Cast on 3 sts at beg of next 2 rows.
  > 20→26 Back/body 3 RS cast on 3 sts, knit to end (23) · WS cast on 3 sts, purl to end (26)
Work 2 rows.
  > 26 Back/body 5 RS knit · WS purl
Work even until armhole measures 2 cm.
  > 26
Bind off 2 sts at neck edge.
  > 26→24 long: 2 rows Back/body 7 RS knit · WS bind off 2 sts, purl to end (24)
Work even until armhole measures 4 cm.
  > 24 long: 4 rows Back/body 9 RS knit · WS purl · RS knit · WS purl
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3 4 5 7 8
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; 2 stocking 4 mm (length {id 'back/1', open false, mm 20, from armhole}); 4 stocking 4 mm (length {id 'back/2', open false, mm 40, from armhole}); hold

### a raglan by its heading {"gauge": {"stitches": 20, "rows": 28}}
BACK
  > heading
Cast on 20 sts.
  > →20
Work 4 rows in st st.
  > 20 Back/body 1 RS knit · WS purl · RS knit · WS purl
SHAPE RAGLAN
  > heading 20
Dec 1 st at each end every other row 2 times.
  > 20→16 Back/body 5 RS dec, knit to last 2 sts, dec (18) · WS purl · RS dec, knit to last 2 sts, dec (16)
SHAPE ARMHOLES AND NECK
  > heading 16
Work 2 rows.
  > 16 Back/body 8 WS purl · RS knit
Work even until raglan measures 2 cm.
  > 16 long: 3 rows Back/body 10 WS purl · RS knit · WS purl
FRONT
  > heading 16
Work as for back to raglan.
  > 16→20 Front/body 1 RS knit · WS purl · RS knit · WS purl
SLEEVE
  > heading 20
Work as for back to neck.
  > 20→16 Sleeve/body 1 RS knit · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (18) · WS purl · RS dec, knit to last 2 sts, dec (16)
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3 5 7 8
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; 3 'shape raglan' in stocking 4 mm; 2 'shape armholes and neck' in stocking 4 mm; 3 'shape armholes and neck' in stocking 4 mm (length {id 'back/1', open false, mm 20, from armhole}); hold
  > = Front, front, 1 to make, lines 10
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; hold
  > = Sleeve, sleeve, 1 to make, lines 12
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; hold

### shoulders of divided sides, below a heading
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Back/body 1 RS knit · WS purl
SHAPE SHOULDERS
  > heading 30
Next row: k10, turn and leave rem 20 sts on a holder.
  > 30→10 Back/right side 1 RS k10
P 1 row.
  > 10 Back/right side 2 WS purl
Bind off 5 sts at beg of next row.
  > 10→5 Back/right side 3 RS bind off 5 sts, knit to end (5)
Work 1 row.
  > 5 Back/right side 4 WS purl
Bind off.
  > 5→0 Back/right side 5 RS bind off all sts in pattern (0)
Rejoin yarn to rem 20 sts, bo 10, k to end.
  > 20→10 Back/left side 1 RS bind off 10 sts, knit to end (10)
P 1 row.
  > 10 Back/left side 2 WS purl
K 1 row.
  > 10 Back/left side 3 RS knit
Complete to match first side.
  > 10→0 Back/left side 4 WS purl · RS knit · WS bind off 5 sts, purl to end (5) · RS knit · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 5 6 7 8 9 10 11 12 13
  > =   body from {castOn 30}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 10, edge right}, RS: 4 'shape shoulders' in stocking 4 mm; bind off
  > =   left side from {part body, stitches 20, edge left}, RS: 7 'shape shoulders' in stocking 4 mm; bind off

### a rib that rests on the left
BACK
  > heading
Cast on 31 sts.
  > →31
Work 1 row in k3, p2 rib.
  > 31 Back/body 1 RS *k3, p2; repeat from * to last st, k1
Next row: k9, turn and leave rem 22 sts on a holder.
  > 31→9 Back/left side 1 WS k9
Work 1 row.
  > 9 Back/left side 2 RS k1, p2, k3, p2, k1
Bind off.
  > 9→0 Back/left side 3 WS bind off all sts in pattern (0)
Rejoin yarn to next 12 sts.
  > →12
Work 2 rows.
  > 12 Back/middle 1 WS p2, *k2, p3; repeat from * to end · RS *k3, p2; repeat from * to last 2 sts, k2
Bind off.
  > 12→0 Back/middle 3 WS bind off all sts in pattern (0)
Rejoin yarn to rem sts.
  > →10
Work 2 rows.
  > 10 Back/right side 1 WS *k2, p3; repeat from * to end · RS *k3, p2; repeat from * to end
  > = Back, back, 1 to make, lines 3 4 5 6 8 9 11
  > =   body from {castOn 31}, RS: 1 rib in rib 2x2 4 mm; split
  > =   left side from {part body, stitches 9, edge left}, WS: 2 rib in rib 2x2 4 mm; bind off
  > =   middle from {part body, stitches 12, edge middle}, WS: 2 rib in rib 2x2 4 mm; bind off
  > =   right side from {part body, stitches 10, edge right}, WS: 2 rib in rib 2x2 4 mm; hold

### a rib that rests on the right
BACK
  > heading
Cast on 31 sts.
  > →31
Work 2 rows in k3, p2 rib.
  > 31 Back/body 1 RS *k3, p2; repeat from * to last st, k1 · WS p1, *k2, p3; repeat from * to end
Next row: k9, turn and leave rem 22 sts on a holder.
  > 31→9 Back/right side 1 RS k9
Work 1 row.
  > 9 Back/right side 2 WS k1, p3, k2, purl to end
Bind off.
  > 9→0 Back/right side 3 RS bind off all sts in pattern (0)
Place center 12 sts on holder.
  > →0
Rejoin yarn to rem sts.
  > →10
Work 2 rows.
  > 10 Back/left side 1 RS k2, p2, k3, p2, k1 · WS p1, k2, p3, k2, p2
  > = Back, back, 1 to make, lines 3 4 5 6 9
  > =   body from {castOn 31}, RS: 2 rib in rib 2x2 4 mm; split
  > =   right side from {part body, stitches 9, edge right}, RS: 2 rib in rib 2x2 4 mm; bind off
  > =   middle from {part body, stitches 12, edge middle}, RS: hold
  > =   left side from {part body, stitches 10, edge left}, RS: 2 rib in rib 2x2 4 mm; hold

### a rib parted by a gap and by a centre
BACK
  > heading
Cast on 31 sts.
  > →31
Work 2 rows in k3, p2 rib.
  > 31 Back/body 1 RS *k3, p2; repeat from * to last st, k1 · WS p1, *k2, p3; repeat from * to end
Next row: k9, bo 12, k to end.
  > 31→19 Back/body 3 RS k9, bind off 12 sts, knit to end (19)
Work 2 rows.
  > 19→10 Back/left side 1 WS p1, k2, p3, k2, p2 · RS k2, p2, k3, p2, k1
Rejoin yarn to rem sts.
  > 10→9
Work 2 rows.
  > 9 Back/right side 1 WS k1, p3, k2, purl to end · RS k3, p2, k3, p1
FRONT
  > heading 9
Cast on 31 sts.
  > 9→31
Work 2 rows in k3, p2 rib.
  > 31 Front/body 1 RS *k3, p2; repeat from * to last st, k1 · WS p1, *k2, p3; repeat from * to end
Place center 11 sts on holder.
  > 31→10
Work 2 rows.
  > 10 Front/right side 1 RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end
Rejoin yarn to rem sts.
  > 10
Work 2 rows.
  > 10 Front/left side 1 RS k2, p2, k3, p2, k1 · WS p1, k2, p3, k2, p2
  > = Back, back, 1 to make, lines 3 4 5 7
  > =   body from {castOn 31}, RS: 3 rib in rib 2x2 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 2 rib in rib 2x2 4 mm; hold
  > =   right side from {part body, stitches 9, edge right}, WS: 2 rib in rib 2x2 4 mm; hold
  > = Front, front, 1 to make, lines 10 12 14
  > =   body from {castOn 31}, RS: 2 rib in rib 2x2 4 mm; split
  > =   right side from {part body, stitches 10, edge right}, RS: 2 rib in rib 2x2 4 mm; hold
  > =   middle from {part body, stitches 11, edge middle}, RS: hold
  > =   left side from {part body, stitches 10, edge left}, RS: 2 rib in rib 2x2 4 mm; hold

### a shaping beside that waits {"gauge": {"stitches": 20, "rows": 28}}
LEFT FRONT
  > heading
Cast on 30 sts.
  > →30
Work 12 rows in st st, at the same time, when piece measures 2 cm, dec 1 st at neck edge every 4th row 2 times.
  > 30→29 Left front/body 1 RS knit · [WS purl · RS knit] ×3 · WS purl · RS knit to last 2 sts, dec (29) · WS purl · RS knit · WS purl
Work 4 rows.
  > 29→28 Left front/body 13 RS knit to last 2 sts, dec (28) · WS purl · RS knit · WS purl
Work 6 rows, at the same time, after 4 rows, dec 1 st at neck edge every other row 2 times.
  > 28→26 Left front/body 17 RS knit to last 2 sts, dec (27) · WS purl · RS knit to last 2 sts, dec (26) · WS purl · RS knit · WS purl
Work 4 rows, at the same time dec 1 st at armhole edge of next row, then every 4th row 2 times.
  > 26→25 Left front/body 23 RS dec, knit to end (25) · WS purl · RS knit · WS purl
Work 8 rows.
  > 25→23 Left front/body 27 RS dec, knit to end (24) · WS purl · RS knit · WS purl · RS dec, knit to end (23) · WS purl · RS knit · WS purl
  > = gauge stitches 20, rows 28
  > = Left front, left front, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 30}, RS: 34 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
