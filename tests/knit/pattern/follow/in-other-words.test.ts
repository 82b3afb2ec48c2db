import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of leaflets and pages: common practice, no published source. */
describe('counts, ridges and lengths in other words,', () => {
  it.each(
    annotatedIn(`
### behind a row that was not understood nobody knows what is knitted on
Cast on 40 sts.
  > →40
Work in st st for 2 rows.
  > 40 Piece/body 1 RS knit · WS purl
Wibble 4 sts and wobble 3.
  > own words 40 asks the count Piece/body 3 RS work in pattern 'Wibble 4 sts and wobble 3'
  > ✗ stitch or repeat expected @3:1 column 1
Knit even for 2 rows.
  > 40 Piece/body 4 WS work in pattern · RS work in pattern
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 40}, RS: 3 stocking 4 mm (own words 3); 2 pattern in stocking 4 mm; hold

### a row for the whole piece
Cast on 42 sts.
  > →42
1st row: *K5, p1; rep from * to end. First row is repeated throughout.
  > 42 Piece/body 1 RS *k5, p1; repeat from * to end
Work 3 rows even.
  > 42 Piece/body 2 WS *k5, p1; repeat from * to end · RS *k5, p1; repeat from * to end · WS *k5, p1; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 42}, RS: 1 stocking 4 mm; 3 pattern in stocking 4 mm; hold

### a stitch for each ridge is no number
BAND
  > heading
Pick up 1 st for each ridge along lower edge.
  > own words
  > ✗ stitch or repeat expected @2:1 column 1

### counts and lengths in other words
Tension: 20 sts and 28 rows to 10 cm.
  > talk
Cast on 40 sts.
  > →40
Work in rib of k 2, p 2 for 4 rows. There are on needle 40 sts.
  > 40 says 40 Piece/body 1 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end · RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Work in st st until piece measures in all 3 cm.
  > 40 long: 4 rows Piece/body 5 RS knit · WS purl · RS knit · WS purl
Work 2 rows stocking stitch (1 row plain, 1 row purl).
  > 40 Piece/body 9 RS knit · WS purl
Knit 2 more rows (garter stitch).
  > 40 Piece/body 11 RS knit · WS knit
K 2 ribs of garter st.
  > 40 Piece/body 13 RS knit · WS knit · RS knit · WS knit
Next row: *P 4, inc. 1. st. in next st. purlways; repeat from * to end. (48 sts)
  > 40→48 says 48 Piece/body 17 RS *p4, inc; repeat from * to end (48)
Next row: Knit, increase by 7 evenly so you have 55 sts.
  > 48→55 says 55 Piece/body 18 WS k3, m1, [k7, m1] 6 times, k3 (55)
Slip rem 55 sts on a stitch holder and leave.
  > 55
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 3 4 5 6 7 8 9
  > =   body from {castOn 40}, RS: 4 rib in rib 2x2 4 mm; 4 stocking 4 mm (length {id 'piece/1', open false, mm 30, from start}); 2 stocking 4 mm; 8 garter 4 mm; hold

### rib rows once more
Cast on 40 sts.
  > →40
Row 1: K2, p2 across.
  > 40 Piece/body 1 RS *k2, p2; repeat from * to end
Row 2: P.
  > 40 Piece/body 2 WS purl
Rep these 2 rib rows twice more.
  > 40 Piece/body 3 RS *k2, p2; repeat from * to end · WS purl · RS *k2, p2; repeat from * to end · WS purl
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 40}, RS: 1 rib in rib 2x2 4 mm; 1 stocking 4 mm; 1 rib in rib 2x2 4 mm; 1 stocking 4 mm; 1 rib in rib 2x2 4 mm; 1 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
