import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('pick up, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a band of its own
BACK
  > heading
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Back/body 1 RS knit
Bind off.
  > 20→0 Back/body 2 WS bind off all sts in pattern (0)
NECKBAND
  > heading
Pick up and k 10 sts along left neck, k 4 from holder, pick up 0 sts at front.
  > →14
Work 2 rows in k1, p1 rib.
  > 14 Neckband/body 1 WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end
Work even until piece measures 2 cm from pick-up row.
  > 14 as long as she likes: 3 rows Neckband/body 3 WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Bind off.
  > 14→0 Neckband/body 6 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; bind off
  > = Neckband, neckband, 1 to make, lines 7 8 9
  > =   body from {pickUp [{stitches 10, along 'left neck'}; {stitches 4, along holder, held}]}, WS: 2 rib in rib 1x1 4 mm; 3 rib in rib 1x1 4 mm (length {id 'neckband/1', open, mm 20, from marker}); bind off

### a band of the piece in hand
BACK
  > heading
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Back/body 1 RS knit
Pick up 10 sts along neck.
  > 20→10
K 1 row.
  > 10 Back/band 1 WS knit
Pick up 8 sts along neck.
  > 10→8
K 1 row.
  > 8 Back/band 2 1 WS knit
  > = Back, back, 1 to make, lines 3 5 7
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; hold
  > =   band from {pickUp [{stitches 10, along neck}]}, WS: 1 stocking 4 mm; hold
  > =   band 2 from {pickUp [{stitches 8, along neck}]}, WS: 1 stocking 4 mm; hold

### below a heading that is no piece's
BACK
  > heading
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Back/body 1 RS knit
Bind off.
  > 20→0 Back/body 2 WS bind off all sts in pattern (0)
Shape collar
  > heading →0
Pick up 10 sts along neck.
  > →10
K 1 row.
  > 10 Shape collar/body 1 WS knit
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; bind off
  > = Shape collar, neckband, 1 to make, lines 7
  > =   body from {pickUp [{stitches 10, along neck}]}, WS: 1 'shape collar' in stocking 4 mm; hold

### before any piece
FINISHING
  > heading
Pick up 10 sts along neck.
  > →10
K 1 row.
  > 10 Finishing/body 1 WS knit
  > = Finishing, other, 1 to make, lines 3
  > =   body from {pickUp [{stitches 10, along neck}]}, WS: 1 finishing in stocking 4 mm; hold

### more than a needle holds
Pick up 2001 sts along neck.
  > ✗ too many stitches @1:1 stitches 2001
K 1 row.
  > ✗ nothing on the needle @2:1

### a band while the piece is on the needle
BACK
  > heading
Cast on 20 sts.
  > →20
K 1 row.
  > 20 Back/body 1 RS knit
NECKBAND
  > heading 20
Pick up 10 sts along neck.
  > 20→10
K 1 row.
  > 10 Neckband/body 1 WS knit
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; hold
  > = Neckband, neckband, 1 to make, lines 6
  > =   body from {pickUp [{stitches 10, along neck}]}, WS: 1 stocking 4 mm; hold
`),
  )('comes out as $title', expectAnnotated);
});
