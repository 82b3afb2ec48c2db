import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('ribs that begin as said, and turns at wrapped stitches, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a rib begins with the stitches that are named, on either side
Cast on 10 sts.
  > →10
Starting with p2, work 2 rows in k2, p2 rib.
  > 10 Piece/body 1 RS *p2, k2; repeat from * to last 2 sts, p2 · WS *k2, p2; repeat from * to last 2 sts, k2
K 1 row.
  > 10 Piece/body 3 RS knit
Work 2 rows in k2, p2 rib, beg with p2.
  > 10 Piece/body 4 WS *p2, k2; repeat from * to last 2 sts, p2 · RS *k2, p2; repeat from * to last 2 sts, k2
Starting with p3, work 2 rows in k2, p2 rib.
  > 10
  > ✗ place not known @5:1
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 10}, RS: 5 rib in rib 2x2 4 mm; hold

### knit stitches purled and purl stitches knitted
Cast on 6 sts.
  > →6
Row 1: *k1, p1; rep from * to end.
  > 6 Piece/body 1 RS *k1, p1; repeat from * to end
Row 2: Knit the purl sts and purl the knit sts.
  > 6 Piece/body 2 WS *p1, k1; repeat from * to end
Row 3: Knit the knit sts and purl the purl sts.
  > 6 Piece/body 3 RS *p1, k1; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 6}, RS: 3 stocking 4 mm; hold

### short rows to a wrapped stitch
Cast on 20 sts.
  > →20
K to 4 sts from end, wrap next st, turn.
  > 20 Piece/body 1 RS knit to last 4 sts, wrap next st, turn
P to last 4 sts, wrap next st, turn.
  > 20 Piece/body 2 WS leave 4 sts unworked, purl to last 4 sts, wrap next st, turn
K to 3 sts before wrapped st, w&t.
  > 20 Piece/body 3 RS leave 4 sts unworked, knit to last 7 sts, wrap next st, turn
P to 3 sts before wrapped st, wrap next st and turn.
  > 20 Piece/body 4 WS leave 7 sts unworked, purl to last 7 sts, wrap next st, turn
K to end, working wraps tog with wrapped sts.
  > 20 Piece/body 5 RS leave 7 sts unworked, knit to end, picking up each wrap
P 1 row.
  > 20 Piece/body 6 WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; hold

### where nothing was turned there is no wrapped stitch
Cast on 20 sts.
  > →20
K to 3 sts before wrapped st, w&t.
  > 20 asks the count Piece/body 1 RS work in pattern 'K to 3 sts before wrapped st, w&t'
  > ✗ no marker @2:1
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 1 stocking 4 mm (own words 1); hold

### so many rows after a place of another piece, and after its end
BACK
  > heading
Cast on 20 sts.
  > →20
K 4 rows.
  > 20 Back/body 1 RS knit · WS knit · RS knit · WS knit
Shape armholes
  > heading 20
Cast off 2 sts at beg of next 2 rows.
  > 20→16 Back/body 5 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, knit to end (16)
K 6 rows.
  > 16 Back/body 7 RS knit · [WS knit · RS knit] ×2 · WS knit
FRONT
  > heading 16
Work Front as Back until 8 rows have been worked from cast-on edge.
  > 16 Front/body 1 RS knit · WS knit · RS knit · WS knit · RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, knit to end (16) · RS knit · WS knit
SLEEVE
  > heading 16
Work as for back until 2 rows have been worked after armhole shaping.
  > 16 Sleeve/body 1 RS knit · WS knit · RS knit · WS knit · RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, knit to end (16) · RS knit · WS knit
  > = Back, back, 1 to make, lines 3 5 6
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 8 'shape armholes' in garter 4 mm; hold
  > = Front, front, 1 to make, lines 8
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 4 garter 4 mm; hold
  > = Sleeve, sleeve, 1 to make, lines 10
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 4 garter 4 mm; hold

`),
  )('$title', expectAnnotated);
});
