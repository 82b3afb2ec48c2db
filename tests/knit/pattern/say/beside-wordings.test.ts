import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('what is said beside rows, by the mark before it,', () => {
  it.each(
    table(`
      {Knit 10 rows in B|Knit 10 rows with B} → @14 yarn: name B | rows: n 10, items 'k to {left 'what follows'}'
      {Knit 10 rows, in B|Knit 10 rows, with B|Knit 10 rows; in B|Knit 10 rows; with B|Knit 10 rows. in B|Knit 10 rows. with B} → rows: n 10, items 'k to {left 'what follows'}' | @15 yarn: name B
      {Knit 10 rows and in B|Knit 10 rows and with B} → rows: n 10, items 'k to {left 'what follows'}' | @18 yarn: name B
      {Knit 10 rows then in B|Knit 10 rows then with B} → rows: n 10, items 'k to {left 'what follows'}' | @19 yarn: name B
      Knit 10 rows on the first 26 sts → @14 work on: which first, stitches 26 | rows: n 10, items 'k to {left 'what follows'}'
      {Knit 10 rows, on the first 26 sts|Knit 10 rows; on the first 26 sts|Knit 10 rows. on the first 26 sts} → rows: n 10, items 'k to {left 'what follows'}' | @15 work on: which first, stitches 26
      Knit 10 rows and on the first 26 sts → rows: n 10, items 'k to {left 'what follows'}' | @18 work on: which first, stitches 26
      Knit 10 rows then on the first 26 sts → rows: n 10, items 'k to {left 'what follows'}' | @19 work on: which first, stitches 26
      Cont in garter st until piece measures 9 cm on these 26 sts → @45 work on: which these, stitches 26 | even: fabric {named, name garter}, until {length, mm 90, from start}
      {Cont in garter st until piece measures 9 cm, on these 26 sts|Cont in garter st until piece measures 9 cm; on these 26 sts} → even: fabric {named, name garter}, until {length, mm 90, from start} | @46 work on: which these, stitches 26
      Cont in garter st until piece measures 9 cm and on these 26 sts → even: fabric {named, name garter}, until {length, mm 90, from start} | @49 work on: which these, stitches 26
      Cont in garter st until piece measures 9 cm then on these 26 sts → even: fabric {named, name garter}, until {length, mm 90, from start} | @50 work on: which these, stitches 26
      Cont in garter st on these 26 sts until piece measures 9 cm → even: fabric {named, name garter}, until {length, mm 90, from start}, over 26
      Rep rows 1 and 2 on the first 26 sts → repeat rows: from 1, to 2 | @18 work on: which first, stitches 26
      Rep rows 1 and 2, on the first 26 sts → repeat rows: from 1, to 2 | @19 work on: which first, stitches 26
      Rep rows 1 and 2 and on the first 26 sts → repeat rows: from 1, to 2 | @22 work on: which first, stitches 26
      {Work 30 rows, making a buttonhole every 10th row|Work 30 rows. making a buttonhole every 10th row} → @15 buttonholes: beats [{every 10}] | even: until {rows, n 30}
      Work 30 rows; making a buttonhole every 10th row → even: until {rows, n 30} | @15 buttonholes: beats [{every 10}]
      Work 30 rows and making a buttonhole every 10th row → @18 buttonholes: beats [{every 10}] | even: until {rows, n 30}
      Work 30 rows then making a buttonhole every 10th row → even: until {rows, n 30} | @19 buttonholes: beats [{every 10}]
      {Work 30 rows, in stripes of 2 rows A and 2 rows B|Work 30 rows; in stripes of 2 rows A and 2 rows B|Work 30 rows. in stripes of 2 rows A and 2 rows B} → @15 stripes: of [{rows 2, yarn A}; {rows 2, yarn B}] | even: until {rows, n 30}
      Work 30 rows and in stripes of 2 rows A and 2 rows B → @18 stripes: of [{rows 2, yarn A}; {rows 2, yarn B}] | even: until {rows, n 30}
      Work 30 rows then in stripes of 2 rows A and 2 rows B → even: until {rows, n 30} | @19 stripes: of [{rows 2, yarn A}; {rows 2, yarn B}]
      Work in st st, working stripes of 2 rows A and 2 rows B → even: fabric {named, name stocking} | @16 stripes: of [{rows 2, yarn A}; {rows 2, yarn B}]
      Cast on 12 sts at beg of next 2 rows, at the same time change to rib → @56 even: fabric {pattern, words rib, name rib, else rib} | groups: work co, edge beginning, groups [{stitches 12, rows 2, every 1}]
      Cast on 12 sts at beg of next 2 rows, at the same time work in rib for 4 rows → groups: work co, edge beginning, groups [{stitches 12, rows 2, every 1}] | @39 at the same time | @56 even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 4}
      Work 30 rows, at the same time make a buttonhole every 10th row → @32 buttonholes: beats [{every 10}] | even: until {rows, n 30}
      K to end, at the same time make a buttonhole → ✗ stitch or repeat expected @11
      {Knit 5 rows, noting first row is WS|Knit 5 rows; noting first row is WS|Knit 5 rows. noting first row is WS} → @14 next side: side WS | rows: n 5, items 'k to {left 'what follows'}'
      Knit 5 rows and noting first row is WS → @17 next side: side WS | rows: n 5, items 'k to {left 'what follows'}'
      Knit 6 rows, slipping first st of every row → @14 slips: work sl | rows: n 6, items 'k to {left 'what follows'}'
      K to end, noting next row is WS → ✗ stitch or repeat expected @11
      Work as for back, omitting buttonholes and reversing shaping → @19 buttonholes: beats [], omitted | as for: piece {words back, name back}, reversing
      Work as for back, omitting buttonholes → @19 buttonholes: beats [], omitted | as for: piece {words back, name back}, reversing false
      Work as for back, reversing shaping → as for: piece {words back, name back}, reversing
      {Knit 8 rows; keep first 6 sts in garter st|Knit 8 rows. keep first 6 sts in garter st} → rows: n 8, items 'k to {left 'what follows'}' | @14 borders: borders [{edge beginning, stitches 6, fabric {named, name garter}}]
      {Knit 8 rows; keeping first 6 sts in garter st|Knit 8 rows. keeping first 6 sts in garter st|Knit 8 rows, keep first 6 sts in garter st|Knit 8 rows, keeping first 6 sts in garter st} → @14 borders: borders [{edge beginning, stitches 6, fabric {named, name garter}}] | even: fabric {named, name garter}, until {rows, n 8}
      {Knit 8 rows and keep first 6 sts in garter st|Knit 8 rows and keeping first 6 sts in garter st} → @17 borders: borders [{edge beginning, stitches 6, fabric {named, name garter}}] | even: fabric {named, name garter}, until {rows, n 8}
      Knit 8 rows then keep first 6 sts in garter st → rows: n 8, items 'k to {left 'what follows'}' | @18 borders: borders [{edge beginning, stitches 6, fabric {named, name garter}}]
      Knit 8 rows then keeping first 6 sts in garter st → @18 borders: borders [{edge beginning, stitches 6, fabric {named, name garter}}] | even: fabric {named, name garter}, until {rows, n 8}
      {Work 8 rows; work first and last 6 sts in garter st|Work 8 rows; keep first and last 6 sts in garter st|Work 8 rows. work first and last 6 sts in garter st|Work 8 rows. keep first and last 6 sts in garter st} → even: until {rows, n 8} | @14 borders: borders [{edge both, stitches 6, fabric {named, name garter}}]
      {Work 8 rows; with first and last 6 sts in garter st|Work 8 rows. with first and last 6 sts in garter st|Work 8 rows, work first and last 6 sts in garter st|Work 8 rows, keep first and last 6 sts in garter st|Work 8 rows, with first and last 6 sts in garter st} → @14 borders: borders [{edge both, stitches 6, fabric {named, name garter}}] | even: until {rows, n 8}
      {Work 8 rows and work first and last 6 sts in garter st|Work 8 rows and keep first and last 6 sts in garter st|Work 8 rows and with first and last 6 sts in garter st} → @17 borders: borders [{edge both, stitches 6, fabric {named, name garter}}] | even: until {rows, n 8}
      {Work 8 rows then work first and last 6 sts in garter st|Work 8 rows then keep first and last 6 sts in garter st} → even: until {rows, n 8} | @18 borders: borders [{edge both, stitches 6, fabric {named, name garter}}]
      Work 8 rows then with first and last 6 sts in garter st → @18 borders: borders [{edge both, stitches 6, fabric {named, name garter}}] | even: until {rows, n 8}
      K to end, keeping first and last 6 sts in garter st → ✗ stitch or repeat expected @11
      Dec 1 st at each end of next row; keep first and last 6 sts in garter st → shape: change -1, edge both, beats [{first 1, every 1, times 1}] | @35 borders: borders [{edge both, stitches 6, fabric {named, name garter}}]
    `),
  )('is said of them, or comes behind them: $line', expectReading);

  it.each(
    table(`
      Knit {1 row|back} and cast on 30 sts → row: items 'k to {left 'what follows'}, co ×30'
      Knit 1 row and cast on 30 sts (70 sts) → row: items 'k to {left 'what follows'}, co ×30' (70)
      Knit 1 row and cast on 1 st → row: items 'k to {left 'what follows'}, co'
      Knit 2 rows and cast on 30 sts → rows: n 2, items 'k to {left 'what follows'}' | @17 row: items 'co ×30'
      Knit 1 row (40 sts) and cast on 30 sts → rows: n 1, items 'k to {left 'what follows'}' (40) | @25 row: items 'co ×30'
      Knit 1 row and cast on 30 sts and knit 2 rows → rows: n 1, items 'k to {left 'what follows'}' | ✗ stitch or repeat expected @42
      Knit 1 row and cast on 30 sts; knit 2 rows → row: items 'k to {left 'what follows'}, co ×30' | @32 rows: n 2, items 'k to {left 'what follows'}'
      Knit 1 row and cast on 30 sts. knit 2 rows → rows: n 1, items 'k to {left 'what follows'}' | ✗ stitch or repeat expected @39
      Knit 1 row and cast on 30 sts [70 sts] → row: items 'k to {left 'what follows'}, co ×30' (70)
      Knit 1 row and cast on 30 → rows: n 1, items 'k to {left 'what follows'}' | @16 row: items 'co ×30'
      K to end and cast on 30 sts → row: items 'k to {left 0}, co ×30'
    `),
  )('is cast on behind a row, and by itself behind more: $line', expectReading);
});
