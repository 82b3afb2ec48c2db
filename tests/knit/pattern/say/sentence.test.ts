import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('sentence, in all its wordings,', () => {
  it.each(
    table(`
      Cast on 92 sts, k 1 row; p 1 row: turn - turn and turn then turn . turn ) turn ] turn while turn but turn now turn also turn / turn → cast on: stitches 92 | @17 rows: n 1, items 'k to {left 'what follows'}' | @26 rows: n 1, items 'p to {left 'what follows'}' | @35 turn | @42 turn | @51 turn | @61 turn | @68 turn | @75 turn | @82 turn | @93 turn | @102 turn | @111 turn | @121 turn | @128 turn
      *Dec 1 st at each end of next row, k 1 row; rep from * 2 times more → @2 shape: change -1, edge both, beats [{first 1, every 1, times 1}] | @36 rows: n 1, items 'k to {left 'what follows'}' | @2 shape: change -1, edge both, beats [{first 1, every 1, times 1}] | @36 rows: n 1, items 'k to {left 'what follows'}' | @2 shape: change -1, edge both, beats [{first 1, every 1, times 1}] | @36 rows: n 1, items 'k to {left 'what follows'}'
      *Dec 1 st at each end of next row, k 1 row; rep {from *|between *|between * *|*} twice → @2 shape: change -1, edge both, beats [{first 1, every 1, times 1}] | @36 rows: n 1, items 'k to {left 'what follows'}' | @2 shape: change -1, edge both, beats [{first 1, every 1, times 1}] | @36 rows: n 1, items 'k to {left 'what follows'}' | @2 shape: change -1, edge both, beats [{first 1, every 1, times 1}] | @36 rows: n 1, items 'k to {left 'what follows'}'
      *K 1 row, p 1 row; rep from * 3 times in all → @2 rows: n 1, items 'k to {left 'what follows'}' | @11 rows: n 1, items 'p to {left 'what follows'}' | @2 rows: n 1, items 'k to {left 'what follows'}' | @11 rows: n 1, items 'p to {left 'what follows'}' | @2 rows: n 1, items 'k to {left 'what follows'}' | @11 rows: n 1, items 'p to {left 'what follows'}'
      *K 1 row, p 1 row; rep from * 3 times in all (24 sts) → @2 rows: n 1, items 'k to {left 'what follows'}' | @11 rows: n 1, items 'p to {left 'what follows'}' | @2 rows: n 1, items 'k to {left 'what follows'}' | @11 rows: n 1, items 'p to {left 'what follows'}' | @2 rows: n 1, items 'k to {left 'what follows'}' | @11 rows: n 1, items 'p to {left 'what follows'}' (24)
      *K 1 row, p 1 row*, rep from * to * twice → star | @2 rows: n 1, items 'k to {left 'what follows'}' | @11 rows: n 1, items 'p to {left 'what follows'}' | @21 repeat from stars: stars 1, times 2
      *K1, p1; rep from * to end → row: items '(k, p) to {left 0}'
      *{K|Knit} 2, rep from * to end → row: items '(k ×2) to {left 0}'
      *{P|Purl} 2, rep from * to end → row: items '(p ×2) to {left 0}'
      *yo, k2tog; rep from * to end → row: items '(yo, k2tog) to {left 0}'
      *sl 1, k1; rep from * to end → row: items '(sl, k) to {left 0}'
      *(k1, p1) twice; rep from * to end → row: items '((k, p) ×2) to {left 0}'
      *[k1, p1] twice; rep from * to end → row: items '((k, p) ×2) to {left 0}'
      *ssk, k1; rep from * to end → row: items '(ssk, k) to {left 0}'
      *skp, k1; rep from * to end → row: items '(skp, k) to {left 0}'
      *K 2 rows, p 2 rows; rep from * twice → @2 rows: n 2, items 'k to {left 'what follows'}' | @12 rows: n 2, items 'p to {left 'what follows'}' | @2 rows: n 2, items 'k to {left 'what follows'}' | @12 rows: n 2, items 'p to {left 'what follows'}' | @2 rows: n 2, items 'k to {left 'what follows'}' | @12 rows: n 2, items 'p to {left 'what follows'}'
      *m1, k1; rep from * to end → row: items '(m1, k) to {left 0}'
      Shaping sides by dec 1 st at each end of next row → @18 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Shaping side seams by dec 1 st at each end of next row → @23 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Shaping armhole at sides: dec 1 st at each end of next row → @27 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Shaping : dec 1 st at each end of next row → heading: title {words shaping, pattern shaping, divides false}, sideOnly false, talk false, places [] | @11 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Shape sides of it all by dec 1 st at each end of next row → @26 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      (K 1 row, p 1 row) twice → @2 rows: n 1, items 'k to {left 'what follows'}' | @11 rows: n 1, items 'p to {left 'what follows'}' | @20 repeat rows: last 2, times 1
      [P 1 row, k 1 row] twice → @2 rows: n 1, items 'p to {left 'what follows'}' | @11 rows: n 1, items 'k to {left 'what follows'}' | @20 repeat rows: last 2, times 1
      (K 1 row, p 1 row) → @2 rows: n 1, items 'k to {left 'what follows'}' | @11 rows: n 1, items 'p to {left 'what follows'}'
      (K2, p2) twice → row: items '(k ×2, p ×2) ×2'
      Work 6 rows even, 24 sts → even: until {rows, n 6} (24)
      Multiple of 8: k2 → multiple: of 8, plus 0, name '' | @16 row: items 'k ×2'
      Basket pattern (multiple of 4): k1, p1 → multiple: of 4, plus 0, name basket | @33 row: items 'k, p'
      5 sts make 1 inch, 7 rows make 1 inch → gauge: stitches 19.68503937007874, rows 27.559055118110237
      {(K|[K} 2 rows, p 2 rows) twice → @2 rows: n 2, items 'k to {left 'what follows'}' | @12 rows: n 2, items 'p to {left 'what follows'}' | @22 repeat rows: last 4, times 1
      (P 2 rows, p 2 rows) twice → @2 rows: n 2, items 'p to {left 'what follows'}' | @12 rows: n 2, items 'p to {left 'what follows'}' | @22 repeat rows: last 4, times 1
      K 1 row and p 1 row while turn → rows: n 1, items 'k to {left 'what follows'}' | @13 rows: n 1, items 'p to {left 'what follows'}' | @27 turn
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      *K 1 row; rep from * 201 times → star | @2 rows: n 1, items 'k to {left 'what follows'}' | ✗ nothing before the repeat @22
      K 1 row, *p 1 row, turn; rep from * once → rows: n 1, items 'k to {left 'what follows'}' | @11 rows: n 1, items 'p to {left 'what follows'}' | @20 turn | @11 rows: n 1, items 'p to {left 'what follows'}' | @20 turn
      K 1 row, * p 1 row; rep from * once; rep from * once → rows: n 1, items 'k to {left 'what follows'}' | @12 rows: n 1, items 'p to {left 'what follows'}' | @12 rows: n 1, items 'p to {left 'what follows'}' | @38 repeat from stars: stars 1, times 1
      K 1 row, rep from * 3 times → rows: n 1, items 'k to {left 'what follows'}' | @10 repeat from stars: stars 1, times 3
      Shape sides and of it all by dec 1 st at each end of next row → ✗ stitch or repeat expected @1
      Gauge → ✗ stitch or repeat expected @1
      5 sts, k 1 row → ✗ stitch or repeat expected @1
      5 sts = k → ✗ stitch or repeat expected @1
      5 inch, k 1 row → ✗ stitch or repeat expected @1
      Back: Front: Sleeve: Collar: → heading: title {words back, pattern back, divides false}, sideOnly false, talk false, places [], piece {name back, makes 1} | @7 heading: title {words front, pattern front, divides false}, sideOnly false, talk false, places [], piece {name front, makes 1} | @14 heading: title {words sleeve, pattern sleeve, divides false}, sideOnly false, talk false, places [], piece {name sleeve, makes 1} | ✗ stitch or repeat expected @22
      (K row, p row) → row: items 'k, p'
      (K 1, p row) → row: items 'k, p'
    `),
  )('is not read for more than it says: $line', expectReading);
});
