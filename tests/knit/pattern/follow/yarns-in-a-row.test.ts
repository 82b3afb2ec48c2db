import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Charts in words: common practice, no published source. Counts reckoned by hand. */
describe('yarns named within a row,', () => {
  it.each(
    annotatedIn(`
### yarns within a row are no stitches, and its words stand beside it
BACK
  > heading
With A, cast on 20 sts. Work 2 rows in st st.
  > 20 Back/body 1 RS knit · WS purl
Row 1: * With B, k 2; with A, k 2; repeat from * across.
  > 20 Back/body 3 RS *k2, k2; repeat from * to end 'Row 1: * With B, k 2; with A, k 2; repeat from * across'
Rows 2, 4: P, working A over A and B over B.
  > 20 Back/body 4 WS purl 'Rows 2, 4: P, working A over A and B over B'
Row 3: K1 A, *k2 B, k2 A; rep from * to last 3 sts, k2 B, k1 A.
  > 20 Back/body 5 RS k1, *k2, k2; repeat from * to last 3 sts, k2, k1 'Row 3: K1 A, *k2 B, k2 A; rep from * to last 3 sts, k2 B, k1 A' · WS purl 'Rows 2, 4: P, working A over A and B over B'
Rep rows 1 to 4 once more.
  > 20 Back/body 7 RS *k2, k2; repeat from * to end 'Row 1: * With B, k 2; with A, k 2; repeat from * across' · WS purl 'Rows 2, 4: P, working A over A and B over B' · RS k1, *k2, k2; repeat from * to last 3 sts, k2, k1 'Row 3: K1 A, *k2 B, k2 A; rep from * to last 3 sts, k2 B, k1 A' · WS purl 'Rows 2, 4: P, working A over A and B over B'
Dec 1 st at each end of next row.
  > 20→18 Back/body 11 RS dec, work in pattern to last 2 sts, dec (18)
Next row: *K1 in light grey, p1 in MC; rep from * to end.
  > 18 Back/body 12 WS *k1, p1; repeat from * to end 'Next row: *K1 in light grey, p1 in MC; rep from * to end'
K 2 rows in white.
  > 18 Back/body 13 RS knit · WS knit
  > = Back, back, 1 to make, lines 2 3 4 5 6 7 8 9
  > =   body from {castOn 20}, RS: 10 'stocking, A' in stocking 4 mm (own words 3 4 5 6 7 8 9 10); 2 'pattern, A' in stocking 4 mm (own words 2); 2 'pattern, white' in stocking 4 mm; hold

### as another piece has them, and in a pattern of their own
CHECK PATTERN
  > talk
Row 1: *K2A, k2B; rep from * to end.
Row 2: *P2B, p2A; rep from * to end.
BACK
  > heading
Cast on 20 sts. Work in check pattern for 3 rows.
  > 20 Back/body 1 RS *k2, k2; repeat from * to end 'Row 1: *K2A, k2B; rep from * to end' · WS *p2, p2; repeat from * to end 'Row 2: *P2B, p2A; rep from * to end' · RS *k2, k2; repeat from * to end 'Row 1: *K2A, k2B; rep from * to end'
Dec 1 st at each end of next row.
  > 20→18 Back/body 4 WS dec, work in pattern to last 2 sts, dec (18)
FRONT
  > heading 18
Work as for back.
  > 18 Front/body 1 RS *k2, k2; repeat from * to end 'Row 1: *K2A, k2B; rep from * to end' · WS *p2, p2; repeat from * to end 'Row 2: *P2B, p2A; rep from * to end' · RS *k2, k2; repeat from * to end 'Row 1: *K2A, k2B; rep from * to end' · WS dec, work in pattern to last 2 sts, dec (18)
  > = pattern check of 4 plus 0 over 8: *k2, k2; repeat from * to end (8) · *p2, p2; repeat from * to end (8)
  > = Back, back, 1 to make, lines 5 6
  > =   body from {castOn 20}, RS: 4 check in stocking 4 mm (own words 1 2 3); hold
  > = Front, front, 1 to make, lines 8
  > =   body from {castOn 20}, RS: 4 check in stocking 4 mm (own words 1 2 3); hold

### a letter that is a stitch is no yarn
BACK
  > heading
Cast on 20 sts.
  > →20
Row 1: K1 B, k to end.
  > 20 Back/body 1 RS k tbl, knit to end
Row 1: *C4F, k6; rep from * to end.
  > 20 Back/body 2 WS *c4f, k6; repeat from * to end
Row 1: K1b, k to end.
  > 20 Back/body 3 RS k1 below, knit to end
Row 1: K2 in main pattern.
  > own words 20 asks the count Back/body 4 WS work in pattern 'Row 1: K2 in main pattern'
  > ✗ stitch or repeat expected @6:19 column 19
  > = Back, back, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 3 garter 4 mm; 1 stocking 4 mm (own words 1); hold
    `),
  )('$title', expectAnnotated);
});
