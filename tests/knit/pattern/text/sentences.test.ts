import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCut } from './cut.ts';

/** How patterns are usually set: common practice, no published source. */
describe('a line is cut into sentences', () => {
  it.each(
    table(`
      K 1. Next row. Knit to last 4 → k 1 | next row . knit to last 4
      K 1. Next row. Slip 1, k 3 → k 1 | next row . slip 1 , k 3
      K 1. Next row. Purl → k 1 | next row . purl
      Cast on 92 sts. K 1 row. → cast on 92 sts | k 1 row
      Cast on 92 sts! K 1 row? P 1 row → cast on 92 sts | k 1 row | p 1 row
      K2 (p2. k2) to end. P → k 2 ( p 2 . k 2 ) to end | p
      K2 [p2. k2] to end. P → k 2 [ p 2 . k 2 ] to end | p
      K2 {p2. k2} to end. P → k 2 { p 2 . k 2 } to end | p
      K2) p2. k2 → k 2 ) p 2 | k 2
      Cast on 92 sts Row 1: k → cast on 92 sts | row 1 : k
      Cast on 92 sts Row 1: k → cast on 92 sts | row 1 : k
      Cast on 92 sts Rows 1: k → cast on 92 sts | rows 1 : k
      Cast on 92 sts Rnd 1: k → cast on 92 sts | rnd 1 : k
      Cast on 92 sts Rnds 1 and 2: k → cast on 92 sts | rnds 1 and 2 : k
      Cast on 92 sts Next row: k → cast on 92 sts | next row : k
      Cast on 92 sts 2nd row: k → cast on 92 sts | 2 nd row : k
      Cast on 92 sts 2nd and 4th rows: k → cast on 92 sts | 2 nd and 4 th rows : k
      Cast on 92 sts 2nd rnd: k → cast on 92 sts | 2 nd rnd : k
      Row 1: k Row 2: p → row 1 : k | row 2 : p
      Decrease Row (RS): k → decrease row ( rs ) : k
      K2 Decrease Big Fine Row: k → k 2 decrease big fine | row : k
      K2, Row 3: p → k 2 , row 3 : p
      Row 3 to Row 5: k → row 3 to row 5 : k
      And Row 5: k → and row 5 : k
      To Row 5: k → to row 5 : k
      Of Row 5: k → of row 5 : k
      From Row 5: k → from row 5 : k
      Rep Row 5: k → rep row 5 : k
      Repeat Row 5: k → repeat row 5 : k
      Every Row 5: k → every row 5 : k
      At Row 5: k → at row 5 : k
      On Row 5: k → on row 5 : k
      As Row 5: k → as row 5 : k
      Until Row 5: k → until row 5 : k
      End Row 5: k → end row 5 : k
      Beg Row 5: k → beg row 5 : k
      Each Row 5: k → each row 5 : k
      In Row 5: k → in row 5 : k
      With Row 5: k → with row 5 : k
      Last Row 5: k → last row 5 : k
      For Row 5: k → for row 5 : k
      Next Row 5: k → next row 5 : k
      Same Row 5: k → same row 5 : k
      Through Row 5: k → through row 5 : k
      Work Row 5: k → work row 5 : k
      K2 - Row 5: k → k 2 - row 5 : k
      K2 & Row 5: k → k 2 & row 5 : k
      K2 row 5: k → k 2 row 5 : k
      K2 Work 5: k → k 2 work 5 : k
      K2 2 5: k → k 2 2 5 : k
      K2 2nd time: k → k 2 2 nd time : k
      K2 2nd row. K : p → k 2 2 nd row | k : p
      K2 Row 5; k: p → k 2 row 5 ; k : p
      K2 Row 5 * k: p → k 2 row 5 * k : p
      K2 Row 5 of the one big good new: p → k 2 | row 5 of the 1 big good new : p
      K2 Row 5 of the one big good new old: p → k 2 row 5 of the 1 big good new old : p
      . . K2 . → k 2
      (K2 Row 5: p) k → ( k 2 row 5 : p ) k
      ((k2). p2) k. P → ( ( k 2 ) . p 2 ) k | p
      k2) (p2. k3) k → k 2 ) ( p 2 . k 3 ) k
      Good Big Decrease Row: k → good big decrease row : k
      Good Big New Decrease Row: k → good big new decrease | row : k
      Decrease Row 5: k → decrease row 5 : k
      Pattern Row 5: k → pattern | row 5 : k
      2 Row: k → 2 | row : k
      K2 Good Row: k → k 2 good | row : k
      K2 next Row 5: p → k 2 next row 5 : p
      K2 5 row: p → k 2 5 row : p
      K2 Rows: p → k 2 | rows : p
      Next 2nd row: k → next 2 nd row : k
      3rd Row 3: k → 3 rd row 3 : k
      Shape neck: 1st Row: k → shape neck : | 1 st row : k
      1st row.- K → 1 st row . - k
      Next row: cast off 5 sts. Knit to end. 20 sts → next row : cast off 5 sts . knit to end | 20 sts
      Knit. Purl to end → knit | purl to end
      Next 7 Rows: k → next 7 rows : k
      Work in K1.P1 rib. Knit → work in k 1 . p 1 rib | knit
      Work in K.1. P.1. rib. Knit → work in k 1 . p 1 . rib | knit
      K.1. P.1 → k 1 | p 1
      K2 Row row row row: p → k 2 | row row row row : p
    `),
  )('$line', expectCut('sentences'));

  it.each(
    table(`
      1st row: (RS). K2. P → 1 st row : ( rs ) . k 2 | p
      1st row (WS). K2. P → 1 st row ( ws ) . k 2 | p
      1st row [RS]. K2. P → 1 st row [ rs ] . k 2 | p
      1st row: (RS) k. K2. P → 1 st row : ( rs ) k | k 2 | p
      Next row (RS). K2. P → next row ( rs ) . k 2 | p
      Foll row: (WS). K2. P → foll row : ( ws ) . k 2 | p
      Shape neck (RS). K2. P → shape neck ( rs ) | k 2 | p
      2nd and every alt row. P. K → 2 nd and every alt row . p | k
      2nd and every foll alt row. P. K → 2 nd and every foll alt row . p | k
      2nd and all other rows. P. K → 2 nd and all other rows . p | k
      2nd and each even row. Purl. K → 2 nd and each even row . purl | k
      2nd and every ws row. Purl. K → 2 nd and every ws row . purl | k
      2nd and every row. Purl. K → 2 nd and every row | purl | k
      2nd and some alt row. Purl. K → 2 nd and some alt row | purl | k
      Row 1. K2, p2. P → row 1 . k 2 , p 2 | p
      Row 1. Neck. P → row 1 | neck | p
      1st row. K5. purl to end. K → 1 st row . k 5 . purl to end | k
      1st row. K5. Purl to end. K → 1 st row . k 5 | purl to end | k
      1st row. k5. purl to neck. K → 1 st row . k 5 | purl to neck | k
      Shape. K5. purl to end. K → shape | k 5 | purl to end | k
      Row 1: (k1, p1) to end of row Rep row 1 seven times more → row 1 : ( k 1 , p 1 ) to end of row | rep row 1 7 times more
      Row 1: (k1, p1) to end Rep row 1 seven times more → row 1 : ( k 1 , p 1 ) to end | rep row 1 7 times more
      Row 1: (k1, p1) to end rep row 1 seven times more → row 1 : ( k 1 , p 1 ) to end rep row 1 7 times more
      Row 1: (k1, p1) to end Rep from * once → row 1 : ( k 1 , p 1 ) to end rep from * once
      K1, p1 to end Rep row 1 seven times more → k 1 , p 1 to end rep row 1 7 times more
      1st row: *K2, p2. Repeat from * to end. K → 1 st row : * k 2 , p 2 . repeat from * to end | k
      1st row: *K2, p2. Repeat from the * to end. K → 1 st row : * k 2 , p 2 . repeat from the * to end | k
      1st row: *K2, p2. Repeat from ** to end. K → 1 st row : * k 2 , p 2 | repeat from * * to end | k
      *Work 4 rows. Repeat from * twice. K → * work 4 rows | repeat from * twice | k
      *K 4 rows. Repeat from * twice. K → * k 4 rows | repeat from * twice | k
      1st row: K2, p2. Repeat from * to end. K → 1 st row : k 2 , p 2 | repeat from * to end | k
      1st row: *K2, rep from * once, p2. Repeat from * to end. K → 1 st row : * k 2 , rep from * once , p 2 | repeat from * to end | k
      1st row: *K2, p2*. Repeat from * to end. K → 1 st row : * k 2 , p 2 * | repeat from * to end | k
      Knit to last 4 sts. K2tog, yo, k2. P → knit to last 4 sts . k 2 tog , yo , k 2 | p
      Knit to last 4 sts. Ssk, k2. P → knit to last 4 sts . ssk , k 2 | p
      Knit to last st. K1. P → knit to last st . k 1 | p
      Knit to last 4 sts. Knit 4 rows. P → knit to last 4 sts | knit 4 rows | p
      Knit to last 4 rows. K2tog. P → knit to last 4 rows | k 2 tog | p
      Knit to first 4 sts. K2tog. P → knit to first 4 sts | k 2 tog | p
      Work the last 4 sts. K2tog. P → work the last 4 sts | k 2 tog | p
      Next row. Patt to last 10 sts. K → next row . patt to last 10 sts . k
      next row. Patt to last 10 sts. K → next row | patt to last 10 sts . k
      Next row. Shape neck. K → next row | shape neck | k
      Next row: bo 5 sts. Knit to the end. 20 sts → next row : bo 5 sts . knit to the end | 20 sts
      Next row: bind off 5 sts. Work to end. 20 sts → next row : bind off 5 sts . work to end | 20 sts
      Next row: bind off 5 sts. Patt to end. 20 sts → next row : bind off 5 sts . patt to end | 20 sts
      Next row: bind off 5 sts. Rib to the end. 20 sts → next row : bind off 5 sts . rib to the end | 20 sts
      Next row: bind off 5 sts. Rib to the neck. 20 sts → next row : bind off 5 sts | rib to the neck | 20 sts
      Next row: k 5 sts. Rib to the end. 20 sts → next row : k 5 sts | rib to the end | 20 sts
      K in st st. [Size L only: k 2 rows.] Bind off → k in st st | [ size l only : k 2 rows . ] | bind off
      K in st st. (For size L only: k 2 rows) Bind off → k in st st | ( for size l only : k 2 rows ) | bind off
      K in st st. [For size L: k 2 rows] Bind off → k in st st | [ for size l : k 2 rows ] | bind off
      K in st st [size L only]. Bind off → k in st st [ size l only ] | bind off
      K in st st. [Gauge only: k 2 rows.] Bind off → k in st st [ gauge only : k 2 rows . ] bind off
      Work in K1.P1 rib. K → work in k 1 . p 1 rib | k
      Work in K1.P1. K → work in k 1 | p 1 | k
      Work in P2. K2 rib. K → work in p 2 . k 2 rib | k
      Work in K2. rib. K → work in k 2 . rib | k
      K2.P3 in rib. K → k 2 . p 3 in rib | k
    `),
  )('where a stop parts a row, and where it does not: $line', expectCut('sentences'));

  it.each(
    table(`
      Bind off 22 sts; on last 18 sts work for 4 cm. K → bind off 22 sts | on last 18 sts work for 4 cm | k
      Bind off 22 sts, on the last 18 sts work 5 rows. K → bind off 22 sts | on the last 18 sts work 5 rows | k
      K 40 and on the rem 26 sts k 5 ridges. K → k 40 | on the rem 26 sts k 5 ridges | k
      K 40 and on these other 26 sts work even. K → k 40 | on these other 26 sts work even | k
      K 40; over first 26 sts p until even. K → k 40 | over first 26 sts p until even | k
      K 40; on last 26 sts k2tog, p. K → k 40 ; on last 26 sts k 2 tog , p | k
      K 40; on last 26 rows k 5 rows. K → k 40 ; on last 26 rows k 5 rows | k
      K 40; on next 26 sts k 5 rows. K → k 40 ; on next 26 sts k 5 rows | k
      K 40; at last 26 sts k 5 rows. K → k 40 ; at last 26 sts k 5 rows | k
      K 40; on last 26 sts k1, p1, k1, p1, work 5 rows. K → k 40 ; on last 26 sts k 1 , p 1 , k 1 , p 1 , work 5 rows | k
      K 40 sts and work to correspond. K → k 40 sts | work to correspond | k
      K 40 sts and work to correspond with left. K → k 40 sts and work to correspond with left | k
      K 40 sts and work to correspond to left. K → k 40 sts and work to correspond to left | k
      K 40 rows and work to correspond. K → k 40 rows and work to correspond | k
      K 40 and cont on the rem 28 sts as follows. K → k 40 | cont on the rem 28 sts as follows | k
      K 40 and cont work on last 28 sts. K → k 40 | cont work on last 28 sts | k
      K 40 and cont on first 28 sts. K → k 40 | cont on first 28 sts | k
      K 40 and cont on 28 sts. K → k 40 and cont on 28 sts | k
      K 40 and cont in rib, first sts. K → k 40 and cont in rib , first sts | k
    `),
  )('before an order of rows for some of the stitches: $line', expectCut('sentences'));
});
