import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('a stretch, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a length by the gauge {"gauge": {"stitches": 20, "rows": 28}}
Cast on 8 sts.
  > →8
Work in st st for 10 cm.
  > 8 long: 28 rows Piece/body 1 RS knit · [WS purl · RS knit] ×13 · WS purl
Work even until piece measures 12 cm.
  > 8 long: 6 rows Piece/body 29 RS knit · [WS purl · RS knit] ×2 · WS purl
Work even for 2 mm.
  > 8 long: 1 rows Piece/body 35 RS knit
Work even for 5 mm.
  > 8 long: 1 rows Piece/body 36 WS purl
Work even for 7 mm.
  > 8 long: 2 rows Piece/body 37 RS knit · WS purl
Work even for 8 mm, ending with a RS row.
  > 8 long: 3 rows Piece/body 39 RS knit · WS purl · RS knit
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 8}, RS: 28 stocking 4 mm (length {id 'piece/1', open false, mm 100, from here}); 6 stocking 4 mm (length {id 'piece/2', open false, mm 120, from start}); 1 stocking 4 mm (length {id 'piece/3', open false, mm 2, from here}); 1 stocking 4 mm (length {id 'piece/4', open false, mm 5, from here}); 2 stocking 4 mm (length {id 'piece/5', open false, mm 7, from here}); 3 stocking 4 mm (length {id 'piece/6', open false, mm 8, endSide RS, from here}); hold

### a length already there {"gauge": {"stitches": 20, "rows": 28}}
Cast on 8 sts.
  > →8
Work in st st for 10 cm.
  > 8 long: 28 rows Piece/body 1 RS knit · [WS purl · RS knit] ×13 · WS purl
Work even until piece measures 10 cm.
  > 8
Work even until piece measures 5 cm.
  > 8
  > ✗ longer already @4:1 wantedMm 50, overMm 50
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 8}, RS: 28 stocking 4 mm (length {id 'piece/1', open false, mm 100, from here}); hold

### lengths from the places of a piece {"gauge": {"stitches": 20, "rows": 28}}
Cast on 20 sts.
  > →20
Work in k1, p1 rib for 2 cm.
  > 20 long: 6 rows Piece/body 1 RS *k1, p1; repeat from * to end · [WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end] ×2 · WS *k1, p1; repeat from * to end
Work in st st until piece measures 3 cm above rib.
  > 20 long: 8 rows Piece/body 7 RS knit · [WS purl · RS knit] ×3 · WS purl
Work even until piece measures 8 cm.
  > 20 long: 8 rows Piece/body 15 RS knit · [WS purl · RS knit] ×3 · WS purl
BO 2 sts at beg of next 2 rows.
  > 20→16 Piece/body 23 RS bind off 2 sts, knit to end (18) · WS bind off 2 sts, purl to end (16)
Work even until armhole measures 2 cm.
  > 16 long: 4 rows Piece/body 25 RS knit · WS purl · RS knit · WS purl
Work even until piece measures 4 cm from bind-off.
  > 16 long: 6 rows Piece/body 29 RS knit · [WS purl · RS knit] ×2 · WS purl
Place marker at each end.
  > talk 16
Work even until piece measures 1 cm from marker.
  > 16 long: 2 rows Piece/body 35 RS knit · WS purl
Shape neck
  > heading 16
Work even until piece measures 1 cm from here.
  > 16 long: 2 rows Piece/body 37 RS knit · WS purl
Work even until neck measures 2 cm.
  > 16 long: 4 rows Piece/body 39 RS knit · WS purl · RS knit · WS purl
Work in garter st until border measures 1 cm.
  > 16 long: 4 rows Piece/body 43 RS knit · WS knit · RS knit · WS knit
Work even until band measures 2 cm.
  > 16 long: 4 rows Piece/body 47 RS knit · WS knit · RS knit · WS knit
Work even until piece measures 2 cm from cuff.
  > 16
  > ✗ longer already @15:1 wantedMm 20, overMm 129
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 9 11 12 13 14
  > =   body from {castOn 20}, RS: 6 rib in rib 1x1 4 mm (length {id 'piece/1', open false, mm 20, from here}); 8 stocking 4 mm (length {id 'piece/2', open false, mm 30, from rib}); 8 stocking 4 mm (length {id 'piece/3', open false, mm 80, from start}); 2 stocking 4 mm; 4 stocking 4 mm (length {id 'piece/4', open false, mm 20, from armhole}); 6 stocking 4 mm (length {id 'piece/5', open false, mm 40, from armhole}); 2 stocking 4 mm (length {id 'piece/6', open false, mm 10, from marker}); 2 'shape neck' in stocking 4 mm (length {id 'piece/7', open false, mm 10, from heading}); 4 'shape neck' in stocking 4 mm (length {id 'piece/8', open false, mm 20, from heading}); 4 'shape neck' in garter 4 mm (length {id 'piece/9', open false, mm 10, from section}); 4 'shape neck' in garter 4 mm (length {id 'piece/10', open false, mm 20, from section}); hold

### lengths from places that are not there {"gauge": {"stitches": 20, "rows": 28}}
Cast on 20 sts.
  > →20
Work in st st for 2 cm.
  > 20 long: 6 rows Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Work even until armhole measures 3 cm.
  > 20 long: 2 rows Piece/body 7 RS knit · WS purl
Work even until piece measures 4 cm from marker.
  > 20 long: 4 rows Piece/body 9 RS knit · WS purl · RS knit · WS purl
Work even until border measures 5 cm.
  > 20 long: 2 rows Piece/body 13 RS knit · WS purl
Work even until 20 rows have been worked from marker.
  > 20 Piece/body 15 RS knit · [WS purl · RS knit] ×2 · WS purl
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 20}, RS: 6 stocking 4 mm (length {id 'piece/1', open false, mm 20, from here}); 2 stocking 4 mm (length {id 'piece/2', open false, mm 30, from armhole}); 4 stocking 4 mm (length {id 'piece/3', open false, mm 40, from marker}); 2 stocking 4 mm (length {id 'piece/4', open false, mm 50, from section}); 6 stocking 4 mm; hold

### rows in all
Cast on 8 sts.
  > →8
Work in st st for 4 rows.
  > 8 Piece/body 1 RS knit · WS purl · RS knit · WS purl
Work even until 10 rows have been worked.
  > 8 Piece/body 5 RS knit · [WS purl · RS knit] ×2 · WS purl
Work even until 4 rows have been worked.
  > 8
BO 1 st at beg of next 2 rows.
  > 8→6 Piece/body 11 RS bind off 1 st, knit to end (7) · WS bind off 1 st, purl to end (6)
Work even until 6 rows worked from armhole.
  > 6 Piece/body 13 RS knit · WS purl · RS knit · WS purl
SHAPE SHOULDER
  > heading 6
K 2 rows.
  > 6 Piece/body 17 RS knit · WS knit
Work even until 6 rows worked from here.
  > 6 Piece/body 19 RS knit · WS purl · RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 5 6 8 9
  > =   body from {castOn 8}, RS: 16 stocking 4 mm; 6 'shape shoulder' in stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
