import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('rows that are worked again, in all wordings,', () => {
  it.each(
    table(`
      {Rep|Repeat|Repeating} {rows 1-4|rows 1 to 4|rows 1 through 4|1st to 4th rows|1st-4th rows|rows 1, 2, 3 and 4|from row 1 to row 4} → repeat rows: from 1, to 4
      {Work|Working|Cont|Continue} rows 1 to 4 {twice|2 times} → repeat rows: from 1, to 4, times 2
      Work rows 1 to 4 once → repeat rows: from 1, to 4, times 1
      Cont {to|in} rep rows 1 to 4 → repeat rows: from 1, to 4
      Rep rows 1 to 4, 5 times → repeat rows: from 1, to 4, times 5
      Rep rows 1 to 4 5 times more → repeat rows: from 1, to 4, times 5
      Rep rows 1 to 4 for a total of 5 times → repeat rows: from 1, to 4, times 4
      Rep rows 1 to 4 5 times in all → repeat rows: from 1, to 4, times 4
      Rep the first row → repeat rows: from 1, to 1
      Rep the 2nd row → repeat rows: from 2, to 2
      Rep the fourth row → repeat rows: from 4, to 4
      Rep the first and second rows → repeat rows: from 1, to 2
      Rep row 2 → repeat rows: from 2, to 2
      Rep rows 1 and 2 {of patt|of the patt|of rib|for rib|for the rib patt|in patt|inclusive|incl|for main patt|for body patt|for panel patt|alternately|throughout|for whole piece|throughout the entire work} → repeat rows: from 1, to 2
      Rep rows 1 and 2 for k1, p1 rib → repeat rows: from 1, to 2
      Rep rows 1 and 2 until piece measures 10 cm → repeat rows: from 1, to 2, until {length, mm 100, from start}
      Rep rows 1 and 2 for 10 cm → repeat rows: from 1, to 2, until {length, mm 100, from here}
      Rep rows 1 to 4 5 times, until 60 sts remain → repeat rows: from 1, to 4, times 5
      Rep {last 2|these 2|the last 2|above 2|the previous 2|those 2|the preceding 2} rows → repeat rows: last 2
      Rep last row → repeat rows: last 1
      Rep last row 3 times → repeat rows: last 1, times 3
      Rep last 2 rows 3 times more → repeat rows: last 2, times 3
      Rep {these|last|the last|those} rows → repeat rows: last 0
      Rep them → repeat rows: last 0
      Rep this {ribbing|rib} for 5 cm → repeat rows: last 0, until {length, mm 50, from here}
      Rep these 10 {patt|rib} rows → repeat rows: last 10
      Rep last 2 rows. 28 sts → repeat rows: last 2, times 1 (28)
      Rep last 2 rows (28 sts) → repeat rows: last 2, times 1 (28)
      {End with a rep of row 1|Ending with a rep of row 1|Finish with a rep of row 1|Finishing with a rep of row 1} → repeat rows: from 1, to 1, times 1
      {End with a rep of row 2|Ending with a rep of row 2|Finish with a rep of row 2|Finishing with a rep of row 2} → repeat rows: from 2, to 2, times 1
      {The first row is|First row is|The first row are} repeated{ throughout|} → repeat rows: from 1, to 1
      Rep rows 4-7, keeping first and last 3 sts in garter st, until piece measures 10 cm → repeat rows: from 4, to 7, until {length, mm 100, from start}
      These 2 rows form rib, rep a further 4 times → named rows: name rib, rows 2 | @24 repeat rows: last 2, times 4
      These 2 rows form rib, rep them 4 times more → named rows: name rib, rows 2 | @24 repeat rows: last 2, times 4
      These 2 rows form rib, rep these 4 times in all → named rows: name rib, rows 2 | @24 repeat rows: last 2, times 3
      These 2 rows form rib, rep 4 times → named rows: name rib, rows 2 | @24 repeat rows: last 2, times 4
      K 1 row, p 1 row until piece measures 12 cm → even: fabric {named, name stocking}, until {length, mm 120, from start}, firstLooks k
      K 1 row, p 1 row 6 times → rows: n 1, items 'k to {left 'what follows'}' | @10 rows: n 1, items 'p to {left 'what follows'}' | @18 repeat rows: last 2, times 5
      K 1 row, p 1 row 6 times more → rows: n 1, items 'k to {left 'what follows'}' | @10 rows: n 1, items 'p to {left 'what follows'}' | @18 repeat rows: last 2, times 6
      K 2 rows, p 2 rows alternately until piece measures 12 cm → rows: n 2, items 'k to {left 'what follows'}' | @11 rows: n 2, items 'p to {left 'what follows'}' | @20 repeat rows: last 4, until {length, mm 120, from start}
      K 1 row, p 1 row, rep for 12 cm → rows: n 1, items 'k to {left 'what follows'}' | @10 rows: n 1, items 'p to {left 'what follows'}' | @19 repeat rows: last 2, until {length, mm 120, from here}
    `),
  )('are read: $line', expectReading);

  it.each(
    table(`
      Rep rows 1 to 4 of the chart → ✗ stitch or repeat expected @24
      Work rows 1 to 4 of the chart → ✗ stitch or repeat expected @1
      Work last 2 rows → ✗ stitch or repeat expected @1
      Work 1 to 4 → ✗ stitch or repeat expected @11
      Rep 1 to 4 → ✗ nothing before the repeat @5
      Rep rows → ✗ nothing before the repeat @5
      Rep 4 → ✗ nothing before the repeat @5
      These 2 rows form rib, rep → named rows: name rib, rows 2 | ✗ nothing before the repeat @27
      K 50 rows 6 times → ✗ stitch or repeat expected @11
      Rep rows 1½ to 4 → ✗ nothing before the repeat @5
    `),
  )('are not read for more than they say: $line', expectReading);
});
