import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('how a piece was begun, and what its last row was,', () => {
  it.each(
    annotatedIn(`
### the yarn of a cast-on comes again with its rows
With A, cast on 8 sts.
  > →8
Knit 2 rows.
  > 8 Piece/body 1 RS knit · WS knit
With B, work 2 rows in st st.
  > 8 Piece/body 3 RS knit · WS purl
Rep last 4 rows once more.
  > 8 Piece/body 5 RS knit · WS knit · RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 8}, RS: 2 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; hold

### of one yarn nothing is said
With A, cast on 8 sts.
  > →8
Knit 2 rows.
  > 8 Piece/body 1 RS knit · WS knit
With A, work 2 rows in st st.
  > 8 Piece/body 3 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; hold

### each piece begins in its own
BACK
  > heading
Join B and cast on 6 sts.
  > →6
Knit 2 rows.
  > 6 Back/body 1 RS knit · WS knit
Change to A and knit 2 rows.
  > 6 Back/body 3 RS knit · WS knit
Bind off.
  > 6→0 Back/body 5 RS bind off all sts in pattern (0)
FRONT
  > heading
Cast on 6 sts.
  > →6
Knit 2 rows.
  > 6 Front/body 1 RS knit · WS knit
Change to A and knit 2 rows.
  > 6 Front/body 3 RS knit · WS knit
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 6}, RS: 2 'stocking, B' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 8 9
  > =   body from {castOn 6}, RS: 2 stocking 4 mm; 2 'stocking, A' in stocking 4 mm; hold

### a letter behind stitches is the yarn that the text calls so
With A, cast on 8 sts.
  > →8
Join B.
  > 8
Row 1: k3 B, p to end.
  > 8 Piece/body 1 RS k3, purl to end 'Row 1: k3 B, p to end'
Row 2: k1 B, k2 A, k5 B.
  > 8 Piece/body 2 WS k1, k2, k5 'Row 2: k1 B, k2 A, k5 B'
  > = Piece, other, 1 to make, lines 3 4
  > =   body from {castOn 8}, RS: 2 'stocking, B' in stocking 4 mm (own words 1 2); hold

### and a stitch where no yarn is called so
Cast on 8 sts.
  > →8
Row 1: k3 b, p to end.
  > 8 Piece/body 1 RS [k tbl] 3 times, purl to end
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; hold

### to knit rows in a fabric is to work them
Cast on 10 sts.
  > →10
Knit 3 rows in stocking stitch.
  > 10 Piece/body 1 RS knit · WS purl · RS knit
K 2 rows in k1, p1 rib.
  > 10 Piece/body 4 WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end
Knit 2 rows in MC.
  > 10 Piece/body 6 WS knit · RS knit
Knit 2 rows.
  > 10 Piece/body 8 WS knit · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 10}, RS: 3 stocking 4 mm; 2 rib in rib 1x1 4 mm; 4 'rib, MC' in rib 1x1 4 mm; hold

### the last of rows that are spelled out keeps its stitches
Cast on 8 sts.
  > →8
Row 1: K3, (p2, k2) to last st, k1.
  > 8 Piece/body 1 RS k3, *p2, k2; repeat from * to last st, k1
Row 2: K1, (p2, k2) to last 3 sts, p2, k1.
  > 8 Piece/body 2 WS k1, *p2, k2; repeat from * to last 3 sts, p2, k1
Rep these 2 rows once more, inc 1 st at each end of last row. (10 sts)
  > 8→10 says 10 Piece/body 3 RS k3, *p2, k2; repeat from * to last st, k1 · WS inc, p2, k2, p2, inc (10)
Work 2 rows in st st.
  > 10 Piece/body 5 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, RS: 6 stocking 4 mm; hold

### and so does what is spread over it
Cast on 10 sts.
  > →10
Row 1: K2, *p2, k2; rep from * to end.
  > 10 Piece/body 1 RS k2, *p2, k2; repeat from * to end
Row 2: P2, *k2, p2; rep from * to end.
  > 10 Piece/body 2 WS p2, *k2, p2; repeat from * to end
Rep these 2 rows once more, increasing 1 st in last row. (11 sts)
  > 10→11 says 11 Piece/body 3 RS k2, *p2, k2; repeat from * to end · WS p2, k2, p1, m1p, p1, k2, purl to end (11)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 10}, RS: 3 rib in rib 2x2 4 mm; 1 stocking 4 mm; hold

### at one edge of the last row
Cast on 9 sts.
  > →9
Work 4 rows in k1, p1 rib.
  > 9 Piece/body 1 RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1 · RS *k1, p1; repeat from * to last st, k1
Inc 1 st at end of last row. (10 sts)
  > 9→10 says 10 Piece/body 4 WS *p1, k1; repeat from * to last st, inc (10)
Work 3 rows in st st, dec 1 st at beg of last row. (9 sts)
  > 10→9 says 9 Piece/body 5 RS knit · WS purl · RS dec, knit to end (9)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 9}, RS: 4 rib in rib 1x1 4 mm; 3 stocking 4 mm; hold

### as many as it takes, where the text says no number
Cast on 20 sts.
  > →20
P the next row, inc at even intervals to 24 sts.
  > 20→24 Piece/body 1 RS p3, m1p, [p5, m1p] 3 times, p2 (24)
K 1 row, dec 2 sts evenly to 22 sts.
  > 24→22 Piece/body 2 WS k5, k2tog, knit to last 7 sts, k2tog, k5 (22)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### until there are so many of the rows that are repeated
Cast on 10 sts.
  > →10
Work 12 rows in st st.
  > 10 Piece/body 1 RS knit · [WS purl · RS knit] ×5 · WS purl
Row 1: K2, *p2, k2; rep from * to end.
  > 10 Piece/body 13 RS k2, *p2, k2; repeat from * to end
Row 2: P2, *k2, p2; rep from * to end.
  > 10 Piece/body 14 WS p2, *k2, p2; repeat from * to end
Repeat these 2 rows until there are 6 rows.
  > 10 Piece/body 15 RS k2, *p2, k2; repeat from * to end · WS p2, *k2, p2; repeat from * to end · RS k2, *p2, k2; repeat from * to end · WS p2, *k2, p2; repeat from * to end
Bind off.
  > 10→0 Piece/body 19 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 10}, RS: 12 stocking 4 mm; 6 rib in rib 2x2 4 mm; bind off

### of rows from the cast-on all are counted
Cast on 10 sts.
  > →10
Row 1: K2, *p2, k2; rep from * to end.
  > 10 Piece/body 1 RS k2, *p2, k2; repeat from * to end
Row 2: P2, *k2, p2; rep from * to end.
  > 10 Piece/body 2 WS p2, *k2, p2; repeat from * to end
Repeat these 2 rows until there are 6 rows.
  > 10 Piece/body 3 RS k2, *p2, k2; repeat from * to end · WS p2, *k2, p2; repeat from * to end · RS k2, *p2, k2; repeat from * to end · WS p2, *k2, p2; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 10}, RS: 6 rib in rib 2x2 4 mm; hold

### behind 'then' the repeat begins
Cast on 9 sts.
  > →9
Row 1: Kfb, p1, then k1, p1 to last st, kfb.
  > 9→11 Piece/body 1 RS kfb, p1, *k1, p1; repeat from * to last st, kfb (11)
Row 2: K2, then p to last 2 sts, k2.
  > 11 Piece/body 2 WS k2, purl to last 2 sts, k2
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 9}, RS: 2 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
