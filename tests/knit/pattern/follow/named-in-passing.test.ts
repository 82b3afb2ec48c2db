import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('a piece, and stitches that wait, that are named in passing,', () => {
  it.each(
    annotatedIn(`
### a piece that begins in the midst of a line
RIGHT FRONT
  > heading
Cast on 12 sts.
  > →12
Knit 2 rows. Bind off. LEFT FRONT
  > 12→0 Right front/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
Cast on 10 sts.
  > →10
Knit 2 rows.
  > 10 Left front/body 1 RS knit · WS knit
  > = Right front, right front, 1 to make, lines 3
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; bind off
  > = Left front, left front, 1 to make, lines 5
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; hold

### three that wait, taken up by their names
BODY
  > heading
Cast on 60 sts.
  > →60
Work 2 rows in st st.
  > 60 Body/body 1 RS knit · WS purl
Next row (RS): K15, place these sts on a holder for right front, bind off 4 sts, k22, place these sts on a holder for back, bind off 4 sts, k to end.
  > 60→52 Body/body 3 RS k15, bind off 4 sts, k22, bind off 4 sts, knit to end (52)
Work 3 rows.
  > 52→15 Body/left side 1 WS purl · RS knit · WS purl
Bind off.
  > 15→0 Body/left side 4 RS bind off all sts in pattern (0)
Transfer right front sts from holder to needle.
  > →15
Work 3 rows.
  > 15 Body/right side 1 WS purl · RS knit · WS purl
Bind off.
  > 15→0 Body/right side 4 RS bind off all sts in pattern (0)
Transfer back sts from holder to needle.
  > →22
Work 5 rows.
  > 22 Body/middle 1 WS purl · [RS knit · WS purl] ×2
Bind off.
  > 22→0 Body/middle 6 RS bind off all sts in pattern (0)
  > = Body, other, 1 to make, lines 3 4 5 6 8 9 11 12
  > =   body from {castOn 60}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 15, edge left}, WS: 3 stocking 4 mm; bind off
  > =   right side from {part body, stitches 15, edge right}, WS: 3 stocking 4 mm; bind off
  > =   middle from {part body, stitches 22, edge middle}, WS: 5 stocking 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
