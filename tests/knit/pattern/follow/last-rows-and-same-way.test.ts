import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Common practice, no published source. Counts reckoned by hand. */
describe('what was passed over in silence,', () => {
  it.each(
    annotatedIn(`
### the last rows are worked once more where a count stands behind them, also what was not understood
Cast on 24 sts
  > →24
Next row - K2, m1, k to last 2 sts, m1, k2. (26 sts)
  > 24→26 says 26 Piece/body 1 RS k2, m1, knit to last 2 sts, m1, k2 (26)
Next row - K
  > 26 Piece/body 2 WS knit
Rep last 2 rows   28 sts
  > 26→28 says 28 Piece/body 3 RS k2, m1, knit to last 2 sts, m1, k2 (28) · WS knit
Rep last 2 rows twice. 32 sts
  > 28→32 says 32 Piece/body 5 RS k2, m1, knit to last 2 sts, m1, k2 (30) · WS knit · RS k2, m1, knit to last 2 sts, m1, k2 (32) · WS knit
First row - Wibble the first st
  > own words 32 asks the count Piece/body 9 RS work in pattern 'First row - Wibble the first st'
  > ✗ stitch or repeat expected @6:13 column 13
Next row - K
  > 32 Piece/body 10 WS knit
Rep last 2 rows once more.
  > 32 Piece/body 11 RS work in pattern 'First row - Wibble the first st' · WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8
  > =   body from {castOn 24}, RS: 8 garter 4 mm; 1 stocking 4 mm (own words 1); 1 garter 4 mm; 1 pattern in stocking 4 mm (own words 1); 1 garter 4 mm; hold

### stock. st. is stocking stitch, and work in the same way as another piece is never passed over
BACK: Cast on 20 sts. Work in ribbing K1, P1 for 4 rows. Change to No. 4 needles and stock. st. With 20 sts., work 4 rows.
  > 20 says 20 Back/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · [RS knit · WS purl] ×2
Bind off 3 sts. at beg. of next 2 rows. Work 2 rows in stock. st. Bind off.
  > 20→0 Back/body 9 RS bind off 3 sts, knit to end (17) · WS bind off 3 sts, purl to end (14) · RS knit · WS purl · RS bind off all sts in pattern (0)
SLEEVE: Work the same way as back.
  > →0 Sleeve/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · [RS knit · WS purl] ×2 · RS bind off 3 sts, knit to end (17) · WS bind off 3 sts, purl to end (14) · RS knit · WS purl · RS bind off all sts in pattern (0)
FRONT: Work the same way as back until armhole is bound off. Work 4 rows.
  > 14 Front/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · [RS knit · WS purl] ×2 · RS bind off 3 sts, knit to end (17) · WS bind off 3 sts, purl to end (14) · [RS knit · WS purl] ×2
  > = Back, back, 1 to make, lines 1 2
  > =   body from {castOn 20}, RS: 4 rib in rib 1x1 4 mm; 8 stocking 4 mm; bind off
  > = Sleeve, sleeve, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 4 rib in rib 1x1 4 mm; 8 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 4
  > =   body from {castOn 20}, RS: 4 rib in rib 1x1 4 mm; 10 stocking 4 mm; hold

### stitches picked up on each side are told
CAP
  > heading
Cast on 20 sts. Work 2 rows in st st.
  > 20 Cap/body 1 RS knit · WS purl
Pick up 30 sts on each side, and work in rib for 2 rows.
  > own words 20 asks the count Cap/body 3 RS work in pattern 'Pick up 30 sts on each side, and work in rib for 2 rows' · WS work in pattern 'Pick up 30 sts on each side, and work in rib for 2 rows'
  > ✗ stitch or repeat expected @3:46 column 46
  > = Cap, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 4 stocking 4 mm (own words 3 4); hold

### a pattern whose rows begin with a yarn
STRIPE PATTERN
Row 1: With A, k.
Row 2: With B, p.
BACK
  > heading
Cast on 21 sts. Work in stripe pattern for 4 rows.
  > 21 Back/body 1 RS knit 'Row 1: With A, k' · WS purl 'Row 2: With B, p' · RS knit 'Row 1: With A, k' · WS purl 'Row 2: With B, p'
  > = pattern stripe of 1 plus 0 over 2: knit (2) · purl (2)
  > = Back, back, 1 to make, lines 5
  > =   body from {castOn 21}, RS: 4 stripe in stocking 4 mm (own words 1 2 3 4); hold
    `),
  )('$title', expectAnnotated);
});
