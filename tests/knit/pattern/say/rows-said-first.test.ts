import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** In which rows is said before what is done in them: the row that begins them is one of as many as are said 'in all'. Common practice, no published source. */
describe('shaping whose rows are said first', () => {
  it.each(
    table(`
      On next and every foll alt row, dec 1 st at neck edge, 5 times in all → shape: change -1, edge neck, beats [{first 1, every 1, times 1}; {every 2, times 4, counted, total}]
      On next and every foll alt row dec 1 st at neck edge 5 times → shape: change -1, edge neck, beats [{first 1, every 1, times 1}; {every 2, times 4, counted}]
      On next row and every foll alt row, dec 1 st at neck edge, 5 times in all → shape: change -1, edge neck, beats [{first 1, every 1, times 1}; {every 2, times 4, counted, total}]
      On next row{, then| and} every alt row, dec 1 st at neck edge, 5 times → shape: change -1, edge neck, beats [{first 1, every 1, times 1}; {every 2, times 5, counted}]
      On 3rd and every foll 4th row, dec 1 st at neck edge 5 times → shape: change -1, edge neck, beats [{first 3, every 3, times 1}; {every 4, times 4, counted}]
      On next and every foll alt row, dec 1 st at neck edge, 5 times more → shape: change -1, edge neck, beats [{first 1, every 1, times 1}; {every 2, times 5, counted, further}]
      On every 4th row dec 1 st at each end{|,} 3 times → shape: change -1, edge both, beats [{every 4, times 3, counted}]
      On every 4th row dec 1 st at each end until 30 sts remain → shape: change -1, edge both, beats [{every 4, toCount 30}]
      At armhole edge, dec 1 st every row 3 times, then every other row twice → shape: change -1, edge armhole, beats [{first 1, every 1, counted, times 3}; {every 2, counted, times 2}]
      At {the same edge|same edge} dec 1 st every row 3 times → shape: change -1, edge same, beats [{first 1, every 1, counted, times 3}]
    `),
  )('$line', expectReading);
});
