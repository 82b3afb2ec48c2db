import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what was said before, followed row by row,', () => {
  it.each(
    annotatedIn(`
### more is bound off than there is
BACK
  > heading
Cast on 9 sts.
  > →9
Work 2 rows in st st.
  > 9 Back/body 1 RS knit · WS purl
Bind off 4 sts at beg of next 3 rows.
  > 9→0 Back/body 3 RS bind off 4 sts, knit to end (5) · WS bind off 4 sts, p1 (1) · RS bind off all sts in pattern (0)
  > ✗ bound off too many @4:1 wantedStitches 4, haveStitches 1
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 9}, RS: 4 stocking 4 mm; bind off


### the pattern of the piece before
BACK
  > heading
Cast on 12 sts.
  > →12
Row 1 (RS): K1, *yo, k2tog; rep from * to last st, k1.
  > 12 Back/body 1 RS k1, *yo, k2tog; repeat from * to last st, k1
Row 2: Purl.
  > 12 Back/body 2 WS purl
Row 3: Knit.
  > 12 Back/body 3 RS knit
Row 4: Purl.
  > 12 Back/body 4 WS purl
Rep these 4 rows until piece measures 10 cm.
  > 12 as long as she likes: 2 rows Back/body 5 RS k1, *yo, k2tog; repeat from * to last st, k1 · WS purl
Bind off.
  > 12→0 Back/body 7 RS bind off all sts in pattern (0)
FRONT
  > heading
Cast on 14 sts.
  > →14
Work in pattern for 6 rows.
  > 14 Front/body 1 RS k1, *yo, k2tog; repeat from * to last st, k1 · WS purl · RS knit · WS purl · RS k1, *yo, k2tog; repeat from * to last st, k1 · WS purl
Bind off.
  > 14→0 Front/body 7 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 12}, RS: 4 stocking 4 mm; 2 stocking 4 mm (length {id 'back/1', open, mm 100, from start}); bind off
  > = Front, front, 1 to make, lines 11 12
  > =   body from {castOn 14}, RS: 6 pattern in stocking 4 mm; bind off


### more is held than there is
BACK
  > heading
Cast on 12 sts.
  > →12
Knit 2 rows.
  > 12 Back/body 1 RS knit · WS knit
Place 14 sts on a holder.
  > 12
  > ✗ count contradicts @4:1 statedStitches 14, foundStitches 12
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; hold


### counts of a text that casts nothing on
Row 1: Knit to end. 20 sts.
  > says 20
  > ✗ nothing on the needle @1:21
Row 2: Purl.
Bind off.
  > ✗ nothing on the needle @3:1
  > = pattern pattern of 1 plus 0 over 2: knit (2) · purl (2)


### a buttonhole cast on in the row behind
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Next row: K4, bind off 3 sts, k to end.
  > 20→17 Piece/body 3 RS k4, bind off 3 sts, knit to end (17)
Next row: P to bound off sts, cast on 3 sts, p to end.
  > 17→20 Piece/body 4 WS purl to last 4 sts, cast on 3 sts, purl to end (20)
Next row: K4, bind off 3 sts, k to end.
  > 20→17 Piece/body 5 RS k4, bind off 3 sts, knit to end (17)
Next row: Cast on 3 sts over bound off sts.
  > 17→20 Piece/body 6 WS purl to last 4 sts, cast on 3 sts, p4 (20)
Work 2 rows.
  > 20 Piece/body 7 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 20}, RS: 8 stocking 4 mm; hold


### a row that was not understood is worked again by its number
Cast on 20 sts.
  > →20
Row 1: frumple the fringe, k2, yo to end.
  > own words 20 asks the count Piece/body 1 RS work in pattern 'Row 1: frumple the fringe, k2, yo to end'
  > ✗ stitch or repeat expected @2:8 column 8
Row 2: Purl.
  > 20 Piece/body 2 WS purl
Row 3: Knit.
  > 20 Piece/body 3 RS knit
Row 4: Purl.
  > 20 Piece/body 4 WS purl
Rep rows 1 to 4 once.
  > 20 Piece/body 5 RS work in pattern 'Row 1: frumple the fringe, k2, yo to end' · WS purl · RS knit · WS purl
Row 9: K.
  > 20 Piece/body 9 RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 20}, RS: 1 stocking 4 mm (own words 1); 7 pattern in stocking 4 mm (own words 4); 1 pattern in stocking 4 mm; hold


### above a rib that nobody knows {"gauge": {"stitches": 20, "rows": 20}}
Cast on 20 sts.
  > →20
Work in frumpled rib for 4 rows.
  > 20 Piece/body 1 RS work in pattern · WS work in pattern · RS work in pattern · WS work in pattern
  > ✗ fabric not known @2:1 name 'frumpled rib'
Work in st st until piece measures 4 cm above ribbing.
  > 20
  > ✗ place not known @3:1
  > = gauge stitches 20, rows 20
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 4 'frumpled rib' in stocking 4 mm; hold


### her own gauge before that of the text {"gauge": {"stitches": 20, "rows": 28}}
Gauge: 22 sts and 30 rows = 10 cm in st st.
  > talk
Cast on 22 sts.
  > →22
Work in st st for 5 cm.
  > 22 long: 14 rows Piece/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 22}, RS: 14 stocking 4 mm (length {id 'piece/1', open false, mm 50, from here}); hold


### a rib of three columns, named when it goes on
Cast on 12 sts.
  > →12
Row 1: *K2, p1; rep from * to end.
  > 12 Piece/body 1 RS *k2, p1; repeat from * to end
Row 2: *K1, p2; rep from * to end.
  > 12 Piece/body 2 WS *k1, p2; repeat from * to end
Rep these 2 rows twice.
  > 12 Piece/body 3 RS *k2, p1; repeat from * to end · WS *k1, p2; repeat from * to end · RS *k2, p1; repeat from * to end · WS *k1, p2; repeat from * to end
Work 4 rows in rib.
  > 12 Piece/body 7 RS *k2, p1; repeat from * to end · WS *k1, p2; repeat from * to end · RS *k2, p1; repeat from * to end · WS *k1, p2; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 12}, RS: 6 stocking 4 mm; 4 rib in stocking 4 mm; hold


### a front that is parted as the back was
BACK
  > heading
Cast on 20 sts.
  > →20
Work 4 rows in st st.
  > 20 Back/body 1 RS knit · WS purl · RS knit · WS purl
Next row: K8, turn.
  > 20→8 Back/right side 1 RS k8
Work 3 rows on these sts.
  > 8 Back/right side 2 WS purl · RS knit · WS purl
Bind off.
  > 8→0 Back/right side 5 RS bind off all sts in pattern (0)
Rejoin yarn, bind off 4 sts, k to end.
  > 12→8 Back/left side 1 RS bind off 4 sts, knit to end (8)
Work 3 rows.
  > 8 Back/left side 2 WS purl · RS knit · WS purl
Bind off.
  > 8→0 Back/left side 5 RS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back.
  > →0 Front/body 1 RS knit · WS purl · RS knit · WS purl · Front/right side 1 RS k8 · WS purl · RS knit · WS purl · RS bind off all sts in pattern (0) · Front/left side 1 RS bind off 4 sts, knit to end (8) · WS purl · RS knit · WS purl · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 9
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, RS: 4 stocking 4 mm; bind off
  > =   left side from {part body, stitches 12, edge left}, RS: 4 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 11
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; split
  > =   right side from {part body, stitches 8, edge right}, RS: 4 stocking 4 mm; bind off
  > =   left side from {part body, stitches 12, edge left}, RS: 4 stocking 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
