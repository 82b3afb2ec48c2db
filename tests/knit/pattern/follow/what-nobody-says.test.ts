import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Sides, cast-ons, ends and repeats that a text leaves to the knitter; rows and counts reckoned by hand. */
describe('what a text leaves unsaid, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a side said before the row: told where it is another one
Cast on 20 sts. Knit 3 rows.
  > 20 Piece/body 1 RS knit · WS knit · RS knit
With wrong side facing, cast off 4 sts, p to end.
  > 20→16 Piece/body 4 WS bind off 4 sts, purl to end (16)
With wrong side facing, cast off 4 sts, p to end.
  > 16→12 Piece/body 5 RS bind off 4 sts, purl to end (12)
  > ✗ side differs @3:1 saidSide WS, foundSide RS
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; 2 garter 4 mm; hold

### stitches cast on where others are on the needle are told, since nobody says where
Cast on 20 sts. Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Cast on 6 sts.
  > 20→26 Piece/body 3 RS cast on 6 sts, knit to end (26)
  > ✗ place not known @2:1
Knit 2 rows.
  > 26 Piece/body 4 WS knit · RS knit
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 20}, RS: 2 garter 4 mm; 1 stocking 4 mm; 2 garter 4 mm; hold

### what is begun by its needle or its purpose is a piece of its own
Cast on 20 sts. Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
To make the lining, cast on 12 sts. Knit 2 rows.
  > 20→12 Piece/body 2 1 RS knit · WS knit
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; hold
  > =   body 2 from {castOn 12}, RS: 2 stocking 4 mm; hold

### a sleeve without a cast-on is told once
BACK
  > heading
Cast on 20 sts. Knit 4 rows.
  > 20 Back/body 1 RS knit · WS knit · RS knit · WS knit
SLEEVES
  > heading 20
Knit 2 rows.
  > 20 Back/body 5 RS knit · WS knit
  > ✗ nothing on the needle @4:1
Knit 2 rows.
  > 20 Back/body 7 RS knit · WS knit
  > = Back, back, 1 to make, lines 2 4 5
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 4 garter 4 mm; hold

### a front that was parted has its stitches already
BODY
  > heading
Cast on 20 sts. Knit 4 rows.
  > 20 Body/body 1 RS knit · WS knit · RS knit · WS knit
Next row: K8, turn and work on these 8 sts only.
  > 20→8 Body/right side 1 RS k8
LEFT FRONT
  > heading 8
Knit 2 rows.
  > 8 Body/right side 2 WS knit · RS knit
  > = Body, other, 1 to make, lines 2 3 5
  > =   body from {castOn 20}, RS: 4 garter 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, RS: 1 garter 4 mm; 2 garter 4 mm; hold
  > =   resting 1 from {part body, stitches 12, edge left}, RS: hold

### what is bound off for an armhole lies at the one armhole of a front
Right front
  > heading
Cast on 24 sts. Work 2 rows in st st.
  > 24 Right front/body 1 RS knit · WS purl
Bind off 5 sts for armhole.
  > 24→19 Right front/body 3 RS knit · WS bind off 5 sts, purl to end (19)
Work 2 rows.
  > 19 Right front/body 5 RS knit · WS purl
  > = Right front, right front, 1 to make, lines 2 3 4
  > =   body from {castOn 24}, RS: 6 stocking 4 mm; hold

### and is told on a back, which has two
Back
  > heading
Cast on 24 sts. Work 2 rows in st st.
  > 24 Back/body 1 RS knit · WS purl
Bind off 5 sts for armhole.
  > 24 asks the count Back/body 3 RS work in pattern 'Bind off 5 sts for armhole'
  > ✗ stitches left over @3:1 leftStitches 19, onNeedleStitches 24
  > = Back, back, 1 to make, lines 2 3
  > =   body from {castOn 24}, RS: 3 stocking 4 mm (own words 3); hold

### a rib in a row by itself is worked all across, half a row is not
Cast on 24 sts.
  > →24
Row 1: Knit 2, purl 2.
  > 24 Piece/body 1 RS *k2, p2; repeat from * to end
