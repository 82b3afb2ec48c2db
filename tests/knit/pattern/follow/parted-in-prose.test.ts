import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of our own after those that leaflets and pages use: common practice, no published source. Rows and counts are reckoned by hand. */
describe('a neck, an opening and fronts that are parted in prose,', () => {
  it.each(
    annotatedIn(`
### sets of stitches behind a row that parts them
BACK
  > heading
Cast on 40 sts.
  > →40
K 2 rows.
  > 40 Back/body 1 RS knit · WS knit
Work over 16 sts, bind off next 8 sts; on last 16 sts work for 4 rows. Bind off.
  > 40→0 Back/body 3 RS knit to last 24 sts, bind off 8 sts, k16 (32) · Back/left side 1 WS purl · RS knit · WS purl · RS knit · WS bind off all sts in pattern (0)
Join yarn at neck edge and work other side the same.
  > 16→0 Back/right side 1 WS purl · RS knit · WS purl · RS knit · WS bind off all sts in pattern (0)
FRONT
  > heading
Cast on 40 sts.
  > →40
K 2 rows.
  > 40 Front/body 1 RS knit · WS knit
Knit 16, bind off the next 8 sts for the neck and on the remaining 16 sts knit 3 ribs: then knit 2 ribs on the first 16 sts. Bind off.
  > 40→0 Front/body 3 RS knit to last 24 sts, bind off 8 sts, k16 (32) · Front/left side 1 WS knit · [RS knit · WS knit] ×2 · RS knit · Front/right side 1 WS knit · RS knit · WS knit · RS knit · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 16, edge left}, WS: 4 stocking 4 mm; bind off
  > =   right side from {part body, stitches 16, edge right}, WS: 4 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 8 9
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 16, edge left}, WS: 6 garter 4 mm; hold
  > =   right side from {part body, stitches 16, edge right}, WS: 4 garter 4 mm; bind off

### stitches within a row are no sets
BACK
  > heading
Cast on 40 sts.
  > →40
Row 1: k 10, k2tog, k 20, and on the last 8 sts k2, p2, k2, p2.
  > own words 40 asks the count Back/body 1 RS work in pattern 'Row 1: k 10, k2tog, k 20, and on the last 8 sts k2, p2, k2, p2'
  > ✗ stitch or repeat expected @3:31 column 31
Work over 16 sts, bind off next 8 sts.
  > 40 asks the count Back/body 2 WS work in pattern 'Work over 16 sts, bind off next 8 sts'
  > ✗ stitches left over @4:1 leftStitches 16, onNeedleStitches 40
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 40}, RS: 1 stocking 4 mm (own words 1); 1 pattern in stocking 4 mm (own words 1); hold

### the other side, in a sentence of its own
BACK
  > heading
Cast on 40 sts.
  > →40
K 2 rows.
  > 40 Back/body 1 RS knit · WS knit
Next row: K 16, cast off next 8 sts, k to end. Continue on last 16 sts for 2 rows. Cast off.
  > 40→0 Back/body 3 RS k16, bind off 8 sts, knit to end (32) · Back/left side 1 WS purl · RS knit · WS bind off all sts in pattern (0)
Rejoin wool at neck edge to rem 16 sts. Work to correspond.
  > 16→0 Back/right side 1 WS purl · RS knit · WS bind off all sts in pattern (0)
SLEEVE
  > heading
Work to correspond.
  > ✗ nothing rests @7:1
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 16, edge left}, WS: 2 stocking 4 mm; bind off
  > =   right side from {part body, stitches 16, edge right}, WS: 2 stocking 4 mm; bind off

### each side by itself, told once for both
FRONT
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Front/body 1 RS knit · WS purl
Place center 8 sts on a holder.
  > 40→16
Working each side separately, bind off 2 sts at each neck edge once. Work 2 rows. Bind off.
  > 16→0 Front/right side 1 RS knit · WS bind off 2 sts, purl to end (14) · RS knit · WS purl · RS bind off all sts in pattern (0) · Front/left side 1 WS purl · RS bind off 2 sts, knit to end (14) · WS purl · RS knit · WS bind off all sts in pattern (0)
BACK
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Back/body 1 RS knit · WS purl
Next row: Work 16, slip center 8 sts to holder, join another ball of yarn, work to end. Working both sides with separate balls, dec 1 st at each neck edge on next 2 rows. Bind off.
  > 40→0 Back/body 3 RS knit to last 24 sts, place 8 sts on holder, k16 (32) · Back/left side 1 WS purl to last 2 sts, dec (15) · RS dec, knit to end (14) · WS bind off all sts in pattern (0) · Back/right side 1 RS knit to last 2 sts, dec (15) · WS dec, purl to end (14) · RS bind off all sts in pattern (0)
  > = Front, front, 1 to make, lines 3 5
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 16, edge right}, RS: 4 stocking 4 mm; bind off
  > =   middle from {part body, stitches 8, edge middle}, RS: hold
  > =   left side from {part body, stitches 16, edge left}, WS: 4 stocking 4 mm; bind off
  > = Back, back, 1 to make, lines 8 9
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 16, edge left}, WS: 2 stocking 4 mm; bind off
  > =   right side from {part body, stitches 16, edge right}, RS: 2 stocking 4 mm; bind off

### an opening, with its border, and the other half with stitches cast on under it
FRONT
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Front/body 1 RS knit · WS purl
Next row: k across first 16 sts, turn.
  > 40→16 Front/right side 1 RS k16
Work back and forth over these 16 sts, keeping the 4 sts at front opening in garter st (k 4 sts), for 4 rows. Bind off.
  > 16→0 Front/right side 2 WS k4, purl to end · RS knit · WS k4, purl to end · RS knit · WS bind off all sts in pattern (0)
Cast on 4 sts and continue across remaining 24 sts.
  > →28 Front/left side 1 RS cast on 4 sts, knit to end (28)
Bind off.
  > 28→0 Front/left side 2 WS bind off all sts in pattern (0)
  > = Front, front, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 16, edge right}, RS: 5 stocking 4 mm; bind off
  > =   left side from {part body, stitches 24, edge left}, RS: 1 stocking 4 mm; bind off

### stitches cast on for something new, and work across them
BACK
  > heading
Cast on 40 sts and work across in garter st for 2 rows. Bind off.
  > 40→0 Back/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
FRONT
  > heading
Cast on 30 sts and continue in garter st for 2 rows. Bind off.
  > 30→0 Front/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 2
  > =   body from {castOn 40}, RS: 2 garter 4 mm; bind off
  > = Front, front, 1 to make, lines 4
  > =   body from {castOn 30}, RS: 2 garter 4 mm; bind off

### what divides stands before its row, on one line
BODY
  > heading
Cast on 40 sts.
  > →40
K 3 rows.
  > 40 Body/body 1 RS knit · WS knit · RS knit
Next Row (WS) Divide for Fronts and Back: K 10 sts and place these sts on holder for Left Front; k 20 sts and place these sts on holder for Back; k to end.
  > 40 Body/body 4 WS k10, k20, knit to end
K 2 rows. Bind off.
  > 40→0 Body/right side 1 RS knit · WS knit · RS bind off all sts in pattern (0)
FRONT
  > heading →0
Cast on 40 sts.
  > →40
K 2 rows.
  > 40 Front/body 1 RS knit · WS knit
Divide the work for the neck as follows: K 20 sts, turn and leave the remaining 20 sts on a spare needle.
  > 40→20 Front/right side 1 RS k20
  > ✗ stitches wait @9:1 stitches 20
K 2 rows. Bind off.
  > 20→0 Front/right side 2 WS knit · RS knit · WS bind off all sts in pattern (0)
  > = Body, other, 1 to make, lines 3 4 5
  > =   body from {castOn 40}, RS: 3 garter 4 mm; 1 garter 4 mm; split
  > =   right side from {part body, stitches 10, edge right}, RS: 2 garter 4 mm; bind off
  > =   resting 1 from {part body, stitches 20, edge middle}, RS: hold
  > =   resting 2 from {part body, stitches 10, edge left}, RS: hold
  > = Front, front, 1 to make, lines 8 9 10
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 20, edge right}, RS: 3 'for the neck' in stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 20, edge left}, RS: hold

### where a row begins, and goes on behind its stop
FRONT
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Front/body 1 RS knit · WS purl
At the beginning of the next row, knit the first 16 sts, then bind off 8 sts for the neck. Knit to the end of the row.
  > 40→32 Front/body 3 RS k16, bind off 8 sts, knit to end (32)
At the beginning of the next row, bind off 4 sts.
  > 32→12 Front/left side 1 WS bind off 4 sts, purl to end (12)
  > = Front, front, 1 to make, lines 3 4 5
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 16, edge left}, WS: 1 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 16, edge right}, WS: hold
    `),
  )('$title', expectAnnotated);
});
