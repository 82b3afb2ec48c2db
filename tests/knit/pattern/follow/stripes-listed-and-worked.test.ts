import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('stripes that are listed, worked or a pattern of their own,', () => {
  it.each(
    annotatedIn(`
### stripes listed, worked, and as a row's own
Stripe pattern: 2 rows A, 3 rows B
Cast on 10 sts.
  > →10
Work in stripe pattern for 10 rows.
  > 10 Piece/body 1 RS knit · [WS purl · RS knit] ×4 · WS purl
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 10}, RS: 2 'stocking, A' in stocking 4 mm; 3 'stocking, B' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm; 3 'stocking, B' in stocking 4 mm; hold

### stripes that a stitch pattern has
Colour pattern
Row 1: With A, k.
Row 2: With A, p.
Row 3: With B, k.
Row 4: With B, p.
Cast on 10 sts.
  > →10
Work in stripes for 4 rows.
  > 10 Stripe/body 1 RS knit 'Row 1: With A, k' · WS purl 'Row 2: With A, p' · RS knit 'Row 3: With B, k' · WS purl 'Row 4: With B, p'
  > = pattern stripe of 1 plus 0 over 2: knit (2) · purl (2) · knit (2) · purl (2)
  > = Stripe, other, 1 to make, lines 7
  > =   body from {castOn 10}, RS: 4 stripe in stocking 4 mm (own words 1 2 3 4); hold

### rows in their yarns
Cast on 10 sts.
  > →10
Work in garter st: 2 rows A, 2 rows B.
  > 10 Piece/body 1 RS knit · WS knit · RS knit · WS knit
Work 4 rows A, 2 rows B.
  > 10 Piece/body 5 RS knit · [WS knit · RS knit] ×2 · WS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 10}, RS: 2 'garter, A' in garter 4 mm; 2 'garter, B' in garter 4 mm; 4 'garter, A' in garter 4 mm; 2 'garter, B' in garter 4 mm; hold

### as many rows as the stripes have
Stripe pattern: 2 rows A, 3 rows B
These 6 rows form stripe pattern.
  > ✗ rows already worked @2:1 workedRows 5, rows 6
`),
  )('comes out as $title', expectAnnotated);
});