Row 2: K 12.
  > 24 asks the count Piece/body 2 WS work in pattern 'Row 2: K 12'
  > ✗ stitches left over @3:1 leftStitches 12, onNeedleStitches 24
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 24}, RS: 1 rib in rib 2x2 4 mm; 1 stocking 4 mm (own words 1); hold

### an end that is the repeat's own is worked once
Cast on 21 sts.
  > →21
Next row: K3, *p6, k3, rep from * across row, end k3.
  > 21 Piece/body 1 RS k3, *p6, k3; repeat from * to end
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 21}, RS: 1 stocking 4 mm; hold

### an end of one group is that of a longer repeat
Cast on 43 sts.
  > →43
Next row: K3, *k1, p6, k3, rep from * across row, end k3.
  > 43 Piece/body 1 RS k3, *k1, p6, k3; repeat from * to end
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 43}, RS: 1 stocking 4 mm; hold

### a last repeat goes as far as the end has more
Cast on 23 sts.
  > →23
Next row: K4, *p3, k3, rep from * across, ending with k4.
  > 23 Piece/body 1 RS k4, *p3, k3; repeat from * to last 7 sts, p3, k4
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 23}, RS: 1 stocking 4 mm; hold

### rows that form a rib are repeated as often as they say
Cast on 21 sts.
  > →21
1st row: K1, *p1, k1, rep from * to end.
  > 21 Piece/body 1 RS k1, *p1, k1; repeat from * to end
2nd row: P1, *k1, p1, rep from * to end.
  > 21 Piece/body 2 WS p1, *k1, p1; repeat from * to end
These 2 rows form the rib, repeat a further 3 times (8 rib rows in total).
  > 21 Piece/body 3 RS k1, *p1, k1; repeat from * to end · [WS p1, *k1, p1; repeat from * to end · RS k1, *p1, k1; repeat from * to end] ×2 · WS p1, *k1, p1; repeat from * to end
Knit 1 row.
  > 21 Piece/body 9 RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 21}, RS: 8 rib in rib 1x1 matched 4 mm; 1 pattern in stocking 4 mm; hold

### rows as given elsewhere are those rows and no more
Back
  > heading
Cast on 21 sts. Work 4 rows in k1, p1 rib.
  > 21 Back/body 1 RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1 · RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1
Knit 6 rows. Cast off.
  > 21→0 Back/body 5 RS knit · [WS knit · RS knit] ×2 · WS knit · RS bind off all sts in pattern (0)
Left front
  > heading
Cast on 11 sts.
  > →11
Work 4 rows in k1, p1 rib as given for the back.
  > 11 Left front/body 1 RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1 · RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1
Cast off.
  > 11→0 Left front/body 5 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 2 3
  > =   body from {castOn 21}, RS: 10 rib in rib 1x1 4 mm; bind off
  > = Left front, left front, 1 to make, lines 6 7
  > =   body from {castOn 11}, RS: 4 rib in rib 1x1 4 mm; bind off

### the other front has a name and no button holes
Right front
  > heading
Cast on 12 sts. Knit 4 rows.
  > 12 Right front/body 1 RS knit · WS knit · RS knit · WS knit
Dec 1 st at neck edge on next row.
  > 12→11 Right front/body 5 RS dec, knit to end (11)
Bind off.
  > 11→0 Right front/body 6 WS bind off all sts in pattern (0)
Work left front to correspond, omitting buttonholes.
  > →0 Left front/body 1 RS knit · WS knit · RS knit · WS knit · RS knit to last 2 sts, dec (11) · WS bind off all sts in pattern (0)
  > = Right front, right front, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 4 garter 4 mm; 1 garter 4 mm; bind off
  > = Left front, left front, 1 to make, lines 5
  > =   body from {castOn 12}, RS: 4 garter 4 mm; 1 garter 4 mm; bind off

### a text that casts nothing on and counts all the same
Make a slip knot and k, p, k into it. (3 sts in all)
  > own words
  > ✗ stitch or repeat expected @1:40 column 40
