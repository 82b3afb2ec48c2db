import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of leaflets of several countries: common practice, no published source. */
describe('groups and shapings said as a list,', () => {
  it.each(
    annotatedIn(`
### groups one after the other
Cast on 60 sts.
  > →60
Bind off 3, 2, 1, 1 sts at each side.
  > 60→46 Piece/body 1 RS bind off 3 sts, knit to end (57) · WS bind off 3 sts, purl to end (54) · RS bind off 2 sts, knit to end (52) · WS bind off 2 sts, purl to end (50) · RS bind off 1 st, knit to end (49) · WS bind off 1 st, purl to end (48) · RS bind off 1 st, knit to end (47) · WS bind off 1 st, purl to end (46)
Bind off 2-2-1 sts at beg of next 6 rows.
  > 46→36 Piece/body 9 RS bind off 2 sts, knit to end (44) · WS bind off 2 sts, purl to end (42) · RS bind off 2 sts, knit to end (40) · WS bind off 2 sts, purl to end (38) · RS bind off 1 st, knit to end (37) · WS bind off 1 st, purl to end (36)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 60}, RS: 14 stocking 4 mm; hold

### how often stands before or behind
Cast on 60 sts.
  > →60
Bind off at each side every 2nd row 3 sts once, 2 sts twice.
  > 60→46 Piece/body 1 RS bind off 3 sts, knit to end (57) · WS bind off 3 sts, purl to end (54) · RS bind off 2 sts, knit to end (52) · WS bind off 2 sts, purl to end (50) · RS bind off 2 sts, knit to end (48) · WS bind off 2 sts, purl to end (46)
Bind off at each side: 2 x 2 sts, 1 x 1 st.
  > 46→36 Piece/body 7 RS bind off 2 sts, knit to end (44) · WS bind off 2 sts, purl to end (42) · RS bind off 2 sts, knit to end (40) · WS bind off 2 sts, purl to end (38) · RS bind off 1 st, knit to end (37) · WS bind off 1 st, purl to end (36)
At the beg of the next 4 rows bind off 5 sts, bind off 4 sts at beg of next 2 rows.
  > 36→8 Piece/body 13 RS bind off 5 sts, knit to end (31) · WS bind off 5 sts, purl to end (26) · RS bind off 5 sts, knit to end (21) · WS bind off 5 sts, purl to end (16) · RS bind off 4 sts, knit to end (12) · WS bind off 4 sts, purl to end (8)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 60}, RS: 18 stocking 4 mm; hold

### what is left is bound off once
Cast on 60 sts.
  > →60
Bind off at the beg of the next 4 rows 5 sts, bind off rem 40 sts.
  > 60→0 Piece/body 1 RS bind off 5 sts, knit to end (55) · WS bind off 5 sts, purl to end (50) · RS bind off 5 sts, knit to end (45) · WS bind off 5 sts, purl to end (40) · RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 60}, RS: 4 stocking 4 mm; bind off

### groups that do not share the rows out are told
Cast on 60 sts.
  > →60
Bind off 3, 2, 1 sts at beg of next 4 rows.
  > own words 60 asks the count Piece/body 1 RS work in pattern 'Bind off 3, 2, 1 sts at beg of next 4 rows' · WS work in pattern 'Bind off 3, 2, 1 sts at beg of next 4 rows' · RS work in pattern 'Bind off 3, 2, 1 sts at beg of next 4 rows' · WS work in pattern 'Bind off 3, 2, 1 sts at beg of next 4 rows'
  > ✗ stitch or repeat expected @2:13 column 13
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 60}, RS: 4 stocking 4 mm (own words 1 2 3 4); hold

### numbers that grow may be of sizes
Cast on 60 sts.
  > →60
Bind off 3, 5, 7 sts at beg of next 2 rows.
  > own words 60 asks the count Piece/body 1 RS work in pattern 'Bind off 3, 5, 7 sts at beg of next 2 rows' · WS work in pattern 'Bind off 3, 5, 7 sts at beg of next 2 rows'
  > ✗ stitch or repeat expected @2:13 column 13
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 60}, RS: 2 stocking 4 mm (own words 1 2); hold

### a shaping in one of the rows said before it
Cast on 30 sts.
  > →30
Work 4 rows in st st, dec 1 st at each end of 3rd row. (28 sts)
  > 30→28 says 28 Piece/body 1 RS knit · WS purl · RS dec, knit to last 2 sts, dec (28) · WS purl
Work 4 rows in st st, dec 1 st at each end of next row. (26 sts)
  > 28→26 says 26 Piece/body 5 RS knit · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (26)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 30}, RS: 9 stocking 4 mm; hold

### in which of several rows is told where nobody says it
Cast on 30 sts.
  > →30
Knit 4 rows, decreasing 1 st at each end.
  > own words 30 asks the count Piece/body 1 RS work in pattern 'Knit 4 rows, decreasing 1 st at each end' · WS work in pattern 'Knit 4 rows, decreasing 1 st at each end' · RS work in pattern 'Knit 4 rows, decreasing 1 st at each end' · WS work in pattern 'Knit 4 rows, decreasing 1 st at each end'
  > ✗ stitch or repeat expected @2:41 column 41
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 30}, RS: 4 stocking 4 mm (own words 1 2 3 4); hold

### shaping said once more without its number
Cast on 60 sts.
  > →60
Dec 1 st at each end of next 3 rows, then at each end of every alt row until 48 sts rem.
  > 60→48 Piece/body 1 RS dec, knit to last 2 sts, dec (58) · WS dec, purl to last 2 sts, dec (56) · RS dec, knit to last 2 sts, dec (54) · WS purl · RS dec, knit to last 2 sts, dec (52) · WS purl · RS dec, knit to last 2 sts, dec (50) · WS purl · RS dec, knit to last 2 sts, dec (48)
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 60}, RS: 9 stocking 4 mm; hold

### ridges, and tens in words
Cast on fifty-four sts.
  > →54
Knit twenty two rows.
  > 54 Piece/body 1 RS knit · [WS knit · RS knit] ×10 · WS knit
Decrease 1 stitch each side for 4 ridges. (46 sts)
  > 54→46 says 46 Piece/body 23 RS dec, knit to last 2 sts, dec (52) · WS knit · RS dec, knit to last 2 sts, dec (50) · WS knit · RS dec, knit to last 2 sts, dec (48) · WS knit · RS dec, knit to last 2 sts, dec (46)
Knit two together at the beginning of every row until forty stitches remain.
  > 46→40 Piece/body 30 WS dec, knit to end (45) · RS dec, knit to end (44) · WS dec, knit to end (43) · RS dec, knit to end (42) · WS dec, knit to end (41) · RS dec, knit to end (40)
Narrow 1 st at each end of next row.
  > 40→38 Piece/body 36 WS dec, knit to last 2 sts, dec (38)
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 54}, RS: 22 garter 4 mm; 14 garter 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
