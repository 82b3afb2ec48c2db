import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what is said in passing, followed row by row,', () => {
  it.each(
    annotatedIn(`
### stitches of the middle, lengths by now, and the rest bound off
Gauge: 20 sts and 30 rows = 10 cm
  > talk
Cast on 20 sts.
  > →20
Work in st st over center 20 sts. for 2 rows.
  > 20 Piece/body 1 RS knit · WS purl
Work 2 rows without shaping -- work measures 15.75 in. from beg.
  > 20 Piece/body 3 RS knit · WS purl
Work even until piece measures 2 cm or desired length to underarm.
  > 20 long: 2 rows Piece/body 5 RS knit · WS purl
Bind off 3 sts at beg of next row, then 1 st 2 times at same edge.
  > 20→15 Piece/body 7 RS bind off 3 sts, knit to end (17) · WS purl · RS bind off 1 st, knit to end (16) · WS purl · RS bind off 1 st, knit to end (15)
Work in st st over center 38 sts for 2 rows.
  > 15 Piece/body 12 WS purl · RS knit
  > ✗ count contradicts @7:1 statedStitches 38, foundStitches 15
Rem. 15 sts. bind off for neck.
  > 15→0 Piece/body 14 WS bind off all sts in pattern (0)
  > = gauge stitches 20, rows 30
  > = Piece, other, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; 2 stocking 4 mm (length {id 'piece/1', open false, mm 20, from start}); 7 stocking 4 mm; bind off

### 'in pattern' is the only pattern of the text, or not known, never stocking stitch
Wave pattern
  > talk
Row 1: *k1, p1; rep from * to end.
Row 2: *p1, k1; rep from * to end.
BACK
  > heading
Cast on 4 sts.
  > →4
Work in pattern st for 2 rows.
  > 4 Back/body 1 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end
FRONT
  > heading 4
Cast on 4 sts.
  > 4
Work in pattern, inc 1 st at each end of next row.
  > 4→6 Front/body 1 RS inc, work in pattern to last st, inc (6)
  > = pattern wave of 2 plus 0 over 4: *k1, p1; repeat from * to end (4) · *p1, k1; repeat from * to end (4)
  > = Back, back, 1 to make, lines 6
  > =   body from {castOn 4}, RS: 2 wave in stocking 4 mm; hold
  > = Front, front, 1 to make, lines 9
  > =   body from {castOn 4}, RS: 1 wave in stocking 4 mm; hold

### and where none is defined it is not known
Cast on 4 sts.
  > →4
Work in pattern for 2 rows.
  > 4 Piece/body 1 RS work in pattern · WS work in pattern
  > ✗ fabric not known @2:1 name pattern
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 4}, RS: 2 pattern in stocking 4 mm; hold
`),
  )('$title', expectAnnotated);
});
