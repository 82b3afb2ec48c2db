import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** What is not understood is said on its own line, and nothing is made up after it. The rows are counted by hand. */
describe('what is not understood', () => {
  it.each(
    annotatedIn(`
### is told before any stitches are on the needle
Wibble 3 sts twice on the first row.
  > talk
Bind off 7 sts in wibbles 4 times.
  > own words
  > ✗ stitch or repeat expected @2:16 column 16
Next row: k2, p2.
  > ✗ nothing on the needle @3:1

### is as many rows as it says, on the side it says
Cast on 8 sts.
  > →8
Work 3 rows in wibble over all of it.
  > own words 8 asks the count Piece/body 1 RS work in pattern 'Work 3 rows in wibble over all of it' · WS work in pattern 'Work 3 rows in wibble over all of it' · RS work in pattern 'Work 3 rows in wibble over all of it'
  > ✗ stitch or repeat expected @2:16 column 16
Next row (WS): wibble 2 sts, k to end.
  > own words 8 asks the count Piece/body 4 WS work in pattern 'Next row (WS): wibble 2 sts, k to end'
  > ✗ stitch or repeat expected @3:16 column 16
Next row (WS): wibble 3 sts, k to end.
  > own words 8 asks the count Piece/body 5 RS work in pattern 'Next row (WS): wibble 3 sts, k to end'
  > ✗ stitch or repeat expected @4:16 column 16
  > ✗ side differs @4 saidSide WS, foundSide RS
Next 2 rows: wibble each st.
  > own words 8 asks the count Piece/body 6 WS work in pattern 'Next 2 rows: wibble each st' · RS work in pattern 'Next 2 rows: wibble each st'
  > ✗ stitch or repeat expected @5:14 column 14
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, RS: 3 stocking 4 mm (own words 1 2 3); 4 pattern in stocking 4 mm (own words 1 2 3 4); hold

### goes on as something that nobody knows
Cast on 8 sts.
  > →8
Work 2 rows in garter st.
  > 8 Piece/body 1 RS knit · WS knit
Work 2 rows in wibble over all of it.
  > own words 8 asks the count Piece/body 3 RS work in pattern 'Work 2 rows in wibble over all of it' · WS work in pattern 'Work 2 rows in wibble over all of it'
  > ✗ stitch or repeat expected @3:16 column 16
Work 2 rows as established.
  > 8 Piece/body 5 RS work in pattern · WS work in pattern
Work 1 row in garter st.
  > 8 Piece/body 7 RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 8}, RS: 4 garter 4 mm (own words 3 4); 2 pattern in stocking 4 mm; 1 garter 4 mm; hold

### is an open stretch where it ends by a measure
Cast on 8 sts.
  > →8
Wibble sts until it measures 4 wibbles.
  > own words 8 asks the count as long as she likes: 1 rows Piece/body 1 RS work in pattern 'Wibble sts until it measures 4 wibbles'
  > ✗ stitch or repeat expected @2:1 column 1
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 8}, RS: 1 stocking 4 mm (own words 1, length {id 'piece/1', open, from here}); hold

### is worked again in its own words
Cast on 8 sts.
  > →8
Row 1: k.
  > 8 Piece/body 1 RS knit
Row 2: wibble 2 sts, p to end.
  > own words 8 asks the count Piece/body 2 WS work in pattern 'Row 2: wibble 2 sts, p to end'
  > ✗ stitch or repeat expected @3:8 column 8
Rep rows 1 and 2 once more.
  > 8 Piece/body 3 RS knit · WS work in pattern 'Row 2: wibble 2 sts, p to end'
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 8}, RS: 2 stocking 4 mm (own words 2); 2 pattern in stocking 4 mm (own words 2); hold

### is in its place in a stitch pattern
Lace
  > talk
Row 1: k.
Row 2: wibble 2 sts, p to end.
  > own words
  > ✗ stitch or repeat expected @3:8 column 8
Cast on 8 sts.
  > →8
Work 4 rows in lace pattern.
  > 8 Lace/body 1 RS knit · WS work in pattern 'Row 2: wibble 2 sts, p to end' · RS knit · WS work in pattern 'Row 2: wibble 2 sts, p to end'
  > = pattern lace of 1 plus 0 over 2: knit (2) · work in pattern (2)
  > = Lace, other, 1 to make, lines 5
  > =   body from {castOn 8}, RS: 4 lace in stocking 4 mm (own words 2 4); hold

### is no rib of one and one, and rib is not knit
Cast on 8 sts.
  > →8
Work 2 rows in rib.
  > 8 Piece/body 1 RS work in pattern · WS work in pattern
  > ✗ fabric not known @2:1 name rib
Work 2 rows in st st.
  > 8 Piece/body 3 RS knit · WS purl
Next row: rib 2, k2tog, rib to end.
  > 8→7 Piece/body 5 RS work 2 sts in pattern, k2tog, work in pattern to end (7)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 8}, RS: 2 rib in stocking 4 mm; 3 stocking 4 mm; hold
`),
  )('$title', expectAnnotated);
});
