import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('rows and times that are said twice, or before,', () => {
  it.each(
    table(`
      Work even for 3 cm{ (10 rows)|, 10 rows| - 10 rows| = 10 rows|, that is 10 rows|, or 10 rows|, approx 10 rows} → even: until {rows, n 10}
      Work even for 3 cm (10 rows in all) → even: until {rows in all, n 10, from start}
      Work even until piece measures 6 cm{, 20 rows total| (20 rows)|, about 20 rows} → even: until {rows in all, n 20, from start}
      Work even until armhole measures 6 cm (20 rows) → ✗ stitch or repeat expected @40
      Work even for 3 cm (10 rows), ending with a WS row → even: until {rows, n 10, end WS}
      {Rep buttonhole row|Rep buttonhole row.} → repeat named: name buttonhole, beats [{first 1, every 1, times 1}]
      Rep buttonhole row; k 2 rows → repeat named: name buttonhole, beats [{first 1, every 1, times 1}] | @21 rows: n 2, items 'k to {left 'what follows'}'
      Rep buttonhole row once more → repeat named: name buttonhole, beats [{every 2, times 1}]
      Rep buttonhole row twice → repeat named: name buttonhole, beats [{every 2, times 2}]
      Dec 1 st at each end 10 times on every 2nd row → shape: change -1, edge both, beats [{every 2, times 10, counted}]
      Dec 1 st at each end 10 times on every 2nd row until 40 sts → shape: change -1, edge both, beats [{every 2, times 10}; {every 2, toCount 40}]
      Work 12 rows, dec 1 st at neck edge on 3rd and every foll 4th row 3 times → even: until {rows, n 12} | @15 at the same time | @15 shape: change -1, edge neck, beats [{first 3, every 3, times 1}; {every 4, counted, times 2}]
      Work 12 rows, dec 1 st at neck edge on 3rd and every foll 4th row 4 times → even: until {rows, n 12} | @15 shape: change -1, edge neck, beats [{first 3, every 3, times 1}; {every 4, counted, times 3}]
      Work 11 rows, dec 1 st at neck edge on 3rd and every foll 4th row 3 times → even: until {rows, n 11} | @15 at the same time | @15 shape: change -1, edge neck, beats [{first 3, every 3, times 1}; {every 4, counted, times 2}]
      Work 10 rows, dec 1 st at neck edge on 3rd and every foll 4th row 3 times → even: until {rows, n 10} | @15 shape: change -1, edge neck, beats [{first 3, every 3, times 1}; {every 4, counted, times 2}]
      {Continue|Begin} to work 6 rows in garter st → even: fabric {named, name garter}, until {rows, n 6}
      Continue to work in garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Form {buttonhole|a buttonhole|a buttonhole thus}: k2, yo, k2tog, k to end → row: label {rows [], name buttonhole}, items 'k ×2, yo, k2tog, k to {left 0}'
    `),
  )('are read once: $line', expectReading);
});
