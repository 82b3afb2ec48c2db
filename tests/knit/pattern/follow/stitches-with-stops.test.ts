import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Leaflets of the 1930s to 1950s: common practice, no published source. Counts reckoned by hand. */
describe('stitches with full stops between them,', () => {
  it.each(
    annotatedIn(`
### behind a label a stop between counted stitches parts nothing
FRONT
  > heading
Cast on 21 sts.
  > →21
1st row: K5. P2. K7. P2. K5.
  > 21 Front/body 1 RS k5, p2, k7, p2, k5
2nd row: P5. K2. P7. K2. P5.
  > 21 Front/body 2 WS p5, k2, p7, k2, p5
3rd row: *K6. Inc. 1. st. in next st. Repeat from * to end of row. 24. sts. on needle.
  > 21→24 says 24 Front/body 3 RS *k6, inc; repeat from * to end (24)
K 1 row. P 1 row.
  > 24 Front/body 4 WS knit · RS purl
Next row: (buttonhole) K2. Wl. fwd. K2tog. Work in pattern to end of row. K 1 row.
  > 24 Front/body 6 WS k2, yo, k2tog, purl to end · RS knit
  > = Front, front, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 21}, RS: 3 stocking 4 mm; 2 reverse stocking 4 mm; 2 stocking 4 mm; hold

### rows of their own stay so, and stitches without a label are no row
Cast on 20 sts.
  > →20
Row 1: K20. P 2 rows.
  > 20 Piece/body 1 RS k20 · WS purl · RS purl
Row 1: K20. K 2 times round the block.
  > own words 20 asks the count Piece/body 4 WS k20 · RS work in pattern 'K 2 times round the block'
  > ✗ stitch or repeat expected @3:17 column 17
K8. P12.
  > 20 asks the count Piece/body 6 WS work in pattern 'K8' · RS work in pattern 'P12'
  > ✗ stitches left over @4:1 leftStitches 12, onNeedleStitches 20
  > ✗ stitches left over @4:5 leftStitches 8, onNeedleStitches 20
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; 2 reverse stocking 4 mm; 1 stocking 4 mm (own words 1); 2 pattern in stocking 4 mm (own words 1 2); hold
    `),
  )('$title', expectAnnotated);
});
