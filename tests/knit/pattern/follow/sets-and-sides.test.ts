import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts reckoned by hand. */
describe('which stitches, which side, which needle, followed row by row,', () => {
  it.each(
    annotatedIn(`
### needles as thick as there are
Cast on 20 sts.
  > →20
Change to 1 mm needles and work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Change to 39 mm needles and work 2 rows in st st.
  > 20 Piece/body 3 RS knit · WS purl
Change to 40 mm needles and work 2 rows in st st.
  > 20 Piece/body 5 RS knit · WS purl
Change to 0 mm needles and work 2 rows in st st.
  > 20 Piece/body 7 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 2 stocking 1 mm; 2 stocking 39 mm; 2 stocking 39 mm; 2 stocking 39 mm; hold

### another yarn begins a section of its own, the same one none
Cast on 20 sts.
  > →20
With MC, work 4 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl · RS knit · WS purl
With MC, work 2 rows in st st.
  > 20 Piece/body 5 RS knit · WS purl
With white, work 2 rows in st st.
  > 20 Piece/body 7 RS knit · WS purl
With MC, k 2 rows.
  > 20 Piece/body 9 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 6 'stocking, MC' in stocking 4 mm; 2 'stocking, white' in stocking 4 mm; 2 'stocking, MC' in stocking 4 mm; hold

### a side that is said otherwise
Cast on 20 sts.
  > →20
Work 3 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl · RS knit
Work 2 rows in st st, noting that first row is a RS row.
  > 20 Piece/body 4 WS purl · RS knit
  > ✗ side differs @3:23 saidSide RS, foundSide WS
Work 2 rows in st st, first row is a RS row.
  > 20 Piece/body 6 WS purl · RS knit
  > ✗ side differs @4:23 saidSide RS, foundSide WS
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; hold

### the first row lies on either side
Cast on 20 sts.
  > →20
Work 2 rows in st st, noting that first row is a WS row.
  > 20 Piece/body 1 WS purl · RS knit
Work 2 rows in st st, noting that first row is a WS row.
  > 20 Piece/body 3 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, WS: 4 stocking 4 mm; hold

### a length that is left open takes a row more for the side that is said {"gauge":{"stitches":20,"rows":28}}
Cast on 20 sts.
  > →20
Work in st st until piece measures 5 cm.
  > 20 long: 14 rows Piece/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl
Next row (RS): K to end.
  > 20 Piece/body 15 RS knit
Work in st st until piece measures 8 cm, ending with a WS row.
  > 20 long: 7 rows Piece/body 16 WS purl · [RS knit · WS purl] ×3
Next row (WS): P to end.
  > 20 Piece/body 23 RS purl
  > ✗ side differs @5:1 saidSide WS, foundSide RS
Work in garter st until piece measures 9 cm.
  > 20 long: 3 rows Piece/body 24 WS knit · RS knit · WS knit
Beg with a k row, work 2 rows in st st.
  > 20 Piece/body 27 RS knit · WS purl
Beg with a p row, work 2 rows in st st.
  > 20 Piece/body 29 RS purl · WS knit
  > = gauge stitches 20, rows 28
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8
  > =   body from {castOn 20}, RS: 14 stocking 4 mm (length {id 'piece/1', open false, mm 50, from start}); 1 stocking 4 mm; 7 stocking 4 mm (length {id 'piece/2', open false, mm 80, endSide WS, from start}); 1 reverse stocking 4 mm; 3 garter 4 mm (length {id 'piece/3', open false, mm 90, from start}); 2 stocking 4 mm; 2 reverse stocking 4 mm; hold

### a side differs where no length is open
Cast on 20 sts.
  > →20
Work 3 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl · RS knit
Next row (RS): K to end.
  > 20 Piece/body 4 WS knit
  > ✗ side differs @3:1 saidSide RS, foundSide WS
Next row (RS): K to end.
  > 20 Piece/body 5 RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 5 stocking 4 mm; hold

### sets of stitches that are worked on
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Work on first 18 sts only.
  > 40→18
Work 2 rows in st st.
  > 18 Piece/right side 1 RS knit · WS purl
Bind off.
  > 18→0 Piece/right side 3 RS bind off all sts in pattern (0)
Rejoin yarn to rem sts and work 2 rows in st st.
  > 22 Piece/left side 1 RS knit · WS purl
Bind off.
  > 22→0 Piece/left side 3 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 4 5 6 7
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 18, edge right}, RS: 2 stocking 4 mm; bind off
  > =   left side from {part body, stitches 22, edge left}, RS: 2 stocking 4 mm; bind off

### the last ones first
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Working on last 18 sts only, work 2 rows in st st.
  > 40→18 Piece/left side 1 RS knit · WS purl
Bind off.
  > 18→0 Piece/left side 3 RS bind off all sts in pattern (0)
Rejoin yarn to rem sts and work 2 rows in st st.
  > 22 Piece/right side 1 RS knit · WS purl
Bind off.
  > 22→0 Piece/right side 3 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   left side from {part body, stitches 18, edge left}, RS: 2 stocking 4 mm; bind off
  > =   right side from {part body, stitches 22, edge right}, RS: 2 stocking 4 mm; bind off

### beside a gap
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Next row: K15, bind off 10 sts, k to end.
  > 40→30 Piece/body 3 RS k15, bind off 10 sts, knit to end (30)
Work on first 15 sts only.
  > 30→15
Work 2 rows in st st.
  > 15 Piece/right side 1 WS purl · RS knit
Bind off.
  > 15→0 Piece/right side 3 WS bind off all sts in pattern (0)
Rejoin yarn to rem sts and work 2 rows in st st.
  > 15 Piece/left side 1 WS purl · RS knit
Bind off.
  > 15→0 Piece/left side 3 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 5 6 7 8
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; split
  > =   right side from {part body, stitches 15, edge right}, WS: 2 stocking 4 mm; bind off
  > =   left side from {part body, stitches 15, edge left}, WS: 2 stocking 4 mm; bind off

### beside a gap, by their count
Cast on 41 sts.
  > →41
Work 2 rows in st st.
  > 41 Piece/body 1 RS knit · WS purl
Next row: K15, bind off 10 sts, k to end.
  > 41→31 Piece/body 3 RS k15, bind off 10 sts, knit to end (31)
Work on 16 sts only.
  > 31→16
Work 2 rows in st st.
  > 16 Piece/left side 1 WS purl · RS knit
Bind off.
  > 16→0 Piece/left side 3 WS bind off all sts in pattern (0)
Work on 15 sts.
  > →15
Work 2 rows in st st.
  > 15 Piece/right side 1 WS purl · RS knit
Bind off.
  > 15→0 Piece/right side 3 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 5 6 8 9
  > =   body from {castOn 41}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 16, edge left}, WS: 2 stocking 4 mm; bind off
  > =   right side from {part body, stitches 15, edge right}, WS: 2 stocking 4 mm; bind off

### beside a gap, by another count
Cast on 41 sts.
  > →41
Work 2 rows in st st.
  > 41 Piece/body 1 RS knit · WS purl
Next row: K15, bind off 10 sts, k to end.
  > 41→31 Piece/body 3 RS k15, bind off 10 sts, knit to end (31)
Work on these 14 sts only.
  > 31→16
  > ✗ count contradicts @4:1 statedStitches 14, foundStitches 16
Work 2 rows in st st.
  > 16 Piece/left side 1 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3 5
  > =   body from {castOn 41}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 16, edge left}, WS: 2 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 15, edge right}, WS: hold

### more than there are, as many as there are, and fewer that are only named
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Work on first 50 sts only.
  > 40
  > ✗ count contradicts @3:1 statedStitches 50, foundStitches 40
Work on first 40 sts only.
  > 40
Working on these 38 sts, work 2 rows in st st.
  > 40 Piece/body 3 RS knit · WS purl
  > ✗ count contradicts @5:1 statedStitches 38, foundStitches 40
Work 2 rows in st st over 38 sts.
  > 40 Piece/body 5 RS knit · WS purl
  > ✗ count contradicts @6:1 statedStitches 38, foundStitches 40
  > = Piece, other, 1 to make, lines 2 5 6
  > =   body from {castOn 40}, RS: 6 stocking 4 mm; hold

### a count that is said while others rest
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Place first 20 sts on holder.
  > 40→20
  > ✗ stitches wait @3:1 stitches 20
Working on these 18 sts, work 2 rows in st st.
  > 20 Piece/left side 1 RS knit · WS purl
  > ✗ count contradicts @4:1 statedStitches 18, foundStitches 20
Bind off.
  > 20→0 Piece/left side 3 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 4 5
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   left side from {part body, stitches 20, edge left}, RS: 2 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 20, edge right}, RS: hold
`),
  )('comes out as $title', expectAnnotated);
});
