import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('a pattern that goes on, followed row by row,', () => {
  it.each(
    annotatedIn(`
### under increases and decreases, beyond the stitches that were worked
Cast on 18 sts.
  > →18
Row 1: *k2, p2; rep from * to last 2 sts, k2.
  > 18 Piece/body 1 RS *k2, p2; repeat from * to last 2 sts, k2
Row 2: *p2, k2; rep from * to last 2 sts, p2.
  > 18 Piece/body 2 WS *p2, k2; repeat from * to last 2 sts, p2
Rep rows 1 and 2 once.
  > 18 Piece/body 3 RS *k2, p2; repeat from * to last 2 sts, k2 · WS *p2, k2; repeat from * to last 2 sts, p2
Inc 1 st at each end of next 6 rows.
  > 18→30 Piece/body 5 RS inc, k1, *p2, k2; repeat from * to last 4 sts, p2, k1, inc (20) · WS inc, *p2, k2; repeat from * to last 3 sts, p2, inc (22) · RS inc, p1, *k2, p2; repeat from * to last 4 sts, k2, p1, inc (24) · WS inc, *k2, p2; repeat from * to last 3 sts, k2, inc (26) · RS inc, k1, *p2, k2; repeat from * to last 4 sts, p2, k1, inc (28) · WS inc, *p2, k2; repeat from * to last 3 sts, p2, inc (30)
Work 2 rows.
  > 30 Piece/body 11 RS *k2, p2; repeat from * to last 2 sts, k2 · WS *p2, k2; repeat from * to last 2 sts, p2
Dec 1 st at each end of next 8 rows.
  > 30→14 Piece/body 13 RS dec, *k2, p2; repeat from * to last 4 sts, k2, dec (28) · WS dec, p1, *k2, p2; repeat from * to last 5 sts, k2, p1, dec (26) · RS dec, *p2, k2; repeat from * to last 4 sts, p2, dec (24) · WS dec, k1, *p2, k2; repeat from * to last 5 sts, p2, k1, dec (22) · RS dec, *k2, p2; repeat from * to last 4 sts, k2, dec (20) · WS dec, p1, *k2, p2; repeat from * to last 5 sts, k2, p1, dec (18) · RS dec, *p2, k2; repeat from * to last 4 sts, p2, dec (16) · WS dec, k1, *p2, k2; repeat from * to last 5 sts, p2, k1, dec (14)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 18}, RS: 4 rib in rib 2x2 4 mm; 16 pattern in stocking 4 mm; hold

### with an edge of its own
Cast on 21 sts.
  > →21
Row 1: k3, *p1, k2; rep from * to last 3 sts, k3.
  > 21 Piece/body 1 RS k3, *p1, k2; repeat from * to last 3 sts, k3
Row 2: p3, *p2, k1; rep from * to last 3 sts, p3.
  > 21 Piece/body 2 WS p3, *p2, k1; repeat from * to last 3 sts, p3
Rep rows 1 and 2 once.
  > 21 Piece/body 3 RS k3, *p1, k2; repeat from * to last 3 sts, k3 · WS p3, *p2, k1; repeat from * to last 3 sts, p3
Inc 1 st at each end of next 4 rows.
  > 21→29 Piece/body 5 RS inc, *k2, p1; repeat from * to last 5 sts, k4, inc (23) · WS inc, p5, *k1, p2; repeat from * to last 5 sts, k1, p3, inc (25) · RS inc, k4, *p1, k2; repeat from * to last 8 sts, p1, k5, p1, inc (27) · WS inc, p1, k1, p5, *k1, p2; repeat from * to last 7 sts, k1, p5, inc (29)
Dec 1 st at right edge of next 4 rows.
  > 29→25 Piece/body 9 RS dec, k5, *p1, k2; repeat from * to last 10 sts, p1, k5, p1, k2, p1 (28) · WS k1, p2, k1, p5, *k1, p2; repeat from * to last 7 sts, k1, p4, dec (27) · RS dec, k3, *p1, k2; repeat from * to last 10 sts, p1, k5, p1, k2, p1 (26) · WS k1, p2, k1, p5, *k1, p2; repeat from * to last 2 sts, dec (25)
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 21}, RS: 4 stocking 4 mm; 8 pattern in stocking 4 mm; hold

### without a repeat
Cast on 7 sts.
  > →7
Row 1: k1, p2, k3, p1.
  > 7 Piece/body 1 RS k1, p2, k3, p1
Row 2: k1, p3, k2, p1.
  > 7 Piece/body 2 WS k1, p3, k2, p1
Rep rows 1 and 2 once.
  > 7 Piece/body 3 RS k1, p2, k3, p1 · WS k1, p3, k2, p1
Inc 1 st at each end of next 4 rows.
  > 7→15 Piece/body 5 RS inc, p2, k3, inc (9) · WS inc, k1, p3, k2, p1, inc (11) · RS inc, p1, k1, p2, k3, p1, k1, inc (13) · WS inc, p2, k1, p3, k2, p1, k1, p1, inc (15)
Dec 1 st at left edge of next 4 rows.
  > 15→11 Piece/body 9 RS k3, p1, k1, p2, k3, p1, k2, dec (14) · WS dec, p1, k1, p3, k2, p1, k1, purl to end (13) · RS k3, p1, k1, p2, k3, p1, dec (12) · WS dec, p3, k2, p1, k1, purl to end (11)
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 7}, RS: 4 stocking 4 mm; 8 pattern in stocking 4 mm; hold

### narrow ones
Cast on 4 sts.
  > →4
Row 1: k1, p2, k1.
  > 4 Piece/body 1 RS k1, p2, k1
Row 2: p1, k2, p1.
  > 4 Piece/body 2 WS p1, k2, p1
Rep rows 1 and 2 once.
  > 4 Piece/body 3 RS k1, p2, k1 · WS p1, k2, p1
Inc 1 st at each end of next 6 rows.
  > 4→16 Piece/body 5 RS inc, p2, inc (6) · WS inc, p1, k2, p1, inc (8) · RS inc, k2, p2, k2, inc (10) · WS inc, p3, k2, p2, k1, inc (12) · RS inc, k1, p1, k2, p2, k3, p1, inc (14) · WS inc, p1, k1, p3, k2, p2, k1, p2, inc (16)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 4}, RS: 4 stocking 4 mm; 6 pattern in stocking 4 mm; hold

### after a row that shapes, and from its fourth row on
Cast on 9 sts.
  > →9
Next row: k2tog, k to end.
  > 9→8 Piece/body 1 RS k2tog, knit to end (8)
Row 1: k1, p7.
  > 8 Piece/body 2 WS k1, p7
Row 2 and every alt row: k.
  > 8 Piece/body 3 RS knit
Row 3: k2, p6.
  > 8 Piece/body 4 WS k2, p6
Work in pattern for 3 rows.
  > 8 Piece/body 5 RS knit · WS k1, p7 · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 9}, RS: 4 stocking 4 mm; 3 pattern in stocking 4 mm; hold

### some of its rows
Cast on 8 sts.
  > →8
Row 1: k1, p7.
  > 8 Piece/body 1 RS k1, p7
Row 2: k7, p1.
  > 8 Piece/body 2 WS k7, p1
Row 3: k2, p6.
  > 8 Piece/body 3 RS k2, p6
Row 4: k6, p2.
  > 8 Piece/body 4 WS k6, p2
Rep rows 2 to 3 twice.
  > 8 Piece/body 5 RS k7, p1 · WS k2, p6 · RS k7, p1 · WS k2, p6
Work 2 rows.
  > 8 Piece/body 9 RS k7, p1 · WS k2, p6
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 8}, RS: 8 stocking 4 mm; 2 pattern in stocking 4 mm; hold

### rows that nobody numbered
Cast on 8 sts.
  > →8
K 1 row.
  > 8 Piece/body 1 RS knit
P 2 rows.
  > 8 Piece/body 2 WS purl · RS purl
Rep last 3 rows.
  > 8
Work 3 rows.
  > 8 Piece/body 4 WS knit · RS purl · WS purl
  > = Piece, other, 1 to make, lines 2 3 5
  > =   body from {castOn 8}, RS: 3 stocking 4 mm; 3 pattern in stocking 4 mm; hold

### to counts that its rows pass or meet
Cast on 20 sts.
  > →20
Row 1: k2tog, k to last 2 sts, k2tog.
  > 20→18 Piece/body 1 RS k2tog, knit to last 2 sts, k2tog (18)
Row 2: p.
  > 18 Piece/body 2 WS purl
Rep rows 1 and 2 until 13 sts remain.
  > 18→14 Piece/body 3 RS k2tog, knit to last 2 sts, k2tog (16) · WS purl · RS k2tog, knit to last 2 sts, k2tog (14) · WS purl
  > ✗ count contradicts @4:1 statedStitches 13, foundStitches 14
Rep rows 1 and 2 until 12 sts remain.
  > 14→12 Piece/body 7 RS k2tog, knit to last 2 sts, k2tog (12)
Row 1: k1, m1, k to last st, m1, k1.
  > 12→14 Piece/body 8 WS k1, m1, knit to last st, m1, k1 (14)
Row 2: p.
  > 14 Piece/body 9 RS purl
Rep rows 1 and 2 until there are 17 sts.
  > 14→16 Piece/body 10 WS k1, m1, knit to last st, m1, k1 (16) · RS purl
  > ✗ count contradicts @8:1 statedStitches 17, foundStitches 16
Rep rows 1 and 2 until there are 20 sts.
  > 16→20 Piece/body 12 WS k1, m1, knit to last st, m1, k1 (18) · RS purl · WS k1, m1, knit to last st, m1, k1 (20)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; 7 reverse stocking 4 mm; hold

### into another fabric, from the wrong side {"gauge": {"stitches": 20, "rows": 28}}
Cast on 8 sts.
  > →8
Work in st st until piece measures 4 mm.
  > 8 long: 1 rows Piece/body 1 RS knit
Work even for 1 mm, ending with a RS row.
  > 8
Work even for 4 mm.
  > 8 long: 1 rows Piece/body 2 WS purl
Work even for 6 mm, ending with a WS row.
  > 8 long: 2 rows Piece/body 3 RS knit · WS purl
Work even for 1 mm.
  > 8
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 2 4 5
  > =   body from {castOn 8}, RS: 1 stocking 4 mm (length {id 'piece/1', open false, mm 4, from start}); 1 stocking 4 mm (length {id 'piece/3', open false, mm 4, from here}); 2 stocking 4 mm (length {id 'piece/4', open false, mm 6, endSide WS, from here}); hold

### an open stretch, another fabric named, and a row on a side
Cast on 8 sts.
  > →8
Work in st st until piece measures 10 cm.
  > 8 as long as she likes: 3 rows Piece/body 1 RS knit · WS purl · RS knit
Work in moss st.
  > 8
Row 1 (WS): k8.
  > 8 Piece/body 4 WS k8
Work 2 rows in moss st.
  > 8 Piece/body 5 RS *p1, k1; repeat from * to end · WS *k1, p1; repeat from * to end
  > = Piece, other, 1 to make, lines 2 4 5
  > =   body from {castOn 8}, RS: 3 stocking 4 mm (length {id 'piece/1', open, mm 100, from start}); 3 moss 4 mm; hold

### in rows that spread over two lines of the text
Cast on 8 sts. Knit 2 rows, then purl 1 row,
then knit 3 rows and work
in st st for 2 rows.
  > lines 1 to 3 8 Piece/body 1 RS knit · WS knit · RS purl · [WS knit · RS knit] ×2 · WS purl
K 1 row.
  > 8 Piece/body 9 RS knit
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 8}, RS: 6 stocking 4 mm; 3 stocking 4 mm; hold

### evenly without a word for the work
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Piece/body 1 RS knit
Next row: inc 2 sts evenly.
  > 20→22 Piece/body 2 WS p5, m1p, purl to last 5 sts, m1p, p5 (22)
Work 1 row in rev st st.
  > 22 Piece/body 3 RS purl
Next row: inc 2 sts evenly.
  > 22→24 Piece/body 4 WS k6, m1, knit to last 5 sts, m1, k5 (24)
Work 1 row in k1, p1 rib.
  > 24 Piece/body 5 RS *k1, p1; repeat from * to end
Next row: dec 2 sts evenly.
  > 24→22 Piece/body 6 WS [k1, p1, k1, p1, k1, p2tog, p1, k1, p1, k1, p1] 2 times (22)
Next row: k, dec 2 sts evenly.
  > 22→20 Piece/body 7 RS k5, k2tog, knit to last 6 sts, k2tog, k4 (20)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; 2 reverse stocking 4 mm; 3 rib in rib 1x1 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
