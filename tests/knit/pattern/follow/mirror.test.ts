import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('what is worked again as its mirror image, followed row by row,', () => {
  it.each(
    annotatedIn(`
### every stitch that leans, on the same side of the work
BACK
  > heading
Cast on 60 sts.
  > →60
Row 1: k2tog, k2, ssk, k2, skp, k2, k2tog tbl, k to end.
  > 60→56 Back/body 1 RS k2tog, k2, ssk, k2, skp, k2, k2tog tbl, knit to end (56)
Row 2: p2tog, p2, ssp, p2, p2tog tbl, p to end.
  > 56→53 Back/body 2 WS p2tog, p2, ssp, p2, p2tog tbl, purl to end (53)
Row 3: k1, m1l, k3, m1r, k to end.
  > 53→55 Back/body 3 RS k1, m1l, k3, m1r, knit to end (55)
Row 4: p.
  > 55 Back/body 4 WS purl
Row 5: k3tog, k2, sssk, k2, sk2p, k to end.
  > 55→49 Back/body 5 RS k3tog, k2, sssk, k2, sk2p, knit to end (49)
SECOND BACK
  > heading 49
Work as for back, reversing shaping.
  > 49 Second back/body 1 RS knit to last 14 sts, [k2tog, k2] 3 times, ssk (56) · WS purl to last 10 sts, [p2tog, p2] 2 times, ssp (53) · RS knit to last 4 sts, m1l, k3, m1r, k1 (55) · WS purl · RS knit to last 13 sts, [k3tog, k2] 2 times, sssk (49)
  > = Back, back, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 60}, RS: 5 stocking 4 mm; hold
  > = Second back, back, 1 to make, lines 9
  > =   body from {castOn 60}, RS: 5 stocking 4 mm; hold

### every stitch seen from its other side
BACK
  > heading
Cast on 60 sts.
  > →60
Work 2 rows in st st.
  > 60 Back/body 1 RS knit · WS purl
Next row: k30, turn and leave rem 30 sts on a holder.
  > 60→30 Back/right side 1 RS k30
Row 1: p2tog, p2, ssp, p2, pfb, p to end.
  > 30→29 Back/right side 2 WS p2tog, p2, ssp, p2, pfb, purl to end (29)
Row 2: k2tog, k2, ssk, k2, skp, k2, kfb, k to end.
  > 29→27 Back/right side 3 RS k2tog, k2, ssk, k2, skp, k2, kfb, knit to end (27)
Row 3: p1, m1p, p3, p3tog, p2, sssp, p to end.
  > 27→24 Back/right side 4 WS p1, m1p, p3, p3tog, p2, sssp, purl to end (24)
Row 4: k1, m1, k3, k3tog, k2, sssk, k to end.
  > 24→21 Back/right side 5 RS k1, m1, k3, k3tog, k2, sssk, knit to end (21)
Bind off.
  > 21→0 Back/right side 6 WS bind off all sts in pattern (0)
Complete other side to match, reversing shaping.
  > →0 Back/left side 1 WS purl · RS k2tog, k2, ssk, k2, kfb, knit to end (29) · WS p2tog, [p2, ssp] 2 times, p2, pfb, purl to end (27) · RS k1, m1, k3, k3tog, k2, sssk, knit to end (24) · WS p1, m1p, p3, p3tog, p2, sssp, purl to end (21) · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 9 10
  > =   body from {castOn 60}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 30, edge right}, RS: 5 stocking 4 mm; bind off
  > =   left side from {part body, stitches 30, edge left}, WS: 5 stocking 4 mm; bind off

### a group and the even rows after it, in moss
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in moss st.
  > 20 Left front/body 1 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end
Bind off 3 sts at armhole edge.
  > 20→17 Left front/body 3 RS bind off 3 sts, *p1, k1; repeat from * to last st, p1 (17)
Work 3 rows.
  > 17 Left front/body 4 WS *p1, k1; repeat from * to last st, p1 · RS *p1, k1; repeat from * to last st, p1 · WS *p1, k1; repeat from * to last st, p1
Bind off 2 sts at armhole edge.
  > 17→15 Left front/body 7 RS bind off 2 sts, *p1, k1; repeat from * to last st, p1 (15)
Work 4 rows.
  > 15 Left front/body 8 WS *p1, k1; repeat from * to last st, p1 · RS *p1, k1; repeat from * to last st, p1 · WS *p1, k1; repeat from * to last st, p1 · RS *p1, k1; repeat from * to last st, p1
Row 1: bo 2, k to end.
  > 15→13 Left front/body 12 WS bind off 2 sts, knit to end (13)
Row 2: p.
  > 13 Left front/body 13 RS purl
RIGHT FRONT
  > heading 13
Work as for left front, reversing shaping.
  > 13 Right front/body 1 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end · RS *k1, p1; repeat from * to end · WS bind off 3 sts, *k1, p1; repeat from * to last st, k1 (17) · RS *k1, p1; repeat from * to last st, k1 · WS *k1, p1; repeat from * to last st, k1 · RS *k1, p1; repeat from * to last st, k1 · WS bind off 2 sts, *k1, p1; repeat from * to last st, k1 (15) · [RS *k1, p1; repeat from * to last st, k1 · WS *k1, p1; repeat from * to last st, k1] ×2 · RS bind off 2 sts, purl to end (13) · WS knit
  > = Left front, left front, 1 to make, lines 3 4 5 6 7 8 9
  > =   body from {castOn 20}, RS: 13 moss 4 mm; hold
  > = Right front, right front, 1 to make, lines 11
  > =   body from {castOn 20}, RS: 14 moss 4 mm; hold

### stretches, as they were {"gauge": {"stitches": 20, "rows": 28}}
BACK
  > heading
Cast on 20 sts.
  > →20
Work in k1, p1 rib for 2 cm.
  > 20 long: 6 rows Back/body 1 RS *k1, p1; repeat from * to end · [WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end] ×2 · WS *k1, p1; repeat from * to end
Work in st st for 2 cm.
  > 20 long: 6 rows Back/body 7 RS knit · [WS purl · RS knit] ×2 · WS purl
Work even until piece measures 6 cm.
  > 20 long: 4 rows Back/body 13 RS knit · WS purl · RS knit · WS purl
FRONT
  > heading 20
Work as for back.
  > 20 Front/body 1 RS *k1, p1; repeat from * to end · [WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end] ×2 · WS *k1, p1; repeat from * to end · [RS knit · WS purl] ×5
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: 6 rib in rib 1x1 4 mm (length {id 'back/1', open false, mm 20, from here}); 6 stocking 4 mm (length {id 'back/2', open false, mm 20, from here}); 4 stocking 4 mm (length {id 'back/3', open false, mm 60, from start}); hold
  > = Front, front, 1 to make, lines 7
  > =   body from {castOn 20}, RS: 6 rib in rib 1x1 4 mm; 10 stocking 4 mm; hold

### rows that do not fit the piece in hand
BACK
  > heading
Cast on 20 sts.
  > →20
Row 1: k18, k2tog.
  > 20→19 Back/body 1 RS k18, k2tog (19)
Bind off 2 sts at beg of next 2 rows.
  > 19→15 Back/body 2 WS bind off 2 sts, purl to end (17) · RS bind off 2 sts, knit to end (15)
FRONT
  > heading 15
Cast on 10 sts.
  > 15→10
Work as for back to armhole.
  > 10
  > ✗ not enough stitches @7:1 needStitches 18, haveStitches 10
SLEEVE
  > heading 10
Cast on 10 sts.
  > 10
Work as for back.
  > 10
  > ✗ not enough stitches @10:1 needStitches 18, haveStitches 10
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold

### the first row is long enough {"gauge": {"stitches": 20, "rows": 28}}
BACK
  > heading
Cast on 20 sts.
  > →20
Work 6 rows in st st.
  > 20 Back/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
FRONT
  > heading 20
Work as for back until piece measures 1 mm.
  > 20 Front/body 1 RS knit
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 5
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; hold

### the places of the other piece are its own too {"gauge": {"stitches": 20, "rows": 28}}
BACK
  > heading
Cast on 20 sts.
  > →20
Work 6 rows in st st.
  > 20 Back/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Bind off 2 sts at beg of next 2 rows.
  > 20→16 Back/body 7 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16)
Work 6 rows.
  > 16 Back/body 9 RS knit · [WS purl · RS knit] ×2 · WS purl
FRONT
  > heading 16
Work as for back to armhole.
  > 16→20 Front/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Work even until armhole measures 2 cm.
  > 20 long: 6 rows Front/body 7 RS knit · [WS purl · RS knit] ×2 · WS purl
SLEEVE
  > heading 20
Cast on 20 sts.
  > 20
Work 4 rows in st st.
  > 20 Sleeve/body 1 RS knit · WS purl · RS knit · WS purl
Shape armhole as for back.
  > 20→16 Sleeve/body 5 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16)
Work even until armhole measures 3 cm.
  > 16 long: 6 rows Sleeve/body 7 RS knit · [WS purl · RS knit] ×2 · WS purl
HOOD
  > heading 16
Shape armhole as for back.
  > 16→
  > ✗ place not known @15:1
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: 14 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 7 8
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; 6 stocking 4 mm (length {id 'front/1', open false, mm 20, from armhole}); hold
  > = Sleeve, sleeve, 1 to make, lines 11 12 13
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; 6 stocking 4 mm (length {id 'sleeve/1', open false, mm 30, from armhole}); hold

### pieces called nearly so
UPPER SLEEVE
  > heading
Cast on 6 sts.
  > →6
K 1 row.
  > 6 Upper sleeve/body 1 RS knit
FRONT
  > heading 6
Cast on 8 sts.
  > 6→8
K 2 rows.
  > 8 Front/body 1 RS knit · WS knit
LEFT BACK
  > heading 8
Work as for sleeve.
  > 8→3 Left back/body 1 RS knit
RIGHT BACK
  > heading 3
Work as for left front.
  > 3→4 Right back/body 1 RS knit · WS knit
LEFT SLEEVES
  > heading 4
Work as for first side.
  > 4 Left sleeves/body 1 RS knit · WS knit
  > = Upper sleeve, sleeve, 1 to make, lines 3
  > =   body from {castOn 6}, RS: 1 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 6
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; hold
  > = Left back, back, 1 to make, lines 8
  > =   body from {castOn 3}, RS: 1 stocking 4 mm; hold
  > = Right back, back, 1 to make, lines 10
  > =   body from {castOn 4}, RS: 2 stocking 4 mm; hold
  > = Left sleeves, sleeve, 1 to make, lines 12
  > =   body from {castOn 4}, RS: 2 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
