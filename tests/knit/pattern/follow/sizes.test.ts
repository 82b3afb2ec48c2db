import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('sizes, followed row by row,', () => {
  it.each(
    annotatedIn(`
### named by ages
SIZES 6-9 (9-12, 12-18) months
  > talk
Cast on 20, (24, 28) sts.
  > →20
Bind off.
  > 20→0 Piece/body 1 RS bind off all sts in pattern (0)
  > = sizes 6-9, 9-12, 12-18: 6-9
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 20}, RS: bind off

### the first {"size": 0}
Sizes: S (M, L)
  > talk
BACK
  > heading
Cast on 20 (24, 28) sts.
  > →20
For size S only: k 1 row.
  > 20 Back/body 1 RS knit
For sizes M and L only: k 2 rows.
  > talk
Sizes S and M: k 1 row.
  > 20 Back/body 2 WS knit
All sizes: p 1 row.
  > 20 Back/body 3 RS purl
2nd size only: k 3 rows.
  > talk
K10 (12, 14, 16), k to end.
  > own words 20 asks the count Back/body 4 WS work in pattern 'K10 (12, 14, 16), k to end'
  > ✗ sizes differ @9:2 sizes 3
  > ✗ stitch or repeat expected @9:6 column 6
Dec 1 st at each end of every 4th (5th, 6th) row twice.
  > 20→16 Back/body 5 RS work in pattern · WS work in pattern · RS dec, work in pattern to last 2 sts, dec (18) · WS work in pattern · RS work in pattern · WS work in pattern · RS dec, work in pattern to last 2 sts, dec (16)
  > = sizes S, M, L: S
  > = Back, back, 1 to make, lines 4 6 7 9 10
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; 2 reverse stocking 4 mm; 1 stocking 4 mm (own words 1); 7 pattern in stocking 4 mm; hold

### the last, asked beyond {"size": 7}
Sizes: S (M, L)
  > talk
BACK
  > heading
Cast on 20 (24, 28) sts.
  > →28
For size S only: k 1 row.
  > talk
For sizes M and L only: k 2 rows.
  > 28 Back/body 1 RS knit · WS knit
Sizes S and M: k 1 row.
  > talk
All sizes: p 1 row.
  > 28 Back/body 3 RS purl
2nd size only: k 3 rows.
  > talk
For 3rd size only: k 3 rows.
  > 28 Back/body 4 WS knit · RS knit · WS knit
  > = sizes S, M, L: L
  > = Back, back, 1 to make, lines 5 7 9
  > =   body from {castOn 28}, RS: 1 stocking 4 mm; 3 reverse stocking 4 mm; 2 stocking 4 mm; hold

### the one between {"size": 1.7}
Directions are for size 12. Changes for sizes 14 and 16 are in parentheses.
  > talk
BACK
  > heading
Cast on 20 (24, 28) sts.
  > →24
2nd size only: k 3 rows.
  > 24 Back/body 1 RS knit · WS knit · RS knit
For size 14 only: k 1 row.
  > 24 Back/body 4 WS knit
  > = sizes 12, 14, 16: 14
  > = Back, back, 1 to make, lines 4 5
  > =   body from {castOn 24}, RS: 3 garter 4 mm; 1 garter 4 mm; hold

### before the first {"size": -2}
To fit bust 80 (90) cm
  > talk
Cast on 20 (24) sts.
  > →20
K 1 row.
  > 20 Piece/body 1 RS knit
  > = sizes 80, 90: 80
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; hold

### of lists without names {"size": 1}
Cast on 20 (24, 28) sts.
  > →24
K 1 row.
  > 24 Piece/body 1 RS knit
  > = sizes 1, 2, 3: 2
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 24}, RS: 1 stocking 4 mm; hold

### of more names than sizes {"size": 1}
Sizes: S (M, L, XL)
  > talk
Cast on 20 (24, 28) sts.
  > →24
K 1 row.
  > 24 Piece/body 1 RS knit
  > = sizes S, M, L: M
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 24}, RS: 1 stocking 4 mm; hold

### of names alone {"size": 1}
Sizes: S, M and L
  > talk
Cast on 20 sts.
  > →20
For size S only: k 1 row.
  > talk
For size M only: p 1 row.
  > 20 Piece/body 1 RS purl
  > = sizes S, M, L: M
  > = Piece, other, 1 to make, lines 4
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
