import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** A selvedge of slipped stitches: common practice, no published source. */
describe('a first stitch slipped in every row,', () => {
  it.each(
    annotatedIn(`
### every row of a piece begins with a slipped stitch
BACK
  > heading
Cast on 20 sts.
  > →20
Always slip the first stitch of every row.
  > 20
Work 3 rows in st st.
  > 20 Back/body 1 RS sl1, knit to end · WS sl1, purl to end · RS sl1, knit to end
Dec 1 st at each end of next row.
  > 20→18 Back/body 4 WS dec, purl to last 2 sts, dec (18)
Row 1: K1, p1 to end.
  > 18 Back/body 5 RS sl1, *p1, k1; repeat from * to last st, p1
Row 2: (K1, p1) to end.
  > 18 Back/body 6 WS sl1, *p1, k1; repeat from * to last st, p1
FRONT
  > heading 18
Cast on 20 sts.
  > 18→20
Knit 2 rows.
  > 20 Front/body 1 RS knit · WS knit
  > = Back, back, 1 to make, lines 4 5 6 7
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; 2 rib in rib 1x1 4 mm; hold
  > = Front, front, 1 to make, lines 10
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### said before any piece it holds for all of them
Slip the first st of every row purlwise and knit the last st.
BACK
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Back/body 1 RS sl1, knit to end · WS sl1, purl to last st, k1
FRONT
  > heading 20
Cast on 20 sts.
  > 20
Purl 2 rows.
  > 20 Front/body 1 RS sl1, purl to last st, k1 · WS sl1, purl to last st, k1
  > = Back, back, 1 to make, lines 4
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 7
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### a piece worked as another keeps it
BACK
  > heading
Cast on 20 sts.
  > →20
Work 4 rows in st st, slipping the first st of every row.
  > 20 Back/body 1 RS sl1, knit to end · WS sl1, purl to end · RS sl1, knit to end · WS sl1, purl to end
Bind off 5 sts at beg of next 2 rows.
  > 20→10 Back/body 5 RS bind off 5 sts, knit to end (15) · WS bind off 5 sts, purl to end (10)
FRONT
  > heading 10
Work as for back.
  > 10 Front/body 1 RS sl1, knit to end · WS sl1, purl to end · RS sl1, knit to end · WS sl1, purl to end · RS bind off 5 sts, knit to end (15) · WS bind off 5 sts, purl to end (10)
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 6
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; hold

### of some rows it is told
Cast on 20 sts.
  > →20
Slip the first st of every RS row.
  > own words 20
  > ✗ stitch or repeat expected @2:1 column 1
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### a slipped stitch of one row is of that row
Cast on 20 sts.
  > →20
Next row: Sl 1, k to end.
  > 20 Piece/body 1 RS sl1, knit to end
Purl 1 row.
  > 20 Piece/body 2 WS purl
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
