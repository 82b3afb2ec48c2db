import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('instructions repeated from a star, followed row by row,', () => {
  it.each(
    annotatedIn(`
### in sentences and lines of their own
Cast on 20 sts.
  > →20
*Dec 1 st at each end of next row.
  > 20→18 Piece/body 1 RS dec, knit to last 2 sts, dec (18)
Work 1 row.
  > 18 Piece/body 2 WS purl
Rep from * twice more. 14 sts.
  > 18→14 says 14 Piece/body 3 RS dec, knit to last 2 sts, dec (16) · WS purl · RS dec, knit to last 2 sts, dec (14) · WS purl
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; hold

### two stars, beside one
Cast on 20 sts.
  > →20
**K 1 row.
  > 20 Piece/body 1 RS knit
*Dec 1 st at each end of next row. Rep from * once more.
  > 20→16 Piece/body 2 WS dec, purl to last 2 sts, dec (18) · RS dec, knit to last 2 sts, dec (16)
Rep from ** once more.
  > 16→12 Piece/body 4 WS knit · RS dec, knit to last 2 sts, dec (14) · WS dec, purl to last 2 sts, dec (12)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; hold

### a row's star closed by a sentence of its own
Cast on 10 sts.
  > →10
1st row: * K 2, p 2. Repeat from * to last 2 sts, k 2.
  > 10 Piece/body 1 RS *k2, p2; repeat from * to last 2 sts, k2
2nd row: * P 2, k 2.
Repeat from * to last 2 sts, p 2.
  > lines 3 to 4 10 Piece/body 2 WS *p2, k2; repeat from * to last 2 sts, p2
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 2 rib in rib 2x2 4 mm; hold

### 'in all' counts the first
Cast on 20 sts.
  > →20
*Dec 1 st at each end of next row.
  > 20→18 Piece/body 1 RS dec, knit to last 2 sts, dec (18)
Rep from * 3 times in all.
  > 18→14 Piece/body 2 WS dec, purl to last 2 sts, dec (16) · RS dec, knit to last 2 sts, dec (14)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold

### a star that is not there, one of another piece, and one used up
BACK
  > heading
Cast on 8 sts.
  > →8
Rep from * twice more.
  > 8
  > ✗ no rows to repeat @3:1
*K 1 row.
  > 8 Back/body 1 RS knit
FRONT
  > heading 8
Cast on 8 sts.
  > 8
Rep from * twice more.
  > 8
  > ✗ no rows to repeat @7:1
*K 1 row.
  > 8 Front/body 1 RS knit
Rep from * once more.
  > 8 Front/body 2 WS knit
Rep from * once more.
  > 8
  > ✗ no rows to repeat @10:1
  > = Back, back, 1 to make, lines 4
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 8 9
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; hold

### what was not understood is said again as it stands
Cast on 8 sts.
  > →8
*Work 3 rows in wibble wobble.
  > own words 8 asks the count Piece/body 1 RS work in pattern 'Work 3 rows in wibble wobble' · WS work in pattern 'Work 3 rows in wibble wobble' · RS work in pattern 'Work 3 rows in wibble wobble'
  > ✗ stitch or repeat expected @2:17 column 17
Rep from * once more.
  > own words 8 asks the count Piece/body 4 WS work in pattern 'Work 3 rows in wibble wobble' · RS work in pattern 'Work 3 rows in wibble wobble' · WS work in pattern 'Work 3 rows in wibble wobble'
  > ✗ stitch or repeat expected @2:17 column 17
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 8}, RS: 3 stocking 4 mm (own words 1 2 3); 3 pattern in stocking 4 mm (own words 1 2 3); hold
`),
  )('$title', expectAnnotated);
});
