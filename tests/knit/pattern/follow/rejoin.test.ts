import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('rejoin, followed row by row,', () => {
  it.each(
    annotatedIn(`
### to those that rest, whatever their number
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k10, turn and leave rem 20 sts on a holder.
  > 30→10 Back/right side 1 RS k10
P 2 rows.
  > 10 Back/right side 2 WS purl · RS purl
Rejoin yarn to rem 22 sts.
  > 10→20
  > ✗ count contradicts @5:1 statedStitches 22, foundStitches 20
K 1 row.
  > 20 Back/left side 1 RS knit
Rejoin yarn to rem sts.
  > 20
  > ✗ nothing rests @7:1
  > = Back, back, 1 to make, lines 3 4 6
  > =   body from {castOn 30}, RS: split
  > =   right side from {part body, stitches 10, edge right}, RS: 3 stocking 4 mm; hold
  > =   left side from {part body, stitches 20, edge left}, RS: 1 stocking 4 mm; hold

### to some of them
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k10, turn and leave rem 20 sts on a holder.
  > 30→10 Back/right side 1 RS k10
P 1 row.
  > 10 Back/right side 2 WS purl
Bind off.
  > 10→0 Back/right side 3 RS bind off all sts in pattern (0)
Rejoin yarn to next 12 sts.
  > →12
K 2 rows.
  > 12 Back/middle 1 RS knit · WS knit
Rejoin yarn to rem 8 sts.
  > 12→8
K 2 rows.
  > 8 Back/left side 1 RS knit · WS knit
  > = Back, back, 1 to make, lines 3 4 5 7 9
  > =   body from {castOn 30}, RS: split
  > =   right side from {part body, stitches 10, edge right}, RS: 2 stocking 4 mm; bind off
  > =   middle from {part body, stitches 12, edge middle}, RS: 2 stocking 4 mm; hold
  > =   left side from {part body, stitches 8, edge left}, RS: 2 stocking 4 mm; hold

### to some of them on the left side, begun on the wrong side
BACK
  > heading
Cast on 30 sts.
  > →30
P 1 row.
  > 30 Back/body 1 RS purl
Next row: p10, turn and leave rem 20 sts on a holder.
  > 30→10 Back/left side 1 WS p10
K 1 row.
  > 10 Back/left side 2 RS knit
Bind off.
  > 10→0 Back/left side 3 WS bind off all sts in pattern (0)
Rejoin yarn to next 12 sts.
  > →12
P 2 rows.
  > 12 Back/middle 1 WS purl · RS purl
Bind off.
  > 12→0 Back/middle 3 WS bind off all sts in pattern (0)
K 1 row.
  > →8 Back/right side 1 WS knit
  > = Back, back, 1 to make, lines 3 4 5 6 8 9 10
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 2 stocking 4 mm; bind off
  > =   middle from {part body, stitches 12, edge middle}, WS: 2 stocking 4 mm; bind off
  > =   right side from {part body, stitches 8, edge right}, WS: 1 stocking 4 mm; hold

### with the side that faces
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k10, turn and leave rem 20 sts on a holder.
  > 30→10 Back/right side 1 RS k10
P 1 row.
  > 10 Back/right side 2 WS purl
Bind off.
  > 10→0 Back/right side 3 RS bind off all sts in pattern (0)
With WS facing, rejoin yarn to rem sts.
  > →20
P 1 row.
  > 20 Back/left side 1 WS purl
With RS facing, rejoin yarn to rem sts.
  > 20
  > ✗ nothing rests @8:1
  > = Back, back, 1 to make, lines 3 4 5 7
  > =   body from {castOn 30}, RS: split
  > =   right side from {part body, stitches 10, edge right}, RS: 2 stocking 4 mm; bind off
  > =   left side from {part body, stitches 20, edge left}, WS: 1 stocking 4 mm; hold

### to nothing
Rejoin yarn to rem sts.
  > ✗ nothing rests @1:1
BACK
  > heading
Cast on 10 sts.
  > →10
Rejoin yarn to rem sts.
  > 10
K 1 row.
  > 10 Back/body 1 RS knit
Bind off.
  > 10→0 Back/body 2 WS bind off all sts in pattern (0)
Rejoin yarn to rem sts.
  > →0
  > ✗ nothing rests @7:1
  > = Back, back, 1 to make, lines 5 6
  > =   body from {castOn 10}, RS: 1 stocking 4 mm; bind off

### of a gap
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in k1, p1 rib.
  > 30 Back/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Next row: k10, bo 10, k to end.
  > 30→20 Back/body 3 RS k10, bind off 10 sts, knit to end (20)
Join a second ball.
  > 20→10
P 1 row.
  > 10 Back/left side 1 WS purl
Rejoin yarn to 10 sts.
  > 10
Work 1 row in k1, p1 rib.
  > 10 Back/right side 1 WS *k1, p1; repeat from * to end
Work 1 row.
  > 10 Back/right side 2 RS *k1, p1; repeat from * to end
  > = Back, back, 1 to make, lines 3 4 6 8 9
  > =   body from {castOn 30}, RS: 3 rib in rib 1x1 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 1 rib in rib 1x1 4 mm; hold
  > =   right side from {part body, stitches 10, edge right}, WS: 2 rib in rib 1x1 4 mm; hold

### by a row that follows
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k10, turn and leave rem 20 sts on a holder.
  > 30→10 Back/right side 1 RS k10
P 1 row.
  > 10 Back/right side 2 WS purl
Bind off.
  > 10→0 Back/right side 3 RS bind off all sts in pattern (0)
Next row: bo 10, k to end.
  > →10 Back/left side 1 RS bind off 10 sts, knit to end (10)
P 1 row.
  > 10 Back/left side 2 WS purl
Bind off.
  > 10→0 Back/left side 3 RS bind off all sts in pattern (0)
Work 2 rows in st st.
  > →0
  > ✗ nothing on the needle @9:1
  > = Back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 30}, RS: split
  > =   right side from {part body, stitches 10, edge right}, RS: 2 stocking 4 mm; bind off
  > =   left side from {part body, stitches 20, edge left}, RS: 2 stocking 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
