import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what got lost without a word, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a yarn that is named with the needles
With A and 3 mm needles, cast on 12 sts. Knit 2 rows.
  > 12 Piece/body 1 RS knit · WS knit
With B and larger needles, knit 2 rows.
  > 12 Piece/body 3 RS knit · WS knit
Change to MC and 5 mm needles. Knit 1 row.
  > 12 Piece/body 5 RS knit
With 4 mm needles and CC, cast on 10 sts. Knit 2 rows.
  > 12→10 Piece/body 2 1 RS knit · WS knit
Join B and knit 2 rows.
  > 10 Piece/body 2 3 RS knit · WS knit
  > = Piece, other, 1 to make, lines 1 2 3 4 5
  > =   body from {castOn 12}, RS: 2 'stocking, A' in garter 3 mm; 2 'stocking, B' in garter 3 mm; 1 'stocking, MC' in garter 5 mm; hold
  > =   body 2 from {castOn 10}, RS: 2 'stocking, CC' in garter 4 mm; 2 'stocking, B' in garter 4 mm; hold

### two yarns at once are not the one that is named first, or last
With A and B held together on 4 mm needles, cast on 12 sts. Knit 2 rows.
  > 12 Piece/body 1 RS knit · WS knit
Join MC and knit 2 rows.
  > 12 Piece/body 3 RS knit · WS knit
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 12}, RS: 2 garter 4 mm; 2 'stocking, MC' in garter 4 mm; hold
`),
  )('$title', expectAnnotated);
});
