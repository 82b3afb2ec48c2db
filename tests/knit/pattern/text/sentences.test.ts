import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCut } from './cut.ts';

/** How patterns are usually set: common practice, no published source. */
describe('a line is cut into sentences', () => {
  it.each(
    table(`
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
});
