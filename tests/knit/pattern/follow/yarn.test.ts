import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('colours, followed row by row,', () => {
  it.each(
    annotatedIn(`
### stand in the name of the section that is worked in them, and come again with it
Cast on 8 sts with A.
  > 8
Knit 2 rows in A.
  > 8 Piece/body 1 RS knit · WS knit
With B, work 2 rows in st st.
  > 8 Piece/body 3 RS knit · WS purl
Rep last 4 rows once more.
  > 8 Piece/body 5 RS knit · WS knit · RS knit · WS purl
Change to MC and k 1 row.
  > 8 Piece/body 9 RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, RS: 2 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 1 'stocking, MC' in stocking 4 mm; hold

### stripes in one sentence
Cast on 8 sts.
  > →8
Work 4 rows A, 2 rows B.
  > 8 Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 8}, RS: 4 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; hold

### a pattern, a cable needle and an article are no colours
Cast on 8 sts.
  > →8
Work 2 rows in a pattern.
  > 8 Piece/body 1 RS work in pattern · WS work in pattern
  > ✗ fabric not known @2:1 name pattern
With a larger needle, k 1 row.
  > 8 Piece/body 3 RS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 8}, RS: 2 pattern in stocking 4 mm; 1 pattern in stocking 4 mm; hold
`),
  )('$title', expectAnnotated);
});
