import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** As a beginner and an old leaflet say it: common practice, no published source. */
describe('rows in plain words,', () => {
  it.each(
    annotatedIn(`
### plain words for plain rows
Tension: 20 sts and 28 rows to 10 cm.
  > talk
Cast on 20 sts.
  > →20
Keep on knitting for 4 rows.
  > 20 Piece/body 1 RS knit · WS knit · RS knit · WS knit
Continue to knit every row for 2 rows.
  > 20 Piece/body 5 RS knit · WS knit
Work 4 rows plain knitting.
  > 20 Piece/body 7 RS knit · WS knit · RS knit · WS knit
Knit the first row. Purl the second row.
  > 20 Piece/body 11 RS knit · WS purl
Work back and forth in garter stitch for 2 rows.
  > 20 Piece/body 13 RS knit · WS knit
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 20}, RS: 14 garter 4 mm; hold

### rows by turns are counted from the first of them on
Cast on 20 sts.
  > →20
Knit 1 row, purl 1 row alternately for 6 rows.
  > 20 Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
Work 4 rows of knit 1 row, purl 1 row.
  > 20 Piece/body 7 RS knit · WS purl · RS knit · WS purl
Alternate knit and purl rows for 4 rows.
  > 20 Piece/body 11 RS knit · WS purl · RS knit · WS purl
K 1 row, p 1 row.
  > 20 Piece/body 15 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 16 stocking 4 mm; hold

### ribs in plain words
Cast on 20 sts.
  > →20
Rib 4 rows (k 2, p 2).
  > 20 Piece/body 1 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end · RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
Work in ribbing of 1 plain and 1 purl for 2 rows.
  > 20 Piece/body 5 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 4 rib in rib 2x2 4 mm; 2 rib in rib 1x1 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
