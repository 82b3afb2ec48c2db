import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a shaping behind rows, by where it lies,', () => {
  it.each(
    table(`
      Work 6 rows, dec 1 st at neck edge on every other row → even: until {rows, n 6} | @14 at the same time | @14 shape: change -1, edge neck, beats [{every 2, times 3}]
      Work 6 rows, then dec 1 st at neck edge on every other row → even: until {rows, n 6} | @19 shape: change -1, edge neck, beats [{every 2}]
      Work 6 rows and at the same time dec 1 st at neck edge on every other row → even: until {rows, n 6} | @17 at the same time | @34 shape: change -1, edge neck, beats [{every 2, times 3}]
      Work 7 rows, dec 1 st at neck edge on every other row → ✗ stitch or repeat expected @54
      Work 7 rows, dec 1 st at neck edge on 2nd row and every other row → ✗ stitch or repeat expected @66
      Work 8 rows, dec 1 st at neck edge on 3rd row → even: until {rows, n 8} | @14 at the same time | @14 shape: change -1, edge neck, beats [{first 3, every 3, times 1}]
      Work 8 rows, dec 1 st at neck edge on 1st row → even: until {rows, n 8} | @14 at the same time | @14 shape: change -1, edge neck, beats [{first 1, every 1, times 1}]
      Work 8 rows, dec 1 st at neck edge on first row → even: until {rows, n 8} | @14 at the same time | @14 shape: change -1, edge neck, beats [{first 1, every 1, times 1}]
      Work 8 rows, dec 1 st at each end of first and 5th rows → even: until {rows, n 8} | ✗ stitch or repeat expected @38
      Work 8 rows, dec 1 st at each end of 1st and 5th rows → even: until {rows, n 8} | @14 at the same time | @14 shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, times 1}]
      Work 8 rows, dec 1 st at neck edge on next row → even: until {rows, n 8} | @14 shape: change -1, edge neck, beats [{first 1, every 1, times 1}]
      Work 8 rows, dec 1 st at neck edge on 9th row → even: until {rows, n 8} | @14 shape: change -1, edge neck, beats [{first 9, every 9, times 1}]
      Work 8 rows, dec 1 st at neck edge on 8th row → even: until {rows, n 8} | @14 at the same time | @14 shape: change -1, edge neck, beats [{first 8, every 8, times 1}]
      Work 8 rows, dec 1 st at neck edge on every 4th row twice → even: until {rows, n 8} | @14 shape: change -1, edge neck, beats [{every 4, counted, times 2}]
      Work 8 rows, dec 1 st at neck edge on every 4th row 3 times → even: until {rows, n 8} | @14 shape: change -1, edge neck, beats [{every 4, counted, times 3}]
      Work 8 rows, dec 1 st at neck edge → even: until {rows, n 8} | @14 shape: change -1, edge neck, beats []
      Knit 8 rows, dec 1 st at neck edge on every 4th row → even: fabric {named, name garter}, until {rows, n 8} | @14 at the same time | @14 shape: change -1, edge neck, beats [{every 4, times 2}]
      Purl 8 rows, dec 1 st at neck edge on every 4th row → ✗ stitch or repeat expected @52
      Rib 8 rows, dec 1 st at neck edge on every 4th row → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 8} | @13 at the same time | @13 shape: change -1, edge neck, beats [{every 4, times 2}]
      Knit 1 row, dec 1 st at each end → row: items 'dec, k to {left 'what follows'}, dec'
      Purl 1 row, inc 1 st at each end → row: items 'inc, p to {left 'what follows'}, inc'
      Purl 1 row, inc 1 st at beg → row: items 'inc, p to {left 'what follows'}'
      Purl 1 row, inc 1 st at end → row: items 'p to {left 'what follows'}, inc'
      Purl 1 row, inc 1 st at each end (24 sts) → row: items 'inc, p to {left 'what follows'}, inc' (24)
      Purl 1 row (22 sts), inc 1 st at each end (24 sts) → row: items 'inc, p to {left 'what follows'}, inc' (24)
      Purl 1 row, dec 2 sts at each end → row: items 'dec 2, p to {left 'what follows'}, dec 2'
      Purl 1 row, inc 3 sts at each end → ✗ stitch or repeat expected @34
      Purl 2 rows, inc 1 st at each end → ✗ stitch or repeat expected @34
      Purl 1 row, inc 1 st at neck edge → ✗ stitch or repeat expected @34
      Knit 1 row, inc in every 10th st → @13 row: items '(k ×9, inc) to {left 'what follows'}'
      Knit 2 rows, inc in every 10th st → ✗ stitch or repeat expected @34
      Knit 1 row, k2tog → rows: n 1, items 'k to {left 'what follows'}' | @13 row: items k2tog
      Work until there are 64 sts, inc 1 st each end every 4th row → @30 shape: change 1, edge both, beats [{every 4, toCount 64}]
      Work in st st until there are 64 sts, inc 1 st each end every 4th row → even: fabric {named, name stocking} | @39 shape: change 1, edge both, beats [{every 4, toCount 64}]
      Work until there are 64 sts, inc 1 st each end every row → even: until {count, stitches 64} | @30 shape: change 1, edge both, beats [{first 1, every 1}]
      Work until there are 64 sts, inc 1 st each end every 4th row 5 times → even: until {count, stitches 64} | @30 shape: change 1, edge both, beats [{every 4, counted, times 5}]
      Work in st st for 5 cm, increasing 1 st each end every 4th row → even: fabric {named, name stocking}, until {length, mm 50, from here} | @25 at the same time | @25 shape: change 1, edge both, beats [{every 4, until {length, mm 50, from here}}]
      Work in st st for 5 cm, inc 1 st each end every 4th row → even: fabric {named, name stocking}, until {length, mm 50, from here} | @25 shape: change 1, edge both, beats [{every 4}]
      Work in st st for 5 cm, increasing 1 st each end every 4th row 3 times → even: fabric {named, name stocking}, until {length, mm 50, from here} | @25 at the same time | @25 shape: change 1, edge both, beats [{every 4, counted, times 3}]
      Work in st st until piece measures 5 cm, decreasing 1 st each end every 4th row → even: fabric {named, name stocking}, until {length, mm 50, from start} | @42 at the same time | @42 shape: change -1, edge both, beats [{every 4, until {length, mm 50, from start}}]
      Work in st st until desired length, decreasing 1 st each end every 4th row → even: fabric {named, name stocking}, until {open} | @37 at the same time | @37 shape: change -1, edge both, beats [{every 4, until {open}}]
      Work in st st for 5 cm, then increasing 1 st each end every 4th row → even: fabric {named, name stocking}, until {length, mm 50, from here} | @30 shape: change 1, edge both, beats [{every 4}]
      Dec 1 st at armhole edge on next 3 rows and 1 st at neck edge on every 4th row 4 times → @45 shape: change -1, edge neck, beats [{every 4, counted, times 4}] | at the same time | shape: change -1, edge armhole, beats [{first 1, every 1, times 3}]
      Dec 1 st at armhole edge on next 20 rows and 1 st at neck edge on every 4th row 4 times → shape: change -1, edge armhole, beats [{first 1, every 1, times 20}] | @46 at the same time | @46 shape: change -1, edge neck, beats [{every 4, counted, times 4}]
      Dec 1 st at armhole edge on next 3 rows and 1 st at armhole edge on every 4th row 4 times → shape: change -1, edge armhole, beats [{first 1, every 1, times 3}] | @45 shape: change -1, edge armhole, beats [{every 4, counted, times 4}]
      Dec 1 st at armhole edge on next 3 rows and 1 st at neck edge on every 4th row → @45 shape: change -1, edge neck, beats [{every 4}] | at the same time | shape: change -1, edge armhole, beats [{first 1, every 1, times 3}]
      Dec 1 st at armhole edge every other row and at neck edge every 4th row 4 times → shape: change -1, edge armhole, beats [{every 2}] | @46 at the same time | @46 shape: change -1, edge neck, beats [{every 4, counted, times 4}]
      Dec 1 st at armhole edge on next 3 rows, 1 st at neck edge on every 4th row 4 times → shape: change -1, edge armhole, beats [{first 1, every 1, times 3}] | @42 shape: change -1, edge neck, beats [{every 4, counted, times 4}]
      Bind off 3 sts at armhole edge and dec 1 st at neck edge every other row 4 times → @36 shape: change -1, edge neck, beats [{every 2, counted, times 4}] | at the same time | groups: work bo, edge armhole, groups [{stitches 3, rows 1, every 2}]
      Bind off 3 sts at armhole edge and dec 1 st at neck edge every other row → groups: work bo, edge armhole, groups [{stitches 3, rows 1, every 2}] | @36 shape: change -1, edge neck, beats [{every 2}]
      Dec 1 st at armhole edge on next 3 rows and 1 st at neck edge on every 4th row 4 times (20 sts) → @45 shape: change -1, edge neck, beats [{every 4, counted, times 4}] (20) | at the same time | shape: change -1, edge armhole, beats [{first 1, every 1, times 3}]
      Bind off 5 sts at armhole edge, then dec 1 st at same edge every RS row 3 times and at neck edge every 4th row twice → groups: work bo, edge armhole, groups [{stitches 5, rows 1, every 2}] | @85 shape: change -1, edge neck, beats [{every 4, counted, times 2}] | @38 at the same time | @38 shape: change -1, edge armhole, beats [{every 2, side RS, counted, times 3}]
    `),
  )('lies in them, is one with them, or follows them: $line', expectReading);
});
