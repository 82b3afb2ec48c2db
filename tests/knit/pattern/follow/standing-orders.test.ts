import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of magazines, leaflets and yarn companies since 1940, put into other words; counts reckoned by hand. */
describe('orders that stand, names and sizes, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a border without an edge lies at the front, whatever the rest is worked in
Left front
  > heading
Cast on 12 sts.
  > →12
Keeping 3 border sts in garter st throughout, work 3 rows in st st.
  > 12 Left front/body 1 RS knit · WS k3, purl to end · RS knit
Work 2 rows in rev st st.
  > 12 Left front/body 4 WS knit · RS purl to last 3 sts, k3
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 12}, RS: 3 stocking 4 mm; 2 reverse stocking 4 mm; hold

### of a back nobody knows at which edge
Back
  > heading
Cast on 12 sts.
  > →12
Work 4 rows in st st, keeping 3 border sts in garter throughout.
  > 12 Back/body 1 RS knit · WS purl · RS knit · WS purl
  > ✗ place not known @3:23
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 12}, RS: 4 stocking 4 mm; hold

### a standing order behind the rows, in brackets, and above the piece
Note: Keep 4 sts at each end in garter st throughout.
  > talk
  > ✗ nothing on the needle @1:7
Cast on 12 sts.
  > →12
Work 4 rows in st st, always slipping the first st of every row.
  > 12 Piece/body 1 RS sl1, knit to end · WS sl1, purl to end · RS sl1, knit to end · WS sl1, purl to end
(Always slip the first st.)
  > 12
K 2 rows.
  > 12 Piece/body 5 RS sl1, knit to end · WS sl1, knit to end
  > = Piece, other, 1 to make, lines 3 5
  > =   body from {castOn 12}, RS: 6 stocking 4 mm; hold

### a shaping of which nobody says how often
Left front
  > heading
Cast on 12 sts.
  > →12
Inc 1 st at front edge every 4th row and at the same time dec 1 st at armhole edge every 2nd row twice.
  > 12→11 Left front/body 1 RS dec, knit to end (11) · WS purl · RS dec, knit to last st, inc
  > ✗ place not known @3:1
  > = Left front, left front, 1 to make, lines 3
  > =   body from {castOn 12}, RS: 3 stocking 4 mm; hold

### inside the border that is kept there
Left front
  > heading
Cast on 12 sts.
  > →12
Keeping 3 sts at front edge in garter st, work 2 rows in st st.
  > 12 Left front/body 1 RS knit · WS k3, purl to end
Dec 1 st inside front border every 2nd row twice.
  > 12→10 Left front/body 3 RS k7, dec, k3 (11) · WS k3, purl to end · RS k6, dec, k3 (10)
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 12}, RS: 5 stocking 4 mm; hold

### inside a border that nobody told of
Left front
  > heading
Cast on 12 sts.
  > →12
Work 2 rows in st st.
  > 12 Left front/body 1 RS knit · WS purl
Dec 1 st inside front border on next row.
  > 12→11 Left front/body 3 RS knit to last 2 sts, dec (11)
  > ✗ place not known @4:1
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 12}, RS: 3 stocking 4 mm; hold

### garter stitch of one row goes on
Cast on 12 sts.
  > →12
1st row: Knit.
  > 12 Piece/body 1 RS knit
Rep 1st row 3 times.
  > 12 Piece/body 2 WS knit · RS knit · WS knit
Work 3 rows.
  > 12 Piece/body 5 RS knit · WS knit · RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 4 garter 4 mm; 3 garter 4 mm; hold

### purled rows go on purled, and a rib of one row as it was
Cast on 12 sts.
  > →12
Row 1: purl.
  > 12 Piece/body 1 RS purl
Rep row 1 for 3 rows.
  > 12 Piece/body 2 WS purl · RS purl · WS purl
Work 2 rows.
  > 12 Piece/body 5 RS purl · WS purl
Row 1: *k1, p1; rep from *.
  > 12 Piece/body 7 RS *k1, p1; repeat from * to end
Rep row 1 for 3 rows.
  > 12 Piece/body 8 WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Work 2 rows.
  > 12 Piece/body 11 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 12}, RS: 4 garter 4 mm; 2 pattern in stocking 4 mm; 4 rib in rib 1x1 4 mm; 2 pattern in stocking 4 mm; hold

### a name that no list has, before a colon
Back: Cast on 12 sts. Knit 2 rows. Bind off. Trinket: Work as for back.
  > 12→0 Back/body 1 RS knit · WS knit · RS bind off all sts in pattern (0) · Trinket/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
Bauble: Cast on 5 sts. Knit 2 rows. Bind off.
  > 5→0 Bauble/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 1
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; bind off
  > = Trinket, other, 1 to make, lines 1
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; bind off
  > = Bauble, other, 1 to make, lines 2
  > =   body from {castOn 5}, RS: 2 stocking 4 mm; bind off

