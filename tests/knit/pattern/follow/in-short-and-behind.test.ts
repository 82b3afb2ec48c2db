import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded, and how they are typed: common practice, no published source. Rows and counts are worked out by hand. */
describe('what is written in short, or behind what it belongs to, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a word with a colon above decrease rows works none
Cast on 20 sts. Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Decrease:
  > talk 20
R1: *(K3, K2tog), rep * to end – 16 st remain.
  > 20→16 says 16 Piece/body 3 RS *k3, k2tog; repeat from * to end (16)
  > = Piece, other, 1 to make, lines 1 3
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold

### rows without stops, their counts behind them
Cast on 12 sts.
  > →12
First row – Inc in first st, K to last st inc 1   14 sts
  > 12→14 says 14 Piece/body 1 RS inc, knit to last st, inc (14)
Next row – K
  > 14 Piece/body 2 WS knit
Rep last 2 rows   16 sts
  > 14→16 says 16 Piece/body 3 RS inc, knit to last st, inc (16) · WS knit
Next row – K2 tog, K to end   15 sts Rep last row once
  > 16→14 says 15 Piece/body 5 RS k2tog, knit to end (15) · WS k2tog, knit to end (14)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 12}, RS: 6 garter 4 mm; hold

### numbered rows in small letters
Cast on 16 sts.
  > →16
1) Rib 4 P6 P2tog rib 4
  > 16→15 Piece/body 1 RS work 4 sts in pattern, p6, p2tog, work 4 sts in pattern (15)
2) rib 4 K2tog K5 rib 4
  > 15→14 Piece/body 2 WS work 4 sts in pattern, k2tog, k5, work 4 sts in pattern (14)
3) k3, (cast on 2,
2) sts, k to end
  > own words lines 4 to 5 14 asks the count Piece/body 3 RS work in pattern 'k3, (cast on 2, 2) sts, k to end'
  > ✗ stitch or repeat expected @5:1 column 1
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 16}, RS: 1 stocking 4 mm; 2 pattern in stocking 4 mm (own words 2); hold

### stitches in short
co 22s, work 2x2 rib for 2 rows.
  > 22 Piece/body 1 RS *k2, p2; repeat from * to last 2 sts, k2 · WS *p2, k2; repeat from * to last 2 sts, p2
Next row: k2, (skp)x2, k to last 6s (k2tog)x2, k2
  > 22→18 Piece/body 3 RS k2, [skp] 2 times, knit to last 6 sts, [k2tog] 2 times, k2 (18)
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 22}, RS: 3 rib in rib 2x2 4 mm; hold

### a rib that is told behind its rows, and a stitch made behind a stop
Cast on 25 sts.
  > →25
Rib two rows, K1, P1.
  > 25 Piece/body 1 RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1
Next row: rib 2, *M1, rib 7, repeat from * to the last 2 sts. M1, rib to end.
  > 25→29 Piece/body 3 RS k1, p1, m1, *k1, p1; repeat from * to last 17 sts, k1, m1, [p1, k1] 3 times, p1, m1, [k1, p1] 3 times, k1, m1, p1, k1 (29)
Next row: K1, sl 1K, K1, psso, k to end.
  > 29→28 Piece/body 4 WS k1, skp, knit to end (28)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 25}, RS: 4 rib in rib 1x1 4 mm; hold

### a yarn behind the needles, and two stars behind it
BACK
  > heading
With A cast on 20 sts. Knit 2 rows.
  > 20 Back/body 1 RS knit · WS knit
Change to 4 mm needles B **
  > 20
Cont in st st across all sts, beg with a knit row, until longest point measures 10 cm from beg, ending with a purl row.
  > 20 as long as she likes: 2 rows Back/body 3 RS knit · WS purl
Bind off.
  > 20→0 Back/body 5 RS bind off all sts in pattern (0)
FRONT
  > heading
Work as back to **.
  > →20 Front/body 1 RS knit · WS knit
Bind off.
  > 20→0 Front/body 3 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 2 4 5
  > =   body from {castOn 20}, RS: 2 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm (length {id 'back/1', open, mm 100, endSide WS, from start}); bind off
  > = Front, front, 1 to make, lines 7 8
  > =   body from {castOn 20}, RS: 2 'stocking, A' in stocking 4 mm; bind off

### a fabric that is told again in brackets
Cast on 21 sts. Work in moss st for 2 rows (moss st: * k1, p1; rep from * to last st, k1).
  > 21 Piece/body 1 RS *k1, p1; repeat from * to last st, k1 · WS *k1, p1; repeat from * to last st, k1
Work in rib st, k1, p1 until work measures 8 cm.
  > 21 as long as she likes: 2 rows Piece/body 3 RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1
Next row: K3, * p1, k3; rep from * to last 6 sts, p1, k 5 more sts.
  > 21 Piece/body 5 RS k3, *p1, k3; repeat from * to last 6 sts, p1, k5
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 21}, RS: 2 moss 4 mm; 2 rib in rib 1x1 4 mm (length {id 'piece/1', open, mm 80, from start}); 1 rib in rib 1x1 4 mm; hold

### what is in brackets and no fabric stays
Cast on 20 sts.
  > →20
Work in moss st for 2 rows (border: knit 4 rows).
  > own words 20 asks the count Piece/body 1 RS work in pattern 'Work in moss st for 2 rows (border: knit 4 rows)' · WS work in pattern 'Work in moss st for 2 rows (border: knit 4 rows)'
  > ✗ stitch or repeat expected @2:29 column 29
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 2 stocking 4 mm (own words 1 2); hold
`),
  )('$title', expectAnnotated);
});
