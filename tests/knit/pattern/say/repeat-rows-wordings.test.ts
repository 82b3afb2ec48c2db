import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('repeat rows, in all its wordings,', () => {
  it.each(
    table(`
      Rep {1st row|the first row} four times → repeat rows: from 1, to 1, times 4
      Repeat the first and second rows 3 times → repeat rows: from 1, to 2, times 3
      Repeat these 2 rows alternately 3 times → repeat rows: last 2, times 3
      {Rep|Repeat|Repeating|Cont to rep|Work to rep|Cont in working} rows 1 to 4 until piece measures 10 cm → repeat rows: from 1, to 4, until {length, mm 100, from start}
      Then rep rows 1 to 4 until piece measures 10 cm → @6 repeat rows: from 1, to 4, until {length, mm 100, from start}
      Rep {rows|from row|the rows|through row|row} 1{ to | - | through | and } 4 → repeat rows: from 1, to 4
      Rep row 2 → repeat rows: from 2, to 2
      Rep {these|the last|last|above|previous|those|preceding|these last} 2 rows 5 times → repeat rows: last 2, times 5
      Rep {last|this|these last} row 5 times → repeat rows: last 1, times 5
      Rep {last|this|these last} rows 5 times → repeat rows: last 0, times 5
      Rep last row → repeat rows: last 1
      Rep these rows 5 times → repeat rows: last 0, times 5
      Rep 1st and 2nd rows 5 times → repeat rows: from 1, to 2, times 5
      Rep 3rd to 6th row → repeat rows: from 3, to 6
      Rep rows 1, 2, 3 and 4 → repeat rows: from 1, to 4
      Rep rows 1, 2 → repeat rows: from 1, to 2
      Rep rows 1 to 4 {of patt|of chart|of the patt|for patt|in patt|inclusive|incl|of rib|throughout} 5 times → repeat rows: from 1, to 4, times 5
      Rep rows 1 to 4, {5 times|5 times more|5 more times} → repeat rows: from 1, to 4, times 5
      Rep rows 1 to 4 {5 times|5 times more|5 more times} → repeat rows: from 1, to 4, times 5
      Rep rows 1 to 4 {twice|2 times} → repeat rows: from 1, to 4, times 2
      Rep rows 1 to 4 5 times in all → repeat rows: from 1, to 4, times 4
      Rep rows 1 to 4 once in all → repeat rows: from 1, to 4, times 0
      Rep rows 1 to 4 5 times{, until 60 sts remain| - until 60 sts remain| until 60 sts remain} → repeat rows: from 1, to 4, times 5
      Rep rows 1 to 4, until 60 sts remain → repeat rows: from 1, to 4, until {count, stitches 60}
      Rep rows 1 to 4 for 10 cm → repeat rows: from 1, to 4, until {length, mm 100, from here}
      {Work|Working|Cont in} rows 1 to 8 twice → repeat rows: from 1, to 8, times 2
      Then work rows 1 to 8 twice → @6 repeat rows: from 1, to 8, times 2
      Work in row 1 to 8 twice → repeat rows: from 1, to 8, times 2
      Rep rows 1 to 2, rows 3 to 4 → repeat rows: from 1, to 2 | @18 repeat rows: from 3, to 4
      K 1 row, p 1 row{ until| alternately until} piece measures 10 cm → even: fabric {named, name stocking}, until {length, mm 100, from start}, firstLooks k
      K 1 row, p 1 row rep until piece measures 10 cm → rows: n 1, items 'k to {left 'what follows'}' | @10 rows: n 1, items 'p to {left 'what follows'}' | @18 repeat rows: last 2, until {length, mm 100, from start}
      K 1 row, p 1 row 5 times → rows: n 1, items 'k to {left 'what follows'}' | @10 rows: n 1, items 'p to {left 'what follows'}' | @18 repeat rows: last 2, times 4
      K 1 row, p 1 row, 5 times more → rows: n 1, items 'k to {left 'what follows'}' | @10 rows: n 1, items 'p to {left 'what follows'}' | @19 repeat rows: last 2, times 5
      K 2 rows, p 2 rows, k 1 row 3 times → rows: n 2, items 'k to {left 'what follows'}' | @11 rows: n 2, items 'p to {left 'what follows'}' | @21 rows: n 1, items 'k to {left 'what follows'}' | @29 repeat rows: last 5, times 2
      K 1 row once → rows: n 1, items 'k to {left 'what follows'}' | @9 repeat rows: last 1, times 0
      K 40 rows 5 times → rows: n 40, items 'k to {left 'what follows'}' | @11 repeat rows: last 40, times 4
      Rep rows 1, 2, 3, 5 times → repeat rows: from 1, to 3, times 5
      Rep row 1 and 2, 5 times → repeat rows: from 1, to 2, times 5
      Rep rows 1 to 4 5 times, until 60 sts remain, turn → repeat rows: from 1, to 4, times 5 | @47 turn
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Rep rows 1 to 4, 5 times, more → repeat rows: from 1, to 4, times 5 | ✗ stitch or repeat expected @27
      Rep rows 1 to 4 5 times, more → repeat rows: from 1, to 4, times 5 | ✗ stitch or repeat expected @26
      Rep rows 1 to 4 5 times, for 6 rows → repeat rows: from 1, to 4, times 5 | ✗ stitch or repeat expected @26
      Rep rows 1 to 2 row 3 → ✗ stitch or repeat expected @21
      K 41 rows 5 times → ✗ stitch or repeat expected @11
      Rep row 1, 2 more times → ✗ stitch or repeat expected @14
      Work last 2 rows → ✗ stitch or repeat expected @1
      Rep from 2 → ✗ nothing before the repeat @10
      Rep 2 5 times → ✗ nothing before the repeat @5
      Work 6 rows 5 times → ✗ stitch or repeat expected @13
      Rep 2½ rows → ✗ nothing before the repeat @5
      Rep rows 1½ to 4 → ✗ nothing before the repeat @5
      Rep rows 1 to 4½ → ✗ nothing before the repeat @5
      Rows 5 to 8 → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
