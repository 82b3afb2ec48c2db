import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what one saying does to the next, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a length of two rows, so that a right-side row comes next {"gauge": {"stitches": 20, "rows": 20}}
Cast on 20 sts.
  > →20
Knit 1 row.
  > 20 Piece/body 1 RS knit
Work in st st for 1 cm.
  > 20 long: 3 rows Piece/body 2 WS purl · RS knit · WS purl
  > = gauge stitches 20, rows 20
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; 3 stocking 4 mm (length {id 'piece/1', open false, mm 10, from here}); hold


### groups at the neck beside those at the armhole
LEFT FRONT
  > heading
Cast on 40 sts.
  > →40
Work 4 rows in st st.
  > 40 Left front/body 1 RS knit · WS purl · RS knit · WS purl
Bind off 4 sts at beg of next row, then dec 1 st at armhole edge every other row 3 times. At the same time, bind off 5 sts at neck edge on next row, then dec 1 st at neck edge every 4th row twice.
  > 40→27 Left front/body 5 RS bind off 4 sts, knit to end (36) · WS bind off 5 sts, purl to end (31) · RS dec, knit to end (30) · WS purl · RS dec, knit to last 2 sts, dec (28) · WS purl · RS dec, knit to end (27)
Work until armhole measures 10 rows.
  > 27→26 Left front/body 12 WS purl · RS knit to last 2 sts, dec (26) · WS purl
Bind off all sts.
  > 26→0 Left front/body 15 RS bind off all sts in pattern (0)
  > = Left front, left front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 40}, RS: 14 stocking 4 mm; bind off


### an armhole that begins beside a shaping
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 4 rows in st st.
  > 20 Left front/body 1 RS knit · WS purl · RS knit · WS purl
Dec 1 st at neck edge every other row 3 times. At the same time, bind off 4 sts at armhole edge on next RS row, then 2 sts every other row twice.
  > 20→9 Left front/body 5 RS bind off 4 sts, knit to last 2 sts, dec (15) · WS purl · RS bind off 2 sts, knit to last 2 sts, dec (12) · WS purl · RS bind off 2 sts, knit to last 2 sts, dec (9)
Work until armhole measures 12 rows.
  > 9 Left front/body 10 WS purl · [RS knit · WS purl] ×3
Bind off.
  > 9→0 Left front/body 17 RS bind off all sts in pattern (0)
  > = Left front, left front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 16 stocking 4 mm; bind off


### what is cast on beside a shaping begins no armhole
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 4 rows in st st.
  > 20 Left front/body 1 RS knit · WS purl · RS knit · WS purl
Dec 1 st at neck edge every other row 3 times. At the same time, cast on 4 sts at armhole edge on next RS row.
  > 20→21 Left front/body 5 RS knit to last 2 sts, dec (19) · WS purl · RS knit to last 2 sts, dec (18) · WS purl · RS knit to last 2 sts, dec (17) · WS purl · RS cast on 4 sts, knit to end (21)
Bind off 3 sts at armhole edge on next row.
  > 21→18 Left front/body 12 WS purl · RS bind off 3 sts, knit to end (18)
Work until armhole measures 6 rows.
  > 18 Left front/body 14 WS purl · RS knit · WS purl · RS knit
  > = Left front, left front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 17 stocking 4 mm; hold


### a row back, and then the neck: the turn has parted the stitches
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Back/body 1 RS knit · WS purl
Next row: K10, turn.
  > 30→10 Back/right side 1 RS k10
Next row: P to end.
  > 10 Back/right side 2 WS purl
Dec 1 st at neck edge every row twice.
  > 10→8 Back/right side 3 RS knit to last 2 sts, dec (9) · WS dec, purl to end (8)
Bind off.
  > 8→0 Back/right side 5 RS bind off all sts in pattern (0)
Rejoin yarn to rem sts and bind off.
  > 20→0 Back/left side 1 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 30}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 10, edge right}, RS: 4 stocking 4 mm; bind off
  > =   left side from {part body, stitches 20, edge left}, RS: bind off


### a row back, and then another edge: the turn was a short row's
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Back/body 1 RS knit · WS purl
Next row: K10, turn.
  > 30 Back/body 3 RS k10, turn
Next row: P to end.
  > 30 Back/body 4 WS leave 20 sts unworked, purl to end
Dec 1 st at armhole edge every row twice.
  > 30→28 Back/body 5 RS dec, knit to end (29) · WS purl to last 2 sts, dec (28)
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 30}, RS: 6 stocking 4 mm; hold


### shapings that are lengths apart, until a count
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Dec 1 st at each end of next row, then every 3 cm until 12 sts rem.
  > 20→12 as long as she likes: 3 rows as long as she likes: 3 rows as long as she likes: 3 rows Piece/body 3 RS dec, knit to last 2 sts, dec (18) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (16) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (14) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (12)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; 3 stocking 4 mm (length {id 'piece/1', open, mm 30, from here}); 1 stocking 4 mm; 3 stocking 4 mm (length {id 'piece/2', open, mm 30, from here}); 1 stocking 4 mm; 3 stocking 4 mm (length {id 'piece/3', open, mm 30, from here}); 1 stocking 4 mm; hold


### stripes end where a yarn is named, on the sides that are parted as well
BACK
  > heading
With A, cast on 10 sts.
  > →10
Work in stripes of 2 rows A, 2 rows B.
  > 10
Work 5 rows in st st.
  > 10 Back/body 1 RS knit · [WS purl · RS knit] ×2
With C, work 2 rows.
  > 10 Back/body 6 WS purl · RS knit
Next row: k4, turn.
  > 10→4 Back/left side 1 WS k4