Row 1: K1, inc in next st, k1. (4 sts in all)
  > own words
  > ✗ stitch or repeat expected @2:33 column 33
Row 2: Knit.
  > ✗ pattern does not return @3 rows 2, afterStitches 4, startStitches 3
  > = pattern pattern of 0 plus 3 over 3: k1, inc, k1 (4) · knit (4)

### a row that does not come out is told once, and worked again in its words
Cast on 20 sts.
  > →20
Row 1: K3, *p4, rep from * to last 4 sts, k4.
  > 20 asks the count Piece/body 1 RS work in pattern 'Row 1: K3, *p4, rep from * to last 4 sts, k4'
  > ✗ repeat does not come out @2:1 byStitches 4, spanStitches 13
Row 2: Purl.
  > 20 Piece/body 2 WS purl
Row 3: Repeat row 1.
  > 20 Piece/body 3 RS work in pattern 'Row 1: K3, *p4, rep from * to last 4 sts, k4'
Rep rows 1 and 2 once.
  > 20 Piece/body 4 WS work in pattern 'Row 1: K3, *p4, rep from * to last 4 sts, k4' · RS purl
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 5 stocking 4 mm (own words 1 3 4); hold

### dec rows have numbers of their own
Cast on 12 sts.
  > →12
Dec Row 1: *K1, k2tog; rep from * to end.
  > 12→8 Piece/body 1 RS *k1, k2tog; repeat from * to end (8)
Dec Row 2: *K2tog; rep from * to end.
  > 8→4 Piece/body 2 WS [k2tog] to end (4)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; hold

### stitches at the end of a row are put away
Cast on 26 sts. Knit 2 rows.
  > 26 Piece/body 1 RS knit · WS knit
Next row: knit to last 6 sts, place these sts on a holder for the border.
  > 26→20 Piece/right side 1 RS k20
Working on the remaining 20 sts and beginning with a purl row work in st st for 4 rows.
  > 20 Piece/right side 2 WS purl · RS knit · WS purl · RS knit
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 26}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 20, edge right}, RS: 5 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 6, edge left}, RS: hold

### a number of a step, a section behind a row, a bracket that says it again
1 Cast on 20 sts.
  > →20
2 Work 2 rows in st st (that is, 1 on each side).
  > 20 Piece/body 1 RS knit · WS purl
3 Bind off 2 sts at beg of next 2 rows (once at each side).
  > 20→16 Piece/body 3 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16)
Rows 1 – 4: K to end of row
  > 16 Piece/body 5 RS knit · WS knit · RS knit · WS knit
Section 2
  > talk 16
Next row (decrease): K2tog, k to end. (15 sts)
  > 16→15 says 15 Piece/body 9 RS k2tog, knit to end (15)
  > = Piece, other, 1 to make, lines 2 3 4 6
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; 5 garter 4 mm; hold

### decreases go on as the last one
Cast on 20 sts. Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Next row: K2, k2tog, k to last 4 sts, ssk, k2.
  > 20→18 Piece/body 3 RS k2, k2tog, knit to last 4 sts, ssk, k2 (18)
Work 3 rows.
  > 18 Piece/body 4 WS purl · RS knit · WS purl
Continue decreasing thus on next and every following 4th row until 14 sts remain.
  > 18→14 Piece/body 7 RS k2, k2tog, knit to last 4 sts, ssk, k2 (16) · WS purl · RS knit · WS purl · RS k2, k2tog, knit to last 4 sts, ssk, k2 (14)
  > = Piece, other, 1 to make, lines 1 2 3 4
  > =   body from {castOn 20}, RS: 11 stocking 4 mm; hold

### ridges on each shoulder say where they are knitted
Cast on 20 sts. Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Knit 3 ridges on each shoulder, cast on 10 sts.
  > own words 20 asks the count Piece/body 3 RS work in pattern 'Knit 3 ridges on each shoulder, cast on 10 sts'
  > ✗ stitch or repeat expected @2:15 column 15
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 20}, RS: 3 stocking 4 mm (own words 3); hold

### rows that are announced are those that are spelled out behind
Cast on 20 sts.
  > →20
