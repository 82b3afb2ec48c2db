import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are sometimes worded: common practice, no published source. */
describe('what patterns say once in a while', () => {
  it.each(
    table(`
      Bind off center 1 st and work each side separately → row: items 'bo in the middle' | @26 work on: which 'each side'
      Bind off center 4 sts, *k2, p2; rep from * to end → row: items 'bo ×4 in the middle, (k ×2, p ×2) to {left 0}'
      Form a buttonhole on next row: k2, bind off 2 sts, k to end → row: label {rows [], name buttonhole}, items 'k ×2, bo ×2, k to {left 0}'
      {Cont work|Cont to work} 6 rows in st st → even: fabric {named, name stocking}, until {rows, n 6}
      Repeat buttonhole row. → repeat named: name buttonhole, beats [{first 1, every 1, times 1}]
      To make sleeves, cast on 12 sts on each side → ✗ stitch or repeat expected @4
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Dec 1 st at each end 10 times on every 2nd row → shape: change -1, edge both, beats [{every 2, times 10, counted}]
      Dec 1 st at each end 10 times on every 2nd row 3 times → shape: change -1, edge both, beats [{every 2, times 10}; {every 2, counted, times 3}]
      Dec 1 st at each end twice every 4th row to 30 sts → shape: change -1, edge both, beats [{every 2, times 2}; {every 4, toCount 30}]
      Dec 1 st at neck edge 3 times on next row → shape: change -1, edge neck, beats [{every 2, times 3}; {first 1, every 1, times 1}]
      Dec 1 st at each end 3 times in every row until armhole measures 10 cm → shape: change -1, edge both, beats [{every 2, times 3}; {first 1, every 1, until {length, mm 100, from armhole}}]
    `),
  )('how often, before the rows and behind them: $line', expectReading);

  it.each(
    table(`
      Work 12 rows, dec 1 st at each end of every 3rd row twice, then every row → even: until {rows, n 12} | @15 at the same time | @15 shape: change -1, edge both, beats [{every 3, counted, times 2}; {first 1, every 1, times 6}]
      Work 16 rows, dec 1 st at each end of every 4th row 3 times, then every 2nd row → even: until {rows, n 16} | @15 at the same time | @15 shape: change -1, edge both, beats [{every 4, counted, times 3}; {every 2, times 2}]
      Bind off at the beg of each of the next 6 rows 7 sts 4 times and 6 sts twice → groups: work bo, edge beginning, groups [{stitches 7, rows 4, every 1}; {stitches 6, rows 2, every 1}]
    `),
  )('shaping lies in as many rows as are said: $line', expectReading);
});
