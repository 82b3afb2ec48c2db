import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what is said to finish, and how it is begun, followed row by row,', () => {
  it.each(
    annotatedIn(`
### what is knitted to finish
Cast on 12 sts.
  > →12
Knit 2 rows.
  > 12 Piece/body 1 RS knit · WS knit
To finish, end with knit 4 rows.
  > 12 Piece/body 3 RS knit · WS knit · RS knit · WS knit
Bind off.
  > 12→0 Piece/body 7 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 6 garter 4 mm; bind off

### and orders behind it
Cast on 12 sts.
  > →12
Knit 2 rows.
  > 12 Piece/body 1 RS knit · WS knit
To finish, knit 3 rows. Bind off.
  > 12→0 Piece/body 3 RS knit · WS knit · RS knit · WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 12}, RS: 5 garter 4 mm; bind off

### but not what is sewn
Cast on 12 sts.
  > →12
Knit 2 rows. Bind off.
  > 12→0 Piece/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
To finish, sew the side seams.
  > talk →0
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; bind off

### a fabric named behind what was not understood goes on
Cast on 12 sts.
  > →12
Row 1: frumple the fringe, 6 rows.
  > own words 12 asks the count Piece/body 1 RS work in pattern 'Row 1: frumple the fringe, 6 rows'
  > ✗ stitch or repeat expected @2:8 column 8
Work in st st, (starting with a knit row) knit until piece measures 6 cm.
  > 12 as long as she likes: 3 rows Piece/body 2 WS knit · RS purl · WS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 12}, RS: 1 stocking 4 mm (own words 1); 3 reverse stocking 4 mm (length {id 'piece/1', open, mm 60, from start}); hold
`),
  )('$title', expectAnnotated);
});