Work 2 rows on these 4 sts.
  > 4 Back/left side 2 RS knit · WS purl
Bind off.
  > 4→0 Back/left side 4 RS bind off all sts in pattern (0)
Rejoin yarn to rem sts and bind off.
  > 6→0 Back/right side 1 WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 4 5 6 7 8 9
  > =   body from {castOn 10}, RS: 2 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 1 'stocking, A' in stocking 4 mm; 2 'stocking, C' in stocking 4 mm; split
  > =   left side from {part body, stitches 4, edge left}, WS: 3 'stocking, C' in stocking 4 mm; bind off
  > =   right side from {part body, stitches 6, edge right}, WS: bind off


### stitches of which nothing more is said wait
FRONT
  > heading
Cast on 30 sts.
  > →30
Work 4 rows in st st.
  > 30 Front/body 1 RS knit · WS purl · RS knit · WS purl
Next row: K10, turn, place rem sts on a holder.
  > 30→10 Front/right side 1 RS k10
  > ✗ stitches wait @4:1 stitches 20
Dec 1 st at neck edge every row 3 times.
  > 10→7 Front/right side 2 WS dec, purl to end (9) · RS k7, dec (8) · WS dec, purl to end (7)
Work 2 rows.
  > 7 Front/right side 5 RS knit · WS purl
Bind off.
  > 7→0 Front/right side 7 RS bind off all sts in pattern (0)
BACK
  > heading →0
Cast on 30 sts.
  > →30
Work 4 rows in st st.
  > 30 Back/body 1 RS knit · WS purl · RS knit · WS purl
Bind off.
  > 30→0 Back/body 5 RS bind off all sts in pattern (0)
  > = Front, front, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 30}, RS: 4 stocking 4 mm; split
  > =   right side from {part body, stitches 10, edge right}, RS: 6 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 20, edge left}, RS: hold
  > = Back, back, 1 to make, lines 10 11
  > =   body from {castOn 30}, RS: 4 stocking 4 mm; bind off


### rows from the middle of a repeat, until she has her length
Cast on 13 sts.
  > →13
Row 1 (RS): K1, *p1, k1; rep from * to end.
  > 13 Piece/body 1 RS k1, *p1, k1; repeat from * to end
Row 2: Purl.
  > 13 Piece/body 2 WS purl
Row 3: P1, *k1, p1; rep from * to end.
  > 13 Piece/body 3 RS p1, *k1, p1; repeat from * to end
Row 4: Purl.
  > 13 Piece/body 4 WS purl
Rep these 4 rows until piece measures 3 cm, ending with row 2.
  > 13 as long as she likes: 2 rows Piece/body 5 RS k1, *p1, k1; repeat from * to end · WS purl
Next row: K.
  > 13 Piece/body 7 RS knit
Rep rows 1 to 4 twice.
  > 13 Piece/body 8 WS k1, *p1, k1; repeat from * to end · RS purl · WS p1, *k1, p1; repeat from * to end · RS purl · WS k1, *p1, k1; repeat from * to end · RS purl · WS p1, *k1, p1; repeat from * to end · RS purl
Bind off in patt.
  > 13→0 Piece/body 16 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9
  > =   body from {castOn 13}, RS: 1 rib in rib 1x1 matched 4 mm; 1 stocking 4 mm; 1 rib in rib 1x1 matched 4 mm; 1 stocking 4 mm; 2 stocking 4 mm (length {id 'piece/1', open, mm 30, from start}); 1 pattern in stocking 4 mm; 1 rib in rib 1x1 matched 4 mm; 1 pattern in stocking 4 mm; 1 rib in rib 1x1 matched 4 mm; 1 pattern in stocking 4 mm; 1 rib in rib 1x1 matched 4 mm; 1 pattern in stocking 4 mm; 1 rib in rib 1x1 matched 4 mm; 1 pattern in stocking 4 mm; bind off


### the right front of a left one whose rows keep a name
LEFT FRONT
  > heading
Cast on 10 sts.
  > →10
Knit 2 rows.
  > 10 Left front/body 1 RS knit · WS knit
Dec row (RS): k2tog, k to end.
  > 10→9 Left front/body 3 RS k2tog, knit to end (9)
Knit 1 row.
  > 9 Left front/body 4 WS knit
Rep last 2 rows 3 times more.
  > 9→6 Left front/body 5 RS k2tog, knit to end (8) · WS knit · RS k2tog, knit to end (7) · WS knit · RS k2tog, knit to end (6) · WS knit
Rep dec row every 4th row twice.
  > 6→4 Left front/body 11 RS knit · WS purl · RS k2tog, knit to end (5) · WS purl · RS knit · WS purl · RS k2tog, knit to end (4)
Bind off.
  > 4→0 Left front/body 18 WS bind off all sts in pattern (0)
RIGHT FRONT
  > heading
Work as for left front, reversing shaping.
  > →0 Right front/body 1 RS knit · WS knit · RS knit to last 2 sts, ssk (9) · WS knit · RS k7, ssk (8) · WS knit · RS k6, ssk (7) · WS knit · RS k5, ssk (6) · WS knit · RS knit · WS purl · RS k4, ssk (5) · WS purl · RS knit · WS purl · RS k3, ssk (4) · WS bind off all sts in pattern (0)
  > = Left front, left front, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 10}, RS: 10 garter 4 mm; 2 stocking 4 mm; 1 garter 4 mm; 3 stocking 4 mm; 1 garter 4 mm; bind off
  > = Right front, right front, 1 to make, lines 10
  > =   body from {castOn 10}, RS: 10 garter 4 mm; 2 stocking 4 mm; 1 garter 4 mm; 3 stocking 4 mm; 1 garter 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