### a place before a colon is no piece
Back
  > heading
Cast on 12 sts.
  > →12
Work 2 rows in st st.
  > 12 Back/body 1 RS knit · WS purl
Underarm: Cast on 6 sts at beg of next 2 rows.
  > 12→24 Back/body 3 RS cast on 6 sts, knit to end (18) · WS cast on 6 sts, purl to end (24)
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; 2 underarm in stocking 4 mm; hold

### both sides at once, and joined again over the neck
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Cast on 5 sts at end of next 2 rows. 30 sts.
  > 20→30 says 30 Piece/body 3 RS knit to end, cast on 5 sts (25) · WS purl to end, cast on 5 sts (30)
Divide for neck: k 11, join another ball, bind off centre 8 sts, k to end.
  > 30→22 Piece/body 5 RS k11, bind off 8 sts, knit to end (22)
Working both sides at once, work 4 rows.
  > 22→11 Piece/left side 1 WS purl · RS knit · WS purl · RS knit
Next row: k 11, cast on 8 sts, k 11. 30 sts.
  > 11→30 says 30 Piece/right side 1 RS knit · WS purl · RS knit · WS purl · Piece/joined 1 WS k11, cast on 8 sts, k11 (30)
Work 3 rows.
  > 30 Piece/joined 2 RS knit · WS purl · RS knit
Bind off 5 sts at beg of next 2 rows. 20 sts.
  > 30→20 says 20 Piece/joined 5 WS bind off 5 sts, purl to end (25) · RS bind off 5 sts, knit to end (20)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; 1 'divide for neck' in stocking 4 mm; split
  > =   left side from {part body, stitches 11, edge left}, WS: 4 'divide for neck' in stocking 4 mm; hold
  > =   right side from {part body, stitches 11, edge right}, RS: 4 'divide for neck' in stocking 4 mm; hold
  > =   joined from {pickUp [{along 'right side', stitches 11, held}; {along 'left side', stitches 11, held}]}, WS: 6 'divide for neck' in stocking 4 mm; hold

### the other side when the yarn is joined again
Back
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Back/body 1 RS knit · WS purl
Next row: K 7, bind off 6 sts for back of neck, k 7.
  > 20→14 Back/body 3 RS k7, bind off 6 sts, k7 (14)
Working on last 7 sts only, work 3 rows.
  > 14→7 Back/left side 1 WS purl · RS knit · WS purl
Cast on 3 sts at neck edge. 10 sts.
  > 7→10 says 10 Back/left side 4 RS cast on 3 sts, knit to end (10)
Bind off.
  > 10→0 Back/left side 5 WS bind off all sts in pattern (0)
Join yarn to other side and work to correspond.
  > 7→0 Back/right side 1 WS purl · RS knit · WS purl · RS k7, cast on 3 sts (10) · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 7, edge left}, WS: 4 stocking 4 mm; bind off
  > =   right side from {part body, stitches 7, edge right}, WS: 4 stocking 4 mm; bind off

### another front where nothing rests
Cast on 12 sts.
  > →12
Work 2 rows in st st. Leave these sts on a holder.
  > 12 Piece/body 1 RS knit · WS purl
Work other front to correspond.
  > →12
  > ✗ nothing rests @3:1
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; hold

### an order for some sizes in brackets, behind others {"size":1}
Sizes 2 (4, 6)
  > talk
Cast on 10 (12, 14) sts.
  > →12
Work 4 rows in st st. [Size 4 only: k 2 rows.]
  > 12 Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS knit
Dec 1 st at each end of next row [size 6 only].
  > talk
Inc 1 st at each end of next row for sizes 4 and 6 only.
  > 12→14 Piece/body 7 RS inc, knit to last st, inc (14)
Bind off.
  > 14→0 Piece/body 8 WS bind off all sts in pattern (0)
  > = sizes 2, 4, 6: 4
  > = Piece, other, 1 to make, lines 3 5 6
  > =   body from {castOn 12}, RS: 7 stocking 4 mm; bind off

### the same for another size {"size":2}
Sizes 2 (4, 6)
  > talk
Cast on 10 (12, 14) sts.
  > →14
Work 4 rows in st st. [Size 4 only: k 2 rows.]
  > 14 Piece/body 1 RS knit · WS purl · RS knit · WS purl
Dec 1 st at each end of next row [size 6 only].
  > 14→12 Piece/body 5 RS dec, knit to last 2 sts, dec (12)
Inc 1 st at each end of next row for sizes 4 and 6 only.
  > 12→14 Piece/body 6 WS inc, purl to last st, inc (14)
Bind off.
  > 14→0 Piece/body 7 RS bind off all sts in pattern (0)
  > = sizes 2, 4, 6: 6
  > = Piece, other, 1 to make, lines 3 4 5 6
  > =   body from {castOn 14}, RS: 6 stocking 4 mm; bind off
    `),
  )('comes out as $title', expectAnnotated);
});
