import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('heading, followed row by row,', () => {
  it.each(
    annotatedIn(`
### pieces, their places and how many
BACK
  > heading
Cast on 8 sts.
  > →8
K 1 row.
  > 8 Back/body 1 RS knit
SLEEVES (make 2)
  > heading 8
Cast on 6 sts.
  > 8→6
K 1 row.
  > 6 Sleeves/body 1 RS knit
Left side
  > heading 6
K 1 row.
  > 6 Sleeves/body 2 WS knit
Finishing
  > heading 6
K 1 row.
  > talk 6
Sew seams.
  > talk 6
RIGHT FRONT:
  > heading 6
K 1 row.
  > 6 Sleeves/body 3 RS knit
  > ✗ nothing on the needle @13:1
Cast on 4 sts.
  > 6→4
K 1 row.
  > 4 Right front/body 1 RS knit
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; hold
  > = Sleeves, sleeve, 2 to make, lines 6 8 13
  > =   body from {castOn 6}, RS: 1 stocking 4 mm; 1 'left side' in stocking 4 mm; 1 stocking 4 mm; hold
  > = Right front, right front, 1 to make, lines 15
  > =   body from {castOn 4}, RS: 1 stocking 4 mm; hold

### a name for the next piece from a short line
A Good Hat
  > talk
Cast on 8 sts.
  > →8
K 1 row.
  > 8 A good hat/body 1 RS knit
Bind off.
  > 8→0 A good hat/body 2 WS bind off all sts in pattern (0)
Flower petal
  > talk →0
Cast on 4 sts.
  > →4
K 1 row.
  > 4 Flower petal/body 1 RS knit
Bind off.
  > 4→0 Flower petal/body 2 WS bind off all sts in pattern (0)
Leaf (green).
  > talk →0
Cast on 4 sts.
  > →4
K 1 row.
  > 4 Leaf/body 1 RS knit
1
  > talk 4
Bind off.
  > 4→0 Leaf/body 2 WS bind off all sts in pattern (0)
12
  > talk →0
Cast on 6 sts.
  > →6
K 1 row.
  > 6 Leaf/body 2 1 RS knit
  > = A good hat, other, 1 to make, lines 3 4
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; bind off
  > = Flower petal, other, 1 to make, lines 7 8
  > =   body from {castOn 4}, RS: 1 stocking 4 mm; bind off
  > = Leaf, other, 1 to make, lines 11 13 16
  > =   body from {castOn 4}, RS: 1 stocking 4 mm; bind off
  > =   body 2 from {castOn 6}, RS: 1 stocking 4 mm; hold

### a heading while rests wait
BACK
  > heading
Cast on 20 sts.
  > →20
Next row: k10, turn and leave rem 10 sts on a holder.
  > 20→10 Back/right side 1 RS k10
P 1 row.
  > 10 Back/right side 2 WS purl
Bind off.
  > 10→0 Back/right side 3 RS bind off all sts in pattern (0)
Shape shoulders
  > heading →0
Rejoin yarn to rem sts.
  > →10
K 1 row.
  > 10 Back/left side 1 RS knit
FRONT
  > heading 10
K 1 row.
  > 10 Back/left side 2 WS knit
Bind off.
  > 10→0 Back/left side 3 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 8 10 11
  > =   body from {castOn 20}, RS: split
  > =   right side from {part body, stitches 10, edge right}, RS: 2 stocking 4 mm; bind off
  > =   left side from {part body, stitches 10, edge left}, RS: 1 'shape shoulders' in stocking 4 mm; 1 stocking 4 mm; bind off

### a piece that goes on below a piece's heading
BACK
  > heading
Cast on 8 sts.
  > →8
K 1 row.
  > 8 Back/body 1 RS knit
YOKE
  > heading 8
K 1 row.
  > 8 Back/body 2 WS knit
Work even until piece measures 2 cm from here.
  > 8 as long as she likes: 2 rows Back/body 3 RS knit · WS purl
  > = Back, back, 1 to make, lines 3 5 6
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; 1 stocking 4 mm; 2 stocking 4 mm (length {id 'back/1', open, mm 20, from heading}); hold

### divide at a heading
BACK
  > heading
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Back/body 1 RS knit
DIVIDE FOR NECK
  > heading 20
Next row: p8, turn.
  > 20→8 Back/left side 1 WS p8
  > ✗ stitches wait @5:1 stitches 12
K 1 row.
  > 8 Back/left side 2 RS knit
Bind off.
  > 8→0 Back/left side 3 WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 5 6 7
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 8, edge left}, WS: 2 'divide for neck' in stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold

### worked without any cast-on
BACK
  > heading
K 1 row.
  > ✗ nothing on the needle @2:1
Work 2 rows in st st.
  > ✗ nothing on the needle @3:1
Bind off.
  > ✗ nothing on the needle @4:1
FRONT
  > heading
Work as for back.
  > ✗ piece not known @6:1 pieceName back

### a turn that is a short row
BACK
  > heading
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Back/body 1 RS knit
Row 1: p8, turn.
  > 20 Back/body 2 WS p8, turn
Row 2: k.
  > 20 Back/body 3 RS leave 12 sts unworked, knit to end
Row 3: p12, turn.
  > 20 Back/body 4 WS p12, turn
Row 4: k to end.
  > 20 Back/body 5 RS leave 8 sts unworked, knit to end
P 1 row.
  > 20 Back/body 6 WS purl
  > = Back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
