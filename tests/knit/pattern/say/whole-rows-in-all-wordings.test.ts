import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('whole rows, in all wordings,', () => {
  it.each(
    table(`
      {K|Knit|Knitting} {1 row|the next row|next row|a row|the first row|back} → rows: n 1, items 'k to {left 'what follows'}'
      {P|Purl|Purling} {1 row|next row|the second row|a row|back} → rows: n 1, items 'p to {left 'what follows'}'
      {Purl 3 rows|Purl 3 more rows|Purl 3 further rows|Purl 3 rows more|Purl 3 rows further|Purl 3 rows even|Purl 3 rows straight|Purl 3 rows plain} → rows: n 3, items 'p to {left 'what follows'}'
      Knit rows {1-10|1 to 10} → rows: n 10, items 'k to {left 'what follows'}'
      {Knit 20 rows in garter st|Knit 20 rows of garter st} → even: fabric {named, name garter}, until {rows, n 20}
      {Knit 20 rows in stocking st|Knit 20 rows of stocking st} → even: fabric {named, name stocking}, until {rows, n 20}
      Knit 20 rows (garter st) → even: fabric {named, name garter}, until {rows, n 20}
      Knit 6 rows in garter st {for the top border|to make the lower edge|for lower band|to make upper hem|for bottom edge} → even: fabric {named, name garter}, until {rows, n 6}
      K {4 ribs of garter st|4 ribs of garter|4 ribs even|4 ribs plain|4 ribs} → rows: n 8, items 'k to {left 'what follows'}'
      K 5 ribs on the first 26 sts → @10 work on: which first, stitches 26 | rows: n 10, items 'k to {left 'what follows'}'
      K 5 ribs, p 1 row → rows: n 10, items 'k to {left 'what follows'}' | @11 rows: n 1, items 'p to {left 'what follows'}'
      {Knit|Purl} 4 ridges {|even|straight|plain} → rows: n 8, items 'k to {left 'what follows'}'
      {Knit across next purl row|Knit the next WS row|Knit on next p row} {to form a ridge|to make hemline|to form foldline|} → row: label {rows [], side WS}, items 'k to {left 'what follows'}'
      Knit the next RS row → row: label {rows [], side RS}, items 'k to {left 'what follows'}'
      Purl next {k|RS} row for hemline → row: label {rows [], side RS}, items 'p to {left 'what follows'}'
      Knit 1 row, purl 1 row alternately for 10 cm → even: fabric {named, name stocking}, until {length, mm 100, from here}, firstLooks k
      K 1 row and p 1 row alternately, until piece measures 10 cm → even: fabric {named, name stocking}, until {length, mm 100, from start}, firstLooks k
      P 1 row, k 1 row alternately for 10 cm → even: fabric {named, name stocking}, until {length, mm 100, from here}, firstLooks p
      Work 4 rows in A, 2 rows in B, 6 rows in A → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}; {rows 6, yarn A}], listed on
      K 1 row, p 1 row → rows: n 1, items 'k to {left 'what follows'}' | @10 rows: n 1, items 'p to {left 'what follows'}'
    `),
  )('are read: $line', expectReading);

  it.each(
    table(`
      Knit back and forth → ✗ stitch or repeat expected @15
      Knit back, p 5 → rows: n 1, items 'k to {left 'what follows'}' | @12 row: items 'p ×5'
      Knit rows 1-4 of the chart → ✗ stitch or repeat expected @6
      Knit rows 2-4 → ✗ stitch or repeat expected @6
      Knit rows 1-1 → ✗ stitch or repeat expected @6
      Knit 4 ribs of lace → ✗ stitch or repeat expected @8
      Purl 4 ribs → ✗ stitch or repeat expected @8
      Knit 4 ribs wide → ✗ stitch or repeat expected @8
      Knit next RS → ✗ stitch or repeat expected @11
      Knit 20 rows (lovely) → ✗ stitch or repeat expected @15
      Knit 20 rows of joy → ✗ stitch or repeat expected @17
      4 rows B → stripes: of [{rows 4, yarn B}], listed on
      4 rows → ✗ stitch or repeat expected @1
    `),
  )('are not read for more than they say: $line', expectReading);
});
