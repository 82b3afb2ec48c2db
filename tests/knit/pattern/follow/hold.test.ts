import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('hold, followed row by row,', () => {
  it.each(
    annotatedIn(`
### all stitches
BACK
  > heading
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Back/body 1 RS knit
Place all sts on holder.
  > 20
K 1 row.
  > →20
  > ✗ nothing on the needle @5:1
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; hold

### another number than there is
BACK
  > heading
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Back/body 1 RS knit
Place 24 sts on holder.
  > 20
  > ✗ count contradicts @4:1 statedStitches 24, foundStitches 20
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; hold

### the rest after a turn
BACK
  > heading
Cast on 20 sts.
  > →20
Next row: k8, turn.
  > 20→8 Back/right side 1 RS k8
Place rem 12 sts on holder.
  > 8
P 1 row.
  > 8 Back/right side 2 WS purl
Bind off.
  > 8→0 Back/right side 3 RS bind off all sts in pattern (0)
Rejoin yarn to rem 12 sts.
  > →12
K 1 row.
  > 12 Back/left side 1 RS knit
  > = Back, back, 1 to make, lines 3 5 6 8
  > =   body from {castOn 20}, RS: split
  > =   right side from {part body, stitches 8, edge right}, RS: 2 stocking 4 mm; bind off
  > =   left side from {part body, stitches 12, edge left}, RS: 1 stocking 4 mm; hold

### first and last stitches, and the centre
BACK
  > heading
Cast on 30 sts.
  > →30
K 1 row.
  > 30 Back/body 1 RS knit
Place first 8 sts on holder.
  > 30→22
K 2 rows.
  > 22 Back/right side 1 WS knit · RS knit
Place last 4 sts on holder.
  > 22→18
K 2 rows.
  > 18 Back/left side 1 WS knit · RS knit
Place center 6 sts on holder.
  > 18→6
  > ✗ stitches wait @8:1 stitches 6
K 2 rows.
  > 6 Back/left side 2 1 WS knit · RS knit
  > = Back, back, 1 to make, lines 3 5 7 9
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; split
  > =   right side from {part body, stitches 22, edge right}, WS: 2 stocking 4 mm; split
  > =   left side from {part 'right side', stitches 18, edge left}, WS: 2 stocking 4 mm; split
  > =   left side 2 from {part 'left side', stitches 6, edge left}, WS: 2 stocking 4 mm; hold
  > =   middle from {part 'left side', stitches 6, edge middle}, WS: hold
  > =   resting 1 from {part 'left side', stitches 6, edge right}, WS: hold
  > =   resting 2 from {part 'right side', stitches 4, edge right}, WS: hold
  > =   resting 3 from {part body, stitches 8, edge left}, WS: hold

### a centre that lies in no middle
BACK
  > heading
Cast on 21 sts.
  > →21
K 1 row.
  > 21 Back/body 1 RS knit
Place center 6 sts on holder.
  > 21
  > ✗ centre not in the middle @4:1 stitches 21, centreStitches 6
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 21}, RS: 1 stocking 4 mm; hold

### some of those that rest
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
Place center 10 sts on holder.
  > →0
Rejoin yarn to rem sts.
  > →10
K 1 row.
  > 10 Back/left side 1 RS knit
  > = Back, back, 1 to make, lines 3 4 5 8
  > =   body from {castOn 30}, RS: split
  > =   right side from {part body, stitches 10, edge right}, RS: 2 stocking 4 mm; bind off
  > =   middle from {part body, stitches 10, edge middle}, RS: hold
  > =   left side from {part body, stitches 10, edge left}, RS: 1 stocking 4 mm; hold

### more than rests
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
Place center 20 sts on holder.
  > →0
K 2 rows.
  > →20 Back/left side 1 RS knit · WS knit
  > = Back, back, 1 to make, lines 3 4 5 7
  > =   body from {castOn 30}, RS: split
  > =   right side from {part body, stitches 10, edge right}, RS: 2 stocking 4 mm; bind off
  > =   left side from {part body, stitches 20, edge left}, RS: 2 stocking 4 mm; hold

### after a gap
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k10, bo 10, k to end.
  > 30→20 Back/body 1 RS k10, bind off 10 sts, knit to end (20)
Place 10 sts on holder.
  > 20→10
P 1 row.
  > 10 Back/left side 1 WS purl
Place first 4 sts on holder.
  > 10
  > ✗ count contradicts @6:1 statedStitches 4, foundStitches 10
  > = Back, back, 1 to make, lines 3 5
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 1 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 10, edge right}, WS: hold

### a gap with another number
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k10, bo 10, k to end.
  > 30→20 Back/body 1 RS k10, bind off 10 sts, knit to end (20)
Place 12 sts on holder.
  > 20→10
  > ✗ count contradicts @4:1 statedStitches 12, foundStitches 10
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: hold
  > =   resting 1 from {part body, stitches 10, edge right}, WS: hold

### another number left after the turn
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k10, turn and leave rem 22 sts on a holder.
  > 30→10 Back/right side 1 RS k10
  > ✗ count contradicts @3:1 statedStitches 22, foundStitches 20
P 1 row.
  > 10 Back/right side 2 WS purl
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 30}, RS: split
  > =   right side from {part body, stitches 10, edge right}, RS: 2 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 20, edge left}, RS: hold

### held in the row
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k10, place next 10 sts on holder, k to end.
  > 30→20 Back/body 1 RS k10, place 10 sts on holder, knit to end (20)
P 1 row.
  > 20→10 Back/left side 1 WS purl
Rejoin yarn to rem sts.
  > 10
P 1 row.
  > 10 Back/right side 1 WS purl
  > = Back, back, 1 to make, lines 3 4 6
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 1 stocking 4 mm; hold
  > =   right side from {part body, stitches 10, edge right}, WS: 1 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
