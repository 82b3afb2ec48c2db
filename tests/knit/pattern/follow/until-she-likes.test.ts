import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('a stretch as long as she likes, or as another piece, followed row by row,', () => {
  it.each(
    annotatedIn(`
### as long as she likes, without a gauge
Cast on 8 sts.
  > →8
Work in st st until piece measures 10 cm.
  > 8 as long as she likes: 2 rows Piece/body 1 RS knit · WS purl
Work in moss st until piece measures 20 cm, ending with a WS row.
  > 8 as long as she likes: 2 rows Piece/body 3 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end
Work in double moss st for 5 cm, ending with a RS row.
  > 8 as long as she likes: 5 rows Piece/body 5 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end · RS *p2, k2; repeat from * to end · WS *p2, k2; repeat from * to end · RS *k2, p2; repeat from * to end
Work in Basket patt for 5 cm.
  > 8 as long as she likes: 3 rows Piece/body 10 WS work in pattern · RS work in pattern · WS work in pattern
  > ✗ fabric not known @5:1 name basket
Work in k1, p1 rib until desired length.
  > 8 as long as she likes: 2 rows Piece/body 13 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Work even until desired length, ending with a WS row.
  > 8 as long as she likes: 2 rows Piece/body 15 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Work even, ending with a RS row.
  > 8 Piece/body 17 RS *k1, p1; repeat from * to end
Work even, ending with a WS row.
  > 8 Piece/body 18 WS *k1, p1; repeat from * to end
Work even, ending with a WS row.
  > 8
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9
  > =   body from {castOn 8}, RS: 2 stocking 4 mm (length {id 'piece/1', open, mm 100, from start}); 2 moss 4 mm (length {id 'piece/2', open, mm 200, endSide WS, from start}); 5 'double moss' in moss 4 mm (length {id 'piece/3', open, mm 50, endSide RS, from here}); 3 basket in stocking 4 mm (length {id 'piece/4', open, mm 50, from here}); 2 rib in rib 1x1 4 mm (length {id 'piece/5', open, from start}); 2 rib in rib 1x1 4 mm (length {id 'piece/6', open, endSide WS, from start}); 2 rib in rib 1x1 4 mm; hold

### as long as she counted {"stretches": {"piece/1": 6, "piece/2": 3.5, "piece/3": -2, "piece/4": 0}}
Cast on 8 sts.
  > →8
Work in st st for 10 cm.
  > 8 as long as she likes: 6 rows Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Work even for 5 cm.
  > 8 as long as she likes: 2 rows Piece/body 7 RS knit · WS purl
Work even for 5 cm.
  > 8 as long as she likes: 2 rows Piece/body 9 RS knit · WS purl
Work even for 5 cm.
  > 8
Row 1 (RS): k2, p6.
  > 8 as long as she likes: 1 rows Piece/body 11 RS k2, p6
  > = Piece, other, 1 to make, lines 2 3 4 6
  > =   body from {castOn 8}, RS: 6 stocking 4 mm (length {id 'piece/1', open, mm 100, from here}); 2 stocking 4 mm (length {id 'piece/2', open, mm 50, from here}); 2 stocking 4 mm (length {id 'piece/3', open, mm 50, from here}); 1 stocking 4 mm (length {id 'piece/4', open, mm 50, from here}); hold

### ended at an edge {"gauge": {"stitches": 20, "rows": 28}}
LEFT FRONT
  > heading
Cast on 8 sts.
  > →8
Work in st st for 3 cm, ending at front edge.
  > 8 long: 9 rows Left front/body 1 RS knit · [WS purl · RS knit] ×4
Work even for 3 cm, ending at side edge.
  > 8 long: 9 rows Left front/body 10 WS purl · [RS knit · WS purl] ×4
RIGHT FRONT
  > heading 8
Cast on 8 sts.
  > 8
Work in st st for 3 cm, ending at front edge.
  > 8 long: 8 rows Right front/body 1 RS knit · [WS purl · RS knit] ×3 · WS purl
Work even for 3 cm, ending at side edge.
  > 8 long: 9 rows Right front/body 9 RS knit · [WS purl · RS knit] ×4
Work even, ending at front edge.
  > 8 Right front/body 18 WS purl
Work even, ending at side edge.
  > 8 Right front/body 19 RS knit
  > = gauge stitches 20, rows 28
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 8}, RS: 9 stocking 4 mm (length {id 'left front/1', open false, mm 30, endSide RS, from here}); 9 stocking 4 mm (length {id 'left front/2', open false, mm 30, endSide WS, from here}); hold
  > = Right front, right front, 1 to make, lines 7 8 9 10
  > =   body from {castOn 8}, RS: 8 stocking 4 mm (length {id 'right front/1', open false, mm 30, endSide WS, from here}); 9 stocking 4 mm (length {id 'right front/2', open false, mm 30, endSide RS, from here}); 2 stocking 4 mm; hold

### the length of another piece {"gauge": {"stitches": 20, "rows": 28}}
BACK
  > heading
Cast on 8 sts.
  > →8
Work 10 rows in st st.
  > 8 Back/body 1 RS knit · [WS purl · RS knit] ×4 · WS purl
BO 1 st at beg of next 2 rows.
  > 8→6 Back/body 11 RS bind off 1 st, knit to end (7) · WS bind off 1 st, purl to end (6)
Work 4 rows.
  > 6 Back/body 13 RS knit · WS purl · RS knit · WS purl
FRONT
  > heading 6
Cast on 8 sts.
  > 6→8
Work in st st until same length as back to armhole.
  > 8 Front/body 1 RS knit · [WS purl · RS knit] ×4 · WS purl
Work even until same length as back.
  > 8 Front/body 11 RS knit · [WS purl · RS knit] ×2 · WS purl
SLEEVES
  > heading 8
Cast on 8 sts.
  > 8
Work in st st until 3 rows less than back to armhole.
  > 8 Sleeves/body 1 RS knit · [WS purl · RS knit] ×3
Work even until piece measures 1 cm less than back to armhole.
  > 8
Work even until same length as back to neck.
  > 8 as long as she likes: 3 rows Sleeves/body 8 WS purl · RS knit · WS purl
Work even until same length as hood.
  > 8 as long as she likes: 2 rows Sleeves/body 11 RS knit · WS purl
LEFT SLEEVE
  > heading 8
Cast on 8 sts.
  > 8
Work in st st until same length as back to armhole, ending with a RS row.
  > 8 Left sleeve/body 1 RS knit · [WS purl · RS knit] ×5
SECOND SLEEVE
  > heading 8
Cast on 8 sts.
  > 8
Work in garter st until same length as first sleeve.
  > 8 Second sleeve/body 1 RS knit · [WS knit · RS knit] ×5 · WS knit
  > = gauge stitches 20, rows 28
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 8}, RS: 16 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 8 9
  > =   body from {castOn 8}, RS: 16 stocking 4 mm; hold
  > = Sleeves, sleeve, 2 to make, lines 12 14 15
  > =   body from {castOn 8}, RS: 7 stocking 4 mm; 3 stocking 4 mm (length {id 'sleeves/1', open, from start}); 2 stocking 4 mm (length {id 'sleeves/2', open, from start}); hold
  > = Left sleeve, sleeve, 1 to make, lines 18
  > =   body from {castOn 8}, RS: 11 stocking 4 mm; hold
  > = Second sleeve, sleeve, 1 to make, lines 21
  > =   body from {castOn 8}, RS: 12 garter 4 mm; hold

### the length of another piece, without a gauge
BACK
  > heading
Cast on 8 sts.
  > →8
Work 10 rows in st st.
  > 8 Back/body 1 RS knit · [WS purl · RS knit] ×4 · WS purl
FRONT
  > heading 8
Cast on 8 sts.
  > 8
Work in st st until piece measures 2 cm less than back.
  > 8 as long as she likes: 2 rows Front/body 1 RS knit · WS purl
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 8}, RS: 10 stocking 4 mm; hold
  > = Front, front, 1 to make, lines 6
  > =   body from {castOn 8}, RS: 2 stocking 4 mm (length {id 'front/1', open, from start}); hold

### a side that is named puts a row more to an open stretch
Cast on 8 sts.
  > →8
Work in st st until piece measures 10 cm.
  > 8 as long as she likes: 3 rows Piece/body 1 RS knit · WS purl · RS knit
Row 1 (WS): p2, k6.
  > 8 Piece/body 4 WS p2, k6
Work in st st until piece measures 20 cm, ending with a WS row.
  > 8 as long as she likes: 2 rows Piece/body 5 RS knit · WS purl
Next row (WS): p2, k6.
  > 8 Piece/body 7 RS p2, k6
  > ✗ side differs @5:1 saidSide WS, foundSide RS
Work in st st for 3 rows.
  > 8 Piece/body 8 WS purl · RS knit · WS purl
Next row (RS): k2, p6.
  > 8 Piece/body 11 RS k2, p6
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 8}, RS: 3 stocking 4 mm (length {id 'piece/1', open, mm 100, from start}); 1 stocking 4 mm; 2 stocking 4 mm (length {id 'piece/2', open, mm 200, endSide WS, from start}); 5 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
