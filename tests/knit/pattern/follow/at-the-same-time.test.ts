import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('at the same time, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a shaping from one length to another, beside rows that go on {"gauge": {"stitches": 20, "rows": 20}}
Cast on 40 sts.
  > →40
Work in st st until piece measures 6 cm. At the same time, when piece measures 2 cm, dec 1 st at each end of every row until piece measures 4 cm.
  > 40→32 long: 12 rows Piece/body 1 RS knit · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (38) · WS dec, purl to last 2 sts, dec (36) · RS dec, knit to last 2 sts, dec (34) · WS dec, purl to last 2 sts, dec (32) · [RS knit · WS purl] ×2
Bind off.
  > 32→0 Piece/body 13 RS bind off all sts in pattern (0)
  > = gauge stitches 20, rows 20
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 12 stocking 4 mm (length {id 'piece/3', open false, mm 60, from start}); bind off

### the same where nobody knows how long a row is
Cast on 40 sts.
  > →40
Work in st st until piece measures 6 cm. At the same time, when piece measures 2 cm, dec 1 st at each end of every row until piece measures 4 cm.
  > 40 as long as she likes: 2 rows Piece/body 1 RS knit · WS purl
Bind off.
  > 40→0 Piece/body 3 RS dec, knit to last 2 sts, dec (38) · WS dec, purl to last 2 sts, dec (36) · RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 2 stocking 4 mm (length {id 'piece/3', open, mm 60, from start}); 2 stocking 4 mm; bind off

### a shaping beside, on the same line
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 8 rows in st st, at the same time dec 1 st at neck edge every other row 3 times.
  > 20→17 Left front/body 1 RS knit to last 2 sts, dec (19) · WS purl · RS knit to last 2 sts, dec (18) · WS purl · RS knit to last 2 sts, dec (17) · WS purl · RS knit · WS purl
Work 2 rows.
  > 17 Left front/body 9 RS knit · WS purl
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 10 stocking 4 mm; hold

### a shaping beside, at the head of the next line
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 8 rows in st st.
  > 20→17 Left front/body 1 RS knit to last 2 sts, dec (19) · WS purl · RS knit to last 2 sts, dec (18) · WS purl · RS knit to last 2 sts, dec (17) · WS purl · RS knit · WS purl
At the same time, dec 1 st at neck edge every other row 3 times.
  > talk 17
Work 2 rows.
  > 17 Left front/body 9 RS knit · WS purl
  > = Left front, left front, 1 to make, lines 3 5
  > =   body from {castOn 20}, RS: 10 stocking 4 mm; hold

### two beside each other, the second waiting {"gauge": {"stitches": 20, "rows": 28}}
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Dec 1 st at armhole edge every other row 3 times, at the same time, when piece measures 1 cm, dec 1 st at neck edge every row 4 times.
  > 20→14 Left front/body 1 RS dec, knit to end (19) · WS purl · RS dec, knit to last 2 sts, dec (17) · WS dec, purl to end (16) · RS dec, knit to last 2 sts, dec (14)
Work 6 rows. (13 sts)
  > 14→13 says 13 Left front/body 6 WS dec, purl to end (13) · [RS knit · WS purl] ×2 · RS knit
  > = gauge stitches 20, rows 28
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 11 stocking 4 mm; hold

### beside rows that are spelled out
LEFT FRONT
  > heading
Cast on 12 sts.
  > →12
Row 1: k, at the same time dec 1 st at neck edge every row 3 times.
  > own words 12 asks the count Left front/body 1 RS work in pattern 'Row 1: k, at the same time dec 1 st at neck edge every row 3 times'
  > ✗ stitch or repeat expected @3:11 column 11
Row 2: p1, k to last 2 sts, p2.
  > 12 Left front/body 2 WS p1, knit to last 2 sts, p2
Row 3: k2, p to end.
  > 12 Left front/body 3 RS k2, purl to end
Row 4: k.
  > 12 Left front/body 4 WS knit
  > = Left front, left front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 12}, RS: 1 stocking 4 mm (own words 1); 3 reverse stocking 4 mm; hold

### an increase beside rows that are spelled out
RIGHT FRONT
  > heading
Cast on 12 sts.
  > →12
K 1 row, at the same time inc 1 st at armhole edge every row 3 times.
  > 12→13 Right front/body 1 RS knit to last st, inc (13)
