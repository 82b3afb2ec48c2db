import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** What was passed over without a word, or taken for something else; rows and counts reckoned by hand. */
describe('what stands in a text and was passed over, followed row by row,', () => {
  it.each(
    annotatedIn(`
### rows whose fabric a note says
NOTE: The whole bolero is knitted in garter stitch (knit every row).
BACK
  > heading
Cast on 12 sts. Work 4 rows. Dec 1 st each end of next row.
  > 12→10 Back/body 1 RS knit · WS knit · RS knit · WS knit · RS dec, knit to last 2 sts, dec (10)
Bind off.
  > 10→0 Back/body 6 WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 12}, RS: 5 garter 4 mm; bind off

### a fabric that only some pieces have is no fabric of all
The back is worked in garter st.
  > own words
  > ✗ stitch or repeat expected @1:13 column 13
Cast on 10 sts. Work 3 rows.
  > 10 Piece/body 1 RS knit · WS purl · RS knit
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 10}, RS: 3 stocking 4 mm; hold

### a fabric of all that nobody understands is told
Worked in an all-over moss design throughout the entire shawl.
  > own words
  > ✗ stitch or repeat expected @1:1 column 1
Cast on 10 sts. Work 3 rows.
  > 10 Piece/body 1 RS knit · WS purl · RS knit
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 10}, RS: 3 stocking 4 mm; hold

### nobody says in what the second piece is worked
COLLAR
  > heading
Cast on 12 sts. Work 4 rows in moss st. Bind off.
  > 12→0 Collar/body 1 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end · RS bind off all sts in pattern (0)
BELT
  > heading
Cast on 6 sts.
  > →6
Inc 1 st each end of next row.
  > 6→8 Belt/body 1 RS inc, k4, inc (8)
  > ✗ fabric not known @5:1 name pattern
CUFF
  > heading 8
Cast on 9 sts.
  > 8→9
Work 3 rows in moss st.
  > 9 Cuff/body 1 RS *k1, p1; repeat from * to last st, k1 · WS *k1, p1; repeat from * to last st, k1 · RS *k1, p1; repeat from * to last st, k1
  > = Collar, neckband, 1 to make, lines 2
  > =   body from {castOn 12}, RS: 4 moss 4 mm; bind off
  > = Belt, other, 1 to make, lines 5
  > =   body from {castOn 6}, RS: 1 stocking 4 mm; hold
  > = Cuff, other, 1 to make, lines 8
  > =   body from {castOn 9}, RS: 3 moss 4 mm; hold

### two buttonholes that lie nowhere
LEFT FRONT
  > heading
Cast on 8 sts. Knit 4 rows. Bind off.
  > 8→0 Left front/body 1 RS knit · WS knit · RS knit · WS knit · RS bind off all sts in pattern (0)
RIGHT FRONT
  > heading
Work as for left front, making 2 buttonholes.
  > →0 Right front/body 1 RS knit · WS knit · RS knit · WS knit · RS bind off all sts in pattern (0)
  > ✗ place not known @4:25
  > = Left front, left front, 1 to make, lines 2
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; bind off
  > = Right front, right front, 1 to make, lines 4
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; bind off

### a buttonhole that nobody called so is not left out
RIGHT FRONT
  > heading
Cast on 10 sts. Knit 2 rows.
  > 10 Right front/body 1 RS knit · WS knit
Next row: k2, bind off 2 sts, k to end.
  > 10→8 Right front/body 3 RS k2, bind off 2 sts, knit to end (8)
Next row: k to last 2 sts, cast on 2, k2.
  > 8→10 Right front/body 4 WS knit to last 2 sts, cast on 2 sts, k2 (10)
Knit 2 rows. Bind off.
  > 10→0 Right front/body 5 RS knit · WS knit · RS bind off all sts in pattern (0)
LEFT FRONT
  > heading
Work as for right front, omitting buttonholes.
  > →0 Left front/body 1 RS knit · WS knit · RS k2, bind off 2 sts, knit to end (8) · WS knit to last 2 sts, cast on 2 sts, k2 (10) · RS knit · WS knit · RS bind off all sts in pattern (0)
  > ✗ row not known @7:1 rowName buttonhole
  > = Right front, right front, 1 to make, lines 2 3 4 5
  > =   body from {castOn 10}, RS: 6 garter 4 mm; bind off
  > = Left front, left front, 1 to make, lines 7
  > =   body from {castOn 10}, RS: 6 garter 4 mm; bind off

### stitches that wait, and the side of what comes next
Cast on 20 sts. Knit 3 rows.
  > 20 Piece/body 1 RS knit · WS knit · RS knit
Place 12 sts on a holder, with right side facing (and 8 sts) bind off 2 sts, k to end.
  > 20→6 says 8 Piece/left side 1 RS bind off 2 sts, knit to end (6)
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 8, edge left}, RS: 1 garter 4 mm; hold
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold

### edges of their own, and others in their place
Cast on 14 sts.
  > →14
Row 1: Knit.
  > 14 Piece/body 1 RS knit
Row 2: K1, p to last st, k1.
  > 14 Piece/body 2 WS k1, purl to last st, k1
Repeat last 2 rows once.
  > 14 Piece/body 3 RS knit · WS k1, purl to last st, k1
Keeping 3 sts at both ends in garter st, work 4 rows.
  > 14 Piece/body 5 RS knit · WS k3, purl to last 3 sts, k3 · RS knit · WS k3, purl to last 3 sts, k3
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 14}, RS: 8 stocking 4 mm; hold

### a row, and what binds off behind it
Cast on 6 sts. Knit 1 row.
  > 6 Piece/body 1 RS knit
Next row: Purl, then bind off all sts.
  > 6→0 Piece/body 2 WS purl · RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 6}, RS: 2 stocking 4 mm; bind off

### the end of a piece by what is done
Cast on 6 sts. Knit 1 row.
  > 6 Piece/body 1 RS knit
Finish by casting off.
  > 6→0 Piece/body 2 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 6}, RS: 1 stocking 4 mm; bind off

### all of what is said before a comma goes across
Cast on 12 sts.
  > →12
Next row: K1, yo, k2tog, across row.
  > 12 Piece/body 1 RS *k1, yo, k2tog; repeat from * to end
Next row: K1, yo, k2tog across row.
  > 12 Piece/body 2 WS *k1, yo, k2tog; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; hold

### first and last stitches, told apart
Always slip the first st of every row.
Knit the last st at the end of every row.
Cast on 9 sts. Purl 2 rows.
  > 9 Piece/body 1 RS sl1, p7, k1 · WS sl1, p7, k1
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 9}, RS: 2 stocking 4 mm; hold

### a pattern whose rows change the count and bring it back
Cast on 9 sts.
  > →9
1st row: P1, * yo, p2; rep from * to end.
  > 9→13 Piece/body 1 RS p1, *yo, p2; repeat from * to end (13)
2nd row: * K2, drop the over; rep from * to last st, k1.
  > 13→9 Piece/body 2 WS *k2, drop; repeat from * to last st, k1 (9)
Rep last 2 rows for pattern.
  > 9
Work 3 rows in pattern.
  > 9→13 Piece/body 3 RS p1, *yo, p2; repeat from * to end (13) · WS *k2, drop; repeat from * to last st, k1 (9) · RS p1, *yo, p2; repeat from * to end (13)
  > = Piece, other, 1 to make, lines 2 3 5
  > =   body from {castOn 9}, RS: 2 reverse stocking 4 mm; 3 pattern in stocking 4 mm; hold

### between two stars, as often as it is said
Cast on 8 sts.
  > →8
1st row: Knit.
  > 8 Piece/body 1 RS knit
**2nd row: K6, p2.
  > 8 Piece/body 2 WS k6, p2
3rd row: P2, k6. **
  > 8 Piece/body 3 RS p2, k6
Rep from ** to ** twice.
  > 8 Piece/body 4 WS k6, p2 · RS p2, k6 · WS k6, p2 · RS p2, k6
Knit 1 row.
  > 8 Piece/body 8 WS knit
Rep from ** to ** once.
  > 8 Piece/body 9 RS k6, p2 · WS p2, k6
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 8}, RS: 10 stocking 4 mm; hold

### rows between stars are a pattern, and go on beside a shaping
Cast on 10 sts. Knit 2 rows.
  > 10 Piece/body 1 RS knit · WS knit
**1st row: * K1, p1; rep from * to end. 2nd row: Purl.** Repeat from ** to ** twice.
  > 10 Piece/body 3 RS *k1, p1; repeat from * to end · [WS purl · RS *k1, p1; repeat from * to end] ×2 · WS purl
Bind off 2 sts at beg of next 2 rows.
  > 10→6 Piece/body 9 RS bind off 2 sts, *k1, p1; repeat from * to end (8) · WS bind off 2 sts, purl to end (6)
Keeping continuity of pattern, dec 1 st each end of next row.
  > 6→4 Piece/body 11 RS dec, k1, p1, dec (4)
  > = Piece, other, 1 to make, lines 1 2 3 4
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; 1 rib in rib 1x1 4 mm; 1 stocking 4 mm; 1 rib in rib 1x1 4 mm; 1 stocking 4 mm; 1 rib in rib 1x1 4 mm; 1 stocking 4 mm; 3 pattern in stocking 4 mm; hold

### half the stitches wait
Cast on 12 sts. Knit 2 rows.
  > 12 Piece/body 1 RS knit · WS knit
Slip half of the sts onto a holder.
  > 12→6
Knit 2 rows. Bind off.
  > 6→0 Piece/right side 1 RS knit · WS knit · RS bind off all sts in pattern (0)
Rejoin yarn to rem sts. Bind off.
  > 6→0 Piece/left side 1 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 1 3 4
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 6, edge right}, RS: 2 stocking 4 mm; bind off
  > =   left side from {part body, stitches 6, edge left}, RS: bind off

### rows in letters, and stitches that are parted by stops
Cast on 10 sts.
  > →10
R1-2) Knit
  > 10 Piece/body 1 RS knit · WS knit
R3: K2. (P1. K1) 3 times. P2.
  > 10 Piece/body 3 RS k2, [p1, k1] 3 times, p2
R4) Purl
  > 10 Piece/body 4 WS purl
Beginning with a K row. St-st 2 rows.
  > 10 Piece/body 5 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; 1 rib in rib 1x1 4 mm; 3 stocking 4 mm; hold

### the rib of the back, though nobody called it so
BACK
  > heading
Cast on 7 sts.
  > →7
Row 1: P1, *k1, p1; rep from * to end.
  > 7 Back/body 1 RS p1, *k1, p1; repeat from * to end
Row 2: K1, *p1, k1; rep from * to end.
  > 7 Back/body 2 WS k1, *p1, k1; repeat from * to end
Repeat these 2 rows twice.
  > 7 Back/body 3 RS p1, *k1, p1; repeat from * to end · WS k1, *p1, k1; repeat from * to end · RS p1, *k1, p1; repeat from * to end · WS k1, *p1, k1; repeat from * to end
FRONT
  > heading 7
Cast on 5 sts. Work in rib as on the back for 2 rows.
  > 7→5 Front/body 1 RS p1, *k1, p1; repeat from * to end · WS k1, *p1, k1; repeat from * to end
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 7}, RS: 6 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 7
  > =   body from {castOn 5}, RS: 2 rib in stocking 4 mm; hold

### a needle within a row's name, a count in a column of its own
Cast on 8 sts.
  > →8
Row 1: Change to larger needles and knit.
  > 8 Piece/body 1 RS knit
Row 2: K1, k2tog, p to end          7 sts
  > 8→7 says 7 Piece/body 2 WS k1, k2tog, purl to end (7)
Rows 3-4: repeat last 2 rows            6 sts
  > 7→6 says 6 Piece/body 3 RS knit · WS k1, k2tog, purl to end (6)
Row 5: Change to 3 mm needles. Increase 2 sts across the row.
  > 6→8 Piece/body 5 RS k2, m1, k3, m1, k1 (8)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; 1 stocking 3 mm; hold

### a decrease row until so many are left
Cast on 9 sts.
  > →9
1st decrease row - K2tog, k to end.
  > 9→8 Piece/body 1 RS k2tog, knit to end (8)
Repeat 1st decrease row until you have 5 sts.
  > 8→5 Piece/body 2 WS k2tog, knit to end (7) · RS k2tog, knit to end (6) · WS k2tog, knit to end (5)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 9}, RS: 4 stocking 4 mm; hold

### what is left of a row
Cast on 12 sts. Knit 1 row.
  > 12 Piece/body 1 RS knit
Bind off 4 sts, complete row.
  > 12→8 Piece/body 2 WS bind off 4 sts, purl to end (8)
Bind off 3 sts of sleeve, complete row in pattern.
  > 8→5 Piece/body 3 RS bind off 3 sts, knit to end (5)
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 12}, RS: 3 stocking 4 mm; hold

### the first row lies on the other side than the second, of which it is said
Cast on 6 sts.
  > →6
Row 1: K1, p4, k1.
  > 6 Piece/body 1 WS k1, p4, k1
Row 2 (RS): Knit.
  > 6 Piece/body 2 RS knit
Rep Rows 1 and 2 twice.
  > 6 Piece/body 3 WS k1, p4, k1 · RS knit · WS k1, p4, k1 · RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 6}, WS: 6 stocking 4 mm; hold

### a side said once is not turned over
Cast on 6 sts.
  > →6
Row 1 (RS): K1, p4, k1.
  > 6 Piece/body 1 RS k1, p4, k1
Row 2 (RS): Knit.
  > 6 Piece/body 2 WS knit
  > ✗ side differs @3:1 saidSide RS, foundSide WS
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 6}, RS: 2 stocking 4 mm; hold

### a row that ends with a turn in a sentence of its own
Cast on 12 sts. Knit 2 rows.
  > 12 Piece/body 1 RS knit · WS knit
With MC, k5. Turn. Leave rem sts on a spare needle.
  > 12→5 Piece/right side 1 RS k5
Knit 2 rows. Bind off.
  > 5→0 Piece/right side 2 WS knit · RS knit · WS bind off all sts in pattern (0)
Join MC to rem sts and knit to end of row.
  > 7 Piece/left side 1 RS knit
Bind off.
  > 7→0 Piece/left side 2 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 1 2 3 4 5
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 5, edge right}, RS: 3 'stocking, MC' in stocking 4 mm; bind off
  > =   left side from {part body, stitches 7, edge left}, RS: 1 'stocking, MC' in stocking 4 mm; bind off

### rows in brackets, so often and until she likes
Cast on 4 sts.
  > →4
Row 1: Knit.
  > 4 Piece/body 1 RS knit
Row 2: Purl.
  > 4 Piece/body 2 WS purl
[Repeat rows 1 and 2] twice more (6 rows)
  > 4 Piece/body 3 RS knit · WS purl · RS knit · WS purl
Repeat until you reach desired length.
  > 4 as long as she likes: 2 rows Piece/body 7 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 4}, RS: 6 stocking 4 mm; 2 stocking 4 mm (length {id 'piece/1', open, from start}); hold

### a pattern and its first row in one line
Zigzag Pattern—Row 1—wrong side—With 4 mm needles, k2, * p2, k2; rep from * to end.
Row 2—P2, * k2, p2; rep from * to end.
Cast on 10 sts. Work 2 rows in zigzag pattern.
  > 10 Zigzag pattern/body 1 WS k2, *p2, k2; repeat from * to end · RS p2, *k2, p2; repeat from * to end
  > = pattern zigzag of 4 plus 2 over 10: k2, *p2, k2; repeat from * to end (10) · p2, *k2, p2; repeat from * to end (10)
  > = Zigzag pattern, other, 1 to make, lines 3
  > =   body from {castOn 10}, WS: 2 zigzag in stocking 4 mm; hold

### what comes at a length is the neck's
Cast on 12 sts.
  > →12
When work measures 8 cm, shape neck.
  > 12 as long as she likes: 2 rows Piece/body 1 RS knit · WS purl
Next row: patt 4, cast off 4 sts in patt, patt 4.
  > 12→8 Piece/body 3 RS k4, bind off 4 sts, knit to end (8)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 12}, RS: 2 stocking 4 mm (length {id 'piece/1', open, mm 80, from start}); 1 'shape neck' in stocking 4 mm; split
  > =   left side from {part body, stitches 4, edge left}, WS: hold
  > =   resting 1 from {part body, stitches 4, edge right}, WS: hold

### the side that is said behind a heading
Cast on 12 sts. Knit 3 rows.
  > 12 Piece/body 1 RS knit · WS knit · RS knit
To Shape Armholes: With wrong side of work toward you, bind off 2 sts at beginning of next 2 rows.
  > 12→8 Piece/body 4 WS bind off 2 sts, knit to end (10) · RS bind off 2 sts, knit to end (8)
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 12}, RS: 3 garter 4 mm; 2 'to shape armholes' in garter 4 mm; hold
### garter stitch behind a row in its own words is knit again
Cast on 20 sts. Knit 2 rows in garter st.
  > 20 Piece/body 1 RS knit · WS knit
Wiggle the yarn and work one row so.
  > own words 20 asks the count Piece/body 3 RS work in pattern 'Wiggle the yarn and work one row so'
  > ✗ stitch or repeat expected @2:1 column 1
Knit 2 rows in garter st. Bind off.
  > 20→0 Piece/body 4 WS knit · RS knit · WS bind off all sts in pattern (0)
Make second side in same fashion.
  > →0
  > ✗ nothing rests @4:1
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 20}, RS: 3 garter 4 mm (own words 3); 2 garter 4 mm; bind off

### an unsaid first row and a second one whose side is said
Cast on 6 sts.
  > →6
Row 1: Knit.
  > 6 Piece/body 1 WS knit
Row 2 (RS): K1, p4, k1.
  > 6 Piece/body 2 RS k1, p4, k1
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 6}, WS: 2 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
