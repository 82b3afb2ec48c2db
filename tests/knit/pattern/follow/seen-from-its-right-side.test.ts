import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** That a knit row of stocking stitch is its right side is common practice, no published source; counts are reckoned by hand. */
describe('a rib of which nobody said the side lies so that the knit row behind it is a right side row', () => {
  it.each(
    annotatedIn(`
### rows of an odd number begin on the wrong side
Cast on 21 sts. Work 5 rows in k1, p1 rib.
  > 21 Piece/body 1 WS *k1, p1; repeat from * to last st, k1 · [RS *p1, k1; repeat from * to last st, p1 · WS *k1, p1; repeat from * to last st, k1] ×2
Starting with a knit row, work 4 rows in st st.
  > 21 Piece/body 6 RS knit · WS purl · RS knit · WS purl
K1, skpo, k to last 3 sts, k2tog, k1.
  > 21→19 Piece/body 10 RS k1, skp, knit to last 3 sts, k2tog, k1 (19)
Next row: Purl.
  > 19 Piece/body 11 WS purl
  > = Piece, other, 1 to make, lines 1 2 3 4
  > =   body from {castOn 21}, WS: 5 rib in rib 1x1 4 mm; 6 stocking 4 mm; hold

### and so do an even number with an increase row behind them
Cast on 20 sts. Work 4 rows in k1, p1 rib.
  > 20 Piece/body 1 WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end
Next row: Rib 5, m1, rib 10, m1, rib 5. 22 sts.
  > 20→22 says 22 Piece/body 5 WS [k1, p1, k1, p1, k1, m1, p1, k1, p1, k1, p1] 2 times (22)
Beg with a k row, work 4 rows in st st.
  > 22 Piece/body 6 RS knit · WS purl · RS knit · WS purl
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 20}, WS: 5 rib in rib 1x1 4 mm; 4 stocking 4 mm; hold

### a side that the text says stays
Cast on 20 sts. Row 1 (RS): *K1, p1; rep from * to end. Rep this row 4 times more.
  > 20 Piece/body 1 RS *k1, p1; repeat from * to end · [WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end] ×2
Beg with a k row, work 4 rows in st st.
  > 20 Piece/body 6 WS knit · RS purl · WS knit · RS purl
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 20}, RS: 5 rib in rib 1x1 4 mm; 4 reverse stocking 4 mm; hold

### and so does stocking stitch, whose other face is meant
Cast on 20 sts. K 1 row, p 1 row, k 1 row.
  > 20 Piece/body 1 RS knit · WS purl · RS knit
Beg with a k row, work 2 rows in st st.
  > 20 Piece/body 4 WS knit · RS purl
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; 2 reverse stocking 4 mm; hold
`),
  )('%s', expectAnnotated);
});

describe('a stitch pattern whose first row was not understood', () => {
  const text = `1st row right side: *P2 † wobble the first of them, repeat from † once, then repeat from * across
2nd row wrong side: *K2, p4, repeat from * across row.
Back
Cast on 24 sts.
K 4 rows. Change to pattern.
Work 6 rows in pattern.
Work 2 rows in garter st.`;

  it('has that row all the same, in its own words, and what is worked in it hangs on it', () => {
    const { lines } = readPattern(text);
    expect(lines.map(({ follows }) => follows)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      1,
      undefined,
    ]);
    expect(lines[5]?.rows.map(({ own }) => own !== undefined)).toEqual([
      true,
      false,
      true,
      false,
      true,
      false,
    ]);
  });

  it('is none where a piece was named and nothing cast on', () => {
    const { lines } = readPattern(text.replace(/^/, 'Front\n'));
    expect(lines[6]?.rows.every(({ own }) => own === undefined)).toBe(true);
  });
});
