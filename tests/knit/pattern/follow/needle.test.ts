import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('needle, followed row by row,', () => {
  it.each(
    annotatedIn(`
### of a size that is one
Cast on 8 sts.
  > →8
Change to 39 mm needles.
  > talk 8
K 1 row.
  > 8 Piece/body 1 RS knit
Change to 40 mm needles.
  > talk 8
K 1 row.
  > 8 Piece/body 2 WS knit
Change to 0 mm needles.
  > talk 8
K 1 row.
  > 8 Piece/body 3 RS knit
Change to 3.5 mm needles.
  > talk 8
K 1 row.
  > 8 Piece/body 4 WS knit
  > = Piece, other, 1 to make, lines 3 5 7 9
  > =   body from {castOn 8}, RS: 1 stocking 39 mm; 1 stocking 39 mm; 1 stocking 39 mm; 1 stocking 3.5 mm; hold

### that ends the rib {"gauge": {"stitches": 20, "rows": 28}}
Cast on 8 sts.
  > →8
Work 4 rows in k1, p1 rib.
  > 8 Piece/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Change to 4 mm needles.
  > talk 8
Work in st st until piece measures 2 cm above rib.
  > 8 long: 6 rows Piece/body 5 RS knit · [WS purl · RS knit] ×2 · WS purl
Change to 5 mm needles.
  > talk 8
Work even until piece measures 4 cm above rib.
  > 8 long: 6 rows Piece/body 11 RS knit · [WS purl · RS knit] ×2 · WS purl
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 2 4 6
  > =   body from {castOn 8}, RS: 4 rib in rib 1x1 4 mm; 6 stocking 4 mm (length {id 'piece/1', open false, mm 20, from rib}); 6 stocking 5 mm (length {id 'piece/2', open false, mm 40, from rib}); hold
`),
  )('comes out as $title', expectAnnotated);
});
