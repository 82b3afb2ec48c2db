import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts reckoned by hand. */
describe('rows that are worked again, followed row by row,', () => {
  it.each(
    annotatedIn(`
### rows again, by number, by how many, to a count
Cast on 24 sts.
  > →24
Row 1 (RS): K1, *k2, p2; rep from * to last 3 sts, k3.
  > 24 Piece/body 1 RS k1, *k2, p2; repeat from * to last 3 sts, k3
Row 2: P3, *k2, p2; rep from * to last st, k1.
  > 24 Piece/body 2 WS p3, *k2, p2; repeat from * to last st, k1
Rep rows 1 and 2 twice.
  > 24 Piece/body 3 RS k1, *k2, p2; repeat from * to last 3 sts, k3 · WS p3, *k2, p2; repeat from * to last st, k1 · RS k1, *k2, p2; repeat from * to last 3 sts, k3 · WS p3, *k2, p2; repeat from * to last st, k1
Rep last 2 rows once more.
  > 24 Piece/body 7 RS k1, *k2, p2; repeat from * to last 3 sts, k3 · WS p3, *k2, p2; repeat from * to last st, k1
Rep row 2.
  > 24
Work 3 rows in pattern.
  > 24 Piece/body 9 RS p3, *k2, p2; repeat from * to last st, k1 · WS p3, *k2, p2; repeat from * to last st, k1 · RS p3, *k2, p2; repeat from * to last st, k1
Next row (RS): Ssk, k to last 2 sts, k2tog.
  > 24→22 Piece/body 12 WS ssk, knit to last 2 sts, k2tog (22)
  > ✗ side differs @8:1 saidSide RS, foundSide WS
Next row: P to end.
  > 22 Piece/body 13 RS purl
Rep last 2 rows 2 times more.
  > 22→18 Piece/body 14 WS ssk, knit to last 2 sts, k2tog (20) · RS purl · WS ssk, knit to last 2 sts, k2tog (18) · RS purl
Rep last 2 rows until 12 sts remain.
  > 18→12 Piece/body 18 WS ssk, knit to last 2 sts, k2tog (16) · RS purl · WS ssk, knit to last 2 sts, k2tog (14) · RS purl · WS ssk, knit to last 2 sts, k2tog (12)
Rep last 2 rows until 9 sts remain.
  > 12→10 Piece/body 23 RS purl · WS ssk, knit to last 2 sts, k2tog (10)
  > ✗ count contradicts @12:1 statedStitches 9, foundStitches 10
  > = Piece, other, 1 to make, lines 2 3 4 5 7 8 9 10 11 12
  > =   body from {castOn 24}, RS: 6 moss 4 mm; 2 moss 4 mm; 3 pattern in stocking 4 mm; 13 reverse stocking 4 mm; hold

### rows again to a length, with and without a row that is the last {"gauge":{"stitches":20,"rows":28}}
Cast on 20 sts.
  > →20
Row 1: K to end.
  > 20 Piece/body 1 RS knit
Row 2: P to end.
  > 20 Piece/body 2 WS purl
Row 3: *K1, p1; rep from * to end.
  > 20 Piece/body 3 RS *k1, p1; repeat from * to end
Row 4: P to end.
  > 20 Piece/body 4 WS purl
Rep rows 1 to 4 until piece measures 5 cm, ending with row 2.
  > 20 long: 10 rows Piece/body 5 RS knit · WS purl · RS *k1, p1; repeat from * to end · WS purl · RS knit · WS purl · RS *k1, p1; repeat from * to end · WS purl · RS knit · WS purl
Rep rows 1 to 4 for 3 cm.
  > 20 long: 8 rows Piece/body 15 RS knit · WS purl · RS *k1, p1; repeat from * to end · WS purl · RS knit · WS purl · RS *k1, p1; repeat from * to end · WS purl
Rep rows 3 and 4 until piece measures 12 cm, ending with row 3 of pattern.
  > 20 long: 11 rows Piece/body 23 RS *k1, p1; repeat from * to end · [WS purl · RS *k1, p1; repeat from * to end] ×5
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; 1 rib in rib 1x1 4 mm; 1 stocking 4 mm; 10 stocking 4 mm (length {id 'piece/1', open false, mm 50, from start}); 8 pattern in stocking 4 mm (length {id 'piece/2', open false, mm 30, from here}); 11 pattern in stocking 4 mm (length {id 'piece/3', open false, mm 120, from start}); hold

### a row that every second one is
Cast on 20 sts.
  > →20
Row 1: K2, *yo, k2tog; rep from * to end.
  > 20 Piece/body 1 RS k2, *yo, k2tog; repeat from * to end
Row 2 and every other row: Purl.
  > 20 Piece/body 2 WS purl
Row 3: K1, *yo, k2tog; rep from * to last st, k1.
  > 20 Piece/body 3 RS k1, *yo, k2tog; repeat from * to last st, k1
Rep rows 1 to 4 twice.
  > 20 Piece/body 4 WS purl · RS k2, *yo, k2tog; repeat from * to end · WS purl · RS k1, *yo, k2tog; repeat from * to last st, k1 · WS purl · RS k2, *yo, k2tog; repeat from * to end · WS purl · RS k1, *yo, k2tog; repeat from * to last st, k1 · WS purl
Work 2 rows in pattern.
  > 20 Piece/body 13 RS k2, *yo, k2tog; repeat from * to end · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 20}, RS: 12 stocking 4 mm; 2 pattern in stocking 4 mm; hold

### stripes again
Cast on 20 sts.
  > →20
With MC, work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
With white, work 2 rows in st st.
  > 20 Piece/body 3 RS knit · WS purl
Rep these 4 rows once.
  > 20 Piece/body 5 RS knit · WS purl · RS knit · WS purl
Rep last 4 rows to end.
  > own words 20 asks the count Piece/body 9 RS work in pattern 'Rep last 4 rows to end'
  > ✗ stitch expected @5:23 column 23
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 2 'stocking, MC' in stocking 4 mm; 2 'stocking, white' in stocking 4 mm; 2 'stocking, MC' in stocking 4 mm; 3 'stocking, white' in stocking 4 mm (own words 3); hold

### a named row again
Cast on 40 sts.
  > →40
Dec row (RS): K2, ssk, k to last 4 sts, k2tog, k2.
  > 40→38 Piece/body 1 RS k2, ssk, knit to last 4 sts, k2tog, k2 (38)
Work 3 rows in st st.
  > 38 Piece/body 2 WS purl · RS knit · WS purl
Rep dec row every 4th row 2 times more.
  > 38→34 Piece/body 5 RS k2, ssk, knit to last 4 sts, k2tog, k2 (36) · WS purl · RS knit · WS purl · RS k2, ssk, knit to last 4 sts, k2tog, k2 (34)
Rep dec row every other row a total of 3 times.
  > 34→30 Piece/body 10 WS purl · RS k2, ssk, knit to last 4 sts, k2tog, k2 (32) · WS purl · RS k2, ssk, knit to last 4 sts, k2tog, k2 (30)
Rep inc row every other row 3 times.
  > 30
  > ✗ row not known @6:1 rowName inc
Rep row 7 every other row 3 times.
  > 30
  > ✗ row not known @7:1 rowName 7
Rep last dec row every RS row 2 times.
  > 30→26 Piece/body 14 WS purl · RS k2, ssk, knit to last 4 sts, k2tog, k2 (28) · WS purl · RS k2, ssk, knit to last 4 sts, k2tog, k2 (26)
  > = Piece, other, 1 to make, lines 2 3 4 5 8
  > =   body from {castOn 40}, RS: 17 stocking 4 mm; hold

### nothing that could be worked again
Cast on 20 sts.
  > →20
Rep last row 3 times.
  > 20
  > ✗ no rows to repeat @2:1
Rep dec row every other row 3 times.
  > 20
  > ✗ row not known @3:1 rowName dec
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Rep row 5.
  > 20
  > ✗ no rows to repeat @5:1
  > = Piece, other, 1 to make, lines 4
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold

### some rows again, then all of them by their numbers
Cast on 20 sts.
  > →20
Row 1: K to end.
  > 20 Piece/body 1 RS knit
Row 2: P to end.
  > 20 Piece/body 2 WS purl
Row 3: *K1, p1; rep from * to end.
  > 20 Piece/body 3 RS *k1, p1; repeat from * to end
Row 4: *P1, k1; rep from * to end.
  > 20 Piece/body 4 WS *p1, k1; repeat from * to end
Rep rows 3 and 4 once.
  > 20 Piece/body 5 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end
Rep last 2 rows once.
  > 20 Piece/body 7 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end
Rep rows 1 to 4 once.
  > 20 Piece/body 9 RS knit · WS purl · RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end
Work 1 row in pattern.
  > 20 Piece/body 13 RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; 4 moss 4 mm; 2 moss 4 mm; 2 pattern in stocking 4 mm; 2 moss 4 mm; 1 pattern in stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
