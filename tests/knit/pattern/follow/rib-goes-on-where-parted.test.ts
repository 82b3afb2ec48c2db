import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('a rib that is named again where its stitches were parted,', () => {
  it.each(
    annotatedIn(`
### a set in the middle of what rests, in rib
Cast on 45 sts.
  > →45
Work 4 rows in k3, p2 rib.
  > 45 Piece/body 1 RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end · RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end
Next row (RS): Rib 13, turn and work on these 13 sts only.
  > 45→13 Piece/right side 1 RS *k3, p2; repeat from * to last 3 sts, k3
Work 3 rows in rib.
  > 13 Piece/right side 2 WS *p3, k2; repeat from * to last 3 sts, p3 · RS *k3, p2; repeat from * to last 3 sts, k3 · WS *p3, k2; repeat from * to last 3 sts, p3
Bind off.
  > 13→0 Piece/right side 5 RS bind off all sts in pattern (0)
Rejoin yarn to next 11 sts.
  > →11
Work 3 rows in rib.
  > 11 Piece/middle 1 RS *p2, k3; repeat from * to last st, p1 · WS k1, *p3, k2; repeat from * to end · RS *p2, k3; repeat from * to last st, p1
Bind off.
  > 11→0 Piece/middle 4 WS bind off all sts in pattern (0)
Rejoin yarn to rem 21 sts.
  > →21
Work 3 rows in rib.
  > 21 Piece/left side 1 RS p1, *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to last st, k1 · RS p1, *k3, p2; repeat from * to end
Bind off.
  > 21→0 Piece/left side 4 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 7 8 10 11
  > =   body from {castOn 45}, RS: 4 rib in rib 2x2 4 mm; split
  > =   right side from {part body, stitches 13, edge right}, RS: 4 rib in rib 2x2 4 mm; bind off
  > =   middle from {part body, stitches 11, edge middle}, RS: 3 rib in rib 2x2 4 mm; bind off
  > =   left side from {part body, stitches 21, edge left}, RS: 3 rib in rib 2x2 4 mm; bind off

### a set in the middle of what rests at the right, in rib
Cast on 45 sts.
  > →45
Work 3 rows in k3, p2 rib.
  > 45 Piece/body 1 RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end · RS *k3, p2; repeat from * to end
Next row (WS): Rib 13, turn and work on these 13 sts only.
  > 45→13 Piece/left side 1 WS *k2, p3; repeat from * to last 3 sts, k2, p1
Work 3 rows in rib.
  > 13 Piece/left side 2 RS k1, *p2, k3; repeat from * to last 2 sts, p2 · WS *k2, p3; repeat from * to last 3 sts, k2, p1 · RS k1, *p2, k3; repeat from * to last 2 sts, p2
Bind off.
  > 13→0 Piece/left side 5 WS bind off all sts in pattern (0)
Rejoin yarn to next 11 sts.
  > →11
Work 3 rows in rib.
  > 11 Piece/middle 1 WS p2, k2, p3, k2, p2 · RS k2, p2, k3, p2, k2 · WS p2, k2, p3, k2, p2
Bind off.
  > 11→0 Piece/middle 4 RS bind off all sts in pattern (0)
Rejoin yarn to rem 21 sts.
  > →21
Work 3 rows in rib.
  > 21 Piece/right side 1 WS p1, *k2, p3; repeat from * to end · RS *k3, p2; repeat from * to last st, k1 · WS p1, *k2, p3; repeat from * to end
Bind off.
  > 21→0 Piece/right side 4 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 7 8 10 11
  > =   body from {castOn 45}, RS: 3 rib in rib 2x2 4 mm; split
  > =   left side from {part body, stitches 13, edge left}, WS: 4 rib in rib 2x2 4 mm; bind off
  > =   middle from {part body, stitches 11, edge middle}, WS: 3 rib in rib 2x2 4 mm; bind off
  > =   right side from {part body, stitches 21, edge right}, WS: 3 rib in rib 2x2 4 mm; bind off

### a centre that rests beside the side to come
Cast on 45 sts.
  > →45
Work 4 rows in k3, p2 rib.
  > 45 Piece/body 1 RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end · RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end
Next row (RS): Rib 13, turn and work on these 13 sts only.
  > 45→13 Piece/right side 1 RS *k3, p2; repeat from * to last 3 sts, k3
Work 3 rows in rib.
  > 13 Piece/right side 2 WS *p3, k2; repeat from * to last 3 sts, p3 · RS *k3, p2; repeat from * to last 3 sts, k3 · WS *p3, k2; repeat from * to last 3 sts, p3
Bind off.
  > 13→0 Piece/right side 5 RS bind off all sts in pattern (0)
Slip next 11 sts onto a holder.
  > →0
Rejoin yarn to rem 21 sts.
  > →21
Work 3 rows in rib.
  > 21 Piece/left side 1 RS p1, *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to last st, k1 · RS p1, *k3, p2; repeat from * to end
Bind off.
  > 21→0 Piece/left side 4 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 8 9
  > =   body from {castOn 45}, RS: 4 rib in rib 2x2 4 mm; split
  > =   right side from {part body, stitches 13, edge right}, RS: 4 rib in rib 2x2 4 mm; bind off
  > =   middle from {part body, stitches 11, edge middle}, RS: hold
  > =   left side from {part body, stitches 21, edge left}, RS: 3 rib in rib 2x2 4 mm; bind off

### a centre that rests at the right
Cast on 45 sts.
  > →45
Work 3 rows in k3, p2 rib.
  > 45 Piece/body 1 RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end · RS *k3, p2; repeat from * to end
Next row (WS): Rib 13, turn and work on these 13 sts only.
  > 45→13 Piece/left side 1 WS *k2, p3; repeat from * to last 3 sts, k2, p1
Work 3 rows in rib.
  > 13 Piece/left side 2 RS k1, *p2, k3; repeat from * to last 2 sts, p2 · WS *k2, p3; repeat from * to last 3 sts, k2, p1 · RS k1, *p2, k3; repeat from * to last 2 sts, p2
Bind off.
  > 13→0 Piece/left side 5 WS bind off all sts in pattern (0)
Slip next 11 sts onto a holder.
  > →0
Rejoin yarn to rem 21 sts.
  > →21
Work 3 rows in rib.
  > 21 Piece/right side 1 WS p1, *k2, p3; repeat from * to end · RS *k3, p2; repeat from * to last st, k1 · WS p1, *k2, p3; repeat from * to end
Bind off.
  > 21→0 Piece/right side 4 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 8 9
  > =   body from {castOn 45}, RS: 3 rib in rib 2x2 4 mm; split
  > =   left side from {part body, stitches 13, edge left}, WS: 4 rib in rib 2x2 4 mm; bind off
  > =   middle from {part body, stitches 11, edge middle}, WS: hold
  > =   right side from {part body, stitches 21, edge right}, WS: 3 rib in rib 2x2 4 mm; bind off

### continuing in pattern
Cast on 45 sts.
  > →45
Work 4 rows in k3, p2 rib.
  > 45 Piece/body 1 RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end · RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end
Next row (RS): Rib 13, turn and work on these 13 sts only.
  > 45→13 Piece/right side 1 RS *k3, p2; repeat from * to last 3 sts, k3
Cont in patt for 3 rows.
  > 13 Piece/right side 2 WS *p3, k2; repeat from * to last 3 sts, p3 · RS *k3, p2; repeat from * to last 3 sts, k3 · WS *p3, k2; repeat from * to last 3 sts, p3
Bind off.
  > 13→0 Piece/right side 5 RS bind off all sts in pattern (0)
Rejoin yarn to next 11 sts.
  > →11
Cont in patt for 3 rows.
  > 11 Piece/middle 1 RS *p2, k3; repeat from * to last st, p1 · WS k1, *p3, k2; repeat from * to end · RS *p2, k3; repeat from * to last st, p1
Bind off.
  > 11→0 Piece/middle 4 WS bind off all sts in pattern (0)
Rejoin yarn to rem 21 sts.
  > →21
Work 3 rows.
  > 21 Piece/left side 1 RS p1, *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to last st, k1 · RS p1, *k3, p2; repeat from * to end
Bind off.
  > 21→0 Piece/left side 4 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 7 8 10 11
  > =   body from {castOn 45}, RS: 4 rib in rib 2x2 4 mm; split
  > =   right side from {part body, stitches 13, edge right}, RS: 4 rib in rib 2x2 4 mm; bind off
  > =   middle from {part body, stitches 11, edge middle}, RS: 3 rib in rib 2x2 4 mm; bind off
  > =   left side from {part body, stitches 21, edge left}, RS: 3 rib in rib 2x2 4 mm; bind off

### centre bound off, then rib again
Cast on 45 sts.
  > →45
Work 4 rows in k3, p2 rib.
  > 45 Piece/body 1 RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end · RS *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to end
Next row (RS): Rib 13, bind off next 11 sts, rib to end.
  > 45→34 Piece/body 5 RS [k3, p2] 2 times, k3, bind off 11 sts, p1, *k3, p2; repeat from * to end (34)
Work 3 rows in rib.
  > 34→21 Piece/left side 1 WS *k2, p3; repeat from * to last st, k1 · RS p1, *k3, p2; repeat from * to end · WS *k2, p3; repeat from * to last st, k1
Bind off.
  > 21→0 Piece/left side 4 RS bind off all sts in pattern (0)
Rejoin yarn to rem sts.
  > →13
Work 3 rows in rib.
  > 13 Piece/right side 1 WS *p3, k2; repeat from * to last 3 sts, p3 · RS *k3, p2; repeat from * to last 3 sts, k3 · WS *p3, k2; repeat from * to last 3 sts, p3
  > = Piece, other, 1 to make, lines 2 3 4 5 7
  > =   body from {castOn 45}, RS: 5 rib in rib 2x2 4 mm; split
  > =   left side from {part body, stitches 21, edge left}, WS: 3 rib in rib 2x2 4 mm; bind off
  > =   right side from {part body, stitches 13, edge right}, WS: 3 rib in rib 2x2 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
