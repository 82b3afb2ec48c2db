import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Common practice, no published source. Eight rows are an inch; counts reckoned by hand. */
describe('lengths from a place, and small spellings,', () => {
  it.each(
    annotatedIn(`
### a length from a place said behind a comma, g-st, and the side of a knit row said again
BACK
  > heading
Gauge: 5 sts and 8 rows = 1 inch
  > talk
Cast on 20 sts and work 4 rows in g-st.
  > 20 Back/body 1 RS knit · WS knit · RS knit · WS knit
Beg with a k (RS) row, work 4 rows in st st.
  > 20 Back/body 5 RS knit · WS purl · RS knit · WS purl
Bind off 3 sts at beg of next 2 rows.
  > 20→14 Back/body 9 RS bind off 3 sts, knit to end (17) · WS bind off 3 sts, purl to end (14)
Work even for 2 inches, from the first binding off.
  > 14 long: 14 rows Back/body 11 RS knit · [WS purl · RS knit] ×6 · WS purl
Work even for 2 inches, then k 1 row.
  > 14 long: 16 rows Back/body 25 RS knit · [WS purl · RS knit] ×8
  > = gauge stitches 19.68503937007874, rows 31.496062992125985
  > = Back, back, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 6 stocking 4 mm; 14 stocking 4 mm (length {id 'back/1', open false, mm 50.8, from armhole}); 16 stocking 4 mm (length {id 'back/2', open false, mm 50.8, from here}); 1 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
