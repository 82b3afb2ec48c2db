import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('work on, followed row by row,', () => {
  it.each(
    annotatedIn(`
### the first or the last of them
BACK
  > heading
Cast on 30 sts.
  > →30
K 1 row.
  > 30 Back/body 1 RS knit
Work on first 10 sts.
  > 30→10
P 1 row.
  > 10 Back/left side 1 WS purl
Bind off.
  > 10→0 Back/left side 2 RS bind off all sts in pattern (0)
Work on last 8 sts.
  > →8
P 1 row.
  > 8 Back/right side 2 1 WS purl
Bind off.
  > 8→0 Back/right side 2 2 RS bind off all sts in pattern (0)
Work on 12 sts.
  > →12
K 1 row.
  > 12 Back/left side 2 1 WS knit
  > = Back, back, 1 to make, lines 3 5 6 8 9 11
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 1 stocking 4 mm; bind off
  > =   right side from {part body, stitches 20, edge right}, WS: split
  > =   right side 2 from {part 'right side', stitches 8, edge right}, WS: 1 stocking 4 mm; bind off
  > =   left side 2 from {part 'right side', stitches 12, edge left}, WS: 1 stocking 4 mm; hold

### more than there are
BACK
  > heading
Cast on 30 sts.
  > →30
Work on 40 sts.
  > 30
  > ✗ count contradicts @3:1 statedStitches 40, foundStitches 30
Work on these sts.
  > 30
Work on 30 sts.
  > 30
K 1 row.
  > 30 Back/body 1 RS knit
  > = Back, back, 1 to make, lines 6
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; hold

### after a gap
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k8, bo 10, k to end.
  > 30→20 Back/body 1 RS k8, bind off 10 sts, knit to end (20)
Work on last 12 sts.
  > 20→12
P 1 row.
  > 12 Back/left side 1 WS purl
Rejoin yarn to rem sts.
  > 12→8
P 1 row.
  > 8 Back/right side 1 WS purl
  > = Back, back, 1 to make, lines 3 5 7
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 12, edge left}, WS: 1 stocking 4 mm; hold
  > =   right side from {part body, stitches 8, edge right}, WS: 1 stocking 4 mm; hold

### the first set after a gap
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k8, bo 10, k to end.
  > 30→20 Back/body 1 RS k8, bind off 10 sts, knit to end (20)
Work on first 9 sts.
  > 20→8
  > ✗ count contradicts @4:1 statedStitches 9, foundStitches 8
P 1 row.
  > 8 Back/right side 1 WS purl
  > = Back, back, 1 to make, lines 3 5
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, WS: 1 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 12, edge left}, WS: hold

### a set by its number
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k8, bo 10, k to end.
  > 30→20 Back/body 1 RS k8, bind off 10 sts, knit to end (20)
Work on 8 sts.
  > 20→8
P 1 row.
  > 8 Back/right side 1 WS purl
  > = Back, back, 1 to make, lines 3 5
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, WS: 1 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 12, edge left}, WS: hold

### both sides at once
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Back/body 1 RS knit · WS purl
Next row: k10, bo 10, k to end.
  > 30→20 Back/body 3 RS k10, bind off 10 sts, knit to end (20)
Working both sides at once, dec 1 st at neck edge every row 2 times.
  > 20→8 Back/left side 1 WS purl to last 2 sts, dec (9) · RS dec, knit to end (8)
Bind off.
  > 8→0 Back/left side 3 WS bind off all sts in pattern (0) · Back/right side 1 RS knit to last 2 sts, dec (9) · WS dec, purl to end (8) · RS bind off all sts in pattern (0)
FRONT
  > heading
Cast on 8 sts.
  > →8
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 30}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 2 stocking 4 mm; bind off
  > =   right side from {part body, stitches 10, edge right}, RS: 2 stocking 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
