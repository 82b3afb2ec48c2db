import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of our own after those that leaflets use: common practice, no published source. Rows and counts are reckoned by hand. */
describe('what is done then, once, and on what is left,', () => {
  it.each(
    annotatedIn(`
### what is done when so much is worked stands on the line below
BACK
  > heading
Gauge: 20 sts and 20 rows = 10 cm
  > talk
Cast on 40 sts.
  > →40
Work in st st for 2 rows. When work measures 3 cm from start.
  > 40 long: 4 rows Back/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Bind off 5 sts at beginning of next 2 rows.
  > 40→30 Back/body 7 RS bind off 5 sts, knit to end (35) · WS bind off 5 sts, purl to end (30)
  > = gauge stitches 20, rows 20
  > = Back, back, 1 to make, lines 4 5
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; 4 stocking 4 mm (length {id 'back/1', open false, mm 30, from start}); 2 stocking 4 mm; hold

### a shaping once, and then at a distance
BACK
  > heading
Gauge: 20 sts and 20 rows = 10 cm
  > talk
Cast on 40 sts.
  > →40
Work in garter st for 2 rows, decrease 1 st each side, then every 1 cm 2 times more. 34 sts.
  > 40→34 says 34 Back/body 1 RS knit · WS knit · RS dec, knit to last 2 sts, dec (38) · WS knit · RS dec, knit to last 2 sts, dec (36) · WS knit · RS dec, knit to last 2 sts, dec (34)
At armhole edge bind off 4 sts, once. Bind off.
  > 34→0 Back/body 8 WS knit · RS bind off 4 sts, knit to end (30) · WS bind off all sts in pattern (0)
  > = gauge stitches 20, rows 20
  > = Back, back, 1 to make, lines 4 5
  > =   body from {castOn 40}, RS: 9 garter 4 mm; bind off

### sets that the work is continued on
BACK
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Back/body 1 RS knit · WS purl
Next row. Work across 12 sts, bind off the next 16 sts for back of neck and continue work on remaining 12 sts as follows.
  > 40→12 Back/body 3 RS k12, bind off 16 sts, k12 (24)
  > ✗ stitches wait @4:77 stitches 12
Work 2 rows. Bind off.
  > 12→0 Back/left side 1 WS purl · RS knit · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 12, edge left}, WS: 2 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold
    `),
  )('$title', expectAnnotated);
});
