import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCounts } from './by-counts.ts';

/* Each row in which a count changes, reckoned on paper: behind two rows of a front the next is a right side row, behind one of a back a wrong side row. Common practice, no published source. */

describe('what is shaped at the edges of a front, from a right side row on', () => {
  it.each(
    table(`
      Dec 1 st at neck edge on every 4th row 3 times. → 11 rows: 3 end 29, 7 end 28, 11 end 27
      Dec 1 st at neck edge on every 3rd row 3 times. → 9 rows: 3 end 29, 6 beg 28, 9 end 27
      Dec 1 st at neck edge on next and every foll 3rd row 3 times. → 7 rows: 1 end 29, 4 beg 28, 7 end 27
      Dec 1 st at neck edge on every WS row 3 times. → 6 rows: 2 beg 29, 4 beg 28, 6 beg 27
      Dec 1 st at neck edge on every RS row 3 times. → 5 rows: 1 end 29, 3 end 28, 5 end 27
      Dec 1 st at neck edge every row 3 times, then every RS row twice. → 7 rows: 1 end 29, 2 beg 28, 3 end 27, 5 end 26, 7 end 25
      Dec 1 st at neck edge every row twice, then every RS row twice. → 5 rows: 1 end 29, 2 beg 28, 3 end 27, 5 end 26
      Dec 1 st at neck edge every row 3 times, then every WS row twice. → 6 rows: 1 end 29, 2 beg 28, 3 end 27, 4 beg 26, 6 beg 25
      Dec 1 st at neck edge every other row twice, then every 4th row twice. → 11 rows: 1 end 29, 3 end 28, 7 end 27, 11 end 26
      Dec 1 st at neck edge every row 0 times. → 0 rows
      Dec 1 st at neck edge every other row until 27 sts rem. → 5 rows: 1 end 29, 3 end 28, 5 end 27
      Dec 1 st at neck edge every other row until 30 sts rem. → 0 rows
      Dec 1 st at each end every other row until 27 sts rem. → 1 rows: 1 both 28 ✗ count contradicts
      Inc 1 st at neck edge every other row until there are 33 sts. → 5 rows: 1 end 31, 3 end 32, 5 end 33
      Inc 1 st at each end every other row until there are 33 sts. → 1 rows: 1 both 32 ✗ count contradicts
      Dec 1 st at neck edge alternately every 2nd and 4th row 4 times. → 9 rows: 1 end 29, 3 end 28, 7 end 27, 9 end 26
      Dec 2 sts at neck edge every other row twice. → 3 rows: 1 end 28, 3 end 26
      Bind off 5 sts at armhole edge once, then 3 sts twice. → 5 rows: 1 beg 25, 3 beg 22, 5 beg 19
      Bind off 5 sts at neck edge once, then 3 sts twice. → 6 rows: 2 beg 25, 4 beg 22, 6 beg 19
      Bind off 5 sts at armhole edge every 4th row twice. → 5 rows: 1 beg 25, 5 beg 20
      Bind off 5 sts at beg of next 3 rows. → 3 rows: 1 beg 25, 2 beg 20, 3 beg 15
      Bind off 5 sts at beg of next RS row. → 1 rows: 1 beg 25
      Bind off 5 sts at beg of next WS row. → 2 rows: 2 beg 25
      Bind off 8 sts at armhole edge until 14 sts rem. → 1 rows (own 1) ✗ stitch or repeat expected
      Bind off 8 sts at armhole edge until 15 sts rem. → 1 rows (own 1) ✗ stitch or repeat expected
      Bind off 10 sts at armhole edge 3 times. → 5 rows: 1 beg 20, 3 beg 10, 5 beg 0
      Bind off 12 sts at armhole edge 3 times. → 5 rows: 1 beg 18, 3 beg 6, 5 beg 0 ✗ bound off too many
      Cast on 5 sts at end of next row. → 1 rows: 1 end 35
      Cast on 5 sts at beg of next 2 rows. → 2 rows: 1 beg 35, 2 beg 40
      Cast on 5 sts at armhole edge once. → 1 rows: 1 beg 35
      Cast on 5 sts at armhole edge until there are 40 sts. → 1 rows (own 1) ✗ stitch or repeat expected
      Bind off 0 sts at armhole edge. → 0 rows
      Bind off 6 sts for armhole. → 1 rows: 1 beg 24
      Bind off 6 sts for neck edge. → 2 rows: 2 beg 24
    `),
  )('$line', expectCounts('LEFT FRONT\nCast on 30 sts.\nKnit 2 rows.'));
});

