import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded, and how they come from a page: common practice, no published source. Rows and counts are worked out by hand. */
describe('what a page lost, or parts otherwise, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a line names what the rows below it make
Cast on 21 sts.
  > →21
Knit 2 rows.
  > 21 Piece/body 1 RS knit · WS knit

Work picot edge of cap
  > talk 21

Next row: K1, (yo, k2tog) to end.
  > 21 Piece/body 3 RS k1, *yo, k2tog; repeat from * to end

Work crown section
  > talk 21

Beginning with a K row, st st 4 rows.
  > 21 Piece/body 4 WS knit · RS purl · WS knit · RS purl
  > = Piece, other, 1 to make, lines 2 4 6
  > =   body from {castOn 21}, RS: 3 garter 4 mm; 4 reverse stocking 4 mm; hold

### and nothing that she has to do besides
Cast on 21 sts.
  > →21
Knit 2 rows.
  > 21 Piece/body 1 RS knit · WS knit

Work buttonhole edge
  > 21
  > ✗ place not known @4:1

Next row: Knit.
  > 21 Piece/body 3 RS knit

Work picot edge
  > own words 21
  > ✗ stitch or repeat expected @8:1 column 1

Bind off.
  > 21→0 Piece/body 4 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 4 6
  > =   body from {castOn 21}, RS: 3 stocking 4 mm; bind off

### blanks that got lost
Cast on 20 sts.
  > →20
Work in st st until piece measures 8 cmending with a p row.
  > 20 as long as she likes: 2 rows Piece/body 1 RS knit · WS purl
Cont straight untilpiece measures 12 cm.
  > 20 as long as she likes: 2 rows Piece/body 3 RS knit · WS purl
Shape NeckNext row: K 8, turn. Work on these 8 sts for 2 rows. Bind off.
  > 20→0 Piece/right side 1 RS k8 · WS purl · RS knit · WS bind off all sts in pattern (0)
  > ✗ stitches wait @4:11 stitches 12
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 2 stocking 4 mm (length {id 'piece/1', open, mm 80, endSide WS, from start}); 2 stocking 4 mm (length {id 'piece/2', open, mm 120, from start}); split
  > =   right side from {part body, stitches 8, edge right}, RS: 3 'shape neck' in stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge left}, RS: hold

### a stop behind what is shortened, and three stars
BACK
  > heading
Cast on 20 sts. Knit 2 rows.
  > 20 Back/body 1 RS knit · WS knit
** Knit 2 rows. **
  > 20 Back/body 3 RS knit · WS knit
Bind off 3 sts at beg. Of next 2 rows ***
  > 20→14 Back/body 5 RS bind off 3 sts, knit to end (17) · WS bind off 3 sts, purl to end (14)
Bind off.
  > 14→0 Back/body 7 RS bind off all sts in pattern (0)

FRONT
  > heading
Work as for back to ***
  > →14 Front/body 1 RS knit · WS knit · RS knit · WS knit · RS bind off 3 sts, knit to end (17) · WS bind off 3 sts, purl to end (14)
Knit 2 rows. Bind off.
  > 14→0 Front/body 7 RS knit · WS knit · RS bind off all sts in pattern (0)

SLEEVE
  > heading
Work as for back to **
  > →20 Sleeve/body 1 RS knit · WS knit · RS knit · WS knit
Bind off.
  > 20→0 Sleeve/body 5 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 2 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 7 8
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 4 stocking 4 mm; bind off
  > = Sleeve, sleeve, 1 to make, lines 10 11
  > =   body from {castOn 20}, RS: 4 garter 4 mm; bind off

### a list that ends with a comma, and what rows come to
Sizes: S (M, L)
  > talk
Cast on 20 (22, 24) sts.
  > →20
Row 1: * K1, p1; rep from * to end.
  > 20 Piece/body 1 RS *k1, p1; repeat from * to end
Row 2: Knit.
  > 20 Piece/body 2 WS knit
Repeat these two rows 2 (3, 3, ) times = 6 (8, 8, ) rows rib.
  > 20 Piece/body 3 RS *k1, p1; repeat from * to end · WS knit · RS *k1, p1; repeat from * to end · WS knit
  > = sizes S, M, L: S
  > = Piece, other, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: 1 rib in rib 1x1 4 mm; 1 stocking 4 mm; 1 rib in rib 1x1 4 mm; 1 stocking 4 mm; 1 rib in rib 1x1 4 mm; 1 stocking 4 mm; hold

### two rows by their ordinals, with a stop
Cast on 20 sts.
  > →20
1st and 2nd Rows. Knit.
  > 20 Piece/body 1 RS knit · WS knit
3rd and 4th Rows. Same as 1st and 2nd rows.
  > 20 Piece/body 3 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 4 garter 4 mm; hold

### rows that begin with a side, though no colon stands behind their numbers
Cast on 20 sts.
  > →20
Row 1 Knit.
  > 20 Piece/body 1 WS knit
Rows 2 to 5 Beginning on a RS knit row work in st st.
  > 20 Piece/body 2 RS knit · WS purl · RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, WS: 5 stocking 4 mm; hold

### a fabric told by the side, and one that the text never gives
Cast on 20 sts.
  > →20
Rows 1-4: continue in stockinette stitch (knit right side and purl wrong side)
  > 20 Piece/body 1 RS knit · WS purl · RS knit · WS purl
Row 5: Change to 3 mm needles and start Brick Stitch pattern
  > 20 Piece/body 5 RS work in pattern
  > ✗ fabric not known @3:1 name brick
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; 1 brick in stocking 3 mm; hold

### a count in a column of its own
Cast on 20 sts.
  > →20
Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Row 3  cast on 4 sts, k to last 2 sts, p2     24 sts
  > 20→24 says 24 Piece/body 3 RS cast on 4 sts, knit to last 2 sts, p2 (24)
Row 4  k4, p to last st, k1     24sts
  > 24 says 24 Piece/body 4 WS k4, purl to last st, k1
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 4 garter 4 mm; hold

### what is done at the same time is told where it does not stand there
Gauge: 20 sts and 28 rows = 10 cm in st st.
  > talk
Cast on 40 sts. Work in st st for 10 cm.
  > 40 long: 28 rows Piece/body 1 RS knit · [WS purl · RS knit] ×13 · WS purl
Dec 1 st at each end of every row 6 times and AT THE SAME TIME when piece measures 11 cm. SHAPE SHOULDERS: bind off 2 sts at beg of next 2 rows.
  > own words 40→24 Piece/body 29 RS dec, knit to last 2 sts, dec (38) · WS dec, purl to last 2 sts, dec (36) · RS dec, knit to last 2 sts, dec (34) · WS dec, purl to last 2 sts, dec (32) · RS dec, knit to last 2 sts, dec (30) · WS dec, purl to last 2 sts, dec (28) · RS bind off 2 sts, knit to end (26) · WS bind off 2 sts, purl to end (24)
  > ✗ stitch or repeat expected @3:47 column 47
  > = gauge stitches 20, rows 28, fabric stocking
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 28 stocking 4 mm (length {id 'piece/1', open false, mm 100, from here}); 6 stocking 4 mm; 2 'shape shoulders' in stocking 4 mm; hold
`),
  )('$title', expectAnnotated);
});
