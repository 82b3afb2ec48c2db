import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('orders that stand behind others, followed row by row,', () => {
  it.each(
    annotatedIn(`
### the text's own pattern begins behind a rib and a change of needles
Wave pattern
  > talk
Row 1: *k1, p1; rep from * to end.
Row 2: Knit.
BACK
  > heading
Cast on 6 sts and work in k1, p1 rib for 2 rows.
  > 6 Back/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Change to larger needles and work in pattern for 2 rows.
  > 6 Back/body 3 RS *k1, p1; repeat from * to end · WS knit
Cont in pattern for 2 rows.
  > 6 Back/body 5 RS *k1, p1; repeat from * to end · WS knit
  > = pattern wave of 2 plus 0 over 4: *k1, p1; repeat from * to end (4) · knit (4)
  > = Back, back, 1 to make, lines 5 6 7
  > =   body from {castOn 6}, RS: 2 rib in rib 1x1 4 mm; 4 wave in stocking 4 mm; hold

### one in each of the next rows
Cast on 20 sts.
  > →20
Next 2 rows: Bind off 3 sts at the beginning of each row.
  > 20→14 Piece/body 1 RS bind off 3 sts, knit to end (17) · WS bind off 3 sts, purl to end (14)
Next 4 rows: Dec 1 st at the beginning of each row.
  > 14→10 Piece/body 3 RS dec, knit to end (13) · WS dec, purl to end (12) · RS dec, knit to end (11) · WS dec, purl to end (10)
Decrease 1 stitch at each side of the work every other row 2 times.
  > 10→6 Piece/body 7 RS dec, k6, dec (8) · WS purl · RS dec, k4, dec (6)
Dec once at the beginning and end of the needle in every alt row twice.
  > 6→2 Piece/body 10 WS purl · RS dec, k2, dec (4) · WS purl · RS [dec] 2 times (2)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 13 stocking 4 mm; hold

### a bind-off and the rest of its row, and one that a facing leads on to
Cast on 20 sts.
  > →20
Bind off 6. Knit to end of row.
  > 20→14 Piece/body 1 RS bind off 6 sts, knit to end (14)
Right side facing cast off.
  > 14→0 Piece/body 2 WS bind off all sts in pattern (0)
  > ✗ side differs @3:1 saidSide RS, foundSide WS
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; bind off

### a standing order and a comment make no rows and are told
Slip the first st of every row.
Cast on 6 sts.
  > →6
K 2 rows.
  > 6 Piece/body 1 RS sl1, knit to end · WS sl1, knit to end
(Work 3 buttonholes on the other front.)
  > 6
  > ✗ place not known @4:1
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 6}, RS: 2 stocking 4 mm; hold

### a note does not swallow the order behind it
Cast on 6 sts.
  > →6
K 1 row.
  > 6 Piece/body 1 RS knit
Attach CC and k 2 rows.
  > 6 Piece/body 2 WS knit · RS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 6}, RS: 1 stocking 4 mm; 2 'stocking, CC' in stocking 4 mm; hold

### rows named in words, and what is said of a shoulder first
Cast on 10 sts.
  > →10
1st row: k.
  > 10 Piece/body 1 RS knit
2nd row: p.
  > 10 Piece/body 2 WS purl
Repeat the first and second rows twice.
  > 10 Piece/body 3 RS knit · WS purl · RS knit · WS purl
To shape shoulders, bind off 2 sts at beginning of each row until 6 sts remain.
  > 10→6 Piece/body 7 RS bind off 2 sts, knit to end (8) · WS bind off 2 sts, purl to end (6)
To shape neck, starting at neck edge, bind off 2 sts every other row 2 times.
  > 6→2 Piece/body 9 RS knit · WS bind off 2 sts, purl to end (4) · RS knit · WS bind off 2 sts, purl to end (2)
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 10}, RS: 12 stocking 4 mm; hold

### a needle by a number and a half
Using 3 ¼mm needles cast on 6 sts.
  > →6
K 1 row.
  > 6 Piece/body 1 RS knit
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 6}, RS: 1 stocking 3.25 mm; hold
    `),
  )('$title', expectAnnotated);
});
