import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Rows as printed sheets number and part them: common practice, no published source. The counts are reckoned by hand. */
describe('as it was printed,', () => {
  it.each(
    annotatedIn(`
### rows with numbers of their own are known by them further on
Cast on 20 sts.
  > →20
Row 1: K.
  > 20 Piece/body 1 RS knit
Row 2: Kfb, k to end. (21 sts)
  > 20→21 says 21 Piece/body 2 WS kfb, knit to end (21)
Rows 3-6: Repeat last 2 rows 2 more times. (23 sts)
  > 21→23 says 23 Piece/body 3 RS knit · WS kfb, knit to end (22) · RS knit · WS kfb, knit to end (23)
Row 7: P.
  > 23 Piece/body 7 RS purl
Rows 8-11: Repeat rows 4-7. (25 sts)
  > 23→25 says 25 Piece/body 8 WS kfb, knit to end (24) · RS knit · WS kfb, knit to end (25) · RS purl
Rows 12-15: Repeat rows 10-13.
  > 25→27 Piece/body 12 WS kfb, knit to end (26) · RS purl · WS kfb, knit to end (27) · RS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 20}, RS: 6 garter 4 mm; 2 reverse stocking 4 mm; 1 stocking 4 mm; 6 reverse stocking 4 mm; hold

### as another piece, so many rows past a shaping, from its last row
BACK
  > heading
Cast on 40 sts. Work 8 rows in st st.
  > 40 Back/body 1 RS knit · [WS purl · RS knit] ×3 · WS purl
Shape armholes
  > heading 40
Bind off 2 sts at beg of next 2 rows. Dec 1 st at each end of next and foll alt row.
  > 40→32 Back/body 9 RS bind off 2 sts, knit to end (38) · WS bind off 2 sts, purl to end (36) · RS dec, knit to last 2 sts, dec (34) · WS purl · RS dec, knit to last 2 sts, dec (32)
Work 10 rows straight.
  > 32 Back/body 14 WS purl · [RS knit · WS purl] ×4 · RS knit
Shape shoulders
  > heading 32
Bind off 8 sts at beg of next 2 rows. Bind off.
  > 32→0 Back/body 24 WS bind off 8 sts, purl to end (24) · RS bind off 8 sts, knit to end (16) · WS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back until 3 rows have been worked after armhole shaping.
  > →32 Front/body 1 RS knit · [WS purl · RS knit] ×3 · WS purl · RS bind off 2 sts, knit to end (38) · WS bind off 2 sts, purl to end (36) · RS dec, knit to last 2 sts, dec (34) · WS purl · RS dec, knit to last 2 sts, dec (32) · WS purl · RS knit · WS purl
Bind off.
  > 32→0 Front/body 17 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 2 4 5 7
  > =   body from {castOn 40}, RS: 8 stocking 4 mm; 15 'shape armholes' in stocking 4 mm; 2 'shape shoulders' in stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 9 10
  > =   body from {castOn 40}, RS: 16 stocking 4 mm; bind off

### rows whose stitches, sides and turns are parted by stops
BACK
  > heading
With smaller needles cast on 90 sts.
  > →90
1st row: (RS). *K2. P2. Rep from * to
last 2 sts. K2.
  > lines 3 to 4 90 Back/body 1 RS *k2, p2; repeat from * to last 2 sts, k2
2nd row: *P2. K2. Rep from * to last 2 sts. P2.
  > 90 Back/body 2 WS *p2, k2; repeat from * to last 2 sts, p2
Rep last 2 rows twice more. 90 sts.
  > 90 says 90 Back/body 3 RS *k2, p2; repeat from * to last 2 sts, k2 · WS *p2, k2; repeat from * to last 2 sts, p2 · RS *k2, p2; repeat from * to last 2 sts, k2 · WS *p2, k2; repeat from * to last 2 sts, p2
Shape armholes: Cast off 5 sts beg next 2 rows. 80 sts.
  > 90→80 says 80 Back/body 7 RS bind off 5 sts, k1, *p2, k2; repeat from * to end (85) · WS bind off 5 sts, p1, *k2, p2; repeat from * to last 3 sts, k2, p1 (80)
Next row: (RS). K2. K2tog. Knit to last 4 sts. ssk. K2.
  > 80→78 Back/body 9 RS k2, k2tog, knit to last 4 sts, ssk, k2 (78)
Next row: Purl.
  > 78 Back/body 10 WS purl
Rep last 2 rows twice more. 74 sts.
  > 78→74 says 74 Back/body 11 RS k2, k2tog, knit to last 4 sts, ssk, k2 (76) · WS purl · RS k2, k2tog, knit to last 4 sts, ssk, k2 (74) · WS purl
Next row: (RS). K30 (neck edge). Turn. Leave rem sts on a spare needle.
  > 74→30 Back/right side 1 RS k30
Next row: Purl.
  > 30 Back/right side 2 WS purl
Next row: Knit to last 3 sts. K2tog. K1. 29 sts.
  > 30→29 says 29 Back/right side 3 RS knit to last 3 sts, k2tog, k1 (29)
Shape shoulder: Next row: (WS). Purl.
  > 29 Back/right side 4 WS purl
Cast off 29 sts.
  > 29→0 Back/right side 5 RS bind off all sts in pattern (0)
With RS facing, slip next 14 sts from spare needle onto a st holder. Join yarn to rem 30 sts and knit to end of row.
  > 30 Back/left side 1 RS knit
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 9 10 11 12 13 14 15
  > =   body from {castOn 90}, RS: 6 rib in rib 2x2 4 mm; 8 'shape armholes' in stocking 4 mm; split
  > =   right side from {part body, stitches 30, edge right}, RS: 3 'shape armholes' in stocking 4 mm; 1 'shape shoulder' in stocking 4 mm; bind off
  > =   middle from {part body, stitches 14, edge middle}, RS: hold
  > =   left side from {part body, stitches 30, edge left}, RS: 1 'shape shoulder' in stocking 4 mm; hold

### what works a garment is told where nothing is on the needle, also without a label
Shape neck
  > heading
With RS facing, cast off centre 6 sts, work to end.
  > ✗ nothing on the needle @2:17

### the same again on another side is told where nothing is left of it
Cast on 20 sts. K 2 rows. Bind off.
  > 20→0 Piece/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
Work the same on the other side of the neck.
  > →0
  > ✗ nothing rests @2:1
  > = Piece, other, 1 to make, lines 1
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; bind off

### the first row of a pattern is known by others
Cast on 13 sts.
  > →13
1st row of pattern: * K 4, p 2, repeat from *, ending with k 1.
  > 13 Piece/body 1 RS *k4, p2; repeat from * to last st, k1
2nd row: Purl.
  > 13 Piece/body 2 WS purl
3rd row: Same as 1st row.
  > 13 Piece/body 3 RS *k4, p2; repeat from * to last st, k1
Row 4 AND EVERY EVEN ROW: P
  > 13 Piece/body 4 WS purl
Row 5: K.
  > 13 Piece/body 5 RS knit
Row 7: K.
  > 13 Piece/body 6 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 13}, RS: 7 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
