import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of magazines, leaflets and yarn companies since 1940, put into other words; counts reckoned by hand. */
describe('stripes as prose, followed row by row,', () => {
  it.each(
    annotatedIn(`
### stripes from here on
Cast on 20 sts.
  > →20
Work 4 rows A, 2 rows B throughout.
  > 20
Work 9 rows in st st.
  > 20 Piece/body 1 RS knit · [WS purl · RS knit] ×4
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 4 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 3 'stocking, A' in stocking 4 mm; hold

### stripes of the rows that are named
Cast on 20 sts.
  > →20
Work 8 rows in st st in stripes of 2 rows A and 2 rows B.
  > 20 Piece/body 1 RS knit · [WS purl · RS knit] ×3 · WS purl
With A, k 2 rows.
  > 20 Piece/body 9 RS knit · WS knit
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 2 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm; hold

### so many rows of each yarn
Cast on 20 sts.
  > →20
Work in st st in stripes of 2 rows each of A, B and C for 10 rows.
  > 20 Piece/body 1 RS knit · [WS purl · RS knit] ×4 · WS purl
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 2 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 2 'stocking, C' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; hold

### they begin with 'as follows', and the rows behind them go on
Cast on 20 sts.
  > →20
Work in striped pattern as follows: 2 rows MC, 2 rows CC.
  > 20
Work 6 rows.
  > 20 Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 2 'stocking, MC' in stocking 4 mm; 2 'stocking, CC' in stocking 4 mm; 2 'stocking, MC' in stocking 4 mm; hold

### defined once and named later, for each piece from its first row
Stripe pattern: 2 rows A, 1 row B.
Back
  > heading
Cast on 20 sts.
  > →20
Work 4 rows in st st in stripe pattern.
  > 20 Back/body 1 RS knit · WS purl · RS knit · WS purl
Bind off.
  > 20→0 Back/body 5 RS bind off all sts in pattern (0)
Front
  > heading
Cast on 20 sts.
  > →20
Cont in st st and stripe pattern for 5 rows.
  > 20 Front/body 1 RS knit · [WS purl · RS knit] ×2
  > = Back, back, 1 to make, lines 4 5
  > =   body from {castOn 20}, RS: 2 'stocking, A' in stocking 4 mm; 1 'stocking, B' in stocking 4 mm; 1 'stocking, A' in stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 8
  > =   body from {castOn 20}, RS: 2 'stocking, A' in stocking 4 mm; 1 'stocking, B' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm; hold

### defined on several lines, and for all that is cast on below
Stripe Sequence
4 rows A
2 rows B
  > lines 2 to 3
Rep these 6 rows.
Keeping to the stripe sequence throughout, work as follows.
With A, cast on 20 sts.
  > →20
Work 7 rows in st st.
  > 20 Piece/body 1 RS knit · [WS purl · RS knit] ×3
  > = Piece, other, 1 to make, lines 6
  > =   body from {castOn 20}, RS: 4 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 1 'stocking, A' in stocking 4 mm; hold

### defined in sentences
Stripe Pat: With A, work 3 rows. With B, work 2 rows. These 5 rows form Stripe Pat.
Cast on 20 sts.
  > →20
Work in Stripe Pat for 6 rows.
  > 20 Piece/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 3 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 1 'stocking, A' in stocking 4 mm; hold

### a length has them all in its name
Cast on 20 sts.
  > →20
Work in st st in stripes of 2 rows yarn A and 4 rows yarn B until work measures 10 cm.
  > 20 as long as she likes: 2 rows Piece/body 1 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 2 'stocking, 2 A, 4 B' in stocking 4 mm (length {id 'piece/1', open, mm 100, from start}); hold

### rows that were spelled out in their yarns go on
Cast on 20 sts.
  > →20
Beg with a k row work in st st, working stripes as follows:
  > 20
2 rows B
  > 20 Piece/body 1 RS knit · WS purl
1 row A
  > 20 Piece/body 3 RS knit
Continue in stripes as set for 4 rows.
  > 20 Piece/body 4 WS purl · RS knit · WS purl · RS knit
  > = Piece, other, 1 to make, lines 3 4 5
  > =   body from {castOn 20}, RS: 2 'stocking, B' in stocking 4 mm; 1 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 1 'stocking, A' in stocking 4 mm; 1 'stocking, B' in stocking 4 mm; hold

### kept while the edges are shaped, and where the piece is parted
Cast on 20 sts.
  > →20
Work in st st in stripes of 2 rows A and 2 rows B for 3 rows.
  > 20 Piece/body 1 RS knit · WS purl · RS knit
Keeping stripe pattern correct, dec 1 st at each end of next 2 rows.
  > 20→16 Piece/body 4 WS dec, purl to last 2 sts, dec (18) · RS dec, knit to last 2 sts, dec (16)
Next row: k 8, turn and work on these sts for 2 rows.
  > 16→8 Piece/left side 1 WS k8 · RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 2 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 1 'stocking, A' in stocking 4 mm; split
  > =   left side from {part body, stitches 8, edge left}, WS: 1 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 8, edge right}, WS: hold

### rows of a stitch pattern are its stripes
Stripe Pattern
Row 1 (RS): With A, knit.
Row 2: With B, purl.
Back
  > heading
Cast on 20 sts.
  > →20
Work in stripe pattern for 3 rows.
  > 20 Back/body 1 RS knit 'Row 1 (RS): With A, knit' · WS purl 'Row 2: With B, purl' · RS knit 'Row 1 (RS): With A, knit'
  > = pattern stripe of 1 plus 0 over 2: knit (2) · purl (2)
  > = Back, back, 1 to make, lines 6
  > =   body from {castOn 20}, RS: 3 stripe in stocking 4 mm (own words 1 2 3); hold

### they count otherwise than they say
Stripe pattern: 4 rows A, 2 rows B. These 8 rows form stripe pattern.
  > ✗ rows already worked @1:37 workedRows 6, rows 8
Cast on 20 sts.
  > →20
Work 3 rows in stripe pattern.
  > 20 Piece/body 1 RS knit · WS purl · RS knit
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 3 'stocking, A' in stocking 4 mm; hold

### nobody knows them
Cast on 20 sts.
  > →20
Work in stripe pattern for 3 rows.
  > 20 Piece/body 1 RS knit · WS purl · RS knit
  > ✗ row not known @2:1 rowName stripe
Keeping stripes correct, dec 1 st at each end of next row.
  > 20→18 Piece/body 4 WS dec, purl to last 2 sts, dec (18)
  > ✗ row not known @3:1 rowName stripe
Work in stripes of 2 rows mud and 2 rows sky for 4 rows.
  > own words 18 asks the count Piece/body 5 RS work in pattern 'Work in stripes of 2 rows mud and 2 rows sky for 4 rows' · WS work in pattern 'Work in stripes of 2 rows mud and 2 rows sky for 4 rows' · RS work in pattern 'Work in stripes of 2 rows mud and 2 rows sky for 4 rows' · WS work in pattern 'Work in stripes of 2 rows mud and 2 rows sky for 4 rows'
  > ✗ stitch or repeat expected @4:1 column 1
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 8 stocking 4 mm (own words 5 6 7 8); hold

### so many rows in one yarn are no stripes
Cast on 20 sts.
  > →20
Work 4 rows in A.
  > 20 Piece/body 1 RS knit · WS purl · RS knit · WS purl
Work 2 rows in B, 3 rows in A.
  > 20 Piece/body 5 RS knit · [WS purl · RS knit] ×2
Work 2 rows.
  > 20 Piece/body 10 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 4 'stocking, A' in stocking 4 mm; 2 'stocking, B' in stocking 4 mm; 5 'stocking, A' in stocking 4 mm; hold
    `),
  )('comes out as $title', expectAnnotated);
});
