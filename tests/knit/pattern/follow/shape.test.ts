import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('shape, followed row by row,', () => {
  it.each(
    annotatedIn(`
### at each edge, right and wrong side
LEFT FRONT
  > heading
Cast on 30 sts.
  > →30
Dec 1 st at each end of next 2 rows.
  > 30→26 Left front/body 1 RS dec, knit to last 2 sts, dec (28) · WS dec, purl to last 2 sts, dec (26)
Dec 1 st at neck edge of next 2 rows.
  > 26→24 Left front/body 3 RS knit to last 2 sts, dec (25) · WS dec, purl to end (24)
Dec 1 st at armhole edge of next 2 rows.
  > 24→22 Left front/body 5 RS dec, knit to end (23) · WS purl to last 2 sts, dec (22)
Dec 1 st at beg of next 2 rows.
  > 22→20 Left front/body 7 RS dec, knit to end (21) · WS dec, purl to end (20)
Dec 1 st at end of next 2 rows.
  > 20→18 Left front/body 9 RS knit to last 2 sts, dec (19) · WS purl to last 2 sts, dec (18)
Dec 1 st at same edge of next 2 rows.
  > 18→16 Left front/body 11 RS knit to last 2 sts, dec (17) · WS dec, purl to end (16)
Dec 1 st at right edge of next row.
  > 16→15 Left front/body 13 RS dec, knit to end (15)
Dec 1 st at same edge of next 2 rows.
  > 15→13 Left front/body 14 WS purl to last 2 sts, dec (14) · RS dec, knit to end (13)
Dec 1 st at left edge of next row.
  > 13→12 Left front/body 16 WS dec, purl to end (12)
Inc 1 st at each end of next row.
  > 12→14 Left front/body 17 RS inc, knit to last st, inc (14)
Inc 2 sts at neck edge of next row.
  > 14→16 Left front/body 18 WS inc 2 in next st, purl to end (16)
Dec 2 sts at neck edge of next row.
  > 16→14 Left front/body 19 RS knit to last 3 sts, dec 2 at once (14)
Dec 3 sts at neck edge of next row.
  > 14→11 Left front/body 20 WS [dec] 3 times, purl to end (11)
Inc 3 sts at each end of next row.
  > 11→17 Left front/body 21 RS [inc] 3 times, k5, [inc] 3 times (17)
  > = Left front, left front, 1 to make, lines 3 4 5 6 7 8 9 10 11 12 13 14 15 16
  > =   body from {castOn 30}, RS: 21 stocking 4 mm; hold

### at the edges of a right front
RIGHT FRONT
  > heading
Cast on 30 sts.
  > →30
Dec 1 st at neck edge of next 2 rows.
  > 30→28 Right front/body 1 RS dec, knit to end (29) · WS purl to last 2 sts, dec (28)
Dec 1 st at armhole edge of next 2 rows.
  > 28→26 Right front/body 3 RS knit to last 2 sts, dec (27) · WS dec, purl to end (26)
Inc 1 st at same edge of next row.
  > 26→27 Right front/body 5 RS knit to last st, inc (27)
  > = Right front, right front, 1 to make, lines 3 4 5
  > =   body from {castOn 30}, RS: 5 stocking 4 mm; hold

### in each rhythm
Cast on 60 sts.
  > →60
Dec 1 st at each end every 4th row 3 times.
  > 60→54 Piece/body 1 RS knit · WS purl · RS dec, knit to last 2 sts, dec (58) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (56) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (54)
Dec 1 st at each end every other row 2 times.
  > 54→50 Piece/body 12 WS purl · RS dec, knit to last 2 sts, dec (52) · WS purl · RS dec, knit to last 2 sts, dec (50)
Dec 1 st at each end every 3rd row 2 times.
  > 50→46 Piece/body 16 WS purl · RS knit · WS dec, purl to last 2 sts, dec (48) · RS knit · WS purl · RS dec, knit to last 2 sts, dec (46)
Dec 1 st at each end every row 2 times.
  > 46→42 Piece/body 22 WS dec, purl to last 2 sts, dec (44) · RS dec, knit to last 2 sts, dec (42)
Dec 1 st at each end of next and every 4th row 3 times.
  > 42→36 Piece/body 24 WS dec, purl to last 2 sts, dec (40) · RS knit · WS purl · RS knit · WS dec, purl to last 2 sts, dec (38) · RS knit · WS purl · RS knit · WS dec, purl to last 2 sts, dec (36)
Dec 1 st at each end every WS row 2 times.
  > 36→32 Piece/body 33 RS knit · WS dec, purl to last 2 sts, dec (34) · RS knit · WS dec, purl to last 2 sts, dec (32)
Dec 1 st at each end every RS row 2 times, then every WS row once.
  > 32→26 Piece/body 37 RS dec, knit to last 2 sts, dec (30) · WS purl · RS dec, knit to last 2 sts, dec (28) · WS dec, purl to last 2 sts, dec (26)
Dec 1 st at each end every 4th and 2nd row 4 times.
  > 26→18 Piece/body 41 RS knit · WS purl · RS dec, knit to last 2 sts, dec (24) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (22) · WS purl · RS dec, knit to last 2 sts, dec (20) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (18)
Dec 1 st at each end of foll 4th row.
  > 18→16 Piece/body 54 WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (16)
Dec 1 st at each end.
  > 16→14 Piece/body 58 WS dec, purl to last 2 sts, dec (14)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9 10 11
  > =   body from {castOn 60}, RS: 58 stocking 4 mm; hold

### to a count
Cast on 30 sts.
  > →30
Dec 1 st at each end every other row to 24 sts.
  > 30→24 Piece/body 1 RS dec, knit to last 2 sts, dec (28) · WS purl · RS dec, knit to last 2 sts, dec (26) · WS purl · RS dec, knit to last 2 sts, dec (24)
Dec 1 st at each end every row until 21 sts remain.
  > 24→22 Piece/body 6 WS dec, purl to last 2 sts, dec (22)
  > ✗ count contradicts @3:1 statedStitches 21, foundStitches 22
Inc 1 st at each end every row until there are 26 sts.
  > 22→26 Piece/body 7 RS inc, knit to last st, inc (24) · WS inc, purl to last st, inc (26)
Dec 1 st at each end every other row. (18 sts)
  > 26→18 says 18 Piece/body 9 RS dec, knit to last 2 sts, dec (24) · WS purl · RS dec, knit to last 2 sts, dec (22) · WS purl · RS dec, knit to last 2 sts, dec (20) · WS purl · RS dec, knit to last 2 sts, dec (18)
Dec 1 st at each end every other row until 18 sts remain.
  > 18
Dec 1 st at neck edge every row 0 times.
  > 18
Dec 1 st at each end every other row 0 times, then every row twice.
  > 18→14 Piece/body 16 WS dec, purl to last 2 sts, dec (16) · RS dec, knit to last 2 sts, dec (14)
Dec 1 st at each end of next row 3 times, until 12 sts remain.
  > 14→8 Piece/body 18 WS dec, purl to last 2 sts, dec (12) · RS dec, knit to last 2 sts, dec (10) · WS dec, p6, dec (8)
  > ✗ count contradicts @9:1 statedStitches 12, foundStitches 8
Dec 1 st at each end every other row until 14 sts remain, then every row until 10 sts remain.
  > 8
  > ✗ count contradicts @10:1 statedStitches 10, foundStitches 8
  > = Piece, other, 1 to make, lines 2 3 4 5 8 9
  > =   body from {castOn 30}, RS: 20 stocking 4 mm; hold

### to a length {"gauge": {"stitches": 20, "rows": 28}}
Cast on 30 sts.
  > →30
Dec 1 st at each end every other row until piece measures 2 cm.
  > 30→24 Piece/body 1 RS dec, knit to last 2 sts, dec (28) · WS purl · RS dec, knit to last 2 sts, dec (26) · WS purl · RS dec, knit to last 2 sts, dec (24) · WS purl
Dec 1 st at each end every other row until armhole measures 4 cm.
  > 24→18 Piece/body 7 RS dec, knit to last 2 sts, dec (22) · WS purl · RS dec, knit to last 2 sts, dec (20) · WS purl · RS dec, knit to last 2 sts, dec (18) · WS purl
Dec 1 st at each end every other row until piece measures 3 cm, then every row 2 times.
  > 18→12 Piece/body 13 RS dec, knit to last 2 sts, dec (16) · WS dec, purl to last 2 sts, dec (14) · RS dec, knit to last 2 sts, dec (12)
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 30}, RS: 15 stocking 4 mm; hold

### on all stitches there are
Cast on 5 sts.
  > →5
Dec 1 st at each end of next 10 rows.
  > 5→3 Piece/body 1 RS dec, k1, dec (3)
  > ✗ not enough stitches @2:1 needStitches 4, haveStitches 3
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 5}, RS: 1 stocking 4 mm; hold

### under the fabrics
Cast on 12 sts.
  > →12
Work 1 row in k1, p1 rib.
  > 12 Piece/body 1 RS *k1, p1; repeat from * to end
Dec 1 st at each end of next 2 rows.
  > 12→8 Piece/body 2 WS dec, *k1, p1; repeat from * to last 2 sts, dec (10) · RS dec, *p1, k1; repeat from * to last 2 sts, dec (8)
Work 1 row in moss st.
  > 8 Piece/body 4 WS *p1, k1; repeat from * to end
Dec 1 st at right edge of next row.
  > 8→7 Piece/body 5 RS dec, *k1, p1; repeat from * to end (7)
Work 2 rows in k3, p1 rib.
  > 7 Piece/body 6 WS p3, k1, purl to end · RS k3, p1, knit to end
Inc 1 st at each end of next 2 rows.
  > 7→11 Piece/body 8 WS inc, p2, k1, p2, inc (9) · RS inc, k3, p1, k3, inc (11)
Work 1 row.
  > 11 Piece/body 10 WS p1, *k1, p3; repeat from * to last 2 sts, k1, p1
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8
  > =   body from {castOn 12}, RS: 3 rib in rib 1x1 4 mm; 2 moss 4 mm; 5 rib in rib 2x2 4 mm; hold

### the spelled rows of a pattern
Cast on 11 sts.
  > →11
Row 1: *k1, p1; rep from * to last st, k1.
  > 11 Piece/body 1 RS *k1, p1; repeat from * to last st, k1
Row 2: *p1, k1; rep from * to last st, p1.
  > 11 Piece/body 2 WS *p1, k1; repeat from * to last st, p1
Rep rows 1 and 2 once.
  > 11 Piece/body 3 RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1
Dec 1 st at each end of next 2 rows.
  > 11→7 Piece/body 5 RS dec, *k1, p1; repeat from * to last 3 sts, k1, dec (9) · WS dec, *k1, p1; repeat from * to last 3 sts, k1, dec (7)
Work 2 rows in pattern.
  > 7 Piece/body 7 RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1
Inc 1 st at each end of next 3 rows.
  > 7→13 Piece/body 9 RS inc, *p1, k1; repeat from * to last 2 sts, p1, inc (9) · WS inc, *p1, k1; repeat from * to last 2 sts, p1, inc (11) · RS inc, *p1, k1; repeat from * to last 2 sts, p1, inc (13)
Work 1 row.
  > 13 Piece/body 12 WS *p1, k1; repeat from * to last st, p1
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8
  > =   body from {castOn 11}, RS: 4 rib in rib 1x1 matched 4 mm; 8 pattern in stocking 4 mm; hold

### a named row that a shaping stops
Cast on 12 sts.
  > →12
Dec row: k2tog, k to end.
  > 12→11 Piece/body 1 RS k2tog, knit to end (11)
Rep dec row every row until 9 sts remain.
  > 11→9 Piece/body 2 WS k2tog, knit to end (10) · RS k2tog, knit to end (9)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 12}, RS: 3 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
