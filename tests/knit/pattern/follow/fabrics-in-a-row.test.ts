import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Fabrics that a row names for some of its stitches, worked by hand: garter is knit on both sides, moss is each stitch the other way. */
describe('a row that names fabrics', () => {
  it.each(
    annotatedIn(`
### works them in those, whatever is on the needle
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Next row: work 4 sts in garter st, k to last 4 sts, work 4 sts in garter st.
  > 20 Piece/body 3 RS k4, knit to last 4 sts, k4
Next row: work 4 sts in garter st, p to last 4 sts, work 4 sts in garter st.
  > 20 Piece/body 4 WS k4, purl to last 4 sts, k4
Work 4 sts in seed st, work in st st to last 4 sts, work 4 sts in seed st.
  > 20 Piece/body 5 RS [k1, p1] 2 times, knit to last 3 sts, p1, k1, p1
Work 4 sts in seed st, work in st st to last 4 sts, work 4 sts in seed st.
  > 20 Piece/body 6 WS [p1, k1] 2 times, purl to last 3 sts, k1, p1, k1
Rep last 2 rows once more.
  > 20 Piece/body 7 RS [k1, p1] 2 times, knit to last 3 sts, p1, k1, p1 · WS [p1, k1] 2 times, purl to last 3 sts, k1, p1, k1
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 20}, RS: 8 stocking 4 mm; hold

### leaves the others in what they were, and a count alone names none
Cast on 20 sts.
  > →20
Work 2 rows in garter st.
  > 20 Piece/body 1 RS knit · WS knit
Next row: work 4 sts, p to last 4 sts, work 4 sts in pattern.
  > 20 Piece/body 3 RS k4, purl to last 4 sts, k4
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 3 garter 4 mm; hold
`),
  )('$title', expectAnnotated);
});
