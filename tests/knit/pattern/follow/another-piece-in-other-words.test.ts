import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Rows and counts are reckoned by hand. */
describe('as another piece, in further words,', () => {
  it.each(
    annotatedIn(`
### the end of a shaping lies behind its last row
BACK
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in garter st.
  > 20 Back/body 1 RS knit · WS knit
Bind off 2 sts at beg of next 2 rows.
  > 20→16 Back/body 3 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, knit to end (16)
Work 2 rows.
  > 16 Back/body 5 RS knit · WS knit
Bind off.
  > 16→0 Back/body 7 RS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back to end of armhole shaping.
  > →16 Front/body 1 RS knit · WS knit · RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, knit to end (16)
Bind off.
  > 16→0 Front/body 5 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 6 garter 4 mm; bind off
  > = Front, front, 1 to make, lines 8 9
  > =   body from {castOn 20}, RS: 4 garter 4 mm; bind off

### a length less than the other one is hers to measure where nobody knows the rows
BACK
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in garter st.
  > 20 Back/body 1 RS knit · WS knit
Bind off 2 sts at beg of next 2 rows.
  > 20→16 Back/body 3 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, knit to end (16)
Work until armholes measure 20 cm.
  > 16 as long as she likes: 2 rows Back/body 5 RS knit · WS knit
Bind off 4 sts at beg of next 2 rows.
  > 16→8 Back/body 7 RS bind off 4 sts, knit to end (12) · WS bind off 4 sts, knit to end (8)
Bind off.
  > 8→0 Back/body 9 RS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back until piece measures 5 cm less than back to shoulder.
  > →16 as long as she likes: 2 rows Front/body 1 RS knit · WS knit · RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, knit to end (16) · RS knit · WS knit
Bind off.
  > 16→0 Front/body 7 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 2 garter 4 mm (length {id 'back/1', open, mm 200, from armhole}); 2 garter 4 mm; bind off
  > = Front, front, 1 to make, lines 9 10
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 2 garter 4 mm (length {id 'front/1', open, from start}); bind off
    `),
  )('$title', expectAnnotated);
});