Work 4 rows as follows:
  > talk 20
Row 1: Knit.
  > 20 Piece/body 1 RS knit
Row 2: Purl.
  > 20 Piece/body 2 WS purl
Rows 3 and 4: Knit.
  > 20 Piece/body 3 RS knit · WS knit
Cast off.
  > 20→0 Piece/body 5 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; bind off

### and are told where others come
Cast on 20 sts.
  > →20
Work 10 rows as follows:
  > talk 20
  > ✗ rows already worked @2 workedRows 2, rows 10
Row 1: Knit.
  > 20 Piece/body 1 RS knit
Row 2: Purl.
  > 20 Piece/body 2 WS purl
Cast off.
  > 20→0 Piece/body 3 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; bind off

### brackets that say how often are no comments
Cast on 20 sts.
  > →20
Dec 1 st at each end of next row (twice).
  > 20→16 Piece/body 1 RS dec, knit to last 2 sts, dec (18) · WS dec, purl to last 2 sts, dec (16)
Row 1: K2, (p1, k1) (twice), k to end.
  > own words 16 asks the count Piece/body 3 RS work in pattern 'Row 1: K2, (p1, k1) (twice), k to end'
  > ✗ stitch or repeat expected @3:22 column 22
Dec 1 st at each end of every row (3 times).
  > 16→10 Piece/body 4 WS dec, work in pattern to last 2 sts, dec (14) · RS dec, work in pattern to last 2 sts, dec (12) · WS dec, work in pattern to last 2 sts, dec (10)
Row 3 (worked 3 times): Knit.
  > own words 10 asks the count Piece/body 7 RS work in pattern 'Row 3 (worked 3 times): Knit'
  > ✗ stitch or repeat expected @5:8 column 8
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 3 stocking 4 mm (own words 3); 4 pattern in stocking 4 mm (own words 4); hold

### brackets that say it again are
Cast on 20 sts.
  > →20
Bind off 2 sts at beg of next 2 rows (once at each side).
  > 20→16 Piece/body 1 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16)
Dec 1 st at each end of every other row 3 times (that is, 3 on each side).
  > 16→10 Piece/body 3 RS dec, knit to last 2 sts, dec (14) · WS purl · RS dec, knit to last 2 sts, dec (12) · WS purl · RS dec, knit to last 2 sts, dec (10)
Work in k1, p1 rib (worked over an even number of sts) for 4 rows (4 rib rows in all).
  > 10 Piece/body 8 WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end
Bind (cast) off.
  > 10→0 Piece/body 12 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; 4 rib in rib 1x1 4 mm; bind off

### rows of knit and purl stitches are the rib, though nobody called them so
Cast on 42 sts.
  > →42
1st row (right side): P2, *k2, p2; rep from * to end.
  > 42 Piece/body 1 RS p2, *k2, p2; repeat from * to end
2nd row: K2, *p2, k2; rep from * to end.
  > 42 Piece/body 2 WS k2, *p2, k2; repeat from * to end
Work 4 cm in rib, ending with a 1st rib row.
  > 42 as long as she likes: 1 rows Piece/body 3 RS p2, *k2, p2; repeat from * to end
Knit 1 row.
  > 42 Piece/body 4 WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 42}, RS: 2 rib in rib 2x2 4 mm; 1 rib in stocking 4 mm (length {id 'piece/1', open, mm 40, from here}); 1 rib in stocking 4 mm; hold

### rows of another pattern are no rib
Cast on 42 sts.
  > →42
1st row: *K2, yo, k2tog, rep from * to last 2 sts, k2.
  > 42 Piece/body 1 RS *k2, yo, k2tog; repeat from * to last 2 sts, k2
2nd row: Purl.
  > 42 Piece/body 2 WS purl
Work 4 rows in rib.
  > 42 Piece/body 3 RS work in pattern · WS work in pattern · RS work in pattern · WS work in pattern
  > ✗ fabric not known @4:1 name rib
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 42}, RS: 2 stocking 4 mm; 4 rib in stocking 4 mm; hold

