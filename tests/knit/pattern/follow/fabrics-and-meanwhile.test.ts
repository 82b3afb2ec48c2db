import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts reckoned by hand. */
describe('which fabric goes on, and what goes on beside, followed row by row,', () => {
  it.each(
    annotatedIn(`
### rows that are all one face have a fabric's name
Cast on 20 sts.
  > →20
Row 1: Knit.
  > 20 Piece/body 1 RS knit
Row 2: Purl.
  > 20 Piece/body 2 WS purl
Work in pattern as set for 3 rows.
  > 20 Piece/body 3 RS knit · WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 5 stocking 4 mm; hold

### so are two knit ones, and two purl ones
Cast on 20 sts.
  > →20
Row 1: Knit.
  > 20 Piece/body 1 RS knit
Row 2: Knit.
  > 20 Piece/body 2 WS knit
Work in pattern as set for 2 rows.
  > 20 Piece/body 3 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 2 garter 4 mm; 2 garter 4 mm; hold

### reversed
Cast on 20 sts.
  > →20
Row 1: Purl.
  > 20 Piece/body 1 RS purl
Row 2: Knit.
  > 20 Piece/body 2 WS knit
Work in pattern as set for 3 rows.
  > 20 Piece/body 3 RS purl · WS knit · RS purl
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 2 reverse stocking 4 mm; 3 reverse stocking 4 mm; hold

### more than two rows are a pattern of their own
Cast on 20 sts.
  > →20
Row 1: Knit.
  > 20 Piece/body 1 RS knit
Row 2: Knit.
  > 20 Piece/body 2 WS knit
Row 3: Knit.
  > 20 Piece/body 3 RS knit
Row 4: Knit.
  > 20 Piece/body 4 WS knit
Work in pattern as set for 5 rows.
  > 20 Piece/body 5 RS knit · [WS knit · RS knit] ×2
Rep rows 2 to 3 twice.
  > 20 Piece/body 10 WS knit · RS knit · WS knit · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 5 pattern in stocking 4 mm; 4 garter 4 mm; hold

### a pattern that does not fit
Ridge pattern (multiple of 4 plus 3):
Row 1: *K3, p1; rep from * to last 3 sts, k3.
Row 2: Purl.

Back
  > heading
Cast on 24 sts.
  > →24
Work in ridge pattern for 2 rows.
  > 24
  > ✗ not a multiple @7:1 name ridge, ofStitches 4, plusStitches 3, stitches 24
Cast on 2 sts at beg of next row.
  > 24→26 Back/body 1 RS cast on 2 sts, work in pattern to end (26)
Work in ridge pattern for 2 rows.
  > 26
  > ✗ not a multiple @9:1 name ridge, ofStitches 4, plusStitches 3, stitches 26
Dec 1 st at each end of next row.
  > 26→24 Back/body 2 WS dec, work in pattern to last 2 sts, dec (24)
Work in ridge pattern for 2 rows.
  > 24
  > ✗ not a multiple @11:1 name ridge, ofStitches 4, plusStitches 3, stitches 24
Front
  > heading 24
Cast on 3 sts.
  > 24→3
Work in ridge pattern for 2 rows.
  > 3 Front/body 1 RS *k3, p1; repeat from * to last 3 sts, k3 · WS purl
Sleeve
  > heading 3
Cast on 2 sts.
  > 3→2
Work in ridge pattern for 2 rows.
  > 2
  > ✗ not enough stitches @17:1 needStitches 3, haveStitches 2
  > = pattern ridge of 4 plus 3 over 11: *k3, p1; repeat from * to last 3 sts, k3 (11) · purl (11)
  > = Back, back, 1 to make, lines 7 9
  > =   body from {castOn 24}, RS: 1 ridge in stocking 4 mm; 1 ridge in stocking 4 mm; hold
  > = Front, front, 1 to make, lines 13
  > =   body from {castOn 3}, RS: 2 ridge in stocking 4 mm; hold

### a rib that begins with what is said
Cast on 22 sts.
  > →22
Starting with p2, work in k2, p2 rib for 2 rows.
  > 22 Piece/body 1 RS *p2, k2; repeat from * to last 2 sts, p2 · WS *k2, p2; repeat from * to last 2 sts, k2
Starting with k2, work in k2, p2 rib for 2 rows.
  > 22 Piece/body 3 RS *k2, p2; repeat from * to last 2 sts, k2 · WS *p2, k2; repeat from * to last 2 sts, p2
Starting with k1, work in k2, p2 rib for 1 row.
  > 22 Piece/body 5 RS k1, *p2, k2; repeat from * to last st, p1
Starting with p1, work in k2, p2 rib for 1 row.
  > 22 Piece/body 6 WS p1, *k2, p2; repeat from * to last st, k1
Starting with k3, work in k2, p2 rib for 1 row.
  > 22
  > ✗ place not known @6:1
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 22}, RS: 6 rib in rib 2x2 4 mm; hold

### shapings that begin in the same line, or at the head of the next
Cast on 40 sts.
  > →40
Dec 1 st at each end of next row and every 4th row 3 times. AT THE SAME TIME dec 1 st at neck edge every other row twice.
  > 40→30 Piece/body 1 RS dec, knit to last 4 sts, [dec] 2 times (37) · WS purl · RS knit to last 2 sts, dec (36) · WS purl · RS dec, knit to last 2 sts, dec (34) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (32) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (30)
Work 2 rows.
  > 30 Piece/body 14 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 15 stocking 4 mm; hold

### at the head of the next line
Cast on 40 sts.
  > →40
Dec 1 st at right edge of next row and every 4th row 3 times.
  > 40→34 Piece/body 1 RS dec, knit to last 2 sts, dec (38) · WS purl · RS knit to last 2 sts, dec (37) · WS purl · RS dec, knit to end (36) · WS purl · RS knit · WS purl · RS dec, knit to end (35) · WS purl · RS knit · WS purl · RS dec, knit to end (34)
AT THE SAME TIME, dec 1 st at left edge every other row twice.
  > talk 34
Work 2 rows.
  > 34 Piece/body 14 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 4
  > =   body from {castOn 40}, RS: 15 stocking 4 mm; hold

### at the same time later on
Cast on 40 sts.
  > →40
Work 12 rows in st st.
  > 40 Piece/body 1 RS knit · [WS purl · RS knit] ×5 · WS purl
Work 2 rows. AT THE SAME TIME, when piece measures 2 cm, dec 1 st at neck edge every other row twice.
  > 40→38 Piece/body 13 RS dec, knit to last 2 sts, dec (38) · WS purl
AT THE SAME TIME dec 1 st at each end of next row.
  > talk 38
Work 8 rows.
  > 38→36 Piece/body 15 RS knit to last 2 sts, dec (37) · WS purl · RS knit to last 2 sts, dec (36) · [WS purl · RS knit] ×2 · WS purl
  > = Piece, other, 1 to make, lines 2 3 5
  > =   body from {castOn 40}, RS: 22 stocking 4 mm; hold

### nothing on the needle
Work 2 rows in st st.
  > ✗ nothing on the needle @1:1
Back
  > heading
Work 2 rows in st st.
  > ✗ nothing on the needle @3:1
Next row: K to end.
  > ✗ nothing on the needle @4:1
Cast on 20 sts.
  > →20
Bind off.
  > 20→0 Back/body 1 RS bind off all sts in pattern (0)
Work 2 rows in st st.
  > →0
  > ✗ nothing on the needle @7:1
K 2 rows.
  > →0
  > ✗ nothing on the needle @8:1
Next row: K to end.
  > →0
  > ✗ nothing on the needle @9:1
Dec 1 st at each end of next row.
  > →0
  > ✗ nothing on the needle @10:1
Rep from * 3 times.
  > →0
  > ✗ no rows to repeat @11:1
  > = Back, back, 1 to make, lines 6
  > =   body from {castOn 20}, RS: bind off
`),
  )('comes out as $title', expectAnnotated);
});
