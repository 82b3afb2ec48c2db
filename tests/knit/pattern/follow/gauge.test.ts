import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('gauge, followed row by row,', () => {
  it.each(
    annotatedIn(`
### in one line or in two
Gauge: 20 sts and 28 rows = 10 cm in st st on 4 mm needles.
  > talk
Cast on 8 sts.
  > →8
Work in st st for 2 cm.
  > 8 long: 6 rows Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Work in garter st for 2 cm.
  > 8 long: 8 rows Piece/body 7 RS knit · [WS knit · RS knit] ×3 · WS knit
Gauge: 24 sts = 10 cm.
  > talk 8
Work in st st for 2 cm.
  > 8 long: 6 rows Piece/body 15 RS knit · [WS purl · RS knit] ×2 · WS purl
Gauge: 40 rows = 10 cm in garter st.
  > talk 8
Work in garter st for 2 cm.
  > 8 long: 8 rows Piece/body 21 RS knit · [WS knit · RS knit] ×3 · WS knit
  > = gauge stitches 24, rows 40, fabric garter, needle 4
  > = Piece, other, 1 to make, lines 3 4 6 8
  > =   body from {castOn 8}, RS: 6 stocking 4 mm (length {id 'piece/1', open false, mm 20, from here}); 8 garter 4 mm (length {id 'piece/2', open false, mm 20, from here}); 6 stocking 4 mm (length {id 'piece/3', open false, mm 20, from here}); 8 garter 4 mm (length {id 'piece/4', open false, mm 20, from here}); hold

### stitches first, rows later
Gauge: 5 sts = 1 inch.
  > talk
Cast on 8 sts.
  > →8
Work in st st for 2 cm.
  > 8 as long as she likes: 2 rows Piece/body 1 RS knit · WS purl
Gauge: 7 rows = 1 inch.
  > talk 8
Work in st st for 2 cm.
  > 8 long: 6 rows Piece/body 3 RS knit · [WS purl · RS knit] ×2 · WS purl
  > = gauge stitches 19.68503937007874, rows 27.559055118110237
  > = Piece, other, 1 to make, lines 3 5
  > =   body from {castOn 8}, RS: 2 stocking 4 mm (length {id 'piece/1', open, mm 20, from here}); 6 stocking 4 mm (length {id 'piece/2', open false, mm 20, from here}); hold

### in a pattern of its own
Gauge: 20 sts and 28 rows = 10 cm in Lace pattern.
  > talk
Cast on 8 sts.
  > →8
Work in garter st for 2 cm.
  > 8 long: 6 rows Piece/body 1 RS knit · [WS knit · RS knit] ×2 · WS knit
Gauge: 20 sts and 40 rows = 10 cm in k1, p1 rib.
  > talk 8
Work in st st for 2 cm.
  > 8 long: 8 rows Piece/body 7 RS knit · [WS purl · RS knit] ×3 · WS purl
Gauge: 20 sts and 30 rows = 10 cm in as set.
  > talk 8
Work in st st for 2 cm.
  > 8 long: 6 rows Piece/body 15 RS knit · [WS purl · RS knit] ×2 · WS purl
  > = gauge stitches 20, rows 30
  > = Piece, other, 1 to make, lines 3 5 7
  > =   body from {castOn 8}, RS: 6 garter 4 mm (length {id 'piece/1', open false, mm 20, from here}); 8 stocking 4 mm (length {id 'piece/2', open false, mm 20, from here}); 6 stocking 4 mm (length {id 'piece/3', open false, mm 20, from here}); hold

### of no size
Gauge: 0 sts and 28 rows = 10 cm.
  > talk
Gauge: 20 sts and 0 rows = 10 cm.
  > talk
Cast on 8 sts.
  > →8
Work in st st for 2 cm.
  > 8 as long as she likes: 2 rows Piece/body 1 RS knit · WS purl
  > = Piece, other, 1 to make, lines 4
  > =   body from {castOn 8}, RS: 2 stocking 4 mm (length {id 'piece/1', open, mm 20, from here}); hold

### her own goes before the text's {"gauge": {"stitches": 20, "rows": 30}, "needle": 5}
Gauge: 20 sts and 28 rows = 10 cm in st st on 4 mm needles.
  > talk
Cast on 8 sts.
  > →8
Work in st st for 2 cm.
  > 8 long: 6 rows Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
  > = gauge stitches 20, rows 30
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 8}, RS: 6 stocking 5 mm (length {id 'piece/1', open false, mm 20, from here}); hold

### in the fabric that her own was counted in {"gauge": {"stitches": 20, "rows": 40, "fabric": "garter"}}
Cast on 8 sts.
  > →8
Work in st st for 2 cm.
  > 8 long: 6 rows Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Work in garter st for 2 cm.
  > 8 long: 8 rows Piece/body 7 RS knit · [WS knit · RS knit] ×3 · WS knit
  > = gauge stitches 20, rows 40, fabric garter
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 8}, RS: 6 stocking 4 mm (length {id 'piece/1', open false, mm 20, from here}); 8 garter 4 mm (length {id 'piece/2', open false, mm 20, from here}); hold
`),
  )('comes out as $title', expectAnnotated);
});
