import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. A round has no wrong side, so none is a row here. */
describe('rounds', () => {
  it.each(
    annotatedIn(`
### are said, each with its words and as many as it says
Cast on 8 sts.
  > →8
Rnds 1-3: k.
  > own words 8 asks the count Piece/body 1 RS work in pattern 'Rnds 1-3: k' · WS work in pattern 'Rnds 1-3: k' · RS work in pattern 'Rnds 1-3: k'
  > ✗ worked in rounds @2:1
Next round: k2tog, k to end (7 sts).
  > own words 8→7 says 7 Piece/body 4 WS dec, work in pattern to end 'Next round: k2tog, k to end (7 sts)' (7)
  > ✗ worked in rounds @3:1
Bind off.
  > 7→0 Piece/body 5 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 8}, RS: 3 stocking 4 mm (own words 1 2 3); 1 pattern in stocking 4 mm (own words 1); bind off

### from where it is joined
Cast on 8 sts. Join, being careful not to twist.
  > own words 8
  > ✗ worked in rounds @1:16
K 1 row.
  > own words 8 asks the count Piece/body 1 RS work in pattern 'K 1 row'
  > ✗ worked in rounds @2:1
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 8}, RS: 1 stocking 4 mm (own words 1); hold

### are none where only the word is said
Cast on 8 sts.
  > →8
Row 1: k1, yarn round needle, k2tog, k to end.
  > 8 Piece/body 1 RS k1, yo, k2tog, knit to end
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 8}, RS: 1 stocking 4 mm; hold
`),
  )('$title', expectAnnotated);
});
