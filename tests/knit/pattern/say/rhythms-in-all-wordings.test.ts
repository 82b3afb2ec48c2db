import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('in which rows it is shaped, in all wordings,', () => {
  it.each(
    table(`
      Dec 1 st at each end of {next|the next|this|foll|the foll} row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Dec 1 st at each end of {every|each} row → shape: change -1, edge both, beats [{first 1, every 1}]
      {Dec 1 st at each end of every other row|Dec 1 st at each end of every alt row|Dec 1 st at each end of every second row|Dec 1 st at each end of every 2nd row|Dec 1 st at each end of each alt row|Dec 1 st at each end of every foll alt row} → shape: change -1, edge both, beats [{every 2}]
      Dec 1 st at each end of foll alt row → shape: change -1, edge both, beats [{every 2, times 1}]
      {Dec 1 st at each end of every 4th row|Dec 1 st at each end of every foll 4th row|Dec 1 st at each end of each 4th row|Dec 1 st at each end of every fourth row} → shape: change -1, edge both, beats [{every 4}]
      Dec 1 st at each end of foll 4th row → shape: change -1, edge both, beats [{every 4, times 1}]
      {Dec 1 st at each end of every RS row|Dec 1 st at each end of each RS row|Dec 1 st at each end of every right side row|Dec 1 st at each end of RS row|Dec 1 st at each end of every k row} → shape: change -1, edge both, beats [{every 2, side RS}]
      Dec 1 st at each end of {every WS|every wrong side|every p} row → shape: change -1, edge both, beats [{every 2, side WS}]
      Dec 1 st at each end of next 5 rows → shape: change -1, edge both, beats [{first 1, every 1, times 5}]
      {Dec 1 st at each end of foll 5 rows|Dec 1 st at each end of the foll 5 rows} → shape: change -1, edge both, beats [{every 1, times 5}]
      Dec 1 st at each end of next 5 rows → shape: change -1, edge both, beats [{first 1, every 1, times 5}]
      Dec 1 st at each end of next 5 alt rows → shape: change -1, edge both, beats [{first 2, every 2, times 5}]
      Dec 1 st at each end of next 5 RS rows → shape: change -1, edge both, beats [{side RS, first 1, every 2, times 5}]
      Dec 1 st at each end of next 5 WS rows → shape: change -1, edge both, beats [{side WS, first 1, every 2, times 5}]
      Dec 1 st at each end of next 5 4th rows → shape: change -1, edge both, beats [{first 4, every 4, times 5}]
      Dec 1 st at each end of every 4th row {5 times|, 5 times|(5 times)|- 5 times} → shape: change -1, edge both, beats [{every 4, counted, times 5}]
      Dec 1 st at each end of every 4th row 5 times more → shape: change -1, edge both, beats [{every 4, counted, times 5, further}]
      Dec 1 st at each end of every 4th row 5 times in all → shape: change -1, edge both, beats [{every 4, counted, times 5, total}]
      Dec 1 st at each end of every 4th row a total of 5 times → shape: change -1, edge both, beats [{every 4, counted, times 5, total}]
      Dec 1 st at each end of every 4th row 5 more times → shape: change -1, edge both, beats [{every 4, counted, times 5, further}]
      Dec 1 st at each end of every 4th row once → shape: change -1, edge both, beats [{every 4, counted, times 1}]
      Dec 1 st at each end of every 4th row twice → shape: change -1, edge both, beats [{every 4, counted, times 2}]
      Dec 1 st at each end of every 4th row thrice → shape: change -1, edge both, beats [{every 4, counted, times 3}]
      Dec 1 st at each end of every row for {6|the next 6|a further 6|next 6} rows → shape: change -1, edge both, beats [{first 1, every 1, counted, times 6}]
      Dec 1 st at each end of every other row for 6 rows → shape: change -1, edge both, beats [{every 2, counted, times 3}]
      Dec 1 st at each end of every other row for 7 rows → ✗ stitch or repeat expected @41
      Dec 1 st at each end for 3 ridges → shape: change -1, edge both, beats [{every 2, times 3, counted}]
      {Dec 1 st at each end of next and every foll 4th row 8 times|Dec 1 st at each end of next and every 4th row 8 times} → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 7}]
      Dec 1 st at each end of next and foll 4th row 8 times → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, times 7, counted}]
      Dec 1 st at each end of next row and every foll 4th row 8 times → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 8}]
      Dec 1 st at each end of next row and every foll 4th row 8 times in all → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 7, total}]
      Dec 1 st at each end of next row, then every 4th row 8 times → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 8}]
      Dec 1 st at each end of next row, then every 4th row 8 times more → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 8, further}]
      Dec 1 st at each end of next and every foll 4th row to 60 sts → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, toCount 60}]
      Dec 1 st at each end of next and every foll 4th row until 60 sts remain → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, toCount 60}]
      Dec 1 st at each end of next and every foll 4th row until piece measures 20 cm → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, until {length, mm 200, from start}}]
      Dec 1 st at each end of every 4th row 8 times, until 60 sts remain → shape: change -1, edge both, beats [{every 4, counted, times 8, toCount 60}]
      Dec 1 st at each end of every 4th row 8 times - 60 sts → shape: change -1, edge both, beats [{every 4, counted, times 8}] (60)
      Dec 1 st at each end of every other row 5 times{, then| and| then|; then| and then|, followed by} every row 3 times → shape: change -1, edge both, beats [{every 2, counted, times 5}; {first 1, every 1, counted, times 3}]
      Dec 1 st at each end of every other row 5 times, then every row 3 times, then every 4th row twice → shape: change -1, edge both, beats [{every 2, counted, times 5}; {first 1, every 1, counted, times 3}; {every 4, counted, times 2}]
      Dec 1 st at each end of every other row 5 times, then again every row 3 times → shape: change -1, edge both, beats [{every 2, counted, times 5}; {first 1, every 1, counted, times 3}]
      Dec 1 st at each end of 5th, 11th and 17th rows → shape: change -1, edge both, beats [{first 5, every 5, times 1}; {every 6, times 1}; {every 6, times 1}]
      Dec 1 st at each end of {the |foll |the foll |}5th and 9th rows → shape: change -1, edge both, beats [{first 5, every 5, times 1}; {every 4, times 1}]
      Dec 1 st at each end of 5th row and 9th row → shape: change -1, edge both, beats [{first 5, every 5, times 1}; {every 4, times 1}]
      Dec 1 st at each end of 5th row and 3rd row → shape: change -1, edge both, beats [{first 5, every 5, times 1}; {first 3, every 3, times 1}]
      {Dec 1 st at each end of 5th row|Dec 1 st at each end of the 5th row} → shape: change -1, edge both, beats [{first 5, every 5, times 1}]
      Dec 1 st at each end of foll 5th row → shape: change -1, edge both, beats [{every 5, times 1}]
      Dec 1 st at each end of 5th and every foll 4th row 3 times → shape: change -1, edge both, beats [{first 5, every 5, times 1}; {every 4, counted, times 2}]
      Dec 1 st at each end of 3rd and 4th row → shape: change -1, edge both, beats [{first 3, every 3, times 1}; {every 1, times 1}]
      Dec 1 st at each end 10 times on every 2nd row → shape: change -1, edge both, beats [{every 2, times 10, counted}]
      Dec 1 st at each end on every 2nd row 10 times → shape: change -1, edge both, beats [{every 2, counted, times 10}]
      On every 4th row dec 1 st at each end 10 times → shape: change -1, edge both, beats [{every 4, times 10, counted}]
      {On next row dec 1 st at each end|On the next row dec 1 st at each end|In next row dec 1 st at each end|In the next row dec 1 st at each end} → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Next row dec 1 st at each end → row: label {rows []}, items 'dec, patt to {left 'what follows'}, dec'
      {Every other row dec 1 st at each end 5 times|On every other row dec 1 st at each end 5 times|In every alt row dec 1 st at each end 5 times|At every other row dec 1 st at each end 5 times} → shape: change -1, edge both, beats [{every 2, times 5, counted}]
      At beg of next 2 rows dec 1 st → shape: change -1, edge beginning, beats [{first 1, every 1, times 2}]
      Dec 1 st at each end of every row thereafter 5 times → shape: change -1, edge both, beats [{first 1, every 1, counted, times 5}]
      Dec 1 st at beg of {each|every} needle 6 times → shape: change -1, edge beginning, beats [{first 1, every 1, counted, times 6}]
      Dec 1 st at beg of foll rows until 60 sts remain → shape: change -1, edge beginning, beats [{first 1, every 1, toCount 60}]
      Dec 1 st at beg of foll rows → ✗ stitch or repeat expected @25
      Dec 1 st at each end of every 4th and 5th rows alternately 6 times → shape: change -1, edge both, beats [{every 4, and 5, counted, times 6}]
      Dec 1 st at each end of every 3rd and 4th row alternately until 60 sts → shape: change -1, edge both, beats [{every 3, and 4, toCount 60}]
      Dec 1 st at each end of alt rows until 60 sts → shape: change -1, edge both, beats [{first 2, every 2, toCount 60}]
      Dec 1 st at each end of every 4 rows 6 times → shape: change -1, edge both, beats [{every 4, counted, times 6}]
      Dec 1 st at each end of every 4 cm 6 times → shape: change -1, edge both, beats [{every 1, everyMm 40, counted, times 6}]
      Dec 1 st at each end every 4 cm until 60 sts remain → shape: change -1, edge both, beats [{every 1, everyMm 40, toCount 60}]
      Dec 1 st at each end of every row until armhole measures 10 cm → shape: change -1, edge both, beats [{first 1, every 1, until {length, mm 100, from armhole}}]
      Dec 1 st at each end of next row until piece measures 10 cm → ✗ stitch or repeat expected @34
      Dec 1 st at each end of every row for 6 rows, then every other row for 6 rows → shape: change -1, edge both, beats [{first 1, every 1, counted, times 6}; {every 2, counted, times 3}]
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Dec 1 st at each end of 5th, 3rd and 17th rows → ✗ stitch or repeat expected @25
      Dec 1 st at each end of 5 and 9 rows → ✗ stitch or repeat expected @25
      Dec 1 st at each end of every row for 6 sts → ✗ stitch or repeat expected @35
      Dec 1 st at each end of every 4th row (5 times → ✗ stitch or repeat expected @40
      Dec 1 st at each end of every row, 13 cm → shape: change -1, edge both, beats [{first 1, every 1}] | @36 note: about aside
      Dec 1 st at each end 10 times → shape: change -1, edge both, beats [{every 2, times 10}]
      Dec 1 st at each end of row → shape: change -1, edge both, beats []
      Dec 1 st at each end of every 4th → shape: change -1, edge both, beats [{every 4}]
      Each end dec 1 st → shape: change -1, edge both, beats []
      Dec 1 st → row: items dec
      On sleeves dec 1 st at each end → ✗ stitch or repeat expected @1
      At side dec 1 st at each end → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
