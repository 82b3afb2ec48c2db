import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what is kept at the edges, followed row by row,', () => {
  it.each(
    annotatedIn(`
### borders of three stitches beside stocking stitch, and the shaping inside them
Cast on 20 sts.
  > →20
Work 4 rows in st st, keeping 3 sts at each end in garter st.
  > 20 Piece/body 1 RS knit · WS k3, purl to last 3 sts, k3 · RS knit · WS k3, purl to last 3 sts, k3
Dec 1 st at each end of next row.
  > 20→18 Piece/body 5 RS k3, dec, knit to last 5 sts, dec, k3 (18)
Work 1 row.
  > 18 Piece/body 6 WS k3, purl to last 3 sts, k3
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; hold

### a border is bound off with its edge
Cast on 20 sts.
  > →20
With 4 sts at each end in garter st, work 3 rows in st st.
  > 20 Piece/body 1 RS knit · WS k4, purl to last 4 sts, k4 · RS knit
Work 1 row.
  > 20 Piece/body 4 WS k4, purl to last 4 sts, k4
Cast off 5 sts at beg of next row.
  > 20→15 Piece/body 5 RS bind off 5 sts, knit to end (15)
Work 2 rows.
  > 15 Piece/body 6 WS k4, purl to end · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; hold

### another fabric is for all stitches, the same one leaves them
Cast on 12 sts.
  > →12
Keeping first and last 2 sts in garter st and rem sts in st st, work 2 rows.
  > 12 Piece/body 1 RS knit · WS k2, purl to last 2 sts, k2
Cont in st st for 2 rows.
  > 12 Piece/body 3 RS knit · WS k2, purl to last 2 sts, k2
Work in rev st st for 2 rows.
  > 12 Piece/body 5 RS purl · WS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 4 stocking 4 mm; 2 reverse stocking 4 mm; hold

### a front's band lies at its neck edge, in moss stitch from the edge inwards
RIGHT FRONT
  > heading
Cast on 12 sts.
  > →12
Work in st st, keeping 3 sts at front edge in moss st, for 4 rows.
  > 12 Right front/body 1 RS k1, p1, knit to end · WS purl to last 3 sts, k1, p1, k1 · RS k1, p1, knit to end · WS purl to last 3 sts, k1, p1, k1

LEFT FRONT
  > heading 12
Work as for right front, reversing shaping.
  > 12 Left front/body 1 RS knit to last 2 sts, p1, k1 · WS k1, p1, k1, purl to end · RS knit to last 2 sts, p1, k1 · WS k1, p1, k1, purl to end
  > = Right front, right front, 1 to make, lines 3
  > =   body from {castOn 12}, RS: 4 stocking 4 mm; hold
  > = Left front, left front, 1 to make, lines 5
  > =   body from {castOn 12}, RS: 4 stocking 4 mm; hold

### a stitch pattern between borders repeats over what is left
Cast on 11 sts.
  > →11
Row 1: *k1, p1; rep from * to last st, k1.
  > 11 Piece/body 1 RS *k1, p1; repeat from * to last st, k1
Row 2: *k1, p1; rep from * to last st, k1.
  > 11 Piece/body 2 WS *k1, p1; repeat from * to last st, k1
Rep rows 1 and 2 once more.
  > 11 Piece/body 3 RS *k1, p1; repeat from * to last st, k1 · WS *k1, p1; repeat from * to last st, k1
Cont in pattern, keeping 3 sts at each end in garter st, for 2 rows.
  > 11 Piece/body 5 RS k4, p1, k1, p1, knit to end · WS k4, p1, k1, p1, knit to end
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 11}, RS: 4 moss 4 mm; 2 pattern in stocking 4 mm; hold

### what is not known stays 'work in pattern' between them
Cast on 12 sts.
  > →12
Work 2 rows in wibble pattern, keeping 3 sts at each end in garter st.
  > 12 Piece/body 1 RS k3, work in pattern to last 3 sts, k3 · WS k3, work in pattern to last 3 sts, k3
  > ✗ fabric not known @2:1 name wibble
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 12}, RS: 2 wibble in stocking 4 mm; hold

### one side of a neck keeps the border of its own edge
Cast on 20 sts.
  > →20
Work 2 rows in st st, keeping 3 sts at each end in garter st.
  > 20 Piece/body 1 RS knit · WS k3, purl to last 3 sts, k3
Next row: k8, cast off 4 sts, k to end.
  > 20→16 Piece/body 3 RS k8, bind off 4 sts, knit to end (16)
Work 2 rows.
  > 16→8 Piece/left side 1 WS k3, purl to end · RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 8, edge left}, WS: 2 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 8, edge right}, WS: hold

### none are there, or there are too few stitches
Cast on 8 sts.
  > →8
Work 2 rows in st st, keeping borders in garter st.
  > 8 Piece/body 1 RS knit · WS purl
  > ✗ place not known @2:23
Work 2 rows in st st, keeping 5 sts at each end in garter st.
  > 8 Piece/body 3 RS knit · WS purl
  > ✗ not enough stitches @3:23 needStitches 10, haveStitches 8
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; hold
`),
  )('$title', expectAnnotated);
});
