import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('a row spelled out, followed row by row,', () => {
  it.each(
    annotatedIn(`
### in pattern between its edges
Cast on 16 sts.
  > →16
Work 2 rows in k2, p2 rib.
  > 16 Piece/body 1 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Next row: k1, work in pattern to last 2 sts, k2.
  > 16 Piece/body 3 RS *k2, p2; repeat from * to last 4 sts, k4
Next row: p3, work in pattern to last 2 sts, p2.
  > 16 Piece/body 4 WS p4, *k2, p2; repeat from * to end
Next row: k1, k2tog, work in pattern to last 3 sts, k2tog, k1.
  > 16→14 Piece/body 5 RS k1, k2tog, p1, *k2, p2; repeat from * to last 4 sts, k1, k2tog, k1 (14)
Next row: p2, work in pattern to end.
  > 14 Piece/body 6 WS p3, *k2, p2; repeat from * to last 3 sts, k2, p1
Next row: k1, m1, work in pattern to end.
  > 14→15 Piece/body 7 RS k1, m1, *p2, k2; repeat from * to last st, p1 (15)
Work 2 rows.
  > 15 Piece/body 8 WS k1, *p2, k2; repeat from * to last 2 sts, p2 · RS *k2, p2; repeat from * to last 3 sts, k2, p1
Next row: work in pattern to last 3 sts, ssk, k1.
  > 15→14 Piece/body 10 WS k1, *p2, k2; repeat from * to last 6 sts, p2, k1, ssk, k1 (14)
Work 2 rows.
  > 14 Piece/body 11 RS k1, *p2, k2; repeat from * to last st, p1 · WS k1, *p2, k2; repeat from * to last st, p1
Next row: p2tog, work in pattern to end.
  > 14→13 Piece/body 13 RS p2tog, p1, *k2, p2; repeat from * to last 3 sts, k2, p1 (13)
Work 2 rows.
  > 13 Piece/body 14 WS k1, *p2, k2; repeat from * to end · RS *p2, k2; repeat from * to last st, p1
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9 10 11 12
  > =   body from {castOn 16}, RS: 15 rib in rib 2x2 4 mm; hold

### as the stitches look
Cast on 8 sts.
  > →8
Row 1: k2, p2, k1, p3.
  > 8 Piece/body 1 RS k2, p2, k1, p3
Row 2: k the k sts and p the p sts.
  > 8 Piece/body 2 WS k3, p1, k2, p2
Row 3: k2, k the k sts and p the p sts to last 2 sts, p2.
  > 8 Piece/body 3 RS k2, p2, k1, purl to end
Row 4: k1, yo, k2tog, k to end.
  > 8 Piece/body 4 WS k1, yo, k2tog, knit to end
Row 5: k the k sts and p the p sts.
  > 8 Piece/body 5 RS work in pattern
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 8}, RS: 5 stocking 4 mm; hold

### to and from markers
Cast on 12 sts.
  > →12
Row 1: k4, place marker, k to end.
  > 12 Piece/body 1 RS k4, knit to end
Row 2: p to marker, k to end.
  > 12 Piece/body 2 WS purl to last 4 sts, knit to end
Row 3: k to 2 sts before marker, k2tog, k to end.
  > 12→11 Piece/body 3 RS knit to last 10 sts, k2tog, knit to end (11)
Row 4: p to marker, k to end.
  > 11 Piece/body 4 WS purl to last 3 sts, knit to end
Row 5: k to marker, m1, k to end.
  > 11→12 Piece/body 5 RS knit to last 8 sts, m1, knit to end (12)
Row 6: p to end.
  > 12 Piece/body 6 WS purl
Dec 1 st at right edge of next row.
  > 12→11 Piece/body 7 RS dec, knit to end (11)
Row 1: k to marker, p to end.
  > 11 Piece/body 8 WS knit to last 3 sts, purl to end
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9
  > =   body from {castOn 12}, RS: 8 stocking 4 mm; hold

### bound off in a repeat
BACK
  > heading
Cast on 20 sts.
  > →20
Row 1: k2, (bo 2, k4) 3 times.
  > 20→14 Back/body 1 RS k2, [bind off 2 sts, k4] 3 times (14)
Row 2: p.
  > 14→4 Back/left side 1 WS purl
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 4, edge left}, WS: 1 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 2, edge right}, WS: hold
  > =   resting 2 from {part body, stitches 4, edge middle}, WS: hold
  > =   resting 3 from {part body, stitches 4, edge middle}, WS: hold

### a turn, and what it leaves
BACK
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Back/body 1 RS knit · WS purl
Next row: k8, turn.
  > 20 Back/body 3 RS k8, turn
Next row: p4, turn.
  > 20 Back/body 4 WS leave 12 sts unworked, p4, turn
Next row: k to end.
  > 20 Back/body 5 RS leave 4 sts unworked, knit to end
Work 2 rows.
  > 20 Back/body 6 WS purl · RS knit
Next row: k12, turn.
  > 20 Back/body 8 WS k12, turn
P 1 row.
  > 20 Back/body 9 RS leave 8 sts unworked, purl to end
Turn.
  > 20
K 1 row.
  > 20 Back/body 10 WS knit
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 9 11
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; 3 reverse stocking 4 mm; hold

### a turn before the neck is shaped
BACK
  > heading
Cast on 20 sts.
  > →20
Next row: k8, turn.
  > 20→8 Back/right side 1 RS k8
Dec 1 st at neck edge of next 2 rows.
  > 8→6 Back/right side 2 WS dec, purl to end (7) · RS k5, dec (6)
Next row: k6, turn.
  > 6 Back/right side 4 WS k6
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: split
  > =   right side from {part body, stitches 8, edge right}, RS: 4 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 12, edge left}, RS: hold

### an armhole that begins in a written row {"gauge": {"stitches": 20, "rows": 28}}
BACK
  > heading
Cast on 30 sts.
  > →30
Work 4 rows in st st.
  > 30 Back/body 1 RS knit · WS purl · RS knit · WS purl
Row 1: bo 3, k to end.
  > 30→27 Back/body 5 RS bind off 3 sts, knit to end (27)
Row 2: bo 3, p to end.
  > 27→24 Back/body 6 WS bind off 3 sts, purl to end (24)
Work even until armhole measures 2 cm.
  > 24 long: 4 rows Back/body 7 RS knit · WS purl · RS knit · WS purl
Next row: k8, bo 8, k to end.
  > 24→16 Back/body 11 RS k8, bind off 8 sts, knit to end (16)
Next row: bo 2, p to end.
  > 16→6 Back/left side 1 WS bind off 2 sts, purl to end (6)
Next row: k.
  > 6 Back/left side 2 RS knit
Work even until armhole measures 4 cm.
  > 6 long: 3 rows Back/left side 3 WS purl · RS knit · WS purl
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 9 10
  > =   body from {castOn 30}, RS: 6 stocking 4 mm; 4 stocking 4 mm (length {id 'back/1', open false, mm 20, from armhole}); 1 stocking 4 mm; split
  > =   left side from {part body, stitches 8, edge left}, WS: 2 stocking 4 mm; 3 stocking 4 mm (length {id 'back/2', open false, mm 40, from armhole}); hold
  > =   resting 1 from {part body, stitches 8, edge right}, WS: hold

### stitches cast on in a row that joins nothing
BACK
  > heading
Cast on 20 sts.
  > →20
Next row: k6, bo 8, k6.
  > 20→12 Back/body 1 RS k6, bind off 8 sts, k6 (12)
Next row: p6, co 8, p6.
  > 12→20 Back/body 2 WS p6, cast on 8 sts, p6 (20)
K 1 row.
  > 20 Back/body 3 RS knit
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold

### increases spread over what nobody knows
Cast on 12 sts.
  > →12
Work 1 row in Basket patt.
  > 12 Piece/body 1 RS work in pattern
  > ✗ fabric not known @2:1 name basket
Inc 2 sts evenly across next row.
  > 12→14 Piece/body 2 WS k3, m1, k6, m1, k3 (14)
Inc 14 sts evenly across next row.
  > 14→28 Piece/body 3 RS [kfb] 14 times (28)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 3 basket in stocking 4 mm; hold

### a row that casts on at its end
Cast on 6 sts.
  > →6
Next row: k to end, co 3.
  > 6→9 Piece/body 1 RS knit to end, cast on 3 sts (9)
Next row: p to end, co 3.
  > 9→12 Piece/body 2 WS purl to end, cast on 3 sts (12)
Work 1 row.
  > 12 Piece/body 3 RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 6}, RS: 3 stocking 4 mm; hold

### a rhythm of its own beside a named row
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Dec row: k1, ssk, k to end.
  > 20→19 Left front/body 1 RS k1, ssk, knit to end (19)
P 1 row, at the same time dec 1 st at neck edge every other row 3 times.
  > 19 Left front/body 2 WS purl
Rep dec row every other row 3 times.
  > 19→13 Left front/body 3 RS k1, ssk, knit to last 2 sts, dec (17) · WS purl · RS k1, ssk, knit to last 2 sts, dec (15) · WS purl · RS k1, ssk, knit to last 2 sts, dec (13)
Work 4 rows.
  > 13 Left front/body 8 WS purl · RS knit · WS purl · RS knit
  > = Left front, left front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 11 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
