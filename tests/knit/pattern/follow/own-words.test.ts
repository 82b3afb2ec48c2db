import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('what is not understood, followed row by row,', () => {
  it.each(
    annotatedIn(`
### kept in her own words, with and without the count
Cast on 20 sts.
  > →20
Wibble 3 k sts into one.
  > own words 20 asks the count Piece/body 1 RS work in pattern 'Wibble 3 k sts into one'
  > ✗ stitch or repeat expected @2:1 column 1
Wobble the k sts twice (16 sts).
  > own words 20→16 says 16 Piece/body 2 WS [dec] 4 times, work in pattern to end 'Wobble the k sts twice (16 sts)' (16)
  > ✗ stitch or repeat expected @3:1 column 1
Wobble the k sts (0 sts).
  > own words 16→0 says 0 Piece/body 3 RS bind off all sts in pattern 'Wobble the k sts (0 sts)' (0)
  > ✗ stitch or repeat expected @4:1 column 1
K 1 row.
  > →0
  > ✗ nothing on the needle @5:1
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 1 stocking 4 mm (own words 1); 2 pattern in stocking 4 mm (own words 1 2); bind off

### more stitches, fewer, and far fewer
Cast on 20 sts.
  > →20
Wobble the k sts (24 sts).
  > own words 20→24 says 24 Piece/body 1 RS work in pattern to end, [m1] 4 times 'Wobble the k sts (24 sts)' (24)
  > ✗ stitch or repeat expected @2:1 column 1
Wobble the k sts (20 sts).
  > own words 24→20 says 20 Piece/body 2 WS [dec] 4 times, work in pattern to end 'Wobble the k sts (20 sts)' (20)
  > ✗ stitch or repeat expected @3:1 column 1
Wobble the k sts (6 sts).
  > own words 20→6 says 6 Piece/body 3 RS bind off 14 sts, work in pattern to end 'Wobble the k sts (6 sts)' (6)
  > ✗ stitch or repeat expected @4:1 column 1
Wobble the k sts (4 sts), it is said.
  > own words 6 asks the count Piece/body 4 WS work in pattern 'Wobble the k sts (4 sts), it is said'
  > ✗ stitch or repeat expected @5:1 column 1
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 1 stocking 4 mm (own words 1); 3 pattern in stocking 4 mm (own words 1 2 3); hold

### talk
This is a nice thing.
  > talk
It knits up in 3 days.
  > talk
Cast on 20 sts.
  > →20
She likes it.
  > talk 20
Bind off.
  > 20→0 It knits up in 3 days/body 1 RS bind off all sts in pattern (0)
Wobble the k sts (16 sts).
  > talk →0
Flower
  > talk →0
Cast on 4 sts.
  > →4
  > = It knits up in 3 days, other, 1 to make, lines 5
  > =   body from {castOn 20}, RS: bind off

### the rest of a sentence
Cast on 20 sts.
  > →20
K 1 row, wobble the k sts twice.
  > own words 20 asks the count Piece/body 1 RS knit · WS work in pattern 'wobble the k sts twice'
  > ✗ stitch or repeat expected @2:10 column 10
K 1 row, p 1 row, then work
as the k sts like it.
  > own words lines 3 to 4 20 asks the count Piece/body 3 RS knit · WS purl · RS work in pattern 'work as the k sts like it'
  > ✗ stitch or repeat expected @3:24 column 24
K2, p2, wobble the k sts (12 sts).
  > own words 20→12 says 12 Piece/body 6 WS [dec] 8 times, work in pattern to end 'K2, p2, wobble the k sts (12 sts)' (12)
  > ✗ stitch or repeat expected @5:9 column 9
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 2 stocking 4 mm (own words 2); 4 pattern in stocking 4 mm (own words 3 4); hold

### rows that do not come out
Cast on 20 sts.
  > →20
Next row: k30.
  > 20 asks the count Piece/body 1 RS work in pattern 'Next row: k30'
  > ✗ not enough stitches @2:1 needStitches 30, haveStitches 20
Next row: k30 (18 sts).
  > 20→18 says 18 Piece/body 2 WS [dec] 2 times, work in pattern to end 'Next row: k30 (18 sts)' (18)
  > ✗ not enough stitches @3:1 needStitches 30, haveStitches 20
Row 1 (WS): k30.
  > 18 asks the count Piece/body 3 RS work in pattern 'Row 1 (WS): k30'
  > ✗ not enough stitches @4:1 needStitches 30, haveStitches 18
Dec 1 st at each end of next 2 rows, wobble it.
  > own words 18→14 asks the count Piece/body 4 WS dec, purl to last 2 sts, dec (16) · RS dec, knit to last 2 sts, dec (14) · WS work in pattern 'wobble it'
  > ✗ stitch or repeat expected @5:38 column 38
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 6 stocking 4 mm (own words 1 2 3 6); hold

### counts stated
Cast on 20 sts. (22 sts)
  > →20 says 22
  > ✗ count contradicts @1:1 statedStitches 22, foundStitches 20
K 1 row. (20 sts)
  > 20 says 20 Piece/body 1 RS knit
K 1 row. (22 sts)
  > 20 says 22 Piece/body 2 WS knit
  > ✗ count contradicts @3:10 statedStitches 22, foundStitches 20
Next row: k2tog, k to end. 20 sts.
  > 20→19 says 20 Piece/body 3 RS k2tog, knit to end (19)
  > ✗ count contradicts @4:28 statedStitches 20, foundStitches 19
(24 sts)
  > 19 says 24
  > ✗ count contradicts @5:1 statedStitches 24, foundStitches 19
Next row: k8, bo 2, k to end. (8 sts)
  > 19→17 says 8 Piece/body 4 WS k8, bind off 2 sts, knit to end (17)
Next row: p. (8 sts)
  > 17→9 says 8 Piece/right side 1 RS purl
Next row: k. (9 sts)
  > 9 says 9 Piece/right side 2 WS knit
  > = Piece, other, 1 to make, lines 2 3 4 6 7 8
  > =   body from {castOn 20}, RS: 4 garter 4 mm; split
  > =   right side from {part body, stitches 9, edge right}, RS: 2 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 8, edge left}, RS: hold

### a pattern that she writes herself
Lace pattern
  > talk
Row 1: k, wobble the k sts twice.
  > own words
  > ✗ stitch or repeat expected @2:11 column 11
Row 2: p.
Cast on 4 sts.
  > →4
K 1 row.
  > 4 Lace pattern/body 1 RS knit
  > = pattern lace of 1 plus 0 over 2: work in pattern (2) · purl (2)
  > = Lace pattern, other, 1 to make, lines 5
  > =   body from {castOn 4}, RS: 1 stocking 4 mm; hold

### the half of them, words far apart, and little of knitting
Cast on 20 sts.
  > →20
Wobble the k sts (10 sts).
  > own words 20→10 says 10 Piece/body 1 RS [dec] 10 times, work in pattern to end 'Wobble the k sts (10 sts)' (10)
  > ✗ stitch or repeat expected @2:1 column 1
Next   row:   k30.
  > 10 asks the count Piece/body 2 WS work in pattern 'Next row: k30'
  > ✗ not enough stitches @3:1 needStitches 30, haveStitches 10
K the thing.
  > own words 10
  > ✗ stitch or repeat expected @4:7 column 7
K 3 things.
  > own words 10 asks the count Piece/body 3 RS work in pattern 'K 3 things'
  > ✗ stitch or repeat expected @5:5 column 5
K it, p it.
  > own words 10 asks the count Piece/body 4 WS work in pattern 'K it, p it'
  > ✗ stitch or repeat expected @6:3 column 3
The 3 things.
  > talk 10
  > = Piece, other, 1 to make, lines 2 3 5 6
  > =   body from {castOn 20}, RS: 1 stocking 4 mm (own words 1); 3 pattern in stocking 4 mm (own words 1 2 3); hold
`),
  )('comes out as $title', expectAnnotated);
});