Next row: k1, yo, k to end.
  > 13→15 Right front/body 2 WS inc, yo, knit to end (15)
Next row: p.
  > 15→16 Right front/body 3 RS purl to last st, inc (16)
  > = Right front, right front, 1 to make, lines 3 4 5
  > =   body from {castOn 12}, RS: 1 stocking 4 mm; 2 reverse stocking 4 mm; hold

### counts stated meanwhile are looked at when it has ended
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Work 4 rows in st st (17 sts), at the same time dec 1 st at neck edge every row 3 times.
  > 20→17 says 17 Left front/body 1 RS knit to last 2 sts, dec (19) · WS dec, purl to end (18) · RS knit to last 2 sts, dec (17) · WS purl
Work 2 rows. (17 sts)
  > 17 says 17 Left front/body 5 RS knit · WS purl
Work 2 rows in st st (16 sts), at the same time dec 1 st at neck edge every other row 2 times.
  > 17→16 says 16 Left front/body 7 RS knit to last 2 sts, dec (16) · WS purl
Work 4 rows.
  > 16→15 Left front/body 9 RS knit to last 2 sts, dec (15) · WS purl · RS knit · WS purl
  > = Left front, left front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 12 stocking 4 mm; hold

### with nothing on the needle, or nothing to shape
At the same time dec 1 st at neck edge every row 3 times.
  > ✗ nothing on the needle @1:18
Cast on 20 sts.
  > →20
At the same time, work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
At the same time k 2 rows.
  > 20 Piece/body 3 RS knit · WS knit
  > ✗ place not known @4:1
Bind off.
  > 20→0 Piece/body 5 RS knit to last 2 sts, dec (19) · WS dec, purl to end (18) · RS knit to last 2 sts, dec (17) · WS bind off all sts in pattern (0)
At the same time dec 1 st at neck edge every row 3 times.
  > talk →0
  > = Piece, other, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; bind off

### a waiting one that counts stitches
LEFT FRONT
  > heading
Cast on 20 sts.
  > →20
Dec 1 st at armhole edge every row 4 times, at the same time, when 18 sts remain, dec 1 st at neck edge every row 2 times.
  > 20→14 Left front/body 1 RS dec, knit to end (19) · WS purl to last 2 sts, dec (18) · RS dec, knit to last 2 sts, dec (16) · WS dec, purl to last 2 sts, dec (14)
Work 4 rows.
  > 14 Left front/body 5 RS knit · WS purl · RS knit · WS purl
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 8 stocking 4 mm; hold

### until a count that the shaping beside makes
LEFT FRONT
  > heading
Cast on 12 sts.
  > →12
Work 2 rows in st st, at the same time dec 1 st at neck edge every row 5 times.
  > 12→10 Left front/body 1 RS knit to last 2 sts, dec (11) · WS dec, purl to end (10)
Work even until 7 sts remain.
  > 10→7 Left front/body 3 RS knit to last 2 sts, dec (9) · WS dec, purl to end (8) · RS k6, dec (7)
Work 1 row.
  > 7 Left front/body 6 WS purl
  > = Left front, left front, 1 to make, lines 3 4 5
  > =   body from {castOn 12}, RS: 6 stocking 4 mm; hold

### bound off while a shaping goes on
LEFT FRONT
  > heading
Cast on 12 sts.
  > →12
Bind off 2 sts at armhole edge every other row 2 times, at the same time dec 1 st at neck edge every row 5 times.
  > 12→5 Left front/body 1 RS bind off 2 sts, knit to last 2 sts, dec (9) · WS dec, purl to end (8) · RS bind off 2 sts, k4, dec (5)
Work 2 rows.
  > 5→3 Left front/body 4 WS dec, purl to end (4) · RS k2, dec (3)
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 12}, RS: 5 stocking 4 mm; hold

### a shaping beside that is never done
LEFT FRONT
  > heading
Cast on 4 sts.
  > →4
K 1 row, at the same time dec 1 st at neck edge every row 40 times.
  > 4→3 Left front/body 1 RS k2, dec (3)
Bind off.
  > 3→1 Left front/body 2 WS dec, p1 (2) · RS dec (1)
  > ✗ not enough stitches @4:1 needStitches 2, haveStitches 1
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 4}, RS: 3 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