describe('what is shaped at both edges of a back, from a wrong side row on', () => {
  it.each(
    table(`
      Dec 1 st at each end of every 4th row 3 times. → 12 rows: 4 both 28, 8 both 26, 12 both 24
      Dec 1 st at each end of every 3rd row 3 times. → 9 rows: 3 both 28, 6 both 26, 9 both 24
      Dec 1 st at each end of every RS row 3 times. → 6 rows: 2 both 28, 4 both 26, 6 both 24
      Dec 1 st at each end of next row. → 1 rows: 1 both 28
      Dec 1 st at each end of next and foll 4th row. → 5 rows: 1 both 28, 5 both 26
      Dec 1 st at each end of 3rd and 5th rows. → 5 rows: 3 both 28, 5 both 26
      Dec 1 st at each end of 2nd row. → 2 rows: 2 both 28
      Dec 1 st at beg of next row. → 1 rows: 1 beg 29
      Dec 1 st at end of next row. → 1 rows: 1 end 29
      Dec 1 st at end of next 3 rows. → 3 rows: 1 end 29, 2 end 28, 3 end 27
      Dec 1 st at beg of every row 4 times. → 4 rows: 1 beg 29, 2 beg 28, 3 beg 27, 4 beg 26
      Bind off 3 sts at beg of next 2 rows, then 2 sts at beg of foll 2 rows. → 4 rows: 1 beg 27, 2 beg 24, 3 beg 22, 4 beg 20
      Bind off 3 sts at each end of next 2 rows. → 2 rows: 1 beg 27, 2 beg 24
      Bind off 3 sts at each end of every other row twice. → 4 rows: 1 beg 27, 2 beg 24, 3 beg 21, 4 beg 18
      Bind off 6 sts for armhole. → 1 rows (own 1) ✗ stitches left over
      Bind off 15 sts at beg of next 2 rows. → 2 rows: 1 beg 15, 2 beg 0
      Bind off 16 sts at beg of next 2 rows. → 2 rows: 1 beg 14, 2 beg 0 ✗ bound off too many
      Dec 4 sts evenly across next row. → 1 rows: 1 within 26
      Dec 4 sts evenly across next row to 26 sts. → 1 rows: 1 within 26
      Dec 4 sts evenly across next row to 25 sts. → 1 rows: 1 within 26 ✗ count contradicts
      Inc to 36 sts evenly across next row. → 1 rows: 1 within 36
      Dec to 27 sts evenly across next row. → 1 rows: 1 within 27
      Work 6 rows, dec 1 st at each end on every other row. → 6 rows: 2 both 28, 4 both 26, 6 both 24
      Work 4 rows, dec 1 st at each end of 3rd row. → 4 rows: 3 both 28
      Work 4 rows, dec 1 st at each end of next row. → 5 rows: 5 both 28
      Work in st st until there are 34 sts, inc 1 st each end every 4th row. → 8 rows: 4 both 32, 8 both 34
      Work in st st for 6 rows, inc 1 st each end every 4th row. → 6 rows: 4 both 32
      Work 3 rows. Inc 1 st at each end of next row. Work 2 rows. → 6 rows: 4 both 32
      Purl 1 row, inc 1 st at each end. → 1 rows: 1 both 32
      Knit 5 rows, dec 5 sts evenly across last row. → 5 rows: 5 within 25
      K 1 row, inc in every 10th st. → 1 rows: 1 within 33
    `),
  )('$line', expectCounts('BACK\nCast on 30 sts.\nKnit 1 row.'));
});
