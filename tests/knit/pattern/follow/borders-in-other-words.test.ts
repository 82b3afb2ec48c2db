import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of leaflets and pages: common practice, no published source. */
describe('what is kept at an edge, in other words,', () => {
  it.each(
    annotatedIn(`
### borders of a front in other words
RIGHT FRONT
  > heading
Tension: 20 sts and 28 rows to 10 cm.
  > talk
Cast on 30 sts.
  > →30
Work in st st, keeping 5 sts garter stitch for border, for 4 rows.
  > 30 Right front/body 1 RS knit · WS purl to last 5 sts, k5 · RS knit · WS purl to last 5 sts, k5
Work in st st, keeping a 6 st border in moss st at front edge, for 2 rows.
  > 30 Right front/body 5 RS [k1, p1] 3 times, knit to end · WS purl to last 5 sts, [k1, p1] 2 times, k1
Work in st st, keeping the front 4 sts in garter st, for 2 rows.
  > 30 Right front/body 7 RS knit · WS purl to last 4 sts, k4
Work in st st, always knitting the 3 sts at front edge, for 2 rows.
  > 30 Right front/body 9 RS knit · WS purl to last 3 sts, k3
Work in st st with garter st border at front edge of 5 sts for 2 rows.
  > 30 Right front/body 11 RS knit · WS purl to last 5 sts, k5
Work 4 sts at front edge in garter st and remainder in stockinette for 2 rows.
  > 30 Right front/body 13 RS knit · WS purl to last 4 sts, k4
Work in st st keeping the 6 sts at front edge in garter st (k 6), for 2 rows.
  > 30 Right front/body 15 RS knit · WS purl to last 6 sts, k6
Work in st st, keeping 7 center front sts in k1, p1 ribbing throughout, for 2 rows.
  > 30 Right front/body 17 RS [k1, p1] 3 times, knit to end · WS purl to last 6 sts, [k1, p1] 3 times
  > = gauge stitches 20, rows 28
  > = Right front, right front, 1 to make, lines 4 5 6 7 8 9 10 11
  > =   body from {castOn 30}, RS: 18 stocking 4 mm; hold

### selvedge stitches
BACK
  > heading
Cast on 20 sts.
  > →20
Knit the first and last st of every row (selvedge sts). Work 4 rows in st st.
  > 20 Back/body 1 RS knit · WS k1, purl to last st, k1 · RS knit · WS k1, purl to last st, k1
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; hold

### of a back nobody knows which edge
BACK
  > heading
Cast on 20 sts.
  > →20
Work in st st, keeping 5 sts garter stitch for border, for 4 rows.
  > 20 Back/body 1 RS knit · WS purl · RS knit · WS purl
  > ✗ place not known @3:16
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; hold

### the first stitches of a row are no border
Cast on 20 sts.
  > →20
Next row: Work 4 sts in garter st, k to end.
  > 20 Piece/body 1 RS k4, knit to end
Next row: K the first 4 sts, p to end.
  > 20 Piece/body 2 WS k4, purl to end
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