### a side behind one row
Cast on 8 sts. Knit 2 rows.
  > 8 Piece/body 1 WS knit · RS knit
P 1 row on WS for ridge.
  > 8 Piece/body 3 WS purl
K 1 row on WS.
  > 8 Piece/body 4 RS knit
  > ✗ side differs @3:9 saidSide WS, foundSide RS
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 8}, WS: 4 stocking 4 mm; hold

### one more sleeve
Sleeve
  > heading
Cast on 8 sts. Knit 2 rows. Bind off.
  > 8→0 Sleeve/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
Make another sleeve the same.
  > talk →0
  > = Sleeve, sleeve, 2 to make, lines 2
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; bind off

### a note with its words behind it says nothing of what comes below
Note: the jacket is knitted in one piece.
  > heading
Row 1: K1, p1.
Row 2: P1, k1.
Back
  > heading
Cast on 20 sts.
  > →20
Work in pattern for 2 rows.
  > 20 Back/body 1 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end
  > = pattern pattern of 0 plus 2 over 2: k1, p1 (2) · p1, k1 (2)
  > = Back, back, 1 to make, lines 6
  > =   body from {castOn 20}, RS: 2 pattern in stocking 4 mm; hold

### the last row is on the side that it is said to be worked on
GAUGE: 20 sts and 20 rows = 4 in
  > talk
Left front
  > heading
Cast on 20 sts.
  > →20
Work in garter st until piece measures 1 in, end by working a right side row.
  > 20 long: 7 rows Left front/body 1 RS knit · [WS knit · RS knit] ×3
  > = gauge stitches 19.68503937007874, rows 19.68503937007874
  > = Left front, left front, 1 to make, lines 4
  > =   body from {castOn 20}, RS: 7 garter 4 mm (length {id 'left front/1', open false, mm 25.4, endSide RS, from start}); hold

### a shaping in its rows lies in those rows, not in the ones before
Cast on 40 sts. Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Cast off 6 sts at beg of next 2 rows. Work 3 rows in patt, dec 1 st at each end of every row. 22 sts.
  > 40→22 says 22 Piece/body 3 RS bind off 6 sts, knit to end (34) · WS bind off 6 sts, purl to end (28) · RS dec, knit to last 2 sts, dec (26) · WS dec, purl to last 2 sts, dec (24) · RS dec, knit to last 2 sts, dec (22)
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 40}, RS: 7 stocking 4 mm; hold

### a label with its stop and a dash
Cast on 10 sts.
  > →10
1st Row.- K1, p to last st, k1.
  > 10 Piece/body 1 RS k1, purl to last st, k1
2nd Row. – Purl.
  > 10 Piece/body 2 WS purl
Rep 1st and 2nd rows once.
  > 10 Piece/body 3 RS k1, purl to last st, k1 · WS purl
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 10}, RS: 4 garter 4 mm; hold

### stocking stitch begins with its first two rows
Cast on 24 sts.
  > →24
1st row: *K2, p2, rep from * to end.
  > 24 Piece/body 1 RS *k2, p2; repeat from * to end
2nd row: *K1, p1, rep from * to end.
  > 24 Piece/body 2 WS *k1, p1; repeat from * to end
K 1 row.
  > 24 Piece/body 3 RS knit
P 1 row.
  > 24 Piece/body 4 WS purl
Work 2 rows even.
  > 24 Piece/body 5 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 24}, RS: 1 rib in rib 2x2 4 mm; 1 rib in rib 1x1 4 mm; 4 stocking 4 mm; hold

### a count that the other piece never has
Back
  > heading
Cast on 20 sts. Knit 2 rows. Dec 1 st at each end of next row.
  > 20→18 Back/body 1 RS knit · WS knit · RS dec, knit to last 2 sts, dec (18)
Front
  > heading 18
Work as for back until 10 sts remain.
  > 18 Front/body 1 RS knit · WS knit · RS dec, knit to last 2 sts, dec (18)
  > ✗ count contradicts @4:1 statedStitches 10, foundStitches 18
  > = Back, back, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 4
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
