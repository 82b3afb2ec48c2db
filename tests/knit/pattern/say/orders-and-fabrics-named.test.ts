import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('what is worked in a fabric or in a yarn', () => {
  it.each(
    table(`
      {Work|Cont|Continue} to {work|k} in garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Continue {working|work|k} in garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Work {in|on} garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      {Rev st st for 6 rows|Reverse stocking st for 6 rows|Reverse st st for 6 rows} → even: fabric {named, name 'reverse stocking'}, until {rows, n 6}
      Work in {rev st st|reverse stocking st|rev stst|p side stocking} for 6 rows → even: fabric {named, name 'reverse stocking'}, until {rows, n 6}
      Work in {plain knitting|g st|gst|garter|garter st|garter-st} for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Work in garter st {ridge|patt|border} for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Work in {double moss st|dbl moss} for 6 rows → even: fabric {pattern, words 'double moss', name 'double moss', else 'double moss'}, until {rows, n 6}
      Work in {moss|rice|seed} st {patt|border|} for 6 rows → even: fabric {named, name moss}, until {rows, n 6}
      Work in {rib of k2, p2|rib (k2, p2)|k2, p2 rib|k2, p2 ribbing|(k2, p2) rib|[k2, p2] rib|2 x 2 rib|2/2 rib|2 by 2 rib|2-2 rib|double rib|rib, k2, p2|2 plain, 2 purl rib|k2/p2 rib} for 6 rows → even: fabric {rib, face kkpp}, until {rows, n 6}
      Work in {single rib|1 x 1 rib|k1, p1 rib|one-plain, one-purl rib} for 6 rows → even: fabric {rib, face kp}, until {rows, n 6}
      Work in alternate k and p rows for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}
      Work in k 1 row, p 1 row for 6 cm → even: fabric {named, name stocking}, until {length, mm 60, from here}
      Work in {pattern as set|patt as established|patt correct|manner as before|pattern|as set|patt over all sts|patt as set throughout} for 6 rows → even: fabric {established}, until {rows, n 6}
      Work in {same|this|the established} pattern for 6 rows → even: fabric {established}, until {rows, n 6}
      {Work in basket pattern for 6 rows|Work in basket stitch for 6 rows|Work in basket panel for 6 rows|Work in basket chart for 6 rows} → even: fabric {pattern, words basket, name basket}, until {rows, n 6}
      Work in basket rib for 6 rows → even: fabric {pattern, words 'basket rib', name 'basket rib'}, until {rows, n 6}
      Work in the little basket pattern for 6 rows → even: fabric {pattern, words 'little basket', name 'little basket'}, until {rows, n 6}
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work in stripe pattern for 6 rows → stripes | @24 even: until {rows, n 6}
      Work in 25 x 2 rib for 6 rows → ✗ stitch or repeat expected @1
      Work in 2 x 25 rib for 6 rows → ✗ stitch or repeat expected @1
      Work in k2, p2 for joy → ✗ stitch expected @23
      Work in k2, k2 rib for 6 rows → ✗ stitch or repeat expected @1
      Work in k2½, p2 rib for 6 rows → ✗ stitch or repeat expected @1
      Work in pattern st for 6 rows → even: fabric {pattern, words pattern, name '', else 'the pattern'}, until {rows, n 6}
    `),
  )('is not read for more than it says: $line', expectReading);
});
