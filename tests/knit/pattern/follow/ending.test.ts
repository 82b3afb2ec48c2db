import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. The rows are counted by hand. */
describe('ending, followed row by row,', () => {
  it.each(
    annotatedIn(`
### rows that are counted stay as many as the text says
Cast on 8 sts.
  > →8
Work 2 rows in garter st.
  > 8 Piece/body 1 RS knit · WS knit
Work 3 rows, ending with WS facing for next row.
  > 8 Piece/body 3 RS knit · WS knit · RS knit
Work 3 rows, ending with a RS row.
  > 8 Piece/body 6 WS knit · RS knit · WS knit
  > ✗ side differs @4:1 saidSide RS, foundSide WS
Work 2 rows, ending with a WS row.
  > 8 Piece/body 9 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, RS: 10 garter 4 mm; hold

### so do rows worked again
Cast on 8 sts.
  > →8
Next row: k1, k2tog, k to end.
  > 8→7 Piece/body 1 RS k1, k2tog, knit to end (7)
Next row: p.
  > 7 Piece/body 2 WS purl
Rep last 2 rows twice more, ending with a WS row.
  > 7→5 Piece/body 3 RS k1, k2tog, knit to end (6) · WS purl · RS k1, k2tog, knit to end (5) · WS purl
Rep last 2 rows once more, ending with WS facing for next row.
  > 5→4 Piece/body 7 RS k1, k2tog, knit to end (4) · WS purl
  > ✗ side differs @5:28 saidSide RS, foundSide WS
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, RS: 8 stocking 4 mm; hold

### a shaping takes a row more to get there
Cast on 8 sts.
  > →8
Dec 1 st at each end of next row, ending with a WS row.
  > 8→6 Piece/body 1 RS dec, k4, dec (6) · WS purl
Dec 1 st at each end of next row, ending with a RS row.
  > 6→4 Piece/body 3 RS dec, k2, dec (4)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 8}, RS: 3 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
