import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of leaflets and pages: common practice, no published source. */
describe('what is said of all rows and of both edges,', () => {
  it.each(
    annotatedIn(`
### what all rows are is no row
BACK
  > heading
Cast on 20 sts.
  > →20
All rows: Knit.
  > 20
Work 4 rows.
  > 20 Back/body 1 RS knit · WS knit · RS knit · WS knit
  > = Back, back, 1 to make, lines 4
  > =   body from {castOn 20}, RS: 4 garter 4 mm; hold

### a row that all of them are
BACK
  > heading
Cast on 20 sts.
  > →20
All rows: *K1, p1; rep from * to end.
  > 20
Work 2 rows in pattern.
  > 20 Back/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
  > = Back, back, 1 to make, lines 4
  > =   body from {castOn 20}, RS: 2 pattern in stocking 4 mm; hold

### for which edge said first, and both ends of the needle
BACK
  > heading
Cast on 40 sts.
  > →40
For armholes, bind off 3 sts at beg of next 2 rows.
  > 40→34 Back/body 1 RS bind off 3 sts, knit to end (37) · WS bind off 3 sts, purl to end (34)
Inc 1 st at beginning and end of needle every 4th row twice.
  > 34→38 Back/body 3 RS knit · WS purl · RS inc, knit to last st, inc (36) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (38)
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 40}, RS: 9 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
