import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. The rows are counted by hand. */
describe('a row worked again by its name, followed row by row,', () => {
  it.each(
    annotatedIn(`
### so many times in all, the one just worked being the first
Cast on 20 sts.
  > →20
Dec row (RS): k1, k2tog, k to end.
  > 20→19 Piece/body 1 RS k1, k2tog, knit to end (19)
Work dec row every other row a total of 3 times.
  > 19→17 Piece/body 2 WS purl · RS k1, k2tog, knit to end (18) · WS purl · RS k1, k2tog, knit to end (17)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 5 stocking 4 mm; hold

### so many times more, with a row to get to the side that is said
Cast on 20 sts.
  > →20
Dec row (RS): k1, k2tog, k to end.
  > 20→19 Piece/body 1 RS k1, k2tog, knit to end (19)
Rep dec row every other row 3 times more, ending with a WS row.
  > 19→16 Piece/body 2 WS purl · RS k1, k2tog, knit to end (18) · WS purl · RS k1, k2tog, knit to end (17) · WS purl · RS k1, k2tog, knit to end (16) · WS purl
Bind off.
  > 16→0 Piece/body 9 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 8 stocking 4 mm; bind off
`),
  )('comes out as $title', expectAnnotated);
});
