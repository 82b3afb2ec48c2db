import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('even in a pattern, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a stitch pattern on a count that is no multiple
Lace pattern (multiple of 4 sts plus 1)
Row 1: *k2, yo, k2tog; rep from * to last st, k1.
Row 2: p.
BACK
  > heading
Cast on 14 sts.
  > →14
Work 2 rows in lace pattern.
  > 14
  > ✗ not a multiple @6:1 name lace, ofStitches 4, plusStitches 1, stitches 14
Work 2 rows in lace pattern.
  > 14
  > ✗ not a multiple @7:1 name lace, ofStitches 4, plusStitches 1, stitches 14
SLEEVE
  > heading 14
Cast on 13 sts.
  > 14→13
Work 3 rows in lace patt.
  > 13 Sleeve/body 1 RS *k2, yo, k2tog; repeat from * to last st, k1 · WS purl · RS *k2, yo, k2tog; repeat from * to last st, k1
Work 2 rows in st st.
  > 13 Sleeve/body 4 WS purl · RS knit
Work 1 row in lace patt.
  > 13 Sleeve/body 6 WS *k2, yo, k2tog; repeat from * to last st, k1
  > = pattern lace of 4 plus 1 over 9: *k2, yo, k2tog; repeat from * to last st, k1 (9) · purl (9)
  > = Sleeve, sleeve, 1 to make, lines 10 11 12
  > =   body from {castOn 13}, RS: 3 lace in stocking 4 mm; 2 stocking 4 mm; 1 lace in stocking 4 mm; hold

### a pattern on fewer stitches than its edges
Lace pattern (multiple of 4 sts plus 3)
Row 1: *k2, yo, k2tog; rep from * to last 3 sts, k3.
Row 2: p.
BACK
  > heading
Cast on 2 sts.
  > →2
Work 1 row in lace pattern.
  > 2
  > ✗ not enough stitches @6:1 needStitches 3, haveStitches 2
  > = pattern lace of 4 plus 3 over 11: *k2, yo, k2tog; repeat from * to last 3 sts, k3 (11) · purl (11)

### the only pattern, by no name
Lace (multiple of 2 sts)
Row 1: *yo, k2tog; rep from *.
Row 2: p.
BACK
  > heading
Cast on 4 sts.
  > →4
Work in main stitch for 3 rows.
  > own words 4 asks the count Back/body 1 RS work in pattern 'Work in main stitch for 3 rows' · WS work in pattern 'Work in main stitch for 3 rows' · RS work in pattern 'Work in main stitch for 3 rows'
  > ✗ stitch or repeat expected @6:1 column 1
Work in the same stitch for 1 row.
  > 4 Back/body 4 WS *yo, k2tog; repeat from * to end
  > = pattern lace of 2 plus 0 over 4: *yo, k2tog; repeat from * to end (4) · purl (4)
  > = Back, back, 1 to make, lines 6 7
  > =   body from {castOn 4}, RS: 3 stocking 4 mm (own words 1 2 3); 1 lace in stocking 4 mm; hold

### as set, without rows
Cast on 4 sts.
  > →4
Work as set.
  > 4
  > ✗ fabric not known @2:1 name pattern
Work even.
  > 4
Row 1: k1, p1, k1, p1.
  > 4 Piece/body 1 RS k1, p1, k1, p1
Row 2: p1, k1, p1, k1.
  > 4 Piece/body 2 WS p1, k1, p1, k1
Work as set for 3 rows.
  > 4 Piece/body 3 RS k1, p1, k1, p1 · WS p1, k1, p1, k1 · RS k1, p1, k1, p1
Dec 1 st at each end of next row.
  > 4→2 Piece/body 6 WS [dec] 2 times (2)
Work 1 row.
  > 2 Piece/body 7 RS p1, k1
  > = Piece, other, 1 to make, lines 4 5 6 7 8
  > =   body from {castOn 4}, RS: 2 pattern in stocking 4 mm; 5 pattern in stocking 4 mm; hold

### as set, in rows that are one fabric
Cast on 4 sts.
  > →4
Row 1: k.
  > 4 Piece/body 1 RS knit
Row 2: p.
  > 4 Piece/body 2 WS purl
Work in pattern for 2 rows.
  > 4 Piece/body 3 RS knit · WS purl
Row 1: p.
  > 4 Piece/body 5 RS purl
Row 2: k.
  > 4 Piece/body 6 WS knit
Work in pattern for 2 rows.
  > 4 Piece/body 7 RS purl · WS knit
Row 1: k.
  > 4 Piece/body 9 RS knit
Row 2: k.
  > 4 Piece/body 10 WS knit
Work in pattern for 2 rows.
  > 4 Piece/body 11 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9 10
  > =   body from {castOn 4}, RS: 6 stocking 4 mm; 4 reverse stocking 4 mm; 2 garter 4 mm; hold

### as set after rows that shape
Cast on 8 sts.
  > →8
Row 1: k1, k2tog, k to end.
  > 8→7 Piece/body 1 RS k1, k2tog, knit to end (7)
Row 2: p.
  > 7 Piece/body 2 WS purl
Work in pattern for 2 rows.
  > 7 Piece/body 3 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; hold

### fabrics that begin on a wrong side
Cast on 8 sts.
  > →8
K 1 row.
  > 8 Piece/body 1 RS knit
Work 2 rows in moss st.
  > 8 Piece/body 2 WS *p1, k1; repeat from * to end · RS *k1, p1; repeat from * to end
Work 1 row in st st.
  > 8 Piece/body 4 WS purl
Work 2 rows in k2, p2 rib.
  > 8 Piece/body 5 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; 2 moss 4 mm; 1 stocking 4 mm; 2 rib in rib 2x2 4 mm; hold

### sections with needles and headings
Cast on 8 sts.
  > →8
Using 3 mm needles, work 2 rows in k1, p1 rib.
  > 8 Piece/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Change to 4 mm needles.
  > talk 8
Work 4 rows in st st.
  > 8 Piece/body 3 RS knit · WS purl · RS knit · WS purl
Work 2 rows in st st.
  > 8 Piece/body 7 RS knit · WS purl
SHAPE WAIST
  > heading 8
Work 2 rows.
  > 8 Piece/body 9 RS knit · WS purl
Change to 50 mm needles.
  > talk 8
Work 2 rows.
  > 8 Piece/body 11 RS knit · WS purl
Change to larger needles.
  > talk 8
Work 2 rows.
  > 8 Piece/body 13 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 4 5 7 9 11
  > =   body from {castOn 8}, RS: 2 rib in rib 1x1 3 mm; 6 stocking 4 mm; 2 'shape waist' in stocking 4 mm; 2 'shape waist' in stocking 4 mm; 2 'shape waist' in stocking 4 mm; hold

### the rib of the last row, when another fabric is named but not worked
Cast on 8 sts.
  > →8
Work 1 row in k2, p2 rib.
  > 8 Piece/body 1 RS *k2, p2; repeat from * to end
Work in st st.
  > 8
Work 2 rows in rib.
  > 8 Piece/body 2 WS *k2, p2; repeat from * to end · RS *k2, p2; repeat from * to end
  > = Piece, other, 1 to make, lines 2 4
  > =   body from {castOn 8}, RS: 1 rib in rib 2x2 4 mm; 2 rib in rib 2x2 4 mm; hold

### three rows that are all knit, or not
Cast on 8 sts.
  > →8
Rows 1 to 3: k.
  > 8 Piece/body 1 RS knit · WS knit · RS knit
Work in pattern for 3 rows.
  > 8 Piece/body 4 WS knit · RS knit · WS knit
Row 1: k.
  > 8 Piece/body 7 RS knit
Rep row 1 2 times.
  > 8 Piece/body 8 WS knit · RS knit
Work 2 rows.
  > 8 Piece/body 10 WS knit · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 8}, RS: 3 stocking 4 mm; 6 pattern in stocking 4 mm; 2 garter 4 mm; hold

