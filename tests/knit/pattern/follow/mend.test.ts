import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Rows and counts are worked out by hand. */
describe('a line that she mends herself, followed row by row,', () => {
  it.each(
    annotatedIn(`
### makes no rows, or as many as she says with the count after them
Cast on 10 sts.
  > →10
Wobble the edge and work 4 rows. [no rows]
  > talk 10
Work 2 rows wibble wobble. [4 rows, 8 sts]
  > own words 10→8 says 8 Piece/body 1 RS work in pattern 'Work 2 rows wibble wobble' · WS work in pattern 'Work 2 rows wibble wobble' · RS work in pattern 'Work 2 rows wibble wobble' · WS [dec] 2 times, work in pattern to end 'Work 2 rows wibble wobble' (8)
K 2 rows.
  > 8 Piece/body 5 RS knit · WS knit
  > = Piece, other, 1 to make, lines 3 4
  > =   body from {castOn 10}, RS: 4 stocking 4 mm (own words 1 2 3 4); 2 pattern in stocking 4 mm; hold

### only what was not understood of it is hers
BACK: Cast on 10 sts. Work 3 rows wobble. K 1 row. [2 rows, 10 sts]
  > own words 10 says 10 Back/body 1 RS work in pattern 'Work 3 rows wobble' · WS work in pattern 'Work 3 rows wobble' · RS knit
K 1 row.
  > 10 Back/body 4 WS knit
  > = Back, back, 1 to make, lines 1 2
  > =   body from {castOn 10}, RS: 2 stocking 4 mm (own words 1 2); 2 pattern in stocking 4 mm; hold

### a row that does not come out is hers as a whole
Cast on 10 sts.
  > →10
Next row: k30. [1 row, 12 sts]
  > own words 10→12 says 12 Piece/body 1 RS work in pattern to end, [m1] 2 times 'Next row: k30.' (12)
K 1 row.
  > 12 Piece/body 2 WS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 1 stocking 4 mm (own words 1); 1 pattern in stocking 4 mm; hold

### on no needle there are no rows
Work 3 rows wobble. [2 rows, 10 sts]
  > own words
  > ✗ nothing on the needle @1
`),
  )('$title', expectAnnotated);
});
