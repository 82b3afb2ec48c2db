import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** What is kept at an edge, ends with a row of one side, and where a piece begins. How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what is kept, ended and begun, row by row:', () => {
  it.each(
    annotatedIn(`
### a new piece ends the rows of a stitch pattern that were being told
Cable pattern:
  > talk
Row 1: k2, p2.
BACK
  > heading
Cast on 8 sts.
  > →8
Row 1: knit.
  > 8 Back/body 1 RS knit
Row 2: purl.
  > 8 Back/body 2 WS purl
  > = pattern cable of 0 plus 4 over 4: k2, p2 (4)
  > = Back, back, 1 to make, lines 5 6
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; hold

### the shaping beside a piece that is bound off
Cast on 10 sts.
  > →10
Knit 2 rows.
  > 10 Piece/body 1 RS knit · WS knit
Bind off all sts, at the same time dec 1 st at each end of every row.
  > 10→0 Piece/body 3 RS dec, k6, dec (8) · WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 3 stocking 4 mm; bind off

### a border at the beginning of a right front on a wrong-side row is its band
RIGHT FRONT
  > heading
Cast on 10 sts.
  > →10
Knit 1 row.
  > 10 Right front/body 1 RS knit
Work 2 rows in st st, keeping first 3 sts in garter st.
  > 10 Right front/body 2 WS p7, k3 · RS knit
  > = Right front, right front, 1 to make, lines 3 4
  > =   body from {castOn 10}, RS: 3 stocking 4 mm; hold

### a border at the same edge as what was shaped last
Cast on 12 sts.
  > →12
Dec 1 st at beg of next row.
  > 12→11 Piece/body 1 RS dec, knit to end (11)
Purl 1 row.
  > 11 Piece/body 2 WS purl
Work 2 rows in st st, keeping 2 sts at same edge in garter st.
  > 11 Piece/body 3 RS knit · WS purl to last 2 sts, k2
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 4 stocking 4 mm; hold

### a border at the end of the row
Cast on 12 sts.
  > →12
Purl 1 row.
  > 12 Piece/body 1 RS purl
Work 2 rows in st st, keeping last 2 sts in garter st.
  > 12 Piece/body 2 WS purl to last 2 sts, k2 · RS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 12}, RS: 3 stocking 4 mm; hold

### borders over more stitches than there are
Cast on 6 sts.
  > →6
Keeping 4 sts at each end in garter st, work 2 rows in st st.
  > 6 Piece/body 1 RS knit · WS purl
  > ✗ not enough stitches @2:1 needStitches 8, haveStitches 6
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 6}, RS: 2 stocking 4 mm; hold

### a buttonhole as often as rows allow and no more
RIGHT FRONT
  > heading
Cast on 12 sts.
  > →12
Make a buttonhole every 4th row.
  > 12
Work 10 rows in st st.
  > 12 Right front/body 1 RS knit · WS purl · RS knit 'Make a buttonhole every 4th row' · WS purl · RS knit · WS purl · RS knit 'Make a buttonhole every 4th row' · WS purl · RS knit · WS purl
Bind off.
  > 12→0 Right front/body 11 RS bind off all sts in pattern (0)
  > = Right front, right front, 1 to make, lines 4 5
  > =   body from {castOn 12}, RS: 10 stocking 4 mm (own words 3 7); bind off

### repeats that decrease, ended with one row more
Cast on 12 sts.
  > →12
Row 1: k2tog, knit to end.
  > 12→11 Piece/body 1 RS k2tog, knit to end (11)
Row 2: purl.
  > 11 Piece/body 2 WS purl
Rep these 2 rows until 8 sts remain, ending with a purl row.
  > 11→8 Piece/body 3 RS k2tog, knit to end (10) · WS purl · RS k2tog, knit to end (9) · WS purl · RS k2tog, knit to end (8) · WS purl
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 8 stocking 4 mm; hold

### a length that ends on the side named
GAUGE: 20 sts and 20 rows = 10 cm
  > talk
Cast on 12 sts.
  > →12
Work in st st for 5 cm, ending with a RS row.
  > 12 long: 11 rows Piece/body 1 RS knit · [WS purl · RS knit] ×5
Knit 1 row.
  > 12 Piece/body 12 WS knit
  > = gauge stitches 20, rows 20
  > = Piece, other, 1 to make, lines 3 4
  > =   body from {castOn 12}, RS: 11 stocking 4 mm (length {id 'piece/1', open false, mm 50, endSide RS, from here}); 1 stocking 4 mm; hold

### a section said to be in rib after a piece that was begun on the wrong side
Cast on 9 sts.
  > →9
Row 1 (WS): purl.
  > 9 Piece/body 1 WS purl
Knit 1 row.
  > 9 Piece/body 2 RS knit
Yoke, in k1, p1 rib:
  > heading 9
Work 3 rows.
  > 9 Piece/body 3 WS *p1, k1; repeat from * to last st, p1 · RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1
  > = Piece, other, 1 to make, lines 2 3 5
  > =   body from {castOn 9}, WS: 2 stocking 4 mm; 3 yoke in rib 1x1 matched 4 mm; hold

### more than there are on a holder
Cast on 12 sts.
  > →12
Knit 2 rows.
  > 12 Piece/body 1 RS knit · WS knit
Place 14 sts on a holder.
  > 12
  > ✗ count contradicts @3:1 statedStitches 14, foundStitches 12
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; hold

### the first stitches on a holder, and the rest worked
Cast on 12 sts.
  > →12
Knit 2 rows.
  > 12 Piece/body 1 RS knit · WS knit
Place first 5 sts on a holder.
  > 12→7
Knit 2 rows.
  > 7 Piece/left side 1 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2 4
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; split
  > =   left side from {part body, stitches 7, edge left}, RS: 2 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 5, edge right}, RS: hold
`),
  )('$title', expectAnnotated);
});
