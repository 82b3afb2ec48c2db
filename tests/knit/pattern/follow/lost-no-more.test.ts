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

### a second ball parts a row in two, and both sides go on
Cast on 20 sts. Knit 3 rows.
  > 20 Piece/body 1 RS knit · WS knit · RS knit
Next row: K8; join a second ball of yarn and knit to end.
  > 20 Piece/body 4 WS k8, knit to end
Knit 3 rows.
  > 20→12 Piece/right side 1 RS knit · WS knit · RS knit · Piece/left side 1 RS knit · WS knit · RS knit
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 20}, RS: 3 garter 4 mm; 1 garter 4 mm; split
  > =   right side from {part body, stitches 12, edge right}, RS: 3 garter 4 mm; hold
  > =   left side from {part body, stitches 8, edge left}, RS: 3 garter 4 mm; hold

### and is shaped at either side of where it was parted
Cast on 20 sts. Knit 4 rows.
  > 20 Piece/body 1 RS knit · WS knit · RS knit · WS knit
Work 8 sts; join another ball of yarn and work to end.
  > 20 Piece/body 5 RS knit
Dec 1 st at each neck edge every row twice.
  > 20→10 Piece/left side 1 WS knit to last 2 sts, dec (11) · RS dec, knit to end (10) · Piece/right side 1 WS dec, knit to end (7) · RS k5, dec (6)
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 1 garter 4 mm; split
  > =   left side from {part body, stitches 12, edge left}, WS: 2 garter 4 mm; hold
  > =   right side from {part body, stitches 8, edge right}, WS: 2 garter 4 mm; hold

### one of two told sides is not worked again
Cast on 20 sts. Knit 4 rows.
  > 20 Piece/body 1 RS knit · WS knit · RS knit · WS knit
Next row: K to last 10 sts, join another ball of yarn, k to end.
  > 20 Piece/body 5 RS knit to last 10 sts, knit to end
Left side: Knit 3 rows. Bind off.
  > 20→0 Piece/left side 1 WS knit · RS knit · WS knit · RS bind off all sts in pattern (0)
Right side: Knit 2 rows. Bind off.
  > 10→0 Piece/right side 1 WS knit · RS knit · WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 1 2 3 4
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 1 garter 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: 3 'left side' in garter 4 mm; bind off
  > =   right side from {part body, stitches 10, edge right}, WS: 2 'right side' in garter 4 mm; bind off

### another colour parts nothing
Cast on 20 sts. Knit 4 rows.
  > 20 Piece/body 1 RS knit · WS knit · RS knit · WS knit
Next row: With MC k10, join another ball of yarn, with B k to end.
  > 20 Piece/body 5 RS k10, knit to end 'Next row: With MC k10, join another ball of yarn, with B k to end'
Next row: K10, join the yarn, k to end.
  > 20 Piece/body 6 WS k10, knit to end
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 2 garter 4 mm (own words 1); hold

### in pattern behind a repeat that nobody understood
Cast on 12 sts.
  > →12
Row 1: *K1, p1; rep from * to end.
  > 12 Piece/body 1 RS *k1, p1; repeat from * to end
Row 2: P.
  > 12 Piece/body 2 WS purl
Row 3: *K2, p2; rep from * to end.
  > 12 Piece/body 3 RS *k2, p2; repeat from * to end
Row 4: P.
  > 12 Piece/body 4 WS purl
Repeat rows 1-4 as the mood of your fancy takes you.
  > own words 12 asks the count Piece/body 5 RS work in pattern 'Repeat rows 1-4 as the mood of your fancy takes you'
  > ✗ stitch or repeat expected @6:24 column 24
Work 3 rows in pattern.
  > 12 Piece/body 6 WS work in pattern · RS work in pattern · WS work in pattern
Row 2: P.
  > 12 Piece/body 9 RS purl
Work 3 rows in pattern.
  > 12 Piece/body 10 WS *k2, p2; repeat from * to end · RS purl · WS *k1, p1; repeat from * to end
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9
  > =   body from {castOn 12}, RS: 1 rib in rib 1x1 4 mm; 1 stocking 4 mm; 1 rib in rib 2x2 4 mm; 2 stocking 4 mm (own words 2); 4 pattern in stocking 4 mm; 3 pattern in stocking 4 mm; hold
`),
  )('$title', expectAnnotated);
});
