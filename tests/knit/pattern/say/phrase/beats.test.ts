import { describe, it } from 'vitest';
import { table } from '../../table.ts';
import { expectReading } from '../said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a rhythm, in all its wordings,', () => {
  it.each(
    table(`
      Dec 1 st at each end of {next|this|same} row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Dec 1 st at each end {of next|on next|in next|at next|over next|for next|of the next|of each of next|of each next|working next} 4 rows → shape: change -1, edge both, beats [{first 1, every 1, times 4}]
      Dec 1 st at each end of next 3 RS rows → shape: change -1, edge both, beats [{side RS, first 1, every 2, times 3}]
      Dec 1 st at each end of next 3 WS rows → shape: change -1, edge both, beats [{side WS, first 1, every 2, times 3}]
      Dec 1 st at each end of next {alt|other|second|alternating} row → shape: change -1, edge both, beats [{first 2, every 2, times 1}]
      Dec 1 st at each end of next 3 alt rows → shape: change -1, edge both, beats [{first 2, every 2, times 3}]
      Dec 1 st at each end of next RS row → shape: change -1, edge both, beats [{side RS, first 1, every 2, times 1}]
      Dec 1 st at each end of {next and|this and|next,} every 4th row 5 times → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 4}]
      Dec 1 st at each end of next row and every 4th row 5 times → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 5}]
      Dec 1 st at each end of next row{, then|, and| then| followed by|; then by|, again} every 4th row 5 times → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 5}]
      Dec 1 st at each end of next and every 4th row 5 times more → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 5, further}]
      Dec 1 st at each end of next and every 4th row 0 times → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 0}]
      Dec 1 st at each end of {every|each|ev} row → shape: change -1, edge both, beats [{first 1, every 1}]
      Dec 1 st at each end of {every other|every alt|every second|every 2nd|every foll alt|every succeeding alt|each alt|every alt foll} row 5 times → shape: change -1, edge both, beats [{every 2, counted, times 5}]
      Dec 1 st at each end of every {third|3rd|3 rd} row 5 times → shape: change -1, edge both, beats [{every 3, counted, times 5}]
      Dec 1 st at each end of every {fourth|4th|4} {row|rows} 5 times → shape: change -1, edge both, beats [{every 4, counted, times 5}]
      Dec 1 st at each end of every fifth row 5 times → shape: change -1, edge both, beats [{every 5, counted, times 5}]
      Dec 1 st at each end of every sixth row 5 times → shape: change -1, edge both, beats [{every 6, counted, times 5}]
      Dec 1 st at each end of every eighth row 5 times → shape: change -1, edge both, beats [{every 8, counted, times 5}]
      Dec 1 st at each end of every tenth row 5 times → shape: change -1, edge both, beats [{every 10, counted, times 5}]
      Dec 1 st at each end of every {RS|right side|k|front} row 5 times → shape: change -1, edge both, beats [{every 2, side RS, counted, times 5}]
      Dec 1 st at each end of every {WS|wrong side|p} row 5 times → shape: change -1, edge both, beats [{every 2, side WS, counted, times 5}]
      Dec 1 st at each end of every 4th → shape: change -1, edge both, beats [{every 4}]
      Dec 1 st at each end of every 4th, 5 times → shape: change -1, edge both, beats [{every 4, counted, times 5}]
      Dec 1 st at each end of every {4th and 2nd row|4th and 2nd row alternately} 5 times → shape: change -1, edge both, beats [{every 4, and 2, counted, times 5}]
      Dec 1 st at each end of every other and 4th row 5 times → shape: change -1, edge both, beats [{every 2, and 4, counted, times 5}]
      Dec 1 st at each end of alternately every 4th row 5 times → shape: change -1, edge both, beats [{every 4, counted, times 5}]
      Dec 1 st at each end of {3rd row|row 3} → shape: change -1, edge both, beats [{first 3, every 3, times 1}]
      Dec 1 st at each end of 2nd row → shape: change -1, edge both, beats [{first 2, every 2, times 1}]
      Dec 1 st at each end of 3rd and every foll 4th row 5 times → shape: change -1, edge both, beats [{first 3, every 3, times 1}; {every 4, counted, times 4}]
      Dec 1 st at each end of row 3 and every 4th row 5 times → shape: change -1, edge both, beats [{first 3, every 3, times 1}; {every 4, counted, times 4}]
      Dec 1 st at each end of 5th and foll 6th rows → shape: change -1, edge both, beats [{first 5, every 5, times 1}; {every 6, times 1}]
      Dec 1 st at each end of foll 4th row → shape: change -1, edge both, beats [{every 4, times 1}]
      Dec 1 st at each end of foll 5 rows → shape: change -1, edge both, beats [{every 1, times 5}]
      Dec 1 st at each end of foll 3 alt rows → shape: change -1, edge both, beats [{every 2, times 3}]
      Dec 1 st at each end of foll 3 RS rows → shape: change -1, edge both, beats [{every 2, side RS, times 3}]
      Dec 1 st at each end of foll row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Dec 1 st at each end of foll RS row → shape: change -1, edge both, beats [{every 2, times 1, side RS}]
      Dec 1 st at each end of alt rows → shape: change -1, edge both, beats [{first 2, every 2, times 1}]
      Dec 1 st at each end of RS rows → shape: change -1, edge both, beats [{every 2, side RS}]
      Dec 1 st at each end of WS rows → shape: change -1, edge both, beats [{every 2, side WS}]
      Dec 1 st at each end 5 times → shape: change -1, edge both, beats [{every 2, times 5}]
      Dec 1 st at each end twice → shape: change -1, edge both, beats [{every 2, times 2}]
      Dec 1 st at each end of next row 5 times → shape: change -1, edge both, beats [{first 1, every 1, times 5, counted}]
      Dec 1 st at each end of next 2 rows 5 times → shape: change -1, edge both, beats [{first 1, every 1, times 10, counted}]
      Dec 1 st at each end every other row{ 5 times| for 5 times| a 5 times|, 5 times| - 5 times| x 5} → shape: change -1, edge both, beats [{every 2, counted, times 5}]
      Dec 1 st at each end every other row 5 times more → shape: change -1, edge both, beats [{every 2, counted, times 5, further}]
      Dec 1 st at each end every other row 5 times{, until 60 sts remain| - until 60 sts remain| to 60 sts} → shape: change -1, edge both, beats [{every 2, counted, times 5, toCount 60}]
      Dec 1 st at each end every other row{ to 60 sts|, until 60 sts remain| until there are 60 sts} → shape: change -1, edge both, beats [{every 2, toCount 60}]
      Dec 1 st at each end of next row to 60 sts → shape: change -1, edge both, beats [{first 1, every 1, toCount 60}]
      Dec 1 st at each end every other row until armhole measures 10 cm → shape: change -1, edge both, beats [{every 2, until {length, mm 100, from armhole}}]
      Dec 1 st at each end every other row 3 times, then every row twice → shape: change -1, edge both, beats [{every 2, counted, times 3}; {first 1, every 1, counted, times 2}]
      Dec 1 st at each end every other row 3 times, twice more → shape: change -1, edge both, beats [{every 2, counted, times 3}; {every 2, times 2, further}]
      {On|In|At|Over} next row dec 1 st at each end → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      On every RS row dec 1 st at each end → shape: change -1, edge both, beats [{every 2, side RS}]
      On {each|every} row dec 1 st at each end → shape: change -1, edge both, beats [{first 1, every 1}]
      On this row dec 1 st at each end → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      In foll row dec 1 st at each end → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      On 3rd row dec 1 st at each end → shape: change -1, edge both, beats [{first 3, every 3, times 1}]
      Next row dec 1 st at each end → row: label {rows []}, items 'dec, patt to {left 'what follows'}, dec'
      Each end of next row dec 1 st → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Each row dec 1 st at neck edge → shape: change -1, edge neck, beats [{first 1, every 1}]
      Every row dec 1 st at neck edge → shape: change -1, edge neck, beats [{first 1, every 1}]
      Dec 1 st at each end of next row, and then every 4th row 5 times → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 5}]
      At next row dec 1 st at each end → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      In this row dec 1 st at each end → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      On RS row dec 1 st at each end → shape: change -1, edge both, beats [{every 2, side RS}]
      Dec 1 st at each end of next row, every 4th row 5 times, then every row twice → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 5}; {first 1, every 1, counted, times 2}]
      Dec 1 st at each end of every 4th row thereafter 5 times → shape: change -1, edge both, beats [{every 4, counted, times 5}]
      Dec 1 st at each end of every 2nd ridge 5 times → shape: change -1, edge both, beats [{every 4, counted, times 5}]
      Dec 1 st at each end of every 9th ridge {(18th row)|} 5 times → shape: change -1, edge both, beats [{every 18, counted, times 5}]
      Dec 1 st at each end of every {inch|inches} 5 times → shape: change -1, edge both, beats [{every 1, everyMm 25.4, counted, times 5}]
      Dec 1 st at each end every {cm|1 cm} 5 times → shape: change -1, edge both, beats [{every 1, everyMm 10, counted, times 5}]
      Dec 1 st at each end every 2 cm 5 times → shape: change -1, edge both, beats [{every 1, everyMm 20, counted, times 5}]
      Dec 1 st at each end every 6 rows 5 times → shape: change -1, edge both, beats [{every 6, counted, times 5}]
      Dec 1 st at each end {on|of the foll} 5th, 11th and 17th rows → shape: change -1, edge both, beats [{first 5, every 5, times 1}; {every 6, times 1}; {every 6, times 1}]
      Dec 1 st at neck edge in {the knit|knit|RS} rows until 14 sts remain → shape: change -1, edge neck, beats [{every 2, side RS, toCount 14}]
      Dec 1 st at neck edge in {the purl|purl|WS} rows until 14 sts remain → shape: change -1, edge neck, beats [{every 2, side WS, toCount 14}]
      Dec 1 st at each end on 5th and 11th rows → shape: change -1, edge both, beats [{first 5, every 5, times 1}; {every 6, times 1}]
      Dec 1 st at each end of next row, then every 4th row 5 times in all → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 4, total}]
      Dec 1 st at each end of next row and every 4th row 5 times in all → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 4, total}]
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Dec 1 st at each end of next 2nd row → ✗ stitch or repeat expected @30
      Dec 1 st at each end of 5th, foll 6th and foll 8th rows → ✗ stitch or repeat expected @25
      Dec 1 st at each end of the 5 rows → ✗ stitch or repeat expected @29
      Dec 1 st at each end of foll rows → ✗ stitch or repeat expected @30
      Dec 1 st at each end every other row 5 times, until piece measures 10 cm → shape: change -1, edge both, beats [{every 2, counted, times 5}] | ✗ stitch or repeat expected @47
      Dec 1 st at each end every other row for 6 rows → shape: change -1, edge both, beats [{every 2, counted, times 3}]
      Dec 1 st at each end every other row 3 times, twice → shape: change -1, edge both, beats [{every 2, counted, times 3}] | ✗ stitch or repeat expected @47
      On the row dec 1 st at each end → ✗ stitch or repeat expected @1
      In 2 rows dec 1 st at each end → ✗ stitch or repeat expected @1
      Dec 1 st at each end of work → ✗ stitch or repeat expected @25
      On side dec 1 st at each end → ✗ stitch or repeat expected @1
      On red row dec 1 st at each end → ✗ stitch or repeat expected @1
      At 3 ends dec 1 st → ✗ stitch or repeat expected @1
      Dec 1 st every row {for 6 rows|for the next 6 rows|for next 6 rows|for a further 6 rows} → ✗ stitch or repeat expected @10
      Dec 1 st every other row for 7 rows → ✗ stitch or repeat expected @10
      Dec 1 st at each end of every 9th ridge (17th row) 5 times → ✗ stitch or repeat expected @42
      Dec 1 st at neck edge in knit wibbles until 14 sts remain → ✗ stitch or repeat expected @23
      Dec 1 st at each end on 11th, 5th and 17th rows → ✗ stitch or repeat expected @22
    `),
  )('is not read for more than it says: $line', expectReading);
});
