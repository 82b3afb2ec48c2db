import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of leaflets and pages: common practice, no published source. */
describe('colours, counts and turns said in passing,', () => {
  it.each(
    annotatedIn(`
### colours before their stitches, or said once for several
Cast on 36 sts.
  > →36
Row 1: *With black k 1, grey k 3, black k 2; repeat from * across row.
  > 36 Piece/body 1 RS *k1, k3, k2; repeat from * to end 'Row 1: *With black k 1, grey k 3, black k 2; repeat from * across row'
Row 2: *P 2 white, 4 blue; rep from * to end.
  > 36 Piece/body 2 WS *p2, p4; repeat from * to end 'Row 2: *P 2 white, 4 blue; rep from * to end'
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 36}, RS: 2 stocking 4 mm (own words 1 2); hold

### a number by itself is told
Cast on 36 sts.
  > →36
Row 1: *2 A, 4 B; rep from * to end.
  > own words 36 asks the count Piece/body 1 RS work in pattern 'Row 1: *2 A, 4 B; rep from * to end'
  > ✗ stitch or repeat expected @2:9 column 9
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 36}, RS: 1 stocking 4 mm (own words 1); hold

### evenly to a count, within the row
Cast on 40 sts.
  > →40
Next row: Knit, increasing evenly to 44 sts.
  > 40→44 Piece/body 1 RS k5, m1, [k10, m1] 3 times, k5 (44)
Next row: Purl, dec evenly across row to 40 sts.
  > 44→40 Piece/body 2 WS p5, [p2tog, p9] 3 times, p2tog, p4 (40)
Next row: Knit, increasing evenly to 38 sts.
  > 40
  > ✗ count contradicts @4:1 statedStitches 38, foundStitches 40
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; hold

### a count behind a row that has ended
Cast on 40 sts.
  > →40
Next row: K2tog, k to end   39 sts
  > 40→39 says 39 Piece/body 1 RS k2tog, knit to end (39)
Next row - Inc in first and last st  41 sts
  > 39→41 says 41 Piece/body 2 WS inc, purl to last st, inc (41)
Next row: P to end, inc 1 st at end of last row. (42 sts)
  > 41→42 says 42 Piece/body 3 RS purl to last st, inc (42)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; hold

### short rows one after the other
Cast on 40 sts.
  > →40
K to last 8 sts, turn; p to last 8 sts, turn; k to last 12 sts, turn; p to last 12 sts, turn; k to end.
  > 40 Piece/body 1 RS knit to last 8 sts, turn · WS leave 8 sts unworked, purl to last 8 sts, turn · RS leave 8 sts unworked, knit to last 12 sts, turn · WS leave 12 sts unworked, purl to last 12 sts, turn · RS leave 12 sts unworked, knit to end
P across all sts.
  > 40 Piece/body 6 WS purl
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 6 stocking 4 mm; hold

### several rows at once are told
Cast on 40 sts.
  > →40
Next 2 rows: K to last 5 sts, turn, sl 1, p to last 5 sts, turn.
  > 40 asks the count Piece/body 1 RS work in pattern 'Next 2 rows: K to last 5 sts, turn, sl 1, p to last 5 sts, turn'
  > ✗ work after a turn @2:1
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 40}, RS: 1 stocking 4 mm (own words 1); hold

### a bobble is none of them
Cast on 40 sts.
  > →40
Next row: K 5, (k 1, p 1, k 1) in next st, turn, p 3, turn, k 3, k to end.
  > 40 asks the count Piece/body 1 RS work in pattern 'Next row: K 5, (k 1, p 1, k 1) in next st, turn, p 3, turn, k 3, k to end'
  > ✗ work after a turn @2:1
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 40}, RS: 1 stocking 4 mm (own words 1); hold

### at each edge
Cast on 40 sts.
  > →40
Bind off 5 sts at beg of each armhole edge twice.
  > 40→20 Piece/body 1 RS bind off 5 sts, knit to end (35) · WS bind off 5 sts, purl to end (30) · RS bind off 5 sts, knit to end (25) · WS bind off 5 sts, purl to end (20)
Inc 1 st at each end of 3rd then every foll 4th row until there are 26 sts.
  > 20→26 Piece/body 5 RS knit · WS purl · RS inc, knit to last st, inc (22) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (24) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (26)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 15 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
