import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from '../annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what patterns seldom say, followed row by row to the whole recipe,', () => {
  it.each(
    annotatedIn(`
### borders that take all stitches, and no more
Cast on 8 sts.
  > →8
Work 2 rows in st st, keeping 4 sts at each end in garter st.
  > 8 Piece/body 1 RS knit · WS knit
Work 2 rows in st st, keeping 9 sts at beg of row in garter st.
  > 8 Piece/body 3 RS knit · WS knit
  > ✗ not enough stitches @3:23 needStitches 9, haveStitches 8
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; hold

### a border at the beginning or the end of the next row
Cast on 12 sts.
  > →12
Work 2 rows in st st, keeping 3 sts at beg of row in garter st.
  > 12 Piece/body 1 RS knit · WS purl to last 3 sts, k3
Work in rev st st, keeping 2 sts at end of row in garter st, for 2 rows.
  > 12 Piece/body 3 RS k3, p7, k2 · WS knit
Work 1 row.
  > 12 Piece/body 5 RS k3, p7, k2
Work in st st, keeping 4 sts at beg of row in garter st, for 2 rows.
  > 12 Piece/body 6 WS k4, p5, k3 · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; 3 reverse stocking 4 mm; 2 stocking 4 mm; hold

### of a front the first stitches are those of its band
LEFT FRONT
  > heading
Cast on 12 sts.
  > →12
K 1 row.
  > 12 Left front/body 1 RS knit
Work in st st, keeping 3 sts at beg of row in garter st, for 3 rows.
  > 12 Left front/body 2 WS k3, purl to end · RS knit · WS k3, purl to end
RIGHT FRONT
  > heading 12
Cast on 12 sts.
  > 12
Work in st st, keeping 3 sts at beg of row in garter st, for 2 rows.
  > 12 Right front/body 1 RS knit · WS purl to last 3 sts, k3
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 12}, RS: 4 stocking 4 mm; hold
  > = Right front, right front, 1 to make, lines 7
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; hold

### borders at the edge that was shaped last
LEFT FRONT
  > heading
Cast on 14 sts.
  > →14
Work in st st, keeping 3 sts at same edge in garter st, for 2 rows.
  > 14 Left front/body 1 RS knit · WS purl
  > ✗ place not known @3:16
Dec 1 st at neck edge on next row.
  > 14→13 Left front/body 3 RS knit to last 2 sts, dec (13)
Work in st st, keeping 3 sts at same edge in garter st, for 3 rows.
  > 13 Left front/body 4 WS k3, purl to end · RS knit · WS k3, purl to end
Dec 1 st at each end of next row.
  > 13→11 Left front/body 7 RS dec, k6, dec, k3 (11)
Work in st st, keeping 2 sts at same edge in garter st, for 2 rows.
  > 11 Left front/body 8 WS k2, p7, k2 · RS knit
Work in st st, keeping 2 sts at armhole edge in moss st, for 2 rows.
  > 11 Left front/body 10 WS k2, purl to last st, k1 · RS k1, p1, knit to end
  > = Left front, left front, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 14}, RS: 11 stocking 4 mm; hold

### a pattern of one row goes on while its edges are shaped
Pattern (multiple of 2)
Row 1: *k1, p1; rep from * to end.
Cast on 12 sts.
  > →12
Work 3 rows in pattern.
  > 12 Piece/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end
Dec 1 st at each end of next row.
  > 12→10 Piece/body 4 WS dec, *k1, p1; repeat from * to last 2 sts, dec (10)
Dec 1 st at each end of next row.
  > 10→8 Piece/body 5 RS dec, *p1, k1; repeat from * to last 2 sts, dec (8)
  > = pattern pattern of 2 plus 0 over 4: *k1, p1; repeat from * to end (4)
  > = Piece, other, 1 to make, lines 4 5 6
  > =   body from {castOn 12}, RS: 5 pattern in stocking 4 mm; hold

### counts of the stitches that rest, and of no others
BACK
  > heading
Cast on 40 sts.
  > →40
Work 4 rows in st st.
  > 40 Back/body 1 RS knit · WS purl · RS knit · WS purl
Next row: k16, turn, work on these sts only.
  > 40→16 Back/right side 1 RS k16
Work 1 row. (24 sts)
  > 16 says 24 Back/right side 2 WS purl
  > ✗ count contradicts @5:13 statedStitches 24, foundStitches 16
Next row: k 6, turn, leaving rem 10 sts on a holder.
  > 16→6 Back/right side 2 1 RS k6
Work 1 row. (10 sts)
  > 6 says 10 Back/right side 2 2 WS purl
  > ✗ count contradicts @7:13 statedStitches 10, foundStitches 6
Work 1 row. (10 sts)
  > 6 says 10 Back/right side 2 3 RS knit
  > ✗ count contradicts @8:13 statedStitches 10, foundStitches 6
  > = Back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 40}, RS: 4 stocking 4 mm; split
  > =   right side from {part body, stitches 16, edge right}, RS: 2 stocking 4 mm; split
  > =   right side 2 from {part 'right side', stitches 6, edge right}, RS: 3 stocking 4 mm; hold
  > =   resting 1 from {part 'right side', stitches 10, edge left}, RS: hold
  > =   resting 2 from {part body, stitches 24, edge left}, RS: hold

### a row that parts the stitches and a piece that is never begun
BACK
  > heading
Cast on 20 sts.
  > →20
FRONT
  > heading 20
Cast on 20 sts.
  > 20
Work 2 rows in st st.
  > 20 Front/body 1 RS knit · WS purl
Next row: k8, bind off 4 sts, k to end.
  > 20→16 Front/body 3 RS k8, bind off 4 sts, knit to end (16)
Next row: p2, turn.
  > 16→8 Front/left side 1 WS p2, turn
  > = Front, front, 1 to make, lines 5 6 7
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 8, edge left}, WS: 1 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 8, edge right}, WS: hold

### turns that part and turns that do not
BACK
  > heading
Cast on 20 sts.
  > →20
Next row: k8, turn.
  > 20 Back/body 1 RS k8, turn
Next row: p to end.
  > 20 Back/body 2 WS leave 12 sts unworked, purl to end
Shape neck
  > heading 20
Next row: k8, turn.
  > 20→8 Back/right side 1 RS k8
Next row: p8.
  > 8 Back/right side 2 WS p8
Next row: k4, turn.
  > 8 Back/right side 3 RS k4, turn
Next row: p4.
  > 8 Back/right side 4 WS leave 4 sts unworked, p4
  > = Back, back, 1 to make, lines 3 4 6 7 8 9
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, RS: 4 'shape neck' in stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 12, edge left}, RS: hold

### a decrease repeated by its name
Cast on 30 sts.
  > →30
Dec row: k1, k2tog, k to last 3 sts, ssk, k1.
  > 30→28 Piece/body 1 RS k1, k2tog, knit to last 3 sts, ssk, k1 (28)
Rep dec row every other row 3 times.
  > 28→22 Piece/body 2 WS purl · RS k1, k2tog, knit to last 3 sts, ssk, k1 (26) · WS purl · RS k1, k2tog, knit to last 3 sts, ssk, k1 (24) · WS purl · RS k1, k2tog, knit to last 3 sts, ssk, k1 (22)
Rep dec row every 4th row 2 times more.
  > 22→18 Piece/body 8 WS purl · RS knit · WS purl · RS k1, k2tog, knit to last 3 sts, ssk, k1 (20) · WS purl · RS knit · WS purl · RS k1, k2tog, knit to last 3 sts, ssk, k1 (18)
Dec 1 st at each end of next row.
  > 18→16 Piece/body 16 WS dec, purl to last 2 sts, dec (16)
Rep last dec every other row twice.
  > 16→12 Piece/body 17 RS dec, knit to last 2 sts, dec (14) · WS purl · RS dec, knit to last 2 sts, dec (12)
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 30}, RS: 19 stocking 4 mm; hold

### two pieces of one name, and one that begins like another
LEFT FRONT
  > heading
Cast on 10 sts.
  > →10
K 2 rows.
  > 10 Left front/body 1 RS knit · WS knit
LEFT FRONT
  > heading 10
Cast on 11 sts.
  > 10→11
K 2 rows.
  > 11 Left front 2/body 1 RS knit · WS knit
LEFT SLEEVE
  > heading 11
Cast on 12 sts.
  > 11→12
K 2 rows.
  > 12 Left sleeve/body 1 RS knit · WS knit
  > = Left front, left front, 1 to make, lines 3
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; hold
  > = Left front 2, left front, 1 to make, lines 6
  > =   body from {castOn 11}, RS: 2 stocking 4 mm; hold
  > = Left sleeve, sleeve, 1 to make, lines 9
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; hold

### borders that go on while another fabric is worked
Cast on 12 sts.
  > →12
Work 2 rows in st st, keeping 3 sts at each end in garter st.
  > 12 Piece/body 1 RS knit · WS k3, p6, k3
Keeping borders in garter st, work 2 rows in rev st st.
  > 12 Piece/body 3 RS k3, p6, k3 · WS knit
Work 2 rows in st st.
  > 12 Piece/body 5 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; 2 reverse stocking 4 mm; 2 stocking 4 mm; hold

### borders of a fabric of four rows, begun on another row
Cast on 14 sts.
  > →14
Work 3 rows in st st.
  > 14 Piece/body 1 RS knit · WS purl · RS knit
Work 6 rows in st st, keeping 4 sts at each end in double moss st.
  > 14 Piece/body 4 WS p2, k2, p6, k2, p2 · RS p2, knit to last 2 sts, p2 · WS k2, purl to last 2 sts, k2 · RS k2, p2, k6, p2, k2 · WS p2, k2, p6, k2, p2 · RS p2, knit to last 2 sts, p2
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 14}, RS: 9 stocking 4 mm; hold

### rows with a name, worked over any count
BACK
  > heading
Cast on 12 sts.
  > →12
Row 1: *k1, p1; rep from * to end.
  > 12 Back/body 1 RS *k1, p1; repeat from * to end
Row 2: *p1, k1; rep from * to end.
  > 12 Back/body 2 WS *p1, k1; repeat from * to end
These 2 rows form seed pattern.
  > 12
FRONT
  > heading 12
Cast on 13 sts.
  > 12→13
Work 2 rows in seed pattern.
  > 13 Front/body 1 RS *k1, p1; repeat from * to last st, k1 · WS *k1, p1; repeat from * to last st, k1
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 12}, RS: 2 moss 4 mm; hold
  > = Front, front, 1 to make, lines 8
  > =   body from {castOn 13}, RS: 2 moss 4 mm; hold

### a count that is there before the last round of a shaping
Cast on 40 sts.
  > →40
Dec 1 st at each end every other row 2 times, then every row (36 sts).
  > 40→36 says 36 Piece/body 1 RS dec, knit to last 2 sts, dec (38) · WS purl · RS dec, knit to last 2 sts, dec (36)
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; hold

### a side that is another than the next
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Piece/body 1 WS knit
Next row (RS): k.
  > 20 Piece/body 2 RS knit
With right side facing, k 1 row.
  > 20 Piece/body 3 WS knit
  > ✗ side differs @4:1 saidSide RS, foundSide WS
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, WS: 3 stocking 4 mm; hold

### a row that is repeated until no stitch is left
Cast on 5 sts.
  > →5
Row 1: k2tog, k to end.
  > 5→4 Piece/body 1 RS k2tog, knit to end (4)
Repeat row 1 6 times.
  > 4→1 Piece/body 2 WS k2tog, knit to end (3) · RS k2tog, knit to end (2) · WS k2tog, knit to end (1)
  > ✗ not enough stitches @3:1 needStitches 2, haveStitches 1
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 5}, RS: 4 stocking 4 mm; hold

### a turn before a numbered row parts nothing
Cast on 20 sts.
  > →20
Row 1: k8, turn.
  > 20 Piece/body 1 RS k8, turn
Row 2: p8.
  > 20 Piece/body 2 WS leave 12 sts unworked, p8
Rejoin yarn to rem sts.
  > 20
  > ✗ nothing rests @4:1
Row 3: k.
  > 20 Piece/body 3 RS knit
  > = Piece, other, 1 to make, lines 2 3 5
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold

### a turn with the rest on a holder
Cast on 20 sts.
  > →20
Next row: k8, turn, leave rem 12 sts on a holder.
  > 20→8 Piece/right side 1 RS k8
Next row: p8.
  > 8 Piece/right side 2 WS p8
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: split
  > =   right side from {part body, stitches 8, edge right}, RS: 2 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 12, edge left}, RS: hold

### a shaped row between two told by number of times
Cast on 30 sts.
  > →30
Dec row: k1, k2tog, k to end.
  > 30→29 Piece/body 1 RS k1, k2tog, knit to end (29)
Work dec row every other row a total of 2 times, then every 4th row 2 times.
  > 29→26 Piece/body 2 WS purl · RS k1, k2tog, knit to end (28) · WS purl · RS knit · WS purl · RS k1, k2tog, knit to end (27) · WS purl · RS knit · WS purl · RS k1, k2tog, knit to end (26)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 30}, RS: 11 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