### a multiple of two on an odd count
Rib pattern (multiple of 2 sts)
Row 1: *k1, p1; rep from *.
Row 2: *p1, k1; rep from *.
Cast on 7 sts.
  > →7
Work in rib pattern for 2 rows.
  > 7
  > ✗ not a multiple @5:1 name rib, ofStitches 2, plusStitches 0, stitches 7
  > = pattern rib of 2 plus 0 over 4: *k1, p1; repeat from * to end (4) · *p1, k1; repeat from * to end (4)

### a pattern of three rows, as long as she likes
Ridge pattern (multiple of 1 sts)
Row 1: k.
Row 2: p.
Row 3: p.
Cast on 6 sts.
  > →6
Work in ridge pattern until piece measures 10 cm.
  > 6 as long as she likes: 6 rows Piece/body 1 RS knit · WS purl · RS purl · WS knit · RS purl · WS purl
Work 2 rows.
  > 6 Piece/body 7 RS knit · WS purl
  > = pattern ridge of 1 plus 0 over 2: knit (2) · purl (2) · purl (2)
  > = Piece, other, 1 to make, lines 6 7
  > =   body from {castOn 6}, RS: 6 ridge in stocking 4 mm (length {id 'piece/1', open, mm 100, from start}); 2 ridge in stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
