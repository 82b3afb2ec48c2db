import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows that hang on what the needle holds: its looks, its markers, its last turn, a shaping that goes on beside. */
describe('what hangs on the needle in hand, followed row by row,', () => {
  it.each(
    annotatedIn(`
### over an odd middle
Cast on 21 sts.
  > →21
Inc 4 sts evenly over center 10 sts.
  > 21→25 Piece/body 1 RS k6, m1, k3, m1, k2, m1, k3, m1, knit to end (25)
Dec 4 sts evenly over center 14 sts.
  > 25→21 Piece/body 2 WS p6, p2tog, p1, p2tog, p2, p2tog, p1, p2tog, purl to end (21)
Next row (RS): K3, inc 2 sts evenly over next 6 sts, k to end.
  > 21→23 Piece/body 3 RS k3, k2, m1, k3, m1, k1, knit to end (23)
Next row (WS): P3, dec 2 sts evenly over next 9 sts, p to end.
  > 23→21 Piece/body 4 WS p3, p1, p2tog, p3, p2tog, p1, purl to end (21)
Next row (RS): K3, dec 1 st evenly over next 9 sts, k to end.
  > 21→20 Piece/body 5 RS k3, k4, k2tog, k3, knit to end (20)
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 21}, RS: 5 stocking 4 mm; hold

### over a part of a wrong side in garter stitch
Cast on 20 sts.
  > →20
Work 2 rows in garter st.
  > 20 Piece/body 1 RS knit · WS knit
Next row: K3, inc 2 sts evenly over next 6 sts, k to end.
  > 20→22 Piece/body 3 RS k3, k2, m1, k3, m1, k1, knit to end (22)
Next row: K3, inc 2 sts evenly over next 6 sts, k to end.
  > 22→24 Piece/body 4 WS k3, k2, m1, k3, m1, k1, knit to end (24)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 4 garter 4 mm; hold

### beside a shaping that has not ended
Cast on 40 sts.
  > →40
Dec 1 st at each end of every 4th row 3 times, AT THE SAME TIME inc 1 st at neck edge of every other row 2 times.
  > 40→36 Piece/body 1 RS knit to last st, inc (41) · WS purl · RS dec, knit to last 3 sts, inc, dec (40) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (38) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (36)
Bind off.
  > 36→0 Piece/body 12 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 11 stocking 4 mm; bind off

### bound off while a shaping goes on
Cast on 40 sts.
  > →40
Work 2 rows in st st, AT THE SAME TIME dec 1 st at each end of every other row 5 times.
  > 40→38 Piece/body 1 RS dec, knit to last 2 sts, dec (38) · WS purl
Bind off all sts.
  > 38→0 Piece/body 3 RS dec, knit to last 2 sts, dec (36) · WS purl · RS dec, knit to last 2 sts, dec (34) · WS purl · RS dec, knit to last 2 sts, dec (32) · WS purl · RS dec, knit to last 2 sts, dec (30) · WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 9 stocking 4 mm; bind off

### a count while a shaping goes on
Cast on 40 sts.
  > →40
Work in st st until 30 sts remain, AT THE SAME TIME dec 1 st at each end of every other row 5 times.
  > 40→30 Piece/body 1 RS dec, knit to last 2 sts, dec (38) · WS purl · RS dec, knit to last 2 sts, dec (36) · WS purl · RS dec, knit to last 2 sts, dec (34) · WS purl · RS dec, knit to last 2 sts, dec (32) · WS purl · RS dec, knit to last 2 sts, dec (30)
Work 2 rows.
  > 30 Piece/body 10 WS purl · RS knit
Work even until 20 sts remain.
  > 30
  > ✗ count contradicts @4:1 statedStitches 20, foundStitches 30
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 11 stocking 4 mm; hold

### as the stitches look
Cast on 12 sts.
  > →12
Row 1 (RS): K2, p2, k4, p2, k2.
  > 12 Piece/body 1 RS k2, p2, k4, p2, k2
Row 2: K the k sts and p the p sts.
  > 12 Piece/body 2 WS p2, k2, p4, k2, p2
Row 3: K the p sts and p the k sts.
  > 12 Piece/body 3 RS p2, k2, p4, k2, p2
Row 4: Rib to end.
  > 12 Piece/body 4 WS k2, p2, k4, p2, k2
Row 5: K2, work in pattern to last 2 sts, k2.
  > 12 Piece/body 5 RS knit
Row 6: Bind off 3 sts, rib until 5 sts on needle after gap, k to end.
  > 12→9 Piece/body 6 WS bind off 3 sts, work 5 sts in pattern, knit to end (9)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 12}, RS: 6 stocking 4 mm; hold

### turned, with markers
Cast on 20 sts.
  > →20
Row 1 (RS): K5, pm, k10, pm, k5.
  > 20 Piece/body 1 RS k5, k10, k5
Row 2: P to marker, sm, k to marker, sm, p to end.
  > 20 Piece/body 2 WS purl to last 15 sts, knit to last 5 sts, purl to end
Row 3: K to 2 sts before marker, k2tog, sm, k to marker, sm, ssk, k to end.
  > 20→18 Piece/body 3 RS knit to last 17 sts, k2tog, knit to last 5 sts, ssk, knit to end (18)
Row 4: P15, turn.
  > 18 Piece/body 4 WS p15, turn
Row 5: K to end.
  > 18 Piece/body 5 RS leave 3 sts unworked, knit to end
Row 6: P to 2 sts before wrapped st, turn.
  > 18 Piece/body 6 WS purl to last 5 sts, turn
Row 7: K to end.
  > 18 Piece/body 7 RS leave 5 sts unworked, knit to end
Row 8: Leave 3 sts unworked, p to end.
  > 18 Piece/body 8 WS leave 3 sts unworked, purl to end
Row 9: P to end.
  > 18 Piece/body 9 RS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9 10
  > =   body from {castOn 20}, RS: 9 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
