import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('sets of stitches that rest, followed row by row,', () => {
  it.each(
    annotatedIn(`
### and the counts stated of them
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k10, turn and leave rem 20 sts on a holder. (20 sts)
  > 30→10 says 20 Back/right side 1 RS k10
P 1 row. (20 sts)
  > 10 says 20 Back/right side 2 WS purl
  > ✗ count contradicts @4:10 statedStitches 20, foundStitches 10
K 1 row. (20 sts)
  > 10 says 20 Back/right side 3 RS knit
  > ✗ count contradicts @5:10 statedStitches 20, foundStitches 10
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 30}, RS: split
  > =   right side from {part body, stitches 10, edge right}, RS: 3 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 20, edge left}, RS: hold

### two of them, held together
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k6, bo 6, k6, bo 6, k6.
  > 30→18 Back/body 1 RS k6, bind off 6 sts, k6, bind off 6 sts, k6 (18)
Place 12 sts on holder.
  > 18→6
P 1 row.
  > 6 Back/left side 1 WS purl
Rejoin yarn to 6 sts.
  > 6
P 1 row.
  > 6 Back/right side 1 WS purl
Rejoin yarn to 6 sts.
  > 6
P 1 row.
  > 6 Back/middle 1 WS purl
  > = Back, back, 1 to make, lines 3 5 7 9
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 6, edge left}, WS: 1 stocking 4 mm; hold
  > =   right side from {part body, stitches 6, edge right}, WS: 1 stocking 4 mm; hold
  > =   middle from {part body, stitches 6, edge middle}, WS: 1 stocking 4 mm; hold

### brought together in rib {"gauge": {"stitches": 20, "rows": 28}}
BACK
  > heading
Cast on 21 sts.
  > →21
Work 2 rows in k2, p1 rib.
  > 21 Back/body 1 RS *k2, p1; repeat from * to end · WS *k1, p2; repeat from * to end
Next row: k6, bo 9, k6.
  > 21→12 Back/body 3 RS k6, bind off 9 sts, k6 (12)
Work 1 row in k2, p1 rib.
  > 12→6 Back/left side 1 WS *k1, p2; repeat from * to end
Rejoin yarn to rem sts.
  > 6
Work 1 row.
  > 6 Back/right side 1 WS *k1, p2; repeat from * to end
Next row: k6, co 9, k6.
  > 6→21 Back/joined 1 RS k6, cast on 9 sts, k6 (21)
Work 2 rows.
  > 21 Back/joined 2 WS *k1, p2; repeat from * to end · RS *k2, p1; repeat from * to end
Work even until piece measures 4 cm.
  > 21 long: 5 rows Back/joined 4 WS *k1, p2; repeat from * to end · [RS *k2, p1; repeat from * to end · WS *k1, p2; repeat from * to end] ×2
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3 4 5 7 8 9 10
  > =   body from {castOn 21}, RS: 3 rib in rib 2x2 4 mm; split
  > =   left side from {part body, stitches 6, edge left}, WS: 1 rib in rib 2x2 4 mm; hold
  > =   right side from {part body, stitches 6, edge right}, WS: 1 rib in rib 2x2 4 mm; hold
  > =   joined from {pickUp [{along 'right side', stitches 6, held}; {along 'left side', stitches 6, held}]}, RS: 3 rib in rib 2x2 4 mm; 5 rib in rib 2x2 4 mm (length {id 'back/1', open false, mm 40, from start}); hold

### the second side begun by itself
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Back/body 1 RS knit · WS purl
Next row: k10, turn and leave rem 20 sts on a holder.
  > 30→10 Back/right side 1 RS k10
Dec 1 st at neck edge of next 3 rows.
  > 10→7 Back/right side 2 WS dec, purl to end (9) · RS k7, dec (8) · WS dec, purl to end (7)
Place all sts on holder.
  > 7
Rejoin yarn to rem 20 sts.
  > →20
Complete to match first side.
  > 20→17 Back/left side 1 RS knit · WS purl to last 2 sts, dec (19) · RS dec, knit to end (18) · WS purl to last 2 sts, dec (17)
  > = Back, back, 1 to make, lines 3 4 5 8
  > =   body from {castOn 30}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 10, edge right}, RS: 4 stocking 4 mm; hold
  > =   left side from {part body, stitches 20, edge left}, RS: 4 stocking 4 mm; hold

### the second side, some rows of it worked
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Back/body 1 RS knit · WS purl
Next row: k10, bo 10, k to end.
  > 30→20 Back/body 3 RS k10, bind off 10 sts, knit to end (20)
P 1 row.
  > 20→10 Back/left side 1 WS purl
Dec 1 st at neck edge of next 3 rows.
  > 10→7 Back/left side 2 RS dec, knit to end (9) · WS p7, dec (8) · RS dec, knit to end (7)
Work 2 rows.
  > 7 Back/left side 5 WS purl · RS knit
Bind off.
  > 7→0 Back/left side 7 WS bind off all sts in pattern (0)
Rejoin yarn to rem 10 sts.
  > →10
P 1 row.
  > 10 Back/right side 1 WS purl
K 1 row.
  > 10 Back/right side 2 RS knit
Complete to match first side.
  > 10→0 Back/right side 3 WS purl · RS knit to last 2 sts, dec (9) · WS dec, purl to end (8) · RS k6, dec (7) · WS purl · RS knit · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 10 11 12
  > =   body from {castOn 30}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 6 stocking 4 mm; bind off
  > =   right side from {part body, stitches 10, edge right}, WS: 8 stocking 4 mm; bind off

### both sides of a left front
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Left front/body 1 RS knit · WS purl
Next row: k10, turn and leave rem 10 sts on a holder.
  > 20→10 Left front/right side 1 RS k10
Dec 1 st at neck edge of next 2 rows.
  > 10→8 Left front/right side 2 WS dec, purl to end (9) · RS k7, dec (8)
Working both sides at once, work 2 rows.
  > 8 Left front/right side 4 WS purl · RS knit
Bind off.
  > 8→0 Left front/right side 6 WS bind off all sts in pattern (0) · Left front/left side 1 WS purl · RS dec, knit to end (9) · WS p7, dec (8) · RS knit · WS purl · RS bind off all sts in pattern (0)
RIGHT FRONT
  > heading
Work as for left front.
  > →0 Right front/body 1 RS knit · WS purl · Right front/right side 1 RS k10 · WS dec, purl to end (9) · RS k7, dec (8) · WS purl · RS knit · WS bind off all sts in pattern (0) · Right front/left side 1 WS purl · RS dec, knit to end (9) · WS p7, dec (8) · RS knit · WS purl · RS bind off all sts in pattern (0)
  > = Left front, left front, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 10, edge right}, RS: 5 stocking 4 mm; bind off
  > =   left side from {part body, stitches 10, edge left}, WS: 5 stocking 4 mm; bind off
  > = Right front, right front, 1 to make, lines 9
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 10, edge right}, RS: 5 stocking 4 mm; bind off
  > =   left side from {part body, stitches 10, edge left}, WS: 5 stocking 4 mm; bind off

### a second band, measured from where it was picked up {"gauge": {"stitches": 20, "rows": 28}}
BACK
  > heading
Cast on 20 sts.
  > →20
Work 4 rows in st st.
  > 20 Back/body 1 RS knit · WS purl · RS knit · WS purl
Place marker at each end.
  > talk 20
Work 4 rows.
  > 20 Back/body 5 RS knit · WS purl · RS knit · WS purl
Pick up 10 sts along neck.
  > 20→10
Work in st st until piece measures 2 cm from pick-up row.
  > 10 long: 5 rows Back/band 1 WS purl · [RS knit · WS purl] ×2
Bind off.
  > 10→0 Back/band 6 RS bind off all sts in pattern (0)
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3 5 7 8
  > =   body from {castOn 20}, RS: 8 stocking 4 mm; hold
  > =   band from {pickUp [{stitches 10, along neck}]}, WS: 5 stocking 4 mm (length {id 'back/1', open false, mm 20, from marker}); bind off

### less than another piece {"gauge": {"stitches": 20, "rows": 28}}
BACK
  > heading
Cast on 8 sts.
  > →8
Work 20 rows in st st.
  > 8 Back/body 1 RS knit · [WS purl · RS knit] ×9 · WS purl
FRONT
  > heading 8
Cast on 8 sts.
  > 8
Work in st st until piece measures 2 cm less than back.
  > 8 Front/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl
K 1 row.
  > 8 Front/body 15 RS knit
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 8}, RS: 20 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 6 7
  > =   body from {castOn 8}, RS: 15 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
