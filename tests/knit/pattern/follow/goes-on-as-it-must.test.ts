import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what goes on as the rows before it ask,', () => {
  it.each(
    annotatedIn(`
### a stretch that she measures is as long as the shaping beside it
Cast on 10 sts.
  > →10
Work 2 rows in st st.
  > 10 Piece/body 1 RS knit · WS purl
Continue in st st, AT THE SAME TIME, inc 1 st at each end of this row, then every 4th row twice. (16 sts)
  > 10 says 16
Work without further shaping until piece measures 20 cm, ending with a WS row.
  > 10→16 as long as she likes: 10 rows Piece/body 3 RS inc, knit to last st, inc (12) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (14) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (16) · WS purl
Bind off 2 sts at beg of next 2 rows. (12 sts)
  > 16→12 says 12 Piece/body 13 RS bind off 2 sts, knit to end (14) · WS bind off 2 sts, purl to end (12)
  > = Piece, other, 1 to make, lines 2 4 5
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; 10 stocking 4 mm (length {id 'piece/1', open, mm 200, endSide WS, from start}); 2 stocking 4 mm; hold

### where the shaping has no end of its own it goes on
Cast on 10 sts.
  > →10
Work 2 rows in st st.
  > 10 Piece/body 1 RS knit · WS purl
Continue in st st, AT THE SAME TIME, inc 1 st at each end of every 4th row.
  > 10
Work until piece measures 20 cm.
  > 10 as long as she likes: 2 rows Piece/body 3 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 4
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; 2 stocking 4 mm (length {id 'piece/1', open, mm 200, from start}); hold

### edges that a row spells go on, and a knit row comes between
Cast on 12 sts.
  > →12
Knit 4 rows.
  > 12 Piece/body 1 RS knit · WS knit · RS knit · WS knit
Next row: K4, p to last 4 sts, k4.
  > 12 Piece/body 5 RS k4, purl to last 4 sts, k4
Work straight until piece measures 10 cm, ending with a WS row.
  > 12 as long as she likes: 3 rows Piece/body 6 WS knit · RS k4, purl to last 4 sts, k4 · WS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 4 garter 4 mm; 1 garter 4 mm; 3 pattern in stocking 4 mm (length {id 'piece/1', open, mm 100, endSide WS, from start}); hold

### and when the knit row was worked already
Cast on 12 sts.
  > →12
Knit 5 rows.
  > 12 Piece/body 1 RS knit · [WS knit · RS knit] ×2
Next row: K4, p to last 4 sts, k4.
  > 12 Piece/body 6 WS k4, purl to last 4 sts, k4
Next row: Knit.
  > 12 Piece/body 7 RS knit
Work straight for 3 rows.
  > 12 Piece/body 8 WS k4, purl to last 4 sts, k4 · RS knit · WS k4, purl to last 4 sts, k4
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 12}, RS: 5 garter 4 mm; 2 garter 4 mm; 3 pattern in stocking 4 mm; hold

### unequal edges say nothing of the sort
Cast on 12 sts.
  > →12
Knit 5 rows.
  > 12 Piece/body 1 RS knit · [WS knit · RS knit] ×2
Next row: K2, p to last 4 sts, k4.
  > 12 Piece/body 6 WS k2, purl to last 4 sts, k4
Work straight for 2 rows.
  > 12 Piece/body 7 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 12}, RS: 5 garter 4 mm; 3 garter 4 mm; hold

### 'change to pattern' is the text's own, and not the rib that is there
1st row: *K3, sl 1; rep from * to last 3 sts, k3.
2nd row: P.
Repeat these 2 rows for pattern.
BACK
  > heading
Cast on 15 sts. Work in k1, p1 rib for 4 rows. Change to pattern. Work 4 rows.
  > 15 Back/body 1 RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1 · RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1 · [RS *k3, sl1; repeat from * to last 3 sts, k3 · WS purl] ×2
  > = pattern pattern of 4 plus 3 over 11: *k3, sl1; repeat from * to last 3 sts, k3 (11) · purl (11)
  > = Back, back, 1 to make, lines 5
  > =   body from {castOn 15}, RS: 4 rib in rib 1x1 4 mm; 4 pattern in stocking 4 mm; hold

### where the text has none nobody knows it
Cast on 15 sts. Work in k1, p1 rib for 4 rows. Change to pattern. Work 2 rows.
  > 15 Piece/body 1 RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1 · RS *k1, p1; repeat from * to last st, k1 · WS *p1, k1; repeat from * to last st, p1 · RS work in pattern · WS work in pattern
  > ✗ fabric not known @1:48 name pattern
  > = Piece, other, 1 to make, lines 1
  > =   body from {castOn 15}, RS: 4 rib in rib 1x1 4 mm; 2 pattern in stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
