import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of our own after those that leaflets and pages use. */
describe('what stands around the rows of a text, followed row by row,', () => {
  it.each(
    annotatedIn(`
### an end that is seen, or told of what she knits {"gauge":{"stitches":20,"rows":28}}
COLLAR
  > heading
Cast on 20 sts.
  > →20
Work in garter st until the apron measures 4 cm, ending on a wrong side row.
  > 20 long: 16 rows Collar/body 1 RS knit · [WS knit · RS knit] ×7 · WS knit
Work even until strip goes round half the neck and is as long as one front edge.
  > 20 as long as she likes: 2 rows Collar/body 17 RS knit · WS knit
Knit even until it fits, ending with a WS row.
  > 20 as long as she likes: 2 rows Collar/body 19 RS knit · WS knit
Work in st st for 2 cm or desired length from lower edge.
  > 20 long: 6 rows Collar/body 21 RS knit · [WS purl · RS knit] ×2 · WS purl
Work even until piece measures 60 cm, or any length you like to the beginning of armhole.
  > 20 long: 148 rows Collar/body 27 RS knit · [WS purl · RS knit] ×73 · WS purl
Work in garter st until 200 rows have been worked (item measures 65 cm by then).
  > 20 Collar/body 175 RS knit · [WS knit · RS knit] ×12 · WS knit
Knit until 3 sts remain on left needle.
  > 20
  > ✗ count contradicts @9:1 statedStitches 3, foundStitches 20
Work even until 3 markers are reached.
  > own words 20 asks the count as long as she likes: 1 rows Collar/body 201 RS work in pattern 'Work even until 3 markers are reached'
  > ✗ stitch or repeat expected @10:11 column 11
Bind off 20 sts.
  > 20→0 Collar/body 202 WS bind off all sts in pattern (0)
  > = gauge stitches 20, rows 28
  > = Collar, neckband, 1 to make, lines 3 4 5 6 7 8 10 11
  > =   body from {castOn 20}, RS: 16 garter 4 mm (length {id 'collar/1', open false, mm 40, endSide WS, from start}); 2 garter 4 mm (length {id 'collar/2', open, from start}); 2 garter 4 mm (length {id 'collar/3', open, endSide WS, from start}); 6 stocking 4 mm (length {id 'collar/4', open false, mm 20, from here}); 148 stocking 4 mm (length {id 'collar/5', open false, mm 600, from start}); 26 garter 4 mm; 1 garter 4 mm (own words 1, length {id 'collar/6', open, from here}); bind off

### another piece up to where a place of it is done
BACK
  > heading
Cast on 40 sts.
  > →40
Work in st st for 4 rows.
  > 40 Back/body 1 RS knit · WS purl · RS knit · WS purl
Shape armholes: bind off 4 sts at beg of next 2 rows, dec 1 st at each end of every alt row twice.
  > 40→28 Back/body 5 RS bind off 4 sts, knit to end (36) · WS bind off 4 sts, purl to end (32) · RS dec, knit to last 2 sts, dec (30) · WS purl · RS dec, knit to last 2 sts, dec (28)
Work 4 rows.
  > 28 Back/body 10 WS purl · RS knit · WS purl · RS knit
Bind off 28 sts.
  > 28→0 Back/body 14 WS bind off all sts in pattern (0)
FRONT
  > heading
Work as back until armhole shaping is completed.
  > →28 Front/body 1 RS knit · WS purl · RS knit · WS purl · RS bind off 4 sts, knit to end (36) · WS bind off 4 sts, purl to end (32) · RS dec, knit to last 2 sts, dec (30) · WS purl · RS dec, knit to last 2 sts, dec (28)
Work over 14 sts only, and slip rem 14 sts on a holder.
  > 28→14
Work 3 rows.
  > 14 Front/left side 1 WS purl · RS knit · WS purl
Bind off 14 sts.
  > 14→0 Front/left side 4 RS bind off all sts in pattern (0)
SECOND FRONT
  > heading →0
Work as back until armholes are reached.
  > →40 Second front/body 1 RS knit · WS purl · RS knit · WS purl
Bind off 40 sts.
  > 40→0 Second front/body 5 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 40}, RS: 4 stocking 4 mm; 9 'shape armholes' in stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 8 10 11
  > =   body from {castOn 40}, RS: 9 stocking 4 mm; split
  > =   left side from {part body, stitches 14, edge left}, WS: 3 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 14, edge right}, WS: hold
  > = Second front, front, 1 to make, lines 13 14
  > =   body from {castOn 40}, RS: 4 stocking 4 mm; bind off

### stitches that are divided
BACK
  > heading
Cast on 40 sts.
  > →40
Work in st st for 4 rows.
  > 40 Back/body 1 RS knit · WS purl · RS knit · WS purl
Divide the sts in half and place one half on a holder.
  > 40→20
Work 2 rows.
  > 20 Back/right side 1 RS knit · WS purl
Bind off 20 sts.
  > 20→0 Back/right side 3 RS bind off all sts in pattern (0)
FRONT
  > heading →0
Cast on 41 sts.
  > →41
Work in st st for 4 rows.
  > 41 Front/body 1 RS knit · WS purl · RS knit · WS purl
Divide sts in 2 and slip one side onto a holder.
  > 41
  > ✗ place not known @10:1
Move 11 sts from the middle to a stitch holder.
  > 41→15
Knit each side of the neckline separately.
  > 15
Bind off 15 sts.
  > 15→0 Front/right side 1 RS bind off all sts in pattern (0) · Front/left side 1 WS bind off all sts in pattern (0)
BODY
  > heading
Cast on 40 sts.
  > →40
Divide for fronts and back.
  > talk 40
Next row: k8, bind off 4 sts, k until there are 16 sts on right needle, bind off 4 sts, k8.
  > 40→32 Body/body 1 RS k8, bind off 4 sts, k16, bind off 4 sts, k8 (32)
Continue on this group of sts for left front.
  > 32→8
  > ✗ stitches wait @18:1 stitches 8
  > ✗ stitches wait @18:1 stitches 16
Work 2 rows.
  > 8 Body/left side 1 WS purl · RS knit
Bind off 8 sts.
  > 8→0 Body/left side 3 WS bind off all sts in pattern (0)
VEST
  > heading →0
Cast on 40 sts.
  > →40
Divide for fronts and back.
  > talk 40
  > ✗ stitch or repeat expected @23:1 column 1
Work 10 rows.
  > 40 Vest/body 1 RS knit · [WS purl · RS knit] ×4 · WS purl
Bind off.
  > 40→0 Vest/body 11 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 5 6
  > =   body from {castOn 40}, RS: 4 stocking 4 mm; split
  > =   right side from {part body, stitches 20, edge right}, RS: 2 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 20, edge left}, RS: hold
  > = Front, front, 1 to make, lines 9 13
  > =   body from {castOn 41}, RS: 4 stocking 4 mm; split
  > =   right side from {part body, stitches 15, edge right}, RS: bind off
  > =   middle from {part body, stitches 11, edge middle}, RS: hold
  > =   left side from {part body, stitches 15, edge left}, WS: bind off
  > = Body, other, 1 to make, lines 17 19 20
  > =   body from {castOn 40}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 8, edge left}, WS: 2 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 8, edge right}, WS: hold
  > =   resting 2 from {part body, stitches 16, edge middle}, WS: hold
  > = Vest, other, 1 to make, lines 24 25
  > =   body from {castOn 40}, RS: 10 stocking 4 mm; bind off

### a gauge in brackets
(Tension should be about 22 sts and 30 rows to 10 cm over stocking st; change needles if you must)
  > talk
BACK
  > heading
Cast on 20 sts.
  > →20
Work in st st for 4 cm.
  > 20 long: 12 rows Back/body 1 RS knit · [WS purl · RS knit] ×5 · WS purl
Bind off.
  > 20→0 Back/body 13 RS bind off all sts in pattern (0)
  > = gauge stitches 22, rows 30, fabric stocking
  > = Back, back, 1 to make, lines 4 5
  > =   body from {castOn 20}, RS: 12 stocking 4 mm (length {id 'back/1', open false, mm 40, from here}); bind off

### one piece to the armholes
JACKET
  > heading
Work in one piece until armholes.
  > talk
Cast on 20 sts.
  > →20
Work 2 rows in garter st.
  > 20 Jacket/body 1 RS knit · WS knit
Work until armholes measure 4 cm straight above the bound-off sts.
  > 20 as long as she likes: 2 rows Jacket/body 3 RS knit · WS knit
Bind off.
  > 20→0 Jacket/body 5 RS bind off all sts in pattern (0)
  > = Jacket, other, 1 to make, lines 4 5 6
  > =   body from {castOn 20}, RS: 2 garter 4 mm; 2 garter 4 mm (length {id 'jacket/1', open, mm 40, from armhole}); bind off

### a line that a page broke behind a number
BACK
  > heading
Cast on 40 sts.
  > →40
Bind off at the beg of the next 2 rows 4 sts, at the beg of the next 4
rows 2 sts, dec 1 st at each end of every k row until 20 sts are left.
  > lines 3 to 4 40→20 Back/body 1 RS bind off 4 sts, knit to end (36) · WS bind off 4 sts, purl to end (32) · RS bind off 2 sts, knit to end (30) · WS bind off 2 sts, purl to end (28) · RS bind off 2 sts, knit to end (26) · WS bind off 2 sts, purl to end (24) · RS dec, knit to last 2 sts, dec (22) · WS purl · RS dec, knit to last 2 sts, dec (20)
1st row: k2, p2, k to end
  > 20 Back/body 10 WS k2, p2, knit to end
rows 2 and 4: purl
  > 20 Back/body 11 RS purl
3rd row: knit.
  > 20 Back/body 12 WS knit · RS purl
Bind off 20 sts.
  > 20→0 Back/body 14 WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 40}, RS: 10 stocking 4 mm; 3 reverse stocking 4 mm; bind off

### measures in a list of another length
Sizes: 36 (42)
  > talk
To fit bust: 81-91 (97-107, 110) cm
  > heading
BACK
  > heading
Cast on 40 (44) sts.
  > →40
Work 3 (4, 5) rows.
  > own words 40 asks the count Back/body 1 RS work in pattern 'Work 3 (4, 5) rows'
  > ✗ sizes differ @5:6 sizes 2
  > ✗ stitch or repeat expected @5:9 column 9
Bind off 40 (44) sts.
  > 40→0 Back/body 2 WS bind off all sts in pattern (0)
  > = sizes 36, 42: 36
  > = Back, back, 1 to make, lines 5 6
  > =   body from {castOn 40}, RS: 1 stocking 4 mm (own words 1); bind off
    `),
  )('$title', expectAnnotated);
});
