import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('a piece that is worked as one that was parted,', () => {
  it.each(
    annotatedIn(`
### as for a piece that a turn has parted
LEFT FLAP
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in k3, p2 rib.
  > 20 Left flap/body 1 RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end
Next row (RS): Rib 6, turn and work on these 6 sts only.
  > 20→6 Left flap/right side 1 RS k3, p2, k1
Cont in patt for 3 rows.
  > 6 Left flap/right side 2 WS p1, k2, purl to end · RS k3, p2, k1 · WS p1, k2, purl to end
Leave sts on a holder.
  > 6
Rejoin yarn to rem 14 sts.
  > →14
Bind off 8 sts, rib to end.
  > 14→6 Left flap/left side 1 RS bind off 8 sts, p1, k3, p2 (6)
Cont in patt for 3 rows.
  > 6 Left flap/left side 2 WS k1, p3, k2 · RS p2, k3, p1 · WS k1, p3, k2
Bind off.
  > 6→0 Left flap/left side 5 RS bind off all sts in pattern (0)
SECOND FLAP
  > heading
Work as for left flap.
  > →0 Second flap/body 1 RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end · Second flap/right side 1 RS k3, p2, k1 · WS p1, k2, purl to end · RS k3, p2, k1 · WS p1, k2, purl to end · Second flap/left side 1 RS bind off 8 sts, p1, k3, p2 (6) · WS k1, p3, k2 · RS p2, k3, p1 · WS k1, p3, k2 · RS bind off all sts in pattern (0)
  > = Left flap, other, 1 to make, lines 3 4 5 8 9 10
  > =   body from {castOn 20}, RS: 2 rib in rib 2x2 4 mm; split
  > =   right side from {part body, stitches 6, edge right}, RS: 4 rib in rib 2x2 4 mm; hold
  > =   left side from {part body, stitches 14, edge left}, RS: 4 rib in rib 2x2 4 mm; bind off
  > = Second flap, other, 1 to make, lines 12
  > =   body from {castOn 20}, RS: 2 rib in rib 2x2 4 mm; split
  > =   right side from {part body, stitches 6, edge right}, RS: 4 rib in rib 2x2 4 mm; hold
  > =   left side from {part body, stitches 14, edge left}, RS: 4 rib in rib 2x2 4 mm; bind off

### as its mirror image
LEFT FLAP
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Left flap/body 1 RS knit · WS purl
Next row (RS): K6, turn and work on these 6 sts only.
  > 20→6 Left flap/right side 1 RS k6
Dec 1 st at neck edge of next 2 rows.
  > 6→4 Left flap/right side 2 WS dec, purl to end (5) · RS k3, dec (4)
Bind off.
  > 4→0 Left flap/right side 4 WS bind off all sts in pattern (0)
Rejoin yarn to rem 14 sts.
  > →14
Work 3 rows.
  > 14 Left flap/left side 1 RS knit · WS purl · RS knit
Bind off.
  > 14→0 Left flap/left side 4 WS bind off all sts in pattern (0)
RIGHT FLAP
  > heading
Work as for left flap, reversing shaping.
  > →0 Right flap/body 1 RS knit · WS purl · Right flap/right side 1 RS knit · WS purl · RS knit · WS bind off all sts in pattern (0) · Right flap/left side 1 RS knit · WS p4, dec (5) · RS dec, knit to end (4) · WS bind off all sts in pattern (0)
  > = Left flap, other, 1 to make, lines 3 4 5 6 8 9
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 6, edge right}, RS: 3 stocking 4 mm; bind off
  > =   left side from {part body, stitches 14, edge left}, RS: 3 stocking 4 mm; bind off
  > = Right flap, other, 1 to make, lines 11
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 14, edge right}, RS: 3 stocking 4 mm; bind off
  > =   left side from {part body, stitches 6, edge left}, RS: 3 stocking 4 mm; bind off

### with what rests in the middle
LEFT FLAP
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Left flap/body 1 RS knit · WS purl
Place centre 8 sts on a holder.
  > 20→6
Work 2 rows.
  > 6 Left flap/right side 1 RS knit · WS purl
Bind off.
  > 6→0 Left flap/right side 3 RS bind off all sts in pattern (0)
Rejoin yarn to rem sts.
  > →6
Work 4 rows.
  > 6 Left flap/left side 1 RS knit · WS purl · RS knit · WS purl
Bind off.
  > 6→0 Left flap/left side 5 RS bind off all sts in pattern (0)
SECOND FLAP
  > heading
Work as for left flap.
  > →0 Second flap/body 1 RS knit · WS purl · Second flap/right side 1 RS knit · WS purl · RS bind off all sts in pattern (0) · Second flap/left side 1 RS knit · WS purl · RS knit · WS purl · RS bind off all sts in pattern (0)
  > = Left flap, other, 1 to make, lines 3 5 6 8 9
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 6, edge right}, RS: 2 stocking 4 mm; bind off
  > =   middle from {part body, stitches 8, edge middle}, RS: hold
  > =   left side from {part body, stitches 6, edge left}, RS: 4 stocking 4 mm; bind off
  > = Second flap, other, 1 to make, lines 11
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 6, edge right}, RS: 2 stocking 4 mm; bind off
  > =   middle from {part body, stitches 8, edge middle}, RS: hold
  > =   left side from {part body, stitches 6, edge left}, RS: 4 stocking 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
