import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/**
 * Lines that a text sets in its own way: the stop behind a label, yarns in quotes, wraps under a heading that divides, a
 * piece as another one. How patterns are usually set: common practice, no published source. The rows are counted by hand.
 */
describe('lines as they are set, followed row by row,', () => {
  it.each(
    annotatedIn(`
### the stop behind a numbered row's label parts nothing
Cast on 8 sts.
  > →8
1st row. K2, p to end.
  > 8 Piece/body 1 RS k2, purl to end
2nd row . As first row
3rd row. k5. purl to end.
  > lines 3 to 4 8 Piece/body 2 WS k2, purl to end · RS k5, purl to end
Row 4. Knit.
  > 8 Piece/body 4 WS knit
5th row. as 2nd row
  > 8 Piece/body 5 RS k2, purl to end
K 1 row.
  > 8 Piece/body 6 WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 8}, RS: 6 stocking 4 mm; hold

### a row that is only spoken of is no label
Cast on 8 sts.
  > →8
1st row: K.
  > 8 Piece/body 1 RS knit
Work the same as for 1st row. K 1 row.
  > own words 8 asks the count Piece/body 2 WS work in pattern 'Work the same as for 1st row' · RS knit
  > ✗ stitch expected @3:29 column 29
Next row: K5. P3.
  > 8 Piece/body 4 WS k5, p3
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 8}, RS: 2 stocking 4 mm (own words 2); 2 pattern in stocking 4 mm; hold

### a wrapped stitch divides nothing, whatever is shaped
Back
  > heading
Cast on 8 sts. K 2 rows.
  > 8 Back/body 1 RS knit · WS knit
Shape shoulders
  > heading 8
K to last 2 sts, w&t. P to last 2 sts, w&t.
  > 8 Back/body 3 RS knit to last 2 sts, wrap next st, turn · WS leave 2 sts unworked, purl to last 2 sts, wrap next st, turn
K to last 3 sts, w&t. P to last 3 sts, w&t.
  > 8 Back/body 5 RS leave 2 sts unworked, knit to last 3 sts, wrap next st, turn · WS leave 3 sts unworked, purl to last 3 sts, wrap next st, turn
K to end.
  > 8 Back/body 7 RS leave 3 sts unworked, knit to end
  > = Back, back, 1 to make, lines 2 4 5 6
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; 5 'shape shoulders' in stocking 4 mm; hold

### a turn without a wrap does
Back
  > heading
Cast on 8 sts. K 2 rows.
  > 8 Back/body 1 RS knit · WS knit
Shape shoulders
  > heading 8
K3, turn. P to end.
  > 8→3 Back/right side 1 RS k3 · WS purl
  > = Back, back, 1 to make, lines 2 4
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 3, edge right}, RS: 2 'shape shoulders' in stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 5, edge left}, RS: hold

### a piece as another one with something left out is told, and making up is not
Right front.
  > heading
Cast on 8 sts. K 2 rows. Bind off.
  > 8→0 Right front/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
Left front. Work exactly as for right front, omitting buttonholes and turning it round.
  > own words →0 Left front/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
  > ✗ stitch or repeat expected @3:79 column 79
Pocket. Knit same as other pocket, but in wibbles.
  > own words
  > ✗ piece not known @4:9 pieceName 'other pocket'
  > ✗ stitch or repeat expected @4:40 column 40
Making up
  > heading
Work as for any seam, neatly.
  > talk
  > = Right front, right front, 1 to make, lines 2
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; bind off
  > = Left front, left front, 1 to make, lines 3
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; bind off

### a row on the side that garter stitch begins on
Cast on 8 sts.
  > →8
Beg with a WS row, work 3 rows in garter st.
  > 8 Piece/body 1 WS knit · RS knit · WS knit
Beg with a RS row, work 2 rows in st st.
  > 8 Piece/body 4 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 8}, WS: 3 garter 4 mm; 2 stocking 4 mm; hold

### garter stitch begun with a knit row
Cast on 8 sts.
  > →8
Beg with a k row, work 2 rows in garter st.
  > 8 Piece/body 1 RS knit · WS knit
Beg with a WS row, work 1 row in garter st.
  > 8 Piece/body 3 RS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 8}, RS: 3 garter 4 mm; hold

### a yarn's name in quotes works nothing
Back
  > heading
With 1 ball of "Wool-Knit" and 1 ball of “Knit & Purl”, cast on 8 sts. Work 2 rows in garter st.
  > 8 Back/body 1 RS knit · WS knit
Work 2 rows in garter st, 4" wide "wibble.
  > own words 8 asks the count Back/body 3 RS work in pattern 'Work 2 rows in garter st, 4" wide "wibble' · WS work in pattern 'Work 2 rows in garter st, 4" wide "wibble'
  > ✗ stitch or repeat expected @3:27 column 27
  > = Back, back, 1 to make, lines 2 3
  > =   body from {castOn 8}, RS: 4 garter 4 mm (own words 3 4); hold

### a cast-on behind work that is not understood is told
Back
  > heading
Wibble a needle, k to its end and cast on 8 sts.
  > own words
  > ✗ stitch or repeat expected @2:1 column 1
Work 2 rows in garter st.
  > ✗ nothing on the needle @3:1

### the last rows again, ending with the number of one
Cast on 8 sts.
  > →8
Row 1: *K1, p1; rep from * to end.
  > 8 Piece/body 1 RS *k1, p1; repeat from * to end
Row 2: K.
  > 8 Piece/body 2 WS knit
Repeat these 2 rows for 3 cm, ending with Row 2.
  > 8 as long as she likes: 2 rows Piece/body 3 RS *k1, p1; repeat from * to end · WS knit
Row 1: K2, p6.
  > 8 Piece/body 5 RS k2, p6
Row 2: K6, p2.
  > 8 Piece/body 6 WS k6, p2
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; 2 stocking 4 mm (length {id 'piece/1', open, mm 30, from here}); 2 pattern in stocking 4 mm; hold

### rows that have no number end with none
Cast on 8 sts.
  > →8
Row 1: K.
  > 8 Piece/body 1 RS knit
Row 2: P.
  > 8 Piece/body 2 WS purl
K 1 row.
  > 8 Piece/body 3 RS knit
Repeat these 2 rows for 3 cm, ending with Row 2.
  > 8
  > ✗ place not known @5:1
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 8}, RS: 3 stocking 4 mm; hold
`),
  )('come out as $title', expectAnnotated);
});
