import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/**
 * Rows again, yarns behind labels, rows of a shaping by their numbers, stars that close. How patterns are usually worded:
 * common practice, no published source. The rows are counted by hand.
 */
describe('rows once more and what stands beside them, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a row's yarn behind its label
Cast on 8 sts.
  > →8
Row 1: With A, k to end.
  > 8 Piece/body 1 RS knit
Row 2: P.
  > 8 Piece/body 2 WS purl
Row 3 (RS): With B, k2, *p1, k1; rep from * to end.
  > 8 Piece/body 3 RS k2, *p1, k1; repeat from * to end
Row 4: In patt, k to end.
  > 8 Piece/body 4 WS purl
Rep rows 1-3 once.
  > 8 Piece/body 5 RS knit · WS purl · RS k2, *p1, k1; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 8}, RS: 2 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm; 1 'stocking, B' in stocking 4 mm; hold

### so many rows more
Cast on 8 sts.
  > →8
K 2 rows more.
  > 8 Piece/body 1 RS knit · WS knit
K 2 more rows. P 1 row further.
  > 8 Piece/body 3 RS knit · WS knit · RS purl
K 2 more wibbles.
  > own words 8 asks the count Piece/body 6 WS work in pattern 'K 2 more wibbles'
  > ✗ stitch or repeat expected @4:5 column 5
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 8}, RS: 6 stocking 4 mm (own words 6); hold

### rows again for a whole piece
Cast on 8 sts.
  > →8
Row 1: K.
  > 8 Piece/body 1 RS knit
Row 2: P2, k to end.
  > 8 Piece/body 2 WS p2, knit to end
Rep these 2 rows for entire piece.
  > 8
Work 3 rows.
  > 8 Piece/body 3 RS knit · WS p2, knit to end · RS knit
Rep these 2 rows for entire wibble.
  > own words 8 asks the count Piece/body 6 WS work in pattern 'Rep these 2 rows for entire wibble'
  > ✗ stitch expected @6:35 column 35
  > = Piece, other, 1 to make, lines 2 3 5 6
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; 4 pattern in stocking 4 mm (own words 4); hold

### rows of a shaping by their numbers, and then a rhythm
Cast on 20 sts.
  > →20
Dec 1 st at each end of the foll 3rd, 4th and 8th rows.
  > 20→14 Piece/body 1 RS knit · WS purl · RS dec, knit to last 2 sts, dec (18) · WS dec, purl to last 2 sts, dec (16) · RS knit · WS purl · RS knit · WS dec, purl to last 2 sts, dec (14)
Inc 1 st at each end of the next then every foll 4th row twice.
  > 14→18 Piece/body 9 RS inc, knit to last st, inc (16) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (18)
Dec 1 st at each end of the foll 3rd, 2nd and 8th rows.
  > own words 18 asks the count Piece/body 14 WS work in pattern 'Dec 1 st at each end of the foll 3rd, 2nd and 8th rows'
  > ✗ stitch or repeat expected @4:34 column 34
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 14 stocking 4 mm (own words 14); hold

### groups at the edge where the row begins
Cast on 40 sts.
  > →40
Bind off 7 sts at beg of row on armhole side twice.
  > 40→26 Piece/body 1 RS bind off 7 sts, knit to end (33) · WS purl · RS bind off 7 sts, knit to end (26)
Bind off 3 sts at beg of row at neck edge.
  > 26→23 Piece/body 4 WS bind off 3 sts, purl to end (23)
Bind off 3 sts at beg of row on both wibbles.
  > own words 23 asks the count Piece/body 5 RS work in pattern 'Bind off 3 sts at beg of row on both wibbles'
  > ✗ stitch or repeat expected @4:30 column 30
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 40}, RS: 5 stocking 4 mm (own words 5); hold

### a star that closes what a star began
Cast on 8 sts.
  > →8
*Next row: BO 1 st, p to end.
  > 8→7 Piece/body 1 RS bind off 1 st, purl to end (7)
