import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('even, followed row by row,', () => {
  it.each(
    annotatedIn(`
### rows of each fabric
Cast on 8 sts.
  > →8
Work 2 rows in garter st.
  > 8 Piece/body 1 RS knit · WS knit
Work 2 rows in st st.
  > 8 Piece/body 3 RS knit · WS purl
Work 2 rows in rev st st.
  > 8 Piece/body 5 RS purl · WS knit
Work 3 rows in moss st.
  > 8 Piece/body 7 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end · RS *k1, p1; repeat from * to end
Work 3 rows in k1, p1 rib.
  > 8 Piece/body 10 WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Work 2 rows in k2, p2 rib.
  > 8 Piece/body 13 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Work 4 rows in double moss st.
  > 8 Piece/body 15 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end · RS *p2, k2; repeat from * to end · WS *p2, k2; repeat from * to end
Work 2 rows in k3, p1 rib.
  > 8 Piece/body 19 RS *k3, p1; repeat from * to end · WS *k1, p3; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9
  > =   body from {castOn 8}, RS: 2 garter 4 mm; 2 stocking 4 mm; 2 reverse stocking 4 mm; 3 moss 4 mm; 3 rib in rib 1x1 4 mm; 2 rib in rib 2x2 4 mm; 4 'double moss' in moss 4 mm; 2 rib in rib 2x2 4 mm; hold

### the rib named before, or one and one
Cast on 8 sts.
  > →8
Work 2 rows in rib.
  > 8 Piece/body 1 RS work in pattern · WS work in pattern
  > ✗ fabric not known @2:1 name rib
Work 2 rows in k2, p2 rib.
  > 8 Piece/body 3 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Work 1 row in st st.
  > 8 Piece/body 5 RS knit
Work 2 rows in rib.
  > 8 Piece/body 6 WS *k2, p2; repeat from * to end · RS *k2, p2; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, RS: 2 rib in stocking 4 mm; 2 rib in rib 2x2 4 mm; 1 stocking 4 mm; 2 rib in rib 2x2 4 mm; hold

### a fabric that nobody knows
Cast on 8 sts.
  > →8
Work 2 rows in Basket pattern.
  > 8 Piece/body 1 RS work in pattern · WS work in pattern
  > ✗ fabric not known @2:1 name basket
Dec 1 st at each end of next row.
  > 8→6 Piece/body 3 RS dec, work in pattern to last 2 sts, dec (6)
Work in it patt for 2 rows.
  > 6 Piece/body 4 WS work in pattern · RS work in pattern
K 1 row.
  > 6 Piece/body 6 WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, RS: 6 basket in stocking 4 mm; hold

### 'knit even', garter where no stocking stitch is
Cast on 8 sts.
  > →8
K even for 2 rows.
  > 8 Piece/body 1 RS knit · WS knit
Work 2 rows in st st.
  > 8 Piece/body 3 RS knit · WS purl
K even for 2 rows.
  > 8 Piece/body 5 RS knit · WS purl
K every row for 2 rows.
  > 8 Piece/body 7 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, RS: 2 garter 4 mm; 4 stocking 4 mm; 2 garter 4 mm; hold

### 'knit even' after the first row
Cast on 8 sts.
  > →8
Next row: k.
  > 8 Piece/body 1 RS knit
K for 2 rows.
  > 8 Piece/body 2 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 8}, RS: 3 stocking 4 mm; hold

### begun on the side that is said
Cast on 8 sts.
  > →8
Beg with a p row, work 2 rows in st st.
  > 8 Piece/body 1 WS purl · RS knit
Beg with a k row, work 2 rows in st st.
  > 8 Piece/body 3 WS knit · RS purl
Work 1 row in st st.
  > 8 Piece/body 5 WS purl
Beg with a p row, work 2 rows in st st.
  > 8 Piece/body 6 RS purl · WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, WS: 2 stocking 4 mm; 2 reverse stocking 4 mm; 1 stocking 4 mm; 2 reverse stocking 4 mm; hold

### stocking stitch begun with a purl row on the right side is reverse
Cast on 8 sts.
  > →8
Work 1 row in st st.
  > 8 Piece/body 1 RS knit
Beg with a k row, cont in st st for 2 rows.
  > 8 Piece/body 2 WS knit · RS purl
Beg with a p row, cont in rev st st for 2 rows.
  > 8 Piece/body 4 WS knit · RS purl
Beg with a p row, cont in garter st for 2 rows.
  > 8 Piece/body 6 WS knit · RS knit
Beg with a p row, cont in patt for 2 rows.
  > 8 Piece/body 8 WS knit · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; 4 reverse stocking 4 mm; 4 garter 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
