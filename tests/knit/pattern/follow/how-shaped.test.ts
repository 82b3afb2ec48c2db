import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** A shaping and the row that spells it are one: common practice, no published source. */
describe('how a row is worked, said beside it,', () => {
  it.each(
    annotatedIn(`
### a shaping and how it is worked are one row
Cast on 40 sts.
  > →40
Dec 1 st at each end of next row as follows: K1, k2tog, k to last 3 sts, ssk, k1. (38 sts)
  > 40→38 says 38 Piece/body 1 RS k1, k2tog, knit to last 3 sts, ssk, k1 (38)
Purl 1 row.
  > 38 Piece/body 2 WS purl
Inc 1 st at each end of next RS row thus: K2, m1, k to last 2 sts, m1, k2. 40 sts.
  > 38→40 says 40 Piece/body 3 RS k2, m1, knit to last 2 sts, m1, k2 (40)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; hold

### and so are those of a rhythm
Cast on 40 sts.
  > →40
Dec 1 st at each end of every RS row (k2, k2tog, k to last 4 sts, ssk, k2) until 34 sts remain.
  > 40→34 Piece/body 1 RS k2, k2tog, knit to last 4 sts, ssk, k2 (38) · WS purl · RS k2, k2tog, knit to last 4 sts, ssk, k2 (36) · WS purl · RS k2, k2tog, knit to last 4 sts, ssk, k2 (34)
Dec 1 st each end every 4th row twice, working k1, ssk, k to last 3 sts, k2tog, k1.
  > 34→30 Piece/body 6 WS purl · RS knit · WS purl · RS k1, ssk, knit to last 3 sts, k2tog, k1 (32) · WS purl · RS knit · WS purl · RS k1, ssk, knit to last 3 sts, k2tog, k1 (30)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 13 stocking 4 mm; hold

### what is only announced is left to the rows
Cast on 40 sts.
  > →40
Dec 1 st each side every other row as follows:
  > talk
Row 1 (RS): K1, ssk, k to last 3 sts, k2tog, k1.
  > 40→38 Piece/body 1 RS k1, ssk, knit to last 3 sts, k2tog, k1 (38)
Row 2: P.
  > 38 Piece/body 2 WS purl
Repeat these 2 rows until 34 sts remain.
  > 38→34 Piece/body 3 RS k1, ssk, knit to last 3 sts, k2tog, k1 (36) · WS purl · RS k1, ssk, knit to last 3 sts, k2tog, k1 (34)
  > = Piece, other, 1 to make, lines 3 4 5
  > =   body from {castOn 40}, RS: 5 stocking 4 mm; hold

### which of the two is meant is told where both say how often
Cast on 40 sts.
  > →40
Dec 1 st each end every other row 3 times as follows: Row 1: K1, ssk, k to last 3 sts, k2tog, k1. Row 2: P.
  > own words 40→38 asks the count Piece/body 1 RS work in pattern 'Dec 1 st each end every other row 3 times as follows:' · WS k1, ssk, knit to last 3 sts, k2tog, k1 (38) · RS purl
  > ✗ stitch or repeat expected @2:54 column 54
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 40}, RS: 1 stocking 4 mm (own words 1); 2 reverse stocking 4 mm; hold

### a row that changes the count otherwise is told
Cast on 40 sts.
  > →40
Dec 1 st at each end of every 4th row 3 times as follows: K1, k2tog, k to end.
  > 40→39 Piece/body 1 RS knit · WS purl · RS k1, k2tog, knit to end (39)
  > ✗ count contradicts @2:1 statedStitches 38, foundStitches 39
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; hold

### on every row nobody knows how the other side is worked
Cast on 40 sts.
  > →40
Dec 1 st at each end of every row 3 times as follows: K1, k2tog, k to last 3 sts, ssk, k1.
  > own words 40 asks the count Piece/body 1 RS work in pattern 'Dec 1 st at each end of every row 3 times as follows: K1, k2tog, k to last 3 sts, ssk, k1'
  > ✗ stitch or repeat expected @2:90 column 90
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 40}, RS: 1 stocking 4 mm (own words 1); hold

### a row in pattern to its end
Cast on 40 sts.
  > →40
Cast off 4 sts. Work in pattern to end of row.
  > 40→36 Piece/body 1 RS bind off 4 sts, knit to end (36) · WS purl
Work in st st.
  > 36
Next row: K 3, work in st st to last 3 sts, k 3.
  > 36 Piece/body 3 RS knit
  > = Piece, other, 1 to make, lines 2 4
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; hold

### what a row is called before it is spelled
Cast on 41 sts.
  > →41
Work in rib k 1, * p 2, k 2; rep from * to end. Repeat this row once more.
  > 41 Piece/body 1 RS k1, *p2, k2; repeat from * to end · WS k1, *p2, k2; repeat from * to end
Work 3 rows of ribbing, (k 1, p 1).
  > 41 Piece/body 3 RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1 · RS *k1, p1; repeat from * to last st, k1
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 41}, RS: 2 moss 4 mm; 3 rib in rib 1x1 4 mm; hold

### a rib within a row
Cast on 40 sts.
  > →40
Next row: K 6, k 1, p 1 ribbing to within last 6 sts, k 6.
  > 40 Piece/body 1 RS k6, *k1, p1; repeat from * to last 6 sts, k6
Next row: P1, k1 rib 8 sts, p to end.
  > 40 Piece/body 2 WS [p1, k1] 4 times, purl to end
Next row: K1, p1 rib over first 9 sts, k to end.
  > 40 Piece/body 3 RS [k1, p1] 4 times, k1, knit to end
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; hold

### increases between stitches
Cast on 40 sts.
  > →40
Next row: K 1, inc 1, k to last st, inc 1, k 1. (42 sts)
  > 40→42 says 42 Piece/body 1 RS k1, m1, knit to last st, m1, k1 (42)
Next row: P 2, inc in next st, p to last 3 sts, inc in next st, p 2. (44 sts)
  > 42→44 says 44 Piece/body 2 WS p2, inc, purl to last 3 sts, inc, p2 (44)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; hold

### a row that has ended goes on in no other
Cast on 40 sts.
  > →40
Next row: K1, p1 to end, work back, k 2.
  > own words 40 asks the count Piece/body 1 RS work in pattern 'Next row: K1, p1 to end, work back, k 2'
  > ✗ stitch or repeat expected @2:40 column 40
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 40}, RS: 1 stocking 4 mm (own words 1); hold
    `),
  )('$title', expectAnnotated);
});