Next row: BO 1 st, k to end.*
  > 7→6 Piece/body 2 WS bind off 1 st, knit to end (6)
Rep from * to * once more.
  > 6→4 Piece/body 3 RS bind off 1 st, purl to end (5) · WS bind off 1 st, knit to end (4)
**Next row: K2tog, k to end.
  > 4→3 Piece/body 5 RS k2tog, knit to end (3)
Next row: Knit.**
  > 3 Piece/body 6 WS knit
Rep from ** to ** once more.
  > 3→2 Piece/body 7 RS k2tog, knit to end (2) · WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 8}, RS: 8 stocking 4 mm; hold

### two stars and the one within the row
Cast on 8 sts.
  > →8
**K2, p2. Repeat from * to end.
  > 8 Piece/body 1 RS *k2, p2; repeat from * to end
**K 2 rows. Rep from ** once.
  > 8 Piece/body 2 WS knit · RS knit · WS knit · RS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 8}, RS: 5 stocking 4 mm; hold

### a cast-on behind a row is no other piece
Cast on 8 sts. K 4 rows.
  > 8 Piece/body 1 RS knit · WS knit · RS knit · WS knit
Turn, knit back, and cast on 30 sts. (38 sts)
  > 8→38 says 38 Piece/body 5 RS knit to end, cast on 30 sts (38)
P 1 row and cast on 2 sts.
  > 38→40 Piece/body 6 WS purl to end, cast on 2 sts (40)
K 2 rows and cast on 2 sts.
  > 40 asks the count Piece/body 7 RS knit · WS knit · RS work in pattern 'K 2 rows and cast on 2 sts'
  > ✗ stitches left over @4:14 leftStitches 40, onNeedleStitches 40
  > = Piece, other, 1 to make, lines 1 2 3 4
  > =   body from {castOn 8}, RS: 4 stocking 4 mm; 5 garter 4 mm (own words 5); hold

### another piece casts on by itself
Cast on 8 sts. K 2 rows.
  > 8 Piece/body 1 RS knit · WS knit
With yarn B, cast on 10 sts. K 2 rows.
  > 8→10 Piece/body 2 1 RS knit · WS knit
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; hold
  > =   body 2 from {castOn 10}, RS: 2 stocking 4 mm; hold

### a gauge behind the needles
On 3.25 mm needles, 28 sts and 36 rows to 10 cm.
  > talk
Cast on 28 sts.
  > →28
Work in st st for 1 cm (work measures 1 cm).
  > 28 long: 4 rows Piece/body 1 RS knit · WS purl · RS knit · WS purl
Next row: on 4 mm needles, k2, p to end.
  > own words 28 asks the count Piece/body 5 RS work in pattern 'Next row: on 4 mm needles, k2, p to end'
  > ✗ stitch or repeat expected @4:11 column 11
  > = gauge stitches 28, rows 36, needle 3.25
  > = Piece, other, 1 to make, lines 3 4
  > =   body from {castOn 28}, RS: 4 stocking 4 mm (length {id 'piece/1', open false, mm 10, from here}); 1 stocking 4 mm (own words 1); hold

### what a length comes to by then
Cast on 8 sts.
  > →8
Work even in st st until piece measures 10 cm (armhole measures 4 cm), ending with a WS row.
  > 8 as long as she likes: 2 rows Piece/body 1 RS knit · WS purl
Work 2 rows (wibble measures 4 cm).
  > own words 8 asks the count Piece/body 3 RS work in pattern 'Work 2 rows (wibble measures 4 cm)' · WS work in pattern 'Work 2 rows (wibble measures 4 cm)'
  > ✗ stitch or repeat expected @3:14 column 14
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 8}, RS: 2 stocking 4 mm (length {id 'piece/1', open, mm 100, endSide WS, from start}); 2 stocking 4 mm (own words 1 2); hold
`),
  )('come out as $title', expectAnnotated);
});
