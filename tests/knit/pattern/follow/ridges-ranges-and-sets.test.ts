import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of our own after those that leaflets and pages use: common practice, no published source. Rows and counts are reckoned by hand. */
describe('what is said of itself in brackets, lengths between two, and sets of stitches,', () => {
  it.each(
    annotatedIn(`
### ridges and rows said of one another
BACK
  > heading
Cast on 20 sts.
  > →20
K 8 rows (4 ridges) in garter st. Knit 2 ridges (4 rows) even. Work for 3 ridges (6 rows).
  > 20 Back/body 1 RS knit · [WS knit · RS knit] ×8 · WS knit
Work in st st for 2 rows. Work in garter st until 2 ridges have been made on right side.
  > 20 Back/body 19 RS knit · WS purl · [RS knit · WS knit] ×2
Knit rows 1-4 (garter stitch) for border. Bind off.
  > 20→0 Back/body 25 RS knit · WS knit · RS knit · WS knit · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: 18 garter 4 mm; 2 stocking 4 mm; 8 garter 4 mm; bind off

### ridges that are other rows, and rows of something else
BACK
  > heading
Cast on 20 sts.
  > →20
K 8 rows (3 ridges) in garter st.
  > own words 20 asks the count Back/body 1 RS work in pattern 'K 8 rows (3 ridges) in garter st' · [WS work in pattern 'K 8 rows (3 ridges) in garter st' · RS work in pattern 'K 8 rows (3 ridges) in garter st'] ×3 · WS work in pattern 'K 8 rows (3 ridges) in garter st'
  > ✗ stitch or repeat expected @3:11 column 11
Knit rows 1-4 of chart.
  > own words 20 asks the count Back/body 9 RS work in pattern 'Knit rows 1-4 of chart' · WS work in pattern 'Knit rows 1-4 of chart' · RS work in pattern 'Knit rows 1-4 of chart' · WS work in pattern 'Knit rows 1-4 of chart'
  > ✗ stitch or repeat expected @4:6 column 6
Knit rows 5-8.
  > own words 20 asks the count Back/body 13 RS work in pattern 'Knit rows 5-8' · WS work in pattern 'Knit rows 5-8' · RS work in pattern 'Knit rows 5-8' · WS work in pattern 'Knit rows 5-8'
  > ✗ stitch or repeat expected @5:6 column 6
Bind off.
  > 20→0 Back/body 17 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 8 stocking 4 mm (own words 1 2 3 4 5 6 7 8); 8 pattern in stocking 4 mm (own words 1 2 3 4 5 6 7 8); bind off

### a ridge on the wrong side, and stocking stitch in so many words
BACK
  > heading
Cast on 20 sts.
  > →20
Work in stockinette stitch (knit all stitches on the right side, purl all stitches on wrong side) for 3 rows.
  > 20 Back/body 1 RS knit · WS purl · RS knit
Knit across next purl row to form a ridge for hem.
  > 20 Back/body 4 WS knit
Work in st st for 3 rows. Knit the next WS row for hemline.
  > 20 Back/body 5 RS knit · WS purl · RS knit · WS knit
Work in stockinette (k 2 sts, p 2 sts) for 2 rows.
  > own words 20 asks the count Back/body 9 RS work in pattern 'Work in stockinette (k 2 sts, p 2 sts) for 2 rows' · WS work in pattern 'Work in stockinette (k 2 sts, p 2 sts) for 2 rows'
  > ✗ stitch or repeat expected @6:40 column 40
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; 1 garter 4 mm; 2 stocking 4 mm (own words 1 2); hold

### inches that are closed behind the stop, and lengths between two
Gauge: 20 sts and 20 rows = 4"
  > talk
BACK
  > heading
Cast on 20 sts.
  > →20
Work in k1, p1 rib for 1." K 2 rows. Work in st st for 1-2 inches.
  > 20 long: 6 rows long: 8 rows Back/body 1 RS *k1, p1; repeat from * to end · [WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end] ×2 · WS *k1, p1; repeat from * to end · RS knit · WS knit · [RS knit · WS purl] ×4
Work even until body measures 4 to 5 inches (or desired length). Bind off.
  > 20→0 long: 6 rows Back/body 17 RS knit · [WS purl · RS knit] ×2 · WS purl · RS bind off all sts in pattern (0)
  > = gauge stitches 19.68503937007874, rows 19.68503937007874
  > = Back, back, 1 to make, lines 4 5
  > =   body from {castOn 20}, RS: 6 rib in rib 1x1 4 mm (length {id 'back/1', open false, mm 25.4, from here}); 2 rib in rib 1x1 4 mm; 8 stocking 4 mm (length {id 'back/2', open false, mm 38.099999999999994, from here}); 6 stocking 4 mm (length {id 'back/3', open false, mm 114.3, from start}); bind off

### what a stitch of the row does, and stitches worked twice
BACK
  > heading
Cast on 20 sts.
  > →20
Row 1: k1, sl 1, k2tog, psso (2 sts decreased), k to last 4 sts, k3tog (2 sts decreased), k1.
  > 20→16 Back/body 1 RS k1, sk2p, knit to last 4 sts, k3tog, k1 (16)
Row 2: rib 3, work twice in next st, * rib 3, work twice into the next st; rep from * to last 4 sts, rib 4. (19 sts)
  > 16→19 says 19 Back/body 2 WS work 3 sts in pattern, inc, *work 3 sts in pattern, inc; repeat from * to last 4 sts, work 4 sts in pattern (19)
Row 3: k to end (19 sts).
  > 19 says 19 Back/body 3 RS knit
Next row: * rib 4, inc in next st. Rep. from * to last 4 sts, rib 4.
  > 19→22 Back/body 4 WS *work 4 sts in pattern, inc; repeat from * to last 4 sts, work 4 sts in pattern (22)
Next row: k to end. (20 sts decreased)
  > 22 Back/body 5 RS knit
  > = Back, back, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; 3 pattern in stocking 4 mm; hold

### a stitch that is slipped with its yarn said before
BACK
  > heading
Cast on 8 sts.
  > →8
Row 1: * K1, yarn in front, slip 1; repeat from * across.
  > 8 Back/body 1 RS *k1, sl wyif; repeat from * to end
Row 2: * P1, yarn in back, sl 1 purlwise; repeat from * across.
  > 8 Back/body 2 WS *p1, sl wyib; repeat from * to end
Row 3: k1, yarn forward, k1, k to end.
  > 8→9 Back/body 3 RS k1, yo, k1, knit to end (9)
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 8}, RS: 3 stocking 4 mm; hold

### this second set of stitches, and what is bound off at an edge
BACK
  > heading
Cast on 20 sts.
  > →20
K 2 rows.
  > 20 Back/body 1 RS knit · WS knit
Next row: K 8, bind off next 4 sts, k to end. Now work on this second set of 8 sts for one side of neck thus:
  > 20→8 Back/body 3 RS k8, bind off 4 sts, knit to end (16)
  > ✗ stitches wait @4:47 stitches 8
First row: Cast off 2, work to the last 2 sts, work 2 tog.
  > 8→5 Back/left side 1 WS bind off 2 sts, p4, dec (5)
Second row: Work 2 tog, work to the end. Bind off rem sts.
  > 5→0 Back/left side 2 RS dec, knit to end (4) · WS bind off all sts in pattern (0)
RIGHT FRONT
  > heading →0
Cast on 20 sts.
  > →20
K 2 rows.
  > 20 Right front/body 1 RS knit · WS knit
Next row: Starting at front edge, bind off 4 sts (neck shaping) and continue across row.
  > 20→16 Right front/body 3 RS bind off 4 sts, knit to end (16)
Work on these first 10 sts for one shoulder.
  > 16
  > ✗ count contradicts @11:1 statedStitches 10, foundStitches 16
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 8, edge left}, WS: 2 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 8, edge right}, WS: hold
  > = Right front, right front, 1 to make, lines 9 10
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold

### ribbing in words, a pattern without 'in', one more of it
BACK
  > heading
Cast on 20 sts.
  > →20
Work in a one-plain, one-purl ribbing for 2 rows. Work check pattern st for 2 rows. Continue in garter st on right front sts only for 2 rows.
  > 20 Back/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS work in pattern · WS work in pattern · RS knit · WS knit
  > ✗ fabric not known @3:51 name check
Dec 1 st each side every 2nd row 2 times, taking care to keep pattern st. Bind off.
  > 20→0 Back/body 7 RS dec, knit to last 2 sts, dec (18) · WS knit · RS dec, knit to last 2 sts, dec (16) · WS bind off all sts in pattern (0)
Repeat to make the second piece the same.
  > talk →0
FRONT
  > heading
Cast on 20 sts.
  > →20
Work in 1-plain for 2 rows. Bind off.
  > own words 20→0 asks the count Front/body 1 RS work in pattern 'Work in 1-plain for 2 rows' · WS work in pattern 'Work in 1-plain for 2 rows' · RS bind off all sts in pattern (0)
  > ✗ stitch or repeat expected @8:1 column 1
Knit another piece identical to the first one.
  > talk →0
  > = Back, back, 2 to make, lines 3 4
  > =   body from {castOn 20}, RS: 2 rib in rib 1x1 4 mm; 2 check in stocking 4 mm; 5 garter 4 mm; bind off
  > = Front, front, 2 to make, lines 8
  > =   body from {castOn 20}, RS: 2 stocking 4 mm (own words 1 2); bind off
    `),
  )('$title', expectAnnotated);
});
