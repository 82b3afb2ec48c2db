import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('stitch patterns, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a multiple and its rows
Lace pattern (multiple of 4 sts plus 1)
Row 1: k1, *yo, k2tog, k2; rep from * to end.
Row 2 and every alt row: p.
Row 3: k1, *k2, yo, k2tog; rep from * to end.
Cast on 9 sts.
  > →9
Work in lace pattern for 5 rows.
  > 9 Piece/body 1 RS k1, *yo, k2tog, k2; repeat from * to end · WS purl · RS k1, *k2, yo, k2tog; repeat from * to end · WS purl · RS k1, *yo, k2tog, k2; repeat from * to end
  > = pattern lace of 4 plus 1 over 9: k1, *yo, k2tog, k2; repeat from * to end (9) · purl (9) · k1, *k2, yo, k2tog; repeat from * to end (9) · purl (9)
  > = Piece, other, 1 to make, lines 6
  > =   body from {castOn 9}, RS: 5 lace in stocking 4 mm; hold

### a multiple that the first row says
Lace pattern
  > talk
Row 1: k1, *yo, k2tog, k2; rep from * to end.
Row 2: p.
Ribbed pattern
  > talk
Row 1: k2, p2, k2.
Row 2: p2, k2, p2.
Plain pattern
Row 1: k3, p to last st, k1.
Row 2: k.
  > = pattern lace of 4 plus 1 over 9: k1, *yo, k2tog, k2; repeat from * to end (9) · purl (9)
  > = pattern ribbed of 0 plus 6 over 6: k2, p2, k2 (6) · p2, k2, p2 (6)
  > = pattern 'ribbed 2' of 1 plus 4 over 6: k3, purl to last st, k1 (6) · knit (6)

### rows that do not come out
Lace pattern (multiple of 4 sts plus 1)
Row 1: k1, *yo, k2tog, k3; rep from * to end.
  > ✗ pattern row does not come out @2 row 1, takesStitches 5, stitches 9, ofStitches 4, plusStitches 1
Row 2: k5, p6.
  > ✗ pattern row does not come out @3 row 2, takesStitches 11, stitches 9, ofStitches 4, plusStitches 1
Row 3: p.
  > = pattern lace of 4 plus 1 over 9: ? (9) · ? (9) · purl (9)

### a pattern that does not return to its count
Lace pattern (multiple of 4 sts plus 1)
Row 1: k1, *yo, k4; rep from * to end.
Row 2: p.
  > ✗ pattern does not return @3 rows 2, afterStitches 11, startStitches 9
Moss pattern (multiple of 2 sts)
Row 1: *yo, k2; rep from * to end.
  > = pattern lace of 4 plus 1 over 9: k1, *yo, k4; repeat from * to end (11) · purl (11)
  > = pattern moss of 2 plus 0 over 4: *yo, k2; repeat from * to end (6)

### rows by like and by list
Lace pattern (multiple of 2 sts)
Rows 1 and 3: *k1, p1; rep from *.
Row 2: *p1, k1; rep from *.
Row 4: as row 2.
Rows 5 and 6: as rows 1 and 2.
Row 8: as row 12.
  > ✗ pattern row does not come out @6 row 8, takesStitches 0, stitches 4, ofStitches 2, plusStitches 0
Row 10: k.
  > = pattern lace of 2 plus 0 over 4: *k1, p1; repeat from * to end (4) · *p1, k1; repeat from * to end (4) · *k1, p1; repeat from * to end (4) · *p1, k1; repeat from * to end (4) · *k1, p1; repeat from * to end (4) · *p1, k1; repeat from * to end (4) · ? (4) · knit (4)

### another row 1 begins another
LACE
  > talk
Row 1: k.
Row 2: p.
Row 1: p.
Row 2: k.
Row 1: k1, p1.
BACK
  > heading
Cast on 4 sts.
  > →4
Work 2 rows in lace pattern.
  > 4 Back/body 1 RS knit · WS purl
Work 2 rows in lace 2 pattern.
  > 4 Back/body 3 RS knit · WS purl
  > = pattern lace of 1 plus 0 over 2: knit (2) · purl (2)
  > = pattern 'lace 2' of 1 plus 0 over 2: purl (2) · knit (2)
  > = pattern 'lace 2 2' of 0 plus 2 over 2: k1, p1 (2)
  > = Back, back, 1 to make, lines 9 10
  > =   body from {castOn 4}, RS: 2 lace in stocking 4 mm; 2 lace in stocking 4 mm; hold

### rows without a number, and repeats that are passed over
Lace pattern (multiple of 2 sts)
*K1, p1; rep from *.
Rep row 1.
P.
Cast on 4 sts.
  > →4
Work in lace pattern for 3 rows.
  > 4 Piece/body 1 RS *k1, p1; repeat from * to end · WS purl · RS *k1, p1; repeat from * to end
  > = pattern lace of 2 plus 0 over 4: *k1, p1; repeat from * to end (4) · purl (4)
  > = Piece, other, 1 to make, lines 6
  > =   body from {castOn 4}, RS: 3 lace in stocking 4 mm; hold

### rows before a heading
Row 1: k2.
Row 2: p2.
  > = pattern pattern of 0 plus 2 over 2: k2 (2) · p2 (2)

### two multiples, the second over nothing
Basket stitch: multiple of 8 plus 4
Row 1: k4, *p4, k4; rep from * to end.
Rib (multiple of 2)
Wave (multiple of 6)
Row 1: *k3, p3; rep from *.
Cast on 12 sts.
  > →12
Work 2 rows in wave pattern.
  > 12 Piece/body 1 RS *k3, p3; repeat from * to end · WS *k3, p3; repeat from * to end
Work 2 rows in basket pattern.
  > 12 Piece/body 3 RS k4, *p4, k4; repeat from * to end · WS k4, *p4, k4; repeat from * to end
  > = pattern basket of 8 plus 4 over 20: k4, *p4, k4; repeat from * to end (20)
  > = pattern wave of 6 plus 0 over 12: *k3, p3; repeat from * to end (12)
  > = Piece, other, 1 to make, lines 7 8
  > =   body from {castOn 12}, RS: 2 wave in stocking 4 mm; 2 basket in stocking 4 mm; hold

### without a name
Multiple of 2 sts plus 1.
Row 1: k1, *p1, k1; rep from *.
ZIGZAG
  > talk
Multiple of 2 sts plus 1.
Row 1: p1, *k1, p1; rep from *.
  > = pattern pattern of 2 plus 1 over 5: k1, *p1, k1; repeat from * to end (5)
  > = pattern zigzag of 2 plus 1 over 5: p1, *k1, p1; repeat from * to end (5)

### a next row of a pattern
Lace pattern (multiple of 2 sts)
Row 1: *yo, k2tog; rep from *.
Next row: p.
Next row: k.
  > = pattern lace of 2 plus 0 over 4: *yo, k2tog; repeat from * to end (4) · purl (4) · knit (4)
`),
  )('comes out as $title', expectAnnotated);
});
