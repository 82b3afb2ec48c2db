import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('rows, followed row by row,', () => {
  it.each(
    annotatedIn(`
### knit and purl rows
Cast on 4 sts.
  > →4
K 1 row.
  > 4 Piece/body 1 RS knit
P 2 rows.
  > 4 Piece/body 2 WS purl · RS purl
K 3 rows.
  > 4 Piece/body 4 WS knit · RS knit · WS knit
Work 2 rows.
  > 4 Piece/body 7 RS knit · WS knit
P 3 rows.
  > 4 Piece/body 9 RS purl · WS purl · RS purl
Work 2 rows.
  > 4 Piece/body 12 WS knit · RS knit
K 2 rows.
  > 4 Piece/body 14 WS knit · RS knit
Work 1 row.
  > 4 Piece/body 16 WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9
  > =   body from {castOn 4}, RS: 6 stocking 4 mm; 10 garter 4 mm; hold

### rows beside which a shaping goes on
Left front
  > heading
Cast on 10 sts.
  > →10
Knit 6 rows, at the same time dec 1 st at neck edge every other row twice.
  > 10→8 Left front/body 1 RS knit to last 2 sts, dec (9) · WS knit · RS k7, dec (8) · WS knit · RS knit · WS knit
P 2 rows.
  > 8 Left front/body 7 RS purl · WS purl
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 10}, RS: 6 stocking 4 mm; 2 garter 4 mm; hold

### again
Cast on 4 sts.
  > →4
K 1 row, p 1 row until 8 rows have been worked.
  > 4 Piece/body 1 RS knit · [WS purl · RS knit] ×3 · WS purl
K 1 row, p 2 rows twice.
  > 4 Piece/body 9 RS knit · WS purl · RS purl · WS knit · RS purl · WS purl
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 4}, RS: 14 stocking 4 mm; hold

### these rows, which nobody numbered
Cast on 4 sts.
  > →4
K 1 row.
  > 4 Piece/body 1 RS knit
P 2 rows.
  > 4 Piece/body 2 WS purl · RS purl
Rep these rows twice.
  > 4 Piece/body 4 WS purl · RS purl · WS purl · RS purl
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 4}, RS: 7 stocking 4 mm; hold

### rows of a length again {"gauge": {"stitches": 20, "rows": 28}}
Cast on 4 sts.
  > →4
Work in st st for 2 cm.
  > 4 long: 6 rows Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Rep last 2 rows twice.
  > 4 Piece/body 7 RS knit · WS purl · RS knit · WS purl
Work in moss st for 1 cm.
  > 4 long: 4 rows Piece/body 11 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end
Rep last 3 rows twice.
  > 4 Piece/body 15 RS *k1, p1; repeat from * to end · [WS *p1, k1; repeat from * to end · RS *k1, p1; repeat from * to end] ×2 · WS *p1, k1; repeat from * to end
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 4}, RS: 6 stocking 4 mm (length {id 'piece/1', open false, mm 20, from here}); 4 stocking 4 mm; 4 moss 4 mm (length {id 'piece/2', open false, mm 10, from here}); 6 moss 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
