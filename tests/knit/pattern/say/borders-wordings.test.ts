import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('what is kept at the edges, in all its wordings,', () => {
  it.each(
    table(`
      {Keeping|Keep|Maintaining|With|Always work} {the |}6 sts at {each end|both ends|each edge|each side} {of needle |of row |}in garter st → borders: borders [{edge both, stitches 6, fabric {named, name garter}}]
      {Keeping|Working} {the |}first and last 5 sts in {moss|seed} st {on every row|} → borders: borders [{edge both, stitches 5, fabric {named, name moss}}]
      {Keeping|Working} first and last 5 sts in moss st throughout → borders: borders [{edge both, stitches 5, fabric {named, name moss}}], throughout
      Keeping first 4 and last 7 sts in garter st → borders: borders [{edge beginning, stitches 4, fabric {named, name garter}}; {edge end, stitches 7, fabric {named, name garter}}]
      Keeping 5 {border |edge |}sts at {front|neck} edge in k1, p1 rib → borders: borders [{edge neck, stitches 5, fabric {rib, face kp}}]
      {With|Maintaining} a 4-st garter {st |}border at armhole edge → borders: borders [{edge armhole, stitches 4, fabric {named, name garter}}]
      Keeping garter st {borders|bands} of 3 sts at each end → borders: borders [{edge both, stitches 3, fabric {named, name garter}}]
      {Always k|Knitting} {the |}first and last 2 sts {of|on} every row → borders: borders [{edge both, stitches 2, fabric {named, name garter}}]
      Keeping first and last 5 sts in moss st and {the rest|rem sts|all other sts} in st st → borders: borders [{edge both, stitches 5, fabric {named, name moss}}], main {named, name stocking}
      Keeping {the |}{borders|edge sts|border sts} {in garter st|as set} → borders: borders []
      Keeping first and last 5 sts in every row in moss st, work 6 rows → borders: borders [{edge both, stitches 5, fabric {named, name moss}}] | @55 even: until {rows, n 6}
      K the first and last 5 sts in garter st → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
      Knitting first and last 5 sts in moss st → borders: borders [{edge both, stitches 5, fabric {named, name moss}}]
      K {the first|first} and last 5 sts in moss st → borders: borders [{edge both, stitches 5, fabric {named, name moss}}]
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work in st st, keeping 3 sts at each end in garter st, for 6 rows → @16 borders: borders [{edge both, stitches 3, fabric {named, name garter}}] | even: fabric {named, name stocking} | @56 even: fabric {established}, until {rows, n 6}
      Work 6 rows, keeping 3 sts at each end in garter st → @14 borders: borders [{edge both, stitches 3, fabric {named, name garter}}] | even: until {rows, n 6}
      Dec 1 st at each end of next row, keeping 3 sts at each end in garter st → @35 borders: borders [{edge both, stitches 3, fabric {named, name garter}}] | shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Knit 6 rows; keep first 6 sts in garter st → rows: n 6, items 'k to {left 'what follows'}' | @14 borders: borders [{edge beginning, stitches 6, fabric {named, name garter}}]
      Knit 2 rows, keeping 4 sts at front edge in moss st → @14 borders: borders [{edge neck, stitches 4, fabric {named, name moss}}] | even: fabric {named, name garter}, until {rows, n 2}
    `),
  )('is kept beside the rows it is said with: $line', expectReading);

  it.each(
    table(`
      Work first 3 sts in moss st, k to last 3 sts, work in moss st → row: items 'patt ×3, k to {left 3}, patt to {left 'what follows'}'
      Keeping 6 sts at each end in wibble → ✗ stitch or repeat expected @15
      Keeping 6 sts in garter st → row: items 'patt ×6'
      Keep in garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Knit first 3 sts → row: items 'k ×3'
      Purl 2 rows, keeping 4 sts at front edge in moss st → ✗ stitch or repeat expected @14
      Rep rows 1 and 2, keeping 4 sts at front edge in moss st → ✗ stitch or repeat expected @19
      K first and last 5 sts in wibble → ✗ stitch or repeat expected @3
      K first and last 5 sts in pattern → ✗ stitch or repeat expected @3
    `),
  )('is not read for more than it says: $line', expectReading);
});
