import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('gauge, in all its wordings,', () => {
  it.each(
    table(`
      {Gauge: 20 sts and 28 rows = 10 cm|Gauge - 20 sts and 28 rows = 10 cm|Gauge is 20 sts, 28 rows = 10 cm|Gauge 20 sts; 28 rows to 10 cm|Tension: 20 sts x 28 rows per 10 cm|20 sts and 28 rows = 10 cm|Gauge of 20 sts and 28 rows make 10 cm|Gauge over 20 sts and 28 rows equal 10 cm|Gauge: 20 sts - 28 rows equals 10 cm|Gauge: 20 sts and 28 rows in 10 cm|Gauge: 20 sts and 28 rows over 10 cm|Gauge: 20 sts and 28 rows measure 10 cm|Gauge: 20 sts and 28 rows measures 10 cm|Gauge: 20 sts and 28 rows are 10 cm|Gauge: 20 sts and 28 rows on 10 cm|Gauge: 20 sts and 28 rows on a 10 cm|Gauge: 20 sts and 28 rows make = 10 cm|Gauge, 20 sts and 28 rows = 100 mm} → gauge: stitches 20, rows 28
      Gauge: 20 sts and 28 rows = 10 cm {square|sq|in width|wide|x 10 cm|/ 10 cm|by 10 cm} → gauge: stitches 20, rows 28
      Gauge: 20 sts = 10 cm, 28 rows = 10 cm → gauge: stitches 20, rows 28
      {5 sts = 1 inch|5 sts = 1"|Gauge: 5 sts to the inch|Gauge: 5 sts per inch|Gauge: 5 sts to each inch|Gauge: 5 sts to 1 in} → gauge: stitches 19.68503937007874
      20 sts {=|to|over|make|measure} 4 {inch|inches|ins|"} → gauge: stitches 19.68503937007874
      20 sts and 28 rows {=|to|over|measure} 10 {cm|cms|centimetres} → gauge: stitches 20, rows 28
      Gauge: 2 sts to the cm → gauge: stitches 20
      5 sts = 1 inch; 7 rows = 1 inch → gauge: stitches 19.68503937007874, rows 27.559055118110237
      Gauge: 9 sts = 2 inches; 6 rows = 1 inch → gauge: stitches 17.716535433070867, rows 23.62204724409449
      Gauge: 28 rows = 10 cm → gauge: rows 28
      Gauge: 28 rnds = 10 cm → gauge: rows 28
      Gauge: 10 ridges = 10 cm → gauge: rows 20
      Gauge: 4½ sts = 1 inch → gauge: stitches 17.716535433070867
      Gauge: 4 1/2 sts = 1 inch → gauge: stitches 17.716535433070867
      Gauge: 20 sts and 28 rows = 10 cm {in st st|over st st|of st st} → gauge: stitches 20, rows 28, fabric {named, name stocking}
      Gauge: in st st, 20 sts and 28 rows = 10 cm → gauge: stitches 20, rows 28, fabric {named, name stocking}
      Gauge: 20 sts and 28 rows = 10 cm in st st{ on 4 mm needles| with 4 mm needle| using 4 mm ndls| on pair of 4 mm pins| on 4 mm ndl} → gauge: stitches 20, rows 28, fabric {named, name stocking}, needle 4
      Gauge: 20 sts and 28 rows = 10 cm in st st on 4 mm → gauge: stitches 20, rows 28, fabric {named, name stocking}
      Gauge: 20 sts = 10 cm on 0 mm needles → gauge: stitches 20
      Gauge: 20 sts = 10 cm on mm needles → gauge: stitches 20
      Gauge: 20 sts = 10 cm in moss st, 22 sts = 10 cm in st st → gauge: stitches 22, fabric {named, name stocking}
      Gauge: 20 sts = 10 cm x 3 → gauge: stitches 20
      Gauge: 20 sts = 10 cm {square|sq|in width|wide|x 10 cm|/ 10 cm|by 10 cm}, 28 rows = 10 cm → gauge: stitches 20, rows 28
      Gauge: 20 sts = 10 cm {in st st|over st st|of st st}, 28 rows = 10 cm → gauge: stitches 20, rows 28, fabric {named, name stocking}
      Gauge: 20 sts {make|measure|measures|are|on|to|per|equal|equals|in|over} a 10 cm → gauge: stitches 20
      Gauge: 20 sts, 28 rows, 10 ridges = 10 cm in garter st → gauge: stitches 20, rows 20, fabric {named, name garter}
      Gauge, 20 sts = 10 cm → gauge: stitches 20
      Gauge is 20 sts = 10 cm → gauge: stitches 20
      20 sts = 10 cm on needles, mm 4 → gauge: stitches 20
      Gauge: 20 sts = 10 cm over garter st, 28 rows = 10 cm → gauge: stitches 20, rows 28, fabric {named, name garter}
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Gauge over garter st: 20 sts and 28 rows = 10 cm → ✗ stitch or repeat expected @1
      Gauge: on 4 mm needles 20 sts and 28 rows = 10 cm in k1, p1 rib → ✗ stitch or repeat expected @1
      Gauge: see front page → ✗ stitch or repeat expected @1
      Gauge → ✗ stitch or repeat expected @1
      20 sts {for 4 inches|in rounds for 4 inches|, work 4 cm|, 4 inches|, ending after 4 cm} → ✗ stitch or repeat expected @1
      20 sts and 28 rows → ✗ stitch or repeat expected @1
      20 sts measure 10 cm → gauge: stitches 20
      20 rows = 10 cm → ✗ stitch or repeat expected @1
      20 sts → stated: stitches 20 (20)
      k 20 sts = 10 cm → ✗ stitch or repeat expected @12
    `),
  )('is not read for more than it says: $line', expectReading);
});
