import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('repeat rows, followed row by row,', () => {
  it.each(
    annotatedIn(`
### so many times
Cast on 9 sts.
  > →9
Row 1: k1, *p1, k1; rep from * to end.
  > 9 Piece/body 1 RS k1, *p1, k1; repeat from * to end
Row 2: p1, *k1, p1; rep from * to end.
  > 9 Piece/body 2 WS p1, *k1, p1; repeat from * to end
Rep rows 1 and 2 2 times.
  > 9 Piece/body 3 RS k1, *p1, k1; repeat from * to end · WS p1, *k1, p1; repeat from * to end · RS k1, *p1, k1; repeat from * to end · WS p1, *k1, p1; repeat from * to end
Rep last row 2 times.
  > 9 Piece/body 7 RS p1, *k1, p1; repeat from * to end · WS p1, *k1, p1; repeat from * to end
Rep last 3 rows once.
  > 9 Piece/body 9 RS p1, *k1, p1; repeat from * to end · WS p1, *k1, p1; repeat from * to end · RS p1, *k1, p1; repeat from * to end
Rep row 1 once in all.
  > 9
Rep these rows twice.
  > 9 Piece/body 12 WS p1, *k1, p1; repeat from * to end · RS p1, *k1, p1; repeat from * to end · WS p1, *k1, p1; repeat from * to end · RS p1, *k1, p1; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4 5 6 8
  > =   body from {castOn 9}, RS: 6 stocking 4 mm; 2 pattern in stocking 4 mm; 3 pattern in stocking 4 mm; 4 pattern in stocking 4 mm; hold

### until a measure {"gauge": {"stitches": 20, "rows": 28}}
Cast on 8 sts.
  > →8
Row 1: k1, p1, k6.
  > 8 Piece/body 1 RS k1, p1, k6
Row 2: k6, p1, k1.
  > 8 Piece/body 2 WS k6, p1, k1
Rep rows 1 and 2 until piece measures 2 cm.
  > 8 long: 4 rows Piece/body 3 RS k1, p1, k6 · WS k6, p1, k1 · RS k1, p1, k6 · WS k6, p1, k1
Rep rows 1 and 2 until 12 rows have been worked.
  > 8 Piece/body 7 RS k1, p1, k6 · [WS k6, p1, k1 · RS k1, p1, k6] ×2 · WS k6, p1, k1
Rep rows 1 and 2 until same length as back.
  > 8 as long as she likes: 2 rows Piece/body 13 RS k1, p1, k6 · WS k6, p1, k1
Dec 1 st at right edge of next row.
  > 8→7 Piece/body 15 RS dec, knit to end (7)
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; 4 stocking 4 mm (length {id 'piece/1', open false, mm 20, from start}); 6 pattern in stocking 4 mm; 2 pattern in stocking 4 mm (length {id 'piece/2', open, from start}); 1 pattern in stocking 4 mm; hold

### until a count
Cast on 20 sts.
  > →20
Row 1: k2tog, k to end.
  > 20→19 Piece/body 1 RS k2tog, knit to end (19)
Row 2: p.
  > 19 Piece/body 2 WS purl
Rep rows 1 and 2 until 17 sts remain.
  > 19→17 Piece/body 3 RS k2tog, knit to end (18) · WS purl · RS k2tog, knit to end (17)
Rep rows 1 and 2 until 20 sts remain.
  > 17→16 Piece/body 6 WS k2tog, knit to end (16) · RS purl
  > ✗ count contradicts @5:1 statedStitches 20, foundStitches 16
Row 1: k2tog, k to last 2 sts, k2tog.
  > 16→14 Piece/body 8 WS k2tog, knit to last 2 sts, k2tog (14)
Rep row 1 until 12 sts remain.
  > 14→12 Piece/body 9 RS k2tog, knit to last 2 sts, k2tog (12)
Row 1: k1, m1, k to last st, m1, k1.
  > 12→14 Piece/body 10 WS k1, m1, knit to last st, m1, k1 (14)
Rep row 1 until there are 18 sts.
  > 14→18 Piece/body 11 RS k1, m1, knit to last st, m1, k1 (16) · WS k1, m1, knit to last st, m1, k1 (18)
Row 1: k.
  > 18 Piece/body 13 RS knit
Rep row 1 until there are 20 sts.
  > 18 Piece/body 14 WS knit
  > ✗ count contradicts @11:1 statedStitches 20, foundStitches 18
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9 10 11
  > =   body from {castOn 20}, RS: 5 stocking 4 mm; 3 reverse stocking 4 mm; 6 garter 4 mm; hold

### as the pattern from here on
Cast on 8 sts.
  > →8
Row 1: k1, p7.
  > 8 Piece/body 1 RS k1, p7
Row 2: k7, p1.
  > 8 Piece/body 2 WS k7, p1
Rep rows 1 and 2.
  > 8
Work 3 rows.
  > 8 Piece/body 3 RS k1, p7 · WS k7, p1 · RS k1, p7
Row 1: k.
  > 8 Piece/body 6 WS knit
Row 2: p.
  > 8 Piece/body 7 RS purl
Rep last 2 rows.
  > 8
Work 2 rows in pattern.
  > 8 Piece/body 8 WS knit · RS purl
  > = Piece, other, 1 to make, lines 2 3 5 6 7 9
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; 5 pattern in stocking 4 mm; 2 reverse stocking 4 mm; hold

### rows of the fabric again
Cast on 8 sts.
  > →8
Work 2 rows in k2, p2 rib.
  > 8 Piece/body 1 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Dec 1 st at each end of next row.
  > 8→6 Piece/body 3 RS dec, p2, k2, dec (6)
Rep last row 2 times.
  > 6→2 Piece/body 4 WS dec, p1, k1, dec (4) · RS [dec] 2 times (2)
Rep last 2 rows until no more than it is.
  > own words 2 asks the count as long as she likes: 1 rows Piece/body 6 WS work in pattern 'Rep last 2 rows until no more than it is'
  > ✗ stitch or repeat expected @5:17 column 17
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, RS: 5 rib in rib 2x2 4 mm; 1 rib in rib 2x2 4 mm (own words 1, length {id 'piece/1', open, from here}); hold

### that nobody told
Rep rows 1 and 2 2 times.
Cast on 8 sts.
  > →8
Rep rows 1 and 2 2 times.
  > 8
  > ✗ no rows to repeat @3:1
Rep last row 2 times.
  > 8
  > ✗ no rows to repeat @4:1
K 1 row.
  > 8 Piece/body 1 RS knit
Rep rows 5 to 7 2 times.
  > 8
  > ✗ no rows to repeat @6:1
Bind off.
  > 8→0 Piece/body 2 WS bind off all sts in pattern (0)
Rep last row 2 times.
  > →0
  > = Piece, other, 1 to make, lines 5 7
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; bind off

### a cycle that ends on an odd row
Cast on 8 sts.
  > →8
Row 1: k1, p7.
  > 8 Piece/body 1 RS k1, p7
Row 2 and every alt row: p.
  > 8 Piece/body 2 WS purl
Row 3: k2, p6.
  > 8 Piece/body 3 RS k2, p6
Rep rows 1 to 4 once.
  > 8 Piece/body 4 WS purl · RS k1, p7 · WS purl · RS k2, p6 · WS purl
Work 2 rows in pattern.
  > 8 Piece/body 9 RS k1, p7 · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 8}, RS: 8 stocking 4 mm; 2 pattern in stocking 4 mm; hold

### rows that take all stitches
Cast on 4 sts.
  > →4
Row 1: k2tog, k to end.
  > 4→3 Piece/body 1 RS k2tog, knit to end (3)
Rep row 1 until 1 st remains.
  > 3→1 Piece/body 2 WS k2tog, knit to end (2) · RS k2tog, knit to end (1)
Row 1: bo 1.
  > 1→0 Piece/body 4 WS bind off 1 st (0)
Rep row 1 3 times.
  > →0
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 4}, RS: 3 stocking 4 mm; bind off

### without a gauge as long as she likes
Cast on 8 sts.
  > →8
Row 1: k1, p7.
  > 8 Piece/body 1 RS k1, p7
Row 2: k7, p1.
  > 8 Piece/body 2 WS k7, p1
Rep rows 1 and 2 until piece measures 10 cm, ending with a WS row.
  > 8 as long as she likes: 2 rows Piece/body 3 RS k1, p7 · WS k7, p1
Rep rows 1 and 2 until piece measures 5 cm from marker.
  > 8 as long as she likes: 2 rows Piece/body 5 RS k1, p7 · WS k7, p1
K 1 row.
  > 8 Piece/body 7 RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; 2 stocking 4 mm (length {id 'piece/1', open, mm 100, endSide WS, from start}); 2 pattern in stocking 4 mm (length {id 'piece/2', open, mm 50, from marker}); 1 pattern in stocking 4 mm; hold

### rows named as a pattern
Cast on 8 sts.
  > →8
Row 1: k1, p7.
  > 8 Piece/body 1 RS k1, p7
Row 2: k7, p1.
  > 8 Piece/body 2 WS k7, p1
These 2 rows form ridge pattern.
  > 8
Work 2 rows in st st.
  > 8 Piece/body 3 RS knit · WS purl
Work 2 rows in ridge pattern.
  > 8 Piece/body 5 RS k1, p7 · WS k7, p1
Dec 1 st at each end of next row.
  > 8→6 Piece/body 7 RS dec, p4, dec (6)
SLEEVE
  > heading 6
Cast on 8 sts.
  > 6→8
Work 3 rows in ridge pattern.
  > 8 Sleeve/body 1 RS k1, p7 · WS k7, p1 · RS k1, p7
These 3 rows form lace pattern.
  > 8
Work 1 row in lace pattern.
  > 8 Sleeve/body 4 WS work in pattern
  > ✗ fabric not known @12:1 name lace
  > = Piece, other, 1 to make, lines 2 3 5 6 7
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; 3 ridge in stocking 4 mm; hold
  > = Sleeve, sleeve, 1 to make, lines 10 12
  > =   body from {castOn 8}, RS: 3 ridge in stocking 4 mm; 1 lace in stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
